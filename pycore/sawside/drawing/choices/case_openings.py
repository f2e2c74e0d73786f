"""How the openings of a case are made, seen from the front."""

from sawside.drawing.choices.small import small
from sawside.drawing.shapes import rectangle

_THICK = 0.035
_INSIDE = (0.26, 0.74)


def _case(words, *shelves, goods=(), fixed=None):
    """A case with shelves at these heights down from its top; `goods` are (left, top, right, foot)
    of what is in it."""
    left, right = _INSIDE
    sides = [rectangle(x, 0.02, x + _THICK, 0.73) for x in (left - _THICK, right)]
    boards = [
        rectangle(left, y, right, y + _THICK, "hatch" if y == fixed else "stock")
        for y in (0.02, *shelves, 0.73 - _THICK)
    ]
    return small(words, *sides, *boards, *(rectangle(*each, "hatch") for each in goods))


CASE_OPENINGS = {
    "equal": _case("A case with openings all alike.", 0.25, 0.48),
    "graduated": _case("A case with openings that get smaller toward the top.", 0.17, 0.38),
    "fit": _case(
        "A case with an opening per item in it.",
        0.24,
        0.42,
        goods=(
            (0.32, 0.12, 0.5, 0.24),
            (0.32, 0.31, 0.62, 0.42),
            (0.34, 0.5, 0.46, 0.695),
            (0.48, 0.5, 0.6, 0.695),
        ),
    ),
    "fixed": _case(
        "A case with one shelf fixed, the others around it.", 0.2, 0.33, 0.51, fixed=0.33
    ),
}
"""Equal, graduated, to fit what goes in, and around a fixed shelf."""
