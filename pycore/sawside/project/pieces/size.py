"""The size of a piece as it is to be cut now: its marks, and its ends."""

from fractions import Fraction

from sawside.errors import Refusal, Refusals, quoted
from sawside.geometry.end import BETWEEN, ends_coded
from sawside.lengths.marks import FINEST, to_mark
from sawside.reckoning.links import rational

MEASURES = ("length", "width", "thickness")
_MOST_DENOMINATOR = 1000


def size_of(part, show):
    """A part's size as a piece of it is cut: {"length": "289/8 in", …, "ends", "short_side"}.

    `ends` are their codes (`geometry/end.py`); own words for what has a code are that code.
    """
    size = {
        measure: inches_text(show.mark(getattr(part, measure)))
        for measure in MEASURES
        if getattr(part, measure) is not None
    }
    ends = BETWEEN.join(end.code for end in (part.left, part.right))
    return size | {"ends": ends_coded(ends)} | short_side_of(part, show.mark(part.length))


def short_side_of(part, length):
    """How long the short side gets where a piece is cut at a `length`: {"short_side"}, or {}.

    What its ends take is kept exactly where a person would read it, or else within 0.00005 in.
    """
    if part.short_side is None:
        return {}
    take = rational(part.length) - rational(part.short_side)
    if take.denominator > _MOST_DENOMINATOR:
        take = to_mark(take, FINEST["in"]).mark
    return {"short_side": inches_text(length - take)} if length > take else {}


def inches_text(value):
    """An exact number of inches as it is kept with a piece."""
    return f"{value} in"


def inches(text):
    """The exact number of such a text."""
    return Fraction(text.removesuffix(" in"))


def part_named(worked, entry, key):
    """The part of a line by its key. Refusals: "unknown", or why the line has no answer."""
    if worked is not None and not worked.ok:
        raise Refusals(worked.refusals) if len(worked.refusals) > 1 else worked.refusals[0]
    parts = () if worked is None or worked.reckoner is None else worked.found.parts
    for part in parts:
        if part.key == key:
            return part
    raise Refusal(
        "unknown", f"{entry['name']} has no piece {quoted(str(key))}.", "Reopen it.", field="part"
    )
