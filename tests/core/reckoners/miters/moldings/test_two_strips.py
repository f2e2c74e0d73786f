"""Two strips and what the saw takes are the board again, whichever of them was known."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

strips = st.fractions(min_value=2, max_value=12, max_denominator=32)
small = st.fractions(min_value=0, max_value="1/2", max_denominator=64)
back = st.fractions(min_value=0, max_value=1, max_denominator=32)


def test_equal_strips_share_what_the_kerf_leaves():
    """Worked by hand: (6 1/4 - 1/8) / 2 = 3 1/16."""
    said = reckon("two_strips", board="6 1/4")["by_key"]
    assert said["rip_setting"]["text"] == said["wide"]["text"] == "3 1/16″"
    assert said["narrow"]["text"] == "3 1/16″"


def test_the_set_back_makes_one_strip_wider_and_the_wider_goes_to_the_fence():
    """Worked by hand: (6 1/4 - 1/8 - 1/16 + 5/8) / 2 = 3 11/32; 1/32 more at the fence."""
    said = reckon("two_strips", {"mark": "1/32"}, board="6 1/4", set_back="5/8", clean_up="1/32")
    by_key = said["by_key"]
    assert said["answers"][0]["text"] == "3 3/8″"
    assert by_key["wide"]["text"] == "3 11/32″"
    assert by_key["narrow"]["text"] == "2 23/32″"


@settings(max_examples=80)
@given(strips, back, small, small)
def test_cut_as_told_the_board_falls_into_the_two_strips(wide, step, kerf, clean):
    """The oracle walks across the board with a saw and a plane."""
    values = {"set_back": f"{step} in", "kerf": f"{kerf} in", "clean_up": f"{clean} in"}
    found = reckon("two_strips", wide=f"{wide} in", **values)["by_key"]
    board, setting = exact(found["board"]), exact(found["rip_setting"])
    at_the_fence, free = setting - clean, board - setting - kerf - clean
    assert (at_the_fence, free) == (wide, wide - step)
    assert exact(found["narrow"]) == free
    again = reckon("two_strips", board=f"{board} in", **values)["by_key"]
    assert {key: value["exact"] for key, value in again.items()} == {
        key: value["exact"] for key, value in found.items()
    }


@settings(max_examples=70)
@given(strips, back, small, small)
def test_the_smallest_board_leaves_exactly_the_narrowest_strip(least, step, kerf, clean):
    values = {
        "set_back": f"{step} in",
        "kerf": f"{kerf} in",
        "clean_up": f"{clean} in",
        "least": f"{least} in",
    }
    start = exact(reckon("two_strips", board="48", **values)["by_key"]["least_board"])
    assert exact(reckon("two_strips", board=f"{start} in", **values)["by_key"]["narrow"]) == least
    smaller = ask("two_strips", board=f"{start - Fraction(1, 64)} in", **values)
    assert errors(smaller)["board"]["kind"] == "impossible"


@pytest.mark.parametrize(
    ("laid", "height", "projection"),
    [("flat", "1 1/2″", "3″"), ("above", "5 1/2″", "3/4″"), ("before", "3″", "1 1/2″")],
)
def test_put_together_they_stand_as_high_and_as_far_out(laid, height, projection):
    """Worked by hand for strips of 3 and 2 1/2, 3/4 thick."""
    said = reckon("two_strips", wide="3", set_back="1/2", laid=laid)
    assert said["by_key"]["height"]["text"] == height
    assert said["by_key"]["projection"]["text"] == projection
    texts = [shape.get("text") for shape in said["drawing"]["shapes"]]
    assert f"{height} high" in texts
    assert f"{projection} out" in texts


def test_narrow_strips_bring_their_cautions_one_by_one():
    counts = [
        len(reckon("two_strips", wide=wide)["cautions"]) for wide in ("2", "1 7/8", "1", "15/16")
    ]
    assert counts == [3, 4, 4, 5]
    assert any(
        "maker’s instructions" in each for each in reckon("two_strips", wide="4")["cautions"]
    )


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"board": "6", "wide": "2"}, "wide", "conflict"),
        ({}, "board", "conflict"),
        ({"board": "1 9/16"}, "board", "impossible"),
        ({"wide": "1", "set_back": "1"}, "wide", "impossible"),
        ({"wide": "1 1/2", "set_back": "1"}, "wide", "impossible"),
        ({"board": "6", "kerf": "2"}, "kerf", "range"),
        ({"board": "6", "thickness": "0"}, "thickness", "range"),
        ({"board": "6//4"}, "board", "unreadable"),
    ],
)
def test_bad_input_names_its_field_and_a_remedy(values, field, kind):
    error = errors(ask("two_strips", **values))[field]
    assert error["kind"] == kind
    assert error["remedy"].endswith(".")


def test_the_smallest_board_is_the_remedy():
    error = errors(ask("two_strips", board="2", least="1 1/4"))["board"]
    assert "2 5/8″" in error["remedy"]


@pytest.mark.parametrize("board", ["2", "6 1/4", "40"])
@pytest.mark.parametrize("laid", ["flat", "above", "before"])
@pytest.mark.parametrize("thickness", ["1/4", "3/4", "2"])
def test_the_drawing_stays_in_its_box(board, laid, thickness):
    said = reckon("two_strips", board=board, laid=laid, thickness=thickness, set_back="3/8")
    left, top, right, bottom = said["drawing"]["box"]
    assert 0.5 <= (right - left) / (bottom - top) <= 5
    for shape in said["drawing"]["shapes"]:
        for x, y in shape.get("points", []):
            assert left <= x <= right
            assert top <= y <= bottom
    texts = [shape.get("text") for shape in said["drawing"]["shapes"]]
    assert f"rip {said['answers'][0]['text']}" in texts


@pytest.mark.parametrize(("planed", "verdict"), [("1/32", "Rip (planed to "), ("0", "Rip (for ")])
def test_a_strip_to_be_planed_is_told_as_it_is_after_planing(planed, verdict):
    said = reckon("two_strips", board="6 1/4", set_back="5/8", clean_up=planed)
    assert said["verdict"].startswith(verdict)
    texts = [shape.get("text") or "" for shape in said["drawing"]["shapes"]]
    assert any(text.endswith(" planed") for text in texts) == (planed != "0")
