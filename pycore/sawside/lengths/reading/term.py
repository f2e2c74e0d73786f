"""A number on its way through a sum: exact, with its dimension and the way it was understood.

Numerator and denominator are kept apart as plain integers and meet as a `Fraction` only at the
end, which makes a key press quick. The echo of a bare number holds a `SLOT` wherever a unit
belongs if the number turns out to be a length: `2 × 3/4□`, `37 9/16□ ÷ 2`.
"""

from fractions import Fraction

from sawside.lengths.bounded import bounded
from sawside.lengths.reading.refusals import unreadable

NAMES = ("a number", "a length", "an area", "a volume")
SLOT = "\0"


class Term:
    """`power` 0 is a number, 1 a length (inches), 2 an area, 3 a volume.

    `bare` means a pure number that may still turn out to be a length. `remainder`, in inches, is
    what a length divided by a length leaves over. A term stands in one place of one sum, so
    `taken_as` and `enclosed` may change it, which is quicker than another one.
    """

    __slots__ = ("bare", "bottom", "echo", "power", "remainder", "top")

    def __init__(self, top, bottom, power, bare, echo, remainder=None):
        self.top = top
        self.bottom = bottom
        self.power = power
        self.bare = bare
        self.echo = echo
        self.remainder = remainder

    @property
    def value(self):
        """The exact value."""
        return Fraction(self.top) if self.bottom == 1 else Fraction(self.top, self.bottom)

    @property
    def pure_echo(self):
        """The echo when the term is a pure number after all."""
        return self.echo.replace(SLOT, "") if self.bare else self.echo

    def taken_as(self, unit):
        """The same term, from now on a length in `unit`; it must be bare."""
        self.top *= unit.top
        self.bottom *= unit.bottom
        self.power = 1
        self.bare = False
        self.echo = self.echo.replace(SLOT, unit.echo)
        return self

    def with_part(self, part):
        """A larger unit with the smaller one that follows it: 6′ and 7″."""
        top = self.top * part.bottom + part.top * self.bottom
        return Term(top, self.bottom * part.bottom, 1, False, f"{self.echo} {part.echo}")

    def enclosed(self):
        """The same term, from now on in parentheses."""
        self.echo = f"({self.echo})"
        return self


def negated(term):
    """A minus sign before a term."""
    return Term(-term.top, term.bottom, term.power, term.bare, f"−{term.echo}")


def added(one, other, sign, at, default):
    """Sum or difference by `sign`; a bare number beside a length is one, in the unit `default`.

    Where there is no such unit, no length is asked for. Refused at `at`: terms of different
    dimensions.
    """
    bare = one.bare and other.bare
    if not bare:
        if default is None:
            pass
        elif one.bare and other.power == 1:
            one.taken_as(default)
        elif other.bare and one.power == 1:
            other.taken_as(default)
        if one.power != other.power:
            verb, joins = ("add", "and") if sign == "+" else ("take", "from")
            first, second = (one, other) if sign == "+" else (other, one)
            raise unreadable(
                f"I can’t {verb} {NAMES[first.power]} {joins} {NAMES[second.power]}.",
                "Keep lengths with lengths and areas with areas."
                if default is not None
                else "Leave the length out, or divide it by another length.",
                at,
            )
    left, right = one.top * other.bottom, other.top * one.bottom
    top = left + right if sign == "+" else left - right
    left, right = (one.echo, other.echo) if bare else (one.pure_echo, other.pure_echo)
    bottom, echo = one.bottom * other.bottom, f"{left} {sign} {right}"
    return bounded(Term(top, bottom, one.power, bare, echo), at)


def multiplied(one, other, sign, at):
    """Product; lengths make areas and volumes. `sign` is × or of, as it was written."""
    power = one.power + other.power
    if power > 3:
        raise unreadable(
            f"{NAMES[one.power].capitalize()} times {NAMES[other.power]} has no use in a shop.",
            "Remove one of the lengths.",
            at,
        )
    bare = one.bare and other.bare
    echo = f"{one.pure_echo} {sign} {other.echo if bare else other.pure_echo}"
    return bounded(Term(one.top * other.top, one.bottom * other.bottom, power, bare, echo), at)


def divided(one, other, at, default):
    """Quotient; a length by a length is a count, and its remainder is kept."""
    if one.bare and other.power == 1 and default is not None:
        one = one.taken_as(default)
    if other.top == 0:
        raise unreadable("Can’t divide by 0.", "Use another number there.", at)
    if one.power < other.power:
        raise unreadable(
            f"{NAMES[one.power].capitalize()} can’t be divided by {NAMES[other.power]}.",
            "Put the larger measure first, or remove its unit.",
            at,
        )
    top, bottom = one.top * other.bottom, one.bottom * other.top
    remainder = None
    if one.power == other.power == 1:
        remainder = one.value - top // bottom * other.value
    bare = one.bare and other.bare
    echo = f"{one.echo if bare else one.pure_echo} ÷ {other.pure_echo}"
    return bounded(Term(top, bottom, one.power - other.power, bare, echo, remainder), at)
