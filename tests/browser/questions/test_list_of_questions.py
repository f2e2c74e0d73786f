"""The list of questions: what is at hand first, then the jobs, and in each its questions."""

import re
from urllib.parse import quote

import pytest
from playwright.sync_api import expect

import sawside
from tests.browser.conftest import LARGE, SMALL
from tests.browser.hand import open_place, open_question, try_example
from tests.browser.words import SOLVE

DESCRIBED = sawside.handle({"do": "describe"})
JOBS = DESCRIBED["jobs"]
QUESTIONS = [each for each in DESCRIBED["reckoners"] if each["offered"]]
OF_JOB = {job["key"]: [each for each in QUESTIONS if each["job"] == job["key"]] for job in JOBS}
SIDEWAYS = (740, 360)
BOXES = """() => {
  const links = [...document.querySelectorAll("#place a:has(svg)")];
  const boxes = links.map((link) => link.querySelector("svg").getBBox());
  return Object.fromEntries(
    boxes.map(({ x, y, width, height }, at) => [links[at].hash, [x, y, x + width, y + height]]),
  );
}"""
HOOK = "#place[data-shows='{}']"


@pytest.fixture
def listed(page):
    """A page that shows the list."""
    open_place(page, SOLVE)
    page.locator(".tile").first.wait_for()
    return page


def to_list(page):
    open_place(page, SOLVE)
    page.locator(".tile").first.wait_for()


def keys(page, selector):
    """The questions that some links lead to."""
    links = page.locator(f"{selector} .question-link").all()
    return [link.get_attribute("href").removeprefix("#work-out/") for link in links]


def under(page, heading):
    """The questions of the list under a heading; none where there is no such heading."""
    return keys(page, f"h2:text-is('{heading}') + ul")


def answer(page, question):
    """Go to a question by its address and have its example answered."""
    page.evaluate("(key) => { location.hash = `work-out/${key}`; }", question)
    page.locator(HOOK.format(f"work-out/{question}")).wait_for()
    try_example(page)


def screens(page):
    """How many screens the place is long."""
    high, seen = (f"document.querySelector('#place').{each}Height" for each in ("scroll", "client"))
    return page.evaluate(f"{high} / {seen}")


def pin(page, title):
    return page.get_by_role("button", name=f"Pin {title}", exact=True)


def test_each_job_is_a_tile_that_says_how_many_questions_it_has(listed):
    tiles = listed.locator(".tile")
    assert tiles.count() == len(JOBS)
    for at, job in enumerate(JOBS):
        count = len(OF_JOB[job["key"]])
        name = f"{job['title']}, {count} {'question' if count == 1 else 'questions'}"
        expect(tiles.nth(at)).to_have_accessible_name(name)


def test_a_job_leads_to_its_questions(listed):
    shown = []
    for at, job in enumerate(JOBS):
        listed.locator(".tile").nth(at).tap()
        questions = [each["key"] for each in OF_JOB[job["key"]]]
        expect(listed.get_by_role("heading", name=job["title"], exact=True)).to_be_visible()
        assert keys(listed, ".question-rows") == questions
        shown += questions
        listed.get_by_role("link", name="All questions").tap()
    assert sorted(shown) == sorted(each["key"] for each in QUESTIONS)


@pytest.mark.parametrize("size", [SMALL, LARGE, SIDEWAYS], ids=["small", "large", "sideways"])
def test_the_list_at_rest_is_one_screen_and_with_pins_and_recents_two(listed, size):
    listed.set_viewport_size({"width": size[0], "height": size[1]})
    most = 2 if size == SIDEWAYS else 1
    assert screens(listed) <= most
    for question in ("middle", "how_many_fit", "shelf_length", "sloped_box", "chamfer"):
        answer(listed, question)
    pin(listed, "Chamfer").tap()
    to_list(listed)
    assert (len(under(listed, "Pinned")), len(under(listed, "Recent"))) == (1, 4)
    assert screens(listed) <= most + 1


def test_what_was_answered_last_is_at_hand_the_last_first_also_after_a_reload(listed):
    assert under(listed, "Recent") == []
    for question in ("how_many_fit", "middle", "shelf_length", "sloped_box", "chamfer", "middle"):
        answer(listed, question)
    listed.evaluate("location.hash = 'work-out/pin_holes'")  # looked at, and nothing filled in
    listed.locator(HOOK.format("work-out/pin_holes")).wait_for()
    to_list(listed)
    last = ["middle", "chamfer", "sloped_box", "shelf_length"]
    assert under(listed, "Recent") == last
    listed.reload()
    listed.locator(".tile").first.wait_for()
    assert under(listed, "Recent") == last


def test_a_question_is_pinned_in_its_row_and_unpinned_on_its_page(listed):
    open_question(listed, "chamfer", "Chamfer")
    answer(listed, "chamfer")
    to_list(listed)
    listed.get_by_role("searchbox", name="Find a question").fill("chamfer")
    pin(listed, "Chamfer").tap()
    expect(pin(listed, "Chamfer")).to_have_attribute("aria-pressed", "true")
    listed.get_by_role("searchbox", name="Find a question").fill("")
    assert (under(listed, "Pinned"), under(listed, "Recent")) == (["chamfer"], [])

    listed.reload()
    listed.locator(".tile").first.wait_for()
    assert under(listed, "Pinned") == ["chamfer"]
    listed.locator("h2:text-is('Pinned') + ul").get_by_role("link", name="Chamfer").tap()
    expect(pin(listed, "Chamfer")).to_have_attribute("aria-pressed", "true")
    pin(listed, "Chamfer").press("Enter")
    expect(pin(listed, "Chamfer")).to_have_attribute("aria-pressed", "false")
    to_list(listed)
    assert (under(listed, "Pinned"), under(listed, "Recent")) == ([], ["chamfer"])


def test_what_is_pinned_and_is_a_question_no_more_is_left_out(listed):
    listed.evaluate(
        """() => new Promise((done) => {
          indexedDB.open("sawside").onsuccess = ({ target }) => {
            const writing = target.result.transaction("page", "readwrite");
            writing.objectStore("page").put(["nonesuch", "chamfer"], "pinned");
            writing.objectStore("page").put(["constructor"], "recent");
            writing.oncomplete = () => { target.result.close(); done(); };
          };
        })"""
    )
    listed.reload()
    listed.locator(".tile").first.wait_for()
    assert (under(listed, "Pinned"), under(listed, "Recent")) == (["chamfer"], [])


def test_back_leads_to_the_row_that_one_left(listed):
    listed.set_viewport_size({"width": 360, "height": 420})
    listed.get_by_role("link", name="Shelves, ").tap()
    last = listed.locator(".question-rows .question-link").last
    last.scroll_into_view_if_needed()
    down = listed.evaluate("document.querySelector('#place').scrollTop")
    assert down > 0
    last.tap()
    listed.locator("output[name=result]").wait_for()
    listed.go_back()
    expect(listed.locator(".question-rows .question-link").last).to_be_focused()
    assert listed.evaluate("document.querySelector('#place').scrollTop") == down
    listed.go_back()
    expect(listed.get_by_role("link", name="Shelves, ")).to_be_focused()


def test_back_leads_to_what_was_searched_for_and_the_tab_to_the_whole_list(listed):
    box = listed.get_by_role("searchbox", name="Find a question")
    box.fill("ease the edge")
    listed.get_by_role("link", name="Chamfer").tap()
    listed.locator("output[name=result]").wait_for()
    listed.go_back()
    expect(box).to_have_value("ease the edge")
    listed.get_by_role("link", name="Chamfer").wait_for()
    open_place(listed, "Pad")
    listed.go_back()
    expect(box).to_have_value("ease the edge")
    open_place(listed, "Pad")
    to_list(listed)
    expect(box).to_have_value("")


def test_how_many_were_found_is_heard(listed):
    box = listed.get_by_role("searchbox", name="Find a question")
    box.fill("chamfer")
    heard = listed.locator(".work-out [role=status]")
    expect(heard).to_have_text(re.compile(r"^[1-9]\d* questions?$"))
    box.fill("concrete")
    expect(heard).to_have_text("0 questions")


def test_every_picture_fills_its_field_and_stays_in_it(listed):
    """A line is 2 wide, so its middle stays 1 away from the edge."""
    found = {}
    for address in ("work-out", *(f"questions/{quote(job['key'])}" for job in JOBS)):
        listed.evaluate("(to) => { location.hash = to; }", address)
        listed.locator(HOOK.format(address)).wait_for()
        found |= listed.evaluate(BOXES)
    assert {f"#work-out/{each['key']}" for each in QUESTIONS} < set(found)
    wrong = {
        address: box
        for address, box in found.items()
        if min(box) < 1 or max(box) > 39 or box[2] - box[0] < 20 or box[3] - box[1] < 10
    }
    assert wrong == {}


def test_where_colors_are_forced_pictures_are_drawn_in_them(listed):
    drawn = "(part) => getComputedStyle(document.querySelector(part)).stroke"
    system = """(name) => {
      const probe = document.body.appendChild(document.createElement("i"));
      probe.style.color = name;
      const { color } = getComputedStyle(probe);
      probe.remove();
      return color;
    }"""
    listed.emulate_media(forced_colors="active")
    for part, name in (("wood", "CanvasText"), ("ink", "CanvasText"), ("chalk", "Highlight")):
        assert listed.evaluate(drawn, f".picture-{part}") == listed.evaluate(system, name)
