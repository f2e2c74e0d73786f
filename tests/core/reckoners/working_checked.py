"""Working read again as it is printed, and worked out anew: an evaluator that shares no code.

A line is searched for its relations, `=`, `≈` and `→`. On both sides of each the longest text next
to it that is arithmetic is worked out in floats, with what its printed digits leave open: a number
that ends in … was cut, one in decimals may have been rounded. Both sides must then agree.
"""

import math
import re
from dataclasses import dataclass

_TOKEN = re.compile(
    r"(?P<mixed>\d[\d,]* \d+/\d+)|(?P<fraction>\d+/\d+)(?![\d.])"
    r"|(?P<decimal>(?:\d[\d,]*)?\.\d+|\d[\d,]*(?!\d))(?P<cut>…?)"
    r"|(?P<function>arctan|arcsin|sin|cos|tan|cot|√|half of)(?![a-z])"
    r"|(?P<unit>″|kg/m³|mm\b|in\b(?! all)|lb per cubic foot)"
    r"|(?P<nothing>%|°|psi\b|kg\b|lb\b|MPa\b|lb·in²|hole[s]?\b|shelf\b|shelves\b|halves\b|quarters\b"
    r"|eighths\b|sixteenths\b|thirty-seconds\b|sixty-fourths\b)"
    r"|(?P<sign>[()+−×÷²]|at(?= \d))"
)
_RELATION = re.compile(r" (?:=|≈|→) ")
_TURN = math.pi / 180
_FUNCTIONS = {
    "sin": lambda x: math.sin(x * _TURN),
    "cos": lambda x: math.cos(x * _TURN),
    "tan": lambda x: math.tan(x * _TURN),
    "cot": lambda x: 1 / math.tan(x * _TURN),
    "arctan": lambda x: math.atan(x) / _TURN,
    "arcsin": lambda x: math.asin(min(x, 1)) / _TURN,
    "√": math.sqrt,
    "half of": lambda x: x / 2,
}
_IN = {
    "″": (1, 1),
    "in": (1, 1),
    "mm": (1 / 25.4, 1),
    "lb per cubic foot": (1 / 1728, -3),
    "kg/m³": (0.0254**3, -3),
}
"""Units in inches, and how many inches are multiplied."""


@dataclass(frozen=True)
class Known:
    """From `low` to `high`; `inches` is the power of inches it is told in, None for a bare one."""

    low: float
    high: float
    inches: int | None = None

    def __add__(self, other):
        return Known(self.low + other.low, self.high + other.high, self.inches)

    def __neg__(self):
        return Known(-self.high, -self.low, self.inches)

    def __mul__(self, other):
        ends = [one * two for one in (self.low, self.high) for two in (other.low, other.high)]
        return Known(min(ends), max(ends), _power(self.inches, other.inches, 1))

    def over(self, other):
        """Divided by another."""
        if other.low <= 0 <= other.high:
            raise ZeroDivisionError
        ends = [one / two for one in (self.low, self.high) for two in (other.low, other.high)]
        return Known(min(ends), max(ends), _power(self.inches, other.inches, -1))

    def of(self, function):
        """A function of it, which must be monotone."""
        ends = sorted((function(self.low), function(self.high)))
        return Known(*ends, self.inches if function is _FUNCTIONS["half of"] else None)

    def told(self, bare):
        """In inches, when bare numbers are lengths of `bare` inches."""
        if self.inches is not None:
            return self
        return Known(self.low * bare, self.high * bare, 1)


def _power(one, other, sign):
    if one is None and other is None:
        return None
    return (one or 0) + sign * (other or 0)


@dataclass(frozen=True)
class Relation:
    """Two sides of a line, as texts; whether they agree; how much their digits leave open."""

    left: str
    right: str
    agrees: bool
    open_by: float


def relations(line, *, metric, step):
    """(the relations that were checked, the signs of those that were not) of a line of working.

    `metric` says that bare lengths are millimeters; `step` is the mark they are rounded to, inches.
    """
    bare = 1 / 25.4 if metric else 1.0
    checked, unread = [], []
    signs = list(_RELATION.finditer(line))
    for number, found in enumerate(signs):
        begin = signs[number - 1].end() if number else 0
        end = signs[number + 1].start() if number + 1 < len(signs) else len(line)
        before, behind = line[begin : found.start()], line[found.end() : end]
        right = _beside(behind, bare, at_end=False)
        left = _beside(before, bare, at_end=True)
        if left is None or right is None:
            unread.append(found[0].strip())
            continue
        rounds = step if found[0] == " → " else None
        one, two = left[1], right[1]
        if found[0] == " ≈ ":
            two = Known(two.low - _whole(right[0]), two.high + _whole(right[0]), two.inches)
        as_printed = _beside(before, bare, at_end=True, rounded=False)[1]
        agrees, open_by = _agree(as_printed, two, bare, rounds)
        if not agrees:
            agrees, open_by = _agree(one, two, bare, rounds)
        checked.append(Relation(left[0], right[0], agrees, open_by))
    return checked, unread


def _whole(text):
    """Half of the last digit of a rounded whole number; degrees have two more digits."""
    return 0.5 if re.fullmatch(r"[\d,]+", text) else 0.005 * text.endswith("°")


def _agree(one, other, bare, step):
    if one.inches != other.inches and 1 in (one.inches, other.inches):
        one, other = one.told(bare), other.told(bare)
    far = max(map(abs, (one.low, one.high, other.low, other.high)))
    slack = 1e-9 * max(far, 1)
    if step is not None:
        slack += step if other.inches else 1
    agrees = one.low <= other.high + slack and other.low <= one.high + slack
    return agrees, (one.high - one.low) / max(far, 1e-9) if step is None else 0.0


def _beside(text, bare, *, at_end, rounded=True):
    """(text, value) of the longest arithmetic at the end or at the beginning of a text.

    Decimals are what they are printed as, or `rounded` ones of what they stand for.
    """
    tokens, places = [], []
    for found in _TOKEN.finditer(text):
        if places and text[places[-1][1] : found.start()].strip():
            tokens, places = (tokens, places) if not at_end else ([], [])
            if not at_end:
                break
        tokens.append(found)
        places.append(found.span())
    if not tokens:
        return None
    outside = text[places[-1][1] :] if at_end else text[: places[0][0]]
    if outside.strip(" ≈") not in ("", "−"):
        return None
    spans = range(len(tokens)) if at_end else range(len(tokens), 0, -1)
    for cut in spans:
        part = tokens[cut:] if at_end else tokens[:cut]
        value = _worked_out(part, bare, rounded)
        if value is not None:
            return text[part[0].start() : part[-1].end()], value
    return None


class _Unreadable(Exception):
    pass


def _worked_out(tokens, bare, rounded):
    reader = _Reader(tokens, bare, rounded)
    try:
        value = reader.sum()
    except (_Unreadable, ZeroDivisionError, ValueError):
        return None
    return value if reader.at == len(tokens) else None


class _Reader:
    """Sums of products of powers, functions and numbers."""

    def __init__(self, tokens, bare, rounded):
        self.tokens, self.bare, self.rounded, self.at = tokens, bare, rounded, 0

    def peek(self):
        return self.tokens[self.at][0] if self.at < len(self.tokens) else None

    def kind(self):
        return self.tokens[self.at].lastgroup if self.at < len(self.tokens) else None

    def take(self, *texts):
        if self.peek() in texts:
            self.at += 1
            return True
        return False

    def sum(self):
        value = self.product()
        while self.peek() in ("+", "−"):
            minus = self.peek() == "−"
            self.at += 1
            other = self.product()
            if value.inches != other.inches:
                value, other = value.told(self.bare), other.told(self.bare)
            value = value + (-other if minus else other)
        return value

    def product(self):
        value = self.factor()
        while self.peek() in ("×", "÷", "at"):
            divided = self.peek() == "÷"
            self.at += 1
            other = self.factor()
            value = value.over(other) if divided else value * other
        return value

    def factor(self):
        if self.take("−"):
            return -self.factor()
        if self.kind() == "function":
            function = _FUNCTIONS[self.peek()]
            self.at += 1
            return self.factor().of(function)
        value = self.sum_in_parentheses() if self.take("(") else self.number()
        while self.kind() in ("unit", "nothing") or self.peek() == "²":
            if self.peek() == "²":
                value = value * value
            elif self.kind() == "unit":
                size, power = _IN[self.peek()]
                value = value * Known(size, size, power)
            self.at += 1
        return value

    def sum_in_parentheses(self):
        value = self.sum()
        if not self.take(")"):
            raise _Unreadable
        return value

    def number(self):
        while self.kind() == "nothing":  # "hole 8"
            self.at += 1
        if self.kind() not in ("mixed", "fraction", "decimal", "cut"):
            raise _Unreadable
        found = self.tokens[self.at]
        self.at += 1
        return _printed(found, self.rounded, self.peek())


def _printed(found, rounded, unit):
    if found["mixed"]:
        whole, fraction = found["mixed"].replace(",", "").split(" ")
        top, bottom = fraction.split("/")
        exact = int(whole) + int(top) / int(bottom)
        return Known(exact, exact)
    if found["fraction"]:
        top, bottom = found["fraction"].split("/")
        return Known(int(top) / int(bottom), int(top) / int(bottom))
    text = found["decimal"].replace(",", "")
    digit = 10.0 ** -len(text.partition(".")[2])
    number = float(text)
    if found["cut"]:
        return Known(number, number + digit)
    # Told to a tenth of a pound, or a thousandth of a millimeter, without a 0 behind the point.
    open_by = {"lb": 0.05, "lb per cubic foot": 0.05, "mm": 0.0005, "″": 0.00005}.get(unit, 0.0)
    if open_by and rounded and "." not in text:
        return Known(number - open_by, number + open_by)
    if "." not in text or not rounded:
        return Known(number, number)
    return Known(number - digit / 2, number + digit / 2)
