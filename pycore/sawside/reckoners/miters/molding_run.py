"""A molding along walls or around a case, corner by corner, in any number of layers.

Each layer sits on the one beneath: a face becomes the next layer's back. At a corner a piece grows
by projection x tan(half of what the corner is short of straight); inside a room it shrinks. An
inside corner is mitered, or one piece runs in square and the next is coped over it.
"""

from sawside.drawing.miters.run_plan import run_plan
from sawside.geometry.coping_order import in_order
from sawside.geometry.molding_run import layered
from sawside.lengths.real import nearby
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import count, kerf, length
from sawside.reckoners.miters.shared.field_bounds import blank
from sawside.reckoners.miters.shared.moldings.run_answers import answers_of
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
from sawside.reckoners.miters.shared.moldings.run_words import name_of, verdict_of
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
    first, most = (show.brief(told(show, each, each.tip_to_tip)) for each in (pieces[0], longest))
    return Reckoning(
        answers=answers_of(given, show, run, named),
        working=working_of(given, show, run, laid, lambda piece: full(show, piece)),
        drawing=run_plan(show, given, run, pieces),
        cautions=cautions_of(given, show, run, named),
        parts=tuple(part_of(show, name, piece, given.layers) for name, piece in named),
        verdict=verdict_of(len(pieces), first, most),
    )


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
        Answer("faces", "Face lengths", "lengths", must="case"),
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
