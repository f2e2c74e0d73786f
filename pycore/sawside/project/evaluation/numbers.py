"""The numbers of a worked entry that can be asked after, and how each kind is told finely."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from sawside.lengths.display import decimal_text
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.show import Show
from sawside.reckoners.declaration import Answer
from sawside.reckoning.answers import count_told, length_told, told
from sawside.reckoning.links import linkable_answers, rational
from sawside.wood.weights import weight_text

UNITS = {0: "", 2: " in²", 3: " in³"}
"""What a sum of readings comes to that is no length, by its power of inches."""


@dataclass(frozen=True, slots=True)
class Number:
    """One number: `kind` is length, angle, count, weight or number, `found` what was worked out.

    `must` is that of its answer (`declaration.Answer`).
    """

    key: str
    label: str
    kind: str
    found: Any
    unit: str = ""
    must: str | None = None

    @property
    def exact(self):
        """Inches, degrees, pounds or a plain number as a fraction (`links.rational`)."""
        return rational(self.found)


def numbers(worked):
    """Every number of a worked entry by its key: a reading's own, or the answers of a line.

    An item of a list has its place behind the key: "marks.2". What is told in words is left out.
    """
    if worked.reckoner is None:
        named = worked.named("")
        kind = "length" if named.power == 1 else "number"
        unit = UNITS.get(named.power, "")
        return {"value": Number("value", worked.entry["name"], kind, named.value, unit)}
    found = {}
    for answer, item, value in linkable_answers(worked.reckoner, worked.found):
        key, label = answer.key, answer.label
        if item is not None:
            key = f"{answer.key}.{item}"
            label = f"{answer.label} ({worked.found.answers[answer.key][item - 1][0]})"
        found[key] = Number(key, label, answer.kind, value, must=answer.must)
    return found


def value_told(number, worked):
    """A number as its own entry tells it."""
    if worked.reckoner is None:
        return worked.headline
    answer = Answer(number.key, number.label, number.kind, must=number.must)
    return told(answer, number.found, worked.show)


class Fine:
    """Tells sizes of one number's kind more finely than an answer is told."""

    def __init__(self, number, settings):
        self._kind, self._unit = number.kind, number.unit
        self._show = Show(settings)

    def text(self, size):
        """A size from 0 up in a sentence: "1/32″", "0.04°", "≈ 0.012"."""
        if self._kind == "length":
            return fine_text(size, self._show)
        if self._kind == "count":
            return str(size)
        if self._kind == "weight":
            return weight_text(size, self._show)
        return _about(size, *self._steps)

    def told(self, key, label, value):
        """A value of this kind as a VALUE."""
        if self._kind == "length":
            return length_told(key, label, on_fine_marks(value, self._show), self._show)
        if self._kind == "count":
            return count_told(key, label, int(value), self._show)
        text = self.text(value)
        return {"key": key, "label": label, "kind": self._kind, "text": text, "words": text}

    @property
    def _steps(self):
        return (2, "°") if self._kind == "angle" else (3, self._unit)


def _about(value, places, unit):
    """A number to so many places; ≈ says that it was rounded."""
    step = Fraction(1, 10**places)
    rounded = round(value / step) * step
    if value and not rounded:
        return f"less than {decimal_text(step, places)}{unit}"
    return f"{'' if rounded == value else '≈ '}{decimal_text(rounded, places)}{unit}"
