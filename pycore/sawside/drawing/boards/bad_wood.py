"""Wood that no piece may have, crossed out: so it is told without color, on every board alike."""

from sawside.drawing.shapes import line, rectangle


def crossed_out(left, top, right, bottom):
    """The shapes of a bad stretch with these edges."""
    return [
        rectangle(left, top, right, bottom, "ghost"),
        line((left, top), (right, bottom), "hidden"),
        line((left, bottom), (right, top), "hidden"),
    ]
