"""Stretches of a board that no piece may have, as they are typed: "31 to 36, 70 to 72"."""

import re

from sawside.errors import Refusal, quoted
from sawside.lengths.reading.reader import read_length

_APART = re.compile(r";|,\s|\band\b", re.IGNORECASE)
_TO = re.compile(r"\s*\bto\b\s*|\s*[–—]\s*|\s+-\s+", re.IGNORECASE)
_PLAIN_DASH = re.compile(r"([^-]+)-([^-]+)")


def stretches_in(text):
    """Yield the ends of each stretch as typed, ["31", "36"] of "31 to 36" or "31-36": other than
    two where it is none. A comma that stands in a number parts nothing."""
    for part in _APART.split(text or ""):
        whole = part.strip(" ,")
        within = [_ends(each) for each in whole.split(",")]
        yield from within if all(len(each) == 2 for each in within) else filter(any, [_ends(whole)])


def _ends(part):
    ends = _TO.split(part.strip())
    dash = _PLAIN_DASH.fullmatch(part) if len(ends) == 1 else None
    return [each.strip() for each in (dash.groups() if dash else ends)]


def bad_stretches(text, length, unit, show):
    """The (from, to) of a text in order and apart, exact inches; a bare number is in `unit`.

    Refusals, told of no field yet: "unreadable" for what is no such stretch, "impossible" for one
    that runs backward or past the end of a board of this `length`.
    """
    read = sorted(_stretch(ends, length, unit, show) for ends in stretches_in(text))
    made = []
    for start, end in read:
        if made and start <= made[-1][1]:
            made[-1] = made[-1][0], max(end, made[-1][1])
        else:
            made.append((start, end))
    return tuple(made)


def clear_stretches(bad, length):
    """What is left between the bad stretches, from one end to the other, as (from, to)."""
    ends = [0, *(each for stretch in bad for each in stretch), length]
    pairs = zip(ends[::2], ends[1::2], strict=True)
    return [(start, end) for start, end in pairs if end > start]


def _stretch(ends, length, unit, show):
    text = " to ".join(ends)
    if len(ends) != 2:
        raise Refusal(
            "unreadable", f"I can’t read the bad stretch {quoted(text)}.", "Enter it as 31 to 36."
        )
    start, end = (read_length(each, unit).value for each in ends)
    if not 0 <= start < end:
        raise Refusal(
            "impossible",
            f"The bad stretch {quoted(text)} runs backward.",
            "Enter the smaller number first, both from one end.",
        )
    if end > length:
        raise Refusal(
            "impossible",
            f"The bad stretch {quoted(text)} runs past the end, {show.brief(length)}.",
            "Enter one inside the length.",
        )
    return start, end
