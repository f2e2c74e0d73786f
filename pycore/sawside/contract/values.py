"""VALUE: one number that was worked out, with everything that is told of it.

A number and its mark never part, so a length has both, and what rounding dropped.
"""

from typing import Literal, NotRequired, TypedDict

Direction = Literal["exact", "light", "heavy"]


class Stack(TypedDict):
    """A length in its parts, to be set as a stacked fraction."""

    sign: str
    feet: str | None
    whole: str | None
    numerator: str | None
    denominator: str | None
    unit: str


class Length(TypedDict):
    """A length on its mark.

    `exact` and `mark` are rational inches ("289/8"); `exact` is None, and `rational` False, where
    no fraction tells it. `dropped` is the mark less the exact length, `brief` the text where no
    small print stands beside it, `why` and `way` say which way it had to be rounded.
    """

    key: str
    label: str
    kind: Literal["length"]
    exact: str | None
    rational: bool
    text: str
    brief: str
    mark: str
    dropped: str
    dropped_text: str
    direction: Direction
    why: str
    way: str
    stack: Stack
    words: str
    other: str
    decimals: str
    in_decimals: str
    plain: str
    exact_plain: str | None


class Angle(TypedDict):
    """Degrees, to a hundredth in `text`."""

    key: str
    label: str
    kind: Literal["angle"]
    exact: str | None
    text: str
    words: str
    dropped_text: str


class Count(TypedDict):
    """A whole number; or a length by a length, with what is left over."""

    key: str
    label: str
    kind: Literal["count"]
    text: str
    words: str
    exact: NotRequired[str]
    remainder: NotRequired[Length]


class Weight(TypedDict):
    """A weight in pounds and kilograms, or in kilograms alone."""

    key: str
    label: str
    kind: Literal["weight"]
    text: str
    words: str


class Said(TypedDict):
    """An answer in words."""

    key: str
    label: str
    kind: Literal["text"]
    text: str


class Lengths(TypedDict):
    """Several lengths of one kind, such as marks along a side."""

    key: str
    label: str
    kind: Literal["lengths"]
    text: str
    brief: str
    items: list[Length]


class Product(TypedDict):
    """An area or a volume, in square or cubic inches."""

    key: str
    label: str
    kind: Literal["area", "volume"]
    exact: str
    text: str
    words: str
    other: str
    decimals: str


class Number(TypedDict):
    """A number that is none of these: a difference of areas, or of counts that are not whole."""

    key: str
    label: str
    kind: Literal["number"]
    text: str
    words: str


class Roughly(TypedDict):
    """What a number that is no length may be off by, or comes to, in text alone."""

    key: str
    label: str
    kind: Literal["angle", "count", "weight", "number", "area", "volume"]
    text: str
    words: str


Fine = Length | Count | Roughly
"""A number told more finely than an answer is."""

Value = Length | Angle | Count | Weight | Said | Lengths | Product | Number
