"""Shelves put on the holes of a row: all of them so that their openings are as equal as can be.

Where a person gives the heights, each goes to the hole nearest to its own.
"""

from dataclasses import replace
from itertools import pairwise

from sawside.drawing.shelves.case import with_holes
from sawside.errors import Refusal
from sawside.geometry.case import stacked
from sawside.geometry.holes import PITCHES, HoleRow, most_equal, pitch_of
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.words import listed
from sawside.reckoners.declaration import Answer, Reckoner
from sawside.reckoners.fields import choice, count, length, lengths
from sawside.reckoners.shared.numbered import numbered
from sawside.reckoners.shelves.shared.case_fields import (
    MARKED,
    MARKING,
    MOST_SHELVES,
    THICKNESS,
    height_field,
    inside_height,
    inside_working,
    marked_as,
    refuse_no_room,
)
from sawside.reckoners.shelves.shared.shelves_told import laid_out, shelves_told

_MOST_TOLD = 3
"""As many centers stand in one line of the bar."""

_DRAWN = {"bottom": "shelf bottoms", "top": "shelf tops", "center": "shelf center lines"}
_FEWER = "Use fewer shelves, or holes closer together."


def compute(given, show):
    """The hole of each shelf, and the openings that the holes give."""
    inside, t = inside_height(given, show), given.thickness
    ideal = _ideal(given, show, inside)
    row = _row(given, show, inside)
    numbers = _numbers(given, show, row, inside, ideal)
    bottoms = tuple(row.center(number) + given.rest for number in numbers)
    _refuse_meeting(show, numbers, bottoms, t, row.pitch)
    shelving = laid_out(given, inside, bottoms, (t,) * len(bottoms))
    found = (
        _nearest_told(given, show, ideal, numbers, row)
        if given.wanted == "own"
        else _equal_told(show, inside, t, shelving.openings)
    )
    told = shelves_told(
        show,
        shelving,
        answers=_answers(show, row, numbers, ideal, shelving),
        working=(*inside_working(given, show, inside), *found, marked_as(given)),
        openings=shelving.openings,
        marked=_DRAWN[given.edge],
    )
    holes = [row.center(number) for number in range(1, row.count + 1)]
    used = [row.center(number) for number in numbers]
    picture = with_holes(told.drawing, inside, holes, used)
    return replace(told, drawing=picture, verdict=_verdict(show, numbers, used))


def _verdict(show, numbers, used):
    if len(numbers) == 1:
        return f"Pins in hole {numbers[0]}, hole center {show.brief(used[0])}"
    told = [str(number) for number in numbers]
    if len(told) > _MOST_TOLD:
        return f"{len(told)} shelves, pins from hole {told[0]} to hole {told[-1]} (hole centers)"
    centers = ", ".join(show.brief(each) for each in used)
    return f"Pins in holes {listed(told)}, hole centers {centers}"


def _answers(show, row, numbers, ideal, shelving):
    """The answers about the holes, and the openings that they give, marked or not."""
    openings = shelving.openings
    moved = [abs(low - wanted) for low, wanted in zip(shelving.bottoms, ideal, strict=True)]
    return {
        "holes": [
            (f"Shelf {shelf}: hole {number}", row.center(number))
            for shelf, number in enumerate(numbers, 1)
        ],
        "holes_needed": row.count,
        "moved": on_fine_marks(max(moved), show),
        "openings": numbered("Opening", [on_fine_marks(each, show) for each in openings]),
        "difference": on_fine_marks(max(openings) - min(openings), show),
    }


def _ideal(given, show, inside):
    """Where the bottom edges would be without the holes, from the inside bottom, rising."""
    if given.wanted == "own":
        if any(high - low < given.thickness for low, high in pairwise(given.heights)):
            raise Refusal(
                "impossible",
                "Each shelf height has to clear the shelf below it.",
                "Enter them bottom to top, at least a shelf’s thickness apart.",
                field="heights",
            )
        return given.heights
    taken = given.shelf_count * given.thickness
    refuse_no_room(show, given.shelf_count, taken, inside)
    opening = (inside - taken) / (given.shelf_count + 1)
    return stacked([opening] * given.shelf_count, [given.thickness] * given.shelf_count)


def _row(given, show, inside):
    """The row of holes up to the last one that holds a shelf under the top."""
    try:
        return HoleRow.up_to(
            given.first,
            pitch_of(given.pitch, given.own_pitch),
            inside - given.thickness - given.rest,
        )
    except ValueError:
        raise Refusal(
            "impossible",
            f"A shelf on the first hole won’t fit under the top: the inside height is "
            f"{show.text(inside)}.",
            "Enter a lower first hole.",
            field="first",
        ) from None


def _numbers(given, show, row, inside, ideal):
    """The number of each shelf's hole; "impossible" where there are not enough holes."""
    if given.wanted == "own":
        return [row.nearest(bottom - given.rest) for bottom in ideal]
    numbers = most_equal(row, given.shelf_count, inside, given.thickness, given.rest)
    if numbers is None:
        raise Refusal(
            "impossible",
            f"With holes {show.text(row.pitch)} apart, that many shelves won’t fit.",
            _FEWER,
            field="pitch",
        )
    return numbers


def _refuse_meeting(show, numbers, bottoms, thickness, pitch):
    for (one, other), (low, high) in zip(pairwise(numbers), pairwise(bottoms), strict=True):
        if high - low <= thickness:
            raise Refusal(
                "impossible",
                f"The shelves on holes {one} and {other} would hit each other: with holes "
                f"{show.text(pitch)} apart, that many won’t fit.",
                _FEWER,
                field="pitch",
            )


def _equal_told(show, inside, thickness, openings):
    """What the openings would be without the holes, and what the holes make of them."""
    shelves = len(openings) - 1
    taken = f"({show.number(inside)} − {shelves} × {show.number(thickness)})"
    each = (inside - shelves * thickness) / (shelves + 1)
    yield f"Equal openings would be {taken} ÷ {shelves + 1}{show.equals(each)}"
    high, low = max(openings), min(openings)
    yield (
        f"Biggest opening minus smallest: {show.number(high)} − {show.number(low)} = "
        f"{show.number(high - low)}; no other holes come closer, and of any that tie, these have "
        "the smallest sum of squares"
    )


def _nearest_told(given, show, ideal, numbers, row):
    """How each of the first shelves finds its hole."""
    first, pitch, rest = (show.number(each) for each in (row.first, row.pitch, given.rest))
    for shelf, (wanted, number) in enumerate(zip(ideal[:6], numbers[:6], strict=True), 1):
        place = (wanted - given.rest - row.first) / row.pitch + 1
        yield (
            f"Shelf {shelf}: ({show.number(wanted)} − {rest} − {first}) ÷ {pitch} + 1 = "
            f"{show.pure(place)} → hole {number}"
        )


RECKONER = Reckoner(
    key="shelves_on_a_hole_grid",
    title="Shelves on a hole grid",
    asks="Which holes come closest to the shelf spacing I want?",
    words=(
        "shelf pins, pin holes, which hole, adjustable shelves, 32 mm system, 5 mm, system "
        "holes, hole grid, snap, grid, shelf, spacing, story stick"
    ),
    order=304,
    job="shelves",
    picture={
        "wood": "M6 3h28v34H6z",
        "ink": (
            "M10.5 8h1M10.5 14h1M10.5 20h1M10.5 26h1M10.5 32h1M28.5 8h1M28.5 14h1M28.5 20h1"
            "M28.5 26h1M28.5 32h1"
        ),
        "chalk": "M6 14h28M6 26h28",
    },
    basic=("height", "wanted", "shelf_count", "heights", "first", "pitch", "own_pitch"),
    fields=(
        height_field(),
        THICKNESS,
        choice(
            "wanted", "Spacing", {"equal": "As equal as the holes allow", "own": "My own heights"}
        ),
        count(
            "shelf_count",
            "Shelves",
            least="1",
            most=str(MOST_SHELVES),
            default="3",
            shown_when=("wanted", ("equal",)),
        ),
        lengths(
            "heights",
            "Shelf heights",
            help="Bottom edges above the inside bottom, bottom to top.",
            row_label="Shelf",
            most_rows=MOST_SHELVES,
            shown_when=("wanted", ("own",)),
        ),
        length("first", "First hole", help="Its center, above the inside bottom.", most="20 ft"),
        choice("pitch", "Hole spacing", PITCHES, metric="32 mm"),
        length(
            "own_pitch",
            "My own spacing",
            help="On center.",
            default='1"',
            metric="25 mm",
            least="1/4 in",
            most="24 in",
            shown_when=("pitch", ("own",)),
        ),
        length(
            "rest",
            "Shelf above hole center",
            help="How far above the hole’s center the shelf sits. For a plain pin, half its "
            "diameter.",
            default='1/8"',
            metric="2.5 mm",
            most="2 in",
        ),
        *MARKING,
    ),
    answers=(
        Answer("holes", "Hole centers, from the inside bottom", "lengths", must="agree"),
        Answer("marks", "Shelf marks", "lengths", must="agree"),
        Answer("moved", "Biggest move to reach a hole", must="agree"),
        Answer("holes_needed", "Holes per row", "count"),
        *MARKED,
    ),
    source="Arithmetic; the hole spacings are shop practice.",
    compute=compute,
    example={
        "height": "40 1/16",
        "thickness": "23/32",
        "shelf_count": "2",
        "first": "4",
        "pitch": "32 mm",
        "rest": "3/32",
    },
)
