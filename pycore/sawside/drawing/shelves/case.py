"""A case from the front with its shelves: marks at the right, openings inside, height at the left.

The width is what is good to look at; heights are true to each other.
"""

from itertools import groupby

from sawside.drawing.lazy import force, lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon, rectangle
from sawside.geometry.case import ORIGINS
from sawside.lengths.real import nearby

_WIDE = 0.9
"""Of the height: a case is drawn flat enough for its texts, as it stands above a form."""
_MOST_LABELS = 8
_ROOM_OF_A_LABEL = 10
"""Labels closer than the height of the drawing over this would run into each other."""
_ROOM_OF_A_DIMENSION = 6


@lazy
def case_from_the_front(
    show,
    shelving,
    *,
    words,
    openings=(),
    fixed=(),
    goods=(),
    answer="opening",
    field=None,
    marked="marks",
):
    """The drawing. `openings` are the texts told inside, from the bottom up; () for none.

    `fixed` are the numbers (from 0) of shelves that were given their place, `goods` the heights of
    what goes into each opening. `answer` is "height" where the height was asked for, `field` the
    key of the field that asked for it otherwise. `marked` says what the figures at the right are.
    """
    case = shelving.case
    high = nearby(case.inside)
    thick = max((nearby(each) for each in shelving.thicknesses), default=high / 60)
    panel = max(high / 60, min(thick, high / 20))
    bottom, top = (nearby(case.bottom), nearby(case.top)) if case.whole else (panel, panel)
    wide = high * _WIDE
    floor = nearby(case.floor) if case.whole else -panel
    lower = nearby(case.lower_end) if case.whole else -panel
    upper = nearby(case.upper_end) if case.whole else high + panel
    shapes = [_box(x, lower, x + panel, upper) for x in (-panel, wide)]
    ends = (0, wide) if lower < 0 else (-panel, wide + panel)
    shapes.append(_box(ends[0], -bottom, ends[1], 0))
    ends = (0, wide) if upper > high else (-panel, wide + panel)
    shapes.append(_box(ends[0], high, ends[1], high + top))
    if case.whole and case.kick:
        shapes.append(_box(0, floor, wide, -bottom, "ghost"))
    shelves = list(zip(map(nearby, shelving.bottoms), shelving.thicknesses, strict=True))
    shapes += [
        _box(0, place, wide, place + nearby(thickness), "hatch" if number in fixed else "stock")
        for number, (place, thickness) in enumerate(shelves)
    ]
    shapes += _goods(shelves, goods, wide)
    shapes += _marks(show, shelving, wide + panel, high, fixed)
    shapes += _openings(shelves, openings, wide, high)
    role = "answer" if answer == "height" else "given"
    measured = (floor, high + top, case.overall) if case.whole else (0, high, case.inside)
    shapes.append(
        dimension(
            (0, -measured[0]), (0, -measured[1]), high / 4, show.brief(measured[2]), role, field
        )
    )
    margin, low = high / 25, max(-floor, 0)
    origin = f"{marked} from the {ORIGINS[shelving.origin].lower()}"
    shapes.append(label((wide / 2, low + high / 12), origin, "note"))
    box = (-high * 38 / 100, -high - top - margin, wide + high * 3 / 10, low + high / 8)
    return drawing(words, box, shapes)


@lazy
def with_holes(picture, inside, centers, used):
    """The same with a row of holes along each side, in inches from the inside bottom; `used` are
    those that a shelf's pins are in, drawn larger."""
    told, high = force(picture), nearby(inside)
    wide, used = high * _WIDE, {nearby(each) for each in used}
    dots = [
        _hole(x, nearby(center), high / (70 if nearby(center) in used else 130))
        for x in (wide / 12, wide * 11 / 12)
        for center in centers
    ]
    words = f"{told['words']} Along each side is a row of {len(centers)} holes."
    return told | {"words": words, "shapes": [*told["shapes"], *dots]}


def _hole(x, y, dot):
    return polygon([(x - dot, -y), (x, -y - dot), (x + dot, -y), (x, -y + dot)], "hatch")


def _box(left, low, right, top, role="stock"):
    return rectangle(left, -top, right, -low, role)


def _goods(shelves, heights, wide):
    """An outline of what goes into each opening, from the bottom up."""
    tops = [0, *(place + nearby(thickness) for place, thickness in shelves)]
    for top, height in zip(tops, heights, strict=False):
        yield _box(wide / 8, top, wide * 7 / 8, top + nearby(height), "ghost")


def _marks(show, shelving, right, high, fixed):
    """A line and a figure beside each shelf's mark, as far as they find room; 0 at the origin."""
    case, space = shelving.case, high / 25
    zero = nearby(case.place(0, shelving.origin))
    shapes = [
        line((right, -zero), (right + space, -zero), "edge"),
        label((right + space * 3 / 2, -zero), "0", "name", "start"),
    ]
    places = [float(nearby(case.place(mark, shelving.origin))) for mark in shelving.marks]
    for number in _told(places, float(high), float(zero)):
        y = -places[number]
        shapes.append(line((right, y), (right + space, y), "center"))
        text = show.brief(shelving.marks[number]) + (" fixed" if number in fixed else "")
        shapes.append(label((right + space * 3 / 2, y), text, "note", "start"))
    return shapes


def _told(places, high, zero):
    """The shelves whose figures find room: none too close to another, spread where many."""
    apart, taken = [], [zero]
    for number, place in enumerate(places):
        if all(abs(place - other) >= high / _ROOM_OF_A_LABEL for other in taken):
            apart.append(number)
            taken.append(place)
    if len(apart) <= _MOST_LABELS:
        return apart
    spread = _MOST_LABELS - 1
    return [apart[step * (len(apart) - 1) // spread] for step in range(_MOST_LABELS)]


def _openings(shelves, texts, wide, high):
    """The text of each opening in it, with arrows where there is room; none where there is not."""
    tops = [0, *(place + nearby(thickness) for place, thickness in shelves)]
    lows = [*(place for place, _ in shelves), high]
    for top, low, text in zip(tops, lows, texts, strict=False):
        if low - top >= high / _ROOM_OF_A_DIMENSION:
            yield dimension((wide / 2, -top), (wide / 2, -low), 0, text, "answer")
        elif low - top >= high / _ROOM_OF_A_LABEL:
            yield label((wide / 2, -(top + low) / 2), text, "name")


def case_words(shelving, text, openings):
    """What the picture shows, for a screen reader; `text` is of the height."""
    runs = [(text, len(list(run))) for text, run in groupby(openings)]
    told = ", ".join(text if many == 1 else f"{many} times {text}" for text, many in runs)
    count = len(shelving.bottoms)
    place = ORIGINS[shelving.origin].lower()
    return (
        f"A case {text} high {'overall' if shelving.case.whole else 'inside'} with {count} "
        f"{'shelf' if count == 1 else 'shelves'}. Openings from the bottom up: {told}. "
        f"The numbers at the right are measured from the {place}."
    )
