"""The sides of a box or planter that lean outward or inward: cuts, edges and blanks.

All sides lean alike. Measures are those of the outside faces, between level rims; a side reaches
out by height x tan(slope), and at each end its wide edge is longer by that x tan(180 / sides).
"""

from fractions import Fraction

from sawside.drawing.miters.compound import box_drawing, face_view
from sawside.geometry.compound import butt_tilt, end_adds, miter_and_tilt
from sawside.lengths.real import nearby, sign
from sawside.lengths.show import angle_equals, angle_text, degrees_text
from sawside.reckoners.declaration import (
    Answer,
    End,
    Part,
    Reckoner,
    Reckoning,
    angle,
    choice,
    count,
    length,
)
from sawside.reckoners.miters.shared.compound_saw import OTHER, TILTS, lay, steps, told
from sawside.reckoners.miters.shared.sloped_sides import check, lean_of, sides_of
from sawside.wood.saw import cautions_at_the_saw

_EDGES = {"top": "top edge", "bottom": "bottom edge"}
_CLAMP = (
    "Sides that lean slide as they are clamped: glue blocks or tape hold them (common practice, no "
    "source). Prove the joint on short pieces of scrap.",
)


def compute(given, show):
    """Settings in degrees; edges of the outside faces and blanks in inches."""
    check(given)
    corner = 180 - Fraction(360, given.sides)
    lean, out = lean_of(given)
    miter, mitered = miter_and_tilt(lean, corner)
    butt = given.joint == "butt"
    tilt = butt_tilt(lean, corner) if butt else mitered
    slant = given.height / lean.cosine
    adds = end_adds(out, corner)
    through = given.thickness / lean.cosine
    sides = sides_of(given, show, adds, through if butt else Fraction(0))
    # The wide edge of the inside of a butted side rises past the outside's where edges are square.
    more = 2 * given.thickness * lean.sine * out / given.height if butt else Fraction(0)
    blanks = [(each.name, _ample(show, max(each.top, each.bottom) + more)) for each in sides]
    width = _ample(show, slant + given.thickness * out / given.height)
    wide = given.wide
    laid = [lay(end, wide == "top", not butt, given.tilts, wide) for end in ("left", "right")]
    ends = [told(each, miter, tilt, _EDGES) for each in laid]
    face = _face(given, show, sides[0], miter, tilt, slant, adds)
    words = _words(given, show, sides[0], lean, slant, miter, tilt)
    return Reckoning(
        answers={
            "miter": miter,
            "tilt": tilt,
            "top": [(each.name, each.top) for each in sides],
            "bottom": [(each.name, each.bottom) for each in sides],
            "slant": slant,
            "blank_width": width,
            "blanks": blanks,
            "edge": lean.degrees,
            "slope": lean.degrees,
            "left": f"Outside face up: {ends[0]}",
            "right": f"Outside face up: {ends[1]}",
        },
        working=tuple(
            _working(
                given, show, lean, corner, out, slant, adds, miter, tilt, through, sides, width
            )
        ),
        drawing=box_drawing(
            words,
            float(nearby(lean.degrees)),
            (
                f"slope {angle_text(lean.degrees, 2)}",
                show.brief(given.height),
                f"face {show.brief(slant)}",
                wide == "top",
            ),
            face,
        ),
        cautions=(*cautions_at_the_saw(*(min(s.top, s.bottom) for s in sides)), *_CLAMP),
        parts=tuple(
            _part(given, show, side, blank[1], width, miter, tilt, slant, lean, adds, laid)
            for side, blank in zip(sides, blanks, strict=True)
        ),
    )


def _ample(show, blank):
    """A blank on the next mark up: it is never too small."""
    return show.rounded(blank, "reach")


def _working(given, show, lean, corner, out, slant, adds, miter, tilt, through, sides, width):
    slope, high = f"{degrees_text(lean.degrees)}°", show.number(given.height)
    turn = degrees_text(90 - corner / 2)
    if given.found == "reach":
        yield f"Slope: arctan ({show.number(out)} ÷ {high}){angle_equals(lean.degrees)}"
    sine, cosine = show.pure(lean.sine), show.pure(lean.cosine)
    yield (
        f"Turned: arctan (sin {slope} × tan {turn}°) = arctan ({sine} × tan {turn}°)"
        f"{angle_equals(miter)}"
    )
    if given.joint == "butt":
        yield f"Tilted, butt joint: arcsin ((sin {slope})²) = arcsin ({sine}²){angle_equals(tilt)}"
    else:
        yield (
            f"Tilted: arcsin (cos {slope} × sin {turn}°) = arcsin ({cosine} × sin {turn}°)"
            f"{angle_equals(tilt)}"
        )
    yield f"Face: {high} ÷ cos {slope}{show.equals(slant)}"
    if given.found == "slope":
        yield f"A side reaches out {high} × tan {slope}{show.equals(out)}"
    yield f"Each end of the wide edge: {show.number(out)} × tan {turn}°{show.equals(adds)}"
    if given.joint == "butt":
        yield (
            f"A side between loses at each end {show.number(given.thickness)} ÷ cos {slope}"
            f"{show.equals(through)}"
        )
    for side in sides:
        narrow, wide = sorted((side.top, side.bottom), key=nearby)
        yield (
            f"{side.name}: {show.number(narrow)} + 2 × {show.number(adds)} = {show.number(wide)}; "
            f"top {show.text(side.top)}, bottom {show.text(side.bottom)}"
        )
    yield (
        f"Width of the blank: {show.number(slant)} + {show.number(given.thickness)} × tan {slope}"
        f"{show.equals(width)}, so that both edges can be tilted to lie level"
    )


def _end_text(miter, tilt):
    return f"{angle_text(miter)}, tilt {angle_text(tilt)}"


def _face(given, show, side, miter, tilt, slant, adds):
    roles = {given.size_at: "given", OTHER[given.size_at]: "answer"}
    texts = [
        (f"{edge} {show.brief(getattr(side, edge))}", roles[edge]) for edge in ("top", "bottom")
    ]
    ratio = float(nearby(adds / slant)) * (1 if given.wide == "top" else -1)
    ends = [(ratio, _end_text(miter, tilt))] * 2
    return side.name.lower(), texts, ends, f"{show.brief(slant)} wide"


def _words(given, show, side, lean, slant, miter, tilt):
    return (
        f"A side leans {angle_text(lean.degrees, 2)} from upright, the {given.wide} of the box the "
        f"wider. Outside face of {side.name.lower()}: {show.brief(side.top)} long at the top, "
        f"{show.brief(side.bottom)} at the bottom, {show.brief(slant)} wide; both ends at "
        f"{_end_text(miter, tilt)}."
    )


def _part(given, show, side, blank, width, miter, tilt, slant, lean, adds, laid):
    text = f"{angle_text(miter, 2)}, tilted {angle_text(tilt, 2)}"
    left, right = (
        End("compound miter", text, miter, tilt, steps=steps(each, miter, tilt))
        if sign(miter)
        else End("edge miter" if sign(tilt) else "square", angle_text(tilt, 2), tilted=tilt)
        for each in laid
    )
    face = _face(given, show, side, miter, tilt, slant, adds)
    long, short = (side.top, side.bottom) if given.wide == "top" else (side.bottom, side.top)
    return Part(
        key=side.key,
        name=side.name,
        count=side.count,
        length=blank,
        width=width,
        thickness=given.thickness,
        left=left,
        right=right,
        long_side=long,
        short_side=short,
        drawing=face_view(_words(given, show, side, lean, slant, miter, tilt), face),
    )


RECKONER = Reckoner(
    key="sloped_box",
    title="Box with sloping sides",
    asks="How are the sides of a box that slopes cut, and what size are they?",
    words=(
        "sloped box, splayed, tapered, planter, tray, hopper, flared, pyramid, compound miter, "
        "blade tilt, gauge angle, bevel, sides, butt joint, slope"
    ),
    order=264,
    fields=(
        count("sides", "Sides", default="4", least="3", most="24"),
        choice("wide", "Wider at", {"top": "The top", "bottom": "The bottom"}),
        length(
            "height",
            "Height",
            help="Straight up, from level rim to level rim.",
            least="1/4 in",
            most="10 ft",
        ),
        choice("found", "Slope known by", {"slope": "Its angle", "reach": "Its reach"}),
        angle(
            "slope",
            "Slope, from upright",
            help="0 is an upright side.",
            most="85",
            shown_when=("found", ("slope",)),
        ),
        length(
            "reach",
            "Reach of one side",
            least="0 in",
            most="10 ft",
            help="How far the outside leans out, measured level over the whole height.",
            shown_when=("found", ("reach",)),
        ),
        choice("size_at", "Lengths are of", {"top": "The top", "bottom": "The bottom"}),
        length("size", "Length of a side", help="Outside, along the rim.", least="1/4 in"),
        length(
            "other",
            "Length of the other side",
            least="1/4 in",
            may_be_blank=True,
            help="Of a box with four sides that is longer one way.",
            blank_means="All sides are alike.",
        ),
        length("thickness", "Thickness", help="Of the boards.", least="1/64 in", most="6 in"),
        choice(
            "joint",
            "Joints",
            {"miter": "Mitered", "butt": "Butted"},
            help="Butted: two sides run through, the other two stand between them.",
        ),
        TILTS,
    ),
    answers=(
        Answer("miter", "Saw or gauge turned, from square", "angle", sets="turned"),
        Answer("tilt", "Blade tilted", "angle", sets="tilted", with_turn="miter"),
        Answer("top", "Top edge, outside", "lengths", must="agree"),
        Answer("bottom", "Bottom edge, outside", "lengths", must="agree"),
        Answer("slant", "Width of the outside face", must="agree"),
        Answer("blank_width", "Width of a blank", must="reach"),
        Answer("blanks", "Length of a blank", "lengths", must="reach"),
        Answer("edge", "Edges tilted to lie level", "angle", sets="tilted"),
        Answer("slope", "Slope, from upright", "angle"),
        Answer("left", "Left end", "text"),
        Answer("right", "Right end", "text"),
    ),
    source=(
        "Turned: arctan (sin slope × tan (180 ÷ sides)); tilted: arcsin (cos slope × sin (180 ÷ "
        "sides)), or arcsin (sin² slope) for a butt joint of four sides: solid geometry."
    ),
    compute=compute,
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
