"""Pin holes: each from its own place, mirrored, and none where something is fixed."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

KEY = "pin_holes"
PITCHES = {"1": Fraction(1), "5/4": Fraction(5, 4), "32 mm": Fraction(320, 254)}
SIDE = {"side": "44", "depth": "14", "first": "4"}
inches = st.fractions(min_value=1, max_value=40, max_denominator=16)


@settings(max_examples=120)
@given(
    st.sampled_from(list(PITCHES)),
    st.fractions(min_value=1, max_value=6, max_denominator=16),
    st.fractions(min_value=20, max_value=90, max_denominator=16),
    st.lists(inches, max_size=3),
    st.lists(inches, max_size=3),
)
def test_holes_are_where_a_search_of_every_hole_finds_them(pitch, first, side, fixed, wanted):
    """The oracle adds pitch to pitch as exact fractions and measures every gap to a fixed shelf."""
    clear, diameter, rest = Fraction(1, 2), Fraction(1, 4), Fraction(1, 8)
    place, centers, left_out = first, [], []
    while place <= side - first:
        gaps = [
            max(low - (place + diameter / 2), (place - diameter / 2) - (low + Fraction(3, 4)))
            for low in fixed
        ]
        if all(gap >= clear for gap in gaps):
            centers.append(place)
        else:
            left_out.append(place)
        place += PITCHES[pitch]
    said = ask(
        KEY,
        side=f"{side} in",
        depth="14",
        first=f"{first} in",
        pitch=pitch,
        keep=[{"low": f"{low} in", "thick": "3/4 in"} for low in fixed],
        wanted=[f"{each} in" for each in wanted],
    )
    if not centers:
        assert errors(said)["keep"]["kind"] == "impossible"
        return
    answers = said["by_key"]
    items = answers["holes"]["items"]
    assert [exact(item) for item in items] == centers
    assert [item["label"] for item in items] == [
        f"Hole {number}" for number in range(1, len(centers) + 1)
    ]
    for item in items:
        assert abs(Fraction(item["dropped"])) <= Fraction(1, 32)
    assert answers["total"]["text"] == str(4 * len(centers))
    told = answers["left_out"]["text"]
    assert (0 if told == "None" else len(told.split(", "))) == len(left_out)
    heights = [center + rest for center in centers]
    for item, each in zip(answers.get("shelves", {"items": []})["items"], wanted, strict=True):
        assert abs(exact(item) - each) == min(abs(height - each) for height in heights)
    marks = said["stick"]["marks"]
    assert [mark["at_mm"] for mark in marks] == [
        pytest.approx(float(center) * 25.4, abs=1e-3) for center in centers
    ]


def test_no_fewer_holes_reach_from_the_first_to_the_last():
    said = reckon(KEY, **SIDE, last="20", pitch="5/4")["by_key"]
    assert said["count"]["text"] == "13"  # 4 + 12 x 1 1/4 = 19; one more would be at 20 1/4
    assert said["holes"]["items"][-1]["text"] == "19″"


def test_rows_are_mirrored_left_and_right():
    drawing = reckon(KEY, **SIDE, front="2", back="3")["drawing"]
    holes = [s for s in drawing["shapes"] if s["kind"] == "polygon" and s["role"] == "hatch"]
    centers = {
        (round(sum(x for x, _ in s["points"]) / 4, 2), round(s["points"][0][1], 2)) for s in holes
    }
    sides = [s for s in drawing["shapes"] if s["kind"] == "polygon" and s["role"] == "stock"]
    edges = [x for s in sides for x, _ in s["points"]]
    whole = min(edges) + max(edges)
    columns = {x for x, _ in centers}
    assert len(columns) == 4
    for x, y in centers:
        assert any(abs(whole - x - other) < 0.03 and y == row for other, row in centers)
    left = sorted(x for x in columns if x < whole / 2)
    wide = max(x for x, _ in sides[0]["points"])
    assert left[0] / wide == pytest.approx(2 / 14, abs=0.01)
    assert (wide - left[1]) / wide == pytest.approx(3 / 14, abs=0.01)


@pytest.mark.parametrize(
    ("values", "warned"),
    [
        ({"hole_depth": "3/4"}, "come through"),
        ({"hole_depth": "11/16"}, "Only 1/16″ is left"),
        ({"pitch": "own", "own_pitch": "3/8"}, "split out"),
    ],
)
def test_what_weakens_the_side_is_warned_of_first(values, warned):
    assert warned in reckon(KEY, **(SIDE | values))["cautions"][0]


def test_a_sound_side_brings_only_the_usual_cautions():
    usual = reckon(KEY, **SIDE)["cautions"]
    assert len(usual) == 3
    assert any("maker" in caution for caution in usual)


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"pitch": "own", "own_pitch": "1/4"}, "own_pitch", "impossible"),
        ({"front": "1/8"}, "front", "impossible"),
        ({"back": "1/8"}, "back", "impossible"),
        ({"front": "7", "back": "7"}, "back", "impossible"),
        ({"first": "1/8"}, "first", "impossible"),
        ({"first": "30", "last": "20"}, "first", "impossible"),
        ({"first": "23"}, "first", "impossible"),
        ({"side": "300", "pitch": "1"}, "pitch", "impossible"),
        ({"diameter": "0"}, "diameter", "range"),
        ({"keep": [{"low": "3//4"}]}, "keep", "unreadable"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    error = errors(ask(KEY, **(SIDE | values)))[field]
    assert error["kind"] == kind
    assert error["remedy"].endswith(".")


def test_two_hundred_holes_are_answered_and_drawn_in_little():
    said = reckon(KEY, side="203", depth="14", first="2", pitch="1")
    assert len(said["by_key"]["holes"]["items"]) == 200
    holes = [shape for shape in said["drawing"]["shapes"] if shape.get("role") == "hatch"]
    assert len(holes) == 4 * 6
    assert "Only the first and last" in said["drawing"]["words"]


def test_the_fewest_holes_reach_from_the_lowest_shelf_to_the_highest():
    """Counted by hand: holes from 8 in on, 1 1/4 apart; 16 and 30 in are nearest to 7 and 18."""
    side = {"side": "44 1/2", "depth": "14 1/2", "first": "8", "last": "38", "pitch": "5/4"}
    said = reckon("pin_holes", **side, wanted=["30", "16", "20"])["by_key"]
    assert said["enough"]["text"] == "Holes 7 to 18: 12 per row instead of 25."
    one = reckon("pin_holes", **side, wanted=["16"])["by_key"]
    assert one["enough"]["text"] == "Just hole 7."
    assert "enough" not in reckon("pin_holes", **side)["by_key"]


def test_the_verdict_says_where_all_holes_are_and_how_many_a_fixed_shelf_takes():
    """Worked by hand: 8 + 24 × 1 1/4 is 38; two lie within 1/2 of 20 7/8 to 21 5/8."""
    side = {"side": "44 1/2", "depth": "14 1/2", "first": "8", "last": "38", "pitch": "5/4"}
    assert reckon(KEY, **side)["verdict"] == "25 holes per row, every 1 1/4″ from 8″ to 38″"
    said = reckon(KEY, **side, keep=[{"low": "20 7/8 in", "thick": "3/4 in"}])
    assert said["verdict"] == (
        "23 holes per row, every 1 1/4″ from 8″ to 38″, 2 skipped at the fixed shelf"
    )
    assert said["by_key"]["left_out"]["text"] == "20 1/2″, 21 3/4″"
    texts = [shape.get("text") for shape in said["drawing"]["shapes"]]
    assert "fixed" in texts
    assert "23: 38″" in texts


def test_a_row_of_one_hole_says_where_it_is():
    assert reckon(KEY, **SIDE, last="4")["verdict"] == "1 hole per row, at 4″"
