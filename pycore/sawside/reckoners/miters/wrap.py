"""A molding wrapped around a case, or along the walls of an alcove, in any number of layers.

Each layer lies on the one beneath: a face becomes the next layer's back. At a corner a piece grows
by projection x tan(half of what the corner is short of straight); inside an alcove it shrinks.
"""

from fractions import Fraction

from sawside.drawing.miters.edge_piece import EdgeCut, edge_piece
from sawside.drawing.miters.wrap import wrap_plan
from sawside.errors import Refusal
from sawside.geometry.miter import along_the_edge, half_corner
from sawside.geometry.wrap import cutting_order, fewest_sticks, layered
from sawside.lengths.real import sign
from sawside.reckoners.declaration import (
    Answer,
    Part,
    Reckoner,
    Reckoning,
    choice,
    kerf,
    length,
    rows,
)
from sawside.reckoners.miters.shared.corner_field import past_lines
from sawside.reckoners.miters.shared.edge_ends import edge_ends
from sawside.reckoners.miters.shared.field_bounds import blank
from sawside.reckoners.miters.shared.moldings.wrap_sides import legs_of, side_fields, sides_of
from sawside.reckoners.miters.shared.moldings.wrap_words import (
    AT_THE_SAW,
    cautions_of,
    name_of,
    order_of,
    working_of,
)

_AROUND = {
    "case": "Around a case or column (outside corners)",
    "alcove": "Along an alcove’s walls (inside corners)",
}


def compute(given, show):
    """Every piece of every layer, in inches; what is mitered at other than 45 is irrational."""
    inside = given.around == "alcove"
    sides = sides_of(given)
    projections = [layer.projection for layer in given.layers]
    legs = legs_of(given, show, sides, sum(projections), inside)
    laid = layered(legs, projections)
    pieces = cutting_order(laid)
    _refuse_what_vanishes(show, pieces)
    several = len(projections) > 1
    named = [(name_of(piece, several), piece) for piece in pieces]
    return Reckoning(
        answers=_answers(given, show, sides, named),
        working=(
            *past_lines(given, "left_corner", "right_corner"),
            *working_of(show, laid, sides, several),
        ),
        drawing=wrap_plan(show, legs, laid, [side.corner for side in sides], inside=inside),
        cautions=cautions_of(show, named, sides, sum(projections), inside),
        parts=tuple(_part(show, name, piece, given.layers) for name, piece in named),
    )


def _answers(given, show, sides, named):
    """`named` are (name, piece) in the order of cutting."""
    pieces, long, short = [piece for _, piece in named], [], []
    for number, (name, piece) in enumerate(named, 1):
        between = ", tip to tip" if piece.is_between else ""
        long.append((f"{number}. {name}{between}", piece.tip_to_tip))
        short.append((f"{number}. {name}", piece.sides[1]))
    taken = _taken_by_layer(pieces, given.kerf)
    answers = {
        "first": pieces[0].tip_to_tip,
        "pieces": long,
        "short_sides": short,
        "order": order_of(pieces, len(given.layers) > 1),
        "at_the_saw": AT_THE_SAW,
        "stock": [(f"Layer {layer}", sum(long, Fraction(0))) for layer, long in taken.items()],
    }
    for side in sides:
        if side.corner is not None:
            answers[f"{side.name}_setting"] = half_corner(side.corner)
    if given.stick is not None:
        answers["sticks"] = _sticks(given, show, pieces, taken)
    return answers


def _refuse_what_vanishes(show, pieces):
    for piece in pieces:
        if sign(piece.face) <= 0:
            raise Refusal(
                "impossible",
                f"{piece.leg.name} has no length left at its face: its back is "
                f"{show.text(piece.back)}, and its corners take "
                f"{show.text(piece.back - piece.face)}.",
                "Use a smaller projection, or check the width and the depth.",
                field="layers",
                row=piece.layer - 1,
                part="projection",
            )


def _taken(piece, width):
    """What a piece takes of a stick: its tips, and a cut of `width` along it at each end."""
    left, right = (
        along_the_edge(width, adds, piece.projection)
        for adds in (piece.left_adds, piece.right_adds)
    )
    return piece.tip_to_tip + left + right


def _taken_by_layer(pieces, width):
    """{layer: what each of its pieces takes}."""
    layers = {}
    for piece in pieces:
        layers.setdefault(piece.layer, []).append(_taken(piece, width))
    return layers


def _sticks(given, show, pieces, taken):
    for piece in pieces:
        if (takes := _taken(piece, given.kerf)) > given.stick:
            raise Refusal(
                "impossible",
                f"{name_of(piece, len(given.layers) > 1)} takes {show.text(takes)} with its "
                f"kerfs, more than a stick of {show.text(given.stick)}.",
                "Use longer sticks, scarf two together, or leave the stick blank.",
                field="stick",
            )
    return "; ".join(
        f"layer {layer}: {fewest_sticks(lengths, given.stick)} of {show.text(given.stick)}"
        for layer, lengths in taken.items()
    ).capitalize()


def _cut(joint, adds):
    if joint.scribe is None:
        return EdgeCut(joint.setting, adds)
    return EdgeCut(joint.setting, adds, setting=f"scribe {joint.scribe}")


def _part(show, name, piece, layers):
    joints = (piece.leg.left, piece.left_adds), (piece.leg.right, piece.right_adds)
    cuts = [_cut(joint, adds) for joint, adds in joints]
    left, right = edge_ends(cuts)
    long_side, short_side = piece.sides
    return Part(
        key=f"layer_{piece.layer}_{piece.leg.key}",
        name=name,
        length=piece.tip_to_tip,
        width=layers[piece.layer - 1].height,
        thickness=piece.projection,
        left=left,
        right=right,
        long_side=long_side,
        short_side=short_side,
        drawing=edge_piece(show, name, piece.projection, piece.back, cuts),
        layer=piece.layer,
    )


RECKONER = Reckoner(
    key="wrap",
    title="Molding around a case",
    asks="How long is each piece of molding around a case, in one or more layers?",
    words=(
        "wrap, molding, return, mitered return, self-return, around a case, layers, trim, "
        "baseboard, plinth, column, column wrap, chimney breast, alcove, corner, build up, "
        "mitered"
    ),
    order=215,
    job="molding",
    picture={
        "wood": "M4 35V6h32v29h-7V13H11v22z",
        "ink": "M15 35V17h10v18",
        "chalk": "M4 6l7 7M36 6l-7 7",
    },
    fields=(
        choice("around", "Runs", _AROUND),
        length(
            "width",
            "Width",
            help="Front of the case, or back wall of the alcove, corner to corner.",
            least="1/64 in",
        ),
        rows(
            "layers",
            "Layers, from the case out",
            (
                length(
                    "projection",
                    "Projection",
                    help="How far this layer sticks out: its thickness.",
                    least="1/64 in",
                    most="12 in",
                ),
                length(
                    "height",
                    "Height",
                    help="Only for the cut list.",
                    least="1/64 in",
                    most="24 in",
                    **blank("Left out of the cut list."),
                ),
            ),
            row_label="Layer",
            most_rows=6,
        ),
        *side_fields("left"),
        *side_fields("right"),
        kerf(help="To figure the stock. Measure a cut in scrap."),
        length(
            "stick",
            "Stick length",
            help="As sold.",
            least="1 in",
            **blank("Sticks aren’t counted."),
        ),
    ),
    answers=(
        Answer("first", "First piece to cut, long point", must="agree"),
        Answer("pieces", "Long points, in cutting order", "lengths", must="agree"),
        Answer("short_sides", "Short points", "lengths", must="agree"),
        Answer("left_setting", "Miter angle, left corner", "angle", sets="turned"),
        Answer("right_setting", "Miter angle, right corner", "angle", sets="turned"),
        Answer("order", "Cutting order", "text"),
        Answer("at_the_saw", "At the saw", "text"),
        Answer("stock", "Stock to buy, with kerfs", "lengths", must="reach"),
        Answer("sticks", "Sticks to buy", "text"),
    ),
    source=(
        "At 45° a mitered end adds the projection, and the piece that can’t be trimmed in place is "
        "cut first: shop practice. At other corners it adds projection × tan(90 − "
        "corner ÷ 2): plane trigonometry."
    ),
    compute=compute,
    example={
        "around": "case",
        "width": "36 7/8",
        "layers": [
            {"projection": '3/4"', "height": '3 1/2"'},
            {"projection": '1/2"', "height": '1 1/4"'},
        ],
        "left_side": "wall",
        "left_corner": "90.5",
        "left_depth": "15 1/4",
        "left_scribe": "1/4",
        "right_side": "wall",
        "right_corner": "89",
        "right_depth": "15 1/4",
        "right_scribe": "1/4",
        "stick": "96",
    },
    makes_parts=True,
)
