"""A molding around a case closes at its corners, layer upon layer, whatever the corners are."""

from fractions import Fraction
from itertools import product
from math import ceil

import pytest
from asking import exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.geometry.sticks import fewest_sticks
from tests.core.reckoners.miters.moldings.runs import answered, case, parts, sides, stack

widths = st.fractions(min_value=20, max_value=90, max_denominator=32)
depths = st.fractions(min_value=10, max_value=30, max_denominator=32)
corners = st.integers(min_value=60 * 50, max_value=120 * 50).map(lambda steps: Fraction(steps, 50))
layers = st.lists(
    st.fractions(min_value="1/8", max_value=1, max_denominator=32), min_size=1, max_size=3
)
OTHER = {"left": "right", "right": "left"}
FRONT, LEFT, RIGHT = (f"layer_1_wall_{wall}" for wall in (2, 1, 3))


def test_a_square_corner_makes_a_piece_longer_by_the_projection():
    """Common practice, no source: at a 45 a piece grows by the stock's thickness at each end."""
    found = parts(answered(case()))
    assert sides(found[FRONT]) == ("38 3/8″", "36 7/8″")
    assert sides(found[LEFT]) == ("16″", "15 1/4″")
    assert sides(found[RIGHT]) == ("16″", "15 1/4″")


def test_a_second_layer_lies_on_the_first():
    """Worked by hand: 36 7/8 + 2 x 3/4 = 38 3/8, and 38 3/8 + 2 x 1/2 = 39 3/8."""
    found = parts(answered(case(layers=("3/4", "1/2"))))
    assert sides(found["layer_2_wall_2"]) == ("39 3/8″", "38 3/8″")
    assert sides(found["layer_2_wall_1"]) == ("16 1/2″", "16″")


@settings(max_examples=40)
@given(st.lists(depths, min_size=2, max_size=5), st.data(), layers)
def test_the_mirror_image_swaps_left_and_right(lengths, data, projections):
    turned = [data.draw(corners) for _ in lengths[1:]]
    kinds = [data.draw(st.sampled_from(["outside", "inside"])) for _ in lengths[1:]]
    said, image = (
        parts(answered(_mixed(*each, projections)))
        for each in ((lengths, turned, kinds), (lengths[::-1], turned[::-1], kinds[::-1]))
    )
    for key, part in said.items():
        layer, wall = int(key.split("_")[1]), int(key.split("_")[-1])
        mirrored = image[f"layer_{layer}_wall_{len(lengths) + 1 - wall}"]
        assert part["length"] == mirrored["length"]
        assert sides(part) == sides(mirrored)
        for side, opposite in OTHER.items():
            end, imaged = part["ends"][side], mirrored["ends"][opposite]
            words = imaged["angle"].split(" ")
            assert end["cut"] == imaged["cut"]
            assert end["angle"] == " ".join(OTHER.get(word, word) for word in words)


def _mixed(lengths, turned, kinds, projections):
    walls = [
        {"length": f"{long} in", "turn": kind, "corner": f"{corner}", "joint": "miter"}
        for long, kind, corner in zip(
            lengths, [*kinds, "outside"], [*turned, Fraction(90)], strict=True
        )
    ]
    return {"walls": walls, "layers": stack(*projections)}


@settings(max_examples=40)
@given(widths, depths, corners, corners, st.fractions("1/8", 2, max_denominator=32))
def test_one_layer_is_three_mitered_lengths(width, depth, one, other, thick):
    """Inside and allowances make the outside, as the question of the mitered length has it."""
    found = parts(answered(case(depth, width, depth, corners=(one, other), layers=[thick])))
    ends = {
        FRONT: (90 - one / 2, 90 - other / 2),
        LEFT: (Fraction(0), 90 - one / 2),
        RIGHT: (90 - other / 2, Fraction(0)),
    }
    for key, (left, right) in ends.items():
        single = reckon(
            "mitered_length",
            known=f"{width if key == FRONT else depth} in",
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
    found = parts(answered(case(layers=["3/100"] * 6)))
    assert exact(found["layer_6_wall_2"]["long_side"]) == Fraction("36.875") + 12 * Fraction("0.03")


def test_a_self_return_ends_all_layers_at_the_depth():
    """Worked by hand: 3/4 and 1/2 make 1 1/4, so the back turns at 15 1/4 - 1 1/4 = 14."""
    found = parts(answered(case(left_end="return", layers=("3/4", "1/2"))))
    assert sides(found[LEFT]) == ("15 1/2″", "14″")
    assert sides(found["layer_1_left_self_return"]) == ("3/4″", "0″")
    assert sides(found["layer_2_left_self_return"]) == ("1 1/4″", "3/4″")
    assert found["layer_2_wall_1"]["ends"]["left"]["angle"] == "45°, saw swung left"
    assert found["layer_2_left_self_return"]["ends"]["left"]["cut"] == "square"


def test_a_run_around_one_corner_has_a_front_that_ends_square():
    said = answered(case("15 1/4", "36 7/8", right_scribe="1/4"))
    found = parts(said)
    assert set(found) == {LEFT, FRONT}
    assert sides(found[FRONT]) == ("37 7/8″", "37 1/8″")
    assert found[FRONT]["ends"]["right"] == {
        "cut": "square",
        "angle": "with 1/4″ to scribe",
        "at_the_saw": ["with 1/4″ to scribe"],
    }
    assert said["by_key"]["setting"]["exact"] == "45"


def test_casing_takes_its_thickness_and_a_scribe_gives_some_back():
    left = {"left_end": "board", "left_board": "5/8", "left_scribe": "1/8"}
    found = parts(answered(case(**left, right_end="board")))
    assert sides(found[LEFT])[1] == "14 3/4″"
    assert sides(found[RIGHT])[1] == "15 1/4″"


def test_inside_an_alcove_the_back_is_the_long_side_and_the_saw_turns_the_other_way():
    back = parts(answered(case(turn="inside")))[FRONT]
    assert back["name"] == "Back wall"
    assert sides(back) == ("36 7/8″", "35 3/8″")
    assert back["ends"]["left"]["angle"] == "45°, saw swung right"


def test_along_an_alcove_with_a_self_return_a_wall_takes_more_than_either_side():
    """The back wall's corner takes 3/4 off its face, the self-return adds 3/4: by hand."""
    said = answered(case("15", "36", turn="inside", left_end="return"))
    wall = parts(said)[LEFT]
    assert sides(wall) == ("14 1/4″", "14 1/4″")
    assert wall["length"]["text"] == "15″"
    items = {item["label"]: item["text"] for item in said["by_key"]["pieces"]["items"]}
    assert items["1. Wall 1, tip to tip"] == "15″"
    assert "tip to tip 15″" in str(wall["drawing"])


def test_a_piece_between_an_inside_and_an_outside_corner_is_a_parallelogram():
    """A side of a chimney breast 4 deep in 3/4 molding, by hand: what one corner takes off the
    face the other adds, so it is 4 long at both, and its tips are 4 3/4 apart."""
    walls = [
        {"length": "30", "turn": "inside", "joint": "miter"},
        {"length": "4", "turn": "outside"},
        {"length": "60"},
    ]
    side = parts(answered({"walls": walls, "layers": stack("3/4")}))[FRONT]
    assert sides(side) == ("4″", "4″")
    assert side["length"]["text"] == "4 3/4″"
    assert [side["ends"][each]["angle"] for each in OTHER] == ["45°, saw swung right"] * 2


def test_a_jog_less_deep_than_the_molding_is_thick_is_still_a_piece():
    """By hand: 3/8 deep in 3/4 molding, it is 3/8 at back and face, and 1 1/8 from tip to tip."""
    walls = [
        {"length": "30", "turn": "inside", "joint": "miter"},
        {"length": "3/8", "turn": "outside"},
        {"length": "60"},
    ]
    side = parts(answered({"walls": walls, "layers": stack("3/4")}))[FRONT]
    assert sides(side) == ("3/8″", "3/8″")
    assert side["length"]["text"] == "1 1/8″"


def test_around_a_chimney_breast_returns_are_coped_over_the_back_walls_then_its_front_is_cut():
    """Shop practice, no source: a piece with an outside corner is coped first, then marked."""
    walls = [
        {"length": "40", "turn": "inside"},
        {"length": "16", "turn": "outside"},
        {"length": "60", "turn": "outside"},
        {"length": "16", "turn": "inside"},
        {"length": "44"},
    ]
    said = answered({"walls": walls, "layers": stack("3/4")})
    assert [part["key"].split("_")[-1] for part in said["parts"]] == ["1", "2", "5", "4", "3"]
    ends = {
        part["key"][-1]: [part["ends"][side]["cut"] for side in OTHER] for part in said["parts"]
    }
    assert ends == {
        "1": ["square", "square"],
        "2": ["coped", "bevel"],
        "3": ["bevel", "bevel"],
        "4": ["bevel", "coped"],
        "5": ["square", "square"],
    }
    assert said["answers"][0]["text"] == "40″"
    assert said["verdict"] == "First of 5 pieces (longest 61 1/2″)"


def test_around_an_island_all_four_pieces_are_mitered_at_both_ends():
    """Worked by hand: 48 + 2 x 3/4 = 49 1/2, 30 + 2 x 3/4 = 31 1/2."""
    said = answered(case("48", "30", "48", "30", corners=["90"] * 4, around="closed"))
    assert [sides(part) for part in said["parts"]] == [
        ("49 1/2″", "48″"),
        ("49 1/2″", "48″"),
        ("31 1/2″", "30″"),
        ("31 1/2″", "30″"),
    ]
    assert said["verdict"] == "4 pieces, longest 49 1/2″"
    assert {end["cut"] for part in said["parts"] for end in part["ends"].values()} == {"bevel"}


def test_in_a_bay_of_135_the_saw_is_set_to_22_and_a_half():
    """Common practice, no source: a bay of 135 takes miters of 22.5; 3/4 x tan 22.5 = 0.3107."""
    said = answered(case("20", "48", "20", turn="inside", corners=("135", "135")))
    assert said["by_key"]["setting"]["exact"] == "45/2"
    back = parts(said)[FRONT]
    assert float(Fraction(back["short_side"]["mark"])) == pytest.approx(48 - 2 * 0.3107, abs=1 / 32)


def test_a_scarfed_end_laps_by_the_thickness_at_45_half_on_either_side():
    """By hand: 3/4 thick at 45 laps 3/4, 3/8 beyond the middle of the joint."""
    values = {"walls": [{"length": "90"}], "layers": stack("3/4"), "right_end": "scarf"}
    (piece,) = answered(values)["parts"]
    assert sides(piece) == ("90 3/8″", "89 5/8″")
    assert piece["ends"]["right"]["cut"] == "scarf"
    assert piece["ends"]["right"]["angle"] == "45°, saw swung left"


def test_stock_is_the_long_sides_and_the_kerfs():
    """Square ends take the kerf, ends at 45 take it times the root of 2: plane trigonometry."""
    said = answered(case(stick="48"), {"mark": ".001 in"})["by_key"]
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
