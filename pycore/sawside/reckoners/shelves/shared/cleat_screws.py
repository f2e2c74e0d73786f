"""The screws of a cleat: how far they reach into the side, and where along the cleat they go."""

from fractions import Fraction
from math import ceil

from sawside.errors import Refusal


def reach_of(given, show):
    """(the longest screw, the one that is taken, how far it reaches into the side), inches.

    Refuses a head that goes through the cleat, a screw that doesn't, and a side without room.
    """
    through = given.thickness - given.sink
    if through <= 0:
        raise Refusal(
            "impossible",
            f"A head sunk {show.text(given.sink)} goes through a cleat of "
            f"{show.text(given.thickness)}.",
            "Sink it less.",
            field="sink",
        )
    if given.spare >= given.side:
        raise Refusal(
            "impossible",
            f"With {show.text(given.spare)} left before the point no screw reaches into a side of "
            f"{show.text(given.side)}.",
            f"Leave less than {show.text(given.side)}.",
            field="spare",
        )
    longest = through + given.side - given.spare
    screw = longest if given.screw is None else given.screw
    if screw <= through:
        raise Refusal(
            "impossible",
            f"A screw of {show.text(screw)} does not get through the cleat.",
            "Take a longer screw, sink it deeper, or take a thinner cleat.",
            field="screw",
        )
    return longest, screw, screw - through


def places_along(given, show, long):
    """Places from an end: the end distance at both ends, the rest shared no farther than asked.

    Exact inches along a cleat `long` inches long; refuses one with no room for its end distances.
    """
    span = long - 2 * given.end
    if span < 0:
        raise Refusal(
            "impossible",
            f"A cleat of {show.text(long)} has no room for screws {show.text(given.end)} from "
            "both ends.",
            "Give a smaller end distance.",
            field="end",
        )
    if span == 0:
        return [Fraction(long) / 2]
    gaps = ceil(span / given.spacing)
    return [given.end + span * number / gaps for number in range(gaps + 1)]


def places_at_the_back(given, show):
    """The places of the back cleat's screws from its left end: on studs, where those are known.

    Exact inches; refuses a cleat that no stud is behind, and otherwise as `places_along`.
    """
    if given.first_stud is None:
        return places_along(given, show, given.inside)
    last = given.inside - given.end
    places = []
    stud = given.first_stud
    while stud <= last:
        if stud >= given.end:
            places.append(stud)
        stud += given.studs
    if not places:
        raise Refusal(
            "impossible",
            f"No stud is behind a back cleat of {show.text(given.inside)}, "
            f"{show.text(given.end)} or more from its ends.",
            "Check where the first stud is, or set screws closer to the ends.",
            field="first_stud",
        )
    return places
