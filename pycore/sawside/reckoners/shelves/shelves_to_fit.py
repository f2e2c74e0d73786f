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
from sawside.reckoners.declaration import Answer, Reckoner, choice, clearance, count, length, rows
from sawside.reckoners.shelves.shared.case_fields import (
    MARKED,
    MARKING,
    MOST_SHELVES,
    THICKNESS,
    height_field,
    inside_height,
    inside_working,
    marked_as,
    outer_heights,
    shelves_text,
)
from sawside.reckoners.shelves.shared.shelves_told import laid_out, shelves_told


def compute(given, show):
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
        answers=answers | heights,
        working=(*working, marked_as(given)),
        openings=openings,
        answer="height" if given.height is None else "opening",
    )
    small = _too_small(given, show, _as_built(given, show, shelving, heights["height"]))
    return replace(reckoned, cautions=(*small, *reckoned.cautions))


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
    high = [thing.height for thing in given.things for _ in range(thing.openings)]
    for number, (thing, opening) in enumerate(zip(high, openings, strict=True), 1):
        if sign(opening - thing) < 0:
            found = show.brief(on_fine_marks(opening, show, "be there"))
            yield (
                f"With these marks an item {show.brief(thing)} high won’t fit opening {number}, "
                f"which is {found}. Give it more clearance, or pick a finer mark in Settings."
            )


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


RECKONER = Reckoner(
    key="shelves_to_fit",
    title="Shelves to fit your items",
    asks="Where do shelves go to fit what I’m storing?",
    words=(
        "fit, records, record albums, books, binders, jars, height of things, clearance, shelf, "
        "shelves, cabinet, story stick"
    ),
    order=302,
    job="shelf layout",
    picture={
        "wood": "M6 4h3v32H6zM31 4h3v32h-3zM9 4h22v3H9zM9 18h22v3H9zM9 33h22v3H9z",
        "ink": "M12 18v-8h3v8M15 18V9h3v9M22 18v-6h5v6",
        "chalk": "M13 33V25h6v8M24 33a3.5 3.5 0 1 1 .1 0z",
    },
    fields=(
        rows(
            "things",
            "Items, bottom to top",
            (
                length("height", "Item height", help="The tallest one.", least="1/4 in"),
                clearance("clearance", "Clearance above", "clearance_above", most="48 in"),
                count("openings", "How many rows", default="1", least="1", most=str(MOST_SHELVES)),
            ),
            row_label="Item",
            most_rows=20,
            help="One line per kind of item. Each opening holds one row.",
        ),
        THICKNESS,
        height_field(blank_means="Just tall enough for the items."),
        choice(
            "rest",
            "Extra height",
            {
                "shared": "Shared by all openings",
                "bottom": "To the bottom opening",
                "top": "To the top opening",
                "numbered": "To one opening",
            },
        ),
        count(
            "opening_number",
            "Which opening",
            help="Count from the bottom.",
            default="1",
            least="1",
            most=str(MOST_SHELVES + 1),
            shown_when=("rest", ("numbered",)),
        ),
        *MARKING,
    ),
    answers=(
        Answer("marks", "Shelf marks", "lengths", must="agree"),
        Answer("left_over", "Left over", must="be there"),
        Answer("needed", "Inside height the items need", must="reach"),
        Answer("shelf_count", "Shelves", "count"),
        Answer("height", "Inside height", must="case"),
        *MARKED,
    ),
    source=(
        "Arithmetic: height = items with their clearance + the shelves between them. Measure the "
        "tallest item (shop practice)."
    ),
    compute=compute,
    example={
        "things": [
            {"height": "12 5/8 in", "clearance": "5/8 in", "openings": "2"},
            {"height": "9 1/4 in", "clearance": "1 in", "openings": "1"},
        ],
        "height": "40 1/16",
        "thickness": "23/32",
        "rest": "top",
    },
)
