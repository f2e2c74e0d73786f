"""A floor by readings down from a level line, and what a base needs to be level on it.

Exact inches. A larger reading is a lower floor; between two readings the floor is straight.
"""

from dataclasses import dataclass
from fractions import Fraction
from itertools import accumulate, pairwise

from sawside.errors import Refusal

EDGES = ("front", "back")


@dataclass(frozen=True, slots=True)
class Spot:
    """A place of the floor: `along` the run, at its `edge` "front" or "back", `down` from the
    line; `name` says where it is under the cases."""

    along: Fraction
    edge: str
    down: Fraction
    name: str = ""


@dataclass(frozen=True, slots=True)
class Floor:
    """`read` are all spots that were read, `spots` those that get a shim."""

    read: tuple[Spot, ...]
    spots: tuple[Spot, ...]

    @property
    def high(self):
        """The spot where the floor is highest: there a level base touches it."""
        return min((*self.spots, *self.read), key=lambda spot: spot.down)

    @property
    def out(self):
        """From the highest to the lowest place under the base."""
        return max(self.under(spot) for spot in (*self.spots, *self.read))

    @property
    def thickest(self):
        """The most that goes under a spot that gets a shim."""
        return max(self.under(spot) for spot in self.spots)

    def under(self, spot):
        """What goes under a level base there."""
        return spot.down - self.high.down


def floor_of(given, show):
    """The `Floor` of a form; "impossible" where the readings don't cover the cases."""
    readings = sorted(given.readings, key=lambda row: row.along)
    _check_readings(given, show, readings)
    lines = {
        edge: [
            (row.along, getattr(row, edge)) for row in readings if getattr(row, edge) is not None
        ]
        for edge in EDGES
    }
    read = tuple(
        Spot(along, edge, down, _at(show, along)) for edge in EDGES for along, down in lines[edge]
    )
    if not given.cases:
        return Floor(read, read)
    places = _corners(given)
    _check_cover(given, show, lines, places[-1][0])
    return Floor(
        _below(read, places[-1][0]),
        tuple(
            Spot(along, edge, _down(lines[edge], along), name)
            for edge in EDGES
            if lines[edge]
            for along, name in places
        ),
    )


def _below(read, end):
    """The spots that the cases stand on or between."""
    return tuple(spot for spot in read if spot.along <= end) or read


def _at(show, along):
    return f"At {show.brief(along)}" if along else "Left end"


def _corners(given):
    """(place along, its name) of every end and joint of the cases."""
    ends = list(accumulate(given.cases, initial=Fraction(0)))
    names = [f"Joint {at}" for at in range(1, len(given.cases))]
    return list(zip(ends, ("Left end", *names, "Right end"), strict=True))


def _down(line, along):
    """The floor of one edge at a place between two readings."""
    for (start, before), (end, after) in pairwise(line):
        if start <= along <= end:
            return before + (after - before) * (along - start) / (end - start)
    return line[0][1]


def _check_readings(given, show, readings):
    for before, after in pairwise(readings):
        if before.along == after.along:
            raise Refusal(
                "impossible",
                f"There are two readings at {show.text(after.along)}.",
                "Put front and back in one row, or remove one of them.",
                field="readings",
                row=given.readings.index(after),
            )
    if sum((row.front is not None) + (row.back is not None) for row in readings) < 2:
        raise Refusal(
            "impossible",
            "One reading doesn’t tell how the floor slopes.",
            "Measure down to the floor in two places or more.",
            field="readings",
        )


def _check_cover(given, show, lines, end):
    """ "impossible" where an edge was not read from end to end of the cases."""
    for edge in EDGES:
        line = lines[edge]
        if line and (line[0][0] > 0 or line[-1][0] < end):
            raise Refusal(
                "impossible",
                f"The cases go from 0 to {show.text(end)}, the {edge} readings from "
                f"{show.text(line[0][0])} to {show.text(line[-1][0])}.",
                f"Measure the {edge} at both ends of the cases too.",
                field="readings",
            )
