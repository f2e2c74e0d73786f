"""A piece whose size is known already: put into the list by hand, with its ends as they are cut."""

from dataclasses import replace
from fractions import Fraction

from sawside.drawing.piece import Cut, mitered_piece
from sawside.drawing.square_piece import square_piece
from sawside.errors import Refusal
from sawside.geometry.end import KEPT_PLACES
from sawside.geometry.mitered_end import MiteredEnd, end_of
from sawside.lengths.real import sign
from sawside.lengths.show import angle_text
from sawside.reckoners.declaration import Alike, Answer, End, Part, Reckoner, Reckoning
from sawside.reckoners.fields import Choice, Field, count, length
from sawside.reckoners.miters.shared.end_fields import cut_end, end_fields
from sawside.reckoners.miters.shared.field_bounds import ACROSS, THROUGH, blank
from sawside.wood.saw import cautions_at_the_saw


def compute(given, show):
    """The piece as it was given; its short side follows where both its ends are worked out."""
    ends = [_end(given, show, side) for side in ("left", "right")]
    cuts = [end for end in ends if isinstance(end, MiteredEnd)]
    square = all(end.degrees == 0 for end in cuts)
    short_side = given.length - sum((end.adds for end in cuts), Fraction(0))
    if sign(short_side) <= 0:
        raise Refusal(
            "impossible",
            f"The two ends meet: they take {show.text(given.length - short_side)}, and the piece "
            f"is only {show.text(given.length)} long.",
            "Use a longer piece, or smaller angles.",
            field="length",
        )
    picture = _picture(given, show, cuts, short_side)
    mitered = {} if square else {"long_side": given.length, "short_side": short_side}
    left, right = (_end_of_part(end) for end in ends)
    answers = {"length": given.length, "count": given.count}
    part = Part(
        key="piece",
        name="Piece",
        count=given.count,
        length=given.length,
        width=given.width,
        thickness=given.thickness,
        left=left,
        right=right,
        drawing=picture,
        **mitered,
    )
    return Reckoning(
        answers=answers if square else answers | {"short_side": short_side},
        working=(f"As you gave it: {show.number(given.length)}",),
        drawing=picture,
        cautions=cautions_at_the_saw(short_side),
        parts=(part,),
    )


def _picture(given, show, cuts, short_side):
    """The piece where its width is known, and both of its ends are square or both worked out."""
    if given.width is None:
        return None
    if all(end.degrees == 0 for end in cuts):
        return square_piece(show, "The piece", given.length, given.width, given=True)
    if len(cuts) < 2:
        return None
    return mitered_piece(
        show,
        given.width,
        given.length,
        short_side,
        [Cut(end.degrees, end.adds, end.way) for end in cuts],
        given="long",
        thickness=given.thickness,
    )


def _end(given, show, side):
    """An end worked out from its angle, or the words for it."""
    kind = getattr(given, f"{side}_end")
    if kind == "square":
        return end_of(side, "flat", 0, Fraction(0))
    if kind == "told":
        return getattr(given, f"{side}_told") or "as marked"
    if given.width is None and kind != "edge":
        raise Refusal(
            "missing",
            "A miter cuts across the width, and Stock width is blank.",
            "Fill it in, or choose another end.",
            field="width",
        )
    return cut_end(given, show, side)


def _end_of_part(end):
    if not isinstance(end, MiteredEnd):
        return End(end, "")
    return End(end.how, angle_text(end.degrees, KEPT_PLACES), *end.set_up)


def _end_fields(side):
    """The usual fields of an end, and its own words for one that is cut another way."""
    first, *others = end_fields(side)
    first = replace(first, default="square", choices=(*first.choices, Choice("told", "My words")))
    words = Field(
        "text",
        f"{side}_told",
        f"{side.capitalize()} end in words",
        help="As you want it in the list.",
        **blank("As marked."),
        shown_when=(f"{side}_end", ("told",)),
    )
    return (first, *others, words)


RECKONER = Reckoner(
    key="piece_by_hand",
    title="Piece of a known size",
    asks="How do I add a piece when I already know its size?",
    words=("cut list, add a piece, add a part, piece, part, by hand, known size, stock, board"),
    order=290,
    job="boxes and edges",
    picture={"wood": "M3 13h34v14H3z", "chalk": "M20 16v8M16 20h8"},
    offered=False,
    basic=("length", "count", "width", "thickness"),
    alike=(Alike(),),
    fields=(
        length("length", "Length", help="Long point, if an end is mitered.", least="1/64 in"),
        count("count", "How many", default="1", least="1"),
        length("width", "Stock width", **ACROSS, **blank("Only a miter needs it.")),
        length("thickness", "Stock thickness", **THROUGH, **blank("Only a bevel needs it.")),
        *_end_fields("left"),
        *_end_fields("right"),
    ),
    answers=(
        Answer("length", "Length", must="agree"),
        Answer("count", "How many", "count"),
        Answer("short_side", "Short point", must="agree"),
    ),
    source=(
        "As you give it; at 45° a mitered end takes the width of the stock: shop practice. At "
        "other angles width × tan(angle): plane trigonometry."
    ),
    compute=compute,
    verdict="Pieces to cut: {count}",
    example={"length": "33 9/16", "count": "2", "width": "2 1/4", "thickness": "3/4"},
    makes_parts=True,
)
