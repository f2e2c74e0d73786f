"""A face frame from the front in scale: its members, and the sizes of its openings."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, rectangle
from sawside.lengths.real import nearby

_WIDE, _HIGH = 180, 110
"""So large the frame is drawn at the most, in pixels of a phone."""
_MOST_TOLD = 4
"""So many openings in a row have their own dimension; of more, the first ones and the last have."""


@lazy
def face_frame_drawing(show, given, layout, words, keys):
    """The drawing of a `Layout`; `given` holds what was filled in, `words` say what is seen, `keys`
    are those of the parts by their members."""
    outline = layout.outline
    wide, high = (float(nearby(each)) for each in (outline.width, outline.height))
    pixel = max(wide / _WIDE, high / _HIGH)
    shapes = [
        rectangle(
            each.left,
            high - nearby(each.high),
            each.right,
            high - nearby(each.low),
            part=keys[each],
        )
        for each in layout.members
    ]
    shapes += _shoulder_lines(layout, high)
    shapes += _outside(show, given, layout, wide, high, pixel)
    shapes += _across(show, given, layout, high, pixel)
    shapes += _down(show, given, layout, wide, high, pixel)
    low = high + 54 * pixel
    shapes.append(label((wide / 2, low), _note(show, layout), "note"))
    box = (-66 * pixel, -26 * pixel, wide + 84 * pixel, low + 10 * pixel)
    return drawing(words, box, shapes)


def _shoulder_lines(layout, high):
    """Hidden lines of what tenons reach into their neighbors."""
    for each in layout.members:
        start, end = (float(nearby(add)) for add in each.adds)
        left, low, right, head = (
            float(nearby(place)) for place in (each.left, each.low, each.right, each.high)
        )
        if each.upright and start:
            for x in (left, right):
                yield line((x, high - low), (x, high - low + start), "hidden")
                yield line((x, high - head), (x, high - head - end), "hidden")
        elif start:
            for y in (high - low, high - head):
                yield line((left, y), (left - start, y), "hidden")
                yield line((right, y), (right + end, y), "hidden")


def _outside(show, given, layout, wide, high, pixel):
    """The width and height of the frame, as given numbers where they are those of the form."""
    outline = layout.outline
    sizes = (
        ("width", outline.width, (0, 0), (wide, 0), 28),
        ("height", outline.height, (0, high), (0, 0), 34),
    )
    for key, size, start, end, offset in sizes:
        as_given = size == getattr(given, key)
        yield dimension(
            start,
            end,
            offset * pixel,
            show.brief(size),
            "given" if as_given else "answer",
            key if as_given else None,
        )


def _across(show, given, layout, high, pixel):
    """The widths of the openings, below the frame."""
    told = _told(layout.widths, given.widths)
    for number in told:
        left, right = layout.columns[number]
        role, field = _role(given.widths, number, "widths")
        text = show.brief(right - left, "go in")
        yield dimension((right, high), (left, high), 26 * pixel, text, role, field)


def _down(show, given, layout, wide, high, pixel):
    """The heights of the openings, at the right of the frame; in them where columns differ."""
    if layout.alike:
        heights, stack = layout.heights[0], layout.stacks[0]
        for number in _told(heights, given.heights):
            low, head = (float(nearby(place)) for place in stack[number])
            role, field = _role(given.heights, number, "heights")
            text = show.brief(heights[number], "go in")
            yield dimension((wide, high - head), (wide, high - low), 34 * pixel, text, role, field)
    else:
        yield from _in_the_openings(show, layout, high, pixel)
    if layout.outline.foot:
        foot = high - float(nearby(layout.outline.foot))
        text = show.brief(layout.outline.foot)
        yield dimension((wide, foot), (wide, high), 34 * pixel, text, "given", "kick")


def _in_the_openings(show, layout, high, pixel):
    """The height of each opening that has room for it."""
    for (left, right), stack in zip(layout.columns, layout.stacks, strict=True):
        for low, head in stack:
            text = show.brief(head - low, "go in")
            if right - left > 7 * pixel * len(text) and head - low > 14 * pixel:
                middle = (float(nearby(left + right)) / 2, high - float(nearby(low + head)) / 2)
                yield label(middle, text, "note") | {"field": "column_rails"}


def _told(openings, listed):
    """The numbers of the openings that have a dimension: of those that were not listed, the first
    and the farthest from it that is not like it."""
    count = len(openings)
    if listed is None:
        others = [each for each in (count // 2, count - 1) if openings[each] != openings[0]]
        return [0, *others[-1:]]
    return [*range(min(count, _MOST_TOLD) - 1), count - 1]


def _role(listed, number, field):
    return ("given", field) if listed is not None and number < len(listed) else ("answer", None)


def _note(show, layout):
    """How wide the outer members are."""
    outline = layout.outline
    stiles, rails = (
        " and ".join(dict.fromkeys(show.brief(each, "go in") for each in widths))
        for widths in ((outline.left, outline.right), (outline.top, outline.bottom))
    )
    if stiles == rails:
        return f"stiles and rails {stiles}"
    return f"stiles {stiles}; rails {rails}"
