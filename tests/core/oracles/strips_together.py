"""Pieces that stand on edge, cut as they were told, and random edge strips put together as solids.

A check takes a random number generator, asks one question with numbers of its own, and gives what
is wrong as sentences; none when all is right. Nothing but told numbers and corners goes in.
"""

from fractions import Fraction

import numpy as np

from sawside.lengths.real import nearby
from tests.core.asking import inches
from tests.core.exactly import pieces
from tests.core.oracles.put_together import differ
from tests.core.oracles.random_forms import number
from tests.core.oracles.solid import board, faces_meet, placed, vector


def stands(part, *, face_is_long):
    """A part as a solid: its back on y = 0, from x = 0 on, its face towards y, cut as told."""
    long, short = (float(nearby(side)) for side in (part.long_side, part.short_side))
    back = short if face_is_long else long
    made = board(float(part.thickness), 1.0)
    for side, at, way in (("left", 0.0, -1), ("right", back, 1)):
        end = getattr(part, side)
        slope = 0.0
        if "°" in end.angle and end.cut != "square":
            degrees = float(end.angle.split("°")[0].split(" ")[-1])
            slope = np.tan(np.radians(degrees)) * (1 if f"swung {side}" in end.angle else -1)
        made = made.cut(side, (way, -slope, 0), (at, 0, 0))
    return made, back


def lay(made, back, along, *, left=None, right=None):
    """The solid with its back along a direction, its left or right back corner at a place."""
    outward = vector(along[1], -along[0], 0)
    start = left if right is None else right - along * back
    return made.moved(placed(start, along, outward))


def corner_of(piece, side, face):
    """Where an end meets the back ("inside") or the face ("outside"), at the height of the back."""
    return piece.edge(face, side)[0] * (1, 1, 0)


def edge_strips(rng):
    """Strips all around a panel of any four-sided kind close at each mitered corner."""
    corners = [Fraction(rng.randint(70 * 50, 110 * 50), 50)]
    corners.append(180 - corners[0])
    thick, sides = number(rng, 1 / 8, 2), [number(rng, 8, 60) for _ in range(2)]
    strips, faults, place, turn = [], [], vector(0, 0, 0), 0.0
    values = {"thickness": inches(thick), "left_end": "miter", "right_end": "miter"}
    for count in range(4):
        left, right = corners[count % 2], corners[(count + 1) % 2]
        values |= {
            "panel": inches(sides[count % 2]),
            "left_corner": f"{left}",
            "right_corner": f"{right}",
        }
        (part,) = pieces("edge_strip", **values)
        made, back = stands(part, face_is_long=True)
        faults += differ("the strip at the panel", back, sides[count % 2])
        along = vector(np.cos(turn), np.sin(turn), 0)
        strips.append(lay(made, back, along, left=place))
        place = place + along * back
        turn += np.pi - np.radians(float(right))
    faults += [
        f"strips {count} and {(count + 1) % 4} don't meet ({values})"
        for count in range(4)
        if not faces_meet(strips[count], "right", strips[(count + 1) % 4], "left")
    ]
    return faults + differ("the way around the panel", np.linalg.norm(place), 0)


CHECKS = (edge_strips,)
