"""Numbers that are no lengths, such as loads and stresses, as the screen tells them."""

from sawside.lengths.plain_numbers import number_text
from sawside.lengths.units import INCHES_PER
from sawside.wood.materials import NEWTONS_PER_POUND, PSI_IN

_WHOLE = 100


def small_text(value, digits=5):
    """A small number from 0 up, so that `digits` of its digits are told: "0.000029123"."""
    places = next((each for each in range(30) if value * 10**each >= 10 ** (digits - 1)), 0)
    return number_text(value, places)


def percent_text(value, places=1):
    """A percentage: "9.2%"."""
    return f"{number_text(value, places)}%"


def metric(show):
    """Whether lengths, and with them loads and stresses, are told in metric units."""
    return show.settings.display == "mm"


def stress_text(psi, show):
    """A stress or a stiffness from 0 up: "409 psi", "2.8 MPa", "6,964 MPa"."""
    if not metric(show):
        return f"{number_text(psi)} psi"
    mega = psi / PSI_IN["MPa"]
    return f"{number_text(mega, 0 if mega >= _WHOLE else 1)} MPa"


def stiff_number(pounds, show, inches=0):
    """Pounds times inches to a power, as arithmetic shows it: "6,964", without its unit.

    Newtons times millimeters where lengths are metric.
    """
    newtons = pounds * NEWTONS_PER_POUND / INCHES_PER["mm"] ** inches
    return small_text(newtons if metric(show) else pounds, 9)


def stiff_unit(show, power=""):
    """The unit of `stiff_number`: "lb", "lb·in", "N·mm²"; `power` is "", "·" or "·²"."""
    force, long = ("N", "mm") if metric(show) else ("lb", "in")
    return f"{force}·{long}{power[1:]}" if power else force


def force_text(pounds, show):
    """A weight as it goes into a formula: "66.4", in newtons where lengths are metric."""
    return number_text(pounds * NEWTONS_PER_POUND if metric(show) else pounds, 1)


def size_text(inches, show):
    """A length from 0 up in decimals, as arithmetic shows it: "0.0766″", "1.946 mm"."""
    if metric(show):
        return f"{number_text(inches * (1 / INCHES_PER['mm']), 3)} mm"
    return f"{number_text(inches, 4)}″"
