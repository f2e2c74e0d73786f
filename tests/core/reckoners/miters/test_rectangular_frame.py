"""A rectangular frame goes around its thing with the room that was asked for."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

sizes = st.fractions(min_value=20, max_value=60, max_denominator=32)
stocks = st.fractions(min_value=1, max_value=5, max_denominator=32)
small = st.fractions(min_value=0, max_value=1, max_denominator=32)

MIRROR = {
    "around": "panel",
    "width": "14 1/2",
    "height": "20 3/4",
    "stock": "2 1/4",
    "rabbet": "3/8",
    "clearance": "1/16",
}


def lengths(said, key):
    return [item["text"] for item in said["by_key"][key]["items"]]


def test_a_mirror_of_the_record_cabinet_lies_in_its_rabbet():
    """Worked by hand: 14 1/2 + 1/8 − 3/4 = 13 7/8 inside, + 4 1/2 = 18 3/8 outside."""
    said = reckon("mitered_frame", **MIRROR)
    assert lengths(said, "inside") == ["13 7/8″", "20 1/8″"]
    assert lengths(said, "long_sides") == ["18 3/8″", "24 5/8″"]
    assert lengths(said, "rabbet_size") == ["14 5/8″", "20 7/8″"]
    assert said["by_key"]["setting"]["text"] == "45°"
    assert [(part["name"], part["count"]) for part in said["parts"]] == [
        ("Top and bottom", 2),
        ("Left and right", 2),
    ]
    assert "14 1/2 + 2 × 1/16 − 2 × 3/8 = 13 7/8" in said["working"][0]["text"]


@settings(max_examples=80)
@given(sizes, sizes, st.tuples(stocks, stocks, stocks), small)
def test_outside_is_inside_and_the_stock_whichever_is_measured(width, height, stock, reveal):
    """The oracle adds up what lies side by side."""
    side, top, bottom = stock
    wood = {"stock": f"{side} in", "top_stock": f"{top} in", "bottom_stock": f"{bottom} in"}
    for around, grown in (("inside", 0), ("opening", reveal)):
        said = reckon(
            "mitered_frame",
            around=around,
            width=f"{width} in",
            height=f"{height} in",
            reveal=f"{reveal} in",
            **wood,
        )["by_key"]
        inside = [exact(item) for item in said["inside"]["items"]]
        outside = [exact(item) for item in said["outside"]["items"]]
        assert inside == [width + 2 * grown, height + 2 * grown]
        assert outside == [inside[0] + 2 * side, inside[1] + top + bottom]
        back = reckon(
            "mitered_frame",
            around="outside",
            width=f"{outside[0]} in",
            height=f"{outside[1]} in",
            **wood,
        )["by_key"]
        assert [exact(item) for item in back["inside"]["items"]] == inside


def test_unequal_widths_meet_on_the_line_from_inner_to_outer_corner():
    """Textbook trigonometry: arctan 3.5/2.25 = 57.2648, and its rest of 90, 32.7352."""
    said = reckon(
        "mitered_frame",
        around="inside",
        width="20",
        height="30",
        stock="2 1/4",
        bottom_stock="3 1/2",
    )
    text = said["by_key"]["settings"]["text"]
    assert "Bottom: both ends ≈ 32.74°" in text
    assert "Left: left end ≈ 57.26°, right end 45°" in text
    assert "Right: left end 45°, right end ≈ 57.26°" in text
    assert "setting" not in said["by_key"]


@settings(max_examples=60)
@given(
    st.fractions(min_value=4, max_value=40, max_denominator=8),
    st.fractions(min_value=4, max_value=40, max_denominator=8),
    st.fractions(min_value=50, max_value=120, max_denominator=4),
)
def test_no_way_to_share_the_sticks_needs_fewer_of_them(width, height, stick):
    """The oracle tries every way to put four pieces on sticks; a 45 takes 1.4142… of the kerf."""
    said = ask(
        "mitered_frame",
        around="inside",
        width=f"{width} in",
        height=f"{height} in",
        stock="1",
        stick=f"{stick} in",
    )
    assert said["ok"]
    takes = [float(each) + 2 + 2**0.5 / 8 for each in (width, width, height, height)]
    found = next(answer for answer in said["answers"] if answer["key"] == "sticks")["text"]
    assert int(found.split()[0]) == fewest(takes, float(stick))


def fewest(takes, stick):
    """The least sticks, by trying all."""

    def place(number, rooms):
        if number == len(takes):
            return len(rooms)
        tries = [place(number + 1, [*rooms, stick - takes[number]])]
        for index, room in enumerate(rooms):
            if takes[number] <= room:
                rest = [*rooms[:index], room - takes[number], *rooms[index + 1 :]]
                tries.append(place(number + 1, rest))
        return min(tries)

    return place(0, [])


def test_a_cut_at_45_takes_the_kerf_times_the_root_of_2_from_the_stick():
    said = reckon("mitered_frame", **MIRROR)
    (total,) = said["by_key"]["total"]["items"]
    expected = 2 * (18.375 + 24.625) + 4 * 2**0.5 / 8
    assert float(total["decimals"].rstrip("…")) == pytest.approx(expected, abs=1e-5)
    assert said["by_key"]["sticks"]["text"] == "1 stick of 96″, 2 1/4″ wide"


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"rabbet": "2 1/4"}, "rabbet", "impossible"),
        ({"rabbet": "2", "width": "3"}, "width", "impossible"),
        ({"around": "outside", "width": "4 1/2"}, "width", "impossible"),
        ({"around": "outside", "height": "4"}, "height", "impossible"),
        ({"stick": "18"}, "stick", "impossible"),
        ({"rabbet": ""}, "rabbet", "missing"),
        ({"stock": "0"}, "stock", "range"),
    ],
)
def test_a_frame_that_can_not_be_is_refused_by_its_field(values, field, kind):
    error = errors(ask("mitered_frame", **(MIRROR | values)))[field]
    assert error["kind"] == kind
    assert error["remedy"]


def test_short_pieces_bring_the_caution_for_short_pieces():
    small = reckon("mitered_frame", **(MIRROR | {"width": "6"}))["cautions"]
    assert len(small) == len(reckon("mitered_frame", **MIRROR)["cautions"]) + 1


@pytest.mark.parametrize("size", [("6", "90"), ("90", "6"), ("30", "30"), ("1", "1")])
def test_the_drawing_tells_all_four_measures_and_stays_in_its_box(size):
    said = reckon("mitered_frame", around="inside", width=size[0], height=size[1], stock="2")
    drawing = said["drawing"]
    texts = [shape["text"] for shape in drawing["shapes"] if shape["kind"] == "dimension"]
    assert texts == [*lengths(said, "outside"), *lengths(said, "inside")]
    left, top, right, bottom = drawing["box"]
    assert 0.4 <= (right - left) / (bottom - top) <= 3
    for shape in drawing["shapes"]:
        for x, y in shape.get("points", []):
            assert left <= x <= right
            assert top <= y <= bottom
    assert len([shape for shape in drawing["shapes"] if shape["kind"] == "polygon"]) == 4


def test_fractions_of_the_whole_are_kept():
    said = reckon("mitered_frame", around="inside", width="1/3 of 40", height="20", stock="2")
    assert exact(said["by_key"]["inside"]["items"][0]) == Fraction(40, 3)
