"""How long a fraction may get: what a sum may come to, and what is written out exactly.

A few names multiplied again and again would else make numbers of millions of digits.
"""

MOST_BITS = 1024
"""Of a numerator or denominator: some 308 digits. No text without names comes near it, and two
irrational answers multiplied (`reckoning.links.BITS` of each) stay far below."""

MOST_WRITTEN = 309
"""Digits of the longest whole number of so many bits."""


def is_bounded(value):
    """Whether neither part of a fraction is longer than that."""
    return max(value.numerator.bit_length(), value.denominator.bit_length()) <= MOST_BITS
