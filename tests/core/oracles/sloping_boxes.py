"""Random sides of a sloping box, laid at a saw as they were told, cut, and put together as solids.

Each check takes a random number generator and gives what is wrong as sentences.
"""

from math import cos, radians, sin, tan

import numpy as np

from tests.core.at_the_saw import UP, both_ends, edge_of
from tests.core.exactly import exactly
from tests.core.oracles.solid import (
    board,
    faces_meet,
    overlap,
    placed,
    rotation,
    same_place,
    translation,
    vector,
)

CLOSE = 1e-6


def asked(rng, joint):
    """One question with numbers of its own."""
    sides = 4 if joint == "butt" else rng.choice([3, 4, 4, 5, 6, 8, 13])
    values = {
        "sides": str(sides),
        "wide": rng.choice(["top", "bottom"]),
        "joint": joint,
        "height": f"{rng.randint(16, 64)}/8 in",
        "slope": str(rng.choice([0, 12, 45, 33.3, 4.7])),
        "size_at": rng.choice(["top", "bottom"]),
        "size": f"{rng.randint(70, 120)} in",
        "thickness": f"{rng.randint(2, 8)}/8 in",
        "tilts": rng.choice(["left", "right", "both"]),
    }
    if sides == 4 and rng.random() < 2 / 3:
        values["other"] = f"{rng.randint(70, 120)} in"
    return values


def inches(text):
    """A length of a form as a float."""
    top, _, bottom = text.removesuffix(" in").partition("/")
    return float(top) / float(bottom or 1)


def stands(values, told):
    """Brings a side that lies outside face up to its place: seen from outside, facing -y."""
    lean = radians(told["slope"]) * (1 if values["wide"] == "top" else -1)
    return placed((0, 0, 0), (1, 0, 0), (0, -sin(lean), cos(lean)))


def cut_sides(values, told, faults):
    """Each kind of side, cut at both ends, its edges cut level, standing with its outer bottom
    edge on the x axis, the middle of it at the origin. Edges not as told are added to `faults`."""
    width, thick = told["slant"], inches(values["thickness"])
    up = stands(values, told)
    level = up.back.direction(UP)
    for (_, top), (_, bottom) in zip(told["top"], told["bottom"], strict=True):
        stock = board(width, thick).moved(translation(0, 0, -thick))
        setting = told["miter"], told["tilt"]
        made = both_ends(
            stock,
            (told["left"], told["right"]),
            width,
            setting,
            setting,
            {"top": top, "bottom": bottom},
        )
        for edge, long in (("top", top), ("bottom", bottom)):
            start, end = edge_of(made, width, edge)
            if abs(np.linalg.norm(end - start) - long) > CLOSE:
                faults.append(f"the {edge} edge is not as long as told ({values})")
        middle = edge_of(made, width, "bottom").mean(axis=0)
        # The level cuts need wood past the face's edges: the blank is a little wider.
        cut = made_wider(made).cut("rim", level, (0, width, 0)).cut("foot", -level, (0, 0, 0))
        yield made, cut.moved(translation(*-middle)).moved(up)


def made_wider(piece):
    """The piece of a board so wide that its edges are yet to be cut: only faces and ends stay."""
    kept = [row for row, name in enumerate(piece.names) if name not in ("inside", "outside")]
    return type(piece)(
        tuple(piece.names[row] for row in kept), piece.normals[kept], piece.offsets[kept]
    )


def mitered_box(rng):
    """Mitered sides close around the box, and it is as large as was asked."""
    values = asked(rng, "miter")
    told, faults = exactly("sloped_box", **values), []
    kinds = [placed_ for _, placed_ in cut_sides(values, told, faults)]
    longs = [long for _, long in told["bottom"]]
    sides = int(values["sides"])
    at, ring = vector(0, 0, 0), []
    for index in range(sides):
        side, long = kinds[index % len(kinds)], longs[index % len(kinds)]
        turn = rotation(UP, index * 360 / sides)
        along = turn.direction((1, 0, 0))
        ring.append(side.moved(turn).moved(translation(*(at + along * long / 2))))
        at = at + along * long
    if not same_place(at, (0, 0, 0)):
        faults.append("the ring does not close")
    for index, side in enumerate(ring):
        after = ring[(index + 1) % sides]
        if not faces_meet(side, "right", after, "left") or overlap(side, after) > CLOSE:
            faults.append(f"joint {index} does not meet")
        if np.abs(np.subtract(side.extent(UP), (0, inches(values["height"])))).max() > CLOSE:
            faults.append(f"side {index} is not as high as asked")
    for (_, long), key in zip(told[values["size_at"]], ("size", "other"), strict=False):
        if abs(long - inches(values[key])) > CLOSE:
            faults.append(f"{key} is {long}")
    return [f"{each} ({values})" for each in faults]


def butted_box(rng):
    """Two sides stand between the two that run through, and the box is as large as was asked."""
    values = asked(rng, "butt")
    told, faults = exactly("sloped_box", **values), []
    (_, through), (_, between) = cut_sides(values, told, faults)
    # The outer size at the bottom, from what was asked: each side leans by its slope.
    lean = 2 * inches(values["height"]) * tan(radians(told["slope"]))
    lean *= 0 if values["size_at"] == "bottom" else 1 if values["wide"] == "top" else -1
    long = inches(values["size"]) - lean
    deep = inches(values.get("other", values["size"])) - lean
    front = through.moved(translation(0, -deep / 2, 0))
    end = between.moved(rotation(UP, 90)).moved(translation(long / 2, 0, 0))
    other = between.moved(rotation(UP, -90)).moved(translation(-long / 2, 0, 0))
    for one, side, two, face, way in (
        (front, "right", end, "face", 1),
        (front, "left", other, "face", 1),
        (end, "left", front, "back", -1),
        (other, "right", front, "back", -1),
    ):
        offsets = [
            each.offsets[each.names.index(name)] for each, name in ((one, side), (two, face))
        ]
        if not same_place(one.normal(side), way * two.normal(face)):
            faults.append(f"the {side} end does not lie against the {face}")
        elif abs(offsets[0] - way * offsets[1]) > CLOSE:
            faults.append(f"the {side} end stands off the {face}")
    if max(overlap(front, end), overlap(front, other)) > CLOSE:
        faults.append("two sides overlap")
    return [f"{each} ({values})" for each in faults]


def blank(rng):
    """The blank holds its side, whether its edges are cut level or left square."""
    values = asked(rng, rng.choice(["miter", "butt"]))
    told, faults = exactly("sloped_box", **values), []
    up = stands(values, told)
    sides = cut_sides(values, told, faults)
    for (square, level), (_, long) in zip(sides, told["blanks"], strict=True):
        level = level.moved(up.back)
        for side in (square, level):
            least, most = side.extent((1, 0, 0))
            if most - least > long + CLOSE:
                faults.append("the blank is too short")
        least, most = level.extent((0, 1, 0))
        if abs(most - least - told["blank_width"]) > CLOSE:
            faults.append("the blank is not as wide as its side")
    return [f"{each} ({values})" for each in faults]


CHECKS = (mitered_box, butted_box, blank)
