"""Short ways to ask the door a question in a test."""

from fractions import Fraction

import sawside
from sawside.lengths.show import Show
from sawside.reckoners import RECKONERS
from sawside.reckoning.values import read_values
from sawside.settings.settings import read_settings


def reckon(reckoner, settings=None, **values):
    """The answer to a question, which must succeed."""
    said = ask(reckoner, settings, **values)
    assert said["ok"], said
    return said


def ask(reckoner, settings=None, **values):
    """The answer to a question, whatever it is; its answers also by key, its cautions in full."""
    message = {"do": "reckon", "reckoner": reckoner, "values": values}
    said = sawside.handle(message | ({"settings": settings} if settings else {}))
    if said["ok"]:
        said["by_key"] = {answer["key"]: answer for answer in said["answers"]}
        said["cautions"] = [caution["full"] for caution in said["cautions"]]
    return said


def given_of(key, values, settings=None):
    """(what is given, how it is shown) of a form, as a question gets them."""
    chosen = read_settings(settings or {})
    return read_values(RECKONERS[key], values, chosen).given, Show(chosen)


def found(key, values, settings=None):
    """What a question finds, before it is told."""
    return RECKONERS[key].compute(*given_of(key, values, settings))


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


def items(said, key):
    """The exact inches of an answer that is a list."""
    return [exact(each) for each in said["by_key"][key]["items"]]


def texts(said):
    """The text of every answer by its key."""
    return {key: each["text"] for key, each in said["by_key"].items()}


def inches(length):
    """A length in inches as it is typed."""
    return f"{length} in"


def as_number(text):
    """ "11 1/4" or "11 1/4″" as a number."""
    return sum(map(Fraction, text.removesuffix("″").split()))
