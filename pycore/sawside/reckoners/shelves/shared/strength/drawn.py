"""The picture of a loaded shelf: how far it bends, beside its limit, and how far it may span."""

from sawside.drawing.lazy import force, lazy
from sawside.drawing.shelves.sagging_shelf import Judged, sagging_shelf
from sawside.lengths.fine import fine_text
from sawside.reckoners.shelves.shared.strength.verdict import between


@lazy
def shelf_drawn(case, shelf, show, longest):
    """The drawing, with a gauge of the span where the `longest` one is of interest."""
    when = "long-term" if case.given.judged == "years" else "now"
    judged = Judged(case.given.load, case.factor, when, case.limit(shelf), force(longest))
    return sagging_shelf(show, shelf, judged, _captions(case, shelf, show, when))


def _captions(case, shelf, show, when):
    """What is under the drawing where both edges differ."""
    if not shelf.plate:
        return ()
    edges = shelf.plate.edges
    front, back, most = (
        fine_text(each * case.factor, show) for each in (edges.front, edges.back, shelf.sag)
    )
    middle = (f"between the edges {most}",) if between(shelf) else ()
    return f"front {front}, back {back} (line) {when}", *middle
