"""What both diagonals of a square-cornered frame or carcase measure."""

from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.lengths.fine import fine_text
from sawside.lengths.real import nearby, sqrt
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, length

_SCREEN = 220
"""Pixels of the longer side on a narrow phone."""


def compute(given, show):
    """The diagonal, irrational for most frames, told on its mark."""
    width, height = given.width, given.height
    squares = width * width + height * height
    diagonal = sqrt(squares)
    w, h = show.number(width), show.number(height)
    return Reckoning(
        answers={"diagonal": diagonal},
        working=(
            f"√({w} × {w} + {h} × {h}){show.equals(diagonal)}",
            "Square when both diagonals match; this is what each should measure",
        ),
        drawing=_drawing(show, width, height, diagonal),
    )


def _drawing(show, width, height, diagonal):
    wide, high = nearby(width), nearby(height)
    pixel = max(wide, high) / _SCREEN
    wide, high = max(wide, 40 * pixel), max(high, 40 * pixel)
    corners = [(0, 0), (wide, 0), (wide, high), (0, high)]
    middle = (wide / 2, high / 2)
    shapes = [
        polygon(corners),
        line(corners[3], corners[1], "center"),
        line(corners[0], corners[2], "center"),
        label(middle, show.brief(diagonal), "name"),
        dimension((wide, high), (0, high), 30 * pixel, fine_text(width, show), "given"),
        dimension((0, high), (0, 0), 30 * pixel, fine_text(height, show), "given"),
    ]
    words = (
        f"A frame {fine_text(width, show)} wide and {fine_text(height, show)} high; both "
        f"diagonals measure {show.brief(diagonal)} when it is square."
    )
    side = max(44 * pixel, (high - wide) / 2 + 10 * pixel)
    return drawing(words, (-side - 30 * pixel, -14 * pixel, wide + side, high + 50 * pixel), shapes)


RECKONER = Reckoner(
    key="diagonal",
    title="Diagonal",
    asks="What should the diagonals measure?",
    words=(
        "diagonals, square up, check for square, right triangle, pythagorean theorem, "
        "hypotenuse, corner to corner, case, frame, panel, rectangle, brace, right angle, "
        "square"
    ),
    order=150,
    job="square",
    picture={"wood": "M4 9h32v22H4z", "chalk": "M4 9l32 22M36 9L4 31"},
    fields=(
        length(
            "width",
            "Width",
            help="Outside or inside, the same way you measure the diagonals.",
            least="1/64 in",
        ),
        length("height", "Height", help="Measured the same way.", least="1/64 in"),
    ),
    answers=(Answer("diagonal", "Both diagonals", must="agree"),),
    source="Theorem of Pythagoras (Euclid, Elements, book I, proposition 47).",
    compute=compute,
    example={"width": "36 1/8", "height": "41 1/4"},
)
