"""A case to fill in, by thumb on a small phone: from the first touch to the whole parts list."""

import pytest
from playwright.sync_api import expect

from tests.browser.hand import choose, open_place, tap_keys, type_into
from tests.browser.project.in_project import drafts, keep_reading, open_projects

MOST_TAPS = 120
HIGHEST_STRIP = 80
COUNTING = (
    "() => { self.taps = 0; addEventListener('click', (e) => e.detail && self.taps++, true); }"
)
FRAME = ("Face frame: Stile", "Face frame: Middle stile", "Face frame: Top rail", "Doors: Rail")
WIDTHS = ("41 3/8", "41 5/16", "41 1/4")
"""Of another alcove than the sample's; its narrowest width less two strips is the case."""


@pytest.fixture
def small(page):
    page.set_viewport_size({"width": 360, "height": 740})
    page.evaluate(COUNTING)
    return page


@pytest.fixture
def started(small):
    """A new case, begun with the first taps, which are counted."""
    open_place(small, "Project")
    small.get_by_role("button", name="New case").tap()
    small.get_by_role("heading", name="New case").wait_for()
    small.get_by_role("button", name="Next: Space").wait_for()
    return small


def step(page, name):
    return page.locator(".steps").get_by_role("button", name=name)


def key(page, name):
    page.get_by_role("group", name="Keypad").get_by_role("button", name=name, exact=True).tap()


def typed(page, *texts):
    """What is typed into the field that is open and those after it, by Next."""
    for number, text in enumerate(texts):
        if number:
            key(page, "Next")
        tap_keys(page, text)


def next_form(page, name):
    step(page, f"Next: {name}").tap()
    page.locator("#place:not([data-shows^='project'])").wait_for()


def save(page):
    """Save where it stands at the moment: above the keys, or in the bar."""
    sheet = page.locator("#sheet").get_by_role("button", name="Save", exact=True)
    bar = page.get_by_role("button", name="Save change")
    (sheet if page.locator("#sheet").is_visible() else bar).tap()
    page.locator("#place[data-shows^='project/']").wait_for()


def saved_once_answered(page):
    page.locator("output[name=result]:not(.waiting) .main-answer").wait_for()
    save(page)


def fill_space(page):
    next_form(page, "Space")
    page.locator(".sheet-acts").wait_for()
    typed(page, *WIDTHS)
    page.get_by_label("Height at the left").tap()
    typed(page, "90 1/4", "90 1/8", "14 1/2")
    page.locator("#sheet").get_by_role("button", name="Save", exact=True).and_(
        page.locator(":not(.only-room)")
    ).wait_for()
    save(page)


def fill_reading(page, name, text):
    next_form(page, name)
    page.locator("#sheet .sheet-acts").wait_for()
    tap_keys(page, text)
    page.locator("#sheet .peek-answer").wait_for()
    save(page)


def test_the_whole_parts_list_of_a_new_case_takes_few_taps(started):
    page = started
    fill_space(page)
    fill_reading(page, "Plywood", "23/32")
    fill_reading(page, "Frame thickness", "3/4")
    next_form(page, "Carcass")
    page.locator("output[name=result]:not(.waiting) .main-answer").wait_for()
    tap_keys(page, "1")
    page.locator("#sheet").get_by_role("button", name="Done").tap()
    choose(page, "Toe kick", "Notched sides")
    type_into(page, "Dividers", "1")
    saved_once_answered(page)
    next_form(page, "Shelf spacing")
    tap_keys(page, "1")
    saved_once_answered(page)
    next_form(page, "Shelf strength")
    page.get_by_role("dialog", name="Material").get_by_text("Plywood", exact=True).tap()
    choose(page, "What’s on it", "Records, 12 in with sleeves")
    saved_once_answered(page)
    fill_reading(page, "Stile width", "1 1/2")
    next_form(page, "Face frame")
    page.locator("#sheet .sheet-acts").wait_for()
    typed(page, "1")
    saved_once_answered(page)
    for as_is in ("Doors", "Hinges", "Molding"):
        next_form(page, as_is)
        saved_once_answered(page)
    page.locator(".steps").wait_for(state="detached")
    open_place(page, "At the saw")
    page.get_by_role("button", name="List").tap()
    for part in ("Carcass: Divider", "Carcass: Toe kick", "Carcass: Fixed shelf", *FRAME):
        page.get_by_text(part).first.wait_for()
    taps = page.evaluate("() => self.taps")
    print(f"{taps} taps")
    assert 60 < taps <= MOST_TAPS


def test_the_strip_is_low_its_targets_are_high_and_all_of_it_is_reached_by_buttons(started):
    strip = started.locator(".steps")
    assert strip.bounding_box()["height"] <= HIGHEST_STRIP
    for each in strip.get_by_role("button").all():
        assert each.bounding_box()["height"] >= 56
    last = step(started, "Tip-over, waits for Carcass")
    for _ in range(10):
        started.get_by_role("button", name="Steps after").tap()
    started.wait_for_function(
        """() => {
            const last = [...document.querySelectorAll(".to-fill")].at(-1).getBoundingClientRect();
            const list = document.querySelector(".steps-list").getBoundingClientRect();
            return last.right <= list.right + 4;
        }"""
    )
    assert last.is_visible()
    started.get_by_role("button", name="Steps before").tap()


def test_its_steps_are_an_ordered_list_that_says_its_states_in_words(started):
    names = started.locator("ol.steps-list > li > button").evaluate_all(
        "(all) => all.map((each) => each.getAttribute('aria-label'))"
    )
    assert names[:4] == [
        "Next: Space",
        "Plywood, to fill in",
        "Frame thickness, to fill in",
        "Carcass, waits for Space",
    ]


def test_a_step_that_waits_leads_to_what_it_waits_for(started):
    step(started, "Carcass, waits for Space").tap()
    started.get_by_role("heading", name="The space: Space").wait_for()
    started.wait_for_function("document.activeElement.closest('.field-many') !== null")


def test_a_line_that_waits_says_so_and_leads_there(started):
    line = started.get_by_role("listitem").filter(has=started.locator("[data-line='4']"))
    line.get_by_text("Waits for Space").wait_for()
    line.get_by_text("Carcass", exact=True).tap()
    line.get_by_role("button", name="Fill in Space").tap()
    started.get_by_role("heading", name="The space: Space").wait_for()


def test_a_line_half_filled_in_is_kept_so(started):
    next_form(started, "Space")
    typed(started, "41 3/8")
    started.locator("#sheet").get_by_role("button", name="Done").tap()
    started.get_by_role("button", name="Save change").tap()
    started.locator("#place[data-shows^='project/']").wait_for()
    started.get_by_text("To fill in: Height at the left").wait_for()
    assert [each for each in drafts(started) if "question" in each] == []
    next_form(started, "Space")
    expect(started.locator(".field-many input").first).to_have_value("41 3/8")
    started.wait_for_function("document.activeElement.name === 'left_height'")


def test_what_is_typed_and_not_saved_stays(started):
    next_form(started, "Space")
    typed(started, "41 3/8")
    started.locator("#sheet").get_by_role("button", name="Done").tap()
    open_place(started, "Project")
    started.get_by_text("Unsaved edit").wait_for()
    next_form(started, "Space")
    expect(started.locator(".field-many input").first).to_have_value("41 3/8")


def test_a_case_is_added_to_the_project_that_is_open_and_taken_back(small):
    keep_reading(small, "Alcove width", "37 9/16")
    open_place(small, "Project")
    assert small.locator(".steps").count() == 0
    small.get_by_role("button", name="Add a case").tap()
    step(small, "Next: Space").wait_for()
    small.get_by_text("Alcove width", exact=True).first.wait_for()
    small.locator("#notices").get_by_role("button", name="Undo").tap()
    small.locator(".steps").wait_for(state="detached")


def test_a_new_case_is_begun_beside_other_projects(small):
    keep_reading(small, "Alcove width", "37 9/16")
    open_projects(small)
    small.get_by_role("button", name="New case").tap()
    step(small, "Next: Space").wait_for()


def test_a_piece_of_the_usual_sizes_says_at_the_saw_that_nobody_has_looked_at_them(started):
    page = started
    fill_space(page)
    fill_reading(page, "Plywood", "23/32")
    fill_reading(page, "Frame thickness", "3/4")
    page.get_by_text("Goes by the usual for now. Check: Fixed shelves per bay").wait_for()
    open_place(page, "At the saw")
    page.get_by_text("Not checked in the project yet").wait_for()
