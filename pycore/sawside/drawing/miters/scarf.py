"""A scarfed run from above: the whole with its joints, and one joint large."""

from math import cos, radians, sin

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.lengths.real import nearby
from sawside.lengths.show import angle_text

_WIDE = 316
_MARGIN = 14
_MOST_TOLD = 4
_BAR = 16


@lazy
def scarf_run(show, given, joints, overlap, face, degrees):
    """Drawn in pixels of a narrow screen: the run and the joint have scales of their own."""
    long = _WIDE - 2 * _MARGIN
    scale = long / float(given.run)
    shapes = [polygon(_box(_MARGIN, 0, _WIDE - _MARGIN, _BAR))]
    told = joints[:_MOST_TOLD]
    for row, joint in enumerate(told):
        x = _MARGIN + float(nearby(joint)) * scale
        y = _BAR + 18 + 22 * row
        shapes.append(dimension((_MARGIN, _BAR), (x, _BAR), _BAR - y, show.brief(joint), "answer"))
    for joint in joints:
        x = _MARGIN + float(nearby(joint)) * scale
        shapes.append(line((x + 5, 0), (x - 5, _BAR), "cut"))
    text = f"run {show.brief(given.run)}"
    shapes.append(dimension((_MARGIN, 0), (_WIDE - _MARGIN, 0), 18, text, "given"))
    top = _BAR + 22 * len(told) + 66
    shapes += _joint(show, given, overlap, face, degrees, top)
    words = (
        f"A run of {show.brief(given.run)} seen from above, face at the bottom, with "
        f"{len(joints)} {'joint' if len(joints) == 1 else 'joints'}, measured from the left end to "
        f"the middle: {', '.join(show.brief(each) for each in joints)}. Below, one joint: at "
        f"{angle_text(degrees, 2)} from square it overlaps by {show.brief(overlap)}, and its face "
        f"is {show.brief(face)} long. The right piece laps over the left one."
    )
    return drawing(words, (0, -38, _WIDE, top + 152), shapes)


def _box(left, top, right, bottom):
    return [(left, top), (right, top), (right, bottom), (left, bottom)]


def _joint(show, given, overlap, face, degrees, top):
    """One joint, its parts drawn apart by a saw's width; the slope is drawn at most 70 degrees."""
    turn = radians(min(float(nearby(degrees)), 70))
    thick = min(64, 200 * cos(turn) / max(sin(turn), 0.01))
    lap = thick * sin(turn) / cos(turn)
    middle, gap = _WIDE / 2, 5
    left = [
        (_MARGIN, top),
        (middle + lap / 2 - gap, top),
        (middle - lap / 2 - gap, top + thick),
        (_MARGIN, top + thick),
    ]
    right = [
        (middle + lap / 2 + gap, top),
        (_WIDE - _MARGIN, top),
        (_WIDE - _MARGIN, top + thick),
        (middle - lap / 2 + gap, top + thick),
    ]
    foot = top + thick
    return [
        polygon(left),
        polygon(right),
        dimension(
            (middle - lap / 2, top),
            (middle + lap / 2, top),
            18,
            f"overlap {show.brief(overlap)}",
            "answer",
        ),
        label(
            (_MARGIN + 4, foot + 20), f"thickness {show.brief(given.thickness)}", "note", "start"
        ),
        label((_WIDE - _MARGIN - 4, foot + 20), angle_text(degrees, 2), "note", "end"),
        label((middle, foot + 46), f"joint face {show.brief(face)}", "name"),
        label((middle, foot + 70), "the right piece laps over the left", "note"),
    ]
