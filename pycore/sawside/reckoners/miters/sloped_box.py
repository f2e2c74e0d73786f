"""The sides of a box or planter that lean outward or inward: cuts, edges and blanks.

All sides lean alike. Measures are those of the outside faces, between level rims; a side reaches
out by height x tan(slope), and at each end its wide edge is longer by that x tan(180 / sides).
"""

from sawside.drawing.choices.joints import BOX_CORNERS
from sawside.reckoners.declaration import Answer, Part, Reckoner, Reckoning
from sawside.reckoners.fields import angle, choice, count, length
from sawside.reckoners.miters.shared.compound.saw import TILTS
from sawside.reckoners.miters.shared.compound.sloped_sides import box_of
from sawside.reckoners.miters.shared.compound.sloped_words import (
    picture_of_box,
    picture_of_side,
    working_of,
)
from sawside.wood.saw import cautions_at_the_saw

_CLAMP = (
    "Sloping sides slide when you clamp them. Use glue blocks or tape, and test the joint on short "
    "scraps."
)


def compute(given, show):
    """Settings in degrees; edges of the outside faces and blanks in inches."""
    box = box_of(given, show)
    # A blank is told on the next mark up: it is never too small.
    width = show.rounded(box.blank_width, "reach")
    blanks = [show.rounded(long, "reach") for long in box.blank_lengths]
    left, right = box.cuts
    return Reckoning(
        answers={
            "miter": left.miter,
            "tilt": left.tilt,
            "top": [(side.name, side.top) for side in box.sides],
            "bottom": [(side.name, side.bottom) for side in box.sides],
            "slant": box.slant,
            "blank_width": width,
            "blanks": [(side.name, blank) for side, blank in zip(box.sides, blanks, strict=True)],
            "edge": box.lean.degrees,
            "slope": box.lean.degrees,
            "left": f"Outside face up: {left.at_the_saw}",
            "right": f"Outside face up: {right.at_the_saw}",
        },
        working=tuple(working_of(given, show, box, width)),
        drawing=picture_of_box(given, show, box),
        cautions=(*cautions_at_the_saw(*(min(s.top, s.bottom) for s in box.sides)), _CLAMP),
        parts=tuple(
            _part(given, show, box, side, blank, width)
            for side, blank in zip(box.sides, blanks, strict=True)
        ),
    )


def _part(given, show, box, side, blank, width):
    left, right = (cut.end for cut in box.cuts)
    wide_top = given.wide == "top"
    return Part(
        key=side.key,
        name=side.name,
        count=side.count,
        length=blank,
        width=width,
        thickness=given.thickness,
        left=left,
        right=right,
        long_side=side.top if wide_top else side.bottom,
        short_side=side.bottom if wide_top else side.top,
        drawing=picture_of_side(given, show, box, side),
    )


RECKONER = Reckoner(
    key="sloped_box",
    title="Box with sloping sides",
    asks="What miter, bevel and sizes do I need for a box with sloping sides?",
    words=(
        "planter box, planter, tapered box, splayed, splayed box, hopper, hopper cut, sloped, "
        "slanted, tray, flared, pyramid, compound miter, blade tilt, miter angle, gauge angle, "
        "bevel, sides, butted"
    ),
    order=264,
    job="boxes and edges",
    picture={"wood": "M3 9h34l-7 25H10z", "chalk": "M10 34V14M10 19h-4"},
    basic=("sides", "height", "slope", "reach", "size", "thickness"),
    fields=(
        count("sides", "Sides", default="4", least="3", most="24", in_short="{} sides"),
        choice("wide", "Wider at", {"top": "Top", "bottom": "Bottom"}),
        length("height", "Height", help="Straight up, rim to rim.", least="1/4 in", most="10 ft"),
        choice("found", "Slope from", {"slope": "Angle", "reach": "Reach of a side"}),
        angle(
            "slope",
            "Slope, from upright",
            help="0 is straight up.",
            most="85",
            shown_when=("found", ("slope",)),
        ),
        length(
            "reach",
            "Reach of one side",
            least="0 in",
            most="10 ft",
            help="How far the outside leans out over the full height, measured level.",
            shown_when=("found", ("reach",)),
        ),
        choice("size_at", "Lengths at", {"top": "Top", "bottom": "Bottom"}),
        length("size", "Length of a side", help="Outside face, along the rim.", least="1/4 in"),
        length(
            "other",
            "Length of the other side",
            least="1/4 in",
            may_be_blank=True,
            help="For a four-sided box that’s longer one way.",
            blank_means="All sides match.",
        ),
        length("thickness", "Board thickness", least="1/64 in", most="6 in"),
        choice(
            "joint",
            "Joints",
            {"miter": "Mitered", "butt": "Butted"},
            pictures=BOX_CORNERS,
            help="Butted: two sides run long, the other two fit between.",
        ),
        TILTS,
    ),
    answers=(
        Answer("miter", "Miter", "angle", sets="turned"),
        Answer("tilt", "Bevel", "angle", sets="tilted", with_turn="miter"),
        Answer("top", "Top edge, outside", "lengths", must="agree"),
        Answer("bottom", "Bottom edge, outside", "lengths", must="agree"),
        Answer("slant", "Outside face width", must="agree"),
        Answer("blank_width", "Blank width", must="reach"),
        Answer("blanks", "Blank length", "lengths", must="reach"),
        Answer("edge", "Bevel on the long edges", "angle", sets="tilted"),
        Answer("slope", "Slope, from upright", "angle"),
        Answer("left", "Left end", "text"),
        Answer("right", "Right end", "text"),
    ),
    source=(
        "Miter: arctan (sin slope × tan (180 ÷ sides)); bevel: arcsin (cos slope × sin (180 ÷ "
        "sides)), or arcsin (sin² slope) for a butt joint of four sides: solid geometry."
    ),
    compute=compute,
    verdict="Miter {miter}, bevel {tilt}",
    makes_parts=True,
    example={
        "sides": "4",
        "wide": "top",
        "height": "7 1/2",
        "found": "slope",
        "slope": "12",
        "size_at": "top",
        "size": "16 3/4",
        "other": "13 7/8",
        "thickness": "1/2",
        "joint": "miter",
        "tilts": "left",
    },
)
