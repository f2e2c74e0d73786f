"""Rows of pin holes in a side: which are drilled, and what is said of the wood around them."""

from sawside.errors import Refusal
from sawside.geometry.holes import HoleRow, KeepOut
from sawside.lengths.fine import fine_text

_MOST_HOLES = 200


def row_of(given, show, pitch):
    """(the row, the highest place that a hole may have); "impossible" for none or too many."""
    last = given.side - given.first if given.last is None else given.last
    last = min(last, given.side - given.diameter / 2)
    try:
        row = HoleRow.up_to(given.first, pitch, last)
    except ValueError:
        raise Refusal(
            "impossible",
            f"The first hole at {show.text(given.first)} is above the last possible one at "
            f"{show.text(last)}.",
            "Enter a lower first hole or a higher last one.",
            field="first",
        ) from None
    if row.count > _MOST_HOLES:
        raise Refusal(
            "impossible",
            f"That makes {row.count} holes per row. The most is {_MOST_HOLES}.",
            "Enter a wider hole spacing or a shorter row.",
            field="pitch",
        )
    return row, last


def keep_outs(given):
    """The zones of a side in which no hole may be."""
    return [
        KeepOut(fixed.low - given.clear, fixed.low + fixed.thick + given.clear)
        for fixed in given.keep or ()
    ]


def drilled(given, row, zones):
    """(numbers of the holes that are drilled, of those left out); "impossible" without any."""
    numbers, left_out = [], []
    for number in range(1, row.count + 1):
        blocked = any(zone.touches(row.center(number), given.diameter) for zone in zones)
        (left_out if blocked else numbers).append(number)
    if not numbers:
        raise Refusal(
            "impossible",
            "Every hole would run into a fixed shelf or dado.",
            "Remove one, or use a smaller gap around them.",
            field="keep",
        )
    return numbers, left_out


def refuse_rows(given, show, pitch):
    """Refuse holes that run into each other, an edge, or the other row."""
    for bad, message, remedy, field in (
        (
            pitch <= given.diameter,
            f"Holes {fine_text(pitch, show)} apart and {fine_text(given.diameter, show)} wide run "
            "into each other.",
            "Enter a wider spacing or a smaller hole.",
            "own_pitch" if given.pitch == "own" else "diameter",
        ),
        (
            given.front <= given.diameter / 2,
            "The front row would break out of the front edge.",
            "Enter a front setback of more than half the hole.",
            "front",
        ),
        (
            given.back <= given.diameter / 2,
            "The back row would break out of the back edge.",
            "Enter a back setback of more than half the hole.",
            "back",
        ),
        (
            given.first <= given.diameter / 2,
            "The first hole would break out of the bottom end.",
            "Enter a higher first hole.",
            "first",
        ),
        (
            given.depth - given.front - given.back <= given.diameter,
            f"The two rows run together: setbacks of {show.text(given.front)} and "
            f"{show.text(given.back)} in a side {show.text(given.depth)} deep.",
            "Enter smaller setbacks.",
            "back",
        ),
    ):
        if bad:
            raise Refusal("impossible", message, remedy, field=field)


def row_warnings(given, show, pitch):
    """What is wrong with the wood around the holes; it can still be drilled."""
    behind = given.thickness - given.hole_depth
    if behind <= 0:
        yield (
            f"The holes come through: they’re {fine_text(given.hole_depth, show)} deep and the "
            f"side is {fine_text(given.thickness, show)}. Drill them shallower."
        )
    elif behind < given.thickness / 8:
        yield (
            f"Only {fine_text(behind, show)} is left behind the holes. The drill’s point could "
            "come through."
        )
    if pitch < 2 * given.diameter:
        yield (
            f"Only {fine_text(pitch - given.diameter, show)} of wood is left between holes. It "
            "could split out."
        )
