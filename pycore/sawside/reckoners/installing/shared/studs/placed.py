"""Where the studs are behind a case, and where a screw surely meets one and clears the case.

Places are exact inches from the left outside of the case, to the right.
"""

from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from math import ceil, floor

from sawside.errors import Refusal, impossible
from sawside.lengths.fine import fine_grid, limit_text
from sawside.lengths.marks import Rounded, told_mark

BESIDE = Fraction(3, 8)
"""Inches of a stud beside the center of a screw, wherever the stud is. Common practice, no
source."""


@dataclass(frozen=True, slots=True)
class Stud:
    """A stud by its center; `screw` is where one goes in, as it is told, or None; `hidden` says
    what is in front of a stud without one. `clear_of` is what its screw had to be moved clear of:
    (name, its face, the way)."""

    center: Fraction
    screw: Rounded | None
    hidden: str = ""
    clear_of: tuple[str, Fraction, int] | None = None


@dataclass(frozen=True, slots=True)
class Bay:
    """Between two uprights of a case, by their faces; `names` are those of both."""

    left: Fraction
    right: Fraction
    names: tuple[str, str]


def leeway(given):
    """How far from the told center of a stud a screw may go in; may be less than 0."""
    return given.stud / 2 - given.off - BESIDE


def _check_leeway(given, show):
    if leeway(given) < 0:
        most = given.stud / 2 - BESIDE
        raise impossible(
            f"A screw aimed at the center of a stud {show.text(given.stud)} wide can miss it, or "
            f"split its edge, when you may be {show.text(given.off)} off.",
            "Find both edges with a small nail where the case will cover the holes, and enter "
            f"{limit_text(max(most, Fraction(0)), show, 'stay under')} or less.",
            "off",
        )


def bays_of(given, show):
    """The `Bay`s of a form, from the left; "impossible" where uprights don't fit in the case."""
    if 2 * given.side >= given.width:
        raise impossible(
            f"Two sides {show.text(given.side)} thick leave nothing of a case "
            f"{show.text(given.width)} wide.",
            "Use thinner sides, or a wider case.",
            "side",
        )
    bays, left, name = [], given.side, "left side"
    centers = sorted(given.dividers or ())
    for number, center in enumerate(centers, 1):
        face = center - given.side / 2
        if face < left or face + given.side > given.width - given.side:
            raise Refusal(
                "impossible",
                f"A divider centered at {show.text(center)} runs into a side or another divider.",
                f"Measure to its center, from the left outside of a case {show.text(given.width)} "
                "wide.",
                field="dividers",
                row=given.dividers.index(center),
            )
        bays.append(Bay(left, face, (name, f"divider {number}")))
        left, name = face + given.side, f"divider {number}"
    return (*bays, Bay(left, given.width - given.side, (name, "the right side")))


def centers_of(given, show):
    """Centers of the studs behind a case; from one that was read the others go by the spacing."""
    shift = {"center": 0, "left": given.stud / 2, "right": -given.stud / 2}[given.at] - given.left
    read = sorted(given.studs)
    for before, after in pairwise(read):
        if after - before < given.stud:
            raise Refusal(
                "impossible",
                f"Studs {show.text(given.stud)} wide can’t be at both {show.text(before)} and "
                f"{show.text(after)}.",
                "Check both, or remove one of them.",
                field="studs",
                row=given.studs.index(after),
            )
    centers = [each + shift for each in read]
    if len(read) == 1:
        if given.spacing < given.stud:
            raise impossible(
                f"Studs {show.text(given.stud)} wide don’t go {show.text(given.spacing)} on "
                "center.",
                "Check the stud width and the spacing.",
                "spacing",
            )
        first = ceil((-given.stud / 2 - centers[0]) / given.spacing)
        last = floor((given.width + given.stud / 2 - centers[0]) / given.spacing)
        centers = [centers[0] + step * given.spacing for step in range(first, last + 1)]
    half = given.stud / 2
    return [each for each in centers if -half < each < given.width + half]


def studs_of(given, show):
    """Every `Stud` behind a case, from the left."""
    _check_leeway(given, show)
    bays = bays_of(given, show)
    return [_stud(given, show, center, bays) for center in centers_of(given, show)]


def _stud(given, show, center, bays):
    """A stud with its screw, where one of the bays has room for it."""
    either_way = leeway(given)
    for bay in bays:
        low = max(center - either_way, bay.left + given.clear)
        high = min(center + either_way, bay.right - given.clear)
        if low <= high:
            screw = _on_a_mark(min(max(center, low), high), low, high, show)
            return Stud(center, screw, clear_of=_clear_of(bay, center, low, high))
    return Stud(center, None, hidden=_hidden(given, center, bays))


def _clear_of(bay, center, low, high):
    if low > center:
        return bay.names[0], bay.left, 1
    return (bay.names[1], bay.right, -1) if high < center else None


def _on_a_mark(place, low, high, show):
    """A place as it is told, on a mark that is from `low` to `high` too; on itself without one."""
    tried = [show.rounded(place)]
    for grid in (show.settings.grid, fine_grid(show.settings)):
        tried += [told_mark(place, grid, way) for way in ("nearest", "up", "down")]
    found = next((each for each in tried if low <= each.mark <= high), None)
    return found or Rounded(place, place, fine_grid(show.settings))


def _hidden(given, center, bays):
    """What is nearest in front of a stud that no screw goes into."""
    faces = [(bay.left, bay.names[0]) for bay in bays] + [(bay.right, bay.names[1]) for bay in bays]
    return min(faces, key=lambda each: abs(each[0] - center))[1]
