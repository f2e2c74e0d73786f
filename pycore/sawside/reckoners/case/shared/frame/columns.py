"""Columns of a face frame with openings of their own, by a list of middle rails. Inches."""

from sawside.errors import Refusal
from sawside.lengths.words import counted
from sawside.reckoners.case.shared.frame.equal_openings import LEAST, equal_openings, no_room

_FIELD = "column_rails"


def rails_of(given, column):
    """The openings above the middle rails of a column, by its number from 1, from the top; None for
    one that is to share."""
    return [rail.opening for rail in given.column_rails or () if rail.column == column]


def shares_of(given, show, room, column):
    """What is left of `room` for the openings that are not given, and how many those are."""
    above = rails_of(given, column)
    taken = [each for each in above if each is not None]
    rest, many = room - sum(taken), len(above) - len(taken) + 1
    if rest < LEAST * many:
        raise Refusal(
            "impossible",
            f"In column {column}, {counted(len(taken), 'opening')} "
            f"{'takes' if len(taken) == 1 else 'take'} {show.text(sum(taken))} of the "
            f"{show.text(room)} between the wood: {'the last one' if many == 1 else 'another one'} "
            f"would be under {show.text(LEAST)}.",
            "Enter smaller openings, or fewer.",
            field=_FIELD,
        )
    return rest, many


def by_column(given, show, outline, rail, columns):
    """The heights of the openings of each column, from the top; `rail` is the width of a middle
    rail. "impossible" for a column that isn't there, or where an opening closes up."""
    farthest = max((each.column for each in given.column_rails or ()), default=1)
    if farthest > columns:
        raise Refusal(
            "impossible",
            f"There {'is' if columns == 1 else 'are'} {counted(columns, 'column')}, but a middle "
            f"rail in column {farthest}.",
            "Add middle stiles, or enter a column that’s there.",
            field=_FIELD,
        )
    return [_heights(given, show, outline, rail, column) for column in range(1, columns + 1)]


def room_in(outline, rail, many):
    """What so many middle rails leave for openings in a column."""
    return outline.height - outline.foot - outline.top - outline.bottom - many * rail


def _heights(given, show, outline, rail, column):
    above = rails_of(given, column)
    room = room_in(outline, rail, len(above))
    if room < LEAST * (len(above) + 1):
        high = outline.height - outline.foot
        field = _FIELD if above else "height"
        raise no_room(show, "rails", high - room, f"{show.text(high)} high", field)
    shares = iter(equal_openings(show, *shares_of(given, show, room, column)))
    return [next(shares) if each is None else each for each in (*above, None)]
