"""Shelves go to the holes that make their openings as equal as can be, or nearest to a height."""

from fractions import Fraction
from itertools import combinations

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import assume, given, settings
from hypothesis import strategies as st

KEY = "shelves_on_a_hole_grid"
PITCHES = {"1": Fraction(1), "5/4": Fraction(5, 4), "32 mm": Fraction(320, 254)}
"""Pitches; 1 in = 25.4 mm exactly (international yard and pound agreement, 1959)."""


def best_of_all(holes, shelves, height, rest, thick):
    """The openings that are most equal, by a trial of every choice of holes; None if none fits."""
    found = []
    for chosen in combinations(holes, shelves):
        tops = [Fraction(0), *(hole + rest + thick for hole in chosen)]
        openings = [b - a for a, b in zip(tops, [*(h + rest for h in chosen), height], strict=True)]
        if min(openings) > 0:
            squares = sum(each**2 for each in openings)
            found.append((max(openings) - min(openings), squares, [-each for each in openings]))
    return min(found)[2] if found else None


@settings(max_examples=150)
@given(
    st.fractions(min_value=6, max_value=18, max_denominator=16),
    st.integers(1, 5),
    st.sampled_from(list(PITCHES)),
    st.fractions(min_value=0, max_value=6, max_denominator=16),
    st.fractions(min_value=0, max_value=1, max_denominator=16),
    st.fractions(min_value="1/8", max_value=2, max_denominator=32),
)
def test_no_other_choice_of_holes_makes_the_openings_more_equal(
    height, shelves, pitch, first, rest, thick
):
    """Ties: the least sum of squares, then the larger openings at the bottom."""
    assume(first + rest + thick <= height)
    holes, place = [], first
    while place + rest + thick <= height:
        holes.append(place)
        place += PITCHES[pitch]
    assume(shelves * thick < height)
    best = best_of_all(holes, shelves, height, rest, thick)
    said = ask(
        KEY,
        height=f"{height} in",
        thickness=f"{thick} in",
        shelf_count=str(shelves),
        pitch=pitch,
        first=f"{first} in",
        rest=f"{rest} in",
    )
    if best is None:
        assert errors(said)["pitch"]["kind"] == "impossible"
        return
    assume(max(best) < -Fraction(1, 8))  # what is less may be nothing on the marks of a tape
    told = said["by_key"]
    openings = [exact(item) for item in told["openings"]["items"]]
    assert openings == [-each for each in best]
    assert exact(told["difference"]) == max(openings) - min(openings)
    assert told["holes_needed"]["text"] == str(len(holes))
    found = [exact(item) for item in told["holes"]["items"]]
    assert [item["label"] for item in told["holes"]["items"]] == [
        f"Shelf {shelf}: hole {holes.index(hole) + 1}" for shelf, hole in enumerate(found, 1)
    ]
    assert [exact(item) for item in told["marks"]["items"]] == [hole + rest for hole in found]
    ideal = (height - shelves * thick) / (shelves + 1)
    wanted = [ideal * (n + 1) + thick * n for n in range(shelves)]
    moved = [abs(hole + rest - each) for hole, each in zip(found, wanted, strict=True)]
    assert exact(told["moved"]) == max(moved)


def test_three_shelves_on_holes_32_mm_apart():
    """Each on the hole nearest to its ideal place they differ by 1 47/64."""
    said = reckon(
        KEY,
        height="40 1/16",
        thickness="23/32",
        shelf_count="3",
        first="95 mm",
        pitch="32 mm",
        rest="2.5 mm",
    )["by_key"]
    assert said["difference"]["text"] == "1 3/32″"


@pytest.mark.parametrize(
    ("edge", "drawn"), [("bottom", "shelf bottoms"), ("center", "shelf center lines")]
)
def test_hole_centers_and_what_the_picture_measures_are_told_apart(edge, drawn):
    """The pins are in holes, the picture tells a line of the shelf above them."""
    said = reckon(KEY, height="10", thickness="1", shelf_count="2", first="1", pitch="1", edge=edge)
    holes = [item["brief"] for item in said["by_key"]["holes"]["items"]]
    assert said["verdict"].endswith(f", hole centers {holes[0]}, {holes[1]}")
    texts = [shape.get("text") for shape in said["drawing"]["shapes"]]
    assert f"{drawn} from the inside bottom" in texts


def test_a_tall_case_with_fine_holes_is_answered():
    said = reckon(KEY, height="100 ft", shelf_count="9", pitch="own", own_pitch="1/4", first="1")
    assert exact(said["by_key"]["difference"]) < Fraction(1, 2)


def test_own_heights_go_to_their_nearest_holes():
    said = reckon(
        KEY,
        height="60",
        first="2",
        pitch="1",
        rest="0",
        wanted="own",
        heights=["10.4 in", "20.5 in", "31.6 in"],
    )["by_key"]
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


def test_the_drawing_shows_every_hole_of_both_rows_and_the_used_ones_larger():
    said = reckon(KEY, height="40", shelf_count="2", thickness="3/4", first="4", pitch="1")
    holes = [each["points"] for each in said["drawing"]["shapes"] if each.get("role") == "hatch"]
    heights = [-sum(y for _, y in corners) / 4 for corners in holes]
    count = int(said["by_key"]["holes_needed"]["text"])
    row = [4 + number for number in range(count)]
    assert heights == pytest.approx([*row, *row], abs=1e-3)
    sizes = [max(x for x, _ in corners) - min(x for x, _ in corners) for corners in holes]
    used = {float(exact(item)) for item in said["by_key"]["holes"]["items"]}
    assert {
        height for height, size in zip(row, sizes, strict=False) if size > min(sizes) * 1.2
    } == used
