"""A panel glued up of strips: how many, how wide to rip them, how long, and how to clamp them."""

from types import SimpleNamespace

from sawside.drawing.boards.glued_strips import glued_strips
from sawside.drawing.lazy import lazy
from sawside.drawing.square_piece import square_piece
from sawside.geometry.end import End
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.marks import exact_of
from sawside.reckoners.boards.shared.clamping import clamping_of
from sawside.reckoners.boards.shared.panel_fields import FIELDS
from sawside.reckoners.boards.shared.panel_told import clamps_text, lay_up, verdict, working
from sawside.reckoners.boards.shared.sold import exact
from sawside.reckoners.boards.shared.strips import strips_of
from sawside.reckoners.declaration import Answer, Part, Reckoner, Reckoning
from sawside.wood.caution import Caution

_SQUARE = End("square", "0°")
_CAUTIONS = (
    Caution(
        "Guards on, push blocks in hand.",
        "Joint and rip with the guards on and push blocks in hand, and joint nothing shorter than "
        "12″ (shop practice). The jointer and saw makers’ instructions come first.",
    ),
    Caution(
        "It moves across its width all year.",
        "A glued-up panel still moves across its width all year: let it, wherever you fasten it. "
        "Wood movement tells how much. Dry-fit with every clamp before you spread glue.",
    ),
)
_LENGTHS = ("length", "width", "thickness", "joint", "extra_width", "extra_length")


def compute(given, show):
    """Strips for one panel, and as parts for all; "impossible" where the boards don't make it."""
    given = _exactly(given, show)
    strips = strips_of(given, show)
    long = given.length + given.extra_length
    clamping = clamping_of(given, show, long, strips.outer) if strips.number > 1 else None
    answers = {"strips": strips.number}
    if strips.places is None:
        answers |= {"rip": strips.rip, "strip": on_fine_marks(strips.strip, show, "be there")}
    else:
        answers["jointed"] = [
            (f"Board {place + 1}", on_fine_marks(strips.usable[place], show, "be there"))
            for place in strips.places
        ]
    answers |= {
        "long": show.rounded(long, "reach"),
        "thick": show.rounded(given.thickness + given.extra_thickness, "reach"),
        "glued": on_fine_marks(strips.glued, show, "be there"),
    }
    if clamping:
        answers["lines"] = strips.number - 1
        answers["clamps"] = clamps_text(show, clamping)
    return Reckoning(
        answers=answers,
        working=working(given, show, strips, clamping),
        drawing=_drawing(given, show, strips, long),
        cautions=_CAUTIONS,
        parts=tuple(_parts(given, show, strips, answers)),
        verdict=verdict(given, show, strips),
    )


def _exactly(given, show):
    """The same with each length as a fraction."""
    made = {key: exact(getattr(given, key), show) for key in (*_LENGTHS, "extra_thickness")}
    return SimpleNamespace(
        **vars(given) | made | {"boards": [exact(each, show) for each in given.boards]}
    )


def _parts(given, show, strips, answers):
    """The strips to rip, or the boards that are used, as wide as they were measured."""
    if strips.places is None:
        pieces = [("strip", "Strip", strips.rip, strips.number * given.panels)]
    else:
        pieces = [
            (f"board_{place + 1}", f"Board {place + 1}", given.boards[place], 1)
            for place in strips.places
        ]
    for key, name, width, number in pieces:
        yield Part(
            key=key,
            name=name,
            length=answers["long"],
            width=width,
            thickness=answers["thick"],
            count=number,
            left=_SQUARE,
            right=_SQUARE,
            drawing=square_piece(show, name, answers["long"], exact_of(width)),
            about=tuple(_about(given, show, strips)),
        )


def _about(given, show, strips):
    """What is done to a strip; one board by itself isn't laid up."""
    if given.joint:
        yield f"Joint both edges, {show.brief(given.joint)} off each."
    if strips.number > 1:
        yield lay_up(given)


@lazy
def _drawing(given, show, strips, long):
    if strips.places is None:
        drawn = [(strips.strip, ())] * strips.number
    else:
        drawn = [(strips.usable[place], _names(show, strips, place)) for place in strips.places]
    first = on_fine_marks(drawn[0][0], show, "be there")
    texts = [show.brief(each) for each in (given.length, given.width, first)]
    finished = f"the finished panel of {texts[0]} by {texts[1]} dashed"
    words = f"One board, {finished} in it, and its end with the rings."
    if strips.number > 1:
        words = (
            f"{strips.number} strips side by side, {finished} in them, and the end with its rings. "
            f"{lay_up(given)}"
        )
    return glued_strips(
        words,
        (long, strips.glued),
        (given.length, given.width),
        drawn,
        texts,
        thick=given.thickness + given.extra_thickness,
        alternate=given.grain == "alternate",
    )


def _names(show, strips, place):
    """What a board is called on the panel: with its width, or without."""
    width = on_fine_marks(strips.usable[place], show, "be there")
    return f"Board {place + 1}, {show.brief(width)}", f"Board {place + 1}"


RECKONER = Reckoner(
    key="glued_panel",
    title="Glued-up panel",
    asks="How many strips do I glue up for a panel, and how wide do I rip them?",
    words=(
        "glue up, glue-up, glued panel, edge glue, edge joint, solid wood panel, "
        "panel from boards, boards to a panel, glue, clamps, how many clamps, cauls, jointing"
    ),
    order=930,
    job="boards",
    makes_parts=True,
    picture={
        "wood": "M4 8h32v24H4z",
        "ink": "M4 16h32M4 24h32",
        "chalk": "M20 2v6m-3-3l3 3 3-3M20 38v-6m-3 3l3-3 3 3",
    },
    basic=("length", "width", "thickness", "boards"),
    fields=FIELDS,
    answers=(
        Answer("strips", "Strips in a panel", "count"),
        Answer("rip", "Rip each strip to", must="case"),
        Answer("strip", "Each strip, jointed", must="be there"),
        Answer("jointed", "Boards to use, jointed", "lengths", must="be there"),
        Answer("long", "Strip length", must="reach"),
        Answer("thick", "Strip thickness", must="reach"),
        Answer("glued", "Width glued up", must="be there"),
        Answer("lines", "Glue lines", "count"),
        Answer("clamps", "Clamps", "text"),
    ),
    source=(
        "Arithmetic. Extra length, width and thickness, lay-up, cauls, and clamps twice the outer "
        "strip apart are shop practice."
    ),
    compute=compute,
    example={
        "length": "34 1/2",
        "width": "15 3/4",
        "thickness": "3/4",
        "boards": ["5 1/2"],
        "grain": "alternate",
    },
)
