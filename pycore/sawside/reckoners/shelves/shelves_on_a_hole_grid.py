"""Shelves put on the holes of a row: all of them so that their openings are as equal as can be.

Where a person gives the heights, each goes to the hole nearest to its own.
"""

from itertools import pairwise

from sawside.errors import Refusal
from sawside.geometry.case import stacked
from sawside.geometry.holes import PITCHES, HoleRow, most_equal, pitch_of
from sawside.lengths.fine import on_fine_marks
from sawside.reckoners.declaration import Answer, Reckoner, choice, count, length, lengths
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

_FEWER = "Take fewer shelves, or holes closer together."


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
    return shelves_told(
        show,
        shelving,
        answers=_answers(show, row, numbers, ideal, shelving),
        working=(*inside_working(given, show, inside), *found, marked_as(given)),
        openings=shelving.openings,
    )


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
                "The wanted heights do not rise by at least a shelf's thickness.",
                "Give them from the bottom up, each above the shelf below.",
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
            f"A shelf on the first hole would not fit under the top: the inside height is "
            f"{show.text(inside)}.",
            "Give a lower first hole.",
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
            f"With holes {show.text(row.pitch)} apart there is no room for so many shelves.",
            _FEWER,
            field="pitch",
        )
    return numbers


def _refuse_meeting(show, numbers, bottoms, thickness, pitch):
    for (one, other), (low, high) in zip(pairwise(numbers), pairwise(bottoms), strict=True):
        if high - low <= thickness:
            raise Refusal(
                "impossible",
                f"Two shelves would meet, on holes {one} and {other}: with holes "
                f"{show.text(pitch)} apart there is no room for so many.",
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
        f"Largest opening less smallest: {show.number(high)} − {show.number(low)} = "
        f"{show.number(high - low)}; no other holes give less, and of those that give as little "
        "these have the least sum of squares"
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
    asks="Which holes come nearest to the shelf spacing that I want?",
    words=(
        "shelf pins, pin holes, which hole, adjustable shelves, 32 mm system, 5 mm, system "
        "holes, hole grid, snap, grid, shelf, spacing, story stick"
    ),
    order=304,
    fields=(
        height_field(),
        THICKNESS,
        choice(
            "wanted",
            "Wanted",
            {"equal": "Openings as equal as the holes allow", "own": "My own heights"},
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
            "Heights wanted",
            help="Bottom edge of each shelf from the inside bottom, from the bottom up.",
            row_label="Shelf",
            most_rows=MOST_SHELVES,
            shown_when=("wanted", ("own",)),
        ),
        length("first", "First hole", help="Its center, above the inside bottom.", most="20 ft"),
        choice("pitch", "Hole to hole", PITCHES, metric="32 mm"),
        length(
            "own_pitch",
            "My own pitch",
            help="Center to center.",
            default='1"',
            metric="25 mm",
            least="1/4 in",
            most="24 in",
            shown_when=("pitch", ("own",)),
        ),
        length(
            "rest",
            "Shelf above the hole's center",
            help="How far above it the shelf rests on its pin: for a plain pin, half its diameter.",
            default='1/8"',
            metric="2.5 mm",
            most="2 in",
        ),
        *MARKING,
    ),
    answers=(
        Answer("holes", "Hole of each shelf, from the inside bottom", "lengths", must="agree"),
        Answer("marks", "Marks of the shelves", "lengths", must="agree"),
        Answer("moved", "Farthest that a shelf moved to its hole", must="agree"),
        Answer("holes_needed", "Holes that a row has room for", "count"),
        *MARKED,
    ),
    source="Arithmetic; the pitches are common practice, no source.",
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
