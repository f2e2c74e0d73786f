"""What mends a shelf that sags too much: a shorter span, a thicker board, edging or a support."""

from dataclasses import replace
from fractions import Fraction

from sawside.drawing.lazy import force, lazy
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.shelves.shared.strength.fields import MOST_THICKNESS
from sawside.wood.numbers import metric
from sawside.wood.strength.shelf import Strip

MOST_SPAN = Fraction(240)
_MOST_EDGING = Fraction(3)
_WHERE = {"front": "along the front", "back": "along the back", "both": "front and back"}


@lazy
def fixes_text(case, show, longest):
    """Each change that alone brings the shelf within its limit, in one sentence; `longest` is its
    `longest_span`."""
    span = force(longest)
    ways = [*_shorter(case, show, span), *_thicker(case, show), *_edged(case, show)]
    if not ways:
        more = f" no more than {show.text(span)} apart" if span else ""
        return f"Put less on it, or add supports{more}."
    said = ", ".join([*ways[:-1], f"or {ways[-1]}"]) if len(ways) > 1 else ways[0]
    return f"{said[0].upper()}{said[1:]}."


@lazy
def longest_span(case, show):
    """The longest span within the limit, on a sixteenth or a millimeter; None where that says
    nothing: the ends hang over, no span is short enough, or the longest figured still is."""
    shelf = case.shelf
    if shelf.supports == "overhanging" or case.excess(shelf.changed(span=MOST_SPAN)) <= 0:
        return None
    near = shelf.span * _cube_root(1 / _how_much(case))
    return last_mark(
        lambda span: case.excess(shelf.changed(span=span)) <= 0, MOST_SPAN, _step_of(show), near
    )


def _shorter(case, show, span):
    if span and span * 4 > case.shelf.span:  # nobody moves the sides together by more
        yield f"shorten the span to {show.text(show.rounded(span, 'stay under'))} or less"


def _thicker(case, show):
    near = case.shelf.thickness * _cube_root(_how_much(case))
    thickness = _first(case, "thickness", case.shelf, MOST_THICKNESS / 2, show, near)
    if thickness:
        yield f"use a board {show.text(show.rounded(thickness, 'reach'))} thick"


def _how_much(case):
    """How many times the limit the sag is."""
    return case.shelf.sag * case.factor / case.limit(case.shelf)


def _cube_root(ratio):
    """About so: a sag for its span is as the cube of span and thickness."""
    return Fraction(float(ratio) ** (1 / 3))


def _edged(case, show):
    """Edging along the front, or else on both edges; where there is some, that made higher, or put
    on both."""
    strip, shelf = case.shelf.strip, case.shelf
    first = strip or _strip(shelf, 18 * INCHES_PER["mm"] if metric(show) else Fraction(3, 4))
    both = () if shelf.cleat or first.edges == "both" else (replace(first, edges="both"),)
    for each in (first, *both):
        height = _least_height(case, shelf.changed(strip=each), show)
        if height:
            high, thick = show.text(show.rounded(height, "reach")), show.text(each.thickness)
            if strip is None:
                yield f"add edging {_WHERE[each.edges]}, {high} high by {thick} thick"
            elif each.edges == strip.edges:
                yield f"make the edging {high} high"
            else:
                yield f"put the edging front and back, {high} high"
            return


def _least_height(case, shelf, show):
    """The least height of the shelf's edging that keeps the limit, and covers the board's edge
    where it is on it; None where none up to the most does."""
    height = _first(case, "strip_height", shelf, _MOST_EDGING, show, _MOST_EDGING / 2)
    if height is None or shelf.strip.under or height >= shelf.thickness:
        return height
    return (
        shelf.thickness if case.excess(shelf.changed(strip_height=shelf.thickness)) <= 0 else None
    )


def _strip(shelf, thick):
    """Edging along the front, of the board's own material and flush with its top."""
    material = {"weight": shelf.weight, "slide": shelf.slide}
    return Strip(shelf.stiffness, thick, Fraction(0), "front", **material)


def _first(case, what, shelf, most, show, near):
    """The least of `what` up to `most` that keeps the limit, about `near`; None where it never
    does."""
    if case.excess(shelf.changed(**{what: most})) > 0:
        return None
    step = _step_of(show)
    return step + (
        last_mark(lambda size: case.excess(shelf.changed(**{what: size})) > 0, most, step, near)
        or 0
    )


def _step_of(show):
    """How finely a change is told: nobody planes a board to a hair for it."""
    return INCHES_PER["mm"] if metric(show) else Fraction(1, 16)


def last_mark(holds, most, step, near):
    """The last multiple of `step` below `most` that `holds`, which holds up to one and no further;
    None where it is the first. It is looked for from `near` on, in strides that grow."""
    low, high, stride = 0, int(most / step), 1
    place, onward = min(max(int(near / step), 1), high - 1), None
    while low < place < high:
        found = holds(place * step)
        low, high = (place, high) if found else (low, place)
        if onward is not None and found != onward:
            break
        onward, stride = found, stride * 4
        place += stride // 4 if found else -(stride // 4)
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (middle, high) if holds(middle * step) else (low, middle)
    return low * step or None
