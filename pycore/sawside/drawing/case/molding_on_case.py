"""A case from above with the molding on it: each piece with its number, each joint as it is cut.

Drawn in pixels of a narrow screen, so that joints stay legible, not to scale; figures are told.
Along the front y is 0, the case above it and the molding below.
"""

from dataclasses import dataclass

from sawside.drawing.lazy import lazy
from sawside.drawing.miters.run_path import Path
from sawside.drawing.miters.run_pieces import outline_of, piece_drawn
from sawside.drawing.shapes import dimension, drawing, rectangle

_WIDE, _THICK = 196, 22
_LEAST_DEEP, _MOST_DEEP = 84, 124
_WALL, _FRAME, _PAST, _SHORT, _BESIDE = 8, 9, 7, 16, 26
_DIMENSION, _TEXT = 22, 46


@dataclass(frozen=True, slots=True)
class Around:
    """A case as it is drawn, with what is around it: the sides that show, those past which its face
    frame stands (None without one), the ends of the molding by side ("wall", "cope" or "return",
    and whether short), and whether there is a wall behind it."""

    showing: tuple[str, ...]
    frame: tuple[str, ...] | None
    ends: dict[str, tuple[str, bool]]
    behind: bool


@lazy
def molding_plan(show, given, around, pieces, outermost):
    """The plan. `pieces` are those of one layer in the order in which they are cut; `outermost` is
    (the piece across the front, the text of its outside edge); `given` has the case's own width
    and depth in inches."""
    deep = _deep(given, around)
    path = _path(around, deep)
    numbers = {piece: number for number, piece in enumerate(pieces, 1)}
    outlines = {piece: _outline(piece, path, around) for piece in pieces}
    shapes = [*_walls(around, deep), *_case(around, deep)]
    for piece in sorted(pieces, key=lambda piece: piece.leg.wall):
        shapes += piece_drawn(outlines[piece], piece, numbers[piece], _THICK)
    front, text = outermost
    shapes += _dimensions(show, given, around, deep)
    _, _, right_face, left_face = outlines[front]
    shapes.append(dimension(right_face, left_face, _DIMENSION, text, "answer"))
    box = (*_sides(around, "left", deep), *_sides(around, "right", deep))
    return drawing(_words(pieces, text), box, shapes)


def _outline(piece, path, around):
    """The corners of a piece; what closes a return from a packed side reaches back to the case."""
    outline = outline_of(piece, path, _THICK, _THICK)
    side = "left" if piece.leg.key.startswith("left") else "right"
    if not (piece.leg.is_cap and side in around.showing and side in (around.frame or ())):
        return outline
    more = _PAST if side == "left" else -_PAST
    (x0, y0), second, third, (x3, y3) = outline
    return [(x0 + more, y0), second, third, (x3 + more, y3)]


def _deep(given, around):
    """How deep the case is drawn."""
    if not around.showing:
        return _LEAST_DEEP
    return min(max(_WIDE * float(given.case_depth / given.case_width), _LEAST_DEEP), _MOST_DEEP)


def _path(around, deep):
    """The line of the molding from left to right: where it ends in a return, to the outside."""
    short = {side: _SHORT * around.ends[side][1] for side in ("left", "right")}
    back = {side: (0 if side == "left" else _WIDE, short[side] - deep) for side in short}
    places, directions = [], []
    if "left" in around.showing:
        places.append(back["left"])
        directions.append((0.0, 1.0))
        short["left"] = 0
    places.append((short["left"], 0))
    directions.append((1.0, 0.0))
    places.append((_WIDE - (0 if "right" in around.showing else short["right"]), 0))
    if "right" in around.showing:
        places.append(back["right"])
        directions.append((0.0, -1.0))
    return Path([tuple(map(float, place)) for place in places], directions, False)


def _case(around, deep):
    """The case, and the face frame on it."""
    if around.frame is None:
        return [rectangle(0, -deep, _WIDE, 0, "ghost")]
    left, right = (_PAST * (side in around.frame) for side in ("left", "right"))
    return [
        rectangle(left, -deep, _WIDE - right, -_FRAME, "ghost"),
        rectangle(0, -_FRAME, _WIDE, 0, "ghost"),
    ]


def _walls(around, deep):
    """The walls, and the molding on them where an end is coped over it."""
    if around.behind:
        far = _THICK + _BESIDE
        left, right = (far if side in around.showing else _WALL for side in ("left", "right"))
        yield rectangle(-left, -deep - _WALL, _WIDE + right, -deep, "hatch")
    for side, wall, way in (("left", 0, -1), ("right", _WIDE, 1)):
        shows = side in around.showing
        if not shows:
            yield _across(wall, way * _WALL, -deep, _THICK + _BESIDE, "hatch")
        if around.ends[side][0] == "cope":
            if shows:
                yield _across(wall, way * (_THICK + _BESIDE), -deep, _THICK - deep, "ghost")
            else:
                yield _across(wall, -way * _THICK, 0, _THICK + _BESIDE, "ghost")


def _across(start, far, top, bottom, role):
    """A rectangle from an x to another one `far` from it."""
    left, right = sorted((start, start + far))
    return rectangle(left, top, right, bottom, role)


def _dimensions(show, given, around, deep):
    """The case's own width, and its depth where that counts."""
    left, right = (_PAST * (side in (around.frame or ())) for side in ("left", "right"))
    wide, top = show.brief(given.case_width), -deep
    ends = (_WIDE - right, top), (left, top)
    yield dimension(*ends, _DIMENSION, wide, field="case_width")
    if not around.showing:
        return
    text, front = show.brief(given.case_depth), -_FRAME if around.frame is not None else 0
    if "right" in around.showing:
        start, end = (_WIDE, top), (_WIDE, front)
    else:
        start, end = (0, front), (0, top)
    yield dimension(start, end, _THICK + _DIMENSION, text, field="case_depth")


def _sides(around, side, deep):
    """The box of the drawing at one side: (left, top) or (right, bottom)."""
    told = side == ("right" if "right" in around.showing else "left") and around.showing
    far = _THICK + (_DIMENSION + _TEXT if told else _BESIDE + 4)
    if side == "left":
        return -far, -deep - _WALL - 6
    return _WIDE + far, _THICK + _DIMENSION + 24


def _words(pieces, text):
    runs = ", ".join(f"{number} {piece.leg.name.lower()}" for number, piece in enumerate(pieces, 1))
    wraps = "the case" if len(pieces) > 1 else "the front of the case"
    return (
        f"Molding on {wraps}, seen from above, not to scale. In cutting order: {runs}. Across the "
        f"front: {text}."
    )
