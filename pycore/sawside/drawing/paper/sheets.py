"""Sheets of paper in millimeters, and how a length that is longer than one is laid onto several.

Two neighbors show the same stretch of `OVERLAP` and the same two joining lines at its ends, so
that the one is laid over the other until both lines meet.
"""

from dataclasses import dataclass
from math import ceil

from sawside.errors import Refusal, quoted


@dataclass(frozen=True, slots=True)
class Paper:
    """A sheet: its key, its label, width and height in millimeters."""

    key: str
    label: str
    width: float
    height: float


PAPERS = {
    paper.key: paper
    for paper in (Paper("letter", "Letter", 215.9, 279.4), Paper("a4", "A4", 210.0, 297.0))
}
"""Letter is size A of ANSI/ASME Y14.1, A4 is of ISO 216; both from memory."""

MARGIN = 15.0
"""Left blank at every edge: wider than what usual printers can't reach (common practice)."""
OVERLAP = 20.0
MOST_SHEETS = 100


@dataclass(frozen=True, slots=True)
class Stretch:
    """The part of a length, from `low` to `high`, that one sheet shows.

    `joints` are (number of the joint, "a" or "b", place): the lines that it shares with the
    sheet before it and the sheet after it.
    """

    low: float
    high: float
    joints: tuple[tuple[int, str, float], ...]


def find_paper(key):
    """The `Paper` of a key; "unknown" when there is none."""
    paper = PAPERS.get(key) if isinstance(key, str) else None
    if paper is None:
        raise Refusal(
            "unknown",
            f"There’s no paper size {quoted(str(key))}.",
            f"Choose {' or '.join(known.label for known in PAPERS.values())}.",
            field="paper",
        )
    return paper


def stretches(low, high, room):
    """The stretch from `low` to `high` cut into as few `Stretch`es of at most `room` as will do."""
    step = room - OVERLAP
    many = max(ceil((high - low - OVERLAP) / step), 1)
    starts = [low + number * step for number in range(many)]
    return [
        Stretch(start, min(start + room, high), tuple(_joints(start, number, many, step)))
        for number, start in enumerate(starts)
    ]


def _joints(start, number, many, step):
    if number > 0:
        yield number, "a", start
        yield number, "b", start + OVERLAP
    if number + 1 < many:
        yield number + 1, "a", start + step
        yield number + 1, "b", start + step + OVERLAP
