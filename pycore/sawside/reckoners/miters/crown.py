"""A piece of crown or other sprung molding: its compound cuts, and where its edges are marked.

In its place the molding leans out from the wall by its spring. Each miter lies in the plane that
halves the corner; the bottom edge lies on the wall line, the top edge stands out by the
projection, which is what the corner adds to it or takes off.
"""

from fractions import Fraction

from sawside.drawing.miters.compound import crown_drawing, face_view
from sawside.errors import Refusal
from sawside.geometry.compound import lean_of_degrees, miter_and_tilt
from sawside.geometry.miter import half_corner
from sawside.lengths.real import nearby
from sawside.lengths.show import angle_equals, angle_text, degrees_text
from sawside.reckoners.declaration import Answer, End, Part, Reckoner, Reckoning, choice, length
from sawside.reckoners.miters.shared.compound_saw import OTHER, TILTS, steps
from sawside.reckoners.miters.shared.corner_field import corner_field, past_lines
from sawside.reckoners.miters.shared.crown_cuts import (
    EDGES,
    KINDS,
    cut_of,
    edges_of,
    end_text,
    flat_text,
    held_text,
)
from sawside.reckoners.miters.shared.crown_spring import (
    FIELDS,
    spring_degrees,
    spring_of,
    spring_text,
)
from sawside.wood.saw import cautions_at_the_saw

_SIDES = ("left", "right")
_CAUTIONS = (
    "The molding must seat on wall and ceiling. Where the wall is not plumb or the ceiling not "
    "level its spring changes: hold an offcut in its place, measure drop and projection there, and "
    "cut two short test pieces first.",
    "Upside down in its place the molding needs stops that keep it from sliding; use those that "
    "the saw's maker describes.",
)


def compute(given, show):
    """The settings in degrees, and the two edges in inches where a length was measured."""
    if given.ceiling == "sloped":
        raise Refusal(
            "impossible",
            "Crown that climbs a sloped ceiling meets a level run only with another profile, or "
            "with a transition piece between them, and neither is reckoned here.",
            "Run it level, below the slope, and choose a level ceiling.",
            field="ceiling",
        )
    spring = spring_of(given, show)
    cuts = [cut_of(given, spring, side) for side in _SIDES]
    made = [cut for cut in cuts if cut]
    if not made:
        raise Refusal(
            "impossible",
            "Both ends are square: there is no corner to cut for.",
            "Choose an inside or an outside corner at one end.",
            field="right_end",
        )
    first, *others = made
    answers = {"miter": first.miter, "tilt": first.tilt}
    for other in others:
        if other.corner != first.corner:
            answers |= {
                "right_miter": other.miter,
                "right_tilt": other.tilt,
                "right_held": half_corner(other.corner),
            }
    edges = edges_of(given, show, spring, made)
    if edges:
        tips = show.rounded(_tip_to_tip(cuts, edges), "reach")
        answers |= {"tips": tips, "top": edges["top"], "bottom": edges["bottom"]}
    for cut in made:
        answers |= {f"{cut.side}_flat": flat_text(cut), f"{cut.side}_up": held_text(cut)}
    answers |= {"held": half_corner(first.corner), "spring": spring.lean.degrees}
    if spring.width is not None:
        answers |= {"width": spring.width, "drop": spring.drop, "projection": spring.projection}
    face = _face(given, show, spring, cuts, edges)
    words = _words(spring, cuts, edges, show)
    reach = (
        (None, None)
        if spring.width is None
        else (
            (show.brief(spring.drop), _role(given, "drop")),
            (show.brief(spring.projection), _role(given, "projection")),
        )
    )
    short = edges.values() if edges else ()
    return Reckoning(
        answers=answers,
        working=tuple(_working(given, show, spring, made, edges)),
        drawing=crown_drawing(
            words, float(nearby(spring.lean.degrees)), (spring_text(spring), *reach), face
        ),
        cautions=(*cautions_at_the_saw(*short), *_CAUTIONS),
        parts=(_part(spring, cuts, edges, tips, face_view(words, face)),) if edges else (),
    )


def _working(given, show, spring, cuts, edges):
    yield from past_lines(given, *(f"{cut.side}_corner" for cut in cuts))
    yield from spring.working
    degrees = spring_degrees(spring)
    sine, cosine = show.pure(spring.lean.sine), show.pure(spring.lean.cosine)
    for corner in dict.fromkeys(cut.corner for cut in cuts):
        cut = next(each for each in cuts if each.corner == corner)
        half = degrees_text(corner / 2)
        yield (
            f"Turned: arctan (sin {degrees} ÷ tan {half}°) = arctan ({sine} ÷ tan {half}°)"
            f"{angle_equals(cut.miter)}"
        )
        yield (
            f"Tilted: arcsin (cos {degrees} × cos {half}°) = arcsin ({cosine} × cos {half}°)"
            f"{angle_equals(cut.tilt)}"
        )
        yield (
            f"Held in its place: 90 − {show.pure(corner)} ÷ 2 = {degrees_text(half_corner(corner))}"
        )
        miter, tilt = miter_and_tilt(lean_of_degrees(nearby(spring.lean.degrees) + 1), corner)
        yield (
            f"One degree more of spring would be turned {angle_text(miter, 2)}, tilted "
            f"{angle_text(tilt, 2)}"
        )
    if not edges:
        return
    reach = show.number(spring.projection)
    if given.found in ("angle", "drop"):
        width = show.number(spring.width)
        yield f"Projection: {width} × sin {degrees}{show.equals(spring.projection)}"
    known, other = given.measured_on, OTHER[given.measured_on]
    steps = show.number(given.measured)
    for cut in cuts:
        sign_ = "+" if (cut.kind == "outside") == (known == "bottom") else "−"
        steps += f" {sign_} {show.number(abs(cut.adds))}"
        yield (
            f"{cut.side.capitalize()} end, {cut.kind} corner: {reach} ÷ tan "
            f"{degrees_text(cut.corner / 2)}°{show.equals(abs(cut.adds))}"
        )
    yield f"{EDGES[other].capitalize()}: {steps}{show.equals(edges[other])}"
    out = "".join(f" + {show.number(cut.adds)}" for cut in cuts if cut.kind == "outside")
    tips = show.rounded(_tip_to_tip(cuts, edges), "reach")
    yield f"From tip to tip: {show.number(edges['bottom'])}{out}{show.equals(tips)}"


def _role(given, leg):
    return "given" if given.found in ("legs", leg) else "answer"


def _face(given, show, spring, cuts, edges):
    texts = [
        (
            f"{EDGES[edge]} {show.brief(edges[edge])}" if edges else EDGES[edge],
            "given" if edges and given.measured_on == edge else "answer",
        )
        for edge in ("top", "bottom")
    ]
    ends = [(float(nearby(cut.ratio)) if cut else 0, end_text(cut)) for cut in cuts]
    width = "" if spring.width is None else f"{show.brief(spring.width)} wide"
    return "face", texts, ends, width


def _words(spring, cuts, edges, show):
    ends = ", ".join(
        f"the {side} end {f'cut for an {cut.kind} corner at {end_text(cut)}' if cut else 'square'}"
        for side, cut in zip(_SIDES, cuts, strict=True)
    )
    long = "".join(f" The {EDGES[edge]} is {show.brief(edges[edge])}." for edge in edges or ())
    return (
        f"A molding leans out from the wall by {spring_text(spring)} and meets the ceiling with "
        f"its top edge. Its face as seen in the room: {ends}.{long}"
    )


def _tip_to_tip(cuts, edges):
    """The molding that a piece takes: neither edge, where one reaches further at each end."""
    out = (cut.adds for cut in cuts if cut and cut.kind == "outside")
    return edges["bottom"] + sum(out, Fraction(0))


def _part(spring, cuts, edges, whole, drawn):
    """The whole piece, `whole` inches from tip to tip."""
    ends = [
        End(
            "compound miter",
            f"{angle_text(cut.miter, 2)}, tilted {angle_text(cut.tilt, 2)}",
            cut.miter,
            cut.tilt,
            steps=steps(cut.laid, cut.miter, cut.tilt),
        )
        if cut
        else End("square", "0°")
        for cut in cuts
    ]
    long, short = edges["bottom"], edges["top"]
    if long < short:
        long, short = short, long
    return Part(
        key="piece",
        name="Crown",
        length=whole,
        width=spring.width,
        left=ends[0],
        right=ends[1],
        long_side=long,
        short_side=short,
        drawing=drawn,
    )


def _end_fields(side):
    return (
        choice(
            f"{side}_end",
            f"{side.capitalize()} end",
            KINDS,
            help="As you face the molding in its place.",
        ),
        corner_field(
            f"{side}_corner",
            f"Corner at the {side} end",
            least=20,
            shown_when=(f"{side}_end", ("inside", "outside")),
        ),
    )


RECKONER = Reckoner(
    key="crown",
    title="Crown molding",
    asks="How is crown under a level ceiling cut, flat or held in its place, and how long is it?",
    words=(
        "crown, cornice, cove, sprung molding, spring angle, compound miter, bevel, tilt, ceiling,"
        " top of the cabinet, bed molding, inside corner, outside corner, upside down, flat on the"
        " table, 52/38, sloped ceiling"
    ),
    order=262,
    fields=(
        *FIELDS,
        *_end_fields("left"),
        *_end_fields("right"),
        choice(
            "measured_on",
            "Measured along",
            {"bottom": "The bottom edge, on the wall", "top": "The top edge, at the ceiling"},
        ),
        length(
            "measured",
            "Length measured",
            least="1/4 in",
            may_be_blank=True,
            help="From corner to corner, or to the square end.",
            blank_means="Only the settings of the saw are told.",
        ),
        TILTS,
        choice(
            "ceiling",
            "Ceiling",
            {"level": "Level", "sloped": "Sloped"},
            help="Crown that climbs a slope is not reckoned.",
        ),
    ),
    answers=(
        Answer("miter", "Saw turned, molding flat", "angle", sets="turned"),
        Answer("tilt", "Blade tilted, molding flat", "angle", sets="tilted", with_turn="miter"),
        Answer("right_miter", "Saw turned for the right end", "angle", sets="turned"),
        Answer(
            "right_tilt",
            "Blade tilted for the right end",
            "angle",
            sets="tilted",
            with_turn="right_miter",
        ),
        Answer("tips", "From tip to tip: the molding it takes", must="reach"),
        Answer("top", "Top edge", must="agree"),
        Answer("bottom", "Bottom edge", must="agree"),
        Answer("left_flat", "Left end, flat on the table", "text"),
        Answer("right_flat", "Right end, flat on the table", "text"),
        Answer("held", "Saw turned, molding held in its place", "angle", sets="turned"),
        Answer("right_held", "Held in its place, right end", "angle", sets="turned"),
        Answer("left_up", "Left end, held upside down", "text"),
        Answer("right_up", "Right end, held upside down", "text"),
        Answer("spring", "Spring, from the wall", "angle"),
        Answer("width", "Face width", must="agree"),
        Answer("drop", "Drop down the wall", must="agree"),
        Answer("projection", "Projection along the ceiling", must="agree"),
    ),
    source=(
        "Turned: arctan (sin spring ÷ tan half the corner); tilted: arcsin (cos spring × cos half "
        "the corner): geometry of the plane that halves the corner. The settings printed for "
        "springs of 38 and 45 are common practice, no source."
    ),
    compute=compute,
    makes_parts=True,
    example={
        "found": "legs",
        "drop": "2 5/8",
        "projection": "2 1/16",
        "left_end": "outside",
        "left_corner": "90",
        "right_end": "inside",
        "right_corner": "89.5",
        "measured_on": "bottom",
        "measured": "37 9/16",
        "tilts": "left",
        "ceiling": "level",
    },
)
