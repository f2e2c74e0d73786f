"""A space between walls, as the tests of that question fill it in."""

from fractions import Fraction

from asking import inches
from hypothesis import strategies as st

KEY = "space"
MARK = Fraction(1, 16)
WALLS = {"built": "walls", "widths": ["37 1/2"], "left_height": "96", "scribe": "1/4"}

sixteenths = st.integers(0, 24).map(lambda number: Fraction(number, 16))
leans = st.integers(-24, 24).map(lambda number: Fraction(number, 32))


def leaning(side, lean):
    """How a wall leans, as it is filled in."""
    way = "plumb" if lean == 0 else "in" if lean > 0 else "away"
    return {f"{side}_lean": way, f"{side}_out": inches(abs(lean))}


def texts(answer):
    return [(item["label"], item["text"]) for item in answer["items"]]
