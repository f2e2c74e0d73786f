"""What can hurt, or spoil wood: in one short line, and in full."""

import re
from typing import NamedTuple

_FIRST_SENTENCE = re.compile(r".*?[.!?](?=\s+[A-Z0-9≈]|$)", re.DOTALL)


class Caution(NamedTuple):
    """`short` is one line of hazard and act that always stands; `full` opens, and is told once a
    day by itself."""

    short: str
    full: str

    @classmethod
    def of(cls, text):
        """A text whose first sentence is its short line."""
        first = _FIRST_SENTENCE.match(text)
        return cls(first[0] if first else text, text)
