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
    """A place of the floor: `along` the run (0 to 1 of it where its length isn't known), at its
    `edge` "front" or "back", `down` from the line; `name` is what it is called. Where it wasn't
    read `between` is (the readings before and after it, how far it is from the first, their step).
    """

    along: Fraction
    edge: str
    down: Fraction
    name: str
    between: tuple[Fraction, Fraction, Fraction, Fraction] | None = None


@dataclass(frozen=True, slots=True)
class Floor:
    """`read` are all spots that were read, `spots` those that get a shim."""

    read: tuple[Spot, ...]
    spots: tuple[Spot, ...]

    @property
    def high(self):
        """The spot where the floor is highest: there a level base touches it."""
        return min(self.read, key=lambda spot: spot.down)

    @property
    def out(self):
        """From the highest to the lowest place under the base."""
        return max(spot.down for spot in self.read) - self.high.down

    @property
    def thickest(self):
        """The most that goes under a spot that gets a shim."""
        return max(self.under(spot) for spot in self.spots)

    def under(self, spot):
        """What goes under a level base there."""
        return spot.down - self.high.down


def floor_of(given, show):
    """The `Floor` of a form; "impossible" where there are too few readings, or not those that were
    to be taken."""
    lines = {edge: list(getattr(given, edge) or ()) for edge in EDGES}
    cases = given.cases or ()
    _check_many(given, lines, cases)
    joints = list(accumulate(cases, initial=Fraction(0))) if cases else [0, 1]
    at_joints = bool(cases) and given.taken == "joints"
    read, spots = [], []
    for edge, downs in lines.items():
        steps = [Fraction(joints[-1] * at, len(downs) - 1) for at in range(len(downs))]
        places = joints if at_joints else steps
        names = _names(len(cases), "Joint") if at_joints else _names(len(downs) - 1, "Place")
        line = list(zip(places if downs else (), downs, names if downs else (), strict=True))
        read += [Spot(along, edge, down, name) for along, down, name in line]
        if cases and downs and not at_joints:
            named = zip(joints, _names(len(cases), "Joint"), strict=True)
            spots += [_between(line, edge, along, name) for along, name in named]
    return Floor(tuple(read), tuple(spots or read))


def _names(parts, between):
    """What the ends and the places between so many parts of a run are called."""
    return ("Left end", *(f"{between} {at}" for at in range(1, parts)), "Right end")


def _between(line, edge, along, name):
    """A spot between two readings of a line of them, or at one."""
    pairs = pairwise(spot[:2] for spot in line)
    (start, before), (end, after) = next(pair for pair in pairs if along <= pair[1][0])
    part = (along - start) / (end - start)
    read = (before, after, along - start, end - start) if 0 < part < 1 else None
    return Spot(along, edge, before + (after - before) * part, name, read)


def _check_many(given, lines, cases):
    for edge, downs in lines.items():
        if downs and len(downs) < 2:
            raise Refusal(
                "impossible",
                f"One reading along the {edge} doesn’t show how the floor slopes.",
                "Measure down to the floor at both ends of the run, and between.",
                field=edge,
            )
        if downs and cases and given.taken == "joints" and len(downs) != len(cases) + 1:
            raise Refusal(
                "impossible",
                f"{len(cases)} {'case has' if len(cases) == 1 else 'cases have'} "
                f"{len(cases) + 1} ends and joints, and there are {len(downs)} readings along "
                f"the {edge}.",
                "Measure at each end and joint, or choose even steps.",
                field=edge,
            )
