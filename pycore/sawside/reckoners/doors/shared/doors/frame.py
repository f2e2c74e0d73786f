"""The frame of a door: its stiles, rails and the openings between them. Inches, exact."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.fine import fine_text
from sawside.lengths.units import INCHES_PER, METRIC
from sawside.reckoners.doors.shared.doors.fields import FRAMED, GROOVED, LEAST_WIDTH

LEAST_INSIDE = Fraction(1, 2)
"""Of an opening in the frame, in inches: what is less has no panel."""
_PAST_TENON = {False: Fraction(1, 8), True: 3 * INCHES_PER["mm"]}
"""By whether it is metric: wood past a tenon. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Member:
    """So many alike in one door: `length` over all, `adds` of it at each end in a joint. `places`
    are where the lower left shoulder of each is in the door."""

    key: str
    name: str
    count: int
    length: Fraction
    width: Fraction
    adds: Fraction
    upright: bool
    places: tuple[tuple[Fraction, Fraction], ...]

    @property
    def shoulder(self):
        """From shoulder to shoulder."""
        return self.length - 2 * self.adds


@dataclass(frozen=True, slots=True)
class Frame:
    """One door's frame: its members, and its openings `inside`, which are all of one size."""

    width: Fraction
    height: Fraction
    stile: Fraction
    top: Fraction
    bottom: Fraction
    middle: Fraction
    members: tuple[Member, ...]
    inside: tuple[Fraction, Fraction]
    panels: int


def frame_of(given, show, doors):
    """The `Frame` of each door, or None of a slab; "impossible" where it can't be made."""
    if given.made not in FRAMED:
        return None
    wide, high = doors.across.cut, doors.up.cut
    stile, top, bottom, middle = _widths(given)
    across, down = wide - 2 * stile, high - top - bottom
    _check_inside(show, wide, across, stile, "stile", "stiles", "wide")
    rail = "bottom_rail" if given.bottom_rail is not None else "top_rail"
    _check_inside(
        show, high, down, (top + bottom) / 2, rail if _own(given) else "stile", "rails", "high"
    )
    _check_joint(given, show, (stile, top, bottom, middle))
    panels = (across, down)
    if middle:
        axis = 1 if given.middle == "rail" else 0
        one = (panels[axis] - middle) / 2
        _check_middle(show, panels[axis], one, middle)
        panels = (across, one) if axis else (one, down)
    members = tuple(_members(given, wide, high, (stile, top, bottom, middle), panels))
    return Frame(wide, high, stile, top, bottom, middle, members, panels, 2 if middle else 1)


def _own(given):
    return given.top_rail is not None or given.bottom_rail is not None


def _widths(given):
    """Of a stile, the top rail, the bottom rail, and the middle member, which may be 0."""
    rails = [given.stile if each is None else each for each in (given.top_rail, given.bottom_rail)]
    if given.middle in (None, "none"):
        return given.stile, *rails, Fraction(0)
    return given.stile, *rails, given.stile if given.middle_width is None else given.middle_width


def added(given):
    """What the joint adds to a rail at each end of its shoulders."""
    if given.joint in GROOVED:
        return given.groove if given.tongue is None else given.tongue
    return given.tenon if given.joint == "mortise" else Fraction(0)


def _members(given, wide, high, widths, inside):
    """Each kind of a door: stiles over its whole height, rails between or over them."""
    stile, top, bottom, middle = widths
    over, tenon = given.joint in ("miter", "lap"), added(given)
    adds = stile if over else tenon
    rail = wide - 2 * stile + 2 * adds
    yield Member(
        "stile", "Stile", 2, high, stile, Fraction(0), True, ((Fraction(0), 0), (wide - stile, 0))
    )
    low, head = (stile, Fraction(0)), (stile, high - top)
    if top == bottom:
        yield Member("rail", "Rail", 2, rail, top, adds, False, (low, head))
    else:
        yield Member("top_rail", "Top rail", 1, rail, top, adds, False, (head,))
        yield Member("bottom_rail", "Bottom rail", 1, rail, bottom, adds, False, (low,))
    if not middle:
        return
    if given.middle == "rail":
        place = (stile, bottom + inside[1])
        yield Member("middle_rail", "Middle rail", 1, rail, middle, adds, False, (place,))
        return
    more = (bottom, top) if over else (tenon, tenon)
    tall = high - top - bottom + sum(more)
    place = (stile + inside[0], bottom)
    yield Member("middle_stile", "Middle stile", 1, tall, middle, sum(more) / 2, True, (place,))


def _check_inside(show, whole, left, wood, field, noun, way):
    if left >= LEAST_INSIDE:
        return
    most = show.rounded(whole - LEAST_INSIDE, "stay under")
    raise Refusal(
        "impossible",
        f"The {noun} {show.text(wood)} wide leave less than {show.text(LEAST_INSIDE)} of a door "
        f"{show.text(whole)} {way}.",
        f"Make two together {show.text(most)} at most, or the door bigger.",
        field=field,
    )


def _check_middle(show, whole, one, middle):
    """Something has to be left of the frame's inside on both sides of a middle member."""
    if one >= LEAST_INSIDE:
        return
    most = show.rounded(whole - 2 * LEAST_INSIDE, "stay under")
    raise Refusal(
        "impossible",
        f"A middle member {show.text(middle)} wide leaves openings under "
        f"{show.text(LEAST_INSIDE)} in a frame {show.text(whole)} inside.",
        f"Make it {show.text(most)} at most."
        if most.mark >= LEAST_WIDTH
        else "Leave it out, or make the door bigger.",
        field="middle_width",
    )


def _check_joint(given, show, widths):
    stile, top, bottom, middle = widths
    narrow = min(each for each in widths if each)
    if given.groove >= narrow / 2:
        raise Refusal(
            "impossible",
            f"A groove or rabbet {show.text(given.groove)} deep takes half or more of a member "
            f"{show.text(narrow)} wide.",
            f"Make it less than {show.text(narrow / 2)}.",
            field="groove",
        )
    if given.joint in GROOVED and added(given) > given.groove:
        raise Refusal(
            "impossible",
            f"A {show.text(given.tongue)} tongue hits the bottom of a groove "
            f"{show.text(given.groove)} deep before the shoulder closes.",
            f"Make it {show.text(given.groove)} at most.",
            field="tongue",
        )
    if given.joint == "miter" and not stile == top == bottom:
        raise Refusal(
            "impossible",
            f"Rails {show.text(top)} and {show.text(bottom)} wide don’t meet stiles "
            f"{show.text(stile)} wide in a 45° miter.",
            "Make stiles and rails one width, or pick another joint.",
            field="top_rail" if given.top_rail is not None else "bottom_rail",
        )
    _check_rabbet(given, show, min(stile, top, bottom))
    if given.joint == "mortise":
        _check_tenon(given, show, stile, min(top, bottom), middle)


def _check_rabbet(given, show, narrow):
    """A lip's rabbet may not meet the groove on the other edge."""
    if given.fit == "lipped" and given.lip_rabbet + given.groove >= narrow:
        raise Refusal(
            "impossible",
            f"A lip rabbet {show.text(given.lip_rabbet)} wide cuts into the groove of a member "
            f"{show.text(narrow)} wide.",
            f"Make it less than {show.text(narrow - given.groove)}, or use a wider member.",
            field="lip_rabbet",
        )


def _check_tenon(given, show, stile, rail, middle):
    least = _PAST_TENON[show.settings.unit in METRIC]
    past = ""
    if given.fit == "lipped":
        least, past = least + given.lip_rabbet, ", the lip’s rabbet included"
    entered = [("stile", stile)] + ([("rail", rail)] if middle and given.middle == "stile" else [])
    name, width = min(entered, key=lambda each: each[1])
    if given.tenon + least > width:
        most = max(width - least, Fraction(0))
        raise Refusal(
            "impossible",
            f"A {show.text(given.tenon)} tenon comes too near the far edge of a {name} "
            f"{show.text(width)} wide: leave {fine_text(least, show)} or more past "
            f"it{past} (shop practice).",
            f"Make it {show.text(show.rounded(most, 'stay under'))} at most.",
            field="tenon",
        )
