"""What is told of a run: its pieces in their order, what can't be, cautions and drawings."""

import math
from fractions import Fraction

import pytest
from asking import as_drawn, errors
from projects import acts, begun, view

from sawside.reckoners import RECKONERS
from tests.core.reckoners.miters.moldings.runs import answered, asked, case, parts, stack

OFF = {"corners": ("90.5", "89"), "layers": ("3/4", "1/2")}
CHIMNEY = (
    ("40", "inside", "89.5"),
    ("16", "outside", "90"),
    ("60", "outside", "90"),
    ("16", "inside", "91"),
    ("44", "outside", "90"),
)


def chimney(**more):
    """Along a wall with a chimney breast, coped in its corners."""
    walls = [dict(zip(("length", "turn", "corner"), each, strict=True)) for each in CHIMNEY]
    return {"walls": walls, "layers": stack("3/4")} | more


def test_pieces_are_named_for_the_person_at_the_saw_in_the_order_of_cutting():
    said = answered(case(**OFF))
    names = [part["name"] for part in said["parts"]]
    assert names[0] == "Layer 1: front"
    assert set(names[:3]) == {"Layer 1: front", "Layer 1: left return", "Layer 1: right return"}
    assert names[3] == "Layer 2: front"
    listed = said["by_key"]["pieces"]["items"]
    assert [item["label"] for item in listed] == [f"{n}. {name}" for n, name in enumerate(names, 1)]
    assert said["answers"][0]["exact"] == listed[0]["exact"]
    assert said["answers"][0]["text"] == said["parts"][0]["long_side"]["text"] == "38 3/8″"
    assert said["by_key"]["first_setting"]["exact"] == "179/4"
    assert "first" in said["by_key"]["order"]["text"]


def test_what_can_be_trimmed_in_place_comes_after_what_can_not():
    said = answered(case("90", "36 7/8", left_end="return"))
    assert [part["name"] for part in said["parts"]] == ["Wall 1", "Wall 2", "Left mitered return"]


def test_six_pieces_come_into_the_project_with_drawings():
    line = {"name": "Base", "reckoner": "molding_run", "values": case(**OFF)}
    pieces = view(acts(begun(), ("keep_line", line)))["pieces"]
    assert {piece["name"] for piece in pieces} == {
        f"Base: Layer {layer}: {run}"
        for layer in (1, 2)
        for run in ("left return", "front", "right return")
    }
    for piece in pieces:
        assert "at the saw" in piece["drawing"]["words"]


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        (case("0", "30"), "walls", "range"),
        (case() | {"walls": []}, "walls", "missing"),
        (case(corners=("180", "90")), "walls", "range"),
        (case(corners=("90", "0")), "walls", "range"),
        (case(corners=("270", "90"), turn="inside"), "walls", "conflict"),
        (case("3/4", "30", left_end="return"), "walls", "impossible"),
        (case("2", "30", left_end="board", left_board="2"), "walls", "impossible"),
        (case("15", "1", "15", turn="inside"), "walls", "impossible"),
        (case("30", "30", around="closed"), "walls", "impossible"),
        (case("30", "30", "30", "30", around="closed"), "walls", "impossible"),
        (case(stick="38"), "stick", "impossible"),
        (case(first="4"), "first", "impossible"),
        (case(layers=()), "layers", "missing"),
        (case(layers=("0",)), "layers", "range"),
        (case(layers=["1/8"] * 7), "layers", "range"),
        (case(left_end="scarf", left_scarf="80"), "left_scarf", "range"),
    ],
)
def test_bad_input_names_its_field_and_a_remedy(values, field, kind):
    error = errors(asked(values))[field]
    assert error["kind"] == kind
    assert error["remedy"].endswith(".")


@pytest.mark.parametrize("corner", ["157.5", "165", "179"])
def test_the_corners_of_a_bow_window_are_mitered(corner):
    """Plane trigonometry: each end adds 3/4 × tan((180 − corner) ÷ 2)."""
    said = answered(case("20", "20", "20", corners=(corner, corner), turn="inside"))
    turned = (180 - float(corner)) / 2
    assert float(said["by_key"]["setting"]["text"].strip("≈ °")) == pytest.approx(turned, abs=0.05)
    middle = parts(said)["layer_1_wall_2"]
    short = 20 - 2 * 0.75 * math.tan(math.radians(turned))
    assert float(Fraction(middle["short_side"]["mark"])) == pytest.approx(short, abs=1 / 31)


def test_a_corner_too_flat_to_cope_is_to_be_mitered():
    walls = [{"length": "20", "turn": "inside", "corner": "165"}, {"length": "20"}]
    error = errors(asked({"walls": walls, "layers": stack("3/4")}))["walls"]
    assert (error["row"], error["part"]) == (0, "joint")
    assert error["remedy"] == "Choose Miter at that corner."


def test_a_wall_longer_than_a_stick_names_the_question_that_finds_its_joints():
    remedy = errors(asked(case(stick="38")))["stick"]["remedy"]
    assert f"“{RECKONERS['scarf'].title}”" in remedy


def test_the_layer_that_leaves_nothing_is_named():
    error = errors(asked(case("15", "4", "15", turn="inside", layers=("3/4", "3/2"))))["layers"]
    assert (error["row"], error["part"]) == (1, "projection")
    assert "2 1/2″" in error["message"]


def test_the_wall_that_is_too_short_is_named():
    error = errors(asked(case("30", "1", "20", turn="inside")))["walls"]
    assert (error["row"], error["part"]) == (1, "length")
    assert error["message"].startswith("Back wall: ")


def test_a_loop_that_misses_its_start_is_told_and_by_how_much():
    """By hand: a side of 47 1/2 across from one of 48 leaves 1/2 inch."""
    around = {"corners": ["90"] * 4, "around": "closed"}
    true = answered(case("48", "30", "48", "30", **around))["cautions"]
    off = answered(case("48", "30", "47 1/2", "30", **around))["cautions"]
    (more,) = set(off) - set(true)
    assert "misses the first by 1/2″" in more


def test_a_cope_past_square_brings_how_far_to_lean_the_saw_and_what_most_people_do():
    square, bay = (
        answered(
            {
                "walls": [{"length": "30", "turn": "inside", "corner": each}, {"length": "40"}],
                "layers": stack("3/4"),
            }
        )
        for each in ("90", "135")
    )
    assert "In a corner over 90°" in bay["by_key"]["how"]["text"]
    assert "In a corner over 90°" not in square["by_key"]["how"]["text"]
    assert any("as in a bay, most people miter" in each for each in bay["cautions"])


def test_the_corners_are_told_with_what_is_set_and_how_each_is_joined():
    said = answered(chimney())["by_key"]
    assert said["corners"]["text"] == (
        "Corner 1, inside 89.5°: cope after a 45.25° miter. Corner 2, outside 90°: miter 45°. "
        "Corner 3, outside 90°: miter 45°. Corner 4, inside 91°: cope after a 44.5° miter."
    )
    assert said["ends"]["text"] == (
        "Wall 1: butts into the corner at the right. Wall 2: is coped at the left. Wall 5: butts "
        "into the corner at the left. Wall 4: is coped at the right."
    )


def test_the_wall_that_a_corner_off_square_leaves_is_told():
    """1 1/4 x cot 80 degrees = 0.2204 inch, from a table of cotangents: 0.17633."""
    values = case(corners=("100", "90"), layers=("3/4", "1/2"))
    cautions = " ".join(answered(values)["cautions"])
    assert "≈ 7/32″ off it at the outside face" in cautions
    assert "right return is" not in cautions
    scribed = answered(values | {"left_scribe": "1/4"})["cautions"]
    assert "off it at" not in " ".join(scribed)


def test_short_pieces_and_self_returns_bring_their_cautions():
    plain = answered(case())["cautions"]
    short = answered(case("7", "36 7/8", "7"))["cautions"]
    closed = answered(case(left_end="return"))["cautions"]
    assert any(
        "Left return, Right return" in each or "Right return, Left" in each for each in short
    )
    assert len(short) == len(closed) == len(plain) + 1
    assert all(any("maker" in each for each in said) for said in (plain, short, closed))


RUNS = {
    "case": case,
    "alcove": lambda **more: case(turn="inside", **more),
    "one wall": lambda **more: case("60", **more),
    "chimney": lambda **more: chimney() | {"layers": case(**more)["layers"]},
    "island": lambda **more: case(
        "48", "30", "48", "30", around="closed", **(more | {"corners": ["90"] * 4})
    ),
}


@pytest.mark.parametrize("where", RUNS)
@pytest.mark.parametrize("end", ["wall", "return", "scarf"])
@pytest.mark.parametrize("count", [1, 2, 6])
def test_every_drawing_stays_in_its_box_and_tells_both_sides(where, end, count):
    values = RUNS[where](corners=("75", "120"), layers=["3/4"] * count)
    said = answered(values | {"left_end": end})
    for drawing in (said["drawing"], *(part["drawing"] for part in said["parts"])):
        left, top, right, bottom = drawing["box"]
        assert 0.6 <= (right - left) / (bottom - top) <= 6
        for shape in drawing["shapes"]:
            for x, y in shape.get("points", []):
                assert left <= x <= right
                assert top <= y <= bottom
    for part in said["parts"]:
        texts = " ".join(shape.get("text", "") for shape in part["drawing"]["shapes"])
        assert part["long_side"]["text"] in texts
        for side in ("left", "right"):
            assert part["ends"][side]["angle"].removesuffix("0°").split(", ")[-1] in texts


def texts(said):
    return [shape.get("text") for shape in said["drawing"]["shapes"]]


def test_the_plan_tells_the_measured_corners_each_wall_and_the_outermost_front():
    said = answered(case(**OFF))
    front = parts(said)["layer_2_wall_2"]["long_side"]
    for text in ("90.5°", "89°", "36 7/8″", "15 1/4″", f"outside face {as_drawn(front)}"):
        assert text in texts(said)
    assert {str(number) for number in range(1, 7)} <= set(texts(said))


def test_dimensions_of_the_plan_do_not_cross():
    """Seen as the page draws them: lines beside the walls, and none through another one."""
    for where in ("case", "alcove", "chimney", "island"):
        drawn = [
            _ends(shape)
            for shape in answered(RUNS[where]())["drawing"]["shapes"]
            if shape["kind"] == "dimension"
        ]
        assert len(drawn) >= 3
        for at, one in enumerate(drawn):
            assert not any(_cross(one, other) for other in drawn[:at]), where


def _ends(shape):
    """The dimension line itself: to the left of from and to, with y down."""
    (x, y), (far, low) = shape["from"], shape["to"]
    long = ((far - x) ** 2 + (low - y) ** 2) ** 0.5
    across, down = (low - y) / long * shape["offset"], -(far - x) / long * shape["offset"]
    return (x + across, y + down), (far + across, low + down)


def _cross(one, other):
    return _parted(*one, *other) and _parted(*other, *one)


def _parted(start, stop, one, two):
    """Whether two places lie on either side of a line."""
    sides = [
        (stop[0] - start[0]) * (y - start[1]) - (stop[1] - start[1]) * (x - start[0])
        for x, y in (one, two)
    ]
    return sides[0] * sides[1] < 0
