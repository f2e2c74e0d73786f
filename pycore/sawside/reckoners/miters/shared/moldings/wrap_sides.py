"""The two sides of a wrap: what is asked of each, and the runs that follow from it."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.geometry.wrap import RIGHT_ANGLE, Joint, Leg, inside_corner, outside_corner
from sawside.reckoners.declaration import choice, length
from sawside.reckoners.miters.shared.corner_field import corner_field, corner_of
from sawside.reckoners.miters.shared.field_bounds import STRIP

_ENDINGS = {
    "wall": "Returns to the wall, square end",
    "board": "Returns to a baseboard",
    "self_return": "Ends with a mitered return",
    "none": "No return, square end",
}
_RETURNS = ("wall", "board", "self_return")


@dataclass(frozen=True, slots=True)
class Side:
    """What was filled in for one side; `ending` as in `_ENDINGS`."""

    name: str
    ending: str
    corner: Fraction | None
    depth: Fraction | None
    board: Fraction | None
    scribe: Fraction | None


def side_fields(side):
    """The fields of one side, "left" or "right"."""
    name, ending = side.capitalize(), f"{side}_side"
    as_left = side == "right"
    return (
        choice(ending, f"{name} side", _ENDINGS),
        corner_field(
            f"{side}_corner",
            f"{name} corner",
            "the two sides of the case, or the two walls of an alcove",
            least=30,
            shown_when=(ending, _RETURNS),
        ),
        length(
            f"{side}_depth",
            f"{name} depth",
            help="Along the side, from the corner to the wall or where the molding ends.",
            least="1/64 in",
            may_be_blank=as_left,
            blank_means="Same as the left side." if as_left else None,
            shown_when=(ending, _RETURNS),
        ),
        length(
            f"{side}_board",
            f"Baseboard at the {side}",
            help="Thickness of the baseboard or other board it meets.",
            **STRIP,
            shown_when=(ending, ("board",)),
        ),
        length(
            f"{side}_scribe",
            f"To scribe at the {side}",
            help="Extra at the square end to scribe to the wall. 0 for a plain cut.",
            default="0 in",
            most="6 in",
            shown_when=(ending, ("wall", "board", "none")),
        ),
    )


def sides_of(given):
    """Both sides; a right depth left blank is as the left one."""
    if given.left_side == given.right_side == "none":
        raise Refusal(
            "impossible",
            "With no return on either side, there’s no corner to wrap.",
            "Return the molding on at least one side. A piece between two walls just needs its own "
            "length.",
            field="left_side",
        )
    sides = []
    for name in ("left", "right"):
        ending, depth, board, scribe = (
            getattr(given, f"{name}_{each}") for each in ("side", "depth", "board", "scribe")
        )
        corner = corner_of(given, f"{name}_corner", most=150, outside=given.around == "case")
        if ending != "none" and depth is None:
            depth = given.left_depth
        if ending != "none" and depth is None:
            raise Refusal(
                "missing",
                "Right depth is blank, and the left side has no depth to copy.",
                "Fill it in.",
                field="right_depth",
            )
        sides.append(Side(name, ending, corner, depth, board, scribe))
    return sides


def legs_of(given, show, sides, total, inside):
    """The runs at the back of the first layer, from left to right."""
    corner = inside_corner if inside else outside_corner
    run, front = ("wall", "Back wall") if inside else ("return", "Front")
    joints, outer = [], []
    width = given.width
    for side in sides:
        if side.ending == "none":
            joints.append(_free(show, side))
            width += side.scribe
            outer.append(())
            continue
        joints.append(corner(f"{side.name} corner", side.corner))
        outer.append(_run_of(show, side, joints[-1], total, run))
    middle = Leg("front", front, width, *joints)
    return [*outer[0], middle, *outer[1]]


def _free(show, side):
    scribe = show.text(side.scribe) if side.scribe else None
    return Joint(f"{side.name} end", free=True, scribe=scribe)


def _run_of(show, side, corner, total, run):
    """The leg of one side with, where it closes itself, its self-return, from left to right."""
    back, far = side.depth, None
    caps = ()
    if side.ending == "self_return":
        back -= total
        far = outside_corner(f"{side.name} mitered return", RIGHT_ANGLE)
        free = Joint("end at the case", free=True)
        ends = (free, far) if side.name == "left" else (far, free)
        caps = (
            Leg(
                f"{side.name}_self_return",
                f"{side.name.capitalize()} mitered return",
                Fraction(0),
                *ends,
                is_cap=True,
            ),
        )
        takes, what = total, "the mitered return, with all layers,"
    else:
        board = side.board or Fraction(0)
        back += side.scribe - board
        far = _free(show, side)
        takes, what = board, "the board on the wall"
    if back <= 0:
        raise Refusal(
            "impossible",
            f"A depth of {show.text(side.depth)} leaves nothing after {what} at "
            f"{show.text(takes)}.",
            f"Use a depth over {show.text(takes)}, or another end on this side.",
            field=f"{side.name}_depth",
        )
    ends = (far, corner) if side.name == "left" else (corner, far)
    leg = Leg(f"{side.name}_{run}", f"{side.name.capitalize()} {run}", back, *ends)
    return (*caps, leg) if side.name == "left" else (leg, *caps)
