"""Two strips of molding from one board that was shaped on both edges and ripped apart.

board = wider strip + narrower strip + kerf + what is planed off the two ripped edges, and the
wider strip is wider than the narrower one by the set-back.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.drawing.choices.boards import STRIPS_LAID
from sawside.drawing.miters.strips import two_strips_drawing
from sawside.errors import Refusal
from sawside.lengths.marks import Rounded
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import choice, kerf, length
from sawside.reckoners.miters.shared.field_bounds import blank
from sawside.wood.caution import Caution

_NARROW = 2
_VERY_NARROW = 1
"""Inches; common practice, no source."""

_LAID = {
    "flat": "Flat, stacked, backs flush",
    "above": "On edge, one above the other",
    "before": "On edge, one in front of the other, bottoms flush",
}
_CAUTIONS = (
    "Unplug before you change a setting. Use the guard, riving knife and push block. The "
    "saw maker’s instructions come first.",
    Caution(
        "Wide strip at the fence; don’t stand behind the narrow one.",
        "Keep the wider strip at the fence. Don’t stand behind the narrow one, and let the blade "
        "stop before you reach for it.",
    ),
    Caution(
        "Rip a long board, then cut to length.",
        "Don’t rip a board under about 12″ long, or shorter than it’s wide (shop practice). Cut "
        "to length after.",
    ),
)
_NARROW_CAUTION = (
    f"A strip is narrower than {_NARROW}″. Keep your hands out from between the blade and the "
    "fence, and use a push block that fills the space (shop practice)."
)
_VERY_NARROW_CAUTION = (
    f"A strip is narrower than {_VERY_NARROW}″ and can break or catch at the insert. Use a "
    "zero-clearance insert, or start from a wider board and shape one edge at a time (shop "
    "practice)."
)


@dataclass(frozen=True, slots=True)
class _Strips:
    """Inches: the board, both strips as finished, the fence, and what the strips make together."""

    board: Fraction
    wide: Fraction
    narrow: Fraction
    setting: Fraction
    height: Fraction
    projection: Fraction
    least_board: Rounded


def compute(given, show):
    """Both widths, the rip setting, and what the strips make when they are put together."""
    strips = _solved(given, show)
    together = (strips.height, strips.projection)
    return Reckoning(
        answers={
            "rip_setting": strips.setting,
            "wide": strips.wide,
            "narrow": strips.narrow,
            "board": strips.board if given.board else show.rounded(strips.board, "reach"),
            "height": strips.height,
            "projection": strips.projection,
            "least_board": strips.least_board,
        },
        working=_working(given, show, strips),
        drawing=two_strips_drawing(
            show, given.thickness, (strips.wide, strips.narrow), given, strips.setting, together
        ),
        cautions=(
            *_CAUTIONS,
            *((_NARROW_CAUTION,) if strips.narrow < _NARROW else ()),
            *((_VERY_NARROW_CAUTION,) if strips.narrow < _VERY_NARROW else ()),
        ),
        verdict=f"Rip ({'planed to' if given.clean_up else 'for strips of'} "
        f"{show.brief(strips.wide)} and {show.brief(strips.narrow)})",
    )


def _solved(given, show):
    lost, back, thick = given.kerf + 2 * given.clean_up, given.set_back, given.thickness
    wide = given.wide if given.board is None else (given.board - lost + back) / 2
    narrow = wide - back
    least_board = show.rounded(2 * given.least + back + lost, "reach")
    _refuse_too_narrow(given, show, narrow, least_board)
    together = {"flat": (2 * thick, wide), "above": (wide + narrow, thick)}
    return _Strips(
        wide + narrow + lost if given.board is None else given.board,
        wide,
        narrow,
        wide + given.clean_up,
        *together.get(given.laid, (wide, 2 * thick)),
        least_board,
    )


def _refuse_too_narrow(given, show, narrow, least):
    if narrow >= given.least:
        return
    if given.board is None:
        raise Refusal(
            "impossible",
            f"The narrower strip would be {show.text(narrow) if narrow > 0 else 'nothing'}, and it "
            f"must be at least {show.text(given.least)}.",
            f"Make the wider strip {show.text(given.least + given.set_back)} or more, or the "
            "setback smaller.",
            field="wide",
        )
    raise Refusal(
        "impossible",
        f"A board {show.text(given.board)} wide leaves too little for the narrower strip, which "
        f"must be at least {show.text(given.least)}.",
        f"Start with a board {show.text(least.mark)} wide or wider, or use a smaller setback.",
        field="board",
    )


def _working(given, show, strips):
    wide, narrow = show.number(strips.wide), show.number(strips.narrow)
    back, planed = show.number(given.set_back), show.number(given.clean_up)
    plus_back = f" + {back}" if given.set_back else ""
    lost = [show.number(given.kerf), *([f"2 × {planed}"] if given.clean_up else [])]
    added, taken = " + ".join(lost), " − ".join(lost)
    if given.board is None:
        board = show.rounded(strips.board, "reach")
        first = f"Board: {wide} + {narrow} + {added}{show.equals(board)}"
    else:
        board = show.number(strips.board)
        first = f"Wider strip: ({board} − {taken}{plus_back}) ÷ 2{show.equals(strips.wide)}"
    least = show.number(given.least)
    return (
        first,
        f"Narrower strip: {wide} − {back}{show.equals(strips.narrow)}",
        f"Fence to blade, with what is planed off: {wide} + {planed}{show.equals(strips.setting)}",
        _assembled(given, show, strips),
        f"Smallest board: 2 × {least}{plus_back} + {added}{show.equals(strips.least_board)}",
    )


def _assembled(given, show, strips):
    thick, wide = show.number(given.thickness), show.number(strips.wide)
    two = f"{thick} + {thick}"
    if given.laid == "above":
        high = f"{wide} + {show.number(strips.narrow)}"
        return f"Together: {high}{show.equals(strips.height)} high, {thick} out"
    if given.laid == "flat":
        return f"Together: {two}{show.equals(strips.height)} high, {wide} out"
    return f"Together: {wide} high, {two}{show.equals(strips.projection)} out"


RECKONER = Reckoner(
    key="two_strips",
    title="Two strips from one board",
    asks="I shaped both edges of a board. Where do I rip it into two moldings?",
    words=(
        "rip two strips, rip, strip, rip molding, molding, fence, rip fence, kerf, both edges, "
        "set back, stack, build up, projection, narrow, starting width"
    ),
    order=250,
    job="molding",
    picture={"wood": "M3 28v-5q5-1 6-5t6-5h10q5 1 6 5t6 5v5z", "chalk": "M18 7v27M22 7v27"},
    basic=("board", "wide", "set_back", "thickness"),
    fields=(
        length(
            "board",
            "Board width",
            help="Both edges shaped, before you rip it.",
            least="1/4 in",
            most="4 ft",
            **blank("Figured from the wider strip."),
        ),
        length(
            "wide",
            "Wider strip",
            help="Finished width.",
            least="1/8 in",
            most="2 ft",
            **blank("Figured from the board."),
        ),
        length(
            "set_back",
            "Setback",
            help="How much narrower the second strip is. 0 if they match.",
            default="0 in",
            most="2 ft",
        ),
        length(
            "thickness",
            "Board thickness",
            default="3/4 in",
            metric="18 mm",
            least="1/16 in",
            most="6 in",
        ),
        kerf(),
        length(
            "clean_up",
            "To plane off",
            help="Extra on each ripped edge for planing. 0 for none.",
            default="0 in",
            most="1/2 in",
        ),
        length(
            "least",
            "Minimum strip width",
            help="As far as the profile reaches in, plus enough wood behind it to fasten.",
            default="3/4 in",
            metric="18 mm",
            least="1/8 in",
            most="2 ft",
        ),
        choice("laid", "Assembly", _LAID, pictures=STRIPS_LAID),
    ),
    answers=(
        Answer("rip_setting", "Fence to blade", must="agree"),
        Answer("wide", "Wider strip", must="agree"),
        Answer("narrow", "Narrower strip", must="agree"),
        Answer("board", "Board width", must="case"),
        Answer("height", "Assembled height", must="agree"),
        Answer("projection", "Assembled projection", must="agree"),
        Answer("least_board", "Minimum board width", must="reach"),
    ),
    source=(
        "Addition: board = both strips + kerf + what is planed off. Which strip goes against the "
        "fence and what counts as narrow: shop practice."
    ),
    compute=compute,
    example={
        "board": "6 1/4",
        "wide": "",
        "set_back": "5/8",
        "thickness": "3/4",
        "clean_up": "1/32",
        "least": "1 1/4",
        "laid": "flat",
    },
    solve_one_of=("board", "wide"),
)
