"""A saw for tests: pieces lie on it as they were told, and its blade cuts their solids.

The person stands at the front; x goes to the right, y away to the fence, z up.
"""

import re

import numpy as np

from tests.core.oracles.solid import rotation, vector

UP = vector(0, 0, 1)
LAID = re.compile(
    r"(?P<edge>top|bottom) edge against the fence, "
    r"miter ((?P<turn>left|right) .*|0), bevel ((?P<tilt>left|right) .*|0)\. "
    r"Keep the part to the (?P<keep>left|right) of the blade\.$"
)


def blade(turn, miter, tilt, bevel):
    """The normal of the blade's plane, to the right: `turn` is where the front of the saw went,
    `tilt` where the top of the blade did, by so many degrees."""
    turned = np.radians(miter if turn == "right" else -miter)
    leaned = np.radians(bevel if tilt == "left" else -bevel)
    across = vector(np.cos(turned), np.sin(turned), 0)
    return across * np.cos(leaned) + UP * np.sin(leaned)


def sawn(piece, end, motion, normal, keep, mark):
    """The piece cut through a mark in its own axes, where `motion` brings it to the saw."""
    out = normal if keep == "left" else -normal
    return piece.cut(end, motion.back.direction(out), mark)


def cut_flat(piece, told, end, miter, tilt, marks):
    """An end as told, face up; the piece has its top edge away from y = 0 and its face on top.

    `marks` are places on its top and its bottom edge.
    """
    laid = LAID.search(told)
    motion = rotation(UP, 0 if laid["edge"] == "top" else 180)
    normal = blade(laid["turn"], miter, laid["tilt"], tilt)
    return sawn(piece, end, motion, normal, laid["keep"], marks[laid["edge"]])


def both_ends(piece, told, width, first, second, edges):
    """The piece between its two cuts, each set on its mark at the fence: `told` and the (miter,
    tilt) of both ends, and how long the `edges` are, the face being at z = 0."""
    start = {"top": (0, width, 0), "bottom": (0, 0, 0)}
    made = cut_flat(piece, told[0], "left", *first, start)
    # From where the first cut has left each edge the length of that edge is measured.
    normal, offset = made.normal("left"), made.offsets[made.names.index("left")]
    marks = {
        edge: ((offset - normal[1] * y) / normal[0] + edges[edge], y, 0)
        for edge, y in (("top", width), ("bottom", 0))
    }
    return cut_flat(made, told[1], "right", *second, marks)


def edge_of(piece, width, edge):
    """The two ends of an edge of the face, left one first."""
    corners = piece.vertices()
    at = np.abs(corners[:, 2]) + np.abs(corners[:, 1] - (width if edge == "top" else 0)) < 1e-7
    ends = corners[at]
    return ends[np.argsort(ends[:, 0])]
