"""Random pieces, corners and rings: built as solids from what was told, and put together.

Each function takes a random number generator, asks one question with numbers of its own, and
gives what is wrong as sentences; none when all is right. A piece lies as `solid.board` says, its
outside 0 to long. An edge miter is a cut through the thickness, so there the outside is the face.
"""

from fractions import Fraction

import numpy as np

from tests.core.exactly import exactly, pieces
from tests.core.solid import (
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


def number(rng, least, most, parts=64):
    """A random length on a mark of 1/`parts`."""
    return Fraction(rng.randint(int(least * parts), int(most * parts)), parts)


def inches(value):
    """A length as one may type it."""
    return f"{value} in"


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
    ends = {side: rng.choice(["square", "45", "other", "edge", "corner", "unequal"])
            for side in ("left", "right")}  # fmt: skip
    values = {"known": inches(number(rng, 150, 400)), "width": inches(width),
              "thickness": inches(thickness)}  # fmt: skip
    corners = {}
    for side, kind in ends.items():
        widest = 115 if kind == "unequal" else 170  # beyond it a joint of two widths leans back
        corner, neighbor = number(rng, 45, widest, 10), width * number(rng, 0.6, 1.7)
        corners[side] = (corner, neighbor)
        values |= {
            f"{side}_end": kind, f"{side}_angle": str(number(rng, 0, 60, 10)),
            f"{side}_tilt": str(number(rng, 0, 60, 10)), f"{side}_corner": str(corner),
            f"{side}_neighbor": inches(neighbor),
        }  # fmt: skip
    ways = {"edge" if kind == "edge" else "flat" for kind in ends.values() if kind != "square"}
    face = rng.choice(["inside", "outside"] + ["rabbet"] * (len(ways) < 2))
    across = thickness if ways == {"edge"} else width
    rabbet = across * number(rng, 1 / 8, 7 / 8) if len(ways) < 2 else None
    values |= {"known_face": face} | ({"rabbet": inches(rabbet)} if rabbet else {})
    told = exactly("mitered_length", **values)
    kinds = {side: "edge" if kind == "edge" else "flat" for side, kind in ends.items()}
    piece = cut_piece(
        told["long_side"], float(width), float(thickness),
        *((told[f"{side}_setting"], kinds[side]) for side in ("left", "right")),
    )  # fmt: skip
    lines = {
        "outside": piece.length("outside", "face"),
        "inside": piece.length("inside", "back"),
    }
    if rabbet:
        at = float(rabbet)
        if ways == {"edge"}:
            lines["rabbet"] = piece.cut("rabbet", (0, 0, -1), (0, 0, at)).length("rabbet", "inside")
        else:
            lines["rabbet"] = piece.cut("rabbet", (0, -1, 0), (0, at, 0)).length("rabbet", "back")
    faults = differ("the measured line", lines[face], Fraction(values["known"].removesuffix(" in")))
    faults += differ("the short side", told["short_side"], lines["inside"])
    faults += differ("the long side", told["long_side"], lines["outside"])
    if rabbet:
        faults += differ("the back of the rabbet", told["rabbet_side"], lines["rabbet"])
    for side, kind in ends.items():
        if kind in ("corner", "unequal"):
            faults += _meets(piece, side, width, thickness, *corners[side], kind)
    return [f"{each} ({values})" for each in faults]


def _meets(piece, side, width, thickness, corner, neighbor, kind):
    """Whether the neighbor, asked for by itself, meets the piece at the corner that was given."""
    other = "right" if side == "left" else "left"
    wide = neighbor if kind == "unequal" else width
    told = exactly("mitered_length", **{
        "known": "200 in", "width": inches(wide), f"{other}_end": kind, f"{side}_end": "square",
        f"{other}_corner": str(corner), f"{other}_neighbor": inches(width),
    })  # fmt: skip
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


def around(made):
    """Pieces in the order in which they come, each laid with its left heel on the last one's right,
    and turned so that the cuts lie on each other. Returns them placed."""
    placed_, at, turn = [], vector(0, 0, 0), 0.0
    for index, piece in enumerate(made):
        if index:
            before = placed_[-1]
            # The piece must turn until its left face looks at the right face of the last.
            facing, mine = -before.normal("right"), piece.normal("left")
            turn = np.degrees(np.arctan2(facing[1], facing[0]) - np.arctan2(mine[1], mine[0]))
        laid = piece.moved(rotation(UP, turn))
        laid = laid.moved(translation(*(at - _end(laid, "left"))))
        placed_.append(laid)
        at = _end(laid, "right")
    return placed_


def _end(piece, end):
    """The place where an end, the inside and the back cross."""
    rows = [piece.names.index(name) for name in (end, "inside", "back")]
    return np.linalg.solve(piece.normals[rows], piece.offsets[rows])


def _toe(piece, end):
    rows = [piece.names.index(name) for name in (end, "outside", "back")]
    return np.linalg.solve(piece.normals[rows], piece.offsets[rows])


def _closed(ring):
    faults = []
    for index, piece in enumerate(ring):
        faults += together(piece, "right", ring[(index + 1) % len(ring)], "left", f"joint {index}")
    return faults


def _told_setting(end):
    return float(end.angle.split("°")[0].removeprefix("≈ "))


def frame_around(rng):
    """A rectangular frame closes, and the thing fits with its clearance, reveal or size."""
    stock = [number(rng, 1, 6) for _ in range(3)]
    if rng.random() < 1 / 3:
        stock = [stock[0]] * 3
    side, top, bottom = stock
    values = {
        "around": rng.choice(["panel", "opening", "inside", "outside"]),
        "width": inches(number(rng, 30, 80)), "height": inches(number(rng, 30, 80)),
        "stock": inches(side), "top_stock": inches(top), "bottom_stock": inches(bottom),
        "rabbet": inches(min(stock) * number(rng, 1 / 4, 3 / 4)),
        "clearance": inches(number(rng, 0, 1 / 2)), "reveal": inches(number(rng, 0, 1)),
        "stick": "20 ft",
    }  # fmt: skip
    told = exactly("frame_around", **values)
    cut = {}
    for part in pieces("frame_around", **values):
        settings = _settings_of(part, side, top, bottom)
        made = cut_piece(float(part.long_side), float(part.width), 0.75, *settings)
        for name in {"rail": ("top", "bottom"), "upright": ("left", "right")}.get(
            part.key, (part.key,)
        ):
            cut[name] = made
            for end, (degrees, _) in zip((part.left, part.right), settings, strict=True):
                if abs(_told_setting(end) - degrees) > 0.0501:
                    return [f"{name}: told {end.angle}, is {degrees} ({values})"]
    # Seen with the outer edge up the right end of a piece meets the left end of the next one
    # going around with the hands of a clock.
    ring = around([cut[name] for name in ("top", "right", "bottom", "left")])
    faults = _closed(ring)
    faults += _fits(ring, told, values)
    return [f"{each} ({values})" for each in faults]


def _settings_of(part, side, top, bottom):
    meets = {"rail": (side, side), "top": (side, side), "bottom": (side, side),
             "upright": (top, top), "left": (bottom, top), "right": (top, bottom)}  # fmt: skip
    own = float(part.width)
    return [(np.degrees(np.arctan2(float(each), own)), "flat") for each in meets[part.key]]


def _given(values, key):
    return float(Fraction(values[key].removesuffix(" in")))


def _fits(ring, told, values):
    """The distances between opposite faces, against what was asked and what was told."""
    faults = []
    spans = {"width": ((1, 0, 0), ring[1], ring[3]), "height": ((0, 1, 0), ring[0], ring[2])}
    for row, (key, (along, one, other)) in enumerate(spans.items()):
        inside = _apart(one, other, "inside", along)
        outside = _apart(one, other, "outside", along)
        rabbet, clearance = _given(values, "rabbet"), _given(values, "clearance")
        asked = {
            "panel": inside + 2 * rabbet - 2 * clearance,
            "opening": inside - 2 * _given(values, "reveal"),
            "inside": inside,
            "outside": outside,
        }[values["around"]]
        faults += differ(f"the {key} of the thing", asked, _given(values, key))
        faults += differ(f"told inside {key}", told["inside"][row][1], inside)
        faults += differ(f"told outside {key}", told["outside"][row][1], outside)
        if values["around"] == "panel":
            faults += differ("rabbet to rabbet", told["rabbet_size"][row][1], inside + 2 * rabbet)
    return faults


def _apart(one, other, face, along):
    """How far two faces are apart along a direction that is square to both."""
    places = [piece.face(face) @ vector(*along) for piece in (one, other)]
    for each in places:
        assert np.ptp(each) < 1e-6, "the face is not square to the direction"
    return abs(places[0][0] - places[1][0])


def frame_of_equal_sides(rng):
    """A regular frame closes, and what it goes around touches all sides alike."""
    sides, stock = rng.randint(3, 24), number(rng, 1, 5)
    values = {
        "sides": str(sides), "around": rng.choice(["panel", "opening", "inside", "outside"]),
        "size_is": rng.choice(["across", "side"]), "stock": inches(stock), "stick": "90 ft",
        "rabbet": inches(stock * number(rng, 1 / 4, 3 / 4)),
        "clearance": inches(number(rng, 0, 1 / 2)), "reveal": inches(number(rng, 0, 1)),
    }  # fmt: skip
    values["size"] = inches(
        number(rng, 20, 60) if values["size_is"] == "across" else number(rng, 36, 50)
    )
    told = exactly("frame_of_equal_sides", **values)
    long = told["long_sides"][0][1]
    piece = cut_piece(long, float(stock), 0.75, *[(told["setting"], "flat")] * 2)
    ring = around([piece] * sides)
    faults = _closed(ring)
    faults += differ("the short side", told["short_sides"][0][1], piece.length("inside", "back"))
    middle = np.mean([_end(each, "left") for each in ring], axis=0)
    away = [-(each.normal("inside") @ middle - each.offsets[each.names.index("inside")])
            for each in ring]  # fmt: skip
    if np.ptp(away) > 1e-6:
        faults.append("the sides do not lie alike around the middle")
    inside = abs(away[0])
    thing = {
        "panel": inside + _given(values, "rabbet") - _given(values, "clearance"),
        "opening": inside - _given(values, "reveal"),
        "inside": inside,
        "outside": inside + float(stock),
    }[values["around"]]
    if values["size_is"] == "side":
        # The corners of the thing lie on the lines from the middle to the joints.
        thing *= np.linalg.norm(_end(ring[0], "right") - _end(ring[0], "left")) / inside
    else:
        thing *= 2
    faults += differ("the size of the thing", thing, _given(values, "size"))
    return [f"{each} ({values})" for each in faults]


def corner_setting(rng):
    """Two pieces cut as told for three lengths meet on the legs that were measured."""
    one, other = number(rng, 12, 40), number(rng, 12, 40)
    turn = np.radians(rng.uniform(25, 170))
    across = np.sqrt(float(one**2 + other**2) - 2 * float(one * other) * np.cos(turn))
    across = Fraction(round(across * 64), 64)
    values = {"found": "lengths", "one_leg": inches(one), "other_leg": inches(other),
              "across": inches(across), "length_off": "1/64 in"}  # fmt: skip
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


def error_shows(rng):
    """The gaps of pieces that are cut off their setting, measured between the solids' corners."""
    corners = rng.choice([4, 4, rng.randint(3, 24)])
    true = 180 / corners
    small = rng.random() < 1 / 2
    off, width = number(rng, 1 / 100, 2, 100), number(rng, 1 / 2, 6)
    side = number(rng, 20, 40)
    other = number(rng, 20, 40) if corners == 4 else side
    values = {
        "error": "setting", "corners": str(corners), "width": inches(width),
        "angle_off": str(off), "angle_way": "small" if small else "large", "side": inches(side),
    } | ({"other_side": inches(other)} if corners == 4 else {})  # fmt: skip
    told = exactly("error_shows", **values)
    cut = true - float(off) if small else true + float(off)
    adds = 2 * float(width) * np.tan(np.radians(cut))
    made = [cut_piece(float(each) + adds, float(width), 1, (cut, "flat"), (cut, "flat"))
            for each in (side, other)]  # fmt: skip
    ring = around([made[index % 2] for index in range(corners)])
    first, last = ring[0], ring[-1]
    faults = differ(
        "last heel", told["last_heel"], np.linalg.norm(_end(last, "right") - _end(first, "left"))
    )
    faults += differ(
        "last toe", told["last_toe"], np.linalg.norm(_toe(last, "right") - _toe(first, "left"))
    )
    faces = first.normal("left") @ -last.normal("right")
    faults += differ("closing", told["closing"], np.degrees(np.arccos(np.clip(faces, -1, 1))))
    # Held at the true corner, touching at the heel, or at the toe where the cuts are too steep.
    touch, gap = (_end, _toe) if small else (_toe, _end)
    one, mate = made[0], made[0]
    mate = mate.moved(rotation(UP, 2 * true))
    one = one.moved(translation(*-touch(one, "left")))
    mate = mate.moved(translation(*-touch(mate, "right")))
    faults += differ("gap", told["gap"], np.linalg.norm(gap(one, "left") - gap(mate, "right")))
    faults += ["held true they overlap"] if overlap(one, mate) > 1e-6 else []
    return [f"{each} ({values})" for each in faults]


CHECKS = (
    mitered_length,
    frame_around,
    frame_of_equal_sides,
    corner_setting,
    error_shows,
)
