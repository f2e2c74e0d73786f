"""A shelf with strips along its edges as a plate: how far each edge sags, and how it is strained.

The board is an orthotropic plate of bending stiffnesses E t**3/12 along and across its length and a
twisting stiffness G t**3/12, the strips are beams along its edges. What is worked out is the shape
of least energy (Ritz's method):

    half the sum over the board of E t**3/12 w_xx**2 + Ey t**3/12 w_yy**2 + 4 G t**3/12 w_xy**2
                                    + E t u_x**2 + G t (u_y + v_x)**2,
    and over each strip of E (strain along it)**2 + G J (its twist)**2, less the work of the load.

Source: S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells, second edition (1959),
chapter 11, orthotropic plates and their use for a slab with ribs (from memory). Because a strip
hangs below the board it pulls on it as well: u and v are what the board's middle moves along and
forward. Poisson's ratio is left out, as in a grillage, so that a board without a strip bends as
the beam of the handbook. J of a rectangle: Timoshenko and Goodier, Theory of Elasticity (from
memory, s**3 h (1/3 - .21 s/h (1 - s**4/(12 h**4)))).

Along the span w has the shapes of `bending_shapes`, across it polynomials of degree 4. All of it in
floats, inches and pounds: a sag is as good as the figures of its wood.
"""

from dataclasses import dataclass
from math import sqrt

from sawside.wood.strength.bending_shapes import GAUSS, products, shapes_at, under
from sawside.wood.strength.equations import solved

_ACROSS = 5
_UNKNOWNS = 2 * _ACROSS + 1
_THIRD = sqrt(1 / 3)
_FIRM = 10_000
"""How firm each inch of a cleat is, in pounds an inch, in parts of the board's stiffness."""


@dataclass(frozen=True, slots=True)
class EdgeBeam:
    """A strip: stiffness and shear modulus in psi, its rectangle in inches, where it is held.

    `front` to `back` are from the front edge of the board, `top` to `bottom` from its middle
    downward; `held` is the place across the board at which it is glued on.
    """

    stiffness: float
    shear: float
    front: float
    back: float
    top: float
    bottom: float
    held: float

    @property
    def twisting(self):
        """G J, in pounds x square inches."""
        small, large = sorted((self.back - self.front, self.bottom - self.top))
        slim = small / large
        part = 1 / 3 - 0.21 * slim * (1 - slim * slim * slim * slim / 12)
        return self.shear * small * small * small * large * part


@dataclass(frozen=True, slots=True)
class Plate:
    """A board with its strips: moduli in psi, inches, and how it is held as `beam.Beam`.

    A `cleat` holds its back edge all along. `overhang` is a part of the span.
    """

    along: float
    across: float
    shear: float
    thickness: float
    depth: float
    span: float
    strips: tuple[EdgeBeam, ...]
    supports: str
    overhang: object
    cleat: bool = False

    def bent(self, loads):
        """The plate under loads: (how it is spread along, where across it lies, pounds) of each.

        Where across: the places, as parts of the load lie at them.
        """
        sums = products(self.supports, self.overhang)
        scales = (self.span, 1 / self.span, 1 / (self.span * self.span * self.span))
        energies = self._energies()
        shapes = range(len(sums[0]))
        rows = [[0.0] * (len(shapes) * _UNKNOWNS) for _ in range(len(shapes) * _UNKNOWNS)]
        for table, scale, energy in zip(sums, scales, energies, strict=True):
            for one in shapes:
                for other in shapes:
                    factor = scale * table[one][other]
                    for at, row in enumerate(energy):
                        target, start = rows[one * _UNKNOWNS + at], other * _UNKNOWNS
                        for place, value in enumerate(row, start):
                            target[place] += factor * value
        right = [0.0] * len(rows)
        for spread, places, pounds in loads:
            for one, mean in enumerate(under(spread, self.supports, self.overhang)):
                for y, part in places:
                    for at, value in enumerate(self.drop_row(y)):
                        right[one * _UNKNOWNS + at] += pounds * mean * part * value
        return Bent(self, tuple(solved(rows, right)))

    def _energies(self):
        """What the unknowns of one shape do: by its values, its slopes, its curvatures."""
        cube = self.thickness * self.thickness * self.thickness / 12
        across, slopes, curves = (_square() for _ in range(3))
        by = 2 / self.depth
        for at, weight in _AT_GAUSS:
            wide = weight * self.depth / 2
            _add(across, wide * self.across * cube, _board(at[2], by * by))
            _add(slopes, wide * 4 * self.shear * cube, _board(at[1], by))
            _add(slopes, wide * self.shear * self.thickness, _moved(at[1], by, 1.0))
            _add(curves, wide * self.along * cube, _board(at[0], 1.0))
            _add(curves, wide * self.along * self.thickness, _moved(at[0], 1.0, 0.0))
        for strip in self.strips:
            _add(slopes, strip.twisting, self._tilt_row(strip.held))
            area = (strip.back - strip.front) * (strip.bottom - strip.top)
            for y, z in _quarters(strip):
                _add(curves, strip.stiffness * area / 4, self.strain_row(y, z, strip))
        if self.cleat:
            _add(across, _FIRM * self.along, self.drop_row(self.depth))
        return across, slopes, curves

    def drop_row(self, y):
        """How far each unknown of a shape drops a place; beyond the board a strip is stiff."""
        held = min(max(y, 0.0), self.depth)
        row = _board(_legendre(2 * held / self.depth - 1)[0], 1.0)
        if y == held:
            return row
        return [a + (y - held) * b for a, b in zip(row, self._tilt_row(held), strict=True)]

    def _tilt_row(self, y):
        return _board(_legendre(2 * y / self.depth - 1)[1], 2 / self.depth)

    def strain_row(self, y, z, strip=None):
        """The strain along the shelf that each unknown makes at a place, by its curvature."""
        at = y if strip is None else strip.held
        values = _legendre(2 * at / self.depth - 1)[0]
        drop = _board(values, 1.0)
        if strip is not None:
            tilt = self._tilt_row(at)
            drop = [a + (y - at) * b for a, b in zip(drop, tilt, strict=True)]
        moved = _moved(values, 1.0, at - y)
        return [a - z * b for a, b in zip(moved, drop, strict=True)]


@dataclass(frozen=True, slots=True)
class Bent:
    """A plate that was bent: `unknowns` for each shape."""

    plate: Plate
    unknowns: tuple[float, ...]

    def drop(self, part, y):
        """How far a place drops, in inches: `part` of the span, `y` inches from the front."""
        return self._summed(part, 0, self.plate.drop_row(y))

    def strain(self, part, y, z, strip=None):
        """The strain along the shelf at a place of the board, or of a strip."""
        square = self.plate.span * self.plate.span
        return self._summed(part, 2, self.plate.strain_row(y, z, strip)) / square

    def _summed(self, part, derivative, row):
        plate, total = self.plate, 0.0
        shapes = shapes_at(plate.supports, plate.overhang, part, derivative)
        for one, shape in enumerate(shapes):
            for at, value in enumerate(row, one * _UNKNOWNS):
                total += shape * value * self.unknowns[at]
        return total


def _quarters(strip):
    """The four places of a rectangle by which a square of two straight lines is summed."""
    y, wide = (strip.front + strip.back) / 2, (strip.back - strip.front) / 2 * _THIRD
    z, high = (strip.top + strip.bottom) / 2, (strip.bottom - strip.top) / 2 * _THIRD
    return [(y + a * wide, z + b * high) for a in (-1, 1) for b in (-1, 1)]


def _legendre(x):
    """Legendre's polynomials to degree 4, their derivatives and their second ones."""
    square = x * x
    values = 1.0, x, 1.5 * square - 0.5, (2.5 * square - 1.5) * x, _fourth(square)
    first = 0.0, 1.0, 3 * x, 7.5 * square - 1.5, (17.5 * square - 7.5) * x
    return values, first, (0.0, 0.0, 3.0, 15 * x, 52.5 * square - 7.5)


def _fourth(square):
    return (4.375 * square - 3.75) * square + 0.375


_AT_GAUSS = tuple((_legendre(place), weight) for place, weight in GAUSS)


def _square():
    return [[0.0] * _UNKNOWNS for _ in range(_UNKNOWNS)]


def _board(values, scale):
    """A row for what drops."""
    return [*(scale * value for value in values), *[0.0] * (_UNKNOWNS - _ACROSS)]


def _moved(values, scale, sideways):
    """A row for what the middle of the board moves: along it, and forward as a whole."""
    return [*[0.0] * _ACROSS, *(scale * value for value in values), sideways]


def _add(energy, weight, row):
    """Add the square of what a row makes, with its weight."""
    places = [(at, value) for at, value in enumerate(row) if value]
    for at, one in places:
        line = energy[at]
        for other, value in places:
            line[other] += weight * one * value
