"""How long is a piece with mitered ends, when one line along it is known.

An end cut a degrees from square makes one edge longer than the other by across x tan(a), across
being the width for a flat miter and the thickness for an edge miter. A line that lies t of the
way from the inside to the outside is longer than the inside by t of both allowances.
"""

from fractions import Fraction

from sawside.drawing.choices.measures import MITERED_SIDES
from sawside.drawing.lazy import lazy
from sawside.drawing.piece import Cut, mitered_piece
from sawside.geometry.end import KEPT_PLACES
from sawside.lengths.show import angle_text
from sawside.reckoners.declaration import Alike, Answer, End, Part, Reckoner, Reckoning
from sawside.reckoners.fields import choice, count, length
from sawside.reckoners.miters.shared.corner_field import past_lines
from sawside.reckoners.miters.shared.end_fields import ASKED, end_fields
from sawside.reckoners.miters.shared.field_bounds import ACROSS, THROUGH, blank
from sawside.reckoners.miters.shared.mitered_piece import piece_of
from sawside.wood.saw import cautions_at_the_saw


def compute(given, show):
    """The sides in inches, what each end adds, and the settings; all may be irrational."""
    piece = piece_of(given, show)
    left, right = piece.ends
    picture = _picture(given, show, piece)
    return Reckoning(
        answers={
            "long_side": piece.long_side,
            "short_side": piece.short_side,
            **({} if piece.back is None else {"rabbet_side": piece.rabbet_side}),
            "left_allowance": left.adds,
            "right_allowance": right.adds,
            "left_setting": left.degrees,
            "right_setting": right.degrees,
            "left_corner": 90 - left.degrees,
            "right_corner": 90 - right.degrees,
            "left_cut": left.at_the_saw(),
            "right_cut": right.at_the_saw(),
        },
        working=_working(show, given, piece),
        drawing=picture,
        cautions=cautions_at_the_saw(piece.inside),
        parts=(_part(given, piece, picture),),
        verdict=_verdict(piece, show),
    )


def _verdict(piece, show):
    if all(end.degrees == 0 for end in piece.ends):
        return "Length of both edges"
    return f"Long point (short point {show.brief(piece.short_side)})"


def _picture(given, show, piece):
    return mitered_piece(
        show,
        given.width,
        piece.long_side,
        piece.short_side,
        [Cut(end.degrees, end.adds, end.way) for end in piece.ends],
        given={"inside": "short", "outside": "long", "rabbet": None}[given.known_face],
        thickness=given.thickness,
        rabbet=None if piece.back is None else (given.rabbet, piece.rabbet_side),
    )


def _part(given, piece, picture):
    left, right = (
        End(end.how, angle_text(end.degrees, KEPT_PLACES), *end.set_up) for end in piece.ends
    )
    return Part(
        key="piece",
        name="Mitered piece",
        length=piece.long_side,
        width=given.width,
        thickness=given.thickness,
        count=given.how_many,
        left=left,
        right=right,
        long_side=piece.long_side,
        short_side=piece.short_side,
        drawing=picture,
    )


@lazy
def _working(show, given, piece):
    lines = [*past_lines(given, "left_corner", "right_corner")]
    lines += [worked for end in piece.ends if (worked := end.worked(show))]
    adds = [end.adds for end in piece.ends if end.degrees != 0]
    start = show.number(given.known)
    if given.known_face != "rabbet":
        inside = given.known_face == "inside"
        added = "".join(f" {'+' if inside else '−'} {show.number(each)}" for each in adds)
        what, result = ("Long", piece.long_side) if inside else ("Short", piece.short_side)
        lines.append(f"{what} point: {start}{added}{show.equals(result)}")
        start = show.number(piece.short_side)
    if piece.back is not None:
        lines += _rabbet_worked(show, given, piece, sum(adds, Fraction(0)), start)
    return tuple(lines)


def _rabbet_worked(show, given, piece, total, start):
    """The lines of a rabbet, from the text of the line that they `start` from."""
    inward, outward = total * piece.back, total * (1 - piece.back)
    yield (
        f"The back of the rabbet is {show.number(given.rabbet)} from the inside, "
        f"{show.pure(piece.back)} of the way to the outside; of {show.number(total)} that is "
        f"{show.number(inward)}"
    )
    if given.known_face == "rabbet":
        steps = (
            ("Short point", "−", inward, piece.short_side),
            ("Long point", "+", outward, piece.long_side),
        )
    else:
        steps = (("Back of the rabbet", "+", inward, piece.rabbet_side),)
    for what, way, change, result in steps:
        yield f"{what}: {start} {way} {show.number(change)}{show.equals(result)}"


def _way(side):
    return lambda given: "tilted" if getattr(given, f"{side}_end") == "edge" else "turned"


RECKONER = Reckoner(
    key="mitered_length",
    title="Mitered length",
    asks="How long is a mitered piece, long point and short point?",
    words=(
        "miter, miter length, long point, short point, outside, inside, trim, molding, rail, "
        "frame, picture frame, mitered at both ends, two miters, "
        "45, bevel rip, bevel, edge "
        "miter, rabbet, unequal angles, cut length"
    ),
    order=200,
    job="miters and frames",
    picture={
        "wood": "M3 23l9-12h16l9 12z",
        "ink": "M12 5h16M12 3v4M28 3v4",
        "chalk": "M3 30h34m-3-3l3 3-3 3M6 27l-3 3 3 3",
    },
    basic=("known", "known_face", "width", *ASKED),
    alike=(Alike(),),
    fields=(
        length(
            "known",
            "Measured length",
            help="Along the edge you measured, corner to corner.",
            least="1/64 in",
        ),
        choice(
            "known_face",
            "Measured on",
            {
                "inside": "Inside edge (short points)",
                "outside": "Outside edge (long points)",
                "rabbet": "Back of the rabbet",
            },
            pictures=MITERED_SIDES,
            help="Sawside works out the others.",
        ),
        length("width", "Stock width", help="Across the face, where you see the miter.", **ACROSS),
        *end_fields("left"),
        *end_fields("right"),
        length(
            "thickness",
            "Stock thickness",
            help="Across the edge, where a bevel cuts.",
            **THROUGH,
            **blank("Only a bevel needs it."),
        ),
        length(
            "rabbet",
            "Rabbet",
            help="From the inside edge to the back of the rabbet.",
            **ACROSS,
            **blank("No rabbet."),
        ),
        count(
            "how_many", "How many", help="All the same length.", default="1", least="1", most="100"
        ),
    ),
    answers=(
        Answer("long_side", "Long point", must="case"),
        Answer("short_side", "Short point", must="case"),
        Answer("rabbet_side", "Back of the rabbet", must="agree"),
        Answer("left_allowance", "Left end adds", must="agree"),
        Answer("right_allowance", "Right end adds", must="agree"),
        Answer("left_setting", "Saw angle, left", "angle", sets=_way("left")),
        Answer("right_setting", "Saw angle, right", "angle", sets=_way("right")),
        Answer("left_corner", "Angle between edge and cut, left", "angle"),
        Answer("right_corner", "Angle between edge and cut, right", "angle"),
        Answer("left_cut", "Left end at the saw", "text"),
        Answer("right_cut", "Right end at the saw", "text"),
    ),
    source=(
        "At 45° a mitered end adds the width of the stock: shop practice. At other "
        "angles it adds width × tan(angle): plane trigonometry."
    ),
    compute=compute,
    example={
        "known": "31 5/8",
        "known_face": "inside",
        "width": "2 1/4",
        "left_end": "45",
        "right_end": "45",
    },
    makes_parts=True,
)
