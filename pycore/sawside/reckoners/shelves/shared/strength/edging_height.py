"""How high a strip along the edge of a shelf must be for the sag to stay within a limit."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.display import mark_text
from sawside.reckoners.shelves.shared.strength.answers import told
from sawside.reckoners.shelves.shared.strength.case import shelf_case

_MOST = Fraction(12)
_REMEDIES = {
    "front": "It holds up the front only. Put edging on front and back, or a cleat along the back.",
    "back": "It holds up the back only. Put edging on front and back.",
    "both": "Use thicker edging, a thicker board, a shorter span or a lighter load.",
}


def edging_height(given, show):
    """The least height of the strip in inches, on the first mark; 0 where none is needed."""
    if given.strip == "none":
        raise Refusal(
            "conflict",
            "To find its height, Sawside needs to know which edge the edging is on.",
            "Pick the front, the back or both.",
            field="strip",
        )
    case = shelf_case(given, strip_height=Fraction(0))
    if given.cleat == "back" and given.strip == "back":
        raise Refusal(
            "conflict",
            "Edging along the back does nothing where a cleat holds the back.",
            "Put the edging along the front.",
            field="strip",
        )
    exact = case.shelf.solved("strip_height", case.excess, Fraction(0), _MOST)
    if exact is None and case.excess(case.shelf) > 0:
        raise Refusal(
            "impossible",
            f"Even with edging {show.text(_MOST)} high, the shelf sags past the limit.",
            _REMEDIES["both" if given.strip == "both" or given.cleat == "back" else given.strip],
            field="strip" if given.strip != "both" and given.cleat != "back" else "strip_thickness",
        )
    exact = Fraction(0) if exact is None else exact
    height = show.rounded(exact, "reach")
    shelf = case.shelf.changed(strip_height=height.mark)
    line = (
        f"Within the limit from edging {show.number(exact)} high → {show.text(height)}"
        if height.mark
        else "The board alone stays within the limit: no edging needed"
    )
    return told(
        case,
        shelf,
        show,
        solved={"strip_height": height},
        working=(line,),
        found=f"Edging {mark_text(height, show.settings.display)} high"
        if height.mark
        else "No edging needed",
    )
