"""A molding around a case closes at its corners, layer upon layer, whatever the corners are."""

from fractions import Fraction
from itertools import product
from math import ceil

from asking import exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.geometry.wrap import fewest_sticks
from tests.core.reckoners.miters.wraps import parts, sides, stack, wrap

widths = st.fractions(min_value=20, max_value=90, max_denominator=32)
depths = st.fractions(min_value=10, max_value=30, max_denominator=32)
corners = st.integers(min_value=60 * 50, max_value=120 * 50).map(lambda steps: Fraction(steps, 50))
layers = st.lists(
    st.fractions(min_value="1/8", max_value=1, max_denominator=32), min_size=1, max_size=3
)
OTHER = {"left": "right", "right": "left"}


def asked(width, left, right, corners, projections, where="case"):
    return reckon(
        "wrap",
        around=where,
        width=f"{width} in",
        left_depth=f"{left} in",
        right_depth=f"{right} in",
        left_corner=f"{corners[0]}",
        right_corner=f"{corners[1]}",
        layers=stack(*projections),
    )


def test_a_square_corner_makes_a_piece_longer_by_the_projection():
    """Common practice, no source: at a 45 a piece grows by the stock's thickness at each end."""
    found = parts(reckon("wrap", **wrap()))
    assert sides(found["layer_1_front"]) == ("38 3/8″", "36 7/8″")
    assert sides(found["layer_1_left_return"]) == ("16″", "15 1/4″")
    assert sides(found["layer_1_right_return"]) == ("16″", "15 1/4″")


def test_a_second_layer_lies_on_the_first():
    """Worked by hand: 36 7/8 + 2 x 3/4 = 38 3/8, and 38 3/8 + 2 x 1/2 = 39 3/8."""
    found = parts(reckon("wrap", **wrap(layers=stack("3/4", "1/2"))))
    assert sides(found["layer_2_front"]) == ("39 3/8″", "38 3/8″")
    assert sides(found["layer_2_left_return"]) == ("16 1/2″", "16″")


@settings(max_examples=40)
@given(widths, depths, depths, corners, corners, layers)
def test_the_mirror_image_swaps_left_and_right(width, left, right, one, other, projections):
    said = parts(asked(width, left, right, (one, other), projections))
    mirrored = parts(asked(width, right, left, (other, one), projections))
    for key, part in said.items():
        image = mirrored["_".join(OTHER.get(word, word) for word in key.split("_"))]
        assert (part["long_side"], part["short_side"]) == (image["long_side"], image["short_side"])
        for side, opposite in OTHER.items():
            end, imaged = part["ends"][side], image["ends"][opposite]
            assert end["cut"] == imaged["cut"]
            words = imaged["angle"].split(" ")
            assert end["angle"] == " ".join(OTHER.get(word, word) for word in words)


@settings(max_examples=40)
@given(widths, depths, corners, corners, st.fractions("1/8", 2, max_denominator=32))
def test_one_layer_is_three_mitered_lengths(width, depth, one, other, thick):
    """Inside and allowances make the outside, as the question of the mitered length has it."""
    found = parts(asked(width, depth, depth, (one, other), [thick]))
    ends = {
        "layer_1_front": (90 - one / 2, 90 - other / 2),
        "layer_1_left_return": (Fraction(0), 90 - one / 2),
        "layer_1_right_return": (90 - other / 2, Fraction(0)),
    }
    for key, (left, right) in ends.items():
        single = reckon(
            "mitered_length",
            known=f"{width if 'front' in key else depth} in",
            width="4",
            thickness=f"{thick} in",
            left_end="edge",
            left_tilt=f"{left}",
            right_end="edge",
            right_tilt=f"{right}",
        )["by_key"]
        for side in ("long_side", "short_side"):
            told, same = found[key][side], single[side]
            assert (told["mark"], told["exact"]) == (same["mark"], same["exact"])


def test_a_layer_starts_from_the_unrounded_face_beneath():
    """Six layers of 0.03 inch: rounded to sixteenths one after the other they would come to 3/8."""
    found = parts(reckon("wrap", **wrap(layers=stack(*["3/100"] * 6))))
    assert exact(found["layer_6_front"]["long_side"]) == Fraction("36.875") + 12 * Fraction("0.03")


def test_a_self_return_ends_all_layers_at_the_depth():
    """Worked by hand: 3/4 and 1/2 make 1 1/4, so the back turns at 15 1/4 - 1 1/4 = 14."""
    found = parts(reckon("wrap", **wrap(left_side="self_return", layers=stack("3/4", "1/2"))))
    assert sides(found["layer_1_left_return"]) == ("15 1/2″", "14″")
    assert sides(found["layer_1_left_self_return"]) == ("3/4″", "0″")
    assert sides(found["layer_2_left_self_return"]) == ("1 1/4″", "3/4″")
    assert found["layer_2_left_return"]["ends"]["left"]["angle"] == "45°, saw swung left"
    assert found["layer_2_left_self_return"]["ends"]["left"]["cut"] == "square"


def test_a_wrap_on_one_side_has_a_front_that_ends_square():
    said = reckon("wrap", **wrap(right_side="none", right_scribe="1/4"))
    found = parts(said)
    assert set(found) == {"layer_1_left_return", "layer_1_front"}
    assert sides(found["layer_1_front"]) == ("37 7/8″", "37 1/8″")
    assert found["layer_1_front"]["ends"]["right"] == {
        "cut": "square",
        "angle": "with 1/4″ to scribe",
        "at_the_saw": ["with 1/4″ to scribe"],
    }
    assert "right_setting" not in said["by_key"]


def test_a_board_on_the_wall_takes_its_thickness_and_a_scribe_gives_some_back():
    found = parts(reckon("wrap", **wrap(left_side="board", left_board="5/8", left_scribe="1/8")))
    assert sides(found["layer_1_left_return"])[1] == "14 3/4″"
    assert sides(found["layer_1_right_return"])[1] == "15 1/4″"


def test_inside_an_alcove_the_back_is_the_long_side_and_the_saw_turns_the_other_way():
    found = parts(reckon("wrap", **wrap(around="alcove")))
    back = found["layer_1_front"]
    assert back["name"] == "Back wall"
    assert sides(back) == ("36 7/8″", "35 3/8″")
    assert back["ends"]["left"]["angle"] == "45°, saw swung right"


def test_along_an_alcove_with_a_self_return_a_wall_takes_more_than_either_side():
    """The back wall's corner takes 3/4 off its face, the self-return adds 3/4: by hand."""
    said = reckon(
        "wrap",
        around="alcove",
        width="36",
        layers=[{"projection": "3/4"}],
        left_side="self_return",
        left_depth="15",
        right_side="none",
    )
    wall = parts(said)["layer_1_left_wall"]
    assert sides(wall) == ("14 1/4″", "14 1/4″")
    assert wall["length"]["text"] == "15″"
    items = {item["label"]: item["text"] for item in said["by_key"]["pieces"]["items"]}
    assert items["1. Left wall, tip to tip"] == "15″"
    assert "tip to tip 15″" in str(wall["drawing"])


def test_stock_is_the_long_sides_and_the_kerfs():
    """Square ends take the kerf, ends at 45 take it times the root of 2: plane trigonometry."""
    said = reckon("wrap", {"mark": ".001 in"}, **wrap(stick="48"))["by_key"]
    exact = 38.375 + 32 + 2 / 8 + 4 / 8 * 2**0.5
    assert said["stock"]["items"][0]["text"] == f"{ceil(exact * 1000) / 1000:.3f}″"
    assert said["sticks"]["text"] == "Layer 1: 2 of 48.000″"


@settings(max_examples=70)
@given(st.lists(st.integers(1, 10), min_size=1, max_size=5))
def test_sticks_are_as_few_as_any_way_to_lay_pieces_out(lengths):
    fewest = min(
        len(set(way))
        for way in product(range(len(lengths)), repeat=len(lengths))
        if all(
            sum(size for size, on in zip(lengths, way, strict=True) if on == stick) <= 10
            for stick in set(way)
        )
    )
    assert fewest_sticks([Fraction(each) for each in lengths], Fraction(10)) == fewest
