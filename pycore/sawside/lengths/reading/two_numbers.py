"""What is said of two numbers with no sign between them: mostly a fraction that went wrong."""

import re

from sawside.errors import quoted
from sawside.lengths.reading.refusals import unfinished, unreadable

OVER = re.compile(r"(?<![0-9./])(?:([0-9]++) ++)?([0-9]++)(/?) *+$", re.ASCII)
"""A fraction at the end of a text whose bottom number is still to come: 31 5, 31 5/, 5/."""
_WHOLE = re.compile(r"(?<![0-9./])([0-9]++) ++$", re.ASCII)
_FRACTION = re.compile(r"([0-9]++)((?: *+[/÷])*+) *+((?:[0-9]++)?+)", re.ASCII)
"""A top number, the lines that follow it if any, and a bottom number: 9//16, 9 / 16, 9."""


def over_what(whole, top, line, at):
    """A fraction that has no bottom number yet; `line` is its line, if that was written."""
    number = f"{whole} and {top}" if whole else top
    then = "the bottom number" if line else "/ and the bottom number"
    return unfinished(f"{number} over what?", f"Add {then}.", at)


def side_by_side(text, at):
    """Two numbers with no sign between them; the second one, at `at`, may begin a fraction."""
    over = OVER.search(text)
    if over and over[1] and over.start(2) == at:
        return over_what(*over.groups(), at)
    whole, fraction = _WHOLE.search(text[:at]), _FRACTION.match(text, at)
    refusal = whole and fraction and _mixed(text, whole[1], fraction)
    return refusal or unreadable(
        "Two numbers in a row need a sign between them.", "Put +, − or × between them.", at
    )


def _mixed(text, whole, fraction):
    """What is said of a whole number and a fraction that has no line, or more than one, or one
    with spaces; None where this is no fraction."""
    top, at = fraction[1], fraction.start()
    lines = [place for place in range(*fraction.span(2)) if text[place] != " "]
    seen, mixed = quoted(f"{whole} {fraction[0]}"), f"{whole} {top}/{fraction[3]}"
    ends = fraction[3] and text[fraction.end() :][:1] not in ("/", ".")
    if len(lines) > 1:
        remedy = f"Write {mixed}." if ends else "Use just one."
        return unreadable(f"{seen} has more than one division sign.", remedy, lines[1])
    if lines and ends:
        remedy = f"Write {mixed}, or put a sign between {whole} and {top}."
        return unreadable(f"{seen} could mean two things.", remedy, at)
    if (lines and fraction[3]) or text[fraction.end(1) :][:1] == ".":
        return None
    remedy = "Add / and the bottom number, or put + − × between them."
    if "/" in fraction[2]:
        remedy = "Add the bottom number after the slash."
    return unreadable(f"{whole} and {top} over what?", remedy, at)
