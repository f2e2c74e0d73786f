"""A story stick in millimeters: every mark of a side at its exact place."""

from fractions import Fraction

import pytest
from asking import reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.core.oracles.brute_shelves import THICK, built

openings = st.fractions(min_value=2, max_value=20, max_denominator=16)


@settings(max_examples=60)
@given(openings, st.integers(1, 6), st.sampled_from(["floor", "under_bottom", "over_bottom"]))
def test_the_stick_has_both_edges_of_every_shelf(opening, shelves, foot):
    """The oracle adds the case up from the floor."""
    bottom, kick = Fraction(3, 4), Fraction(4)
    edges = built([opening] * (shelves + 1), [THICK] * shelves, bottom, bottom, kick)
    stick = reckon(
        "shelf_layout",
        height=f"{edges['overall']} in",
        shelf_count=str(shelves),
        thickness=f"{THICK} in",
        case_parts="whole",
        kick="4",
        foot=foot,
        edge="center",
    )["stick"]
    start = {"floor": Fraction(0), "under_bottom": kick, "over_bottom": kick + bottom}[foot]
    places = {mark["name"]: mark["at_mm"] for mark in stick["marks"]}
    for number, (low, high) in enumerate(edges["shelves"], 1):
        for edge, place in (("bottom", low), ("top", high)):
            exactly = float((place - start) * Fraction(254, 10))
            assert places[f"Shelf {number} {edge}"] == pytest.approx(exactly, abs=1e-4)
    assert stick["length_mm"] == pytest.approx(float(edges["overall"] - start) * 25.4, abs=1e-4)
    assert [mark["at_mm"] for mark in stick["marks"]] == sorted(places.values())
