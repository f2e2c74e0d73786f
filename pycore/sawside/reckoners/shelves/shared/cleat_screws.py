"""The screws of a cleat: where they go, how far they reach, and what is said of that. Inches."""

from fractions import Fraction
from math import ceil

from sawside.errors import Refusal
from sawside.lengths.fine import fine_text, on_fine_marks


def reach_of(given, show):
    """(the longest screw, the one that is taken, how far it reaches into the side), inches."""
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
    """Places from an end: the end distance at both ends, the rest shared no farther than asked."""
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
    """The places of the back cleat's screws from its left end: on studs, where those are known."""
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


def warnings(given, show, reach, held):
    """What is said of a screw of this reach; `held` is that of the one that can be bought."""
    left = given.side - reach
    if left <= 0:
        yield (
            f"The screw comes through the side: it reaches {fine_text(reach, show)} into "
            f"{fine_text(given.side, show)}. Take a shorter one."
        )
    elif left < given.spare:
        told = show.brief(on_fine_marks(left, show, "be there"))
        yield f"Only {told} of the side is left before the screw's point."
    if 2 * held < given.side:
        yield (
            "The screw holds in less than half of the side; a longer one holds better (common "
            "practice, no source)."
        )
