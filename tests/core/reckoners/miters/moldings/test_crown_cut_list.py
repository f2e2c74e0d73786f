"""The list of pieces starts from how long a piece of crown is exactly, and rounds that once: each
piece as its edges are, all of them together up."""

import math
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from projects import acts, begun, view

STEPS = {f"1/{parts}": 1 / parts for parts in (8, 16, 32)}


def listed(corner, measured, mark, lines):
    """The view of a project with so many lines of one piece of crown."""
    values = {
        "found": "legs",
        "drop": "2 5/8",
        "projection": "2 1/16",
        "left_end": "outside",
        "left_corner": str(corner),
        "right_end": "inside",
        "measured": f"{measured} in",
    }
    line = {"reckoner": "crown", "values": values}
    kept = [("keep_line", line | {"name": f"Crown {number}"}) for number in range(lines)]
    return view(acts(begun() | {"settings": {"mark": mark}}, *kept))


@settings(max_examples=30)
@given(
    st.integers(60, 140),
    st.fractions(min_value=20, max_value=90, max_denominator=1000),
    st.sampled_from(list(STEPS)),
    st.integers(2, 4),
)
def test_neither_a_piece_nor_all_together_are_rounded_twice(corner, measured, mark, lines):
    """Independent oracle, in floats: an outside end reaches projection / tan (corner / 2) beyond
    the bottom edge. A sum of lengths that were rounded would be a mark and more off."""
    long = float(measured) + 2.0625 / math.tan(math.radians(corner / 2))
    said = listed(corner, measured, mark, lines)
    total = said["tally"][0]["length"]
    for told, exact in [
        *((piece["length"], long) for piece in said["pieces"]),
        (total, lines * long),
    ]:
        assert float(told["decimals"].rstrip("…")) == pytest.approx(exact, abs=1e-5)
        over = float(Fraction(told["mark"])) - exact
        if told is total:  # what is bought is rounded up
            assert -1e-6 < over < STEPS[mark] + 1e-6
        else:
            assert abs(over) <= STEPS[mark] / 2 + 1e-6
