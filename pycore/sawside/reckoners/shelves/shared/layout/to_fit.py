"""Shelves for things of given heights: each opening is the thing and the clearance above it.

What is left over is shared by all openings or given to one. With the height blank, the case is
just as high as the things need.
"""

from dataclasses import replace
from fractions import Fraction

from sawside.errors import Refusal
from sawside.geometry.case import stacked
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.real import sign
from sawside.reckoners.shelves.shared.case_fields import (
    MOST_SHELVES,
    inside_height,
    inside_working,
    marked_as,
    measured_field,
    outer_heights,
    shelves_text,
)
from sawside.reckoners.shelves.shared.shelves_told import laid_out, shelves_told


def openings_to_fit(given, show):
    """The marks, what is left over, and the height that the things need."""
    needed = _needed(given)
    shelves = len(needed) - 1
    thicknesses = (given.thickness,) * shelves
    needs = sum(needed) + sum(thicknesses)
    inside = inside_height(given, show)
    working = [*inside_working(given, show, inside), *_needs(given, show, shelves, needs)]
    inside = needs if inside is None else inside
    _refuse_too_low(show, shelves, needs, inside)
    openings = _with_rest(given, needed, inside - needs)
    if inside > needs:
        working.append(_left_over(given, show, inside, needs, openings))
    shelving = laid_out(given, inside, stacked(openings, thicknesses), thicknesses)
    heights = _heights(given, show, shelving.case)
    if given.height is None:
        for height in heights.values():
            show = show.telling(height)
    answers = {"left_over": inside - needs, "needed": needs, "shelf_count": shelves}
    reckoned = shelves_told(
        show,
        shelving,
        main="marks" if shelves else "needed",
        answers=answers | heights,
        working=(*working, marked_as(given)),
        openings=openings,
        goods=_high(given),
        answer="height" if given.height is None else "opening",
        field=measured_field(given),
    )
    small = _too_small(given, show, _as_built(given, show, shelving, heights["height"]))
    small = tuple(small)
    return replace(
        reckoned,
        verdict=_verdict(given, show, shelves, heights["height"], inside - needs, small),
        cautions=(*small, *reckoned.cautions),
    )


def _verdict(given, show, shelves, height, left_over, too_small):
    if too_small:
        return "Too tight: with these marks an item won’t fit"
    told = shelves_text(shelves) if shelves else "No shelves needed"
    if given.height is None:
        return f"{told}, {show.brief(height)} inside"
    if not left_over:
        return f"{told}, an exact fit"
    return f"{told}, {show.brief(left_over, 'be there')} left over"


def _needed(given):
    """What each opening needs, from the bottom up; "impossible" where there are too many."""
    needed = [
        thing.height + thing.clearance for thing in given.things for _ in range(thing.openings)
    ]
    if len(needed) - 1 > MOST_SHELVES:
        raise Refusal(
            "impossible",
            f"The items need {len(needed) - 1} shelves. The most is {MOST_SHELVES}.",
            "Remove some.",
            field="things",
        )
    return needed


def _refuse_too_low(show, shelves, needs, inside):
    """ "impossible" where the things need more than the inside has."""
    if needs > inside:
        raise Refusal(
            "impossible",
            f"The items and {shelves_text(shelves)} need "
            f"{show.text(show.rounded(needs, 'reach').mark)}, "
            f"{show.text(needs - inside)} more than the inside height of {show.text(inside)}.",
            "Remove an item, use less clearance, or leave the height blank.",
            field="things",
        )


def _heights(given, show, case):
    """The heights of the case; rounded so that the things go into one that is made for them."""
    if given.height is not None:
        return {"height": case.inside}
    heights = {"height": case.inside} | outer_heights(case)
    return {key: show.rounded(height, "reach") for key, height in heights.items()}


def _as_built(given, show, shelving, height):
    """The openings that the marks give, in a case that is as high as is told."""
    openings = list(shelving.openings_marked(show.mark))
    if given.height is None:  # the outermost have what was added
        for at in {0, len(openings) - 1}:
            openings[at] += height.mark - shelving.case.inside
    return openings


def _too_small(given, show, openings):
    """Where the marks, each the nearest, leave less than the thing itself is high."""
    for number, (thing, opening) in enumerate(zip(_high(given), openings, strict=True), 1):
        if sign(opening - thing) < 0:
            found = show.brief(on_fine_marks(opening, show, "be there"))
            yield (
                f"With these marks an item {show.brief(thing)} high won’t fit opening {number}, "
                f"which is {found}. Give it more clearance, or pick a finer mark in Settings."
            )


def _high(given):
    """How high the thing in each opening is, from the bottom up."""
    return [thing.height for thing in given.things for _ in range(thing.openings)]


def _with_rest(given, needed, left_over):
    """The openings with the leftover in them, from the bottom up."""
    if given.rest == "shared":
        return [each + left_over / len(needed) for each in needed]
    number = {"bottom": 1, "top": len(needed)}.get(given.rest, given.opening_number)
    if number > len(needed):
        raise Refusal(
            "impossible",
            f"There’s no opening {number}: the items use {len(needed)}.",
            "Count openings from the bottom.",
            field="opening_number",
        )
    openings = list(needed)
    openings[number - 1] += left_over
    return openings


def _needs(given, show, shelves, needs):
    """What each thing takes, and all of them with the shelves between."""
    shown = []
    for number, thing in enumerate(given.things, 1):
        each = thing.height + thing.clearance
        sum_ = f"{show.number(thing.height)} + {show.number(thing.clearance)} = {show.number(each)}"
        yield f"Item {number}: {sum_} per opening"
        shown.append(f"{thing.openings} × {show.number(each)}")
    shown.append(f"{shelves} × {show.number(given.thickness)}")
    yield f"{' + '.join(shown)}{show.equals(show.rounded(needs, 'reach'))}"


def _left_over(given, show, inside, needs, openings):
    line = f"Left over: {show.number(inside)} − {show.number(needs)}"
    line += show.equals(show.rounded(inside - needs, "be there"))
    if given.rest != "shared":
        return line
    share = Fraction(inside - needs) / len(openings)
    left = show.number(inside - needs)
    return f"{line}; per opening {left} ÷ {len(openings)}{show.equals(share)}"
