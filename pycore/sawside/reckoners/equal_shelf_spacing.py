"""Shelves with equal openings: height = shelves x thickness + (shelves + 1) x opening.

Any one of height, shelf count and opening is left blank and solved for. Each mark is worked out
from its own exact place, so no rounding is carried from one shelf to the next.
"""

from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.errors import Refusal
from sawside.lengths.real import nearby
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, count, length

_MOST_SHELVES = 40
_MOST_LABELS = 8
_CAUTIONS = (
    "A tall case can tip: fasten it to a stud or the wall as the fastener's maker and local rules "
    "say, and load heavy things low.",
)


def compute(given, show):
    """Opening, marks to the bottom edge of each shelf, and the openings that the marks give."""
    height, shelves, opening, working = _solved(given, show)
    thickness = given.thickness
    marks = [number * opening + (number - 1) * thickness for number in range(1, shelves + 1)]
    found = _openings([show.mark(mark) for mark in marks], height, thickness)
    numbered = [(f"Shelf {number}", mark) for number, mark in enumerate(marks, 1)]
    if shelves:
        working += (
            f"Shelf 1: {show.number(opening)}; each next one {show.number(opening)} + "
            f"{show.number(thickness)} = {show.number(opening + thickness)} higher",
        )
    return Reckoning(
        answers={
            "opening": opening,
            "marks": numbered,
            "shelf_count": shelves,
            "height": height,
            "openings": [(f"Opening {number}", each) for number, each in enumerate(found, 1)],
            "difference": max(found) - min(found),
        },
        working=working,
        drawing=_drawing(show, height, thickness, opening, marks),
        cautions=_CAUTIONS,
    )


def _solved(given, show):
    """Height, count and opening, the blank one worked out, and the line that shows how."""
    height, shelves, opening, thickness = (
        given.height, given.shelf_count, given.opening, given.thickness
    )  # fmt: skip
    t = show.number(thickness)
    if height is None:
        height = shelves * thickness + (shelves + 1) * opening
        line_ = f"{shelves} × {t} + {shelves + 1} × {show.number(opening)}{show.equals(height)}"
        return height, shelves, opening, (line_,)
    if shelves is None:
        shelves = (height - opening) // (opening + thickness)
        if shelves < 0:
            raise Refusal(
                "impossible",
                f"An opening of {show.text(opening)} is higher than the inside height of "
                f"{show.text(height)}.",
                "Give a smaller opening, or leave the height blank.",
                field="opening",
            )
        if shelves > _MOST_SHELVES:
            raise Refusal(
                "impossible",
                f"That would be {shelves} shelves, more than {_MOST_SHELVES}.",
                "Give a larger opening.",
                field="opening",
            )
        line_ = (
            f"({show.number(height)} − {show.number(opening)}) ÷ ({show.number(opening)} + {t}) "
            f"= {show.pure((height - opening) / (opening + thickness))} → "
            f"{shelves} {'shelf' if shelves == 1 else 'shelves'}"
        )
        return height, shelves, *_even(height, shelves, thickness, show, (line_,))
    if height <= shelves * thickness:
        raise Refusal(
            "impossible",
            f"{shelves} shelves of {show.text(thickness)} fill {show.text(shelves * thickness)}, "
            f"and the inside height is {show.text(height)}.",
            "Take fewer or thinner shelves.",
            field="shelf_count",
        )
    return height, shelves, *_even(height, shelves, thickness, show, ())


def _even(height, shelves, thickness, show, lines):
    opening = (height - shelves * thickness) / (shelves + 1)
    line_ = (
        f"({show.number(height)} − {shelves} × {show.number(thickness)}) ÷ {shelves + 1}"
        f"{show.equals(opening)}"
    )
    return opening, (*lines, line_)


def _openings(marks, height, thickness):
    """The openings between shelves that stand with their bottom edges on the marks."""
    bottoms = [*marks, height]
    tops = [0, *(mark + thickness for mark in marks)]
    return [bottom - top for bottom, top in zip(bottoms, tops, strict=True)]


def _drawing(show, height, thickness, opening, marks):
    """The case from the front, as wide as is good to look at, marks beside their shelves."""
    high, thick = nearby(height), nearby(thickness)
    wide = high * 7 / 10
    side = max(thick, high / 60)
    left, right, space = -high / 2, wide + high / 2, high * 4 / 100
    shapes = [
        polygon([(x, -side), (x + side, -side), (x + side, high + side), (x, high + side)])
        for x in (-side, wide)
    ]
    shapes += [polygon([(0, y), (wide, y), (wide, y + side), (0, y + side)]) for y in (-side, high)]
    told = _told(len(marks))
    for number, mark in enumerate(marks):
        bottom = high - nearby(mark)
        corners = [(0, bottom - thick), (wide, bottom - thick), (wide, bottom), (0, bottom)]
        shapes.append(polygon(corners))
        if number in told:
            shapes.append(line((wide + side, bottom), (wide + side + space, bottom), "center"))
            place = (wide + side + space * 3 / 2, bottom)
            shapes.append(label(place, show.text(mark), "note", "start"))
    shapes.append(dimension((0, high), (0, 0), high * 32 / 100, show.text(height), "given"))
    if marks:
        shapes.append(_opening(show, opening, high, wide))
    words = (
        f"A case {show.text(height)} high inside with {len(marks)} "
        f"{'shelf' if len(marks) == 1 else 'shelves'}, every opening {show.text(opening)}. "
        "The figures at the right are heights from the inside bottom to the bottom edge of a shelf."
    )
    return drawing(words, (left, -side - space, right, high + side + space), shapes)


def _opening(show, opening, high, wide):
    """The lowest opening: between the shelves, or beside the case where it is low."""
    top = high - nearby(opening)
    x, offset = (wide / 2, 0) if nearby(opening) > high / 8 else (0, high * 14 / 100)
    return dimension((x, high), (x, top), offset, show.text(opening), "answer")


def _told(shelves):
    """Which shelves have room for their figure: all of a few, else some spread over the case."""
    if shelves <= _MOST_LABELS:
        return set(range(shelves))
    return {number * (shelves - 1) // (_MOST_LABELS - 1) for number in range(_MOST_LABELS)}


RECKONER = Reckoner(
    key="equal_shelf_spacing",
    title="Equal shelf spacing",
    asks="Where do shelves go so that all openings are the same?",
    words=("shelf", "shelves", "opening", "bookcase", "cabinet", "spacing", "divide", "layout"),
    order=20,
    fields=(
        length(
            "height",
            "Inside height",
            help="From the inside bottom to the inside top of the case.",
            least="1/4 in",
            may_be_blank=True,
            blank_means="Worked out from the shelf count and the opening.",
        ),
        count(
            "shelf_count",
            "Shelves",
            help="Shelves between the bottom and the top, without those two.",
            most=str(_MOST_SHELVES),
            may_be_blank=True,
            blank_means="As many as leave at least the opening that you give.",
        ),
        length(
            "thickness",
            "Shelf thickness",
            help="As measured: panels are often thinner than they are sold.",
            default='3/4"',
            least="1/64 in",
            most="6 in",
        ),
        length(
            "opening",
            "Opening",
            help="The clear height between two shelves; the least one when shelves are blank.",
            least="1/4 in",
            may_be_blank=True,
            blank_means="Worked out from the height and the shelf count.",
        ),
    ),
    answers=(
        Answer("opening", "Opening"),
        Answer("marks", "Bottom edge of each shelf, from the inside bottom", "lengths"),
        Answer("shelf_count", "Shelves", "count"),
        Answer("height", "Inside height"),
        Answer("openings", "Openings as the marks give them", "lengths"),
        Answer("difference", "Largest difference between openings"),
    ),
    source=(
        "Arithmetic: height = shelves × thickness + (shelves + 1) × opening. Marking every shelf "
        "from the same end is common practice, no source."
    ),
    compute=compute,
    example={"height": "41 1/4", "shelf_count": "2", "thickness": "23/32", "opening": ""},
    solve_one_of=("height", "shelf_count", "opening"),
)
