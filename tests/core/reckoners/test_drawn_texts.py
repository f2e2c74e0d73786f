"""What the texts of drawings say: what was rounded, and from where marks are counted."""

import re

import pytest
from asking import as_drawn, reckon

from sawside.reckoners import RECKONERS

LENGTH = re.compile(r"(≈ )?((?:\d+′ )?\d+(?: \d+/\d+|/\d+)?″)")


def drawings(said):
    """The drawing of an answer and those of its pieces."""
    return [
        each for each in (said["drawing"], *(part["drawing"] for part in said["parts"])) if each
    ]


def texts(drawing):
    """Every text of a drawing."""
    return [shape["text"] for shape in drawing["shapes"] if shape.get("text")]


def lengths(said):
    """Every length that is told: of the answers, and of the pieces."""
    for answer in (*said["answers"], *(value for part in said["parts"] for value in part.values())):
        if isinstance(answer, dict):
            yield from (each for each in (answer, *answer.get("items", ())) if "mark" in each)


def test_what_was_rounded_is_never_drawn_as_if_it_were_exact():
    """A number that is an exact one as well, as both edges of a crown may be, is left out."""
    seen = 0
    for key in sorted(RECKONERS.keys()):
        said, typed = reckon(key, **RECKONERS[key].example), str(RECKONERS[key].example)
        exact = {each["text"] for each in lengths(said) if each["direction"] == "exact"}
        exact |= {found for _, found in LENGTH.findall(typed.replace("'", "″"))}
        rounded = {each["text"] for each in lengths(said) if each["direction"] != "exact"} - exact
        for drawing in drawings(said):
            for text in texts(drawing):
                for sign, length in LENGTH.findall(text):
                    if length in rounded:
                        assert sign, f"{key}: {text}"
                        seen += 1
    assert seen > 30


def test_equal_parts_that_were_rounded_do_not_seem_to_add_up():
    """36 1/8 ÷ 5 is 7.225, on the tape 7 1/4: five of these would be 36 1/4."""
    said = reckon("equal_parts", whole="36 1/8", parts="5", between="nothing")
    assert "≈ 7 1/4″" in texts(said["drawing"])
    assert "36 1/8″" in texts(said["drawing"])


@pytest.mark.parametrize(
    ("origin", "words", "place"),
    [
        ("inside_bottom", "inside bottom", 0),
        ("floor", "floor", 3.75),
        ("lower_end", "bottom end of the side", 0.75),
        ("upper_end", "top end of the side", -36.25),
    ],
)
def test_the_marks_of_a_case_show_their_zero_and_say_where_it_is(origin, words, place):
    """A case 40 high on a kick of 3, panels of 3/4; sides on the kick, level with the top's face.

    By hand: inside are 40 − 3 − 2 × 3/4 = 35 1/2; y goes down from the inside bottom.
    """
    said = reckon(
        "shelf_layout",
        height="40",
        shelf_count="2",
        case_parts="whole",
        kick="3",
        bottom="3/4",
        top="3/4",
        foot="under_bottom",
        head="over_top",
        origin=origin,
    )
    shapes = said["drawing"]["shapes"]
    (zero,) = [shape for shape in shapes if shape.get("text") == "0"]
    assert zero["at"][1] == pytest.approx(place)
    assert f"marks from the {words}" in texts(said["drawing"])


@pytest.mark.parametrize("key", ["dado_layout", "pin_holes"])
def test_the_marks_of_a_side_show_their_zero_at_its_lower_end(key):
    drawing = reckon(key, **RECKONERS[key].example)["drawing"]
    (zero,) = [shape for shape in drawing["shapes"] if shape.get("text") == "0"]
    assert zero["at"][1] == 0
    assert "marks from the bottom end" in texts(drawing)


@pytest.mark.parametrize(("key", "part"), [("edge_strip", 0), ("scarf", 1)])
def test_a_piece_longer_than_its_back_and_its_face_has_that_length_as_a_dimension(key, part):
    more = {"run": "240", "stick": "96"} if key == "scarf" else {}
    said = reckon(key, **RECKONERS[key].example | more)
    piece = said["parts"][part]
    (whole,) = [
        shape for shape in piece["drawing"]["shapes"] if "tip to tip" in shape.get("text", "")
    ]
    assert whole["kind"] == "dimension"
    assert whole["text"] == f"tip to tip {as_drawn(piece['length'])}"
    xs = [
        x
        for shape in piece["drawing"]["shapes"]
        if shape.get("role") == "stock"
        for x, _ in shape.get("points", [])
    ]
    assert sorted((whole["from"][0], whole["to"][0])) == [min(xs), max(xs)]
