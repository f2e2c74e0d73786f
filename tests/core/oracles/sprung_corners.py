"""Random crown, laid at a saw as it was told, cut, and put up as solids: the ends must meet.

Each check takes a random number generator and gives what is wrong as sentences.
"""

import re

import numpy as np

from tests.core.at_the_saw import UP, blade, both_ends, edge_of, sawn
from tests.core.exactly import exactly
from tests.core.oracles.solid import (
    bar,
    faces_meet,
    overlap,
    placed,
    rotation,
    same_place,
    translation,
    vector,
)

HELD = re.compile(
    r"^Top edge on the table, bottom edge against the fence: miter (left|right) .*, "
    r"bevel 0\. Mark the bottom edge\. Keep the part to the (left|right) of the blade\.$"
)
CLOSE = 1e-7


def molding(width, spring):
    """A bar as it lies on its back: x along, y from bottom (0) to top edge, z up to the face (0);
    its flats for the wall and the ceiling are square to each other."""
    turn = np.radians(spring)
    thick = 0.4 * width * np.sin(turn) * np.cos(turn)
    wall, ceiling = thick / np.tan(turn), thick * np.tan(turn)
    return bar([(0, 0), (width, 0), (width - ceiling, -thick), (wall, -thick)])


def cut_piece(told, width, spring):
    """The piece cut flat as it was told."""
    settings = [told[key] for key in ("miter", "tilt")]
    right = [told.get(f"right_{key}", told[key]) for key in ("miter", "tilt")]
    texts = told["left_flat"], told["right_flat"]
    return both_ends(molding(width, spring), texts, width, settings, right, told)


def hung(spring, along):
    """Brings a piece on its back to a wall that runs `along`, as one sees it from the room."""
    along = np.asarray(along, dtype=float)
    out, turn = np.cross(along, UP), np.radians(spring)
    return placed((0, 0, 0), along, out * np.sin(turn) + UP * np.cos(turn))


def asked(rng):
    """One question with numbers of its own."""
    spring = rng.choice([38, 45, 30, rng.randint(60, 840) / 10])
    values = {
        "spring": f"{spring}",
        "width": f"{rng.randint(8, 60)}/8 in",
        "tilts": rng.choice(["left", "right", "both"]),
        "measured_on": rng.choice(["top", "bottom"]),
        "measured": f"{rng.randint(150, 300)} in",
    }
    for side in ("left", "right"):
        values[f"{side}_end"] = rng.choice(["inside", "outside"])
        values[f"{side}_corner"] = str(rng.choice([90, rng.randint(400, 1790) / 10]))
    return values


def eval_inches(text):
    """A length of a form as a float."""
    top, _, bottom = text.removesuffix(" in").partition("/")
    return float(top) / float(bottom or 1)


def crown_corner(rng):
    """The right end of one piece and the left end of the next: inside, outside, any spring."""
    one, two = asked(rng), asked(rng)
    for key in ("spring", "width"):
        two[key] = one[key]
    two["left_end"], two["left_corner"] = one["right_end"], one["right_corner"]
    spring, width = float(one["spring"]), eval_inches(one["width"])
    told = [exactly("crown", **values) for values in (one, two)]
    made = [cut_piece(each, width, spring) for each in told]
    faults = []
    for piece, values, each in zip(made, (one, two), told, strict=True):
        for edge in ("top", "bottom"):
            start, end = edge_of(piece, width, edge)
            if abs(np.linalg.norm(end - start) - each[edge]) > CLOSE:
                faults.append(f"the {edge} edge is not as long as told ({values})")
        if abs(each[values["measured_on"]] - eval_inches(values["measured"])) > CLOSE:
            faults.append(f"the measured edge is not as it was measured ({values})")
    corner = float(one["right_corner"])
    turn = 180 + (corner if one["right_end"] == "inside" else -corner)
    next_along = rotation(UP, turn).direction((1, 0, 0))
    first, second = made
    first = first.moved(translation(*-edge_of(first, width, "bottom")[1]))
    first = first.moved(hung(spring, (1, 0, 0)))
    second = second.moved(translation(*-edge_of(second, width, "bottom")[0]))
    second = second.moved(hung(spring, next_along))
    if not faces_meet(first, "right", second, "left"):
        faults.append(f"the corner does not meet ({one}, {two})")
    if overlap(first, second) > 1e-6:
        faults.append(f"the pieces overlap ({one}, {two})")
    return faults


def crown_held(rng):
    """Held in its place the saw makes the same cut as flat on the table."""
    values = asked(rng)
    told = exactly("crown", **values)
    spring, width = float(values["spring"]), eval_inches(values["width"])
    flat = cut_piece(told, width, spring)
    # Upside down: turned half around the direction that looks out of the wall, which is the fence.
    motion = hung(spring, (1, 0, 0)).then(rotation(vector(0, 1, 0), 180))
    starts = edge_of(flat, width, "bottom")
    faults = []
    for row, side in enumerate(("left", "right")):
        turn, keep = HELD.match(told[f"{side}_up"]).groups()
        miter = told.get("right_held", told["held"]) if side == "right" else told["held"]
        normal = blade(turn, miter, "left", 0)
        held = sawn(molding(width, spring), side, motion, normal, keep, starts[row])
        if not same_place(held.normal(side), flat.normal(side)):
            faults.append(f"the {side} end held is not as cut flat ({values})")
    return faults


CHECKS = (crown_corner, crown_held)
