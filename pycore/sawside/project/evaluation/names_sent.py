"""What names stand for where the page sends it, as for the lines of a tally."""

import re
from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.bounded import MOST_WRITTEN
from sawside.lengths.reading.names import Named

_EXACT = re.compile(rf"-?[0-9]{{1,{MOST_WRITTEN}}}(?:/[0-9]{{1,{MOST_WRITTEN}}})?", re.ASCII)
POWERS = {"count": 0, "length": 1, "area": 2, "volume": 3}


def read_names(message):
    """What is sent as {name: {"exact", "kind"}}, as {name in small letters: `Named`}.

    A value that is not written out is refused: 1e9 may be larger than it looks.
    """
    names = message.get("names")
    if not names:
        return {}
    try:
        return {
            name.casefold(): Named(_fraction(value["exact"]), POWERS[value["kind"]])
            for name, value in names.items()
            if name
        }
    except (AttributeError, KeyError, TypeError, ValueError, ZeroDivisionError):
        raise Refusal(
            "message", "The names are not readable.", "Send exact values by name.", field="names"
        ) from None


def _fraction(text):
    if not _EXACT.fullmatch(text):
        raise ValueError(text)
    return Fraction(text)
