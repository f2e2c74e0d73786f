"""What names stand for where the page sends it, as for the lines of a tally."""

import re
from fractions import Fraction

from sawside.errors import message_fault
from sawside.lengths.bounded import MOST_WRITTEN
from sawside.lengths.reading.names import Named

_EXACT = re.compile(rf"-?[0-9]{{1,{MOST_WRITTEN}}}(?:/[0-9]{{1,{MOST_WRITTEN}}})?", re.ASCII)
POWERS = {"count": 0, "length": 1, "area": 2, "volume": 3}


def names_sent(names, place):
    """The check (`needs.py`) of {name: {"exact", "kind"}}, as {name in small letters: `Named`}.

    A value that is not written out is refused: 1e9 may be larger than it looks.
    """
    try:
        return {
            name.casefold(): Named(_fraction(value["exact"]), POWERS[value["kind"]])
            for name, value in names.items()
            if name
        }
    except (AttributeError, KeyError, TypeError, ValueError, ZeroDivisionError):
        raise message_fault(place, "an object of exact values by name") from None


def _fraction(text):
    if not _EXACT.fullmatch(text):
        raise ValueError(text)
    return Fraction(text)
