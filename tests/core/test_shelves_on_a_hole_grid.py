"""Each shelf goes to the hole that is nearest to where it would ideally be."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from brute_shelves import THICK
from hypothesis import given, settings
from hypothesis import strategies as st

KEY = "shelves_on_a_hole_grid"
PITCHES = {"1": Fraction(1), "5/4": Fraction(5, 4), "32 mm": Fraction(320, 254)}
"""Pitches; 1 in = 25.4 mm exactly (international yard and pound agreement, 1959)."""


@settings(max_examples=150)
@given(
    st.fractions(min_value=30, max_value=90, max_denominator=16), st.integers(1, 5),
    st.sampled_from(list(PITCHES)), st.fractions(min_value=1, max_value=6, max_denominator=16),
    st.fractions(min_value=0, max_value=1, max_denominator=16),
)  # fmt: skip
def test_every_shelf_is_on_the_hole_that_a_search_of_all_holes_finds(
    height, shelves, pitch, first, rest
):
    """The oracle tries every hole for every shelf."""
    said = reckon(
        KEY, height=f"{height} in", thickness=f"{THICK} in", shelf_count=str(shelves), pitch=pitch,
        first=f"{first} in", rest=f"{rest} in",
    )["by_key"]  # fmt: skip
    holes, place = [], first
    while place + rest + THICK <= height:
        holes.append(place)
        place += PITCHES[pitch]
    opening = (height - shelves * THICK) / (shelves + 1)
    wanted = [opening * (n + 1) + THICK * n for n in range(shelves)]
    best = [min(range(len(holes)), key=lambda n: abs(holes[n] + rest - each)) for each in wanted]
    found = said["holes"]["items"]
    assert [exact(item) for item in found] == [holes[n] for n in best]
    assert [item["label"] for item in found] == [
        f"Shelf {shelf}: hole {n + 1}" for shelf, n in enumerate(best, 1)
    ]
    assert [exact(item) for item in said["marks"]["items"]] == [holes[n] + rest for n in best]
    assert said["holes_needed"]["text"] == str(len(holes))
    openings = [exact(item) for item in said["openings"]["items"]]
    assert sum(openings) + shelves * THICK == height
    assert exact(said["difference"]) == max(openings) - min(openings)
    moved = [abs(holes[n] + rest - each) for n, each in zip(best, wanted, strict=True)]
    assert exact(said["moved"]) == max(moved)


def test_own_heights_go_to_their_nearest_holes():
    said = reckon(
        KEY, height="60", first="2", pitch="1", rest="0", wanted="own",
        heights=["10.4 in", "20.5 in", "31.6 in"],
    )["by_key"]  # fmt: skip
    assert [item["text"] for item in said["holes"]["items"]] == ["10″", "20″", "32″"]


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"first": "39 1/2"}, "first", "impossible"),
        ({"shelf_count": "30"}, "pitch", "impossible"),
        ({"shelf_count": "60"}, "shelf_count", "impossible"),
        ({"pitch": "own", "own_pitch": "1/8"}, "own_pitch", "range"),
        ({"wanted": "own", "heights": ["12 in", "12 1/2 in"]}, "heights", "impossible"),
        ({"wanted": "own", "heights": []}, "heights", "missing"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    form = {"height": "40", "first": "4", "pitch": "5/4"}
    assert errors(ask(KEY, **(form | values)))[field]["kind"] == kind


def test_sixty_shelves_on_two_hundred_holes_are_answered():
    said = reckon(KEY, height="210", shelf_count="60", thickness="3/4", first="2", pitch="1")
    assert len(said["by_key"]["holes"]["items"]) == 60
    assert said["drawing"]["words"].startswith("A case 210″ high inside with 60 shelves")
