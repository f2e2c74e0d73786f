"""What is said of two numbers with no sign between them: mostly a fraction that went wrong."""

import re

from sawside.lengths.reading.refusals import unfinished, unreadable

OVER = re.compile(r"(?<![0-9./])(?:([0-9]++) ++)?([0-9]++)(/?) *+$", re.ASCII)
"""A fraction at the end of a text whose bottom number is still to come: 31 5, 31 5/, 5/."""
_WHOLE_AND_TOP = re.compile(r"(?<![0-9./])([0-9]++) ++([0-9]++)(?![0-9./])", re.ASCII)


def over_what(whole, top, line, at):
    """A fraction that has no bottom number yet; `line` is its line, if that was written."""
    number = f"{whole} and {top}" if whole else top
    then = "the bottom number" if line else "/ and the bottom number"
    return unfinished(f"{number} over what?", f"Now {then}.", at)


def side_by_side(text, at):
    """Two numbers with no sign between them; the second one, at `at`, may begin a fraction."""
    over = OVER.search(text)
    if over and over[1] and over.start(2) == at:
        return over_what(*over.groups(), at)
    for pair in _WHOLE_AND_TOP.finditer(text):
        if pair.start(2) == at:
            return unreadable(
                f"{pair[1]} and {pair[2]} over what?",
                "Write / and the bottom number, or put a sign between the two.",
                at,
            )
    return unreadable(
        "Two numbers stand side by side with no sign between them.",
        "Put +, − or × between them.",
        at,
    )
