"""What mends a shelf that sags too much: a shorter span, a thicker board, edging or a support."""

from fractions import Fraction

from sawside.drawing.lazy import lazy
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.shelves.shared.strength.fields import MOST_THICKNESS
from sawside.wood.numbers import metric
from sawside.wood.strength.shelf import Strip

MOST_SPAN = Fraction(240)
_MOST_EDGING = Fraction(3)
_WHERE = {"front": "along the front", "back": "along the back", "both": "front and back"}


@lazy
def fixes_text(case, show):
    """Each change that alone brings the shelf within its limit, in one sentence."""
    ways = [*_shorter(case, show), *_thicker(case, show), *_edged(case, show)]
    if not ways:
        return "Put less on it, or put a support under the center."
    said = ", ".join([*ways[:-1], f"or {ways[-1]}"]) if len(ways) > 2 else " or ".join(ways)
    return f"{said[0].upper()}{said[1:]}."


def longest_span(case, show):
    """The longest span within the limit, on a sixteenth or a millimeter; None where that says
    nothing: the ends hang over, no span is short enough, or the longest figured still is."""
    if case.shelf.supports == "overhanging" or case.excess(case.shelf.changed(span=MOST_SPAN)) <= 0:
        return None
    return _last(lambda span: case.excess(case.shelf.changed(span=span)) <= 0, MOST_SPAN, show)


def _shorter(case, show):
    span = longest_span(case, show)
    if span:
        yield f"shorten the span to {show.text(show.rounded(span, 'stay under'))} or less"


def _thicker(case, show):
    thickness = _first(case, "thickness", case.shelf, MOST_THICKNESS / 2, show)
    if thickness:
        yield f"use a board {show.text(show.rounded(thickness, 'reach'))} thick"


def _edged(case, show):
    """Edging where it is, made higher; where there is none, along the front, or else on both."""
    shelf = case.shelf
    if shelf.strip is not None:
        tried = (shelf.strip,)
    else:
        thick = 18 * INCHES_PER["mm"] if metric(show) else Fraction(3, 4)
        edges = ("front",) if shelf.cleat else ("front", "both")
        tried = tuple(_strip(shelf, thick, each) for each in edges)
    for strip in tried:
        height = _first(case, "strip_height", shelf.changed(strip=strip), _MOST_EDGING, show)
        if height:
            high = show.text(show.rounded(height, "reach"))
            thick = show.text(strip.thickness)
            yield (
                f"make the edging {high} high"
                if shelf.strip
                else f"add edging {_WHERE[strip.edges]}, {high} high by {thick} thick"
            )
            return


def _strip(shelf, thick, edges):
    """Edging of the board's own material, flush with its top."""
    return Strip(shelf.stiffness, thick, Fraction(0), edges, weight=shelf.weight, slide=shelf.slide)


def _first(case, what, shelf, most, show):
    """The least of `what` up to `most` that keeps the limit; None where it never does."""
    if case.excess(shelf.changed(**{what: most})) > 0:
        return None
    beyond = _last(lambda size: case.excess(shelf.changed(**{what: size})) > 0, most, show)
    return (beyond or 0) + _step(show)


def _last(holds, most, show):
    """The last mark below `most` that `holds`, which holds up to one and no further; or None."""
    step = _step(show)
    low, high = 0, int(most / step)
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (middle, high) if holds(middle * step) else (low, middle)
    return low * step or None


def _step(show):
    """How finely a change is told: nobody planes a board to a hair for it."""
    return INCHES_PER["mm"] if metric(show) else Fraction(1, 16)
