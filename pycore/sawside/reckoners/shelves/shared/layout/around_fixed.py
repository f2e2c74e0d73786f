"""A fixed shelf at a given height, and equal openings below and above it.

The count of either part may be blank: then as many shelves go there as leave the least opening.
"""

from sawside.errors import Refusal, left_blank
from sawside.geometry.case import EDGES, stacked
from sawside.reckoners.shared.numbered import numbered
from sawside.reckoners.shelves.shared.case_fields import (
    case_of,
    inside_height,
    inside_working,
    marked_as,
    measured_field,
    origin_of,
    refuse_too_many,
    shelves_text,
)
from sawside.reckoners.shelves.shared.shelves_told import laid_out, shelves_told


def openings_around_a_fixed_one(given, show):
    """The marks of all shelves, and the opening below and above the fixed one."""
    if given.height is None:
        raise left_blank("Height", "Fill it in.", "height")
    inside = inside_height(given, show)
    case, t = case_of(given, inside), given.thickness
    fixed = t if given.fixed_thickness is None else given.fixed_thickness
    low = _bottom_of_the_fixed(given, show, case, fixed)
    high = low + fixed
    lines = [*inside_working(given, show, inside)]
    if given.edge != "bottom" or origin_of(given) != "inside_bottom":
        lines.append(f"The fixed shelf’s bottom edge is {show.number(low)} above the inside bottom")
    counts, openings = [], []
    for name, room in (("below", low), ("above", inside - high)):
        shelves, opening, more = _part(given, show, name, room)
        lines += more
        counts.append(shelves)
        openings.append(opening)
    every = [openings[0]] * (counts[0] + 1) + [openings[1]] * (counts[1] + 1)
    thicknesses = (*[t] * counts[0], fixed, *[t] * counts[1])
    bottoms = (*stacked(every[: counts[0]], thicknesses), low)
    above = stacked(every[counts[0] + 1 : -1], thicknesses[counts[0] + 1 :])
    shelving = laid_out(given, inside, (*bottoms, *(high + each for each in above)), thicknesses)
    return shelves_told(
        show,
        shelving,
        main="marks",
        verdict=f"Openings {show.brief(openings[0])} below, {show.brief(openings[1])} above",
        answers={
            "marks": _marks(shelving, counts[0]),
            "opening_below": openings[0],
            "opening_above": openings[1],
            "below": counts[0],
            "above": counts[1],
        },
        working=(*lines, f"{marked_as(given)}; the fixed shelf is shelf {counts[0] + 1}"),
        openings=every,
        more_words=f" Shelf {counts[0] + 1} is the fixed one.",
        fixed=(counts[0],),
        field=measured_field(given),
    )


def _marks(shelving, fixed):
    """The mark of each shelf; that of the one at `fixed` (from 0) says that it is the fixed one."""
    marks = numbered("Shelf", shelving.marks)
    name, mark = marks[fixed]
    return [*marks[:fixed], (f"{name}, fixed", mark), *marks[fixed + 1 :]]


def _bottom_of_the_fixed(given, show, case, fixed):
    """The place of its bottom edge; "impossible" outside the case."""
    part = {"bottom": 0, "top": fixed, "center": fixed / 2}[given.edge]
    low = case.place(given.fixed_at, origin_of(given)) - part
    if low <= 0 or low + fixed >= case.inside:
        raise Refusal(
            "impossible",
            f"With its {EDGES[given.edge].lower()} at {show.text(given.fixed_at)}, the fixed shelf "
            f"isn’t within the inside height of {show.text(case.inside)}.",
            "Check its height, the line to mark, and where you mark from.",
            field="fixed_at",
        )
    return low


def _part(given, show, name, room):
    """Count, opening and working of the shelves below or above the fixed one."""
    shelves, t, label = getattr(given, name), given.thickness, name.capitalize()
    lines = []
    if shelves is None:
        if given.least is None:
            raise Refusal(
                "conflict",
                f"Sawside can’t count the shelves {name} without a minimum opening.",
                f"Fill in Shelves {name} or Minimum opening.",
                field="least",
            )
        shelves = max(((room - given.least) / (given.least + t)).__floor__(), 0)
        refuse_too_many(shelves, "least")
        if room < given.least:
            raise Refusal(
                "impossible",
                f"There’s only {show.text(room)} {name} the fixed shelf, less than the minimum "
                f"opening of {show.text(given.least)}.",
                "Enter a smaller minimum opening, or move the fixed shelf.",
                field="least",
            )
        lines.append(f"{label}: at least {show.text(given.least)}: {shelves_text(shelves)}")
    taken = shelves * t
    if taken >= room:
        raise Refusal(
            "impossible",
            f"{shelves_text(shelves)} {name} {'takes' if shelves == 1 else 'take'} up "
            f"{show.text(taken)}, but there’s only {show.text(room)} there.",
            "Use fewer shelves, or move the fixed one.",
            field=name,
        )
    opening = (room - taken) / (shelves + 1)
    if not shelves:
        return shelves, opening, [*lines, f"{label}: one opening of {show.number(opening)}"]
    sum_ = f"({show.number(room)} − {shelves} × {show.number(t)}) ÷ {shelves + 1}"
    lines.append(f"{label}: {sum_}{show.equals(opening)}")
    return shelves, opening, lines
