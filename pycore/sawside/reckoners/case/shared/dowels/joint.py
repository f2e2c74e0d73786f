"""A doweled joint: which dowels, where they go and how deep, and what wood they leave. Inches."""

from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from sawside.lengths.marks import GRIDS, to_mark
from sawside.lengths.units import INCHES_PER, METRIC
from sawside.reckoners.case.shared.dowels.refused import (
    refuse_breaking_out,
    refuse_coming_through,
    refuse_inset_past_the_middle,
    refuse_no_common_diameter,
    refuse_no_common_length,
    refuse_too_thick,
)
from sawside.wood.dowels import diameters_sold, lengths_sold

LEFT_BEYOND = Fraction(1, 8)
"""To be left below a hole, at the least. Common practice, no source."""
_MOST_BETWEEN = {False: Fraction(3), True: 75 * INCHES_PER["mm"]}
"""By whether it is metric: from center to center, at the most. Common practice, no source; in a
long edge joint a 19th-century workshop handbook (Dowelling) has 3 to 12 in."""
_MOST_INSET = {False: Fraction(3, 2), True: 40 * INCHES_PER["mm"]}
"""By whether it is metric. Common practice, no source: 1 1/2 to 2 in from the end of a panel."""


@dataclass(frozen=True, slots=True)
class Joint:
    """All of a joint, in exact inches; `centers` are from the reference edge of the rail."""

    rail: Fraction
    thickness: Fraction
    stile: Fraction
    diameter: Fraction
    length: Fraction
    centers: list[Fraction]
    from_face: Fraction
    depth: Fraction
    guide: Fraction

    @property
    def inset(self):
        """From the reference edge to the first center."""
        return self.centers[0]

    @property
    def spacing(self):
        """From center to center, or None where there is one dowel."""
        return self.centers[1] - self.centers[0] if len(self.centers) > 1 else None

    @property
    def mirrored(self):
        """The centers from the other edge, of the same dowels in the same order."""
        return [self.rail - each for each in self.centers]

    @property
    def beyond(self):
        """Wood of the stile past the bottom of a hole."""
        return self.stile - self.depth

    @property
    def between(self):
        """Wood between the bottoms of two holes that come from both edges of the stile."""
        return self.stile - 2 * self.depth

    @property
    def at_edge(self):
        """Wood between the outer holes and the nearer edge of the rail."""
        return min(*self.centers, *self.mirrored) - self.diameter / 2

    @property
    def at_faces(self):
        """Wood in front of a hole, and behind it."""
        half = self.diameter / 2
        return self.from_face - half, self.thickness - self.from_face - half


def joint_of(given, show):
    """The `Joint` of a form; "impossible" where a hole comes out, or meets another one."""
    metric = show.settings.unit in METRIC
    refuse_inset_past_the_middle(given, show)
    diameter, long = _dowel(given, show, metric)
    joint = Joint(
        rail=given.rail,
        thickness=given.thickness,
        stile=given.stile,
        diameter=diameter,
        length=long,
        centers=_centers(given, diameter, metric),
        from_face=given.thickness / 2 if given.from_face is None else given.from_face,
        depth=long / 2 + given.play,
        guide=given.guide,
    )
    refuse_coming_through(given, show, joint)
    refuse_breaking_out(given, show, joint)
    return joint


def _dowel(given, show, metric):
    """(diameter, length): as typed, or the thickest common one that fits, as long as fits."""
    if given.diameter is not None:
        refuse_too_thick(given, show)
        return given.diameter, given.dowel_length or _longest(given, given.diameter, metric, show)
    thin = diameters_sold(given.thickness / 2, metric)
    fitting = [each for each in thin if 2 * each <= given.rail]
    refuse_no_common_diameter(given, show, thin, fitting)
    if given.dowel_length is not None:
        return fitting[0], given.dowel_length
    for diameter in fitting:
        for long in lengths_sold(diameter, metric):
            if long >= 4 * diameter and _leaves_enough(given, long):
                return diameter, long
    raise refuse_no_common_length(given, show)


def _longest(given, diameter, metric, show):
    """The longest common length that leaves enough of the stile."""
    for long in lengths_sold(diameter, metric):
        if _leaves_enough(given, long):
            return long
    raise refuse_no_common_length(given, show)


def _leaves_enough(given, long):
    sides = 2 if given.both == "yes" else 1
    return sides * (long / 2 + given.play) + LEFT_BEYOND <= given.stile


def _centers(given, diameter, metric):
    """The centers from the reference edge: evenly from the first inset to the last."""
    inset = _usual_inset(given.rail, diameter, metric) if given.inset is None else given.inset
    across = given.rail - 2 * inset
    count = _usual_count(across, diameter, metric) if given.count is None else given.count
    if count == 1:
        return [given.rail / 2 if given.inset is None else inset]
    return [inset + across * number / (count - 1) for number in range(count)]


def _usual_inset(rail, diameter, metric):
    """A quarter of the rail, to a sixteenth or a whole millimeter: at least one diameter, at the
    most that of a wide one. Common practice, no source."""
    quarter = to_mark(rail / 4, GRIDS["1 mm" if metric else "1/16"]).mark
    return max(min(quarter, _MOST_INSET[metric]), diameter)


def _usual_count(across, diameter, metric):
    """Two where half a diameter of wood stays between them, more where they are far apart."""
    if across < diameter * 3 / 2:
        return 1
    return max(2, ceil(across / _MOST_BETWEEN[metric]) + 1)
