"""The length between two walls: tape into the corner, a block, the case, or two sticks."""

from sawside.drawing.tape.between_walls import between_walls
from sawside.errors import Refusal
from sawside.reckoners.declaration import Reckoning
from sawside.reckoners.tape.shared.by_own_tape import by_own_tape
from sawside.reckoners.tape.shared.clear_of import clear_of


def inside_length(given, show):
    """The inside length by the way that was taken; for a bent tape also its least and most."""
    if given.way == "sticks":
        return _sticks(given, show)
    reading, working = by_own_tape(given.tape, given.reading, show)
    if given.way == "bent":
        return _bent(given, reading, working, show)
    adds, name = _added(given)
    inside = reading + adds
    working.append(
        f"Reading and {name}: {show.number(reading)} + {show.number(adds)}{show.equals(inside)}"
    )
    return _told(given, show, inside, (given.reading, adds), working)


def _told(given, show, inside, parts, working, **bounds):
    """The answer; `parts` are the measures that it was made of, `bounds` the least and most.

    With a clearance also what goes in: of a bent tape less than the least that it could be.
    """
    answers, verdict = {"inside": inside, **bounds}, f"Inside {show.brief(inside)}"
    if given.room:
        least = bounds.get("least", inside)
        fits = show.rounded(clear_of(least, given.room, show), "go in")
        working.append(f"{show.number(least)} − {show.number(given.room)}{show.equals(fits)}")
        answers["fits"] = fits
        verdict = f"{verdict}; cut {show.bare(fits)}"
    return Reckoning(
        answers=answers,
        working=tuple(working),
        drawing=between_walls(given.way, inside, parts, show),
        main="fits" if given.room else "inside",
        verdict=verdict,
    )


def _added(given):
    """What stands between the end of the tape and the wall."""
    if given.way == "block":
        return given.block, "block"
    if given.case is not None:
        return given.case, "case"
    if given.tape and given.tape.case is not None:
        return given.tape.case, "case"
    raise Refusal(
        "missing",
        "Case length is blank." if given.tape is None else "This tape has no case length yet.",
        "Fill it in, or choose a tape that has one in Settings.",
        field="case",
    )


def _bent(given, reading, working, show):
    if given.doubt >= reading:
        raise Refusal(
            "impossible",
            f"A reading of {show.text(reading)} ± {show.text(given.doubt)} could be nothing at "
            "all.",
            "Check both, or measure with a block.",
            field="doubt",
        )
    least, most = reading - given.doubt, reading + given.doubt
    working.append(
        f"Read in the bend: {show.number(reading)} ± {show.number(given.doubt)}, so from "
        f"{show.number(least)} to {show.number(most)}"
    )
    return _told(given, show, reading, (given.reading,), working, least=least, most=most)


def _sticks(given, show):
    shorter = min(given.first, given.second)
    if given.overlap >= shorter:
        raise Refusal(
            "impossible",
            f"The sticks overlap by {show.text(given.overlap)}, and the shorter one is only "
            f"{show.text(shorter)} long.",
            "Measure the overlap again, from end to end.",
            field="overlap",
        )
    inside = given.first + given.second - given.overlap
    line = (
        f"{show.number(given.first)} + {show.number(given.second)} − "
        f"{show.number(given.overlap)}{show.equals(inside)}"
    )
    parts = (given.first, given.second, given.overlap)
    return _told(given, show, inside, parts, [line])
