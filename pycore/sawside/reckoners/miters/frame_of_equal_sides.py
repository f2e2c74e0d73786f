"""The pieces of a regular mitered frame of 3 to 24 sides, and the stock that they take.

From the middle, square to a side, the outer edge lies one stock width beyond the inner one; at a
reach r a side is 2 x r x tan(180 / sides) long.
"""

from fractions import Fraction

from sawside.drawing.miters.frame import regular_drawing
from sawside.geometry.angles import tangent
from sawside.geometry.frame import regular
from sawside.lengths.show import angle_text, degrees_text
from sawside.reckoners.declaration import Reckoner, choice, count, length
from sawside.reckoners.miters.shared.frame_fields import (
    FIRST_ANSWERS,
    FITS,
    LAST_ANSWERS,
    MEASURED,
    OFFSETS,
    STOCK,
    WIDTH,
)
from sawside.reckoners.miters.shared.frame_pieces import (
    check_inside,
    check_rabbet,
    fitting,
    framed,
    grown,
    grown_text,
    setting,
)


def compute(given, show):
    """The side with its long and short edge in inches, its setting, and the sticks to buy."""
    check_rabbet(given, show, given.stock)
    reach = _reach(given)
    inside = reach + grown(given)
    check_inside(given, show, inside, "size", reach - inside)
    sides = regular(given.sides, inside, given.stock)
    across = "Across the flats" if given.sides % 2 == 0 else "Twice the center to a side"
    return framed(
        given,
        show,
        sides,
        [(across, 2 * inside, 2 * (inside + given.stock))],
        setting(sides),
        _working(given, show, inside, *sides),
        _drawing(given, fitting(given, show), inside, *sides),
    )


def _reach(given):
    """From the middle square to a side of what was measured."""
    if given.size_is == "across":
        return given.size / 2
    return given.size / (2 * tangent(Fraction(180, given.sides)))


def _working(given, show, inside, side):
    fitted, degrees = fitting(given, show), degrees_text(Fraction(180, given.sides))
    half = f"{show.number(given.size)} ÷ 2"
    if given.size_is == "side":
        half = f"{show.number(given.size)} ÷ (2 × tan {degrees}°)"
    to_inside, stock = show.number(inside), show.number(given.stock)
    return (
        f"Miter: 180 ÷ {given.sides} = {degrees}°",
        f"Center to the inside: {half}{grown_text(given, show, 1)}{show.equals(inside)}",
        f"Short point: 2 × {to_inside} × tan {degrees}°{fitted.equals(side.inside)}",
        f"Long point: 2 × ({to_inside} + {stock}) × tan {degrees}°{fitted.equals(side.outside)}",
    )


def _drawing(given, show, inside, side):
    long, short, cut = show.brief(side.outside), show.brief(side.inside), angle_text(side.left)
    words = (
        f"A frame of {given.sides} equal sides, each {long} long point and {short} short point, "
        f"mitered {cut} at both ends."
    )
    texts = (f"long {long}", f"short {short}", f"{given.sides} miters of {cut}")
    return regular_drawing(words, given.sides, inside, given.stock, texts)


RECKONER = Reckoner(
    key="frame_of_equal_sides",
    title="Polygon frame",
    asks="What pieces do I cut for a frame with three, five, six or more equal sides?",
    words=(
        "polygon, hexagon, octagon, pentagon, triangle, hexagonal, octagonal, 6-sided, 8-sided, "
        "six-sided, eight-sided, five-sided, segments, segmented ring, ring, round mirror, "
        "clock, frame, miter angle"
    ),
    order=221,
    fields=(
        count(
            "sides",
            "Sides",
            help="All the same length.",
            default="8",
            least="3",
            most="24",
            in_short="{} sides",
        ),
        MEASURED,
        choice(
            "size_is",
            "Size of",
            {"across": "Across the flats", "side": "One side"},
            help="Across is twice the center to a side. For a round mirror, its diameter.",
        ),
        length("size", "Size", help="Of what you measured.", least="1/8 in"),
        length("stock", "Stock width", help="Across the face.", **WIDTH),
        *OFFSETS,
        *STOCK,
    ),
    answers=(*FIRST_ANSWERS, *LAST_ANSWERS),
    source=(
        "Each miter is 180 ÷ sides, and a side is 2 × center to side × tan of it: plane "
        "geometry. A clearance of 1/16″ is shop practice."
    ),
    compute=compute,
    example={
        "sides": "8",
        "around": "panel",
        "size_is": "across",
        "size": "12",
        "stock": "1 1/2",
        "rabbet": "3/8",
        "stick": "72",
    },
    makes_parts=True,
    fits=FITS,
)
