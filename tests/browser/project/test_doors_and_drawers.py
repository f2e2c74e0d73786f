"""From a face frame to a pair of inset doors and two drawers, hung, and a reading corrected."""

import re

import pytest

from tests.browser.hand import choose, keep_as, open_place, open_question, type_into
from tests.browser.project.in_project import accept, correct, start_sample_case
from tests.browser.project.in_project import take as take_main

FRAME = "Face frame"
DEEP = "Inside depth"


@pytest.fixture
def cased(page):
    """The sample case: its face frame has two openings, and the right one is for drawers."""
    page.set_viewport_size({"width": 360, "height": 740})
    start_sample_case(page)
    return page


def take(page, label, line, answer):
    """Fill a field with an answer of a line of the project that is not its main one, by thumb."""
    page.get_by_label(label, exact=True).tap()
    page.get_by_role("button", name="From project").tap()
    dialog = page.get_by_role("dialog")
    dialog.get_by_role("button", name=f"Other numbers from {line}", exact=True).tap()
    dialog.get_by_role("button", name=re.compile(f"^{re.escape(answer)}\\b")).first.tap()
    dialog.wait_for(state="detached")


def hang_doors(page):
    open_question(page, "pair of doors", "Cabinet doors")
    take(page, "Width", FRAME, "Opening width 1")
    take(page, "Height", FRAME, "Opening height 1")
    type_into(page, "Doors", "2")
    keep_as(page, "Pair")
    open_question(page, "how many hinges", "Hinge layout")
    take(page, "Door height", "Pair", "Door height")
    page.get_by_label("Door width", exact=True).tap()
    take_main(page, "Pair")
    type_into(page, "Hinge length", "2 1/2")
    keep_as(page, "Pair hinges")


def stack_drawers(page):
    open_question(page, "drawer heights", "Drawer heights")
    take(page, "Opening height", FRAME, "Opening height 1")
    type_into(page, "Drawers", "2")
    choose(page, "Between drawers", "Rails")
    keep_as(page, "Stack")
    for number in ("1", "2"):
        open_question(page, "drawer box", "Drawer box")
        take(page, "Opening width", FRAME, "Opening width 2")
        take(page, "Opening height", "Stack", f"Openings, from the top {number}")
        take(page, "Depth inside", "Carcass", DEEP)
        keep_as(page, f"Drawer {number}")


def test_a_pair_of_doors_and_two_drawers_are_hung_and_follow_the_alcove(cased):
    """An eighth less in the narrowest width leaves each of two openings a sixteenth less: each door
    of the pair a thirty-second, each drawer a sixteenth. Worked by hand."""
    page = cased
    hang_doors(page)
    stack_drawers(page)
    correct(page, "Alcove width, top", "37 3/8")
    changes = page.get_by_role("dialog")
    changes.get_by_text(re.compile(r"^\d+ lines change")).tap()
    told = changes.inner_text()
    for line, less in (("Pair", "1/32"), ("Drawer 1", "1/16"), ("Drawer 2", "1/16")):
        assert re.search(rf"\b{line}[^−]*−{less}″", told), told
    accept(page)
    open_place(page, "At the saw")
    page.get_by_role("button", name="List").tap()
    rail = page.locator(".piece-line").filter(has_text="Pair: Rail")
    rail.get_by_text("four and five sixteenths inches").wait_for()
