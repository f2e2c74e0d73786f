"""The order of the measures of one number: feet before inches, and no unit left out."""

from sawside.lengths.reading import refusals
from sawside.lengths.reading.kinds import FOOT, INCH
from sawside.lengths.reading.refusals import unreadable
from sawside.lengths.reading.two_numbers import side_by_side


def check_point(parser, unit):
    """Refuse a point alone where the smaller unit of a measure is due: 6' ."""
    rest = parser.text[parser.at :]
    if rest.strip() == "." and _smaller(parser.kind, unit):
        raise refusals.point_alone(parser.at + rest.index("."))


def check_order(parser, unit, smaller, match):
    """Refuse a second measure, of the unit `smaller` or none, that does not belong to the first.

    `match` is the number that the parser has just passed.
    """
    if smaller and unit.metric == smaller.metric and unit.factor > smaller.factor:
        return
    at, ended = parser.start(match), parser.at >= len(parser.text.rstrip())
    if smaller is None and (unit.metric or unit.factor > FOOT.factor):
        goes_on = ended and _smaller(parser.kind, unit)
        raise (refusals.unfinished if goes_on else unreadable)(
            "The number after this unit needs its own unit.",
            "Add its unit, or put a sign between the two.",
            at,
        )
    if smaller and ended and (longer := _smaller(parser.kind, unit, match["unit"])):
        raise refusals.unit_begun(match["unit"], longer, match.start("unit"))
    if smaller is None or unit.metric != smaller.metric or unit is smaller:
        raise side_by_side(parser.text, at)
    order = "feet before inches" if unit is INCH else "the bigger unit first"
    raise unreadable("The units are out of order.", f"Put {order}.", at)


def _smaller(kind, unit, begun=""):
    """The names of smaller units that may follow one, of those that go on from `begun`."""
    return [
        name
        for name, each in kind.units.items()
        if each.metric == unit.metric
        and each.factor < unit.factor
        and name.startswith(begun)
        and name != begun
    ]
