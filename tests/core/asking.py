"""Short ways to ask the door a question in a test."""

from fractions import Fraction

import sawside
from sawside.lengths.show import Show
from sawside.reckoners import RECKONERS
from sawside.reckoning.values import read_values
from sawside.settings.settings import read_settings


def reckon(reckoner, settings=None, **values):
    """The answer to a question, which must succeed; its answers also by key."""
    said = ask(reckoner, settings, **values)
    assert said["ok"], said
    return said | {"by_key": {answer["key"]: answer for answer in said["answers"]}}


def ask(reckoner, settings=None, **values):
    """The answer to a question, whatever it is; its cautions in full."""
    message = {"do": "reckon", "reckoner": reckoner, "values": values}
    said = sawside.handle(message | ({"settings": settings} if settings else {}))
    if said["ok"]:
        said["cautions"] = [caution["full"] for caution in said["cautions"]]
    return said


def found(key, values, settings=None):
    """What a question finds, before it is told."""
    chosen = read_settings(settings or {})
    form = read_values(RECKONERS[key], values, chosen)
    return RECKONERS[key].compute(form.given, Show(chosen))


def errors(said):
    """Every error of a failed answer by its field."""
    assert not said["ok"]
    return {error["field"]: error for error in (said["error"], *said.get("more", ()))}


def as_drawn(value):
    """A length of an answer as a drawing has it: no small print there says that it was rounded."""
    return value["text"] if value["direction"] == "exact" else f"≈ {value['text']}"


def exact(value):
    """The exact inches of an answer."""
    return Fraction(value["exact"])
