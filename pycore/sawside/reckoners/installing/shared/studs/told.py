"""What is told of the screws into the studs behind a case: answers, verdict, working."""

from itertools import pairwise

from sawside.lengths.fine import on_fine_marks
from sawside.lengths.words import counted, listed
from sawside.reckoners.declaration import Answer
from sawside.reckoners.fasteners.shared.decimals import decimals
from sawside.reckoners.fasteners.shared.screw.cautions import LEAST_REACH
from sawside.reckoners.installing.shared.studs.placed import BESIDE, leeway
from sawside.reckoners.installing.shared.studs.screw import bite_wanted
from sawside.reckoners.shared.numbered import numbered
from sawside.wood.drill_bits import as_bit
from sawside.wood.numbers import metric
from sawside.wood.screws import STUD_HOLD

_NAMED = 3
"""Screws that the verdict tells the places of."""

ANSWERS = (
    Answer("screw", "Screw length", must="reach"),
    Answer("outside", "From the left, outside", "lengths", must="agree"),
    Answer("inside", "From the left, inside", "lengths", must="agree"),
    Answer("count", "Screws in studs", "count"),
    Answer("without", "Without a stud", "lengths", must="agree"),
    Answer("hidden", "Studs you can’t use", "text"),
    Answer("bite", "Bite into the stud", must="be there"),
    Answer("pilot", "Pilot bit", must="agree"),
)


def answers_of(given, show, studs, screw):
    """The answers that this case has, by their keys."""
    places = [stud.screw for stud in studs if stud.screw]
    answers = {"screw": on_fine_marks(screw.length, show, "reach")}
    if places:
        answers["outside"] = numbered("Screw", places)
        answers["inside"] = numbered("Screw", [each.mark - given.side for each in places])
        answers["count"] = len(places) * max(len(given.strips or ()), 1)
    without = stretches(given, places)
    if without:
        answers["without"] = [
            (f"{show.brief(start)} to {show.brief(end)}", end - start) for start, end in without
        ]
    hidden = [
        f"at {show.brief(stud.center)} (behind {stud.hidden})"
        for stud in studs
        if stud.screw is None and 0 < stud.center < given.width
    ]
    if hidden:
        answers["hidden"] = listed(hidden)
    bits = "half_mm" if metric(show) else "64"
    return answers | {
        "bite": on_fine_marks(screw.reach, show, "be there"),
        "pilot": as_bit(screw.pilot, bits),
    }


def stretches(given, places):
    """(start, end) of the case's width wherever no screw is for more than the stud spacing, as far
    as screws may be off their studs' centers; all of it where there is none."""
    if not places:
        return [(0, given.width)]
    ends = [0, *(each.exact for each in places), given.width]
    most = given.spacing + 2 * leeway(given)
    return [(start, end) for start, end in pairwise(ends) if end - start > most]


def verdict_of(show, studs):
    """Where the screws go, or that there is no stud for one."""
    places = [show.brief(stud.screw) for stud in studs if stud.screw]
    if not places:
        return "No stud to screw into"
    if len(places) <= _NAMED:
        many = "Screw" if len(places) == 1 else "Screws"
        return f"{many} at {listed(places)}; length"
    return f"Screws in {counted(len(places), 'stud')}; length"


def working_of(given, show, studs, screw):
    """Line by line: every stud, how far a screw may be off its center, the screw."""
    number = show.number
    yield from _centers(given, show, studs)
    yield (
        f"Either way of a center: {number(given.stud)} ÷ 2 − {number(given.off)} − "
        f"{number(BESIDE)} = {number(leeway(given))}"
    )
    for at, stud in enumerate((each for each in studs if each.screw), 1):
        outside, inside = stud.screw.mark, stud.screw.mark - given.side
        if stud.clear_of:
            name, face, way = stud.clear_of
            sign = "+" if way > 0 else "−"
            yield (
                f"Screw {at}, moved clear of {name}: {number(face)} {sign} {number(given.clear)}"
                f"{show.equals(stud.screw)}"
            )
        yield (
            f"Screw {at} from the inside: {number(outside)} − {number(given.side)} = "
            f"{number(inside)}"
        )
    yield from _screw(given, show, screw)


def _centers(given, show, studs):
    """Each center from the case's left: what was read, the steps to it, half a stud, the case."""
    number, read = show.number, sorted(given.studs)
    half = {"center": "", "left": " + {} ÷ 2", "right": " − {} ÷ 2"}[given.at]
    half = half.format(number(given.stud))
    shift = {"center": 0, "left": given.stud / 2, "right": -given.stud / 2}[given.at]
    for at, stud in enumerate(studs, 1):
        before = stud.center + given.left - shift
        steps = ""
        if len(read) == 1 and before != read[0]:
            count = (before - read[0]) / given.spacing
            steps = f" {'+' if count > 0 else '−'} {abs(count)} × {number(given.spacing)}"
            before = read[0]
        yield (
            f"Center of stud {at} from the case’s left: {number(before)}{steps}{half} − "
            f"{number(given.left)} = {_signed(show, stud.center)}"
        )


def _signed(show, length):
    """A length as arithmetic shows it, which may be less than 0."""
    return f"−{show.number(-length)}" if length < 0 else show.number(length)


def _screw(given, show, screw):
    number, shank = show.number, decimals(show, screw.shank)
    wanted, through = bite_wanted(given), given.over + given.wall
    if wanted > STUD_HOLD:
        yield f"Bite, six diameters: {LEAST_REACH} × {shank} = {decimals(show, wanted)}"
    yield f"Through strip and wall: {number(given.over)} + {number(given.wall)} = {number(through)}"
    if given.length is None:
        parts = (through, wanted, through + wanted)
        through_text, wanted_text, shortest = (decimals(show, each) for each in parts)
        yield f"Shortest screw: {through_text} + {wanted_text} = {shortest}"
    yield f"Bite: {number(screw.length)} − {number(through)} = {number(screw.reach)}"
