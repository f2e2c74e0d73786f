"""What both diagonals of a square-cornered frame or case measure."""

from sawside.drawing.tape.square_frame import square_frame
from sawside.lengths.real import sqrt
from sawside.reckoners.declaration import Reckoning


def both_diagonals(given, show):
    """The diagonal, irrational for most frames, told on its mark."""
    width, height = given.width, given.height
    diagonal = sqrt(width * width + height * height)
    w, h = show.number(width), show.number(height)
    return Reckoning(
        answers={"diagonal": diagonal},
        working=(
            f"√({w} × {w} + {h} × {h}){show.equals(diagonal)}",
            "Square when both diagonals match; this is what each should measure",
        ),
        drawing=square_frame(show, width, height, diagonal),
        main="diagonal",
        verdict=f"Both {show.brief(diagonal)} when square",
    )
