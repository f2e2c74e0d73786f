"""One pass from text to an exact term: the grammar that `reader` describes.

A stack of levels stands in for recursion, so that parentheses cost no depth.
"""

import re

from sawside.errors import Refusal, quoted
from sawside.lengths.bounded import bounded
from sawside.lengths.reading import refusals
from sawside.lengths.reading.kinds import ANGLE, FOOT, INCH
from sawside.lengths.reading.measure_order import check_order, check_point
from sawside.lengths.reading.names import named_at
from sawside.lengths.reading.refusals import MOST_CHARACTERS, MOST_DIGITS, unreadable
from sawside.lengths.reading.scanner import NUMBER, SIGN, VULGAR, alike, digits, plain_spaces
from sawside.lengths.reading.term import SLOT, Term, added, divided, multiplied, negated

_SIGNS = {each: each for each in "+−÷()"} | {"-": "−", "*": "×", "x": "×", "X": "×", "/": "÷"}
_SIGNS |= dict.fromkeys(("of", "OF", "Of", "oF"), "of")
_LINE = re.compile(r"/ *+([0-9]++)", re.ASCII)


def parse(typed, kind, default, names=None):
    """The term that a text comes to. A bare result is taken as one of `default`, if there is one.

    `kind` says which units belong, `default` is the unit of a bare number beside a length,
    `names` maps the names that may stand in the sum to their values (see `names`).
    Errors with the place: "missing" for blank text, "range" for numbers that get too long
    (`bounded`), else "unreadable".
    """
    _check_length(typed)
    term = _Parser(typed, kind, default, names).sum()
    return bounded(term.taken_as(default), 0) if term.bare and default is not None else term


def last_step(typed, kind, default, names):
    """The last step of a sum that can be read, as text; None where it is a single number.

    That is its last sum or difference outside parentheses, or else its last product or quotient.
    """
    _check_length(typed)
    parser = _Parser(typed, kind, default, names)
    parser.sum()
    at = parser.plus_at if parser.plus_at is not None else parser.times_at
    return None if at is None else typed[at:].strip()


def _check_length(typed):
    if len(typed) > MOST_CHARACTERS:
        raise unreadable(
            f"This is longer than {MOST_CHARACTERS} characters.", "Split it into shorter sums.", 0
        )


class _Level:
    """What is pending inside one pair of parentheses: a total, and a product not yet added."""

    __slots__ = (
        "at",
        "default",
        "plus",
        "plus_at",
        "product",
        "sign",
        "times",
        "times_at",
        "total",
    )

    def __init__(self, at, default):
        self.at = self.plus_at = self.times_at = at
        self.default = default
        self.total = self.product = self.plus = self.times = self.sign = None

    def take(self, term):
        """Put the next number where it belongs."""
        if self.sign is not None:
            term = term if self.sign == "+" else negated(term)
            self.sign = None
        if self.times is None:
            self.product = term
        elif self.times == "÷":
            self.product = divided(self.product, term, self.times_at, self.default)
        else:
            self.product = multiplied(self.product, term, self.times, self.times_at)

    def fold(self):
        """Add the pending product to the total, and return the total."""
        if self.total is None:
            self.total = self.product
        else:
            self.total = added(self.total, self.product, self.plus, self.plus_at, self.default)
        self.times = None
        return self.total


class _Parser:
    def __init__(self, typed, kind, default, names):
        self.typed = typed = plain_spaces(typed)
        self.text = typed if typed.isascii() else alike(typed)
        self.kind = kind
        self.default = default
        self.names = names
        self.at = 0
        self.plus_at = self.times_at = None  # the last signs outside parentheses

    def sum(self):
        text, end = self.text, len(self.text.rstrip(" "))
        number = NUMBER.match(text)
        if number is not None and number.end() == end:  # most texts are one number
            return self.number(number)[0]
        level, outer = _Level(0, self.default), []
        while True:
            term = self.named() if number is None else self.measure(number)
            if term is None:  # no number yet: a parenthesis or a sign before one
                found = SIGN.match(text, self.at)
                sign = found and _SIGNS[found[1]]
                if sign == "(":
                    outer.append(level)
                    level = _Level(found.start(1), self.default)
                elif sign in ("+", "−") and level.sign is None:
                    level.sign = sign
                else:
                    raise refusals.no_number(
                        text, self.typed, self.at, self.kind.example, self.names
                    )
                self.at = found.end()
                number = NUMBER.match(text, self.at)
                continue
            try:
                level.take(term)
            except Refusal as refusal:
                refusal.unfinished = self.at >= end and refusals.zero_so_far(text)
                raise
            while self.at < end:
                found = SIGN.match(text, self.at)
                sign = found and _SIGNS[found[1]]
                if sign == ")" and outer:
                    inside = level.fold().enclosed()
                    level = outer.pop()
                    level.take(inside)
                    self.at = found.end()
                    continue
                if sign is None or sign in "()":
                    raise refusals.no_sign(text, self.typed, self.at, self.kind)
                self.at = found.end()
                at = found.start(1)
                if sign in "+−":
                    level.fold()
                    level.plus, level.plus_at = sign, at
                    if not outer:
                        self.plus_at = at
                else:
                    level.times, level.times_at = sign, at
                    if not outer:
                        self.times_at = at
                number = NUMBER.match(text, self.at)
                break
            else:
                break
        if outer:
            raise refusals.unfinished(
                "A parenthesis is not closed.", "Add ) at the end of it.", level.at
            )
        try:
            return level.fold()
        except Refusal as refusal:  # a product may still make them alike: 6 in² + 3 in × 2 in
            refusal.unfinished = refusal.kind == "unreadable"
            raise

    def named(self):
        """The term of a name that stands here, or None."""
        if self.names is None or (found := named_at(self.typed, self.at, self.names)) is None:
            return None
        written, named, end = found
        if named.power and named.angle != (self.kind is ANGLE):
            what, due = ("an angle", "no") if named.angle else ("no angle", "an")
            at = end - len(written)
            raise unreadable(
                f"{quoted(written)} is {what}, and {due} angle is asked for here.",
                "Use another name, or write the number.",
                at,
            )
        self.at = end
        value = named.value
        echo = named.echo or written
        term = Term(value.numerator, value.denominator, named.power, False, echo)
        return bounded(term, end - len(written))

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
                "Check it, and shorten it.",
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
            raise unreadable("Nothing can be divided by 0.", "Write another number there.", at)
        after = self.text[match.end() : match.end() + 2]
        if word is None and after[:1] == "/" and after[1:].isdigit():
            raise unreadable(
                "There are two lines of fractions here, and it can mean two things.",
                "Write ÷ with spaces for the division.",
                match.end(),
            )

    def check_line(self, match, first, places):
        """Refuse a line of a fraction right after a decimal: 31.5/8."""
        if below := _LINE.match(self.text, match.end()):
            raise refusals.two_meanings(first, places, below[1], match.end())

    def start(self, match):
        """Where a match begins, past the spaces before it."""
        return match.end() - len(match[0].lstrip(" "))
