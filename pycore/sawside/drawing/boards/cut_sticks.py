"""Sticks one below the other, in one scale, each with its pieces and what is left."""

from itertools import groupby

from sawside.drawing.boards.bad_wood import crossed_out
from sawside.drawing.shapes import drawing, label, polygon, rectangle
from sawside.lengths.real import nearby

MOST_DRAWN = 8
"""Sticks that are drawn; the list has all of them."""

_SCREEN = 290
"""Pixels of the longest stick on a narrow phone."""

_LETTER, _SPACE, _EDGE = 8.8, 4.5, 12
_HIGH, _LOW, _ROW, _TOLD, _ABOVE, _BELOW = 22, 12, 28, 16, 12, 12

_FEW = 2
"""Of more sticks all is told below them, and they are drawn lower."""


def cut_sticks(words, sticks):
    """The drawing of `sticks`, each (title, length, runs): exact inches, and what lies along it,
    with (start, end) of its `near` and its `far` edge, a `role` ("bad" is crossed out), a `text`
    and a `name`. Pieces alike beside each other that have a name, or no room for their text, are
    told together below; what has no room there either is left out.
    """
    pixel = nearby(max(length for _, length, _ in sticks)) / _SCREEN
    high = _HIGH if len(sticks) <= _FEW else _LOW
    shapes, top, bottom = [], 0.0, 0.0
    for title, length, runs in sticks:
        bottom = top + high * pixel
        shapes.append(label((0, top - _ABOVE * pixel), title, "name", "start"))
        shapes.append(rectangle(0, top, nearby(length), bottom, "waste"))
        shapes += [shape for run in runs for shape in _run(run, top, bottom)]
        inside, below = _told(runs, pixel, has_room=high == _HIGH)
        shapes += [label((x, (top + bottom) / 2), text, "note") for x, text in inside]
        shapes += [label((x, bottom + _BELOW * pixel), text, "note") for x, text in below]
        if below:
            bottom += (_BELOW + 4) * pixel
        top += (high + _ROW + (_TOLD if below else 0)) * pixel
    edge = _EDGE * pixel
    box = (-edge, -2 * _ABOVE * pixel, _SCREEN * pixel + edge, bottom + edge / 2)
    return drawing(words, box, shapes)


def _run(run, top, bottom):
    near, far = ([nearby(place) for place in edge] for edge in (run.near, run.far))
    if run.role == "bad":
        return crossed_out(near[0], top, near[1], bottom)
    corners = [(place, top) for place in far] + [(place, bottom) for place in reversed(near)]
    return [polygon(corners, run.role)]


def _told(runs, pixel, *, has_room):
    """The (place, text) of what is told inside the pieces, and below the stick: with names where
    no length is lost for them."""
    inside, groups = [], []
    for (role, text, name), those in groupby(runs, key=lambda run: (run.role, run.text, run.name)):
        alike = list(those)
        wide = (_wide(text) + _LETTER) * pixel
        if text and has_room and not name and all(_room(run) > wide for run in alike):
            inside += [(_middle(run, run), text) for run in alike]
        elif text:
            many = f"{len(alike)} × " if len(alike) > 1 and role == "stock" else ""
            told = f"{many}{text}"
            groups.append((_middle(alike[0], alike[-1]), f"{told} {name}".strip(), told))
    named, bare = (_below(groups, pixel, names=names) for names in (True, False))
    return inside, named if len(named) == len(bare) else bare


def _below(groups, pixel, *, names):
    """The (place, text) of each (middle, named, bare) that has room beside the ones before it."""
    placed, end, most = [], -_EDGE * pixel, (_SCREEN + _EDGE) * pixel
    for middle, *told in groups:
        for text in told if names else told[1:]:
            half = _wide(text) * pixel / 2
            place = min(max(middle, end + half), most - half)
            if place - half > end - pixel and abs(place - middle) <= half:
                placed.append((place, text))
                end = place + half + _LETTER * pixel
                break
    return placed


def _wide(text):
    """Pixels of a text."""
    spaces = text.count(" ")
    return (len(text) - spaces) * _LETTER + spaces * _SPACE


def _room(run):
    return min(nearby(run.near[1]), nearby(run.far[1])) - max(
        nearby(run.near[0]), nearby(run.far[0])
    )


def _middle(first, last):
    return nearby(first.near[0] + first.far[0] + last.near[1] + last.far[1]) / 4
