"""A shelf with strips by finite elements: shares neither code nor formula with the core.

The board is cut into rectangles. What drops is cubic in both directions in each (Bogner, Fox and
Schmit, from memory), what moves in the plane quadratic. A strip is a beam that is carried along by
the board at the line where it is glued on. Held sides are lines of the board, so that a shelf that
stands over its supports is a longer board.
"""

import numpy as np


def _hermite(s, long):
    """Value, slope and curvature of the four cubics of an element, at s from 0 to 1."""
    return (
        np.array(
            [
                1 - 3 * s**2 + 2 * s**3,
                long * (s - 2 * s**2 + s**3),
                3 * s**2 - 2 * s**3,
                long * (s**3 - s**2),
            ]
        ),
        np.array(
            [
                6 * s**2 - 6 * s,
                long * (1 - 4 * s + 3 * s**2),
                6 * s - 6 * s**2,
                long * (3 * s**2 - 2 * s),
            ]
        )
        / long,
        np.array([12 * s - 6, long * (6 * s - 4), 6 - 12 * s, long * (6 * s - 2)]) / long**2,
    )


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
    along, across, shear, thick, depth, span = board
    many_x, many_y = fineness
    nodes = set(np.linspace(0, span, 4 * (many_x // 4) + 1))
    if overhang:
        nodes |= set(np.linspace(-overhang, 0, 4)) | set(np.linspace(span, span + overhang, 4))
    x_line, y_line = Line(sorted(nodes)), Line(np.linspace(0, depth, many_y + 1))
    # All that drops, then what moves along (u), then what moves forward (v).
    sizes = [
        x_line.cubics * y_line.cubics,
        x_line.quadratics * y_line.quadratics,
        x_line.cubics * y_line.quadratics,
    ]
    starts = np.cumsum([0, *sizes])
    stiff = np.zeros((starts[3], starts[3]))

    def rows(x, y):
        """Rows over all unknowns: w and its derivatives, u and v and theirs."""
        wx, wy, mx, my = x_line.drop(x), y_line.drop(y), x_line.move(x), y_line.move(y)

        def full(one, other, which):
            row = np.zeros(starts[3])
            row[starts[which] : starts[which + 1]] = np.outer(one, other).ravel()
            return row

        return {
            "w": full(wx[0], wy[0], 0),
            "w_y": full(wx[0], wy[1], 0),
            "w_xx": full(wx[2], wy[0], 0),
            "w_yy": full(wx[0], wy[2], 0),
            "w_xy": full(wx[1], wy[1], 0),
            "w_xxy": full(wx[2], wy[1], 0),
            "u_x": full(mx[1], my[0], 1),
            "u_y": full(mx[0], my[1], 1),
            "v_x": full(wx[1], my[0], 2),
            "v_y": full(wx[0], my[1], 2),
            "v_xx": full(wx[2], my[0], 2),
        }

    def add(weight, one, other=None):
        used = np.flatnonzero(one if other is None else (one != 0) | (other != 0))
        other = one if other is None else other
        block = np.outer(one[used], other[used])
        stiff[np.ix_(used, used)] += weight * (block + block.T) / 2

    less = 1 - poisson**2 * across / along
    cube = thick**3 / 12
    for x, a in x_line.gauss():
        for y, b in y_line.gauss():
            r, area = rows(x, y), a * b
            for stretch, bend, size in (("u_x", "w_xx", along), ("v_y", "w_yy", across)):
                add(area * size / less * thick, r[stretch])
                add(area * size / less * cube, r[bend])
            if poisson:
                add(2 * area * poisson * across / less * thick, r["u_x"], r["v_y"])
                add(2 * area * poisson * across / less * cube, r["w_xx"], r["w_yy"])
            add(area * shear * thick, r["u_y"] + r["v_x"])
            add(4 * area * shear * cube, r["w_xy"])
    level, beams = [0.0, depth], []
    for modulus, strip_shear, front, back, top, bottom in strips:
        beside = back <= 0 or front >= depth
        line = (0.0 if back <= 0 else depth) if beside else (front + back) / 2
        if beside:
            level += [front, back]
        beams.append((front, back, line))
        for x, a in x_line.gauss():
            r = rows(x, line)
            add(a * strip_shear * _torsion(back - front, bottom - top), r["w_xy"])
            for y, b in _cut(front, back):
                # A strip stays straight across: it goes with the line at which it is held.
                along_it = r["u_x"] - (y - line) * r["v_xx"]
                for z, c in _cut(top, bottom):
                    bent = r["w_xx"] + (y - line) * r["w_xxy"]
                    add(a * b * c * modulus, along_it - z * bent)
    force = np.zeros(starts[3])
    wide, many = max(level) - min(level), max(len(beams), 1)
    on_board = [(y, b, y) for y, b in y_line.gauss()]
    on_strips = [(line, 1 / many, (front + back) / 2) for front, back, line in beams]
    beside = [
        (line, (back - front) / wide, (front + back) / 2)
        for front, back, line in beams
        if back <= 0 or front >= depth
    ]
    places = {
        "all": [(y, b / wide, y) for y, b, _ in on_board] + beside,
        "board": [(y, b / depth, y) for y, b, _ in on_board],
        "strips": on_strips,
    }
    whole = span + 2 * overhang
    spreads = {
        "even": [(x, a / whole) for x, a in x_line.gauss()],
        "middle": [(span / 2, 1)],
        "quarters": [(span / 4, 0.5), (3 * span / 4, 0.5)],
    }
    for spread, pounds, over in loads:
        for x, a in spreads[spread]:
            for line, b, y in places[over]:
                r = rows(x, line)
                force += pounds * a * b * (r["w"] + (y - line) * r["w_y"])
    held = _held(x_line, y_line, starts, span, supports)
    if cleat:
        held += [x * y_line.cubics + y_line.cubics - 2 for x in range(x_line.cubics)]
    free = np.setdiff1d(np.arange(starts[3]), held)
    moved = np.zeros(starts[3])
    moved[free] = np.linalg.solve(stiff[np.ix_(free, free)], force[free])

    def drop(x, y):
        line = min(max(y, 0.0), depth)
        r = rows(x, line)
        return (r["w"] + (y - line) * r["w_y"]) @ moved

    def strain(x, y, z):
        r = rows(x, y)
        return (r["u_x"] - z * r["w_xx"]) @ moved

    return drop, strain


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
