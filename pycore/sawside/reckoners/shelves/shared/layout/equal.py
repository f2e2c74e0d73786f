"""Shelves with equal openings: inside height = shelves x thickness + (shelves + 1) x opening.

Any one of height, shelf count and opening is left blank and solved for. Each mark is worked out
from its own exact place, so no rounding is carried from one shelf to the next.
"""

from sawside.errors import Refusal
from sawside.geometry.case import stacked
from sawside.reckoners.shared.stepping_off import stepping
from sawside.reckoners.shelves.shared.case_fields import (
    inside_height,
    inside_working,
    marked_as,
    measured_field,
    refuse_no_room,
    refuse_too_many,
    shelves_text,
)
from sawside.reckoners.shelves.shared.shelves_told import laid_out, shelves_told


def equal_openings(given, show):
    """Opening, the mark of each shelf, and the openings that the marks give."""
    inside, shelves, opening, working = _solved(given, show)
    thicknesses = (given.thickness,) * shelves
    bottoms = stacked([opening] * shelves, thicknesses)
    shelving = laid_out(given, inside, bottoms, thicknesses)
    if shelves:
        working += (_each_mark(given, show, shelving, opening),)
    return shelves_told(
        show,
        shelving,
        verdict=_verdict(given, show, inside, shelves, opening),
        answers={
            "opening": opening,
            "shelf_count": shelves,
            "height": inside,
            **({"stepping": stepping(show, opening, shelves + 1)} if shelves else {}),
        },
        working=working,
        openings=[opening] * (shelves + 1),
        alike=True,
        answer="height" if given.height is None else "opening",
        field=measured_field(given),
    )


def _verdict(given, show, inside, shelves, opening):
    if given.height is None:
        return f"{show.brief(inside)} inside for {shelves_text(shelves)}"
    if not shelves:
        return f"No shelves: one opening of {show.brief(opening)}"
    return f"{shelves_text(shelves)}, {shelves + 1} openings of {show.brief(opening)}"


def _each_mark(given, show, shelving, opening):
    """How each mark comes from the first."""
    first, t = shelving.marks[0], show.number(given.thickness)
    each = f"{show.number(opening)} + {t} = {show.number(opening + given.thickness)}"
    way = "less" if given.origin == "upper_end" else "more"
    return (
        f"{marked_as(given)}. Shelf 1: {show.number(first)}; each next one {each} {way}, "
        "rounded only at the mark"
    )


def _solved(given, show):
    """Inside height, count and opening, the blank one worked out, and the lines that show how."""
    inside, shelves, opening = inside_height(given, show), given.shelf_count, given.opening
    thickness, t = given.thickness, show.number(given.thickness)
    lines = inside_working(given, show, inside)
    if inside is None:
        inside = shelves * thickness + (shelves + 1) * opening
        line = f"{shelves} × {t} + {shelves + 1} × {show.number(opening)}{show.equals(inside)}"
        return inside, shelves, opening, (line,)
    if shelves is None:
        if opening > inside:
            raise Refusal(
                "impossible",
                f"An opening of {show.text(opening)} is taller than the inside height of "
                f"{show.text(inside)}.",
                "Enter a smaller opening, or leave the height blank.",
                field="opening",
            )
        fit = (inside - opening) / (opening + thickness)
        shelves = fit.__floor__()
        refuse_too_many(shelves, "opening")
        o = show.number(opening)
        lines += (
            f"({show.number(inside)} − {o}) ÷ ({o} + {t}) = {show.pure(fit)} → "
            f"{shelves_text(shelves)}",
        )
    refuse_no_room(show, shelves, shelves * thickness, inside)
    opening = (inside - shelves * thickness) / (shelves + 1)
    line = f"({show.number(inside)} − {shelves} × {t}) ÷ {shelves + 1}{show.equals(opening)}"
    return inside, shelves, opening, (*lines, line)
