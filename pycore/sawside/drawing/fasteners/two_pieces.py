"""Two pieces cut through where a screw or nail goes from the upper one into the lower, in scale."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, polygon, rectangle
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.real import nearby

_HIGH, _WIDE = 190, 130
"""So large the wood is drawn at the most, in pixels of a phone."""
_TEETH = 9


@lazy
def driven_screw(show, given, screw, words):
    """The drawing of a `Driven` screw; `given` says what was filled in, `words` what is seen."""
    top = _inches(given.sink)
    tip, shank, root = (
        _inches(each) for each in (given.sink + screw.length, screw.shank, screw.root)
    )
    starts = tip - min(_inches(screw.length) * 2 / 3, _inches(screw.reach))
    half, cone = shank / 2, _inches(screw.cone or 0)
    head = _inches(screw.head or 2 * screw.shank) / 2
    body = [
        *(_flat(top, cone, head, half) if screw.head else _raised(top, head, half)),
        (half, starts),
        *_thread(starts, tip - shank * 3 / 2, half, root / 2),
        (0.0, tip),
    ]
    return _drawn(show, given, screw, words, _both_sides(body))


@lazy
def driven_nail(show, given, nail, words):
    """The drawing of a nail as of a screw; its `head` is the width of it."""
    top, tip = _inches(given.sink), _inches(given.sink + nail.length)
    half, head = _inches(nail.diameter) / 2, _inches(nail.head) / 2
    flat = top + half
    body = [(head, top), (head, flat), (half, flat), (half, tip - 3 * half), (0.0, tip)]
    return _drawn(show, given, nail, words, _both_sides(body))


def _drawn(show, given, fastener, words, outline):
    over, whole = _inches(given.over), _inches(given.over + given.under)
    pixel = max(whole / _HIGH, _inches(given.sink + fastener.length) / _HIGH)
    side = _WIDE * pixel / 2
    tip = given.sink + fastener.length
    found = show.brief(on_fine_marks(fastener.length, show))
    role, field = ("answer", None) if given.length is None else ("given", "length")
    left = show.brief(on_fine_marks(fastener.left, show, "be there"))
    shapes = [
        rectangle(-side, 0, side, over),
        rectangle(-side, over, side, whole),
        outline,
        _upright(side, 0, given.over, 26 * pixel, show.brief(given.over), field="over"),
        _upright(side, over, whole, 26 * pixel, show.brief(given.under), field="under"),
        _upright(-side, given.sink, tip, -26 * pixel, found, role, field),
        _upright(-side, tip, whole, -26 * pixel, f"left {left}", "answer"),
        label((0, whole + 14 * pixel), "in scale", "note"),
    ]
    box = (-side - 80 * pixel, -20 * pixel, side + 80 * pixel, whole + 24 * pixel)
    return drawing(words, box, shapes)


def _upright(x, top, foot, offset, text, role="given", field=None):
    """A dimension from `top` down to `foot`, beside x: to the right by a positive offset."""
    return dimension((x, _inches(foot)), (x, _inches(top)), -offset, text, role, field)


def _inches(length):
    return float(nearby(length))


def _flat(top, cone, head, half):
    return [(head, top), (half, top + cone)]


def _raised(top, head, half):
    return [(head * 2 / 3, top - half), (head, top), (half, top)]


def _thread(start, foot, half, root):
    """The right edge of a thread from the top down, as teeth."""
    step = max(foot - start, 0.0) / _TEETH
    for number in range(_TEETH):
        yield root, start + step * number
        yield half, start + step * (number + 0.5)
    yield root, start + step * _TEETH


def _both_sides(right):
    """A closed outline of what is alike on both sides; `right` is its right half, downward."""
    return polygon([*right, *((-x, y) for x, y in reversed(right))], "hatch")
