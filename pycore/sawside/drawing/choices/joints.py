"""How a shelf meets its side, seen from the front; and the corners of a box, from above."""

from sawside.drawing.choices.small import small
from sawside.drawing.shapes import circle, polygon, rectangle

_SIDE = rectangle(0.1, 0, 0.34, 0.75)

SHELF_FITS = {
    "dado": small(
        "A shelf that goes into a slot in the side.",
        polygon(
            (
                (0.1, 0),
                (0.34, 0),
                (0.34, 0.27),
                (0.22, 0.27),
                (0.22, 0.48),
                (0.34, 0.48),
                (0.34, 0.75),
                (0.1, 0.75),
            )
        ),
        rectangle(0.24, 0.28, 1, 0.47, "hatch"),
    ),
    "pins": small(
        "A shelf that sits on a pin, with a gap to the side.",
        _SIDE,
        circle((0.42, 0.53), 0.06, "hole"),
        rectangle(0.4, 0.28, 1, 0.47, "hatch"),
    ),
    "fixed": small(
        "A shelf that butts against the side.", _SIDE, rectangle(0.34, 0.28, 1, 0.47, "hatch")
    ),
}
"""A shelf in a dado, on pins, and tight between the sides."""

BOX_CORNERS = {
    "miter": small(
        "Two sides from above that meet in a miter.",
        polygon(((0.15, 0.1), (1, 0.1), (1, 0.3), (0.35, 0.3))),
        polygon(((0.15, 0.1), (0.35, 0.3), (0.35, 0.75), (0.15, 0.75)), "hatch"),
    ),
    "butt": small(
        "Two sides from above, one against the face of the other.",
        rectangle(0.15, 0.1, 1, 0.3),
        rectangle(0.15, 0.3, 0.35, 0.75, "hatch"),
    ),
}
"""The joints of a box: mitered, or butted."""

_RUN = rectangle(0.1, 0.08, 0.9, 0.67)
DADO_RUNS = {
    "through": small(
        "A slot across a side, from the back to the front.",
        _RUN,
        rectangle(0.1, 0.28, 0.9, 0.46, "hatch"),
    ),
    "stopped": small(
        "A slot across a side that ends before the front.",
        _RUN,
        rectangle(0.1, 0.28, 0.7, 0.46, "hatch"),
    ),
}
"""A dado through to the front edge, and one that stops before it."""
