"""The answers of a question before they are brought to a mark, as floats for an oracle."""

from dataclasses import replace

from sawside.lengths.marks import Rounded, exact_of
from sawside.lengths.real import nearby
from tests.core.asking import found


def exactly(reckoner, **values):
    """Each length and angle as a float, lists as (label, float); texts and counts as they are."""
    return {key: _plain(value) for key, value in found(reckoner, values).answers.items()}


def pieces(reckoner, **values):
    """The pieces to cut of a question, as told in its parts, with unrounded lengths."""
    measures = ("length", "width", "thickness", "long_side", "short_side")
    return tuple(
        replace(part, **{each: exact_of(getattr(part, each)) for each in measures})
        for part in found(reckoner, values).parts
    )


def _plain(value):
    if isinstance(value, Rounded):
        value = value.exact
    if isinstance(value, list):
        return [(name, _plain(each)) for name, each in value]
    return value if isinstance(value, (str, int)) else float(nearby(value))
