"""What names stand for where the page sends it, as for the lines of a tally."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.names import Named
from sawside.lengths.refusals import MOST_CHARACTERS

POWERS = {"count": 0, "length": 1, "area": 2, "volume": 3}


def read_names(message):
    """What is sent as {name: {"exact", "kind"}}, as {name in small letters: `Named`}."""
    names = message.get("names")
    if not names:
        return {}
    try:
        return {
            name.casefold(): Named(Fraction(value["exact"]), POWERS[value["kind"]])
            for name, value in names.items()
            if name and len(value["exact"]) <= MOST_CHARACTERS
        }
    except (AttributeError, KeyError, TypeError, ValueError, ZeroDivisionError):
        raise Refusal(
            "message", "The names are not readable.", "Send exact values by name.", field="names"
        ) from None
