"""The cuts across a side: dadoes for shelves, and rabbets at its ends. Inches."""

from sawside.errors import Refusal
from sawside.lengths.marks import GRIDS, to_mark
from sawside.lengths.units import METRIC


def a_third(given, show):
    """A third of the side on a mark that a depth is set to: a sixteenth, or a whole millimeter."""
    grid = GRIDS["1 mm" if show.settings.unit in METRIC else "1/16"]
    return to_mark(given.side_thickness / 3, grid).mark


def cuts_of(given, show, width):
    """(name, lower edge, upper edge) of every cut, rising; "impossible" where two meet."""
    cuts = []
    for number, place in enumerate(given.places or (), 1):
        up = given.side - place if given.measured == "upper" else place
        low = up - {"bottom": 0, "top": given.shelf, "center": given.shelf / 2}[given.edge]
        cuts.append((f"Dado {number}", low, low + width))
    rabbet = given.panel + given.play if given.rabbets != "none" else 0
    if given.rabbets in ("lower", "both"):
        cuts.append(("Bottom rabbet", 0, rabbet))
    if given.rabbets in ("upper", "both"):
        cuts.append(("Top rabbet", given.side - rabbet, given.side))
    cuts.sort(key=lambda cut: cut[1])
    if not cuts:
        raise Refusal(
            "missing",
            "There’s nothing to cut.",
            "Enter a shelf height or a rabbet.",
            field="places",
        )
    _refuse_meeting(given, show, cuts)
    return cuts


def _refuse_meeting(given, show, cuts):
    """ "impossible" where a cut runs into the one below it, or past an end of the side."""
    below, before = 0, "the bottom end of the side"
    for name, low, high in cuts:
        if low < below or high > given.side:
            met = before if low < below else "the top end of the side"
            raise Refusal(
                "impossible",
                f"{name}, from {show.text(low)} to {show.text(high)}, runs into {met}.",
                "Check the heights, the shelf line, and where you measured from.",
                field="places",
            )
        below, before = high, name
