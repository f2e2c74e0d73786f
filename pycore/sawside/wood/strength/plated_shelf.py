"""A shelf with strips along its edges or a cleat, bent as a plate: its front, center and back.

Shear is added as that of the whole section, as for a plain board, and less the nearer a cleat is;
it is a small part.
"""

from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from sawside.wood.strength.bending_shapes import GAUSS
from sawside.wood.strength.plate import Bent, EdgeBeam, Plate

_FINE = 2**50
_NONE = Fraction(0)
_STATIONS = 8
_PARTS = (Fraction(1, 2), Fraction(1, 4), Fraction(0))


@dataclass(frozen=True, slots=True)
class Drops:
    """Drops below the supports in inches, at once: each the larger of mid-span and the ends.

    0 where an edge rises a little, as one may that has a stiff strip.
    """

    front: Fraction
    center: Fraction
    back: Fraction


@dataclass(frozen=True, slots=True)
class PlatedShelf:
    """A `Shelf` and how it bends."""

    shelf: object
    bent: Bent

    @property
    def places(self):
        """From the front face to the back: the strips' own faces where they are on the edges."""
        ends = [0.0, float(self.shelf.depth)]
        for strip in self.bent.plate.strips:
            ends += [strip.front, strip.back]
        low, high = min(ends), max(ends)
        return [low + (high - low) * step / _STATIONS for step in range(_STATIONS + 1)]

    def drops_across(self, part):
        """The drops at a part of the span, from the front to the back."""
        sheared = float(self.sheared[0 if part > 0 else 1])
        drops = []
        for y in self.places:
            free = self._free(y)
            drops.append(_fraction(self.bent.drop(part, y) + sheared * free) if free else _NONE)
        return drops

    def _free(self, y):
        """How much of the whole shear a place has: at a cleat, which nothing moves, none."""
        plate = self.bent.plate
        return max(1 - y / plate.depth, 0.0) if plate.cleat else 1.0

    @property
    def drops(self):
        """The drops of the middle and of overhanging ends, from the front to the back."""
        return tuple(drop for part in self._lowest for drop in self.drops_across(part))

    @property
    def edges(self):
        """The drops of the front, the center and the back."""
        rows = [self.drops_across(part) for part in self._lowest]
        return Drops(*(max(_NONE, *(row[at] for row in rows)) for at in (0, _STATIONS // 2, -1)))

    @property
    def stresses(self):
        """The largest bending stress in the board, and in a strip where there is one, in psi."""
        plate = self.bent.plate
        board, strips = 0.0, 0.0
        for part in _PARTS:
            for step in range(_STATIONS + 1):
                for z in (-plate.thickness / 2, plate.thickness / 2):
                    strain = self.bent.strain(part, plate.depth * step / _STATIONS, z)
                    board = max(board, abs(strain) * plate.along)
            for strip in plate.strips:
                for y in (strip.front, strip.back):
                    for z in (strip.top, strip.bottom):
                        strain = self.bent.strain(part, y, z, strip)
                        strips = max(strips, abs(strain) * strip.stiffness)
        return (_fraction(board), _fraction(strips))[: 2 if plate.strips else 1]

    @property
    def _lowest(self):
        over = self.bent.plate.overhang
        return (Fraction(1, 2), -over) if over else (Fraction(1, 2),)

    @property
    def sheared(self):
        """What shear adds in the middle and at overhanging ends, in inches."""
        shear = self.shelf.section.shear
        sheared = zip(*(beam.sheared for beam in self.shelf.beams), strict=True)
        return [sum(each) / shear for each in sheared]


@lru_cache(maxsize=8)
def plated(shelf):
    """The `PlatedShelf` of a `Shelf`."""
    strips = tuple(_strips(shelf))
    along = float(shelf.stiffness)
    plate = Plate(
        along,
        along * float(shelf.across),
        along * float(shelf.slide),
        float(shelf.thickness),
        float(shelf.depth),
        float(shelf.span),
        strips,
        shelf.supports,
        shelf.overhang / shelf.span,
        shelf.cleat,
    )
    board, *glued = (float(each) for each in shelf.own_weights)
    loads = [(shelf.spread, _over(plate), float(shelf.pounds)), ("even", _on_board(plate), board)]
    if glued:
        places = [((one.front + one.back) / 2, 1 / len(strips)) for one in strips]
        loads.append(("even", places, glued[0]))
    return PlatedShelf(shelf, plate.bent(loads))


def _strips(shelf):
    """Each strip as a beam: on the edge with its top level with the board's, or under the board."""
    if not shelf.glued:
        return
    strip, depth, half = shelf.strip, float(shelf.depth), float(shelf.thickness) / 2
    thick, high = float(strip.thickness), float(strip.height)
    stiffness = float(strip.stiffness)
    top = half if strip.under else -half
    for edge in ("front", "back"):
        if edge not in shelf.glued:
            continue
        if strip.under:
            front = 0.0 if edge == "front" else depth - thick
            held = min(max(front + thick / 2, 0.0), depth)
        else:
            front, held = (-thick, 0.0) if edge == "front" else (depth, depth)
        shear = stiffness * float(strip.slide)
        yield EdgeBeam(stiffness, shear, front, front + thick, top, top + high, held)


def _on_board(plate):
    half = plate.depth / 2
    return [(half + half * place, weight / 2) for place, weight in GAUSS]


def _over(plate):
    """Where a load lies across the shelf: evenly, on the strips too that are on its edges."""
    beside = [one for one in plate.strips if one.back <= 0 or one.front >= plate.depth]
    wide = plate.depth
    for one in beside:
        wide += one.back - one.front
    board = [(y, part * plate.depth / wide) for y, part in _on_board(plate)]
    return board + [((one.front + one.back) / 2, (one.back - one.front) / wide) for one in beside]


def _fraction(value):
    """A float as an exact number, its last digits let go."""
    return Fraction(round(value * _FINE), _FINE)
