"""Which grits a surface is sanded with: from how it comes to what its finish asks for."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import impossible
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.finish.shared.finishes import PAINTS
from sawside.wood.abrasives import GRITS, Grit, scratch, steps

STARTS = {"sawn": 60, "planed": 80, "smooth": 150, "sheet": 150, "veneer": 150}
"""The first grit by how the surface comes. Planed boards: 80 is as coarse as is needed (a
reference work on sizes of sandpaper, read); the others are common practice, no source."""
LASTS = dict.fromkeys(("linseed", "tung", "blend", "water", "wax"), 220) | dict.fromkeys(
    PAINTS, 150
)
_LAST = 180
"""The last grit by the finish, 180 under any other film (common practice, no source)."""
MICROMETERS = INCHES_PER["mm"] / 1000
"""Inches in one."""
FACES = {"thin": Fraction(250), "usual": Fraction(400), "raw": Fraction(600)}
"""Faces of sheets in micrometers: thin ones .2 to .3 mm, American ones .4 or more before the mill
sands them (a plywood inspector's list, read); veneer as it is sold .6 mm or 1/42 in (from
memory)."""
_USUAL_FACE = {"sheet": "thin", "veneer": "raw"}


@dataclass(frozen=True, slots=True)
class Sanding:
    """The grits from coarse to fine; of veneer, its `face` and what is sanded off of it, in
    micrometers, and whether its start is finer than usual so that no more of it goes."""

    grits: list[Grit]
    face: Fraction | None = None
    off: Fraction | None = None
    finer: bool = False


def sanding_of(given):
    """The `Sanding` of a form; "unknown" for a grit that its scale lacks."""
    last = _grit(given, "last", LASTS.get(given.finish, _LAST))
    first = _grit(given, "first", STARTS[given.surface])
    if given.first is not None and first.size < last.size:
        raise impossible(
            f"You’d start finer, {first.name}, than you’d stop, {last.name}.",
            "Make the first grit the coarser one.",
            "first",
        )
    face = _face_of(given)
    grits = steps(first, last, given.step)
    if face is None:
        return Sanding(grits)
    finer = given.first is None and _off(grits) > _allowed(given, face)
    if finer:
        grits = _gentlest(given, first, last, face)
    return Sanding(grits, face, _off(grits), finer)


def _grit(given, key, usual):
    number = getattr(given, key)
    scale = GRITS[given.scale]
    number = usual if number is None else number
    if number not in scale:
        near = sorted(scale, key=lambda each: abs(each - number))[:2]
        low, high = (scale[each].name for each in sorted(near))
        raise impossible(
            f"There’s no {given.scale} grit {number} on file.", f"Use {low} or {high}.", key
        )
    return scale[number]


def _face_of(given):
    if given.surface not in _USUAL_FACE:
        return None
    if given.face == "own":
        return Fraction(given.own_face / MICROMETERS)
    return FACES[_USUAL_FACE[given.surface] if given.face == "by" else given.face]


def _off(grits):
    """What goes as each grit sands as deep as its own scratches, in micrometers."""
    return sum(scratch(each) for each in grits)


def _allowed(given, face):
    return face * given.share / 100


def _gentlest(given, first, last, face):
    """From the coarsest start that leaves enough of the face: at last the last grit alone."""
    starts = [each for each in GRITS[given.scale].values() if last.size <= each.size < first.size]
    ways = (steps(each, last, given.step) for each in starts)
    return next((way for way in ways if _off(way) <= _allowed(given, face)), [last])
