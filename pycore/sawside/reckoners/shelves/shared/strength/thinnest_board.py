"""How thick a shelf must be for its sag to stay within a limit."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.display import mark_text
from sawside.reckoners.shelves.shared.strength.answers import told
from sawside.reckoners.shelves.shared.strength.case import shelf_case
from sawside.reckoners.shelves.shared.strength.fields import MOST_THICKNESS

_LEAST = Fraction(1, 16)


def thinnest_board(given, show):
    """The least thickness in inches, on the first mark that keeps within the limit."""
    case = shelf_case(given, thickness=_LEAST)
    exact = case.shelf.solved("thickness", case.excess, _LEAST, MOST_THICKNESS)
    if exact is None and case.excess(case.shelf) > 0:
        raise Refusal(
            "impossible",
            f"Even {show.text(MOST_THICKNESS)} thick, the shelf sags past the limit.",
            "Use a shorter span, a lighter load or another support.",
            field="span",
        )
    exact = _LEAST if exact is None else exact
    thickness = show.rounded(exact, "reach")
    shelf = case.shelf.changed(thickness=thickness.mark)
    line = f"Within the limit from {show.number(exact)} thick → {show.text(thickness)}"
    found = f"At least {mark_text(thickness, show.settings.display)} thick"
    return told(case, shelf, show, solved={"thickness": thickness}, working=(line,), found=found)
