"""Numbers that are no lengths, as the screen tells them."""

from fractions import Fraction

from sawside.lengths.display import decimal_text
from sawside.lengths.real import settle


def number_text(value, places=0):
    """A number from 0 up, rounded to `places` decimals: "36.3", "1,230" with thousands apart."""
    steps, _ = settle(value * 10**places, round)
    text = decimal_text(Fraction(steps, 10**places), places)
    whole, point, decimals = text.partition(".")
    return f"{int(whole):,}{point}{decimals}"
