"""A whole evening at the saw: by stop, cut, spoiled, undone, a set-up tried, in sun, aloud, awake.

What the browser has of the device (a wake lock, voices) is replaced at its boundary only.
"""

import pytest

from tests.browser.hand import choose, keep_as, open_place, open_question, type_into
from tests.browser.project.in_project import accept, correct, fill_linked_rail, keep_reading
from tests.browser.start.start_support import eventually
from tests.browser.words import ROUGH_LENGTH, SAVE, SAVE_TO_PIECE, SCRAP, TEST_CUT, UNDID

BOUNDARY = """
window.asked = { locks: [], spoken: [] };
const request = async () => {
  const lock = { released: false, release: async () => { lock.released = true; } };
  window.asked.locks.push(lock);
  return lock;
};
const wakeLock = { request };
Object.defineProperty(navigator, "wakeLock", { value: wakeLock });
const voices = [{ lang: "en-US", localService: false, name: "far" }];
const near = { lang: "en-US", localService: true, name: "near" };
const speech = new EventTarget();
speech.getVoices = () => voices;
speech.cancel = () => {};
speech.speak = (each) => window.asked.spoken.push([each.voice.name, each.text]);
window.voicesCome = () => { voices.push(near); speech.dispatchEvent(new Event("voiceschanged")); };
Object.defineProperty(window, "speechSynthesis", { value: speech });
window.SpeechSynthesisUtterance = class { constructor(text) { this.text = text; } };
"""


@pytest.fixture
def page(phone, server):
    """A phone just opened, with a boundary of its own."""
    context = phone(service_workers="block")
    context.add_init_script(BOUNDARY)
    opened = context.pages[0]
    opened.goto(server.address)
    return opened


def keep_rail(page, name, length):
    """A rail of the record cabinet with a miter at both ends."""
    open_question(page, "picture frame", "Mitered length")
    type_into(page, "Measured length", length)
    type_into(page, "Stock width", "2 1/4")
    page.get_by_role("button", name="Done").tap()
    choose(page, "Left end", "45° miter")
    choose(page, "Right end", "45° miter")
    page.locator("output[name=result]:not(.waiting) .main-answer").wait_for()
    keep_as(page, name)


def tap(page, name):
    """Tap a key of the place."""
    page.locator("#place").get_by_role("button", name=name, exact=True).tap()


def held(page):
    """Of each wake lock that was asked for, whether it is held."""
    return page.evaluate("window.asked.locks.map((each) => !each.released)")


def test_an_evening_at_the_saw(page):
    for name, length in (("Short rail", "20"), ("Top rail", "31 5/8"), ("Low rail", "31 5/8")):
        keep_rail(page, name, length)
    open_place(page, "At the saw")
    page.get_by_role("button", name="Close the message").tap()
    page.get_by_role("heading", name="Low rail").wait_for()
    page.locator(".piece-length").get_by_text("long point", exact=True).wait_for()
    page.get_by_text("Stop at 36 1/8″: 2 cuts").wait_for()
    eventually(lambda: held(page) == [True])
    page.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
    page.evaluate("window.asked.locks[0].released = true")
    page.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
    eventually(lambda: held(page) == [False, True])
    cut = page.get_by_role("button", name="Cut one", exact=True).bounding_box()
    tabs = page.get_by_role("navigation", name="Places").bounding_box()
    assert cut["y"] + cut["height"] <= tabs["y"]
    assert page.locator("#place").evaluate("(place) => place.scrollTop") == 0
    small = page.locator("#place button, #place label.choice, nav a").evaluate_all(
        "(all) => all.filter((each) => each.getBoundingClientRect().height < 72).length"
    )
    assert small == 0

    tap(page, "Cut one")
    page.get_by_text("Stop at 36 1/8″: 1 cut", exact=True).wait_for()
    tap(page, "Next uncut")
    page.get_by_role("heading", name="Top rail").wait_for()
    tap(page, "Cut one")
    page.get_by_text("Stop at 36 1/8″: all cut").wait_for()
    tap(page, SCRAP)
    said = page.locator("#notices .notice")
    said.get_by_text("Scrapped one Top rail. Cut one more.").wait_for()
    page.get_by_text("Stop at 36 1/8″: 1 cut", exact=True).wait_for()
    tap(page, "Undo")
    said.get_by_text(f"{UNDID}: Scrapped one Top rail.").wait_for()
    page.get_by_text("Stop at 36 1/8″: all cut").wait_for()
    tap(page, "Undo")
    page.get_by_text("Stop at 36 1/8″: 1 cut", exact=True).wait_for()
    tap(page, "Cut one")
    said.wait_for(state="detached")
    tap(page, "Undo")
    page.get_by_text("Stop at 36 1/8″: 1 cut", exact=True).wait_for()
    open_place(page, "Project")
    open_place(page, "At the saw")
    page.get_by_role("heading", name="Top rail").wait_for()

    tap(page, TEST_CUT)
    type_into(page, "Measured", "36 5/32")
    page.get_by_role("button", name="Done").tap()
    page.locator("output[name=result]").get_by_text("0.03125").first.wait_for()
    tap(page, SAVE_TO_PIECE)
    page.get_by_text("Last test cut: 1/32″").wait_for()

    tap(page, "About this piece")
    page.get_by_label("Material", exact=True).fill("White oak")
    type_into(page, ROUGH_LENGTH, "1/2")
    page.get_by_role("button", name="Done").tap()
    tap(page, SAVE)
    page.locator(".saw-tools").get_by_text("White oak").wait_for()
    tap(page, "About this piece")
    page.get_by_label("Material", exact=True).fill("Oak")
    tap(page, "White oak")
    assert page.get_by_role("textbox", name="Material").input_value() == "White oak"
    page.get_by_role("link", name="‹ At the saw").tap()

    choose(page, "Order", "By board")
    page.get_by_text("White oak, 2 1/4″ wide: 1 cut, 36 5/8″").wait_for()
    choose(page, "Order", "By part")
    page.get_by_text("Top rail: 1 cut").wait_for()
    choose(page, "Light", "Sun")
    seen = page.locator("body").evaluate(
        "(body) => [getComputedStyle(body).color, getComputedStyle(body).backgroundColor]"
    )
    assert seen == ["rgb(0, 0, 0)", "rgb(255, 255, 255)"]

    assert page.get_by_role("button", name="Read aloud").count() == 0
    page.evaluate("window.voicesCome()")
    tap(page, "Read aloud")
    page.get_by_role("button", name="Reading cuts aloud").wait_for()
    tap(page, "Cut one")
    page.get_by_text("Top rail: all cut").wait_for()
    tap(page, "Next uncut")
    page.get_by_role("heading", name="Short rail").wait_for()
    spoken = page.evaluate("window.asked.spoken")
    assert {voice for voice, _ in spoken} == {"near"}
    assert spoken[0][1].startswith(
        "Top rail. thirty-six and one eighth inches. long point. both ends miter"
    )
    assert spoken[-1][1].startswith("Short rail. twenty-four and one half inches")

    open_place(page, "Project")
    page.get_by_text("Material", exact=True).tap()
    page.get_by_text("1 piece, 36 1/8″, 36 5/8″ with allowances").wait_for()
    eventually(lambda: not any(held(page)))
    assert page.locator("body").get_attribute("data-light") == ""
    open_place(page, "At the saw")
    page.get_by_text("Short rail: 1 cut").wait_for()
    assert page.locator("body").get_attribute("data-light") == "sun"


def test_undo_at_the_saw_takes_back_what_was_done_at_the_saw_only(page):
    keep_rail(page, "Top rail", "31 5/8")
    open_place(page, "At the saw")
    undo = page.locator("#place").get_by_role("button", name="Undo", exact=True)
    page.get_by_text("Stop at 36 1/8″: 1 cut", exact=True).wait_for()
    assert undo.is_disabled()
    tap(page, "Cut one")
    page.get_by_text("Stop at 36 1/8″: all cut").wait_for()
    keep_reading(page, "Alcove width", "37 9/16")
    open_place(page, "At the saw")
    undo.tap()
    page.locator("#notices").get_by_text(f"{UNDID}: Cut one Top rail.").wait_for()
    page.get_by_text("Stop at 36 1/8″: 1 cut", exact=True).wait_for()
    assert undo.is_disabled()
    open_place(page, "Project")
    page.get_by_text("Alcove width", exact=True).wait_for()


def test_the_key_that_says_it_is_done_names_the_number_that_was_told(page):
    """Cut at 41 13/16″, 1062.0375 mm; 41 11/16″ is 1059 on a rule of millimeters: 3.0375 less."""
    keep_reading(page, "Alcove width", "37 9/16")
    fill_linked_rail(page)
    page.locator("output[name=result]:not(.waiting) .main-answer").wait_for()
    keep_as(page, "Top rail")
    open_place(page, "At the saw")
    tap(page, "Cut one")
    page.get_by_text("All pieces cut", exact=True).wait_for()
    page.get_by_role("link", name="Settings").tap()
    choose(page, "Round to", "Millimeters")
    page.get_by_role("dialog").get_by_role("button", name="Accept").tap()
    correct(page, "Alcove width", "37 7/16")
    accept(page)
    open_place(page, "At the saw")
    page.locator(".piece-wrong").get_by_text("1 piece can be cut down by ≈ 3.0 mm.").wait_for()
    tap(page, "Done: cut down by ≈ 3.0 mm")
    page.locator(".piece-wrong").wait_for(state="detached")


def test_an_allowance_not_kept_yet_tells_when_it_is_read_in_another_unit(page):
    keep_rail(page, "Top rail", "31 5/8")
    open_place(page, "At the saw")
    tap(page, "About this piece")
    type_into(page, ROUGH_LENGTH, "1")
    page.get_by_role("link", name="Settings").tap()
    choose(page, "Plain numbers are in", "Millimeters")
    page.get_by_role("dialog").get_by_role("button", name="Accept").tap()
    open_place(page, "At the saw")
    tap(page, "About this piece")
    page.get_by_text("You typed this in inches, and it’s now read in millimeters.").wait_for()
    page.get_by_label(ROUGH_LENGTH, exact=True).fill("25 mm")
    tap(page, SAVE)
    page.get_by_role("heading", name="Top rail").wait_for()
