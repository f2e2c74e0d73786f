"""Rows of shelf pin holes in both sides of a case: where each hole is, and where none may be."""

from sawside.drawing.paper.story_stick import story_stick
from sawside.drawing.shelves.sides import Sides
from sawside.geometry.holes import PITCHES, pitch_of
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.words import counted
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import choice, count, length, lengths, rows
from sawside.reckoners.shared.board_fields import thickness
from sawside.reckoners.shared.numbered import numbered
from sawside.reckoners.shelves.shared.pin_rows import (
    drilled,
    keep_outs,
    refuse_rows,
    row_of,
    row_warnings,
)
from sawside.reckoners.shelves.shared.side_fields import SIDE, SIDE_DEPTH

_MOST_DRAWN = 40
_CAUTIONS = (
    "Drill both sides from the same end with the same template, mirrored. Lay them with the front "
    "edges out before you mark.",
    "Set a depth stop and test it in scrap. Follow the drill and pin makers’ instructions, and "
    "wear eye protection.",
    "Check the pin maker’s load rating.",
)


def compute(given, show):
    """The height of every hole, which hole gives which shelf, and what is left of the wood."""
    pitch = pitch_of(given.pitch, given.own_pitch)
    refuse_rows(given, show, pitch)
    row, last = row_of(given, show, pitch)
    zones = keep_outs(given)
    numbers, left_out = drilled(given, row, zones)
    centers = [row.center(number) for number in numbers]
    holes = numbered("Hole", centers)
    answers = {
        "holes": holes,
        "count": len(numbers),
        "total": 2 * given.sides * len(numbers),
        "apart": given.depth - given.front - given.back,
        "left_out": _left_out_text(show, row, left_out),
        **(_shelves(given, show, centers) if given.wanted else {}),
    }
    if given.thickness > given.hole_depth:
        answers["behind"] = on_fine_marks(given.thickness - given.hole_depth, show, "be there")
    return Reckoning(
        answers=answers,
        working=tuple(_working(given, show, row, last, left_out)),
        drawing=_drawing(given, show, centers, zones),
        cautions=(*row_warnings(given, show, pitch), *_CAUTIONS),
        stick=_stick(given, show, holes),
        verdict=_verdict(given, show, centers, pitch, len(left_out)),
    )


def _verdict(given, show, centers, pitch, left_out):
    """How many holes, and where all of them are, in one line."""
    many, first, last = len(centers), *(show.brief(centers[end]) for end in (0, -1))
    if many == 1:
        return f"1 hole per row, at {first}"
    apart = PITCHES[given.pitch] if given.pitch == "32 mm" else show.brief(pitch)
    skipped = f", {left_out} skipped at the {_fixed(given)}" if left_out else ""
    return f"{counted(many, 'hole')} per row, every {apart} from {first} to {last}{skipped}"


def _fixed(given):
    return f"fixed {'shelf' if len(given.keep) == 1 else 'shelves'}"


def _shelves(given, show, centers):
    """The answers about the shelves that are wanted: the hole that comes nearest to each."""
    used = [
        min(range(len(centers)), key=lambda at: abs(centers[at] + given.rest - wanted))
        for wanted in given.wanted
    ]
    return {
        "shelves": [
            (f"Hole {at + 1}, wanted {show.text(wanted)}", centers[at] + given.rest)
            for wanted, at in zip(given.wanted, used, strict=True)
        ],
        "enough": _enough(min(used) + 1, max(used) + 1, len(centers)),
    }


def _enough(low, high, many):
    """The fewest holes of a row that reach from the lowest of these shelves to the highest."""
    if low == high:
        return f"Just hole {low}."
    return f"Holes {low} to {high}: {high - low + 1} per row instead of {many}."


def _left_out_text(show, row, left_out):
    """Where holes are skipped: the numbers are those of the holes that are drilled."""
    return ", ".join(show.brief(row.center(number)) for number in left_out) or "None"


def _working(given, show, row, last, left_out):
    first, pitch = show.number(row.first), show.number(row.pitch)
    place = (last - row.first) / row.pitch + 1
    yield (
        f"({show.number(last)} − {first}) ÷ {pitch} + 1 = {show.pure(place)} → "
        f"{counted(row.count, 'hole')}"
    )
    if row.count > 1:
        yield f"Second hole: {first} + 1 × {pitch}{show.equals(row.center(2))}"
        top = show.equals(row.center(row.count))
        yield f"Top hole: {first} + {row.count - 1} × {pitch}{top}"
    if left_out:
        yield f"Skipped next to fixed parts: {len(left_out)} of {row.count}"
    yield (
        f"Rows apart: {show.number(given.depth)} − {show.number(given.front)} − "
        f"{show.number(given.back)}{show.equals(given.depth - given.front - given.back)}"
    )
    yield f"A shelf sits {show.number(given.rest)} above the center of its hole"


def _drawing(given, show, centers, zones):
    sides = Sides(given.side, given.depth)
    for zone in zones:
        sides.band(max(zone.low, 0), min(zone.high, given.side), "ghost")
    for each in given.keep or ():
        sides.band(each.low, min(each.low + each.thick, given.side), "hatch")
    shown = centers if len(centers) <= _MOST_DRAWN else [*centers[:3], *centers[-3:]]
    for from_front in (given.front, given.depth - given.back):
        sides.axis(from_front, shown[0], shown[-1])
        sides.holes(from_front, shown, given.diameter)
    for at in (0, len(centers) - 1):
        sides.figure(centers[at], _figure(show, centers, at))
    for each in given.keep or ():
        sides.figure(each.low + each.thick / 2, "fixed")
    for at in range(1, len(centers) - 1):
        sides.figure(centers[at], _figure(show, centers, at))
    some = "" if shown is centers else " Only the first and last holes are drawn."
    words = (
        f"Both sides from inside as mirror images, front edges out, each with two rows of "
        f"{len(centers)} holes, {show.brief(given.front)} from the front and "
        f"{show.brief(given.back)} from the back.{some} The numbers are the hole and its "
        "height above the bottom end."
    )
    return sides.drawn(words, show.brief(given.side))


def _figure(show, centers, at):
    return f"{at + 1}: {show.brief(centers[at])}"


def _stick(given, show, holes):
    size, deep = (fine_text(each, show) for each in (given.diameter, given.hole_depth))
    return story_stick(
        show,
        given.side,
        holes,
        name="Pin holes, one row",
        start="Bottom end of the side",
        diameter=given.diameter,
        setbacks=(("Front row", given.front), ("Back row", given.back)),
        note=f"Holes {size} wide, {deep} deep.",
    )


RECKONER = Reckoner(
    key="pin_holes",
    title="Shelf pin holes",
    asks="Where do I drill shelf pin holes, and which hole sets each shelf?",
    words=(
        "shelf pins, pin holes, pin, hole, peg, adjustable shelf, 32 mm system, 5 mm, drill, "
        "template, jig, setback, spacing, pitch, story stick"
    ),
    order=310,
    job="shelves",
    picture={
        "wood": "M5 3h18v34H5z",
        "ink": "M9.5 9h1M9.5 16h1M9.5 23h1M9.5 30h1M17.5 9h1M17.5 16h1M17.5 23h1M17.5 30h1",
        "chalk": "M30 9v14m-3-3l3 3 3-3M27 12l3-3 3 3",
    },
    basic=("side", "depth", "first", "pitch", "own_pitch"),
    fields=(
        SIDE,
        SIDE_DEPTH,
        length("first", "First hole", help="Its center, from the bottom end of the side."),
        length(
            "last",
            "No holes above",
            blank_means="As far from the top end as the first hole is from the bottom end.",
        ),
        choice("pitch", "Hole spacing", PITCHES, metric="32 mm"),
        length(
            "own_pitch",
            "My own spacing",
            default='1"',
            metric="25 mm",
            least="1/16 in",
            most="24 in",
            shown_when=("pitch", ("own",)),
        ),
        length("front", "Front row setback", default='2"', metric="37 mm"),
        length("back", "Back row setback", default='2"', metric="37 mm"),
        length(
            "diameter", "Hole diameter", default='1/4"', metric="5 mm", least="1/16 in", most="1 in"
        ),
        length(
            "hole_depth", "Hole depth", default='3/8"', metric="10 mm", least="1/16 in", most="4 in"
        ),
        thickness(label="Side thickness", least="1/8 in"),
        count("sides", "Sides", help="Sides and partitions with holes.", default="2", least="1"),
        length(
            "rest",
            "Shelf above hole center",
            help="For a plain pin, half its diameter.",
            default='1/8"',
            metric="2.5 mm",
            most="2 in",
        ),
        lengths(
            "wanted",
            "Shelf heights",
            help="Bottom edge, from the bottom end of the side.",
            row_label="Shelf",
            most_rows=60,
            blank_means="No shelves to look up.",
        ),
        rows(
            "keep",
            "Fixed shelves and dadoes",
            (
                length("low", "Bottom edge", help="From the bottom end of the side."),
                thickness("thick", help="", most="12 in"),
            ),
            row_label="Fixed",
            most_rows=20,
            blank_means="Nothing in the way of the holes.",
        ),
        length(
            "clear",
            "Gap around them",
            help="Holes stay at least this far away.",
            default='1/2"',
            metric="12 mm",
            most="12 in",
        ),
    ),
    answers=(
        Answer("holes", "Hole centers, from the bottom end", "lengths", must="agree"),
        Answer("shelves", "Shelf bottom edges, from the bottom end", "lengths", must="agree"),
        Answer("enough", "Fewest holes for these shelves", "text"),
        Answer("count", "Holes per row", "count"),
        Answer("total", "Total holes", "count"),
        Answer("left_out", "Skipped holes", "text"),
        Answer("apart", "Front row to back row", must="agree"),
        Answer("behind", "Wood left behind a hole", must="be there"),
    ),
    source=(
        "Arithmetic. Hole spacings, setbacks and diameters are shop practice: measure your pins "
        "and follow their maker."
    ),
    compute=compute,
    example={
        "side": "44 1/2",
        "depth": "14 1/2",
        "first": "8",
        "last": "38",
        "pitch": "5/4",
        "wanted": ["16 in", "30 in"],
        "keep": [{"low": "20 7/8 in", "thick": "23/32 in"}],
    },
)
