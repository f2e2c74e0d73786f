"""One pass from text to an exact term: the grammar that `reader` describes.

A stack of levels stands in for recursion, so that parentheses cost no depth.
"""

from sawside.errors import Refusal
from sawside.lengths.bounded import bounded
from sawside.lengths.reading.measures import Measures
from sawside.lengths.reading.refusals import MOST_CHARACTERS, unfinished, unreadable, zero_so_far
from sawside.lengths.reading.scanner import NUMBER, SIGN
from sawside.lengths.reading.term import added, divided, multiplied, negated
from sawside.lengths.reading.what_was_due import no_number, no_sign

_SIGNS = {each: each for each in "+−÷()"} | {"-": "−", "*": "×", "x": "×", "X": "×", "/": "÷"}
_SIGNS |= dict.fromkeys(("of", "OF", "Of", "oF"), "of")


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
    at = parser.level and parser.level.last_sign
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
        self.at = at
        self.plus_at = self.times_at = None
        self.default = default
        self.total = self.product = self.plus = self.times = self.sign = None

    @property
    def last_sign(self):
        """The place of the last + or −, or else of the last × or ÷; None without any."""
        return self.times_at if self.plus_at is None else self.plus_at

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


class _Parser(Measures):
    """What is left of one text, and what is pending of its sum.

    A sum is operands with a sign between each two. An operand is a measure or a name, behind any
    signs and opening parentheses; closing ones follow it.
    """

    level = None

    def sum(self):
        """The term of the whole text."""
        number = NUMBER.match(self.text)
        if number is not None and number.end() == self.end:  # most texts are one number
            return self.number(number)[0]
        self.level, self.outer = _Level(0, self.default), []
        self.operand(number)
        while self.sign():
            self.operand(NUMBER.match(self.text, self.at))
        return self.whole()

    def operand(self, number):
        """Take the next operand; `number` is the match of a number that stands here, or None."""
        while (term := self.named() if number is None else self.measure(number)) is None:
            self.before_number()
            number = NUMBER.match(self.text, self.at)
        try:
            self.level.take(term)
        except Refusal as refusal:
            refusal.unfinished = self.at >= self.end and zero_so_far(self.text)
            raise

    def before_number(self):
        """Pass an opening parenthesis, or the one sign that a number may have of its own."""
        match = SIGN.match(self.text, self.at)
        sign = match and _SIGNS[match[1]]
        if sign == "(":
            self.outer.append(self.level)
            self.level = _Level(match.start(1), self.default)
        elif sign in ("+", "−") and self.level.sign is None:
            self.level.sign = sign
        else:
            raise no_number(self.text, self.typed, self.at, self.kind.example, self.names)
        self.at = match.end()

    def sign(self):
        """Pass closing parentheses and the sign behind them; False at the end of the text."""
        text, level = self.text, self.level
        while self.at < self.end:
            match = SIGN.match(text, self.at)
            sign = match and _SIGNS[match[1]]
            if sign == ")" and self.outer:
                inside = level.fold().enclosed()
                level = self.level = self.outer.pop()
                level.take(inside)
                self.at = match.end()
                continue
            if sign is None or sign in "()":
                raise no_sign(text, self.typed, self.at, self.kind)
            self.at, at = match.end(), match.start(1)
            if sign in "+−":
                level.fold()
                level.plus, level.plus_at = sign, at
            else:
                level.times, level.times_at = sign, at
            return True
        return False

    def whole(self):
        """The total at the end of the text."""
        if self.outer:
            raise unfinished("A parenthesis isn’t closed.", "Add ) where it ends.", self.level.at)
        try:
            return self.level.fold()
        except Refusal as refusal:  # a product may still make them alike: 6 in² + 3 in × 2 in
            refusal.unfinished = refusal.kind == "unreadable"
            raise
