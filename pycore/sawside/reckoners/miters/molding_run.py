"""A molding along walls or around a case, corner by corner, in any number of layers.

Each layer sits on the one beneath: a face becomes the next layer's back. At a corner a piece grows
by projection x tan(half of what the corner is short of straight); inside a room it shrinks. An
inside corner is mitered, or one piece runs in square and the next is coped over it.
"""

from fractions import Fraction

from sawside.drawing.miters.run_plan import run_plan
from sawside.errors import Refusal
from sawside.geometry.coping_order import in_order
from sawside.geometry.miter import along_the_edge, half_corner
from sawside.geometry.molding_run import layered
from sawside.geometry.sticks import fewest_sticks
from sawside.lengths.real import nearby
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, count, kerf, length
from sawside.reckoners.miters.shared.field_bounds import blank
from sawside.reckoners.miters.shared.moldings.run_cautions import cautions_of
from sawside.reckoners.miters.shared.moldings.run_fields import (
    AROUND,
    WALLS,
    end_fields,
    layer_rows,
)
from sawside.reckoners.miters.shared.moldings.run_legs import run_of
from sawside.reckoners.miters.shared.moldings.run_parts import (
    full,
    part_of,
    refuse_what_vanishes,
    told,
)
from sawside.reckoners.miters.shared.moldings.run_words import (
    AT_THE_SAW,
    corners_text,
    ends_text,
    how_to_cope,
    name_of,
    order_of,
)
from sawside.reckoners.miters.shared.moldings.run_worked import working_of


def compute(given, show):
    """Every piece of every layer, in inches; what is mitered at other than 45 is irrational."""
    run = run_of(given, show)
    projections = [layer.projection for layer in given.layers]
    laid = layered(run.legs, projections, given.extra)
    refuse_what_vanishes(show, laid)
    pieces = in_order(laid, run.groups)
    named = [(name_of(piece, len(projections) > 1), piece) for piece in pieces]
    longest = max(pieces, key=lambda piece: nearby(piece.tip_to_tip))
    return Reckoning(
        answers=_answers(given, show, run, named),
        working=working_of(given, show, run, laid, lambda piece: full(show, piece)),
        drawing=run_plan(show, given, run, pieces),
        cautions=cautions_of(given, show, run, named),
        parts=tuple(part_of(show, name, piece, given.layers) for name, piece in named),
        verdict=_verdict(len(pieces), show.brief(told(show, longest, longest.tip_to_tip))),
    )


def _verdict(count, longest):
    return f"1 piece, {longest}" if count == 1 else f"{count} pieces, longest {longest}"


def _answers(given, show, run, named):
    """`named` are (name, piece) in the order of cutting."""
    pieces = [piece for _, piece in named]
    taken = _taken_by_layer(pieces, given.kerf)
    answers = {
        "first": told(show, pieces[0], pieces[0].tip_to_tip),
        "pieces": _lengths(show, named, lambda piece: piece.tip_to_tip, tips=True),
        **_other_lengths(show, named),
        **_settings(run.corners),
        "order": order_of(pieces, len(given.layers)),
        "at_the_saw": AT_THE_SAW,
        "stock": [(f"Layer {layer}", sum(long, Fraction(0))) for layer, long in taken.items()],
        "net": sum((piece.tip_to_tip for piece in pieces), Fraction(0)),
    }
    if any(piece.is_coped for piece in pieces):
        answers |= {"ends": ends_text(pieces), "how": how_to_cope(run.corners)}
    if given.stick is not None:
        answers["sticks"] = _sticks(given, show, named, taken)
    return answers


def _lengths(show, named, length_of, *, tips=False):
    return [
        (
            f"{number}. {name}{', tip to tip' if tips and piece.is_between else ''}",
            told(show, piece, length_of(piece)),
        )
        for number, (name, piece) in enumerate(named, 1)
    ]


def _other_lengths(show, named):
    """The short points where an end is cut at an angle, the visible lengths where one is coped."""
    kinds = {joint.kind for _, piece in named for joint in piece.leg.joints}
    answers = {}
    if kinds & {"mitered", "returned", "scarfed"}:
        answers["short_sides"] = _lengths(show, named, lambda piece: piece.sides[1])
    if "coped" in kinds:
        answers["faces"] = _lengths(show, named, lambda piece: piece.face - piece.extra)
    return answers


def _settings(corners):
    """The miter of all corners where they are alike, else that of the first and of the last."""
    settings = [half_corner(corner.degrees) for corner in corners]
    if not settings:
        return {}
    if len(set(settings)) == 1:
        answers = {"setting": settings[0]}
    else:
        answers = {"first_setting": settings[0], "last_setting": settings[-1]}
    return answers | ({"corners": corners_text(corners)} if len(corners) > 1 else {})


def _taken(piece, width):
    """What a piece takes of a stick: its tips, and a cut of `width` along it at each end."""
    left, right = (along_the_edge(width, adds, piece.projection) for adds in piece.adds)
    return piece.tip_to_tip + left + right


def _taken_by_layer(pieces, width):
    """{layer: what each of its pieces takes}."""
    layers = {}
    for piece in pieces:
        layers.setdefault(piece.layer, []).append(_taken(piece, width))
    return layers


def _sticks(given, show, named, taken):
    for name, piece in named:
        if (takes := _taken(piece, given.kerf)) > given.stick:
            raise Refusal(
                "impossible",
                f"{name} takes {show.text(takes)} with its kerfs, more than a stick of "
                f"{show.text(given.stick)}.",
                "Use longer sticks, scarf two together, or leave the stick blank.",
                field="stick",
            )
    return "; ".join(
        f"layer {layer}: {fewest_sticks(lengths, given.stick)} of {show.text(given.stick)}"
        for layer, lengths in taken.items()
    ).capitalize()


RECKONER = Reckoner(
    key="molding_run",
    title="Molding run",
    asks="How long is each piece of molding along these walls or around this case?",
    words=(
        "molding, wrap, cope, coped, coping, coped joint, baseboard, base, trim, inside corner, "
        "outside corner, return, mitered return, self-return, around a case, column, column wrap, "
        "island, chimney breast, plinth, alcove, bay, room, walls, layers, build up, mitered"
    ),
    order=215,
    job="molding",
    picture={
        "wood": "M4 35V6h32v29h-7V13H11v22z",
        "ink": "M15 35V17h10v18",
        "chalk": "M4 6l7 7M36 6l-7 7",
    },
    fields=(
        AROUND,
        WALLS,
        layer_rows(),
        *end_fields("left"),
        *end_fields("right"),
        count(
            "first",
            "Wall you see first",
            least="1",
            most="12",
            help="Its piece butts where it can, so the coped joints don’t face you.",
            **blank("The usual order: the center wall of an alcove, the back wall by a chimney."),
        ),
        length(
            "extra",
            "Extra for a spring fit",
            default="0 in",
            most="1/4 in",
            help="Added to a piece between two inside corners, to press it tight.",
        ),
        kerf(help="To figure the stock. Measure a cut in scrap."),
        length(
            "stick",
            "Stick length",
            help="As sold.",
            least="1 in",
            **blank("Sticks aren’t counted."),
        ),
    ),
    basic=("around", "walls", "layers", "left_end", "left_board", "right_end", "right_board"),
    answers=(
        Answer("first", "First piece", must="case"),
        Answer("pieces", "Lengths in cutting order", "lengths", must="case"),
        Answer("short_sides", "Short points", "lengths", must="case"),
        Answer("faces", "Visible lengths", "lengths", must="case"),
        Answer("setting", "Miter angle", "angle", sets="turned"),
        Answer("first_setting", "Miter angle, first corner", "angle", sets="turned"),
        Answer("last_setting", "Miter angle, last corner", "angle", sets="turned"),
        Answer("corners", "Corners", "text"),
        Answer("ends", "Butted or coped", "text"),
        Answer("order", "Cutting order", "text"),
        Answer("at_the_saw", "At the saw", "text"),
        Answer("how", "How to cope", "text"),
        Answer("stock", "Stock to buy, with kerfs", "lengths", must="reach"),
        Answer("net", "Stock, without kerfs", must="reach"),
        Answer("sticks", "Sticks to buy", "text"),
    ),
    source=(
        "At 45° a mitered end adds the projection, the piece that can’t be trimmed in place is cut "
        "first, and a miter shows the line to cope: shop practice. At other corners it adds "
        "projection × tan(90 − corner ÷ 2): plane trigonometry."
    ),
    compute=compute,
    example={
        "around": "open",
        "walls": [
            {"length": "15 1/4", "turn": "outside", "corner": "90.5"},
            {"length": "36 7/8", "turn": "outside", "corner": "89"},
            {"length": "15 1/4"},
        ],
        "layers": [
            {"projection": '3/4"', "height": '3 1/2"'},
            {"projection": '1/2"', "height": '1 1/4"'},
        ],
        "left_end": "wall",
        "left_scribe": "1/4",
        "right_end": "wall",
        "right_scribe": "1/4",
        "stick": "96",
    },
    makes_parts=True,
)
