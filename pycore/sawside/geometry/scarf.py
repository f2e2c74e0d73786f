"""Where joints go along a run, so that no piece is longer than a stick.

A joint overlaps; its place is its middle, so a piece between two joints is their distance and one
overlap long, a piece at an end half an overlap more than its distance.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.geometry.angles import arctangent, tangent
from sawside.lengths.real import Exact, nearby, sqrt


@dataclass(frozen=True, slots=True)
class Scarf:
    """A joint cut `degrees` from square, `slope` being the tangent of that: how far its two pieces
    overlap and how long the face of the cut is, in inches."""

    degrees: Exact
    slope: Exact
    overlap: Exact
    face: Exact


def scarf_at(degrees, thickness):
    """The scarf of so many rational degrees through a thickness."""
    return _scarf(degrees, tangent(degrees), thickness)


def scarf_of_slope(slope, thickness):
    """The scarf that runs `slope` along for 1 of thickness."""
    return _scarf(arctangent(slope), slope, thickness)


def _scarf(degrees, slope, thickness):
    return Scarf(degrees, slope, thickness * slope, thickness * sqrt(1 + slope * slope))


def places(first, spacing, run):
    """The middles of studs within a run, from its left end."""
    studs = []
    place = first
    while place < run:
        if place > 0:
            studs.append(place)
        place += spacing
    return studs


def even_joints(run, longest, overlap, most):
    """As few joints as there can be, all pieces of one length; None where `most` are too few."""
    for pieces in range(2, most + 2):
        each = (run + (pieces - 1) * overlap) / pieces
        if each <= longest:
            return [number * (each - overlap) + overlap / 2 for number in range(1, pieces)]
    return None


def joints_on(studs, run, longest, overlap, most):
    """As few joints as there can be, each on a stud, and as evenly as studs allow; or None.

    The furthest that each joint can be from the left end is found from there, the nearest from
    the right end; between the two, the stud nearest to an even division is taken.
    """
    studs = [stud for stud in studs if overlap / 2 < stud < run - overlap / 2]
    furthest = _furthest(studs, run, longest, overlap, most)
    if furthest is None:
        return None
    mirrored = [run - stud for stud in reversed(studs)]
    nearest = _furthest(mirrored, run, longest, overlap, most)
    nearest = [run - place for place in reversed(nearest)]
    joints, before = [], None
    for number, (least, last) in enumerate(zip(nearest, furthest, strict=True), 1):
        even = run * Fraction(number, len(furthest) + 1)
        reach = last if before is None else before + longest - overlap
        fitting = [stud for stud in studs if least <= stud <= last and stud <= reach]
        before = min(fitting, key=lambda stud: abs(nearby(stud - even)))
        joints.append(before)
    return joints


def _furthest(studs, run, longest, overlap, most):
    """Each joint on the last stud that a piece reaches; None where a piece reaches none."""
    joints, tip = [], Fraction(0)
    while run > tip + longest:
        reached = [stud for stud in studs if tip < stud - overlap / 2 <= tip + longest - overlap]
        if not reached or len(joints) == most:
            return None
        joints.append(reached[-1])
        tip = joints[-1] - overlap / 2
    return joints
