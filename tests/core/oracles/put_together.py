"""Random pieces and corners: built as solids from what was told, and put together.

Each function takes a random number generator, asks one question with numbers of its own, and
gives what is wrong as sentences; none when all is right. A piece lies as `solid.board` says, its
outside 0 to long. An edge miter is a cut through the thickness, so there the outside is the face.
"""

from fractions import Fraction

import numpy as np

from tests.core.asking import inches
from tests.core.exactly import exactly
from tests.core.oracles.random_forms import number
from tests.core.oracles.solid import (
    NEAR,
    board,
    faces_meet,
    overlap,
    placed,
    rotation,
    same_place,
    translation,
    vector,
)

UP = vector(0, 0, 1)
STAND = placed((0, 0, 0), (1, 0, 0), (0, 0, -1))
"""Turns a piece so that its face, the outside of an edge miter, points along y."""


def differ(what, found, asked):
    """A fault when two numbers differ."""
    far = abs(float(found) - float(asked)) > 10 * NEAR * max(1, abs(float(asked)))
    return [f"{what} is {found}, not {asked}"] if far else []


def cut_piece(long, width, thickness, left, right):
    """A board cut at both ends; an end is (setting from square, "flat" or "edge")."""
    made = board(width, thickness)
    for name, at, way, (degrees, kind) in (("left", 0, -1, left), ("right", long, 1, right)):
        turn = np.radians(degrees)
        out = (-np.sin(turn), 0) if kind == "flat" else (0, -np.sin(turn))
        made = made.cut(name, (way * np.cos(turn), *out), (at, width, thickness))
    return made


def heel(piece, end, kind="flat"):
    """The inner corner of an end, at the back of a flat piece or inside of one on edge."""
    start = piece.edge("inside", "back")
    return start[np.argsort(start[:, 0])][0 if end == "left" else 1]


def mitered_length(rng):
    """One piece, ends of any kind: its lines are as long as told, and it meets its neighbors."""
    width, thickness = number(rng, 1 / 4, 12), number(rng, 1 / 8, 3)
    kinds = {
        side: rng.choice(["square", "45", "other", "edge", "corner", "unequal"])
        for side in ("left", "right")
    }
    values = {
        "known": inches(number(rng, 150, 400)),
        "width": inches(width),
        "thickness": inches(thickness),
    }
    corners = {}
    for side, kind in kinds.items():
        corners[side], end = _end_at_random(rng, side, kind, width)
        values |= end
    ways = {"edge" if kind == "edge" else "flat" for kind in kinds.values() if kind != "square"}
    face = rng.choice(["inside", "outside"] + ["rabbet"] * (len(ways) < 2))
    across = thickness if ways == {"edge"} else width
    rabbet = across * number(rng, 1 / 8, 7 / 8) if len(ways) < 2 else None
    values |= {"known_face": face} | ({"rabbet": inches(rabbet)} if rabbet else {})
    told = exactly("mitered_length", **values)
    ends = (
        (told[f"{side}_setting"], "edge" if kinds[side] == "edge" else "flat")
        for side in ("left", "right")
    )
    piece = cut_piece(told["long_side"], float(width), float(thickness), *ends)
    faults = _lines_differ(piece, told, values, rabbet, on_edge=ways == {"edge"})
    for side, kind in kinds.items():
        if kind in ("corner", "unequal"):
            faults += _meets(piece, side, width, thickness, *corners[side], kind)
    return [f"{fault} ({values})" for fault in faults]


def _end_at_random(rng, side, kind, width):
    """(corner and the neighbor's width, what is typed) of one end."""
    widest = 115 if kind == "unequal" else 170  # beyond it a joint of two widths leans back
    corner, neighbor = number(rng, 45, widest, 10), width * number(rng, 0.6, 1.7)
    return (corner, neighbor), {
        f"{side}_end": kind,
        f"{side}_angle": str(number(rng, 0, 60, 10)),
        f"{side}_tilt": str(number(rng, 0, 60, 10)),
        f"{side}_corner": str(corner),
        f"{side}_neighbor": inches(neighbor),
    }


def _lines_differ(piece, told, values, rabbet, *, on_edge):
    """The lines of the solid against what was measured and what was told."""
    lines = {"outside": piece.length("outside", "face"), "inside": piece.length("inside", "back")}
    keys = {"outside": "long_side", "inside": "short_side"}
    if rabbet:
        keys["rabbet"], at = "rabbet_side", float(rabbet)
        if on_edge:
            lines["rabbet"] = piece.cut("rabbet", (0, 0, -1), (0, 0, at)).length("rabbet", "inside")
        else:
            lines["rabbet"] = piece.cut("rabbet", (0, -1, 0), (0, at, 0)).length("rabbet", "back")
    known = Fraction(values["known"].removesuffix(" in"))
    faults = differ("the measured line", lines[values["known_face"]], known)
    for line, key in keys.items():
        faults += differ(key, told[key], lines[line])
    return faults


def _meets(piece, side, width, thickness, corner, neighbor, kind):
    """Whether the neighbor, asked for by itself, meets the piece at the corner that was given."""
    other = "right" if side == "left" else "left"
    wide = neighbor if kind == "unequal" else width
    told = exactly(
        "mitered_length",
        **{
            "known": "200 in",
            "width": inches(wide),
            f"{other}_end": kind,
            f"{side}_end": "square",
            f"{other}_corner": str(corner),
            f"{other}_neighbor": inches(width),
        },
    )
    ends = [(told[f"{each}_setting"], "flat") for each in ("left", "right")]
    mate = cut_piece(told["long_side"], float(wide), float(thickness), *ends)
    # Both heels to the origin; the mate's inner edge is then turned away by what lies between.
    piece = piece.moved(translation(*-heel(piece, side)))
    mate = mate.moved(translation(*-heel(mate, other)))
    turn = 180 - float(corner)
    mate = mate.moved(rotation(UP, turn if side == "left" else -turn))
    return together(piece, side, mate, other, f"the {side} end")


def together(one, end, other, end_of_other, what):
    """A fault when two ends do not lie on each other, or the pieces run into each other."""
    faults = [] if faces_meet(one, end, other, end_of_other) else [f"{what} does not meet"]
    return faults + ([f"{what} overlaps"] if overlap(one, other) > 1e-6 else [])


def corner_setting(rng):
    """Two pieces cut as told for three lengths meet on the legs that were measured."""
    one, other = number(rng, 12, 40), number(rng, 12, 40)
    turn = np.radians(rng.uniform(25, 170))
    across = np.sqrt(float(one**2 + other**2) - 2 * float(one * other) * np.cos(turn))
    across = Fraction(round(across * 64), 64)
    values = {
        "found": "lengths",
        "one_leg": inches(one),
        "other_leg": inches(other),
        "across": inches(across),
        "length_off": "1/64 in",
    }
    told = exactly("corner_setting", **values)
    # The mark on the other wall: where two circles cross.
    a, b, c = float(one), float(other), float(across)
    x = (a * a + b * b - c * c) / (2 * a)
    mark = vector(x, -np.sqrt(b * b - x * x), 0)
    ends = ((told["setting"], "flat"), (0, "flat"))
    left = cut_piece(30 + a, 2, 1, *ends)
    right = cut_piece(30 + b, 2, 1, *reversed(ends))
    left = left.moved(translation(*-heel(left, "left")))
    right = right.moved(translation(*-heel(right, "right")))
    turned = np.degrees(np.arctan2(-mark[1], -mark[0]))
    right = right.moved(rotation(UP, turned))
    faults = together(left, "left", right, "right", "the corner")
    along = right.edge("inside", "back")
    ends = along[np.argsort(np.linalg.norm(along, axis=1))]
    if not same_place(ends[1] / np.linalg.norm(ends[1]), mark / np.linalg.norm(mark)):
        faults.append("the piece does not lie along the measured leg")
    return [f"{each} ({values})" for each in faults]


CHECKS = (mitered_length, corner_setting)
