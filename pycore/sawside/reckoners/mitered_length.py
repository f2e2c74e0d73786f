"""How long is the long side of a piece with mitered ends, when one side is known.

An end cut a degrees from square makes one edge longer than the other by width x tan(a); at 45
degrees by the width itself.
"""

from sawside.drawing.piece import Cut, mitered_piece
from sawside.errors import Refusal
from sawside.geometry.angles import tangent
from sawside.geometry.miter import allowance
from sawside.lengths.real import sign
from sawside.lengths.show import angle_text
from sawside.reckoners.declaration import (
    Answer,
    End,
    Part,
    Reckoner,
    Reckoning,
    angle,
    choice,
    length,
)

_ENDS = {"square": "Square", "45": "45° miter", "other": "Another angle"}
_SHORTEST_TO_HOLD = 8
_CAUTIONS = (
    "Unplug the saw before changing a setting or clearing a jam, and follow its maker's "
    "instructions first.",
    "Prove a new setting on scrap of the same width before cutting the piece.",
)
_SHORT_CAUTION = (
    "This piece is short. Keep hands at least 6″ from the blade: cut it from a longer length, or "
    "clamp it (common practice, no source)."
)


def _end(side):
    return (
        choice(f"{side}_end", f"{side.capitalize()} end", _ENDS, default="45"),
        angle(
            f"{side}_angle",
            f"{side.capitalize()} angle",
            help="From square, as on the saw's scale: 0 is a square cut.",
            most="80",
            shown_when=(f"{side}_end", ("other",)),
        ),
    )


def compute(given, show):
    """Long and short side in inches, and what each end adds; the sides may be irrational."""
    angles = [
        _degrees(given.left_end, given.left_angle),
        _degrees(given.right_end, given.right_angle),
    ]
    left, right = (allowance(given.width, each) for each in angles)
    inside = given.known_face == "inside"
    long_side = given.known + left + right if inside else given.known
    short_side = given.known if inside else given.known - left - right
    if sign(short_side) <= 0:
        raise Refusal(
            "impossible",
            f"The two ends meet: they take {show.text(left + right)}, and the long side is only "
            f"{show.text(given.known)}.",
            "Measure a longer piece, or give a smaller width or angle.",
            field="known",
        )
    cuts = [Cut(*each) for each in zip(angles, (left, right), strict=True)]
    given_side = "short" if inside else "long"
    picture = mitered_piece(show, given.width, long_side, short_side, cuts, given=given_side)
    ends = [End("flat miter" if each else "square", _setting(each)) for each in angles]
    cautions = _CAUTIONS + ((_SHORT_CAUTION,) if short_side < _SHORTEST_TO_HOLD else ())
    return Reckoning(
        answers={
            "long_side": long_side,
            "short_side": short_side,
            "left_allowance": left,
            "right_allowance": right,
            "left_setting": angles[0],
            "right_setting": angles[1],
            "left_corner": 90 - angles[0],
            "right_corner": 90 - angles[1],
        },
        working=_working(show, given, angles, (left, right), long_side, short_side),
        drawing=picture,
        cautions=cautions,
        parts=(
            Part(
                key="piece",
                name="Mitered piece",
                length=long_side,
                width=given.width,
                left=ends[0],
                right=ends[1],
                long_side=long_side,
                short_side=short_side,
                drawing=picture,
            ),
        ),
    )


def _degrees(end, typed):
    return {"square": 0, "45": 45}.get(end, typed)


def _setting(degrees):
    return f"{angle_text(degrees)} (saw set to {angle_text(degrees).rstrip('°')})"


def _working(show, given, angles, allowances, long_side, short_side):
    width = show.number(given.width)
    lines = [
        f"{side} end at {angle_text(degrees)}: {width} × tan {show.pure(degrees)}° = "
        f"{width} × {show.pure(tangent(degrees))}{show.equals(adds)}"
        for side, degrees, adds in zip(("Left", "Right"), angles, allowances, strict=True)
        if degrees not in (0, 45)
    ]
    if 45 in angles:
        lines.append(f"A 45° end adds the width of the stock: {width}")
    inside = given.known_face == "inside"
    added = "".join(f" {'+' if inside else '−'} {show.number(each)}" for each in allowances if each)
    result = long_side if inside else short_side
    what = "Long side" if inside else "Short side"
    lines.append(f"{what}: {show.number(given.known)}{added}{show.equals(result)}")
    return tuple(lines)


RECKONER = Reckoner(
    key="mitered_length",
    title="Mitered length",
    asks="How long is a piece with mitered ends, when one side of it is known?",
    words=("miter", "frame", "rail", "trim", "molding", "long side", "outside", "inside", "45"),
    order=10,
    fields=(
        length(
            "known",
            "Measured length",
            help="Between the two corners of the side that you measured.",
            least="1/64 in",
        ),
        choice(
            "known_face",
            "Measured on",
            {"inside": "Inside, the short side", "outside": "Outside, the long side"},
        ),
        length(
            "width",
            "Stock width",
            help="Across the face that shows the angled cut.",
            least="1/64 in",
            most="4 ft",
        ),
        *_end("left"),
        *_end("right"),
    ),
    answers=(
        Answer("long_side", "Long side"),
        Answer("short_side", "Short side"),
        Answer("left_allowance", "Left end adds"),
        Answer("right_allowance", "Right end adds"),
        Answer("left_setting", "Left saw setting", "angle"),
        Answer("right_setting", "Right saw setting", "angle"),
        Answer("left_corner", "Left angle between edge and cut", "angle"),
        Answer("right_corner", "Right angle between edge and cut", "angle"),
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
