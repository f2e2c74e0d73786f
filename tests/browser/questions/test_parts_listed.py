"""A case's parts are below its answer, each with its lines; at the saw and on paper as well."""

from tests.browser.hand import keep_as, open_place, try_example


def open_case(page, server):
    page.goto(f"{server.address}#work-out/carcass")
    try_example(page)
    return page.locator("output[name=result] .parts > li")


def test_each_part_has_its_size_and_what_is_cut_in_it(page, server):
    """The example: 36 × 32 × 15 1/2 of 23/32; worked by hand in the core's tests of this kind."""
    side = open_case(page, server).first
    side.get_by_text("2 × Side", exact=True).wait_for()
    side.get_by_text("32″ × 15 1/2″ × 23/32″").wait_for()
    notch = side.get_by_text("Notch 3 1/2″ high, 3″ deep")
    assert not notch.is_visible()
    side.get_by_text("2 × Side", exact=True).tap()
    notch.wait_for()
    assert page.locator(".parts > li").count() == 8


def test_at_the_saw_and_on_the_shop_sheet_a_part_says_what_is_cut_in_it(page, server):
    """The longest comes first: of those as long, the bottom."""
    open_case(page, server)
    keep_as(page, "Record cabinet")
    open_place(page, "At the saw")
    page.get_by_text("in the upper face").first.wait_for(state="attached")
    page.goto(f"{server.address}#shop-sheet")
    page.get_by_text("Notch 3 1/2″ high, 3″ deep").wait_for(state="attached")
