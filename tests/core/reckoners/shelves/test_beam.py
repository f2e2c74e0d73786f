"""Beams and built-up sections, against finite elements and slices that share no code."""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.wood.strength.beam import Beam
from sawside.wood.strength.section import Rectangle, Section
from tables import rows
from tests.core.oracles import beam_oracle

spans = st.fractions(min_value=8, max_value=100, max_denominator=16)
loads = st.fractions(min_value=1, max_value=600, max_denominator=8)
breadths = st.fractions(min_value="1/4", max_value=20, max_denominator=16)
heights = st.fractions(min_value="1/8", max_value=3, max_denominator=32)
stiffnesses = st.integers(min_value=200_000, max_value=2_900_000).map(Fraction)
spreads = st.sampled_from(["even", "middle", "quarters"])
_SPREAD = {
    "uniform": "even",
    "concentrated midspan": "middle",
    "concentrated at outer quarter points": "quarters",
}
_ENDS = {"both simply supported": "resting", "both clamped": "fixed"}


@pytest.mark.parametrize(
    "row",
    [row for row in rows("beam_coefficients.csv") if row["deflection_at"] == "midspan"],
    ids=lambda row: f"{row['loading']}, {row['ends']}",
)
def test_the_coefficients_are_those_of_the_handbook(row):
    """Wood Handbook, Table 9-1: bending with no shear, then shear with no bending."""
    beam = Beam(_ENDS[row["ends"]], _SPREAD[row["loading"]], Fraction(1), Fraction(1))
    far = Fraction(10**30)
    assert abs(beam.middle(1, far) - Fraction(row["kb"])) < Fraction(1, 10**20)
    assert abs(beam.middle(far, 1) - Fraction(row["ks"])) < Fraction(1, 10**20)


@settings(max_examples=120)
@given(
    st.sampled_from(["resting", "fixed", "overhanging"]),
    spreads,
    spans,
    loads,
    st.fractions(min_value="1/16", max_value="1/2", max_denominator=16),
    stiffnesses,
    breadths,
    heights,
)
def test_the_drops_are_those_of_finite_elements(
    supports, spread, span, load, part, stiffness, breadth, height
):
    over = span * part if supports == "overhanging" else Fraction(0)
    section = Section((Rectangle(stiffness, breadth, height),))
    beam = Beam(supports, spread, span, load, over)
    numbers = [float(each) for each in (span, load, over, section.bending, section.shear)]
    middle, end = beam_oracle.drops(supports, spread, *numbers)
    size = float(abs(beam.middle(section.bending, section.shear))) + abs(middle)
    assert float(beam.middle(section.bending, section.shear)) == pytest.approx(
        middle, abs=1e-6 * size + 1e-9
    )
    if over:
        found = float(beam.end(section.bending, section.shear))
        assert found == pytest.approx(end, abs=1e-6 * (abs(end) + size) + 1e-9)


@settings(max_examples=60)
@given(st.sampled_from(["resting", "fixed", "overhanging"]), spreads, spans)
def test_the_curve_that_is_drawn_has_the_drops_of_the_formula(supports, spread, span):
    over = span / 4 if supports == "overhanging" else Fraction(0)
    beam = Beam(supports, spread, span, Fraction(100), over)
    stiff, far = Fraction(1000), Fraction(10**40)
    assert abs(beam.drop_at(Fraction(1, 2)) / stiff - beam.middle(stiff, far)) < 1e-12
    for end in (Fraction(0), Fraction(1)):
        assert beam.drop_at(end) == 0
    if over:
        assert abs(beam.drop_at(Fraction(-1, 4)) / stiff - beam.end(stiff, far)) < 1e-12
        assert beam.drop_at(Fraction(-1, 4)) == beam.drop_at(Fraction(5, 4))


@settings(max_examples=60)
@given(
    st.lists(
        st.tuples(stiffnesses, breadths, heights, st.fractions(0, 2, max_denominator=16)),
        min_size=1,
        max_size=3,
    ),
    st.fractions(min_value=1, max_value=5000, max_denominator=1),
)
def test_a_built_up_section_is_that_of_its_slices(parts, moment):
    section = Section(tuple(Rectangle(*part) for part in parts))
    bending, shear, stresses = beam_oracle.section([tuple(map(float, part)) for part in parts])
    assert float(section.bending) == pytest.approx(bending, rel=1e-5)
    assert float(section.shear) == pytest.approx(shear, rel=1e-9)
    for part, each in zip(section.parts, stresses, strict=True):
        found = float(section.stress(part, moment))
        assert found == pytest.approx(float(moment) * each, rel=1e-5)


@given(stiffnesses, breadths, breadths, heights)
def test_equal_materials_of_equal_height_are_one_plain_section(stiffness, one, other, height):
    built = Section((Rectangle(stiffness, one, height), Rectangle(stiffness, other, height)))
    plain = Section((Rectangle(stiffness, one + other, height),))
    assert (built.bending, built.shear, built.axis) == (plain.bending, plain.shear, plain.axis)


@given(stiffnesses, breadths, heights, heights)
def test_a_board_glued_from_two_layers_is_one_plain_board(stiffness, breadth, upper, lower):
    built = Section(
        (Rectangle(stiffness, breadth, upper), Rectangle(stiffness, breadth, lower, upper))
    )
    assert built.bending == stiffness * breadth * (upper + lower) ** 3 / 12
    assert built.axis == (upper + lower) / 2
