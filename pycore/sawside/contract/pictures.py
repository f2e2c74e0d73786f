"""What is drawn: shapes in real units, the tape, the strip of the keypad, sheets of paper.

A point is [x, y], in inches of the drawn thing with y down; on paper in millimeters of the sheet.
"""

from typing import Literal, NotRequired, TypedDict

Point = list[float]


class Polygon(TypedDict):
    """A filled outline; `part` is the part that it is of: its key, and in a drawing of a whole case
    that of one of its `CasePart`s."""

    kind: Literal["polygon"]
    points: list[Point]
    role: str
    part: NotRequired[str]


# "from" is a word of Python, so these are made by calls.
StraightLine = TypedDict(
    "StraightLine",
    {"kind": Literal["line"], "from": Point, "to": Point, "role": str, "name": NotRequired[str]},
)
StraightLine.__doc__ = "A line between two points; on paper it may have the `name` of its mark."

Dimension = TypedDict(
    "Dimension",
    {
        "kind": Literal["dimension"],
        "from": Point,
        "to": Point,
        "offset": float,
        "text": str,
        "role": str,
        "field": NotRequired[str],
    },
)
Dimension.__doc__ = """A dimension line `offset` to the left of where it measures; `field` is the
key of the field that asks for it."""


class Label(TypedDict):
    """A text at a place; `align` is start, middle or end, `field` as a dimension has it."""

    kind: Literal["label"]
    at: Point
    text: str
    align: str
    role: str
    field: NotRequired[str]


class Arc(TypedDict):
    """An angle: degrees from the x axis, positive towards y."""

    kind: Literal["arc"]
    center: Point
    radius: float
    start: float
    sweep: float
    text: str


class Circle(TypedDict):
    """A circle; on paper a hole has the `name` of its mark."""

    kind: Literal["circle"]
    center: Point
    radius: float
    role: str
    name: NotRequired[str]


Shape = Polygon | StraightLine | Dimension | Label | Arc | Circle


class Drawing(TypedDict):
    """A drawing with words for who can't see it; `box` is left, top, right, bottom."""

    words: str
    box: list[float]
    shapes: list[Shape]


class Picture(TypedDict):
    """A small picture on a field of 40 by 40 with y down, in path data of SVG: wood is filled, ink
    drawn over it, chalk over both."""

    wood: NotRequired[str]
    ink: NotRequired[str]
    chalk: NotRequired[str]


class Tick(TypedDict):
    """A graduation of the tape: how high it is from 0 to 1, and its number if it has one."""

    at: float
    size: float
    label: str | None


Tape = TypedDict(
    "Tape",
    {
        "unit": str,
        "from": float,
        "to": float,
        "ticks": list[Tick],
        "at": float,
        "true_at": float,
        "words": str,
    },
)
Tape.__doc__ = "A stretch of tape: where the mark is, and where the exact length."


class StripMark(TypedDict):
    """A mark of the strip: touching it writes `text`; the last one is the next number's."""

    at: float
    size: float
    label: str
    text: str | None
    words: str


class Strip(TypedDict):
    """An inch or a centimeter drawn large, to touch a mark on."""

    unit: str
    words: str
    separator: str
    marks: list[StripMark]


Sheet = TypedDict(
    "Sheet",
    {
        "width": float,
        "height": float,
        "words": str,
        "shapes": list[Shape],
        "number": int,
        "of": int,
        "from": NotRequired[float],
        "to": NotRequired[float],
    },
)
Sheet.__doc__ = "A sheet of paper in millimeters; of a stick, from where to where it shows it."
