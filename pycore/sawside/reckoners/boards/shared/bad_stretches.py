"""Stretches of a board that no piece may have, as they are typed: "31 to 36, 70 to 72"."""

import re

from sawside.errors import Refusal, quoted
from sawside.lengths.reading.reader import read_length
from sawside.reckoners.boards.shared.sold import exact

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


def bad_stretches(text, length, show, *, beyond=False):
    """The (from, to) of a text in order and apart, exact inches; a bare number is in the unit of
    the settings, and "end" is where a board of this `length` ends.

    Refusals, told of no field yet: "unreadable" for what is no such stretch, "impossible" for one
    that runs backward, or past the end where it may not run `beyond` it.
    """
    read = sorted(_stretch(ends, length, show) for ends in stretches_in(text))
    if read and max(read)[1] > length and not beyond:
        raise Refusal(
            "impossible",
            f"A bad stretch runs past the end, {show.brief(length)}.",
            "Enter one inside the length.",
        )
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


def _stretch(ends, length, show):
    text = " to ".join(ends)
    if len(ends) != 2:
        raise Refusal(
            "unreadable", f"I can’t read the bad stretch {quoted(text)}.", "Enter it as 31 to 36."
        )
    start, end = (_place(each, length, show) for each in ends)
    if start < 0:
        raise _impossible(text, "starts before the end of the board", "Measure it from one end, 0.")
    if start == end:
        raise _impossible(text, "ends where it starts", "Enter where it starts and where it ends.")
    if start > end:
        raise _impossible(
            text, "runs backward", "Enter the smaller number first, both from one end."
        )
    return start, end


def _place(text, length, show):
    if text.casefold() == "end":
        return length
    return exact(read_length(text, show.settings.unit).value, show)


def _impossible(text, what, remedy):
    return Refusal("impossible", f"The bad stretch {quoted(text)} {what}.", remedy)
