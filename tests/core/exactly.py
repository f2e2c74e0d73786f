"""The answers of a question before they are brought to a mark, as floats for an oracle."""

from dataclasses import replace

from sawside.lengths.marks import Rounded, exact_of
from sawside.lengths.real import nearby
from sawside.lengths.show import Show
from sawside.reckoners import RECKONERS
from sawside.reckoning.values import read_values
from sawside.settings.settings import read_settings


def exactly(reckoner, **values):
    """Each length and angle as a float, lists as (label, float); texts and counts as they are."""
    settings = read_settings({})
    form = read_values(RECKONERS[reckoner], values, settings)
    found = RECKONERS[reckoner].compute(form.given, Show(settings))
    return {key: _plain(value) for key, value in found.answers.items()}


def pieces(reckoner, **values):
    """The pieces to cut of a question, as told in its parts, with unrounded lengths."""
    settings = read_settings({})
    form = read_values(RECKONERS[reckoner], values, settings)
    parts = RECKONERS[reckoner].compute(form.given, Show(settings)).parts
    measures = ("length", "width", "thickness", "long_side", "short_side")
    return tuple(
        replace(part, **{each: exact_of(getattr(part, each)) for each in measures})
        for part in parts
    )


def _plain(value):
    if isinstance(value, Rounded):
        value = value.exact
    if isinstance(value, list):
        return [(name, _plain(each)) for name, each in value]
    return value if isinstance(value, (str, int)) else float(nearby(value))
