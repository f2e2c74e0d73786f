"""The heights of drawer fronts that fill a column, out on the person's marks. Inches.

The fronts share what gaps, rails and laps leave of the opening. Each edge is put on a mark once, as
measured from the top of the fronts, so that the told heights add up to all of it; what is on no
mark stays with one of them. Listed heights are left as they are.
"""

from dataclasses import dataclass
from fractions import Fraction
from itertools import accumulate, pairwise

from sawside.errors import Refusal
from sawside.geometry.graduation import Ratio, Step
from sawside.lengths.marks import to_mark
from sawside.lengths.units import INCHES_PER, METRIC
from sawside.lengths.words import counted

_MILLIMETERS = {"inset": 25 * INCHES_PER["mm"], "overlay": 18 * INCHES_PER["mm"]}
LEAST = Fraction(1, 2)
"""The least front that is taken for one. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Column:
    """Fronts from the top down: `exact` before any is marked, `fronts` as they are cut."""

    room: Fraction
    exact: list[Fraction]
    fronts: list[Fraction]
    between: Fraction
    """From one front to the next."""
    edge: Fraction
    """From the top of the opening to the first front; below 0 where it laps."""

    @property
    def tops(self):
        """The top edge of each front, from that of the first one."""
        return [Fraction(0), *accumulate(each + self.between for each in self.fronts[:-1])]

    @property
    def openings(self):
        """The clear height behind each front, between rails."""
        return [each + 2 * self.edge for each in self.fronts]


def column_of(given, show):
    """The `Column` of a form; "impossible" where a front has no height or a box no room."""
    _refuse_wide_laps(given, show)
    edge = given.gap if given.front == "inset" else -given.lap
    between = given.gap
    if given.divided == "rails":
        between = given.rail + 2 * edge
    room = given.height - 2 * edge - (given.drawers - 1) * between
    exact = _shared(given, room)
    if min(exact) < LEAST:
        raise Refusal(
            "impossible",
            f"A front would be under {show.text(LEAST)}: gaps and rails leave "
            f"{show.text(max(room, Fraction(0)))} of the opening for all of them.",
            _REMEDIES[given.layout],
            field=_blamed(given),
        )
    fronts = exact if given.layout == "given" else _marked(exact, show)
    return Column(room, exact, fronts, between, edge)


_REMEDIES = {
    "equal": "Use fewer drawers or smaller gaps.",
    "step": "Use a smaller step or fewer drawers.",
    "ratio": "Use a bigger percent or fewer drawers.",
    "given": "Enter lower fronts, or fewer.",
}


def _blamed(given):
    fields = {"step": "step", "ratio": "percent", "given": "heights"}
    return fields.get(given.layout, "drawers")


def _refuse_wide_laps(given, show):
    if given.divided == "rails" and given.front == "overlay" and 2 * given.lap >= given.rail:
        raise Refusal(
            "impossible",
            f"Two fronts that lap {show.text(given.lap)} each meet on a rail "
            f"{show.text(given.rail)} high.",
            f"Enter an overlay under {show.text(given.rail / 2)}, or a higher rail.",
            field="lap",
        )


def _shared(given, room):
    """The exact heights from the top down."""
    if given.layout == "given":
        return _listed(given, room)
    if given.layout == "equal":
        return [room / given.drawers] * given.drawers
    way, grade = (
        (Step, given.step) if given.layout == "step" else (Ratio, Fraction(given.percent) / 100)
    )
    return way.filling(room, grade, given.drawers)[::-1]


def _listed(given, room):
    listed = given.heights or ()
    if len(listed) != given.drawers - 1:
        raise Refusal(
            "impossible",
            f"{counted(given.drawers, 'drawer')} need {counted(given.drawers - 1, 'height')}, but "
            f"there {'is' if len(listed) == 1 else 'are'} {len(listed)}.",
            "Enter all fronts but the bottom one.",
            field="heights",
        )
    return [*listed, room - sum(listed)]


def _marked(exact, show):
    """The same with every edge on a mark, the lowest front at the top, unless each height is on
    a mark already."""
    if all(show.rounded(each).direction == "exact" for each in exact):
        return exact
    ends = list(accumulate(exact))
    grid = show.settings.grid
    edges = [Fraction(0), *(to_mark(end, grid, "down").mark for end in ends[:-1]), ends[-1]]
    marked = sorted(low - high for high, low in pairwise(edges))
    return marked if marked[0] > 0 else exact


def lapping(given):
    """How often the overlay is between a front and its opening: without rails only at one edge, of
    the top and the bottom drawer."""
    if given.front == "inset":
        return 0
    return 2 if given.divided == "rails" else 1


def room_left(given, show):
    """What is left above and below a box, but for what its front laps. Common practice, no source:
    3/4 in, as in a drawer box on slides, and the gaps of an inset front."""
    metric = show.settings.unit in METRIC
    inches = {"inset": Fraction(1), "overlay": Fraction(3, 4)}
    return (_MILLIMETERS if metric else inches)[given.front]


def less_of(given, show):
    """How much lower a box is than its front, in inches."""
    if given.less is not None:
        return given.less
    return room_left(given, show) + _lapped(given)


def _lapped(given):
    return lapping(given) * given.lap if lapping(given) else 0


def boxes_of(given, column, show):
    """The height of each box; "impossible" where one is higher than its opening, or nothing."""
    lowest, less = min(column.fronts), less_of(given, show)
    if less >= lowest:
        raise Refusal(
            "impossible",
            f"A box {show.text(less)} lower than a front of {show.brief(lowest)} is nothing.",
            f"Enter less than {show.text(show.rounded(lowest, 'stay under'))}.",
            field="less",
        )
    lapped = _lapped(given)
    if less < lapped:
        where = "at top and bottom" if given.divided == "rails" else "at the top or bottom"
        raise Refusal(
            "impossible",
            f"With {show.text(given.lap)} of overlay {where}, a box only "
            f"{show.text(less)} lower than its front is higher than its opening.",
            f"Enter more than {show.text(lapped)}.",
            field="less",
        )
    return [each - less for each in column.fronts]
