"""The example of a question in millimeters, made of the one in inches."""

from fractions import Fraction

from sawside.lengths.reading.reader import read_length
from sawside.lengths.units import INCHES_PER

_SMALL = 10


def in_millimeters(fields, example):
    """A filled-in form with every length in whole millimeters, small ones in halves."""
    by_key = {field.key: field for field in fields}
    return {key: _turned(by_key[key], value) for key, value in example.items()}


def _turned(field, value):
    if field.kind == "rows":
        return [in_millimeters(field.fields, row) for row in value]
    if field.kind == "lengths":
        return [_length(text) for text in value]
    return _length(value) if field.kind == "length" else value


def _length(text):
    if not text:
        return text
    millimeters = read_length(text).value / INCHES_PER["mm"]
    step = Fraction(1, 2) if millimeters < _SMALL else Fraction(1)
    rounded = max(round(millimeters / step) * step, step if millimeters else 0)
    return f"{float(rounded):g} mm"
