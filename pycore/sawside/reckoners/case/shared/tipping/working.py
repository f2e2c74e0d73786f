"""The working of a case that might tip, in pounds and inches or kilograms and millimeters."""

from fractions import Fraction
from math import ceil

from sawside.lengths.show import angle_equals
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.case.shared.tipping.moments import LEAST_RATING
from sawside.wood.numbers import metric, number_text, small_text
from sawside.wood.weights import KILOGRAMS_PER_POUND

_TENTHS = 10


def at_least(pounds, show):
    """A weight that has to be borne, up to a whole pound and kilogram: "74 lb (34 kg)"."""
    kilograms = f"{ceil(pounds * KILOGRAMS_PER_POUND):,} kg"
    return kilograms if metric(show) else f"{ceil(pounds):,} lb ({kilograms})"


def under(pounds, show):
    """A weight that is a limit, down to a whole one: "61 lb (27 kg)"."""
    kilograms = f"{int(pounds * KILOGRAMS_PER_POUND):,} kg"
    return kilograms if metric(show) else f"{int(pounds):,} lb ({kilograms})"


def tipping_working(tipping, show):
    """Line by line: what holds it, what tips it, what is left for the anchors."""
    yield f"Empty, its weight holds {_moment(tipping.case, show)}"
    if tipping.load:
        yield f"Its load holds {_moment(tipping.load, show)}"
    for each in tipping.forces:
        yield f"{each.name} tips it by {_moment(each, show)}"
    if len(tipping.forces) > 1:
        sum_of = " + ".join(_number(each.moment, show) for each in tipping.forces)
        yield f"Together: {sum_of} = {_number(tipping.tips, show)}"
    if tipping.loaded:
        yield from _as_loaded(tipping, show)
    lacking = tipping.all_of_it
    if lacking > 0:
        yield from _on_anchors(tipping, lacking, show)
    if tipping.each < LEAST_RATING:
        yield f"No furniture anchor is asked for less than {at_least(LEAST_RATING, show)}"


def _as_loaded(tipping, show):
    """What holds it with its load, and how far it leans before it falls."""
    case, load = tipping.case, tipping.load
    sum_of = f"{_signed(case.moment, show)} + {_number(load.moment, show)}"
    if load.moment < 0:
        sum_of = f"{_signed(case.moment, show)} − {_number(load.moment, show)}"
    yield f"Loaded it holds {sum_of} = {_signed(tipping.held, show)}"
    if tipping.balance is None:
        return
    one, other = (_pounds(each.pounds, show) for each in (case, load))
    high = _inches(tipping.height, show)
    part = "3/4" if tipping.state == "above" else "1/2"
    center = _inches(tipping.center, show)
    yield f"Its center: {high} × (1/2 × {one} + {part} × {other}) ÷ ({one} + {other}) = {center}"
    arm = _inches(case.inches, show)
    yield f"Leaned until it falls: arctan ({arm} ÷ {center}){angle_equals(tipping.balance)}"


def _signed(moment, show):
    return f"{'−' if moment < 0 else ''}{_number(moment, show)}"


def _on_anchors(tipping, lacking, show):
    """How what the weight doesn't hold is shared by the anchors."""
    unit = "kg" if metric(show) else "lb"
    times, tips, held = (
        small_text(tipping.times),
        *(_number(each, show) for each in (tipping.tips, abs(tipping.held_at_worst))),
    )
    sign = "−" if tipping.held_at_worst >= 0 else "+"
    yield f"The anchors take {times} × {tips} {sign} {held} = {_number(lacking, show)}"
    yield (
        f"On each: {_number(lacking, show)} ÷ {_inches(tipping.anchor_height, show)} ÷ "
        f"{tipping.anchors} = {_pounds(tipping.each, show)} {unit}"
    )


def _moment(turning, show):
    unit = "kg" if metric(show) else "lb"
    weight, arm = _pounds(turning.pounds, show), _inches(abs(turning.inches), show)
    sign = "−" if turning.inches < 0 else ""
    return f"{weight} {unit} × {sign}{arm} = {sign}{_number(abs(turning.moment), show)}"


def _pounds(pounds, show):
    return small_text(pounds * (KILOGRAMS_PER_POUND if metric(show) else 1), 6)


def _inches(inches, show):
    """Without its unit, as moments are."""
    return small_text(inches / (INCHES_PER["mm"] if metric(show) else Fraction(1)), 6)


def _number(moment, show):
    scale = KILOGRAMS_PER_POUND / INCHES_PER["mm"] if metric(show) else Fraction(1)
    return small_text(abs(moment) * scale, 9)


def times_text(margin):
    """How many times, down to a tenth: "1.8 times"; never more than is true."""
    return f"{number_text(Fraction(int(margin * _TENTHS), _TENTHS), 1)} times"
