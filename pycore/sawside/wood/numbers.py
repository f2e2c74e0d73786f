"""Numbers that are no lengths, such as loads and stresses, as the screen tells them."""

from fractions import Fraction

from sawside.lengths.display import decimal_text
from sawside.lengths.real import settle
from sawside.lengths.units import INCHES_PER


def number_text(value, places=0):
    """A number from 0 up, rounded to `places` decimals: "36.3", "1,230" with thousands apart."""
    steps, _ = settle(value * 10**places, round)
    text = decimal_text(Fraction(steps, 10**places), places)
    whole, point, decimals = text.partition(".")
    return f"{int(whole):,}{point}{decimals}"


def small_text(value, digits=5):
    """A small number from 0 up, so that `digits` of its digits are told: "0.000029123"."""
    places = next((each for each in range(30) if value * 10**each >= 10 ** (digits - 1)), 0)
    return number_text(value, places)


def percent_text(value, places=1):
    """A percentage: "9.2 %"."""
    return f"{number_text(value, places)} %"


def size_text(inches, show):
    """A length from 0 up in decimals, as arithmetic shows it: "0.0766″", "1.946 mm"."""
    if show.settings.display == "mm":
        return f"{number_text(inches * (1 / INCHES_PER['mm']), 3)} mm"
    return f"{number_text(inches, 4)}″"
