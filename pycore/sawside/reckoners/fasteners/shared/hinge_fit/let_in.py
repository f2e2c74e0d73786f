"""How deep a hinge is let in, and what its screws leave of the wood. Exact inches."""

from dataclasses import dataclass
from fractions import Fraction
from math import ceil, floor

from sawside.errors import impossible
from sawside.lengths.fine import fine_text
from sawside.lengths.plain_numbers import number_text
from sawside.lengths.units import INCHES_PER


@dataclass(frozen=True, slots=True)
class Gains:
    """A butt hinge: `closed` is its thickness, `depth` that of each gain (0 without), `gap` what is
    then between door and frame."""

    closed: Fraction
    depth: Fraction
    gap: Fraction


@dataclass(frozen=True, slots=True)
class Bore:
    """A cup hinge: `tab` from the door's edge to the hole, `center` to its center, `left` the wood
    behind it; `covers` is the overlay, below 0 for an inset door."""

    covers: Fraction
    tab: Fraction
    center: Fraction
    left: Fraction


def gains_of(given, show):
    """The `Gains` of a form: two leaves and what is between them fill the gap and the gains.

    "impossible" where the hinge is too thin for the gap, or too thick for the wood.
    """
    closed = 2 * given.leaf + given.between
    if given.gains == "none":
        return Gains(closed, Fraction(0), closed)
    into = closed - given.gap
    if into <= 0:
        raise impossible(
            f"This hinge is {fine_text(closed, show)} thick closed: it doesn’t fill a gap of "
            f"{fine_text(given.gap, show)}.",
            f"Use a gap smaller than {fine_text(closed, show)}, a thicker hinge, or no gains.",
            "gap",
        )
    depth = into / (2 if given.gains == "both" else 1)
    if depth >= given.wood:
        raise impossible(
            f"The leaves are too thick: a gain {fine_text(depth, show)} deep goes through "
            f"{fine_text(given.wood, show)} of wood.",
            "Use a thinner hinge, a wider gap, or gains in both door and frame.",
            "leaf",
        )
    return Gains(closed, depth, given.gap)


def bore_of(given, show):
    """The `Bore` of a form, from overlay = tab + constant − plate height.

    "impossible" where no tab that the hinge allows gives it, or the cup comes through.
    """
    covers = given.overlay if given.sits == "over" else -given.reveal
    tab = covers + given.plate - given.constant
    if given.tab_least > given.tab_most:
        raise impossible("The smallest tab is larger than the largest.", "Swap them.", "tab_most")
    if not given.tab_least <= tab <= given.tab_most:
        raise _wrong_plate(given, show, covers, tab)
    if given.deep >= given.wood:
        raise impossible(
            f"A cup {fine_text(given.deep, show)} deep goes through a door "
            f"{fine_text(given.wood, show)} thick.",
            "Use a thicker door or a shallower cup.",
            "wood",
        )
    return Bore(covers, tab, tab + given.cup / 2, given.wood - given.deep)


def _wrong_plate(given, show, covers, tab):
    """The refusal of a tab that the hinge doesn't allow, with the plates that would do."""
    low, high = (each + given.constant - covers for each in (given.tab_least, given.tab_most))
    least, most = (fine_text(each, show) for each in (given.tab_least, given.tab_most))
    way = "more" if tab > given.tab_most else "less"
    constants = _millimeters(
        *(covers + given.plate - each for each in (given.tab_most, given.tab_least))
    )
    if high < 0:
        less = fine_text(-high, show)
        remedy = f"Use a hinge with a constant of {constants}, or cover {less} less."
    else:
        plates = _millimeters(max(low, Fraction(0)), high)
        remedy = f"Use a plate {plates} high, or a hinge with a constant of {constants}."
    return impossible(
        f"That takes a tab of {way} than this hinge allows, {least} to {most}.", remedy, "plate"
    )


def _millimeters(low, high):
    """A range of inches as makers give it, in tenths of a millimeter that are within it."""
    tenths = INCHES_PER["mm"] / 10
    least, most = Fraction(ceil(low / tenths), 10), Fraction(floor(high / tenths), 10)
    return f"{_signed(least)} to {_signed(max(least, most))} mm"


def _signed(number):
    return f"{'−' if number < 0 else ''}{number_text(abs(number), 1)}"


def tip_left(given, show, proud):
    """Wood past the tip of the hinge's screw; None without one.

    `proud` is how far the face of the leaf is above the wood, below 0 where it is under.
    "impossible" where the screw comes through.
    """
    if given.screw is None:
        return None
    left = given.wood - (given.screw - proud)
    if left <= 0:
        raise impossible(
            f"A {fine_text(given.screw, show)} screw comes through "
            f"{fine_text(given.wood, show)} of wood.",
            f"Use one shorter than {fine_text(given.wood + proud, show)}.",
            "screw",
        )
    return left
