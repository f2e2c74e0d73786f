"""Random frames: cut as solids from what was told, and laid one after another around the ring.

Each function takes a random number generator, asks one question with numbers of its own, and
gives what is wrong as sentences; none when all is right.
"""

from fractions import Fraction

import numpy as np

from tests.core.asking import inches
from tests.core.exactly import exactly, pieces
from tests.core.oracles.put_together import UP, cut_piece, differ, together
from tests.core.oracles.random_forms import number
from tests.core.oracles.solid import overlap, rotation, translation, vector


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
        "width": inches(number(rng, 30, 80)),
        "height": inches(number(rng, 30, 80)),
        "stock": inches(side),
        "top_stock": inches(top),
        "bottom_stock": inches(bottom),
        "rabbet": inches(min(stock) * number(rng, 1 / 4, 3 / 4)),
        "clearance": inches(number(rng, 0, 1 / 2)),
        "reveal": inches(number(rng, 0, 1)),
        "stick": "20 ft",
    }
    told = exactly("mitered_frame", **values)
    cut = {}
    for part in pieces("mitered_frame", **values):
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
    meets = {
        "rail": (side, side),
        "top": (side, side),
        "bottom": (side, side),
        "upright": (top, top),
        "left": (bottom, top),
        "right": (top, bottom),
    }
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
        "shape": "polygon",
        "sides": str(sides),
        "around": rng.choice(["panel", "opening", "inside", "outside"]),
        "size_is": rng.choice(["across", "side"]),
        "stock": inches(stock),
        "stick": "90 ft",
        "rabbet": inches(stock * number(rng, 1 / 4, 3 / 4)),
        "clearance": inches(number(rng, 0, 1 / 2)),
        "reveal": inches(number(rng, 0, 1)),
    }
    least, most = (20, 60) if values["size_is"] == "across" else (36, 50)
    values["size"] = inches(number(rng, least, most))
    told = exactly("mitered_frame", **values)
    long = told["long_sides"][0][1]
    piece = cut_piece(long, float(stock), 0.75, *[(told["setting"], "flat")] * 2)
    ring = around([piece] * sides)
    faults = _closed(ring)
    faults += differ("the short side", told["short_sides"][0][1], piece.length("inside", "back"))
    faults += _touches(ring, values)
    return [f"{fault} ({values})" for fault in faults]


def _touches(ring, values):
    """What a regular frame goes around lies alike at all sides, and is as large as typed."""
    middle = np.mean([_end(piece, "left") for piece in ring], axis=0)
    away = [
        -(piece.normal("inside") @ middle - piece.offsets[piece.names.index("inside")])
        for piece in ring
    ]
    faults = ["the sides do not lie alike around the middle"] if np.ptp(away) > 1e-6 else []
    inside = abs(away[0])
    thing = {
        "panel": inside + _given(values, "rabbet") - _given(values, "clearance"),
        "opening": inside - _given(values, "reveal"),
        "inside": inside,
        "outside": inside + _given(values, "stock"),
    }[values["around"]]
    if values["size_is"] == "side":
        # The corners of the thing lie on the lines from the middle to the joints.
        thing *= np.linalg.norm(_end(ring[0], "right") - _end(ring[0], "left")) / inside
    else:
        thing *= 2
    return faults + differ("the size of the thing", thing, _given(values, "size"))


def gap_of_an_angle(rng):
    """The gaps of pieces that are cut off their setting, measured between the solids' corners."""
    corners = rng.choice([4, 4, rng.randint(3, 24)])
    true, small = 180 / corners, rng.random() < 1 / 2
    off, width = number(rng, 1 / 100, 2, 100), number(rng, 1 / 2, 6)
    side = number(rng, 20, 40)
    other = number(rng, 20, 40) if corners == 4 else side
    values = {
        "asked": "angle",
        "corners": str(corners),
        "width": inches(width),
        "angle_off": str(off),
        "angle_way": "small" if small else "large",
        "side": inches(side),
    } | ({"other_side": inches(other)} if corners == 4 else {})
    told = exactly("miter_gap", **values)
    cut = true - float(off) if small else true + float(off)
    adds = 2 * float(width) * np.tan(np.radians(cut))
    pair = [
        cut_piece(float(long) + adds, float(width), 1, (cut, "flat"), (cut, "flat"))
        for long in (side, other)
    ]
    faults = _pulled_tight(around([pair[index % 2] for index in range(corners)]), told)
    faults += _held_true(pair[0], true, told, small=small)
    return [f"{fault} ({values})" for fault in faults]


def _pulled_tight(ring, told):
    """The last joint of a ring whose other joints are all closed."""
    first, last = ring[0], ring[-1]
    faces = first.normal("left") @ -last.normal("right")
    faults = differ("closing", told["closing"], np.degrees(np.arccos(np.clip(faces, -1, 1))))
    for key, place in (("last_heel", _end), ("last_toe", _toe)):
        apart = np.linalg.norm(place(last, "right") - place(first, "left"))
        faults += differ(key, told[key], apart)
    return faults


def _held_true(piece, true, told, *, small):
    """Two pieces at the true corner, touching at the heel, or at the toe where cut too steep."""
    touch, gap = (_end, _toe) if small else (_toe, _end)
    mate = piece.moved(rotation(UP, 2 * true))
    one = piece.moved(translation(*-touch(piece, "left")))
    mate = mate.moved(translation(*-touch(mate, "right")))
    faults = differ("gap", told["gap"], np.linalg.norm(gap(one, "left") - gap(mate, "right")))
    return faults + (["held true they overlap"] if overlap(one, mate) > 1e-6 else [])


CHECKS = (frame_around, frame_of_equal_sides, gap_of_an_angle)
