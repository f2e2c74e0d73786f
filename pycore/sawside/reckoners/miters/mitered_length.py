"""How long is a piece with mitered ends, when one line along it is known.

An end cut a degrees from square makes one edge longer than the other by across x tan(a), across
being the width for a flat miter and the thickness for an edge miter. A line that lies t of the
way from the inside to the outside is longer than the inside by t of both allowances.
"""

from fractions import Fraction

from sawside.drawing.lazy import lazy
from sawside.drawing.piece import Cut, mitered_piece
from sawside.errors import Refusal
from sawside.lengths.real import sign
from sawside.lengths.show import angle_text
from sawside.reckoners.declaration import (
    Answer,
    End,
    Part,
    Reckoner,
    Reckoning,
    choice,
    count,
    length,
)
from sawside.reckoners.miters.shared.corner_field import past_lines
from sawside.reckoners.miters.shared.end_fields import cut_end, end_fields
from sawside.wood.saw import cautions_at_the_saw


def compute(given, show):
    """The sides in inches, what each end adds, and the settings; all may be irrational."""
    ends = left, right = [cut_end(given, show, side) for side in ("left", "right")]
    total = left.adds + right.adds
    back = _part_way(given, show, ends)
    part_way = {"inside": Fraction(0), "outside": Fraction(1), "rabbet": back}[given.known_face]
    short_side = given.known - total * part_way
    long_side = short_side + total
    if sign(short_side) <= 0:
        raise Refusal(
            "impossible",
            f"The two ends meet: from the outside to the inside they take {show.text(total)}, and "
            f"the measured line is only {show.text(given.known)}.",
            "Measure a longer piece, or give a smaller width or angle.",
            field="known",
        )
    rabbet_side = None if back is None else short_side + total * back
    shortest = short_side
    if given.known_face == "rabbet":  # what is in the rabbet has to go in
        long_side, short_side = (show.rounded(each, "reach") for each in (long_side, short_side))
    picture = mitered_piece(
        show,
        given.width,
        long_side,
        short_side,
        [Cut(each.degrees, each.adds, each.way) for each in ends],
        given={"inside": "short", "outside": "long", "rabbet": None}[given.known_face],
        thickness=given.thickness,
        rabbet=None if back is None else (given.rabbet, rabbet_side),
    )
    part_ends = [End(each.cut, _setting(each.degrees), *each.set_up) for each in ends]
    return Reckoning(
        answers={
            "long_side": long_side,
            "short_side": short_side,
            **({} if back is None else {"rabbet_side": rabbet_side}),
            "left_allowance": left.adds,
            "right_allowance": right.adds,
            "left_setting": left.degrees,
            "right_setting": right.degrees,
            "left_corner": 90 - left.degrees,
            "right_corner": 90 - right.degrees,
            "left_cut": left.at_the_saw(),
            "right_cut": right.at_the_saw(),
        },
        working=_working(show, given, ends, back, long_side, short_side),
        drawing=picture,
        cautions=cautions_at_the_saw(shortest),
        parts=(
            Part(
                key="piece",
                name="Mitered piece",
                length=long_side,
                width=given.width,
                thickness=given.thickness,
                count=given.how_many,
                left=part_ends[0],
                right=part_ends[1],
                long_side=long_side,
                short_side=short_side,
                drawing=picture,
            ),
        ),
    )


def _part_way(given, show, ends):
    """How far the back of the rabbet lies from the inside (0) to the outside (1); None for none."""
    if given.rabbet is None:
        if given.known_face != "rabbet":
            return None
        raise Refusal(
            "missing",
            "The back of a rabbet was measured, and Rabbet is blank.",
            "Fill it in, or measure on the inside or the outside.",
            field="rabbet",
        )
    ways = {each.way for each in ends if each.degrees != 0}
    if len(ways) > 1:
        raise Refusal(
            "conflict",
            "With a miter at one end and an edge miter at the other, the back of a rabbet is not "
            "one line.",
            "Leave Rabbet blank, and measure on the inside or the outside.",
            field="rabbet",
        )
    across = given.thickness if ways == {"edge"} else given.width
    if given.rabbet >= across:
        raise Refusal(
            "impossible",
            f"A rabbet of {show.text(given.rabbet)} leaves nothing of stock of "
            f"{show.text(across)}.",
            f"Give a rabbet of less than {show.text(across)}.",
            field="rabbet",
        )
    return given.rabbet / across


def _setting(degrees):
    return f"{angle_text(degrees)} (saw set to {angle_text(degrees).removesuffix('°')})"


@lazy
def _working(show, given, ends, back, long_side, short_side):
    lines = [*past_lines(given, "left_corner", "right_corner")]
    lines += [each for each in (end.worked(show) for end in ends) if each]
    adds = [each.adds for each in ends if each.degrees != 0]
    start = show.number(given.known)
    total = sum(adds, Fraction(0))
    if given.known_face != "rabbet":
        inside = given.known_face == "inside"
        added = "".join(f" {'+' if inside else '−'} {show.number(each)}" for each in adds)
        what, result = ("Long", long_side) if inside else ("Short", short_side)
        lines.append(f"{what} side: {start}{added}{show.equals(result)}")
        start = show.number(short_side)
    if back is None:
        return tuple(lines)
    lines.append(
        f"The back of the rabbet lies {show.number(given.rabbet)} from the inside, "
        f"{show.pure(back)} of the way to the outside; of {show.number(total)} that is "
        f"{show.number(total * back)}"
    )
    if given.known_face != "rabbet":
        steps = (("Back of the rabbet", "+", total * back, short_side + total * back),)
    else:
        steps = (
            ("Short side", "−", total * back, short_side),
            ("Long side", "+", total * (1 - back), long_side),
        )
    for what, way, change, result in steps:
        lines.append(f"{what}: {start} {way} {show.number(change)}{show.equals(result)}")
    return tuple(lines)


def _way(side):
    return lambda given: "tilted" if getattr(given, f"{side}_end") == "edge" else "turned"


RECKONER = Reckoner(
    key="mitered_length",
    title="Mitered length",
    asks="How long is a piece with mitered ends, when one side of it is known?",
    words=(
        "miter, frame, rail, trim, molding, long side, outside, inside, 45, bevel, edge miter, "
        "rabbet, unequal, cut length"
    ),
    order=200,
    fields=(
        length(
            "known",
            "Measured length",
            help="Between the two corners of the line that you measured.",
            least="1/64 in",
        ),
        choice(
            "known_face",
            "Measured on",
            {
                "inside": "Inside, the short side",
                "outside": "Outside, the long side",
                "rabbet": "Back of the rabbet",
            },
            help="The other lines are worked out from this one.",
        ),
        length(
            "width",
            "Stock width",
            help="Across the face that shows the angled cut.",
            least="1/64 in",
            most="4 ft",
        ),
        *end_fields("left"),
        *end_fields("right"),
        length(
            "thickness",
            "Stock thickness",
            help="Across the edge: what an edge miter cuts through.",
            least="1/64 in",
            most="1 ft",
            may_be_blank=True,
            blank_means="Only an edge miter needs it.",
        ),
        length(
            "rabbet",
            "Rabbet",
            help="From the inside to the back of the rabbet, the way that the miter cuts.",
            least="1/64 in",
            most="4 ft",
            may_be_blank=True,
            blank_means="No rabbet.",
        ),
        count(
            "how_many", "How many", help="All of one length.", default="1", least="1", most="100"
        ),
    ),
    answers=(
        Answer("long_side", "Long side", must="case"),
        Answer("short_side", "Short side", must="case"),
        Answer("rabbet_side", "At the back of the rabbet", must="agree"),
        Answer("left_allowance", "Left end adds", must="agree"),
        Answer("right_allowance", "Right end adds", must="agree"),
        Answer("left_setting", "Left saw setting", "angle", sets=_way("left")),
        Answer("right_setting", "Right saw setting", "angle", sets=_way("right")),
        Answer("left_corner", "Left angle between edge and cut", "angle"),
        Answer("right_corner", "Right angle between edge and cut", "angle"),
        Answer("left_cut", "Left end at the saw", "text"),
        Answer("right_cut", "Right end at the saw", "text"),
    ),
    source=(
        "At 45° a mitered end adds the width of the stock: common practice, no source. At other "
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
