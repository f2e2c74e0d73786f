"""A piece of a known size: its own numbers, and the short side that its ends leave.

At 45° an end takes the width of the stock (common practice, no source): 30 - 2 × 2 1/4 = 25 1/2.
"""

import pytest
from asking import ask, errors, reckon

SIZE = {"length": "30", "width": "2 1/4"}


def test_a_square_piece_is_told_as_it_was_given():
    said = reckon("piece_by_hand", **SIZE, count="3")
    part = said["parts"][0]
    assert (part["count"], part["length"]["text"], part["width"]["text"]) == (3, "30″", "2 1/4″")
    assert part["ends"]["left"] == {"cut": "square", "angle": "0°", "at_the_saw": ["0°"]}
    assert "short_side" not in said["by_key"]


def test_a_mitered_piece_has_its_length_on_the_long_side():
    said = reckon("piece_by_hand", **SIZE, left_end="45", right_end="45")
    assert said["by_key"]["short_side"]["text"] == "25 1/2″"
    assert said["parts"][0]["length"]["text"] == "30″"
    assert said["drawing"]["words"]


def test_an_end_may_be_told_in_words():
    said = reckon("piece_by_hand", **SIZE, left_end="told", left_told="notched 3/4 deep")
    notched = {"cut": "notched 3/4 deep", "angle": "", "at_the_saw": []}
    assert said["parts"][0]["ends"]["left"] == notched
    said = reckon("piece_by_hand", length="30", right_end="told")
    assert said["parts"][0]["ends"]["right"]["cut"] == "as marked"


@pytest.mark.parametrize(
    ("values", "field"),
    [
        ({"length": "30", "left_end": "45"}, "width"),
        ({"length": "30", "left_end": "edge"}, "thickness"),
        ({"length": "4", "width": "2 1/4", "left_end": "45", "right_end": "45"}, "length"),
        (SIZE | {"left_end": "told", "left_told": "x" * 81}, "left_told"),
        (SIZE | {"count": "0"}, "count"),
    ],
)
def test_what_is_missing_or_can_not_be_is_told_of_its_field(values, field):
    assert field in errors(ask("piece_by_hand", **values))
