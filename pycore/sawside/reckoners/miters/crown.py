"""Crown or other sprung molding, a piece or a run around corners: its compound cuts, and where its
edges are marked.

In its place the molding leans out from the wall by its spring. Each miter lies in the plane that
halves the corner; the bottom edge lies on the wall line, the top edge stands out by the
projection, which is what the corner adds to it or takes off.
"""

from sawside.errors import Refusal
from sawside.reckoners.declaration import Answer, End, Part, Reckoner, Reckoning
from sawside.reckoners.fields import choice, length
from sawside.reckoners.miters.shared.compound.crown_cuts import end_fields, piece_of
from sawside.reckoners.miters.shared.compound.crown_run import RUN_FIELDS
from sawside.reckoners.miters.shared.compound.crown_run_told import run_told
from sawside.reckoners.miters.shared.compound.crown_spring import CROWN, FIELDS
from sawside.reckoners.miters.shared.compound.crown_words import pictures_of, working_of
from sawside.reckoners.miters.shared.compound.saw import TILTS
from sawside.wood.saw import cautions_at_the_saw

_CAUTIONS = (
    "Crown has to seat on both the wall and the ceiling. If either is out, the spring angle "
    "changes: hold an offcut up, measure its drop and projection there, and cut two short test "
    "pieces first.",
    "Nested crown needs crown stops so it can’t slide. Use the ones the saw maker calls for.",
)


def compute(given, show):
    """The settings in degrees, and the two edges in inches where a length was measured."""
    if given.ceiling == "sloped":
        raise Refusal(
            "impossible",
            "Crown up a sloped ceiling only meets a level run with a different profile or a "
            "transition piece, and Sawside covers neither.",
            "Run it level below the slope, and choose a level ceiling.",
            field="ceiling",
        )
    if given.of == "run":
        return run_told(given, show, _CAUTIONS)
    piece = piece_of(given, show)
    whole_view, face_alone = pictures_of(given, show, piece)
    short = piece.edges.values() if piece.edges else ()
    return Reckoning(
        answers=_answers(show, piece),
        working=tuple(working_of(given, show, piece)),
        drawing=whole_view,
        cautions=(*cautions_at_the_saw(*short), *_CAUTIONS),
        parts=(_part(show, piece, face_alone),) if piece.edges else (),
        ends=_ends(piece),
        main="miter",
    )


def _answers(show, piece):
    spring, (first, *others) = piece.spring, piece.mitered
    answers = {"miter": first.sawn.miter, "tilt": first.sawn.tilt}
    for other in others:
        if other.corner != first.corner:
            answers |= {"right_miter": other.sawn.miter, "right_tilt": other.sawn.tilt}
            answers |= {"right_held": other.held}
    if piece.edges:
        answers |= {"tips": piece.tip_to_tip, **piece.edges}
    for end in piece.mitered:
        answers |= {f"{end.side}_flat": end.flat_text, f"{end.side}_up": end.held_text}
    answers |= {"held": first.held, "spring": spring.lean.degrees}
    if spring.width is not None:
        answers |= {key: getattr(spring, key) for key in ("width", "drop", "projection")}
    return answers


def _ends(piece):
    return tuple(end.sawn.end if end else End("square", "0°") for end in piece.ends)


def _part(show, piece, picture):
    left, right = _ends(piece)
    long, short = piece.edges["bottom"], piece.edges["top"]
    if long < short:
        long, short = short, long
    return Part(
        key="piece",
        name="Crown",
        length=piece.tip_to_tip,
        width=piece.spring.width,
        left=left,
        right=right,
        long_side=long,
        short_side=short,
        drawing=picture,
        profile=CROWN,
    )


_ONE = ("of", ("one",))
_RIGHT_TILT = {"sets": "tilted", "with_turn": "right_miter"}
_LAST_TILT = {"sets": "tilted", "with_turn": "last_miter"}

RECKONER = Reckoner(
    key="crown",
    title="Crown molding",
    asks="How do I cut crown, flat or nested, and how long?",
    words=(
        "crown, spring angle, cove molding, bed molding, sprung molding, compound miter, 52/38, "
        "nested, upside down, flat on the table, ceiling, sloped ceiling, top of the cabinet, "
        "inside corner, outside corner, bevel, tilt, miter angle"
    ),
    order=262,
    job="molding",
    picture={
        "wood": "M4 26h4q2-6 8-8t9-10V4h6v5q-3 7-10 11t-11 11H4z",
        "ink": "M4 37V4h34",
        "chalk": "M31 9q-3 7-10 11t-11 11",
    },
    fields=(
        choice("of", "Cut", {"one": "One piece", "run": "A run"}),
        *FIELDS,
        *RUN_FIELDS,
        *end_fields("left", _ONE),
        *end_fields("right", _ONE),
        choice(
            "measured_on",
            "Measured along",
            {"bottom": "Bottom edge, on the wall", "top": "Top edge, at the ceiling"},
        ),
        length(
            "measured",
            "Measured length",
            least="1/4 in",
            may_be_blank=True,
            help="Corner to corner, or to the square end.",
            blank_means="You get the saw settings only.",
            shown_when=_ONE,
        ),
        TILTS,
        choice(
            "ceiling",
            "Ceiling",
            {"level": "Level", "sloped": "Sloped"},
            help="Sloped ceilings aren’t covered.",
        ),
    ),
    answers=(
        Answer("first", "First piece, tip to tip", must="agree"),
        Answer("miter", "Miter, cut flat", "angle", sets="turned"),
        Answer("tilt", "Bevel, cut flat", "angle", sets="tilted", with_turn="miter"),
        Answer("right_miter", "Miter, cut flat, right end", "angle", sets="turned"),
        Answer("right_tilt", "Bevel, cut flat, right end", "angle", **_RIGHT_TILT),
        Answer("pieces", "Tip to tip, in cutting order", "lengths", must="agree"),
        Answer("tops", "Top edges", "lengths", must="agree"),
        Answer("bottoms", "Bottom edges", "lengths", must="agree"),
        Answer("tips", "Tip to tip", must="agree"),
        Answer("top", "Top edge", must="agree"),
        Answer("bottom", "Bottom edge", must="agree"),
        Answer("left_flat", "Left end, cut flat", "text"),
        Answer("right_flat", "Right end, cut flat", "text"),
        Answer("held", "Miter, cut nested", "angle", sets="turned"),
        Answer("right_held", "Miter, cut nested, right end", "angle", sets="turned"),
        Answer("left_up", "Left end, nested upside down", "text"),
        Answer("right_up", "Right end, nested upside down", "text"),
        Answer("last_miter", "Miter, cut flat, last corner", "angle", sets="turned"),
        Answer("last_tilt", "Bevel, cut flat, last corner", "angle", **_LAST_TILT),
        Answer("last_held", "Miter, cut nested, last corner", "angle", sets="turned"),
        Answer("order", "Cutting order", "text"),
        Answer("stock", "Stock to buy, with kerfs", must="reach"),
        Answer("spring", "Spring angle", "angle"),
        Answer("width", "Face width", must="agree"),
        Answer("drop", "Drop down the wall", must="agree"),
        Answer("projection", "Projection along the ceiling", must="agree"),
    ),
    source=(
        "Miter: arctan (sin spring ÷ tan half the corner); bevel: arcsin (cos spring × cos half "
        "the corner): geometry of the plane that halves the corner. The settings printed for "
        "springs of 38 and 45 are shop practice."
    ),
    compute=compute,
    makes_parts=True,
    verdict="Miter {miter}, bevel {tilt}",
    basic=(
        "of",
        "spring",
        "drop",
        "projection",
        "width",
        "walls",
        "left_end",
        "right_end",
        "measured",
    ),
    example={
        "of": "run",
        "found": "legs",
        "drop": "2 5/8",
        "projection": "2 1/16",
        "around": "open",
        "walls": [
            {"length": "15 1/4", "turn": "outside", "corner": "90"},
            {"length": "36 7/8", "turn": "outside", "corner": "90"},
            {"length": "15 1/4"},
        ],
        "left_stop": "wall",
        "right_stop": "wall",
        "measured_on": "bottom",
        "tilts": "left",
        "ceiling": "level",
    },
)
