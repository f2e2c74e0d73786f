"""What is said about a scarfed run: its working and its cautions."""

from fractions import Fraction

from sawside.drawing.lazy import lazy
from sawside.lengths.show import angle_equals, angle_text
from sawside.wood.saw import cautions_at_the_saw

_STUD = Fraction(3, 2)
_ON_A_BLOCK = "The scarf is longer than a 1 1/2″ stud is wide. Put a block behind it."
_NOT_TO_CARRY = (
    "This scarf is for trim, not for anything that carries weight. Structural joints follow the "
    "designer and local code."
)


@lazy
def working_of(show, given, scarf, stretches, parts):
    """The joint, and each piece: `stretches` are from joint to joint, in inches."""
    thick, steep, lap = (
        show.number(given.thickness),
        show.pure(scarf.slope),
        show.number(scarf.overlap),
    )
    overlap = f"Overlap: {thick} × tan {angle_text(scarf.degrees)} = {thick}"
    if given.cut == "slope":
        turned = angle_equals(scarf.degrees)
        overlap = f"A slope of 1 in {steep}: arctan {steep}{turned} from square; overlap {thick}"
    lines = [
        f"{overlap} × {steep}{show.equals(scarf.overlap)}",
        f"Cut face: √({thick}² + {lap}²){show.equals(scarf.face)}",
    ]
    for part, (start, stop) in zip(parts, stretches, strict=True):
        between = [part.left.how, part.right.how].count("edge") == 2
        lines.append(
            f"{part.name}: {show.number(stop)} − {show.number(start)} + "
            f"{'' if between else 'half of '}{lap}{show.equals(part.length)}"
        )
    return tuple(lines)


def cautions_of(given, scarf, parts):
    """The cautions at the saw, and those of the joint."""
    lines = [*cautions_at_the_saw(*(part.short_side for part in parts))]
    if given.spacing is not None and scarf.overlap > _STUD:
        lines.append(_ON_A_BLOCK)
    return (*lines, _NOT_TO_CARRY)
