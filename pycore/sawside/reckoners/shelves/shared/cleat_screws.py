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
            f"A head sunk {show.text(given.sink)} goes right through a cleat "
            f"{show.text(given.thickness)} thick.",
            "Use a smaller countersink depth.",
            field="sink",
        )
    if given.spare >= given.side:
        raise Refusal(
            "impossible",
            f"With {show.text(given.spare)} left past the tip, no screw reaches into a side "
            f"{show.text(given.side)} thick.",
            f"Leave less than {show.text(given.side)}.",
            field="spare",
        )
    longest = through + given.side - given.spare
    length = longest if given.screw is None else given.screw
    if length <= through:
        raise Refusal(
            "impossible",
            f"A {show.text(length)} screw won’t get through the cleat.",
            "Use a longer screw, sink it deeper, or use a thinner cleat.",
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
            f"A {show.text(long)} cleat has no room for screws {show.text(given.end)} from both "
            "ends.",
            "Enter a smaller end distance.",
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
            f"There’s no stud behind a back cleat {show.text(given.inside)} long, "
            f"{show.text(given.end)} or more from its ends.",
            "Check where the first stud is, or put screws closer to the ends.",
            field="first_stud",
        )
    return places


def warnings(given, show, screw):
    """What is said of how far a screw reaches; one to be bought holds as far as what is sold."""
    left = given.side - screw.reach
    if left <= 0:
        yield (
            f"The screw comes through the side: it reaches {fine_text(screw.reach, show)} into "
            f"{fine_text(given.side, show)}. Use a shorter one."
        )
    elif left < given.spare:
        told = show.brief(on_fine_marks(left, show, "be there"))
        yield f"Only {told} of the side is left past the screw’s tip."
    held = (given.screw is None and screw.sold_reach) or screw.reach
    if 2 * held < given.side:
        yield (
            "The screw bites into less than half the side. A longer one holds better (shop "
            "practice)."
        )


def stud_warnings(given, show, places):
    """What is said of the back cleat's screws, at these places of it, and the studs behind it."""
    if places is None:
        return
    if given.first_stud is None:
        yield (
            "The back cleat’s screws are spaced evenly here. Find the studs, then enter the first "
            "one and their spacing to put the screws in them."
        )
        return
    if len(places) == 1:
        yield (
            "There’s only one stud behind the back cleat. Fasten its ends too, to a stud, a side "
            "or blocking."
        )
    sooner = given.first_stud - given.studs
    if sooner >= given.end:
        yield (
            f"There could be another stud {show.brief(sooner)} from the left end. Look for it, and "
            "enter the one nearest the end as the first."
        )
