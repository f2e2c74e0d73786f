"""One measure off a text: a number with its unit and its smaller units, or a name for one."""

import re

from sawside.errors import quoted
from sawside.lengths.bounded import bounded
from sawside.lengths.reading import refusals
from sawside.lengths.reading.kinds import ANGLE, FOOT, INCH
from sawside.lengths.reading.measure_order import check_order, check_point
from sawside.lengths.reading.names import named_at
from sawside.lengths.reading.refusals import MOST_DIGITS, unreadable
from sawside.lengths.reading.scanner import NUMBER, VULGAR, alike, digits, plain_spaces
from sawside.lengths.reading.term import SLOT, Term

_LINE = re.compile(r"/ *+([0-9]++)", re.ASCII)


class Measures:
    """A text of measures, and the place up to which it was read: `at`.

    `typed` is the text with plain spaces, `text` the same with characters of one meaning made one,
    `end` where it ends but for spaces.
    """

    def __init__(self, typed, kind, default, names):
        self.typed = typed = plain_spaces(typed)
        self.text = typed if typed.isascii() else alike(typed)
        self.end = len(self.text.rstrip(" "))
        self.kind = kind
        self.default = default
        self.names = names
        self.at = 0

    def named(self):
        """The term of a name that stands here, or None."""
        if self.names is None or (found := named_at(self.typed, self.at, self.names)) is None:
            return None
        written, named, end = found
        if said := self.unfit(named):
            at = end - len(written)
            raise unreadable(
                f"{quoted(written)} {said}.", "Use another name, or type the number.", at
            )
        self.at = end
        value = named.value
        echo = named.echo or written
        term = Term(value.numerator, value.denominator, named.power, False, echo)
        return bounded(term, end - len(written))

    def unfit(self, named):
        """Why what a name stands for can't be in this sum; "" where it can."""
        if named.weight:
            return "is a weight, which doesn’t work here"
        if named.power and named.angle != (self.kind is ANGLE):
            if named.angle:
                return "is an angle, which doesn’t work here"
            return "isn’t an angle, but this needs one"
        return ""

    def measure(self, match):
        """A number with its unit, and the smaller units that belong to it: 6′ 7 9/32″."""
        term, unit = self.number(match)
        while unit is not None and self.at < len(self.text):
            start = self.at
            follows = NUMBER.match(self.text, start)
            joined = self.joined(unit) if follows is None else None
            if follows is None and joined is None:
                check_point(self, unit)
                break
            match = follows or joined
            part, smaller = self.number(match)
            if joined and smaller not in (None, INCH):
                self.at = start  # 6'-7' subtracts
                break
            if smaller is None and unit is FOOT:
                smaller = INCH
                part = part.taken_as(INCH)
            check_order(self, unit, smaller, match)
            term, unit = term.with_part(part), smaller
        return term

    def joined(self, unit):
        """The number after a hyphen without spaces: the inches of 6'-7 9/32"."""
        at = self.at
        tight = (
            self.text[at] == "-" and self.text[at - 1] != " " and self.text[at + 1 : at + 2] != " "
        )
        return NUMBER.match(self.text, at + 1) if tight and unit is FOOT else None

    def number(self, match):
        """The term of one matched number, and its unit or None; the place moves past it."""
        pointed, whole, over, under, before, vulgar, raised, lowered, alone, word = match.groups()
        if alone is not None:
            top, bottom, echo = int(alone), 1, alone
            longest = len(alone)
        elif pointed is not None:
            first, _, places = pointed.partition(".")
            top, bottom = int(first + places), 10 ** len(places)
            echo = f"{first or '0'}.{places}" if places else first
            longest = len(first) + len(places)
            if word is None:
                self.check_line(match, first, places)
        else:
            whole = whole or before
            if vulgar:
                over, under = VULGAR[vulgar]
            elif over is None:
                over, under = digits(raised or "1"), digits(lowered)
            top, bottom, echo = int(over), int(under), f"{over}/{under}"
            longest = max(len(over), len(under))
            if whole:
                top += int(whole) * bottom
                echo = f"{whole} {echo}"
                longest = max(longest, len(whole))
            self.check_fraction(match, bottom, word)
        self.at = match.end()
        if longest > MOST_DIGITS:
            raise unreadable(
                f"A number has more than {MOST_DIGITS} digits.",
                "Check it and shorten it.",
                self.start(match),
            )
        if word is None:
            return Term(top, bottom, 0, True, echo + SLOT), None
        unit = self.kind.units.get(word) or self.kind.units.get(word.lower())
        if unit is None:
            raise refusals.unknown_unit(self.typed, match.start("unit"), self.kind)
        echo += unit.echo
        return Term(top * unit.top, bottom * unit.bottom, 1, False, echo), unit

    def check_fraction(self, match, bottom, word):
        """Refuse nothing under the line, and a second line right after the first."""
        if bottom == 0:
            at = self.text.find("/", match.start()) + 1
            raise unreadable("Can’t divide by 0.", "Use another number there.", at)
        after = self.text[match.end() : match.end() + 2]
        if word is None and after[:1] == "/" and after[1:].isdigit():
            raise unreadable(
                "Too many slashes: this could mean two things.",
                "Use ÷ with spaces for the division.",
                match.end(),
            )

    def check_line(self, match, first, places):
        """Refuse a line of a fraction right after a decimal: 31.5/8."""
        if below := _LINE.match(self.text, match.end()):
            raise refusals.two_meanings(first, places, below[1], match.end())

    def start(self, match):
        """Where a match begins, past the spaces before it."""
        return match.end() - len(match[0].lstrip(" "))
