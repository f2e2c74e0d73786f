"""Whether something is square: how far it is out, what its diagonals measure, and 3-4-5."""

from sawside.reckoners.declaration import Answer, Reckoner
from sawside.reckoners.fields import choice, length
from sawside.reckoners.tape.shared.both_diagonals import both_diagonals
from sawside.reckoners.tape.shared.largest_triangle import STEPS, largest_triangle
from sawside.reckoners.tape.shared.racked import racked

_DIAGONAL, _OUT, _TRIANGLE = (
    {"shown_when": ("solve", (solve,))} for solve in ("diagonal", "out", "triangle")
)
_SOLVERS = {"out": racked, "diagonal": both_diagonals, "triangle": largest_triangle}
_MEASURED = {"least": "1/64 in", "most": "142 ft"} | _OUT


def compute(given, show):
    """By what is asked: how far out of square, both diagonals, or a three-four-five triangle."""
    return _SOLVERS[given.solve](given, show)


RECKONER = Reckoner(
    key="square",
    title="Square",
    asks="Is it square, and what do I do if it isn’t?",
    words=(
        "square up, check for square, is it square, squaring, diagonals, diagonal, out of square, "
        "racked, rack, lean, 3-4-5, three four five, right triangle, pythagorean theorem, "
        "hypotenuse, corner to corner, right angle, 90, case, frame, panel, rectangle, "
        "parallelogram, rhombus, brace, room, wall, corner, alcove, lay out, layout, true"
    ),
    order=150,
    job="layout",
    picture={"wood": "M4 9h32v22H4z", "chalk": "M4 9l32 22M36 9L4 31"},
    fields=(
        choice(
            "solve",
            "Find",
            {"out": "Racking", "diagonal": "Diagonals", "triangle": "3-4-5"},
            in_short="{}",
        ),
        length(
            "rising",
            "Lower left to upper right",
            help="The diagonal, facing it.",
            in_short="{} one diagonal",
            **_MEASURED,
        ),
        length("falling", "Upper left to lower right", in_short="{} the other", **_MEASURED),
        length(
            "bottom",
            "Bottom width",
            help="Measured the same way as the diagonals.",
            least="1/64 in",
            blank_means="Only for how far it’s out.",
            in_short="{} wide",
            **_OUT,
        ),
        length(
            "side",
            "Side height",
            least="1/64 in",
            blank_means="Only for the angle.",
            in_short="{} high",
            **_OUT,
        ),
        length(
            "width",
            "Width",
            help="Outside or inside, the same way you measure the diagonals.",
            least="1/64 in",
            **_DIAGONAL,
        ),
        length("height", "Height", help="Measured the same way.", least="1/64 in", **_DIAGONAL),
        length(
            "along",
            "First wall",
            help="Clear length from the corner.",
            least="3/4 in",
            in_short="{} along one wall",
            **_TRIANGLE,
        ),
        length(
            "across",
            "Second wall",
            help="Clear length from the corner.",
            least="3/4 in",
            in_short="{} along the other",
            **_TRIANGLE,
        ),
        choice(
            "step",
            "Step",
            STEPS,
            metric="10 mm",
            help="Whole numbers are easier to mark. Finer steps give a bigger triangle.",
            **_TRIANGLE,
        ),
    ),
    answers=(
        Answer("offset", "Racked by", must="agree"),
        Answer("push", "What to do", "text"),
        Answer("apart", "Diagonals differ by", must="agree"),
        Answer("angle", "Out of square by", "angle"),
        Answer("goal", "Both diagonals when square", must="agree"),
        Answer("square", "Both diagonals, from width and height", must="agree"),
        Answer("diagonal", "Both diagonals", must="agree"),
        Answer("between", "Between the two marks", must="agree"),
        Answer("along", "Mark along the first wall", must="agree"),
        Answer("across", "Mark along the second wall", must="agree"),
        Answer("others", "Between the marks, this size and smaller", "lengths", must="agree"),
    ),
    source=(
        "Theorem of Pythagoras and its converse (Euclid, Elements, book I, propositions 47 and "
        "48). Law of cosines for a frame with equal opposite sides (plane geometry). Pushing the "
        "ends of the longer diagonal together is shop practice."
    ),
    compute=compute,
    example={
        "solve": "out",
        "width": "36 1/8",
        "height": "41 1/4",
        "rising": "54 15/16",
        "falling": "54 23/32",
        "bottom": "36 1/8",
        "side": "41 1/4",
        "along": "37 9/16",
        "across": "16 1/4",
    },
    basic=("solve", "rising", "falling", "bottom", "width", "height", "along", "across"),
)
