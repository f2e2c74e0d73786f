"""The pieces of a mitered frame, rectangular or of equal sides, and the stock that they take."""

from sawside.reckoners.declaration import Answer, Reckoner
from sawside.reckoners.fields import choice, count, length
from sawside.reckoners.miters.shared.field_bounds import blank
from sawside.reckoners.miters.shared.frames.frame_fields import (
    FIRST_ANSWERS,
    FITS,
    LAST_ANSWERS,
    MEASURED,
    OFFSETS,
    STOCK,
    WIDTH,
)
from sawside.reckoners.miters.shared.frames.rectangular import rectangular_frame
from sawside.reckoners.miters.shared.frames.regular_sides import regular_frame

_SHAPES = {"rectangle": "Rectangle", "polygon": "Equal sides"}
_RECTANGLE = ("shape", ("rectangle",))
_POLYGON = ("shape", ("polygon",))


def compute(given, show):
    """Every piece with its long and short edge in inches, its settings, and the sticks to buy."""
    return (rectangular_frame if given.shape == "rectangle" else regular_frame)(given, show)


RECKONER = Reckoner(
    key="mitered_frame",
    title="Mitered frame",
    asks="What pieces do I cut to frame a mirror, picture or opening, or for a polygon?",
    words=(
        "picture frame, mirror frame, mirror, window casing, door casing, door frame, window "
        "trim, casing, trim, opening, panel, glass, rabbet, reveal, miter, clearance, polygon, "
        "hexagon, octagon, pentagon, triangle, hexagonal, octagonal, 6-sided, 8-sided, six-sided, "
        "eight-sided, five-sided, segments, segmented ring, ring, round mirror, clock, frame, "
        "miter angle"
    ),
    order=220,
    job="miters and frames",
    picture={
        "wood": "M4 6h32v28H4zM12 14v12h16V14z",
        "ink": "M12 26l5-6 4 4 3-3 4 5",
        "chalk": "M12 14h16v12H12z",
    },
    basic=("shape", "around", "width", "height", "sides", "size", "stock", "rabbet"),
    fields=(
        choice("shape", "Shape", _SHAPES),
        MEASURED,
        length(
            "width",
            "Width",
            help="Of what you measured, left to right.",
            least="1/8 in",
            shown_when=_RECTANGLE,
        ),
        length(
            "height",
            "Height",
            help="Of what you measured, bottom to top.",
            least="1/8 in",
            shown_when=_RECTANGLE,
        ),
        count(
            "sides",
            "Sides",
            help="All the same length.",
            default="8",
            least="3",
            most="24",
            in_short="{} sides",
            shown_when=_POLYGON,
        ),
        length("size", "Size", help="Of what you measured.", least="1/8 in", shown_when=_POLYGON),
        length("stock", "Stock width", help="Across the face of the sides.", **WIDTH),
        *OFFSETS,
        choice(
            "size_is",
            "Size of",
            {"across": "Across the flats", "side": "One side"},
            help="Across is twice the center to a side. For a round mirror, its diameter.",
            shown_when=_POLYGON,
        ),
        length(
            "top_stock",
            "Top width",
            **blank("Same as Stock width."),
            **WIDTH,
            shown_when=_RECTANGLE,
        ),
        length(
            "bottom_stock",
            "Bottom width",
            **blank("Same as Top width."),
            **WIDTH,
            shown_when=_RECTANGLE,
        ),
        *STOCK,
    ),
    answers=(*FIRST_ANSWERS, Answer("settings", "Miter angles", "text"), *LAST_ANSWERS),
    source=(
        "Inside = panel + 2 × clearance − 2 × rabbet, or opening + 2 × reveal; outside = inside + "
        "the widths: arithmetic. Miters of unequal widths: plane trigonometry. Equal sides: each "
        "miter is 180 ÷ sides, and a side is 2 × center to side × tan of it: plane geometry. A "
        "clearance of 1/16″ and a reveal of 3/16″ are shop practice."
    ),
    compute=compute,
    example={
        "shape": "rectangle",
        "around": "panel",
        "width": "14 1/2",
        "height": "20 3/4",
        "stock": "2 1/4",
        "rabbet": "3/8",
        "stick": "96",
    },
    makes_parts=True,
    fits=FITS,
)
