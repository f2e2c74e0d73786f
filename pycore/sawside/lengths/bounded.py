"""How long a fraction may get: what a sum may come to, and what is written out exactly.

A few names multiplied again and again would else make numbers of millions of digits.
"""

from math import gcd

from sawside.errors import Refusal

MOST_BITS = 1024
"""Of a numerator or denominator: some 308 digits. No text without names comes near it, and two
irrational answers multiplied (`reckoning.links.BITS` of each) stay far below."""

MOST_WRITTEN = 309
"""Digits of the longest whole number of so many bits."""


def is_bounded(value):
    """Whether neither part of a fraction is longer than that."""
    return max(value.numerator.bit_length(), value.denominator.bit_length()) <= MOST_BITS


def bounded(term, at):
    """A term of a sum (`term.Term`) in lower terms where its numbers got long.

    Refused at `at`, "range", where they stay so.
    """
    if term.top.bit_length() > MOST_BITS or term.bottom.bit_length() > MOST_BITS:
        common = gcd(term.top, term.bottom)
        term.top //= common
        term.bottom //= common
        if term.top.bit_length() > MOST_BITS or term.bottom.bit_length() > MOST_BITS:
            message = "That works out to a number with more than 300 digits."
            remedy = "Replace a name in it with a rounded number, as in 31 5/8."
            raise Refusal("range", message, remedy, at=at)
    return term
