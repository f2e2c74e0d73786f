"""The drawing of a case: a part that is touched is shown and told, and its line opens."""

import re

import pytest
from playwright.sync_api import expect

from tests.browser.conftest import SMALL
from tests.browser.hand import try_example
from tests.browser.project.in_project import start_sample_case
from tests.browser.test_accessible import axe

SMALL_TARGETS = """
() => [...document.querySelectorAll(".case-drawing .button")]
    .map((each) => [each.textContent, each.getBoundingClientRect()])
    .filter(([, box]) => box.height < 56 || box.width < 44)
    .map(([name]) => name)
"""
VIEWS = ("Front", "Side", "Section", "Plan")
IN_SIGHT = """
(node) => {
    const box = node.getBoundingClientRect();
    const room = node.closest("main").getBoundingClientRect();
    return box.top >= room.top - 1 && box.top < room.bottom - 60;
}
"""


def start(page):
    """The sample case on a small phone, its drawing open."""
    page.set_viewport_size({"width": 360, "height": 740})
    start_sample_case(page)
    page.get_by_role("heading", name="Drawing of the case").tap()
    page.locator(".case-picture svg").wait_for()


@pytest.fixture
def drawn(page):
    start(page)
    return page


def look(page, view):
    """Tap the button of a view."""
    page.get_by_role("button", name=view, exact=True).tap()
    page.locator(f"[data-view][aria-pressed=true]:text-is('{view}')").wait_for()


def part(page, name):
    """The button over a part, by how its name begins."""
    return page.locator(f".part-touch[aria-label^='{name}']")


def check_lit(page, *names):
    """Just the parts of these names come to be shown as touched: a touch is told to the page after
    the finger is gone."""
    pressed = page.locator(".part-touch[aria-pressed=true]")
    expect(pressed).to_have_count(len(names))
    for at, name in enumerate(names):
        named = re.compile(rf"^{re.escape(name)}(,|$)")
        expect(pressed.nth(at)).to_have_attribute("aria-label", named)


def check_opened(page, name):
    """The row of a part comes to be in sight, and in hand."""
    row = page.locator(".parts > li.touched")
    expect(row.locator(".part-name")).to_have_text(name)
    expect(row).to_be_focused()
    page.wait_for_function(IN_SIGHT, arg=row.element_handle())


def touch_beside(page, button, away, along=0.25, number=0):
    """Touch the screen so many pixels below an outline of a part, the first, so far along it."""
    outline = button.locator("polygon").nth(number)
    outline.scroll_into_view_if_needed()
    box = outline.bounding_box()
    x, y = box["x"] + box["width"] * along, box["y"] + box["height"] / 2
    page.touchscreen.tap(x, y + away)


@pytest.mark.parametrize("away", [0, 18, -18])
def test_a_shelf_is_touched_though_it_is_narrower_than_a_finger(drawn, away):
    """A finger is 44 px: some 20 to either side of a shelf that is drawn 5 px thick, in the bay
    that has no door before it."""
    page = drawn
    touch_beside(page, part(page, "Carcass: Adjustable shelf"), away, number=1)
    check_lit(page, "Carcass: Adjustable shelf")
    told = page.locator(".case-part")
    told.get_by_text("2 × Carcass: Adjustable shelf").wait_for()
    told.get_by_text("17 19/64″ × 15 1/2″ × 23/32″").wait_for()


def test_a_touched_part_is_shown_in_every_view_and_its_line_opens(drawn):
    page = drawn
    touch_beside(page, part(page, "Carcass: Fixed shelf"), 0)
    for view in VIEWS:
        look(page, view)
        check_lit(page, "Carcass: Fixed shelf")
    page.get_by_role("button", name="Open its line").tap()
    page.get_by_role("heading", name="Carcass").first.wait_for()
    page.locator("#place[data-shows='work-out/carcass/12//fixed']").wait_for()
    check_opened(page, "2 × Fixed shelf")
    page.go_back()
    page.locator(".case-picture svg").wait_for()
    check_lit(page, "Carcass: Fixed shelf")


def test_a_finger_takes_what_it_sees_and_not_what_is_behind_it(drawn):
    """From its side a case shows its side: the shelves are there, behind it."""
    look(drawn, "Side")
    touch_beside(drawn, part(drawn, "Carcass: Fixed shelf"), 0, along=0.6)
    check_lit(drawn, "Carcass: Side")


def test_all_is_done_by_keyboard_too(drawn):
    page = drawn
    page.get_by_role("button", name="Front", exact=True).focus()
    for _ in range(2):
        page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    page.locator("[data-view=section][aria-pressed=true]").wait_for()
    part(page, "Carcass: Fixed shelf").focus()
    page.keyboard.press("Enter")
    check_lit(page, "Carcass: Fixed shelf")
    page.get_by_role("button", name="Next part").focus()
    page.keyboard.press(" ")
    check_lit(page, "Carcass: Adjustable shelf")
    page.get_by_role("button", name="Open its line").focus()
    page.keyboard.press("Enter")
    page.locator("#place[data-shows='work-out/carcass/12//adjustable']").wait_for()
    expect(page.locator(".parts > li.touched")).to_be_focused()


def test_every_part_can_be_reached_one_after_another(drawn):
    page = drawn
    told, names = page.locator(".case-part .part-name"), [""]
    for _ in range(16):
        page.get_by_role("button", name="Next part").tap()
        expect(told).not_to_have_text(names[-1])
        names.append(told.inner_text())
    assert len(set(names[1:])) == 16
    page.get_by_role("button", name="Part before").tap()
    expect(told).to_have_text(re.compile("Doors: Panel$"))


def test_a_shelf_behind_a_door_is_touched_too_and_beside_it_the_door(drawn):
    page = drawn
    touch_beside(page, part(page, "Carcass: Fixed shelf"), 0, along=0.5)
    check_lit(page, "Carcass: Fixed shelf")
    touch_beside(page, part(page, "Carcass: Fixed shelf"), -60, along=0.5)
    check_lit(page, "Doors: Panel")


def test_a_part_that_a_view_does_not_show_says_so(drawn):
    page = drawn
    look(page, "Section")
    touch_beside(page, part(page, "Face frame: Top rail"), 0)
    look(page, "Plan")
    page.locator(".case-part").get_by_text("Not seen in this view.").wait_for()
    check_lit(page)


def test_a_screen_reader_hears_each_part_with_its_size(drawn):
    shelf = drawn.get_by_role(
        "button", name="Carcass: Fixed shelf, 2×, 17 59/64″ × 15 1/2″ × 23/32″"
    )
    assert shelf.count() == 1
    shelf.dispatch_event("click")
    check_lit(drawn, "Carcass: Fixed shelf")


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
def test_axe_finds_nothing_in_any_view(phone, server, dark):
    page = phone(SMALL, dark=dark, service_workers="block").pages[0]
    page.goto(server.address)
    start(page)
    touch_beside(page, part(page, "Carcass: Fixed shelf"), 0)
    for view in VIEWS:
        look(page, view)
        assert axe(page)["wrong"] == []
        assert page.evaluate(SMALL_TARGETS) == []


@pytest.fixture
def answered(page, server):
    """The carcass of the example, answered."""
    page.set_viewport_size({"width": 360, "height": 740})
    page.goto(f"{server.address}#work-out/carcass")
    try_example(page)
    return page


def test_a_part_touched_in_a_question_opens_its_row(answered):
    page = answered
    touch_beside(page, part(page, "Fixed shelf"), 0)
    check_opened(page, "2 × Fixed shelf")
    check_lit(page, "Fixed shelf")


def test_axe_finds_nothing_in_a_question_whose_parts_are_touched(answered):
    part(answered, "Divider").focus()
    assert axe(answered)["wrong"] == []


def test_a_part_of_a_question_is_touched_by_keyboard_too(answered):
    page = answered
    part(page, "Divider").focus()
    page.keyboard.press("Enter")
    expect(page.locator(".parts > li.touched .part-name")).to_have_text("1 × Divider")


def test_a_dimension_over_a_part_still_opens_its_field(answered):
    page = answered
    page.get_by_role("button", name="Change Width").tap()
    expect(page.get_by_label("Width", exact=True)).to_be_focused()
    assert page.locator(".parts > li.touched").count() == 0
