"""How sure a number is, in words and as data."""

from sawside.lengths.as_typed import given_text
from sawside.project.evaluation.numbers import Fine, value_told


def sure_told(doubt, moved):
    """An `Uncertainty` as the contract of `sure` has it."""
    return _Told(doubt, moved).whole()


class _Told:
    def __init__(self, doubt, moved):
        self.doubt, self.number = doubt, doubt.number
        self.worked, self.readings = moved.worked, {each.id: each for each in moved.readings}
        self.fine = Fine(self.number, self.worked.settings)

    def whole(self):
        doubt = self.doubt
        value = value_told(self.number, self.worked)
        worst = (doubt.low, doubt.high)
        by = max(doubt.high, -doubt.low)
        return {
            "value": value,
            "label": self.number.label,
            "steps": doubt.steps,
            "worst": None if doubt.limit else self._range(self._worst_label(), worst, by),
            "likely": doubt.likely and self._range("Likely", doubt.likely, self._likely_by()),
            "readings": [self._reading(each) for each in doubt.influences],
            "measure_again": self._again(),
            "said": f"{self._text(value)}{self._said(by)}",
        }

    def _text(self, value):
        """A length as finely as its range, in the middle of which it then stands."""
        if self.number.kind != "length":
            return value["text"]
        return self.fine.told("value", self.number.label, self.number.exact)["text"]

    def _worst_label(self):
        """Between the ends of its readings a length that steps may go further; a count does not."""
        ends_only = self.doubt.steps and self.number.kind != "count"
        return "With the readings at their limits" if ends_only else "At worst"

    def _likely_by(self):
        low, high = self.doubt.likely
        return (high - low) / 2

    def _range(self, label, ends, by):
        low, high = (self.number.exact + each for each in ends)
        return {
            "label": label if self.doubt.steps else f"{label}, within {self.fine.text(by)}",
            "low": self.fine.told("low", "At least", low),
            "high": self.fine.told("high", "At most", high),
            "by": None if self.doubt.steps else self.fine.told("by", "Within", by),
        }

    def _reading(self, influence):
        reading, share = influence.reading, self.doubt.share(influence)
        most = max(influence.up, -influence.down)
        return {
            "id": reading.id,
            "name": reading.name,
            "text": reading.worked.entry["text"],
            "by": _size(reading, max(-reading.low, reading.high)),
            "off": _off(reading),
            "moves": None if influence.limit else self.fine.told("moves", "Changes it by", most),
            "share": None if share is None else _percent(share),
        }

    def _again(self):
        """The reading that makes most of what is unsure; None where nothing is, or none alone."""
        doubt = self.doubt
        if doubt.limit is not None:
            first = self.readings[next(iter(doubt.limit.offs))]
            return _measured(first, ", or leave more room")
        first = next(iter(doubt.influences), None)
        if first is None or not first.spread:
            return None
        if not doubt.steps:
            makes = f"it accounts for {_percent(doubt.share(first))} of the uncertainty"
            return _measured(first.reading, f": {makes}")
        low, high = self._texts(first.down, first.up)
        if low == high:
            return None
        return _measured(first.reading, f": on its own it moves this from {low} to {high}")

    def _said(self, by):
        doubt = self.doubt
        if not self.readings:
            return ": it doesn’t depend on any reading."
        if doubt.limit is not None:
            return f", but it’s at its limit. {self._limit_said()}"
        if not by:
            return ": the readings behind it don’t change it."
        if not doubt.steps:
            likely, worst = self.fine.text(self._likely_by()), self.fine.text(by)
            return f", probably within {likely}, {worst} at the outside."
        low, high = self._texts(doubt.low, doubt.high)
        if low == high:
            return ": the readings change it by less than is shown."
        if self.number.kind == "count":
            return (
                f", between {low} and {high} at the outside. It goes in steps, so there’s no "
                "likely range."
            )
        return (
            f", or between {low} and {high} with the readings at their limits. The answer "
            "doesn’t change evenly with the readings, so it could fall outside this range."
        )

    def _texts(self, low, high):
        """Both ends of a range as text."""
        return [self.fine.told("", "", self.number.exact + each)["text"] for each in (low, high)]

    def _limit_said(self):
        offs, refusal = self.doubt.limit
        case = "With all readings off at once"
        if len(offs) == 1:
            ((identity, by),) = offs.items()
            reading = self.readings[identity]
            way = "more" if by > 0 else "less"
            case = f"With {reading.name} {_size(reading, abs(by))} {way}"
        if refusal is None:
            return f"{case} there’s no such number."
        return f"{case} there’s no answer: {refusal.message}"


def _size(reading, by):
    return given_text(by, reading.worked.settings)


def _off(reading):
    """What a reading may be off by, and which way: "± 1/32″", "up to 1/32″ less"."""
    less, more = _size(reading, -reading.low), _size(reading, reading.high)
    if -reading.low == reading.high:
        return f"± {more}"
    ways = ((reading.low, f"{less} less"), (reading.high, f"{more} more"))
    return f"up to {' or '.join(told for size, told in ways if size)}"


def _percent(share):
    return f"{round(100 * share)}%"


def _measured(reading, why):
    said = f"Measure {reading.name} again{why}."
    return {"id": reading.id, "name": reading.name, "said": said}
