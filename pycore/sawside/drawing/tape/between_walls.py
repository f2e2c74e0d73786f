"""What was held between two walls to measure an opening. Not to scale: it shows what adds up."""

from functools import partial
from itertools import pairwise

from sawside.drawing.shapes import dimension, drawing, label, line, rectangle
from sawside.drawing.tape.ruler import WIDTH
from sawside.lengths.real import nearby

_LEFT, _RIGHT = 14, WIDTH - 14
_FLOOR = 0


def between_walls(way, inside, parts, show):
    """The drawing for a way of measuring: "case", "block", "bent" (one part) or "sticks".

    `parts` are what was measured, exact inches: the reading and what stands beyond it, or two
    sticks and their overlap.
    """
    shapes, words = _WAYS[way](parts, show)
    bottom = 62 if way == "sticks" else 44
    wide = dimension((_LEFT, -58), (_RIGHT, -58), 22, show.brief(inside), "answer")
    walls = [rectangle(0, -96, _LEFT, 10, "hatch"), rectangle(_RIGHT, -96, WIDTH, 10, "hatch")]
    edges = [line((_LEFT, _FLOOR), (_RIGHT, _FLOOR), "edge")]
    said = f"Between two walls: {words} Wall to wall is {show.brief(inside)}."
    return drawing(said, (0, -98, WIDTH, bottom), [*walls, *edges, *shapes, wide])


def _beside(parts, show, name):
    """The tape along the floor, and what stands between it and the right wall."""
    reading, rest = (nearby(each) for each in parts)
    share = min(max(rest / (reading + rest), 26 / 100), 6 / 10)
    x = _RIGHT - share * (_RIGHT - _LEFT)
    shapes = [
        rectangle(x, -42, _RIGHT, _FLOOR),
        rectangle(_LEFT, -5, x, _FLOOR, "hatch"),
        dimension((x, 4), (_LEFT, 4), 24, f"reads {show.brief(parts[0])}", "given", "reading"),
        dimension((_RIGHT, 4), (x, 4), 24, show.brief(parts[1]), "given", name),
        label(((x + _RIGHT) / 2, -22), name, "note"),
    ]
    words = f"the tape reads {show.brief(parts[0])}, and the {name} adds {show.brief(parts[1])}."
    return shapes, words


def _bent(parts, show):
    curve = [(_RIGHT - 40, -3), (_RIGHT - 18, -8), (_RIGHT - 8, -18), (_RIGHT - 3, -52)]
    shapes = [rectangle(_LEFT, -5, _RIGHT - 40, _FLOOR, "hatch")]
    shapes += [line(*ends, "edge") for ends in pairwise(curve)]
    reads = f"reads {show.brief(parts[0])} in the corner"
    shapes.append(label((_RIGHT - 20, 28), reads, "note", "end"))
    return shapes, f"the tape is bent into the corner and reads {show.brief(parts[0])} there."


def _sticks(parts, show):
    first, second, overlap = (nearby(each) for each in parts)
    whole = first + second - overlap
    least = 72
    near = min(max((whole - second) / whole * (_RIGHT - _LEFT), least), _RIGHT - _LEFT - 2 * least)
    far = max(min(first / whole * (_RIGHT - _LEFT), _RIGHT - _LEFT - least), near + least)
    near, far = _LEFT + near, _LEFT + far
    shapes = [
        rectangle(_LEFT, -20, far, _FLOOR),
        rectangle(near, -42, _RIGHT, -22),
        dimension((far, 4), (near, 4), 20, show.brief(parts[2]), "given", "overlap"),
        label((_LEFT + 8, -10), show.brief(parts[0]), "name", "start"),
        label((_RIGHT - 8, -32), show.brief(parts[1]), "name", "end"),
        label(((near + far) / 2, 50), "overlap", "note"),
    ]
    words = (
        f"two sticks side by side, {show.brief(parts[0])} and {show.brief(parts[1])}, overlap by "
        f"{show.brief(parts[2])}."
    )
    return shapes, words


_WAYS = {
    "case": partial(_beside, name="case"),
    "block": partial(_beside, name="block"),
    "bent": _bent,
    "sticks": _sticks,
}
