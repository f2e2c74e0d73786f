"""All pieces from the saw on one list; on its side and in large text number and keys are there."""

import pytest

from tests.browser.hand import keep_as, open_place, try_example
from tests.browser.project.in_project import accept, correct, fill_linked_rail, keep_reading
from tests.browser.saw.test_saw_in_sight import in_page, tap
from tests.browser.words import SCRAP


@pytest.fixture
def page(phone, server):
    """A door frame of four pieces and a rail that hangs on a reading."""
    opened = phone(service_workers="block").pages[0]
    opened.goto(f"{server.address}#work-out/mitered_frame")
    try_example(opened)
    keep_as(opened, "Door frame")
    keep_reading(opened, "Alcove width", "37 9/16")
    fill_linked_rail(opened)
    opened.locator("output[name=result]:not(.waiting) .main-answer").wait_for()
    keep_as(opened, "Top rail")
    open_place(opened, "At the saw")
    opened.get_by_role("button", name="Close the message").tap()
    return opened


def lines(page):
    """Each piece of the list: its name, and what is done of it."""
    page.get_by_role("heading", name="All pieces").wait_for()
    return page.locator(".piece-line").evaluate_all(
        """(all) => all.map((each) => [
            each.querySelector("strong").textContent,
            each.querySelector(".piece-state").textContent.replaceAll("\u00a0", " "),
        ])"""
    )


def test_all_pieces_are_one_tap_away_with_what_is_done_of_each(page):
    page.get_by_role("heading", name="Top rail").wait_for()
    tap(page, "Cut one")
    page.get_by_text("All cut", exact=True).wait_for()
    tap(page, "Next uncut")
    tap(page, "Cut one")
    page.get_by_text("1 left of 2").wait_for()
    tap(page, SCRAP)
    page.get_by_text("2 left of 2, 1 scrapped").wait_for()
    tap(page, "List of all pieces")
    found = lines(page)
    assert found[0] == ["Top rail", "Cut"]
    assert found[1][1] == "2 to cut, 1 scrapped"
    assert len(found) == 3

    page.get_by_role("button", name=found[2][0]).tap()
    page.get_by_role("heading", name=found[2][0]).wait_for()
    page.wait_for_function("(name) => document.title === `${name} · Sawside`", arg=found[2][0])


def test_a_piece_that_a_correction_made_wrong_says_so_in_the_list(page):
    tap(page, "Cut one")
    page.get_by_text("All cut", exact=True).wait_for()
    correct(page, "Alcove width", "37 7/16")
    accept(page)
    open_place(page, "At the saw")
    tap(page, "List of all pieces")
    assert ["Top rail", "Cut. 1 piece can be cut down by 1/8″."] in lines(page)


def in_sight(page, selectors):
    return in_page(page, "sawsideOutOfSight", selectors) == []


def keys_on_screen(page):
    """Whether every key is whole above the tabs, or beside them."""
    tabs = page.get_by_role("navigation", name="Places").bounding_box()
    foot = tabs["y"] if tabs["width"] > tabs["height"] else page.viewport_size["height"]
    boxes = [key.bounding_box() for key in page.locator(".saw-key").all()]
    return all(box["y"] >= 0 and box["y"] + box["height"] <= foot + 1 for box in boxes)


def test_on_its_side_the_number_is_whole_and_the_keys_stand_beside_it(page):
    page.set_viewport_size({"width": 740, "height": 360})
    assert in_sight(page, [".piece-name", ".piece-length", ".saw-key"])
    assert keys_on_screen(page)
    number = page.locator(".piece-length").bounding_box()
    first = page.locator(".saw-key").first.bounding_box()
    assert first["x"] >= number["x"] + number["width"]
    assert number["height"] >= 60
    assert in_page(page, "sawsideOverlaps") == []
    assert in_page(page, "sawsideSmallTargets", 56) == []


def test_at_twice_the_text_size_the_number_and_its_keys_are_on_the_screen(page):
    page.locator("html").evaluate("(html) => (html.style.fontSize = '200%')")
    assert in_sight(page, [".piece-name", ".fraction-giant", ".saw-key"])
    assert keys_on_screen(page)
    assert in_page(page, "sawsideOverlaps") == []


def test_what_the_piece_is_called_stays_while_the_rest_scrolls(page):
    page.locator(".saw-body").evaluate("(body) => body.scrollTo(0, 10000)")
    assert page.locator(".piece-name").bounding_box()["y"] >= 0
    assert not in_sight(page, [".piece-length"])
    assert in_sight(page, [".piece-name", ".saw-key"])
