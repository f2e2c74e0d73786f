"""A case from the front in its space. Not to scale, and a note says so: how crooked a space is
would not be seen, and a tall case would leave no room for its numbers.

Gaps beside the case, the slope of the floor and that of the ceiling are true to each other.
"""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon, rectangle
from sawside.lengths.fine import on_fine_marks

_SIDES = ("left", "right")
_WIDE = 100
"""Of the case as drawn; whatever it is, its height is one of these two or between."""
_LOW, _TALL = 55, 88
_GAP = 9
"""Of the widest gap as drawn."""
_FACE = 5
"""Of a wall's, the floor's and the ceiling's thickness."""


@lazy
def case_in_space(show, found):
    """The drawing of a case `found` (its width, height and depth as told, its strips by their
    side, and the heights of its space)."""
    high = min(max(_WIDE * float(found.height.mark / found.width.mark), _LOW), _TALL)
    frame = _frame(found, high)
    shapes = [
        *_surfaces(found, frame),
        rectangle(0, -high, _WIDE, 0),
        *_sizes(show, found, high),
        *_strips(show, found, high, frame),
        *_floor(show, found, high, frame),
    ]
    foot = max(frame["floor"].values()) + _FACE
    top = min(*frame["ceiling"].values(), *frame["between"]) - _FACE
    below = foot + (25 if found.heights.low_side else 14)
    if found.depth is not None:
        shapes.append(label((_WIDE / 2, below), f"{_mark(show, found.depth)} deep", "name"))
        below += 11
    shapes.append(label((_WIDE / 2, below), "not to scale, gaps exaggerated", "note"))
    box = (frame["left"][2] - 36, top - 2, frame["right"][2] + 36, below + 5)
    return drawing(_words(show, found), box, shapes)


def _mark(show, rounded):
    """The number to cut to, without how it was rounded: that is told beside the answer."""
    return show.brief(rounded.mark)


def _times(found):
    """Drawn units for each inch of a gap."""
    gaps = [float(each) for strip in found.strips for each in (strip.bottom, strip.top)]
    ceilings = [float(each) for each in found.heights.ceilings]
    widest = max([*gaps, float(found.heights.drop), max(ceilings) - min(ceilings)])
    return _GAP / widest if widest else 1


def _frame(found, high):
    """Where the faces are drawn: of each wall at the floor, at the ceiling, and its back; of the
    floor and of the ceiling at each side."""
    heights, times = found.heights, _times(found)
    gap = min(float(heights.clear - found.height.mark) * high / float(found.height.mark), _GAP)
    frame = {
        "floor": {side: times * float(heights.drops[side]) for side in _SIDES},
        "ceiling": {
            side: -high - gap - times * float(heights.ceiling(side) - heights.clear)
            for side in _SIDES
        },
    }
    frame["between"] = [
        -high - gap - times * float(each - heights.clear) for each in heights.ceilings[1:-1]
    ]
    strips = {strip.side: strip for strip in found.strips}
    for side, out, edge in (("left", -1, 0), ("right", 1, _WIDE)):
        strip = strips.get(side)
        gaps = [times * float(each) for each in (strip.bottom, strip.top)] if strip else [_GAP] * 2
        foot, head = (edge + out * each for each in gaps)
        frame[side] = (foot, head, edge + out * (max(gaps) + _FACE))
    return frame


def _surfaces(found, frame):
    floor, ceiling = frame["floor"], frame["ceiling"]
    left, right = (frame[side][2] for side in _SIDES)
    low, high = max(floor.values()) + _FACE, min(*ceiling.values(), *frame["between"]) - _FACE
    between = frame["between"]
    for face, middle, back in ((floor, [], low), (ceiling, between, high)):
        steps = [
            (left + (right - left) * at / (len(middle) + 1), y) for at, y in enumerate(middle, 1)
        ]
        ends = [(left, face["left"]), *steps, (right, face["right"])]
        yield polygon([*ends, (right, back), (left, back)], "hatch")
    for strip in found.strips:
        foot, head, back = frame[strip.side]
        face = [(foot, floor[strip.side]), (head, ceiling[strip.side])]
        yield polygon([*face, (back, face[1][1]), (back, face[0][1])], "hatch")


def _sizes(show, found, high):
    y, x = -high * 6 / 10, _WIDE / 6
    yield dimension((_WIDE, y), (0, y), 0, show.brief(found.width), "answer")
    yield dimension((x, 0), (x, -high), 0, show.brief(found.height), "answer")


def _strips(show, found, high, frame):
    """The width of each strip at its ends, from the case to its wall."""
    for strip in found.strips:
        foot, head, _ = frame[strip.side]
        edge = 0 if strip.side == "left" else _WIDE
        for width, face, y in ((strip.bottom, foot, -high / 4), (strip.top, head, -high * 9 / 10)):
            ends = sorted([(face, y), (edge, y)])
            if width:
                text = _mark(show, show.rounded(width, "reach"))
                yield dimension(*ends, 0, text, "answer")


def _floor(show, found, high, frame):
    side = found.heights.low_side
    if side is None:
        return
    x = _WIDE / 6 if side == "left" else _WIDE * 5 / 6
    text = f"shim {_mark(show, on_fine_marks(found.heights.drop, show, 'reach'))}"
    left, right = (frame[each][0] for each in _SIDES)
    slope = (frame["floor"]["right"] - frame["floor"]["left"]) / (right - left)
    low = frame["floor"]["left"] + slope * (x - left)
    yield dimension((x, low), (x, 0), 0, text, "answer")
    y = -high / 10
    yield line((left, y), (right, y), "center")
    yield label((_WIDE / 2, y - high / 14), "level line", "note")


def _words(show, found):
    deep = f" and {show.brief(found.depth)} deep" if found.depth is not None else ""
    return (
        f"A case from the front in its space, {show.brief(found.width)} wide, "
        f"{show.brief(found.height)} high{deep}. Gaps and slopes are exaggerated."
    )
