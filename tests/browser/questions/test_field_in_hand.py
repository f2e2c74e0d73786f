"""The field that a thumb types into stays in sight above the keys, whatever comes and goes."""

import pytest

from tests.browser.hand import choose, open_question, tap_keys, try_example, type_into
from tests.browser.project.in_project import keep_reading, take, type_reading


@pytest.fixture
def small(page):
    """A small phone that has started: no line of its first visit comes or goes."""
    page.set_viewport_size({"width": 360, "height": 740})
    type_reading(page, "40")
    page.locator("#status").wait_for(state="hidden")
    return page


def answered(page):
    page.locator("#sheet .peek-answer").wait_for()


def high(field):
    return field.bounding_box()["y"]


def is_above_the_keys(page, field):
    box = field.bounding_box()
    head = page.locator("header").first.bounding_box()
    keys = page.locator("#sheet").bounding_box()["y"]
    return head["y"] + head["height"] <= box["y"] and box["y"] + box["height"] <= keys


def test_a_first_answer_below_leaves_the_field_where_it_is(small):
    """A long answer with its cautions comes below, the drawing above, all at once."""
    page = small
    open_question(page, "molding around the top", "Molding on a case")
    choose(page, "Molding", "Crown")
    for label, text in (("Outside width", "40"), ("Outside depth", "14"), ("Face width", "3 1/4")):
        type_into(page, label, text)
    field = page.locator("input[name=spring]")
    field.tap()
    before = high(field)
    tap_keys(page, "38")
    answered(page)
    page.locator(".asked-picture svg").wait_for()
    assert high(field) == pytest.approx(before, abs=2)


def test_a_name_that_is_told_above_leaves_the_field_where_it_is(small):
    page = small
    keep_reading(page, "Opening", "17 31/32")
    open_question(page, "cabinet doors", "Cabinet doors")
    page.get_by_label("Width", exact=True).tap()
    take(page, "Opening")
    field = page.get_by_label("Height", exact=True)
    field.tap()
    before = high(field)
    tap_keys(page, "30")
    answered(page)
    page.locator(".chip").first.wait_for()
    assert high(field) == pytest.approx(before, abs=2)


def test_a_row_of_a_list_is_in_sight_when_it_is_touched(small):
    """The help of a list stands above its rows, and comes with the touch."""
    page = small
    open_question(page, "alcove", "The space")
    try_example(page)
    rows = page.locator(".field-many input").locator("visible=true")
    for row in reversed(rows.all()):
        row.tap()
        page.locator("#sheet .sheet-acts").wait_for()
        assert is_above_the_keys(page, row)
        page.locator("#sheet").get_by_role("button", name="Done").tap()


def test_a_verdict_that_stands_alone_is_whole_above_the_keys(small):
    page = small
    open_question(page, "drawer", "Drawer box")
    try_example(page)
    page.get_by_label("Opening width", exact=True).tap()
    answered(page)
    verdict = page.locator("#sheet .peek-answer strong")
    assert verdict.inner_text().endswith("deep")
    cut_off = "e => e.scrollWidth > e.clientWidth || e.scrollHeight > e.clientHeight + 1"
    assert not verdict.evaluate(cut_off)
