"""How much may stand on a shelf for its sag to stay within a limit."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.shelves.shared.strength.answers import told
from sawside.reckoners.shelves.shared.strength.case import shelf_case
from sawside.reckoners.shelves.shared.strength.working import load_told
from sawside.wood.numbers import metric, number_text, small_text
from sawside.wood.strength.shelf import Load
from sawside.wood.weights import KILOGRAMS_PER_POUND

_TENTH = Fraction(1, 10)


def heaviest_load(given, show):
    """The heaviest load, down to a tenth of a pound: each pound adds the same to the sag."""
    case = shelf_case(given, load=Load("whole", Fraction(0)))
    most = case.limit(case.shelf)
    if case.excess(case.shelf) > 0:
        raise Refusal(
            "impossible",
            "The shelf sags past the limit under its own weight.",
            "Use a shorter span, or another thickness or material.",
            field="span",
        )
    loaded = case.shelf.changed(load=Load("whole", Fraction(1)))
    exact, own, each = min(
        ((most - own) / each, own, each) for own, each in _by_place(case, loaded) if each > 0
    )
    step = _TENTH / KILOGRAMS_PER_POUND if metric(show) else _TENTH
    pounds = exact // step * step
    if not pounds:
        raise Refusal(
            "impossible",
            f"The shelf sags past the limit with only {_weight(step, show)} on it.",
            "Use a shorter span or a thicker board.",
            field="span",
        )
    shelf = case.shelf.changed(load=Load("whole", pounds))
    line = _line(most, own, each, pounds, show)
    heaviest, found = load_told(shelf, show), f"Up to {_weight(pounds, show)} total"
    return told(case, shelf, show, solved={"heaviest": heaviest}, working=(line,), found=found)


def _line(most, own, each, pounds, show):
    """The working: what is left of the most sag, over what one pound or kilogram takes of it."""
    mm = metric(show)
    if mm:
        most, own, each = (value / INCHES_PER["mm"] for value in (most, own, each))
        each /= KILOGRAMS_PER_POUND
    one, unit = ("One kilogram", " mm") if mm else ("One pound", "″")
    most, each, own_text = (small_text(size) for size in (most, each, abs(own)))
    sags = f"{one} sags it {each}{unit}; the limit is {most}{unit}"
    left = most
    if own:
        sags += f"; its own weight {'takes' if own > 0 else 'gives'} {own_text}{unit} of it"
        left = f"({most} {'−' if own > 0 else '+'} {own_text})"
    return f"{sags}: {left} ÷ {each} → {_weight(pounds, show)} total"


def _weight(pounds, show):
    """In the one unit of the working."""
    if metric(show):
        return f"{number_text(pounds * KILOGRAMS_PER_POUND, 1)} kg"
    return f"{number_text(pounds, 1)} lb"


def _by_place(case, loaded):
    """For the middle and for the ends: the drop without a load, and what one pound adds to it."""
    for bare, under_one in zip(case.shelf.drops, loaded.drops, strict=True):
        yield bare * case.factor, (under_one - bare) * case.factor
