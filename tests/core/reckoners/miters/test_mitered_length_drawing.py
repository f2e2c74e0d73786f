"""A mitered piece is drawn as it lies, with its sides and both its cuts."""

import pytest
from asking import as_drawn, reckon


@pytest.mark.parametrize("width", ["1/8", "3/4", "2 1/4", "24"])
@pytest.mark.parametrize("known", ["1/4", "12", "1000"])
@pytest.mark.parametrize("angle", ["1/2", "45", "80"])
def test_the_drawing_stays_in_its_box_and_legible(width, known, angle):
    said = reckon(
        "mitered_length",
        known=known,
        width=width,
        left_end="other",
        left_angle=angle,
        right_end="45",
    )
    drawing = said["drawing"]
    left, top, right, bottom = drawing["box"]
    assert 0.9 <= (right - left) / (bottom - top) <= 5
    for shape in drawing["shapes"]:
        for x, y in shape.get("points", []):
            assert left <= x <= right
            assert top <= y <= bottom
    texts = [shape["text"] for shape in drawing["shapes"] if shape["kind"] == "dimension"]
    by_key = said["by_key"]
    assert texts == [
        f"long point {as_drawn(by_key['long_side'])}",
        f"short point {as_drawn(by_key['short_side'])}",
    ]


def test_a_long_piece_is_drawn_with_a_break_and_a_short_one_without():
    def breaks(known):
        shapes = reckon("mitered_length", known=known, width="2")["drawing"]["shapes"]
        return [shape for shape in shapes if shape.get("role") == "break"]

    assert len(breaks("40")) == 6
    assert breaks("4") == []


def test_a_piece_with_one_cut_of_each_kind_is_drawn_from_the_face_and_from_the_edge():
    drawing = reckon(
        "mitered_length",
        known="31 5/8",
        width="2 1/4",
        thickness="3/4",
        left_end="edge",
        right_end="45",
    )["drawing"]
    texts = [shape.get("text") for shape in drawing["shapes"]]
    assert {"2 1/4″ wide", "3/4″ thick", "left end", "right end"} <= set(texts)
    assert "through the thickness" in drawing["words"]
    left, top, right, bottom = drawing["box"]
    for shape in drawing["shapes"]:
        for x, y in shape.get("points", []):
            assert left <= x <= right
            assert top <= y <= bottom
