"""Pieces of wood as solids, for tests: what half-spaces leave, moved about and put together.

A solid is every point x with normal . x <= offset for each of its named planes. Nothing here
knows how a miter is worked out, and nothing of the project is imported: a piece is built by the
cuts that were told, the corner is put together, and one looks whether the faces meet.

Lengths and places are floats in inches, angles degrees. `NEAR` is what counts as the same place.
"""

from dataclasses import dataclass
from functools import cache
from itertools import combinations

import numpy as np

NEAR = 1e-7
ORIGIN = (0.0, 0.0, 0.0)


def vector(*coordinates):
    """A place or a direction."""
    return np.array(coordinates, dtype=float)


def unit(direction):
    """The direction with length 1."""
    direction = np.asarray(direction, dtype=float)
    return direction / np.linalg.norm(direction)


@dataclass(frozen=True)
class Motion:
    """A rigid motion: turned first, then shifted."""

    turn: np.ndarray
    shift: np.ndarray

    def __call__(self, place):
        """Where a place comes to lie."""
        return self.turn @ np.asarray(place, dtype=float) + self.shift

    def direction(self, direction):
        """Where a direction points afterwards."""
        return self.turn @ np.asarray(direction, dtype=float)

    def then(self, other):
        """This motion and then the other."""
        return Motion(other.turn @ self.turn, other.turn @ self.shift + other.shift)

    @property
    def back(self):
        """The motion that undoes this one."""
        return Motion(self.turn.T, -self.turn.T @ self.shift)


def rotation(axis, degrees, about=ORIGIN):
    """A turn about an axis through a place, counterclockwise seen against the axis (Rodrigues)."""
    x, y, z = unit(axis)
    cross = np.array([[0, -z, y], [z, 0, -x], [-y, x, 0]])
    turn = np.radians(degrees)
    matrix = np.eye(3) + np.sin(turn) * cross + (1 - np.cos(turn)) * cross @ cross
    about = np.asarray(about, dtype=float)
    return Motion(matrix, about - matrix @ about)


def translation(*shift):
    """A shift without a turn."""
    return Motion(np.eye(3), vector(*shift))


def mirror(normal, through=ORIGIN):
    """The mirror image in a plane: also a motion here, though no board is ever moved so."""
    normal = unit(normal)
    matrix = np.eye(3) - 2 * np.outer(normal, normal)
    through = np.asarray(through, dtype=float)
    return Motion(matrix, through - matrix @ through)


def placed(origin, x, y):
    """The motion that lays the axes x and y along two directions at right angles, from a place."""
    x, y = unit(x), unit(y)
    assert abs(x @ y) < NEAR, "the directions are not square to each other"
    return Motion(np.column_stack([x, y, np.cross(x, y)]), np.asarray(origin, dtype=float))


@cache
def _triples(count):
    return np.array(list(combinations(range(count), 3)), dtype=int).reshape(-1, 3)


@dataclass(frozen=True)
class Solid:
    """What some half-spaces leave. Planes are named, so that a face can be asked for by name."""

    names: tuple
    normals: np.ndarray
    offsets: np.ndarray

    def cut(self, name, normal, through):
        """The solid behind a further plane; what its normal points to is gone."""
        normal = unit(normal)
        assert name not in self.names, name
        return Solid(
            (*self.names, name),
            np.vstack([self.normals, normal]),
            np.append(self.offsets, normal @ np.asarray(through, dtype=float)),
        )

    def moved(self, motion):
        """The solid after a motion."""
        normals = self.normals @ motion.turn.T
        return Solid(self.names, normals, self.offsets + normals @ motion.shift)

    def normal(self, name):
        """The outward normal of a face."""
        return self.normals[self.names.index(name)]

    def vertices(self):
        """Its corners, each once, as rows; the solid must be bounded."""
        triples = _triples(len(self.names))
        matrices = self.normals[triples]
        crossing = np.abs(np.linalg.det(matrices)) > 1e-9
        if not crossing.any():
            return np.empty((0, 3))
        triples, matrices = triples[crossing], matrices[crossing]
        places = np.linalg.solve(matrices, self.offsets[triples][..., None])[..., 0]
        inside = (places @ self.normals.T <= self.offsets + NEAR).all(axis=1)
        return _each_once(places[inside])

    def face(self, name):
        """The corners that lie on a plane, as rows."""
        number = self.names.index(name)
        corners = self.vertices()
        return corners[np.abs(corners @ self.normals[number] - self.offsets[number]) < NEAR]

    def edge(self, one, other):
        """The two ends of the edge where two faces meet."""
        number = self.names.index(other)
        corners = self.face(one)
        ends = corners[np.abs(corners @ self.normals[number] - self.offsets[number]) < NEAR]
        assert len(ends) == 2, f"{one} and {other} share {len(ends)} corners"
        return ends

    def length(self, one, other):
        """How long the edge is where two faces meet."""
        start, end = self.edge(one, other)
        return float(np.linalg.norm(end - start))

    def extent(self, direction):
        """The least and the greatest reach along a direction."""
        reach = self.vertices() @ unit(direction)
        return float(reach.min()), float(reach.max())

    def depth(self, place):
        """How deep a place lies inside; negative outside, 0 on the surface."""
        return float((self.offsets - self.normals @ np.asarray(place, dtype=float)).min())


def _each_once(places):
    kept = []
    for place in places:
        if not any(np.abs(place - other).max() < NEAR for other in kept):
            kept.append(place)
    return np.array(kept).reshape(-1, 3)


def bar(profile):
    """A bar along x without ends: `profile` are the corners (y, z) of a convex section, in order.

    Its faces are named 0, 1, 2… after the corner where each begins.
    """
    profile = np.asarray(profile, dtype=float)
    if _turning(profile) < 0:
        profile = profile[::-1]
    edges = np.roll(profile, -1, axis=0) - profile
    normals = np.column_stack([np.zeros(len(edges)), edges[:, 1], -edges[:, 0]])
    normals /= np.linalg.norm(normals, axis=1)[:, None]
    starts = np.column_stack([np.zeros(len(profile)), profile])
    return Solid(tuple(range(len(profile))), normals, (normals * starts).sum(axis=1))


def _turning(profile):
    y, z = profile.T
    return float((y * np.roll(z, -1) - np.roll(y, -1) * z).sum())


def board(width, thickness):
    """A board along x without ends: y from 0 (inside) to width (outside), z from 0 (back) to
    thickness (face); its faces are named inside, outside, back and face."""
    names = ("inside", "outside", "back", "face")
    normals = np.array([[0, -1, 0], [0, 1, 0], [0, 0, -1], [0, 0, 1]], dtype=float)
    return Solid(names, normals, np.array([0.0, width, 0.0, thickness]))


def faces_meet(one, face, other, face_of_other):
    """Whether two faces lie on each other, corner on corner, and look at each other."""
    mine, theirs = one.face(face), other.face(face_of_other)
    if len(mine) < 3 or len(mine) != len(theirs):
        return False
    apart = np.abs(mine[:, None, :] - theirs[None, :, :]).max(axis=2)
    facing = one.normal(face) @ other.normal(face_of_other)
    return bool((apart.min(axis=1) < NEAR).all() and facing < NEAR - 1)


def overlap(one, other):
    """How deep two solids reach into each other at the middle of what they share; 0 for none."""
    shared = Solid(
        (*(("one", name) for name in one.names), *(("other", name) for name in other.names)),
        np.vstack([one.normals, other.normals]),
        np.append(one.offsets, other.offsets),
    )
    corners = shared.vertices()
    return max(shared.depth(corners.mean(axis=0)), 0.0) if len(corners) else 0.0


def same_place(one, other):
    """Whether two places are the same."""
    return bool(np.abs(np.asarray(one, dtype=float) - np.asarray(other, dtype=float)).max() < NEAR)
