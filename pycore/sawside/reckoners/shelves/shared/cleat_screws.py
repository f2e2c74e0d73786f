"""The screws of a cleat: where they go, how far they reach, and what is said of that. Inches."""

from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from sawside.errors import Refusal
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.wood.screws import longest_sold


@dataclass(frozen=True, slots=True)
class Screw:
    """The screw of a side cleat, in inches.

    `through` is what of it is in the cleat, `longest` the longest one that keeps clear of the other
    face of the side, `length` the one that is taken. `sold` is the longest of those that are sold;
    None where none of them gets through the cleat.
    """

    through: Fraction
    longest: Fraction
    length: Fraction
    sold: Fraction | None

    @property
    def reach(self):
        """How far the one that is taken goes into the side."""
        return self.length - self.through

    @property
    def sold_reach(self):
        """How far the one that is sold goes into the side, or None."""
        return self.sold and self.sold - self.through


def screw_of(given, show):
    """The `Screw` of a form; "impossible" where none goes through the cleat and holds."""
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
    length = longest if given.screw is None else given.screw
    if length <= through:
        raise Refusal(
            "impossible",
            f"A screw of {show.text(length)} does not get through the cleat.",
            "Take a longer screw, sink it deeper, or take a thinner cleat.",
            field="screw",
        )
    sold = longest_sold(longest, show.settings.display == "mm")
    return Screw(through, longest, length, sold if sold and sold > through else None)


def screw_told(given, show, screw):
    """The answers about it: what is left before its point only where it stays in the side."""
    answers = {
        "reach": on_fine_marks(screw.reach, show, "be there"),
        "longest": on_fine_marks(screw.longest, show, "stay under"),
    }
    if given.side > screw.reach:
        answers["left"] = on_fine_marks(given.side - screw.reach, show, "be there")
    if screw.sold:
        answers["sold"] = on_fine_marks(screw.sold, show)
        if given.screw is None:
            answers["sold_reach"] = on_fine_marks(screw.sold_reach, show, "be there")
    return answers


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


def warnings(given, show, screw):
    """What is said of how far a screw reaches; one to be bought holds as far as what is sold."""
    left = given.side - screw.reach
    if left <= 0:
        yield (
            f"The screw comes through the side: it reaches {fine_text(screw.reach, show)} into "
            f"{fine_text(given.side, show)}. Take a shorter one."
        )
    elif left < given.spare:
        told = show.brief(on_fine_marks(left, show, "be there"))
        yield f"Only {told} of the side is left before the screw's point."
    held = (given.screw is None and screw.sold_reach) or screw.reach
    if 2 * held < given.side:
        yield (
            "The screw holds in less than half of the side; a longer one holds better (common "
            "practice, no source)."
        )


def stud_warnings(given, show, places):
    """What is said of the back cleat's screws, at these places of it, and the studs behind it."""
    if places is None:
        return
    if given.first_stud is None:
        yield (
            "The back cleat's screws are spread evenly here. Find the studs, and give the first "
            "one and their spacing to have the screws in them."
        )
        return
    if len(places) == 1:
        yield (
            "Only one stud is behind the back cleat: fasten its ends as well, to a stud, a side or "
            "blocking."
        )
    sooner = given.first_stud - given.studs
    if sooner >= given.end:
        yield (
            f"Another stud may be {show.brief(sooner)} from the left end: look for it there, and "
            "give the one nearest to the end as the first."
        )
