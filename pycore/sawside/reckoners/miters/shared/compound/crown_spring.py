"""The spring of a molding: given, or found from two of drop, projection and face width."""

from dataclasses import dataclass

from sawside.errors import Refusal
from sawside.geometry.compound import Lean, lean_of_degrees, lean_of_legs, lean_of_square
from sawside.lengths.real import Exact, sqrt
from sawside.lengths.show import angle_equals, angle_text
from sawside.reckoners.fields import angle, choice, length

_LEAST, _MOST = 5, 85

CROWN = "Crown molding"
"""What a piece of it is sold as."""

FIELDS = (
    choice(
        "found",
        "Spring from",
        {
            "angle": "Spring angle",
            "legs": "Drop and projection",
            "drop": "Face width and drop",
            "projection": "Face width and projection",
        },
        help="Set an offcut in a framing square, seated on both flats, and read it.",
    ),
    angle(
        "spring",
        "Spring angle",
        help="Between the wall and the back of the crown: 52/38 crown springs 38.",
        shown_when=("found", ("angle",)),
    ),
    length(
        "drop",
        "Drop",
        help="Down the wall, from the ceiling to the bottom edge.",
        least="1/16 in",
        most="3 ft",
        shown_when=("found", ("legs", "drop")),
    ),
    length(
        "projection",
        "Projection",
        help="Along the ceiling, from the wall to the top edge.",
        least="1/16 in",
        most="3 ft",
        shown_when=("found", ("legs", "projection")),
    ),
    length(
        "width",
        "Face width",
        help="Straight across, edge to edge, with the crown flat on the table.",
        least="1/16 in",
        most="4 ft",
        shown_when=("found", ("angle", "drop", "projection")),
        may_be_blank=True,
        blank_means="You get the saw settings only.",
    ),
)


@dataclass(frozen=True, slots=True)
class Spring:
    """The lean from the wall; the face's width, the drop down the wall and the projection along the
    ceiling in inches, None where they are not known; and how they were found."""

    lean: Lean
    width: Exact | None
    drop: Exact | None
    projection: Exact | None
    working: tuple[str, ...] = ()


def spring_of(given, show):
    """The spring of what was given; refused where it is not between 5 and 85 degrees."""
    spring = _FOUND[given.found](given, show)
    field = {"angle": "spring", "legs": "projection"}.get(given.found, given.found)
    degrees = spring.lean.degrees
    if degrees < _LEAST:
        raise Refusal(
            "impossible",
            f"A spring of {angle_text(degrees)} is under {_LEAST}°: the molding is nearly flat on "
            "the wall.",
            "Use Mitered length with bevels, or check the spring.",
            field=field,
        )
    if degrees > _MOST:
        raise Refusal(
            "impossible",
            f"A spring of {angle_text(degrees)} is over {_MOST}°: the molding is nearly flat on "
            "the ceiling.",
            "Use Mitered length with miters, or check the spring.",
            field=field,
        )
    return spring


def _by_angle(given, _show):
    lean, width = lean_of_degrees(given.spring), given.width
    reach = (None, None) if width is None else (width * lean.cosine, width * lean.sine)
    return Spring(lean, width, *reach)


def _by_legs(given, show):
    out, down = given.projection, given.drop
    lean = lean_of_legs(out, down)
    width = sqrt(out * out + down * down)
    far, deep = show.number(out), show.number(down)
    lines = (
        f"Spring: arctan ({far} ÷ {deep}){angle_equals(lean.degrees)}",
        f"Face width: √({far}² + {deep}²){show.equals(width)}",
    )
    return Spring(lean, width, down, out, lines)


def _by_width(given, show):
    leg = given.drop if given.found == "drop" else given.projection
    if given.width is None:
        raise Refusal("missing", "Face width is blank.", "Fill it in.", field="width")
    if leg >= given.width:
        raise Refusal(
            "impossible",
            f"The {given.found} of {show.text(leg)} must be less than the face width of "
            f"{show.text(given.width)}.",
            "Check both: the face runs at a slant from wall to ceiling.",
            field=given.found,
        )
    part = (leg / given.width) ** 2
    lean = lean_of_square(1 - part if given.found == "drop" else part)
    name = "arccos" if given.found == "drop" else "arcsin"
    line = (
        f"Spring: {name} ({show.number(leg)} ÷ {show.number(given.width)})"
        f"{angle_equals(lean.degrees)}"
    )
    rest = sqrt(given.width**2 - leg**2)
    reach = (leg, rest) if given.found == "drop" else (rest, leg)
    return Spring(lean, given.width, *reach, (line,))


_FOUND = {"angle": _by_angle, "legs": _by_legs, "drop": _by_width, "projection": _by_width}
