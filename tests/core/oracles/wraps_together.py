"""Random wraps, coped walls and edge strips: cut as they were told, and put together as solids.

Each function takes a random number generator, asks one question with numbers of its own, and gives
what is wrong as sentences; none when all is right. Nothing but told numbers and the measured
corners goes in. Seen from above, the front runs along x and the case lies behind it.
"""

from fractions import Fraction
from itertools import pairwise

import numpy as np

from sawside.lengths.real import nearby
from tests.core.exactly import pieces
from tests.core.oracles.put_together import differ, inches, number
from tests.core.oracles.solid import NEAR, board, faces_meet, overlap, placed, vector

ORDER = ("left_self_return", "left", "front", "right", "right_self_return")
TURNED = {"left": "right", "right": "left"}


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


def wrap(rng):
    """A wrap of any layers, corners and ends closes, layer upon layer, within what was measured."""
    where = rng.choice(["case", "alcove"])
    width = number(rng, 25, 90)
    thick = [number(rng, 1 / 8, 1, 32) for _ in range(rng.randint(1, 3))]
    values = {
        "around": where,
        "width": inches(width),
        "layers": [{"projection": inches(each)} for each in thick],
    }
    sides = {}
    for side in ("left", "right"):
        ending = rng.choice(["wall", "board", "self_return", "none"])
        if ending == "none" and sides.get("left", ("",))[0] == "none":
            ending = "wall"
        corner, depth = Fraction(rng.randint(60 * 50, 120 * 50), 50), number(rng, 12, 30)
        on_the_wall, scribe = number(rng, 1 / 8, 1), number(rng, 0, 1)
        sides[side] = (ending, corner, depth, on_the_wall, scribe)
        names = ("side", "corner", "depth", "board", "scribe")
        texts = (ending, f"{corner}", inches(depth), inches(on_the_wall), inches(scribe))
        values |= {f"{side}_{name}": text for name, text in zip(names, texts, strict=True)}
    told = {part.key: part for part in pieces("wrap", **values)}
    faults = []
    layers = [_layer(told, layer, where) for layer in range(1, len(thick) + 1)]
    for under, over in zip([None, *layers], layers, strict=False):
        over = _placed(over, under, sides, where, width)
        faults += _closes(over, under)
    outermost = layers[-1]
    faults += _ends(outermost, sides, where, width)
    return [f"{each} ({values})" for each in faults]


def _layer(told, layer, where):
    """The solids of one layer, by run, each still at the origin, with its length at the back."""
    run = {"case": "return", "alcove": "wall"}[where]
    made = {}
    for name in ORDER:
        key = f"{name}_{run}" if name in TURNED else name
        if part := told.get(f"layer_{layer}_{key}"):
            made[name] = stands(part, face_is_long=where == "case" or _longer_at_face(part))
    return made


def _longer_at_face(part):
    """Which side of a part in an alcove is long: its face where the saw turns to the ends."""
    grows = 0.0
    for side in ("left", "right"):
        angle = getattr(part, side).angle
        if "swung" in angle:
            turn = np.tan(np.radians(float(angle.split("°")[0].split(" ")[-1])))
            grows += turn if f"swung {side}" in angle else -turn
    return grows > 0


def _directions(sides, where):
    """The direction away from the front along each side, from its measured corner."""
    turns = {side: float(sides[side][1]) for side in sides}
    if where == "alcove":
        turns = {side: 360 - turn for side, turn in turns.items()}
    left, right = np.radians(turns["left"]), np.radians(turns["right"])
    return {
        "left": vector(np.cos(left), np.sin(left), 0),
        "right": vector(-np.cos(right), np.sin(right), 0),
    }


def _placed(layer, under, sides, where, width):
    """The solids of a layer in their places: on the case, or on the faces of the layer beneath."""
    away = _directions(sides, where)
    starts = {"left": vector(0, 0, 0), "right": vector(float(width), 0, 0)}
    if under:
        starts = {
            "left": corner_of(under["front"], "left", "outside"),
            "right": corner_of(under["front"], "right", "outside"),
        }
    scribed = float(sides["left"][4]) if sides["left"][0] == "none" and not under else 0.0
    made, back = layer["front"]
    layer["front"] = lay(made, back, vector(1, 0, 0), left=starts["left"] - (scribed, 0, 0))
    for side, along in (("left", -away["left"]), ("right", away["right"])):
        if side not in layer:
            continue
        made, back = layer[side]
        at = {"right": starts["left"]} if side == "left" else {"left": starts["right"]}
        layer[side] = lay(made, back, along, **at)
        cap = f"{side}_self_return"
        if cap in layer:
            outward = vector(along[1], -along[0], 0)
            made, back = layer[cap]
            turn = corner_of(layer[side], side, "inside")
            at = {"right": turn} if side == "left" else {"left": turn}
            layer[cap] = lay(made, back, outward if side == "left" else -outward, **at)
    return layer


def _closes(layer, under):
    """What is wrong at the joints of a layer, and where it lies on the one beneath."""
    order = [run for run in ORDER if run in layer]
    for one, other in pairwise(order):
        if not faces_meet(layer[one], "right", layer[other], "left"):
            yield f"{one} and {other} don't meet"
        if overlap(layer[one], layer[other]) > NEAR:
            yield f"{one} and {other} overlap"
    for run in order:
        lies = under is None or faces_meet(under[run], "outside", layer[run], "inside")
        if not lies:
            yield f"{run} doesn't lie on the layer beneath"


def _ends(layer, sides, where, width):
    """Whether the outermost layer ends where it was asked to, along each side."""
    away = _directions(sides, where)
    for side, (ending, _, depth, on_the_wall, scribe) in sides.items():
        corner = vector(0 if side == "left" else float(width), 0, 0)
        run, direction, asked = "front", vector(-1 if side == "left" else 1, 0, 0), scribe
        if ending != "none":
            run, direction = side, away[side]
            asked = {
                "wall": depth + scribe,
                "board": depth + scribe - on_the_wall,
                "self_return": depth,
            }[ending]
        reached = (corner_of(layer[run], side, "outside") - corner) @ direction
        yield from differ(f"the {side} end of the {run}", reached, asked)
        if ending == "self_return":
            cap = layer[f"{side}_self_return"]
            outward = vector(direction[1], -direction[0], 0) * (-1 if side == "left" else 1)
            nearest = min((cap.vertices() - corner) @ outward)
            yield from differ(f"the {side} self-return from the case", nearest, 0)


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


CHECKS = (wrap, edge_strips)
