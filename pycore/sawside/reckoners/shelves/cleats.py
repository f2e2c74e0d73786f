"""Cleats under a shelf: their lengths, where the screws go, and how far those reach."""

from sawside.drawing.shelves.cleats_under_shelf import cleats_under_shelf
from sawside.drawing.square_piece import square_piece
from sawside.errors import Refusal
from sawside.lengths.fine import on_fine_marks
from sawside.reckoners.declaration import Answer, End, Part, Reckoner, Reckoning
from sawside.reckoners.fields import choice, count, length
from sawside.reckoners.shared.board_fields import thickness
from sawside.reckoners.shared.numbered import numbered
from sawside.reckoners.shelves.shared.cleat_screws import (
    places_along,
    places_at_the_back,
    screw_of,
    screw_told,
    stud_warnings,
    warnings,
)
from sawside.wood.screws import STUD_HOLD, shortest_sold

_SQUARE = End("square", "0°")
_BACK = ("back", ("yes",))
_CAUTIONS = (
    "Drill pilot holes the size the screw maker calls for. Don’t drive screws where there could be "
    "wires or pipes.",
    "A cleat is only as strong as what its screws bite into. Screw a back cleat to studs. If it "
    "could fall on someone, hire a licensed pro.",
)


def compute(given, show):
    """Lengths, screw places along a side cleat, and the screw's reach into the side."""
    long, back = _side_length(given, show), given.back == "yes"
    places = places_along(given, show, long)
    screw = screw_of(given, show)
    pieces = [("side", "Side cleat", long, 2, places)]
    if back:
        pieces.append(("back", "Back cleat", given.inside, 1, places_at_the_back(given, show)))
    answers = {
        **{f"{key}_cleat": show.rounded(long, "go in") for key, _, long, _, _ in pieces},
        "screws": numbered("Screw", places),
        **screw_told(given, show, screw),
        **(_back_screws(given, show, screw, pieces[1][-1]) if back else {}),
    }
    parts = tuple(_part(given, show, *piece) for piece in pieces)
    return Reckoning(
        answers=answers,
        working=tuple(_working(given, show, long, screw, places)),
        drawing=cleats_under_shelf(show, given, parts[0].length, places),
        cautions=(
            *warnings(given, show, screw),
            *stud_warnings(given, show, answers.get("back_screws")),
            *_CAUTIONS,
        ),
        parts=parts,
        verdict=_verdict(show, screw),
    )


def _verdict(show, screw):
    """What the number is, and the longest screw, with the one of its length that is sold."""
    longest = show.bare(on_fine_marks(screw.longest, show, "stay under"))
    sold = f", stock size {show.bare(on_fine_marks(screw.sold, show))}" if screw.sold else ""
    return f"Side cleats (longest screw {longest}{sold})"


def _side_length(given, show):
    """The length of a side cleat, in front of a back one; "impossible" where nothing is left."""
    long = given.depth - given.setback - (given.thickness if given.back == "yes" else 0)
    if long <= 0:
        raise Refusal(
            "impossible",
            f"There’s no room for a side cleat under a shelf {show.text(given.depth)} deep.",
            "Enter a smaller setback or a thinner cleat.",
            field="setback",
        )
    return long


def _back_screws(given, show, screw, places):
    """The answers about the back cleat's screws: where they go, and which one reaches a stud."""
    answers = {"back_screws": numbered("Screw", places)}
    bought = shortest_sold(screw.through + given.wall + STUD_HOLD, show.settings.display == "mm")
    if bought is not None:
        answers["back_screw"] = on_fine_marks(bought, show)
    return answers


def _part(given, show, key, name, long, many, places):
    long = show.rounded(long, "go in")
    return Part(
        key=key,
        name=name,
        length=long,
        width=given.height,
        thickness=on_fine_marks(given.thickness, show),
        count=many * given.shelves,
        left=_SQUARE,
        right=_SQUARE,
        drawing=square_piece(show, name, long, given.height, marks=places),
    )


def _working(given, show, long, screw, places):
    cleat, side = show.number(given.thickness), show.number(given.side)
    takes = f" − {cleat}" if given.back == "yes" else ""
    yield (
        f"Side cleat: {show.number(given.depth)} − {show.number(given.setback)}{takes}"
        f"{show.equals(show.rounded(long, 'go in'))}"
    )
    if len(places) > 1:
        yield (
            f"({show.number(long)} − 2 × {show.number(given.end)}) ÷ {len(places) - 1}"
            f"{show.equals(places[1] - places[0])} from screw to screw"
        )
    sink, spare = show.number(given.sink), show.number(given.spare)
    taken, reach = show.number(screw.length), show.number(screw.reach)
    yield f"Longest screw: {cleat} − {sink} + {side} − {spare} = {show.number(screw.longest)}"
    yield f"Reach: {taken} − {cleat} + {sink} = {reach} into the side"


_FIELDS = (
    length("inside", "Inside width", help="Between the sides, at the shelf.", least="1 in"),
    length("depth", "Shelf depth", help="Front to back.", least="1 in"),
    thickness(label="Cleat thickness", help="", least="1/8 in", most="4 in"),
    length(
        "height", "Cleat height", default='1 1/2"', metric="40 mm", least="1/4 in", most="12 in"
    ),
    length(
        "setback",
        "Side cleat setback",
        help="From the front, so they show less.",
        default='1"',
        metric="25 mm",
    ),
    choice("back", "Back cleat", {"yes": "Yes, side to side", "no": "No"}),
    length(
        "first_stud",
        "First stud",
        help="Left end of the back cleat to the center of a stud.",
        blank_means="The back cleat’s screws are spaced evenly.",
        shown_when=_BACK,
    ),
    length(
        "studs",
        "Stud spacing",
        help="On center.",
        default="16 in",
        metric="400 mm",
        least="4 in",
        most="48 in",
        shown_when=_BACK,
    ),
    length(
        "wall",
        "Wall covering",
        help="Drywall, plaster or paneling between the back cleat and the studs.",
        default='1/2"',
        metric="12 mm",
        most="4 in",
        shown_when=_BACK,
    ),
    thickness(
        "side",
        "Side thickness",
        help="What the screw bites into. Measure it.",
        least="1/8 in",
        most="12 in",
    ),
    length(
        "screw",
        "Screw length",
        least="1/4 in",
        most="12 in",
        blank_means="The longest one that stays clear of the far face.",
    ),
    length(
        "sink",
        "Countersink depth",
        help="0 if the head is flush with the cleat’s face.",
        default='0"',
        most="2 in",
    ),
    length("spare", "Wood left past the tip", default='1/8"', metric="3 mm", most="6 in"),
    length("end", "Screw end distance", default='1 1/2"', metric="40 mm", most="24 in"),
    length(
        "spacing",
        "Maximum screw spacing",
        default='6"',
        metric="150 mm",
        least="1/2 in",
        most="48 in",
    ),
    count("shelves", "Shelves", default="1", least="1", most="60"),
)

RECKONER = Reckoner(
    key="cleats",
    title="Shelf cleats",
    asks="How long are the shelf cleats, and what screws do they take?",
    words=(
        "cleat, cleats, shelf cleat, batten, ledger, shelf support, screw, screw length, closet "
        "shelf, closet, alcove"
    ),
    order=330,
    job="shelves",
    picture={"wood": "M7 9h30v6H7zM7 15h10v11H7z", "ink": "M7 3v34", "chalk": "M21 20.5H2M21 17v7"},
    basic=("inside", "depth", "thickness", "side"),
    makes_parts=True,
    fields=_FIELDS,
    answers=(
        Answer("side_cleat", "Side cleats, two per shelf", must="go in"),
        Answer("back_cleat", "Back cleat", must="go in"),
        Answer("longest", "Longest screw", must="stay under"),
        Answer("sold", "Longest stock screw", must="stay under"),
        Answer("sold_reach", "Stock screw’s reach into the side", must="be there"),
        Answer("reach", "Screw’s reach into the side", must="be there"),
        Answer("left", "Wood left past the tip", must="be there"),
        Answer("screws", "Side cleat screws, from the end", "lengths", must="agree"),
        Answer("back_screws", "Back cleat screws, from the end", "lengths", must="agree"),
        Answer("back_screw", "Screw to buy for the back cleat", must="reach"),
    ),
    source=(
        "Arithmetic; screw spacing, end distance and 1″ or more into a stud are shop practice. "
        "Stock screw lengths: unchecked."
    ),
    compute=compute,
    example={
        "inside": "35 3/16",
        "depth": "14 1/4",
        "side": "23/32",
        "screw": "1 1/4",
        "first_stud": "5 3/4",
        "shelves": "2",
    },
)
