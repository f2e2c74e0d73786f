"""At the saw a whole piece is in sight: name, length, drawing, ends, how many are left, main keys.

With a message, or with a piece that a correction made wrong, nothing is shown in part; at twice
the text size what stands between name and keys scrolls, and nothing stands over anything else.
"""

import pytest

from tests.browser.conftest import LARGE, SMALL
from tests.browser.hand import choose, keep_as, open_place, tap_keys, try_example, type_into
from tests.browser.project.in_project import (
    accept,
    correct,
    fill_linked_rail,
    keep_reading,
    open_entry,
)
from tests.browser.test_accessible import SCRIPTS
from tests.browser.words import ROUGH_LENGTH, SAVE, SAVE_CHANGE, SAVE_TO_PIECE, TEST_CUT

WRONG = [".piece-name", ".piece-wrong", ".piece-length", ".drawing-bold", ".ends", ".saw-key"]
NEEDED = [".piece-left" if each == ".piece-wrong" else each for each in WRONG]


def in_page(page, call, *given):
    """What a function of `accessible.js` finds in the page."""
    script = SCRIPTS[1].read_text(encoding="utf-8")
    return page.evaluate(f"(given) => {{ {script}\nreturn {call}(...given); }}", list(given))


def sizes(page):
    """The two screens of a phone, one after the other."""
    for wide, high in (LARGE, SMALL):
        page.set_viewport_size({"width": wide, "height": high})
        yield wide


def check_in_sight(page, needed=NEEDED):
    """All that is needed is in sight on both screens, and nothing stands over anything else."""
    for wide in sizes(page):
        assert in_page(page, "sawsideOutOfSight", needed) == [], wide
        assert in_page(page, "sawsideOverlaps") == [], wide


def tap(page, name):
    """Tap a key of the place."""
    page.locator("#place").get_by_role("button", name=name, exact=True).tap()


def each_piece(page):
    """Every piece from the first, by Next."""
    following = page.get_by_role("button", name="Next ›")
    yield
    while following.is_enabled():
        following.tap()
        yield


@pytest.fixture
def page(phone, server):
    """A rail that hangs on a reading, and moldings with long names and ends of many words."""
    opened = phone(service_workers="block").pages[0]
    opened.goto(f"{server.address}#work-out/molding_run")
    try_example(opened)
    keep_as(opened, "Molding around a case")
    keep_reading(opened, "Alcove width", "37 9/16")
    fill_linked_rail(opened, then="+9")
    opened.locator("output[name=result]:not(.waiting) .main-answer").wait_for()
    keep_as(opened, "Top rail")
    open_place(opened, "At the saw")
    opened.get_by_role("button", name="Close the message").tap()
    return opened


def test_a_whole_piece_is_in_sight_in_every_state_and_all_is_large(page):
    for _ in each_piece(page):
        check_in_sight(page)
        smallest = page.locator(".ends dd").evaluate_all(
            "(all) => Math.min(...all.map((each) => parseFloat(getComputedStyle(each).fontSize)))"
        )
        assert smallest >= 28
    page.locator("html").evaluate("(html) => (html.style.fontSize = '200%')")
    for _ in sizes(page):
        assert in_page(page, "sawsideOverlaps") == []
        assert page.locator(".saw-body").evaluate("(it) => it.scrollHeight > it.clientHeight")
    page.locator("html").evaluate("(html) => (html.style.fontSize = '')")
    while page.get_by_role("button", name="‹ Back").is_enabled():
        tap(page, "‹ Back")

    page.get_by_role("heading", name="Top rail").wait_for()
    tap(page, "Cut one")
    page.get_by_text("All cut", exact=True).wait_for()
    tap(page, "Undo")
    page.locator(".notice").wait_for()
    check_in_sight(page)

    tap(page, "Cut one")
    page.get_by_text("All cut", exact=True).wait_for()
    correct(page, "Alcove width", "37 7/16")
    page.get_by_role("dialog").get_by_role("button", name="Accept").tap()
    open_place(page, "At the saw")
    page.get_by_text("1 piece can be cut down by 1/8″").wait_for()
    page.locator(".notice").wait_for()
    check_in_sight(page, WRONG)
    tap(page, "Done: cut down by 1/8″")
    page.locator(".piece-wrong").wait_for(state="detached")

    open_entry(page, "Top rail", "Open")
    type_into(page, "Stock width", "2")
    choose(page, "Left end", "Other angle")
    type_into(page, "Left end angle", "55")
    page.get_by_role("button", name="Done").tap()
    page.locator("output[name=result]").get_by_role("button", name=SAVE_CHANGE).tap()
    accept(page)
    correct(page, "Alcove width", "36 15/16")
    accept(page)
    open_place(page, "At the saw")
    page.get_by_text("1/4″ in width and 1/8″ in length, and has different end cuts").wait_for()
    page.locator(".notice").wait_for()
    # That no saw turns so far takes a line more; beside a message the drawing then gives way.
    check_in_sight(page, [each for each in WRONG if each != ".drawing-bold"])
    tap(page, "Done: cut down, ends recut")
    page.locator(".piece-wrong").wait_for(state="detached")


LONG = {
    "inches": ([], "129 29/32", "129"),
    "feet": ([(choose, "Show lengths in", "Feet and inches")], "129 29/32", "10′"),
    "millimeters": ([(choose, "Round to", "Tenths of a millimeter")], "1078.5 mm", "1078.5"),
}


@pytest.mark.parametrize(("settings", "length", "shown"), LONG.values(), ids=LONG)
def test_a_long_number_is_whole(phone, server, settings, length, shown):
    opened = phone(service_workers="block").pages[0]
    opened.goto(f"{server.address}#settings")
    for way, setting, option in settings:
        way(opened, setting, option)
    opened.goto(f"{server.address}#work-out/piece_by_hand")
    opened.get_by_label("Length", exact=True).fill(length)
    keep_as(opened, "Long rail")
    open_place(opened, "At the saw")
    opened.get_by_role("button", name="Close the message").tap()
    assert opened.locator(".piece .fraction-seen").inner_text().split()[0] == shown
    for light in ("Match device", "Sun"):
        choose(opened, "Light", light)
        opened.locator(".saw-body").evaluate("(body) => body.scrollTo(0, 0)")
        check_in_sight(opened, [".fraction-giant", ".piece-length"])


def test_a_compound_piece_shows_left_and_right_which_way_and_which_edge(phone, server):
    opened = phone(service_workers="block").pages[0]
    opened.goto(f"{server.address}#work-out/crown")
    try_example(opened)
    keep_as(opened, "Crown of the cabinet")
    open_place(opened, "At the saw")
    opened.get_by_role("button", name="Close the message").tap()
    check_in_sight(opened)
    for end, turn, edge in (("Left", "right", "top"), ("Right", "left", "bottom")):
        steps = opened.locator(".ends > div", has_text=f"{end}:").locator("dd").all_text_contents()
        assert [step for step in steps if "°" not in step] == [
            f"miter {turn}",
            "bevel left",
            f"{edge} edge to fence",
        ]
    figures = opened.locator(".ends dd:not(.end-way)").evaluate_all(
        "(all) => all.map((each) => parseFloat(getComputedStyle(each).fontSize))"
    )
    assert len(figures) == 4
    assert min(figures) >= 28


def test_whatever_is_pressed_beside_the_saw_is_large_enough_for_a_thick_glove(page):
    def check():
        assert in_page(page, "sawsideSmallTargets", 72) == []

    check()
    tap(page, TEST_CUT)
    page.get_by_label("Measured", exact=True).tap()
    check()
    tap_keys(page, "51 1/8")
    page.get_by_role("button", name="Done").tap()
    page.get_by_role("button", name=SAVE_TO_PIECE).wait_for()
    check()
    tap(page, SAVE_TO_PIECE)
    page.locator(".notice").wait_for()
    check()
    tap(page, "About this piece")
    type_into(page, ROUGH_LENGTH, "1/2")
    check()
    page.get_by_role("button", name="Done").tap()
    tap(page, SAVE)
    page.locator(".piece").wait_for()
    choose(page, "Order", "By board")
    page.get_by_text("2 1/4″ wide: 1 cut, 51 9/16″").wait_for()
    check()


def test_a_panel_is_told_with_its_width_beside_its_length(phone, server):
    """A panel is ripped before it is crosscut: its width isn't to be looked for below."""
    opened = phone(service_workers="block").pages[0]
    opened.goto(f"{server.address}#work-out/carcass")
    try_example(opened)
    keep_as(opened, "Carcass")
    open_place(opened, "At the saw")
    opened.get_by_role("button", name="Close the message").tap()
    wide = opened.locator(".piece-across")
    for _ in each_piece(opened):
        assert wide.inner_text().startswith("× ")
        check_in_sight(opened, [*NEEDED, ".piece-across"])
