"""One end of a part: the code for how it is cut, and the words that a person reads of it.

The code is what is kept with a piece that was cut, so the words may change and the pieces of a
project stay what they were. An end that a person told in words of their own is its own code.
"""

import re
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from typing import Any, NamedTuple

KEPT_PLACES = 1
"""Decimals of an angle in a code: pieces that were cut have kept it so."""

BETWEEN = "; "
"""What stands between the two ends of a piece, in code and in words."""

_WORDS = (
    ("@square {a}", "square", "{a}"),
    ("@square {a} corner", "square", "{a}, into the corner"),
    ("@square chamfer {deep}", "square", "chamfered {deep}"),
    ("@square scribe {deep}", "square", "with {deep} to scribe"),
    ("@flat {a}", "miter", "{a}"),
    ("@edge {a}", "bevel", "{a}"),
    ("@edge {a} {side}", "bevel", "{a}, saw swung {side}"),
    ("@compound {a} {b}", "compound", "miter {a}, bevel {b}"),
    ("@scarf {a} {side}", "scarf", "{a}, saw swung {side}"),
    ("@coped {a} {side}", "coped", "bevel first, {a}, saw swung {side}"),
)
"""Every code, how such an end is cut, and its setting."""

_OLD_WORDS = (
    ("square {a}", "@square {a}"),
    ("square {a}, into the corner", "@square {a} corner"),
    ("square chamfered {deep}", "@square chamfer {deep}"),
    ("square with {deep} to scribe", "@square scribe {deep}"),
    ("flat miter {a}", "@flat {a}"),
    ("edge miter {a}", "@edge {a}"),
    ("edge miter {a}, saw turned {side}", "@edge {a} {side}"),
    ("compound miter {a}, tilted {b}", "@compound {a} {b}"),
    ("coped edge miter first, {a}, saw turned {side}", "@coped {a} {side}"),
)
"""What schema 4 and older kept of such an end, and the tables that they wrote."""

_SET_TO = re.compile(r" \(saw set to [^)]*\)")

_ANGLE = r"(?:≈ )?\d+(?:\.\d+)?°"
_HOLES = {"a": _ANGLE, "b": _ANGLE, "side": "left|right", "deep": ".+"}


class Jig(NamedTuple):
    """A compound cut, face up, in work that is square to the fence and runs to the front of the
    saw: where the front of the saw and the top of the blade go, and whether this saw tilts so."""

    turn: str
    tilt: str
    tilts: bool


@dataclass(frozen=True, slots=True)
class End:
    """How one end of a part is cut: `how` and `setting` are what its code has, as in `_WORDS`
    ("flat", "45°"), or `how` alone is a person's own words.

    `turned` and `tilted` are what the saw is set to for it, in exact degrees. `steps` say the same
    with the ways that saw, blade and piece lie, where these are not in `angle`. `jig` is how it is
    cut where no saw turns so far, if the question knows the sides."""

    how: str
    setting: str
    turned: Any = Fraction(0)
    tilted: Any = Fraction(0)
    steps: tuple[str, ...] = ()
    jig: Jig | None = None

    @property
    def code(self):
        """What is kept of it."""
        return f"@{self.how} {self.setting}" if self.setting else self.how

    @property
    def cut(self):
        """How it is cut, in words."""
        return _told(self.code)[0]

    @property
    def angle(self):
        """The setting in words; "" where there is none."""
        return _told(self.code)[1]

    @property
    def at_the_saw(self):
        """What is set for it, one thing after another, as short as one reads it from afar."""
        if self.steps:
            return list(self.steps)
        return [step.removeprefix("saw ") for step in self.angle.split(", ") if step]


def ends_in_words(codes):
    """Both ends of a piece as a person reads them, of what is kept with it."""
    return BETWEEN.join(" ".join(_told(code)).strip() for code in codes.split(BETWEEN))


def ends_coded(words):
    """What is kept of both ends: the code of each that words of today or of before tell; codes and
    a person's own words stay as they are."""
    ends = _SET_TO.sub("", words).split(BETWEEN)
    return BETWEEN.join(_first(end, _FROM_WORDS) or end for end in ends)


def _row(known, other):
    """A template that texts are known by, as a pattern, and the one that they are told as."""
    parts = re.split(r"\{(\w+)\}", known)
    pattern = "".join(
        f"(?P<{part}>{_HOLES[part]})" if at % 2 else re.escape(part)
        for at, part in enumerate(parts)
    )
    return re.compile(pattern), other


def _first(end, rows):
    for pattern, other in rows:
        if found := pattern.fullmatch(end):
            return other.format(**found.groupdict())
    return None


_FROM_WORDS = (
    *(_row(f"{cut} {setting}", code) for code, cut, setting in _WORDS),
    *(_row(*row) for row in _OLD_WORDS),
)
_FROM_CODES = tuple((_row(code, cut), _row(code, setting)) for code, cut, setting in _WORDS)


@lru_cache(maxsize=512)
def _told(code):
    """(how an end is cut, its setting) in words."""
    for cut, setting in _FROM_CODES:
        if told := _first(code, (cut,)):
            return told, _first(code, (setting,))
    return code, ""
