"""From a parts list to its plan, to the saw, one piece scrapped, planned again, and undone."""

import pytest

from tests.browser.hand import choose, field_called, keep_as, open_place, try_example
from tests.browser.plan.in_plan import (
    keep_carcass,
    keep_panels,
    open_plan,
    to_the_saw,
    use_plan,
    watched_phone,
)
from tests.browser.project.in_project import open_entry
from tests.browser.saw.test_saw_in_sight import check_in_sight, in_page, tap
from tests.browser.test_accessible import axe
from tests.browser.words import PLAN_AGAIN, SAVE_CHANGE, SCRAP

SHARED = """
window.shared = [];
navigator.share = async ({ title, text }) => { window.shared.push([title, text]); };
"""
IN_SIGHT = [".piece-name", ".piece-length", ".drawing-bold", ".ends", ".saw-key", ".piece-place"]


@pytest.fixture
def planned(phone, server):
    """A carcass with a plan that was found, not used yet."""
    page = watched_phone(phone, server, SHARED)
    keep_carcass(page, server)
    open_plan(page)
    page.get_by_role("button", name="Stop", exact=True).wait_for(state="hidden")
    return page


def board_names(page):
    """What the boards of the plan are called, in their order."""
    return page.locator(".plan-board h4").all_text_contents()


def shown_cut(page):
    """How many of each piece are cut, by the list of the saw."""
    tap(page, "List of all pieces")
    page.get_by_role("heading", name="All pieces").wait_for()
    states = page.locator(".piece-state").all_text_contents()
    page.get_by_role("link", name="‹ At the saw").tap()
    page.locator(".saw-main").wait_for()
    return states


def test_a_parts_list_is_planned_cut_scrapped_planned_again_and_undone(planned):
    names = board_names(planned)
    assert names
    use_plan(planned)
    assert board_names(planned) == names
    to_the_saw(planned)
    place = planned.locator(".piece-place")
    assert place.inner_text().startswith(names[0])
    # What is in hand is lit up on its board.
    assert planned.locator(".drawing-bold .shape-lit").count() > 0
    tap(planned, "Cut one")
    planned.locator(".saw-key:enabled", has_text="Undo").wait_for()
    cut = shown_cut(planned)
    assert any("1 of" in each or each == "Cut" for each in cut)

    tap(planned, SCRAP)
    again = planned.locator(".notice").get_by_role("button", name=PLAN_AGAIN)
    again.tap()
    planned.get_by_role("heading", name="Cutting plan").wait_for()
    use_plan(planned)
    assert planned.locator(".plan-stale:visible").count() == 0
    notice = planned.locator(".notice")
    notice.get_by_role("button", name="Undo").tap()
    planned.locator(".plan-stale:visible").wait_for()
    assert planned.get_by_role("button", name=PLAN_AGAIN).is_visible()


def test_a_bad_board_is_said_at_the_saw_and_what_was_to_come_out_of_it_is_planned_again(planned):
    use_plan(planned)
    to_the_saw(planned)
    name = planned.locator(".piece-name").inner_text()
    tap(planned, "Bad board")
    planned.locator(".notice").get_by_role("button", name=PLAN_AGAIN).wait_for()
    tap(planned, "Undo")
    planned.locator(".notice", has_text="Undid").wait_for()
    assert planned.locator(".piece-name").inner_text() == name
    tap(planned, "Bad board")
    planned.locator(".notice").get_by_role("button", name=PLAN_AGAIN).tap()
    use_plan(planned)
    assert planned.locator(".plan-stale:visible").count() == 0


def test_the_buy_list_is_shared_as_text_and_leaves_as_a_table(planned):
    planned.get_by_role("button", name="Share buy list").tap()
    planned.wait_for_function("() => window.shared.length === 1")
    title, text = planned.evaluate("window.shared[0]")
    assert title == "Buy list"
    assert text
    use_plan(planned)
    with planned.expect_download() as given:
        planned.get_by_role("button", name="Export buy list").tap()
    assert given.value.suggested_filename.endswith(".csv")


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
def test_the_plan_can_be_read_and_touched(phone, server, dark):
    page = phone(dark=dark, service_workers="block").pages[0]
    keep_carcass(page, server)
    open_plan(page)
    for ready in (lambda: None, lambda: use_plan(page)):
        ready()
        for board in page.locator(".plan-board:not([open]) > summary").all():
            board.tap()
        assert axe(page)["wrong"] == []
        assert in_page(page, "sawsideSmallTargets") == []
        page.evaluate("document.documentElement.style.fontSize = '200%'")
        assert not page.evaluate("document.querySelector('#place').scrollWidth > innerWidth")
        assert in_page(page, "sawsideBrokenWords") == []
        page.evaluate("document.documentElement.style.fontSize = ''")


def test_at_the_saw_a_piece_and_its_board_are_in_sight_and_large(planned):
    use_plan(planned)
    to_the_saw(planned)
    planned.get_by_role("button", name="Close the message").tap()
    check_in_sight(planned, IN_SIGHT)
    assert in_page(planned, "sawsideSmallTargets", 72) == []
    assert axe(planned)["wrong"] == []


def test_a_piece_that_comes_out_of_several_boards_is_there_for_each(phone, server):
    page = watched_phone(phone, server)
    # Two of these go on a sheet of 8 ft by 4 ft, whichever way they lie.
    keep_panels(page, server, [(47, 46, 5)])
    open_plan(page)
    use_plan(page)
    assert len(board_names(page)) == 3
    to_the_saw(page)
    following = page.get_by_role("button", name="Next ›")
    left = []
    for board in range(3):
        page.locator(".piece-place", has_text=f"Sheet {board + 1},").wait_for()
        left.append(page.locator(".piece-left").inner_text())
        assert page.get_by_text("Cut this one from Sheet 1 first").is_visible() == (board > 0)
        if board < 2:
            following.tap()
    assert sorted(left) == ["1 left of 1", "2 left of 2", "2 left of 2"]
    assert following.is_disabled()


def test_a_piece_says_what_is_cut_before_it_until_that_is_cut(phone, server):
    page = watched_phone(phone, server)
    # Lengths of 40 and of 30 come off one sheet, then two strips and three are ripped out of these.
    keep_panels(page, server, [(40, 20, 2), (30, 15, 3)])
    open_plan(page)
    use_plan(page)
    to_the_saw(page)
    first = page.locator(".piece-first")
    page.locator(".piece-first", has_text="First: Set the stop to 40″. Crosscut 1.").wait_for()
    assert "Then" not in first.inner_text()
    page.get_by_role("button", name="Next ›").tap()
    page.locator(".piece-first", has_text="Then 1 more cut, listed below.").wait_for()
    page.get_by_role("button", name="‹ Back").tap()
    tap(page, "Cut one")
    first.wait_for(state="hidden")
    page.get_by_role("button", name="Next ›").tap()
    check_in_sight(page, IN_SIGHT)
    assert page.locator(".ends").inner_text().split("\n") == ["Both ends: square", "0°"]
    # The first length is off by now; what the second piece comes out of is not.
    page.locator(".piece-first", has_text="First: Set the stop to 30″. Crosscut 1.").wait_for()
    assert "Then" not in first.inner_text()


def test_without_a_plan_the_saw_has_no_order_by_one(planned):
    use_plan(planned)
    to_the_saw(planned)
    open_place(planned, "Project")
    planned.get_by_role("button", name="Undo", exact=True).first.tap()
    planned.locator(".notice", has_text="Undid").wait_for()
    open_place(planned, "At the saw")
    planned.locator(".saw-main").wait_for()
    assert planned.locator(".drawing-bold .shape-lit").count() == 0
    choose(planned, "Order", "By part")
    planned.locator(".saw-main").wait_for()


def test_a_piece_that_no_wood_holds_is_said_with_the_way_to_its_line(phone, server):
    page = watched_phone(phone, server)
    keep_panels(page, server, [(110, 47, 2), (40, 20, 1)])
    open_plan(page)
    verdict = page.locator(".plan-verdict").inner_text()
    assert "No wood for 2 pieces." in verdict
    assert "1 piece to cut" in verdict
    out = page.get_by_role("region", name="Not in the plan")
    assert "Panel 1" in out.inner_text()
    out.get_by_role("button", name="Open its line").tap()
    page.locator("#place[data-shows='work-out/piece_by_hand/1']").wait_for()
    assert page.get_by_label("Length", exact=True).input_value() == "110"


def test_wood_on_hand_and_to_buy_are_a_touch_away(planned):
    planned.get_by_role("button", name="Wood on hand").tap()
    planned.get_by_role("heading", name="Wood on hand").wait_for()
    try_example(planned)
    keep_as(planned, "Rack")
    # Whoever came from the plan is back there, and it is made again with that wood.
    planned.get_by_role("heading", name="Cutting plan").wait_for()
    planned.get_by_text("No wood to buy on the project yet").wait_for()
    planned.get_by_role("button", name="Wood on hand").tap()
    # The project's own line by now, not the question anew.
    planned.locator("#place[data-shows^='work-out/wood_on_hand/']").wait_for()
    planned.get_by_role("link", name="‹ Back").tap()
    planned.get_by_role("heading", name="Cutting plan").wait_for()


def test_without_a_share_sheet_the_buy_list_is_copied(phone, server):
    page = phone(service_workers="block").pages[0]
    page.context.grant_permissions(["clipboard-read", "clipboard-write"])
    keep_carcass(page, server)
    page.evaluate("delete Navigator.prototype.share")
    open_plan(page)
    page.get_by_role("button", name="Share buy list").tap()
    page.get_by_text("Copied the buy list").wait_for()
    assert "sheet" in page.evaluate("navigator.clipboard.readText()")


def test_a_piece_touched_on_its_board_is_named_by_keyboard_too(planned):
    touched = planned.locator(".plan-touched").first
    planned.locator(".plan-board .part-touch").first.focus()
    planned.keyboard.press("Enter")
    assert " × " in touched.inner_text()
    assert planned.locator(".part-touch[aria-pressed='true']").count() == 1


def test_a_plan_of_other_sizes_says_so_here_and_at_the_saw(planned):
    use_plan(planned)
    open_entry(planned, "Carcass", "Open")
    field_called(planned, "Height").fill("30")
    planned.get_by_role("button", name="Done").tap()
    planned.locator("output[name=result]").get_by_role("button", name=SAVE_CHANGE).tap()
    planned.locator("#place[data-shows^='project/']").wait_for()
    planned.evaluate("location.hash = 'plan'")
    planned.locator(".plan-stale", has_text="Side").wait_for()
    # What is old is not followed by a thumb in a hurry.
    assert planned.locator("#place").get_by_role("button", name="At the saw").is_hidden()
    open_place(planned, "At the saw")
    choose(planned, "Order", "By plan")
    planned.locator(".entry-mark", has_text="Side").wait_for()
    planned.locator(".saw-tools").get_by_role("button", name=PLAN_AGAIN).tap()
    use_plan(planned)
    assert planned.locator(".plan-stale:visible").count() == 0


def test_what_is_left_of_a_board_goes_into_the_wood_on_hand(phone, server):
    page = watched_phone(phone, server)
    keep_panels(page, server, [(40, 20, 1)])
    open_plan(page)
    use_plan(page)
    assert page.get_by_role("button", name="Save the offcuts").count() == 0
    to_the_saw(page)
    tap(page, "Cut one")
    page.get_by_text("All pieces cut").wait_for()
    tap(page, "Save the offcuts")
    page.locator(".notice").get_by_role("button", name="Undo").wait_for()
    page.evaluate("location.hash = 'plan'")
    page.get_by_text("Left over, in the wood on hand:").wait_for()
    assert page.get_by_role("button", name="Save the offcuts").count() == 0
    page.get_by_role("button", name="Wood on hand").tap()
    page.locator("#place[data-shows^='work-out/wood_on_hand/']").wait_for()
