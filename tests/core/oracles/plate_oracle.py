"""A shelf with strips by finite elements: shares neither code nor formula with the core.

The board is cut into rectangles. What drops is cubic in both directions in each (Bogner, Fox and
Schmit, from memory), what moves in the plane quadratic. A strip is a beam that is carried along by
the board at the line where it is glued on. Held sides are lines of the board, so that a shelf that
stands over its supports is a longer board.
"""

import numpy as np


def _hermite(s, long):
    """Value, slope and curvature of the four cubics of an element, at s from 0 to 1."""
    value = [1 - 3 * s**2 + 2 * s**3, long * (s - 2 * s**2 + s**3)]
    value += [3 * s**2 - 2 * s**3, long * (s**3 - s**2)]
    slope = [6 * s**2 - 6 * s, long * (1 - 4 * s + 3 * s**2)]
    slope += [6 * s - 6 * s**2, long * (3 * s**2 - 2 * s)]
    curve = [12 * s - 6, long * (6 * s - 4), 6 - 12 * s, long * (6 * s - 2)]
    return np.array(value), np.array(slope) / long, np.array(curve) / long**2


def _quadratic(s, long):
    return (
        np.array([(1 - s) * (1 - 2 * s), 4 * s * (1 - s), s * (2 * s - 1)]),
        np.array([4 * s - 3, 4 - 8 * s, 4 * s - 1]) / long,
    )


class Line:
    """One direction: nodes, and rows of all values at a place for drops (cubic) and moves."""

    def __init__(self, nodes):
        self.nodes = np.array(nodes)
        self.cubics, self.quadratics = 2 * len(nodes), 2 * len(nodes) - 1

    def gauss(self, points=4):
        """Places and weights for sums along the whole line."""
        s, w = np.polynomial.legendre.leggauss(points)
        for low, high in zip(self.nodes, self.nodes[1:], strict=False):
            for a, b in zip(s, w, strict=True):
                yield (low + high) / 2 + a * (high - low) / 2, b * (high - low) / 2

    def _element(self, x):
        at = min(max(np.searchsorted(self.nodes, x, "right") - 1, 0), len(self.nodes) - 2)
        long = self.nodes[at + 1] - self.nodes[at]
        return at, (x - self.nodes[at]) / long, long

    def drop(self, x):
        """Rows for the value, slope and curvature at x."""
        at, s, long = self._element(x)
        rows = np.zeros((3, self.cubics))
        rows[:, 2 * at : 2 * at + 4] = _hermite(s, long)
        return rows

    def move(self, x):
        """Rows for the value and slope at x."""
        at, s, long = self._element(x)
        rows = np.zeros((2, self.quadratics))
        rows[:, 2 * at : 2 * at + 3] = _quadratic(s, long)
        return rows


class Elements:
    """All unknowns of the board with how stiff it is against each two of them, and the load.

    First comes what drops, then what moves along (u), then what moves forward (v).
    """

    def __init__(self, x_line, y_line):
        self.x_line, self.y_line = x_line, y_line
        sizes = [
            x_line.cubics * y_line.cubics,
            x_line.quadratics * y_line.quadratics,
            x_line.cubics * y_line.quadratics,
        ]
        self.starts = np.cumsum([0, *sizes])
        self.many = self.starts[3]
        self.stiff = np.zeros((self.many, self.many))
        self.force = np.zeros(self.many)

    def rows(self, x, y):
        """Rows over all unknowns: w and its derivatives, u and v and theirs."""
        wx, wy = self.x_line.drop(x), self.y_line.drop(y)
        mx, my = self.x_line.move(x), self.y_line.move(y)
        products = {
            "w": (wx[0], wy[0], 0),
            "w_y": (wx[0], wy[1], 0),
            "w_xx": (wx[2], wy[0], 0),
            "w_yy": (wx[0], wy[2], 0),
            "w_xy": (wx[1], wy[1], 0),
            "w_xxy": (wx[2], wy[1], 0),
            "u_x": (mx[1], my[0], 1),
            "u_y": (mx[0], my[1], 1),
            "v_x": (wx[1], my[0], 2),
            "v_y": (wx[0], my[1], 2),
            "v_xx": (wx[2], my[0], 2),
        }
        return {name: self._full(*product) for name, product in products.items()}

    def _full(self, one, other, which):
        row = np.zeros(self.many)
        row[self.starts[which] : self.starts[which + 1]] = np.outer(one, other).ravel()
        return row

    def add(self, weight, one, other=None):
        """Add so much stiffness against the product of two rows, or the square of one."""
        used = np.flatnonzero(one if other is None else (one != 0) | (other != 0))
        other = one if other is None else other
        block = np.outer(one[used], other[used])
        self.stiff[np.ix_(used, used)] += weight * (block + block.T) / 2

    def dropped(self, x, y):
        """The row of the drop of a place, also of one in front of the board or behind it."""
        line = min(max(y, 0.0), self.y_line.nodes[-1])
        return self._carried(x, line, y)

    def _carried(self, x, line, y):
        """The row of what drops at y where a line of the board carries it along."""
        r = self.rows(x, line)
        return r["w"] + (y - line) * r["w_y"]

    def load(self, pounds, along, across):
        """Add pounds over places along, (x, part), and across, (line that bears it, part, y)."""
        for x, a in along:
            for line, b, y in across:
                self.force += pounds * a * b * self._carried(x, line, y)

    def moved(self, held):
        """All unknowns under the load, those of `held` being nothing."""
        free = np.setdiff1d(np.arange(self.many), held)
        moved = np.zeros(self.many)
        moved[free] = np.linalg.solve(self.stiff[np.ix_(free, free)], self.force[free])
        return moved


def bent(
    board,
    strips,
    loads,
    *,
    supports="resting",
    overhang=0.0,
    cleat=False,
    poisson=0.0,
    fineness=(4, 4),
):
    """(drop of a place, strain along the board at a place of it) as functions of x, y and x, y, z.

    x is from the left support, y from the front edge of the board, z from its middle down.
    `board` is (E along, E across, G, thickness, depth, span); a strip (E, G, front, back, top,
    bottom) from the front edge of the board and below its middle, glued on at `front` or `back`
    where it is beside the board. Of the `loads`, (spread, pounds, over), "all" lies evenly from the
    front face to the back face of what is level with the board's top, "board" on the board, and
    "strips" on the center lines of the strips.
    """
    *_, depth, span = board
    elements = Elements(*_lines(depth, span, overhang, fineness))
    _add_board(elements, board, poisson)
    for strip in strips:
        _add_strip(elements, strip, depth)
    along, across = _along(elements.x_line, span, overhang), _across(elements.y_line, strips, depth)
    for spread, pounds, over in loads:
        elements.load(pounds, along[spread], across[over])
    held = _held(elements.x_line, elements.y_line, elements.starts, span, supports)
    if cleat:
        rows, wide = elements.x_line.cubics, elements.y_line.cubics
        held += [x * wide + wide - 2 for x in range(rows)]
    moved = elements.moved(held)

    def strain(x, y, z):
        r = elements.rows(x, y)
        return (r["u_x"] - z * r["w_xx"]) @ moved

    return lambda x, y: elements.dropped(x, y) @ moved, strain


def _lines(depth, span, overhang, fineness):
    """The nodes along and across the board."""
    many_x, many_y = fineness
    nodes = set(np.linspace(0, span, 4 * (many_x // 4) + 1))
    if overhang:
        nodes |= set(np.linspace(-overhang, 0, 4)) | set(np.linspace(span, span + overhang, 4))
    return Line(sorted(nodes)), Line(np.linspace(0, depth, many_y + 1))


def _add_board(elements, board, poisson):
    along, across, shear, thick, _, _ = board
    less = 1 - poisson**2 * across / along
    cube = thick**3 / 12
    for x, a in elements.x_line.gauss():
        for y, b in elements.y_line.gauss():
            r, area = elements.rows(x, y), a * b
            for stretch, bend, size in (("u_x", "w_xx", along), ("v_y", "w_yy", across)):
                elements.add(area * size / less * thick, r[stretch])
                elements.add(area * size / less * cube, r[bend])
            if poisson:
                both = 2 * area * poisson * across / less
                elements.add(both * thick, r["u_x"], r["v_y"])
                elements.add(both * cube, r["w_xx"], r["w_yy"])
            elements.add(area * shear * thick, r["u_y"] + r["v_x"])
            elements.add(4 * area * shear * cube, r["w_xy"])


def _beside(strip, depth):
    """Whether a strip is on an edge of the board, and not under it."""
    return strip[3] <= 0 or strip[2] >= depth


def _line_of(strip, depth):
    """The line of the board that carries a strip along."""
    front, back = strip[2:4]
    if _beside(strip, depth):
        return 0.0 if back <= 0 else depth
    return (front + back) / 2


def _add_strip(elements, strip, depth):
    """A strip stays straight across: it goes with the line at which it is held."""
    modulus, shear, front, back, top, bottom = strip
    line = _line_of(strip, depth)
    for x, a in elements.x_line.gauss():
        r = elements.rows(x, line)
        elements.add(a * shear * _torsion(back - front, bottom - top), r["w_xy"])
        for y, b in _cut(front, back):
            along_it = r["u_x"] - (y - line) * r["v_xx"]
            for z, c in _cut(top, bottom):
                bent = r["w_xx"] + (y - line) * r["w_xxy"]
                elements.add(a * b * c * modulus, along_it - z * bent)


def _across(y_line, strips, depth):
    """Over what a load lies: (line that bears it, its part, y), by the third word of a load."""
    held = [(_line_of(strip, depth), *strip[2:4]) for strip in strips]
    beside = [one for one, strip in zip(held, strips, strict=True) if _beside(strip, depth)]
    faces = [0.0, depth, *(face for _, *both in beside for face in both)]
    wide = max(faces) - min(faces)
    board = list(y_line.gauss())
    return {
        "all": [(y, b / wide, y) for y, b in board]
        + [(line, (back - front) / wide, (front + back) / 2) for line, front, back in beside],
        "board": [(y, b / depth, y) for y, b in board],
        "strips": [(line, 1 / len(held), (front + back) / 2) for line, front, back in held],
    }


def _along(x_line, span, overhang):
    """Along what a load lies: (x, its part), by the first word of a load."""
    whole = span + 2 * overhang
    return {
        "even": [(x, a / whole) for x, a in x_line.gauss()],
        "middle": [(span / 2, 1)],
        "quarters": [(span / 4, 0.5), (3 * span / 4, 0.5)],
    }


def _held(x_line, y_line, starts, span, supports):
    """The unknowns that are nothing: along the supports what drops, and what moves sideways."""
    held, many = [], y_line.quadratics
    for end in (0.0, span):
        row = 2 * np.argmin(abs(x_line.nodes - end))
        turned = [row, row + 1] if supports == "fixed" else [row]
        held += [each * y_line.cubics + y for each in turned for y in range(y_line.cubics)]
        held += [starts[2] + each * many + y for each in turned for y in range(many)]
        if supports == "fixed":
            held += [starts[1] + row * many + y for y in range(many)]
    if supports != "fixed":
        # Nothing else keeps the board from sliding along: by symmetry its middle stays.
        middle = 2 * np.argmin(abs(x_line.nodes - span / 2))
        held.append(starts[1] + middle * y_line.quadratics)
    return held


def _cut(low, high):
    s, w = np.polynomial.legendre.leggauss(2)
    return [
        ((low + high) / 2 + a * (high - low) / 2, b * (high - low) / 2)
        for a, b in zip(s, w, strict=True)
    ]


def _torsion(wide, high):
    """Saint-Venant's series for a rectangle."""
    long, small = max(wide, high), min(wide, high)
    tanh = sum(np.tanh(n * np.pi * long / (2 * small)) / n**5 for n in range(1, 60, 2))
    return long * small**3 / 3 * (1 - 192 * small / (np.pi**5 * long) * tanh)
