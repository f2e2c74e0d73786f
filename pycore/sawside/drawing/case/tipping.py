"""A case from the side, on its floor and before its wall, with what tips it and what holds it."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import circle, dimension, drawing, label, line, rectangle
from sawside.lengths.real import nearby


@lazy
def tipping_case(show, given, tipping, rating):
    """`given` holds height, depth, kick and out in inches; `rating` is the text of what
    an anchor must be rated. The front is at the left."""
    high, deep, kick = (float(nearby(value)) for value in (given.height, given.depth, given.kick))
    out = float(nearby(given.out))
    anchor = float(nearby(tipping.anchor_height))
    left = -max(out, high / 8) - high / 8
    tall = max(high, anchor)
    step = tall / 22
    floor_at = tall
    top, level = tall - high, floor_at - anchor
    shapes = [
        rectangle(0, top, deep, floor_at - (step if kick else 0)),
        *([rectangle(kick, floor_at - step, deep, floor_at)] if kick else []),
        line((left, floor_at), (deep + step * 3, floor_at)),
        line((deep + step / 3, floor_at), (deep + step / 3, -step)),
        circle((kick, floor_at), step / 3, "hatch"),
        *_arrow((-out, top + high / 3), (-out, top + high / 3 + step * 3), step),
        *_arrow((deep / 2, top + high / 2), (deep / 2, top + high / 2 + step * 3), step),
        *_arrow((deep - step * 2, level), (deep + step / 3, level), step),
        label((-out, top + high / 3 - step), "climber", "note"),
        label((deep / 2, top + high / 2 - step), "weight", "note"),
        label((deep + step, level), rating, "name", "start"),
        label((kick - step, floor_at + step * 1.5), "tips over here", "note", "end"),
        dimension(
            (deep, floor_at), (0, floor_at), step * 3, show.brief(given.depth), "given", "depth"
        ),
        dimension(
            (left, floor_at), (left, top), -step, show.brief(given.height), "given", "height"
        ),
    ]
    words = (
        f"The case from the side, {show.brief(given.height)} high and {show.brief(given.depth)} "
        f"deep. It tips over the front of its foot. Each anchor, "
        f"{show.brief(tipping.anchor_height)} above the floor, is rated for {rating}."
    )
    return drawing(
        words, (left - step * 5, -step * 2, deep + step * 11, floor_at + step * 6), shapes
    )


def _arrow(start, end, size):
    """A line with a head at its end, level or upright."""
    (x, y), (to_x, to_y) = start, end
    along = (to_x > x) - (to_x < x), (to_y > y) - (to_y < y)
    back = (to_x - along[0] * size, to_y - along[1] * size)
    across = (along[1] * size / 2, along[0] * size / 2)
    heads = [(back[0] + way * across[0], back[1] + way * across[1]) for way in (1, -1)]
    return [line(start, end), *(line(head, end) for head in heads)]
