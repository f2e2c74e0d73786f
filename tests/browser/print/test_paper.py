"""A story stick and a drilling template, printed by the browser and measured on the paper.

Widths and heights of sheets: ANSI/ASME Y14.1 (Letter) and ISO 216 (A4), both from memory.
"""

from itertools import pairwise

import pytest

from tests.browser.hand import choose, unfold
from tests.browser.print.on_paper import lines, pages, upright
from tests.browser.test_accessible import axe
from tests.browser.words import EXAMPLE

SIZES = {"Letter": (215.9, 279.4), "A4": (210, 297)}
TRUE = 0.1  # of 100 mm


def show_answer(page, server, key, **values):
    """Open a question by its address and fill in what is given, over its example."""
    page.goto(f"{server.address}#work-out/{key}")
    page.get_by_role("button", name=EXAMPLE).tap()
    for name, text in values.items():
        unfold(page.locator(f"input[name={name}]").first).fill(text)
    page.locator("output[name=result]:not(.waiting) .main-answer").wait_for()


def open_paper(page, paper):
    """From the answer to its sheets, for one kind of paper."""
    if page.get_by_role("button", name="Print at true size").count():
        page.get_by_role("button", name="Print at true size").tap()
    choose(page, "Paper", paper)
    page.locator(f"ol.on-{paper.lower()}").wait_for()


def bars(size, ink):
    """The lengths of the four bars of a sheet: 100 mm and 4 in, lying and upright."""
    width, height = size
    for y in (38, 43):
        first, second, *_ = upright(ink, (10, 130), (y - 1.4, y - 0.6), 0.9)
        yield second - first
    for x in (width - 23, width - 17):
        *_, second, first = lines(ink, (x - 1.3, x - 0.6), (height / 3, height - 10), 0.9)
        yield first - second


def check_page(paper, width, height, ink):
    """The page has the paper's size, white margins, and true bars."""
    assert (width, height) == pytest.approx(SIZES[paper], abs=0.2)
    assert ink.mean() < 0.03
    for edge in (ink[:200], ink[-200:], ink[:, :200], ink[:, -200:]):
        assert edge.max() < 0.1
    assert list(bars(SIZES[paper], ink)) == pytest.approx([100, 101.6] * 2, abs=TRUE)


def check_stick(paper, sheets):
    """Three sheets, joined by their dashed lines, bring every mark to its place.

    Openings worked by hand: (20 - 2 x 3/4) / 3 = 6 1/6 in, so shelf 2 stands at 13 1/12 in.
    """
    assert len(sheets) == 3
    joints, marks = [], []
    for width, height, ink in sheets:
        check_page(paper, width, height, ink)
        marks.append(lines(ink, (18, 40), (45, height - 10), 0.9))
        joints.append(lines(ink, (112, 137), (45, height - 10), 0.4, 0.8))
    assert [len(each) for each in joints] == [2, 4, 2]
    heights, moved = [], 0.0
    for at, found in enumerate(marks):
        if at:
            above, below = joints[at - 1][:2], joints[at][-2:]
            assert above[1] - above[0] == pytest.approx(below[1] - below[0], abs=0.05)
            moved += above[0] - below[0]
        heights += [y + moved for y in found]
    heights.sort(reverse=True)
    places = [0.0]  # a mark of an overlap stands on both sheets: within 0.2 mm it is one
    for place in (heights[0] - y for y in heights[1:]):
        if place - places[-1] > 0.2:
            places.append(place)
    expected = [0, 6 + 1 / 6, 6 + 11 / 12, 13 + 1 / 12, 13 + 5 / 6, 20]
    assert len(places) == len(expected)
    for place, inches in zip(places, expected, strict=True):
        assert place == pytest.approx(inches * 25.4, abs=TRUE * max(inches * 0.254, 1))


def check_template(sheet):
    """Holes 1 1/4 in apart, 2 in from either edge line."""
    width, height, ink = sheet
    check_page("Letter", width, height, ink)
    edges = upright(ink, (30, 185), (60, 70), 0.95)
    row = (edges[0] + edges[-1]) / 2
    assert edges[-1] - edges[0] == pytest.approx(101.6, abs=TRUE)
    holes = lines(ink, (row - 4.8, row - 3.5), (60, 250), 0.9)
    assert len(holes) >= 5
    for one, other in pairwise(holes):
        assert other - one == pytest.approx(31.75, abs=TRUE)


def test_what_is_printed_is_true_to_a_tenth_of_a_millimeter_in_a_hundred(phone, server):
    page = phone().pages[0]
    show_answer(page, server, "shelf_layout", height="20 in", thickness="3/4 in")
    choose(page, "Case", "Inside only")
    for paper in SIZES:
        open_paper(page, paper)
        page.get_by_text("Shelf 2 bottom", exact=True).wait_for()
        check_stick(paper, list(pages(page)))
    assert axe(page)["wrong"] == []

    show_answer(page, server, "pin_holes")
    open_paper(page, "Letter")
    check_template(list(pages(page))[1])
    page.evaluate("window.print = () => { document.body.dataset.printed = 'yes'; }")
    page.get_by_role("button", name="Print", exact=True).tap()
    assert page.locator("body").get_attribute("data-printed") == "yes"
