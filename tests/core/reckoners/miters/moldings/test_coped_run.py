"""At every inside corner one piece runs square and one is coped over it, and both fit the walls."""

from fractions import Fraction

import numpy as np
import pytest
from asking import errors
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.core.reckoners.miters.moldings.runs import answered, asked, parts, stack

lengths = st.lists(
    st.fractions(min_value=20, max_value=160, max_denominator=16), min_size=2, max_size=5
)
corners = st.integers(70 * 4, 110 * 4).map(lambda quarters: Fraction(quarters, 4))
projections = st.fractions(min_value="1/4", max_value=2, max_denominator=16)


def rows(walls, turns=()):
    """Walls that meet in inside corners, all coped."""
    turns = [*turns, *[90] * (len(walls) - len(turns))]
    return [
        {"length": f"{wall} in", "turn": "inside", "corner": f"{turn}"}
        for wall, turn in zip(walls, turns, strict=True)
    ]


def coped(walls, projection="1/2", around="open", **more):
    return {"walls": walls, "layers": stack(projection), "around": around} | more


def alcove(**more):
    """Three walls of an alcove, 5/8 molding."""
    return coped(rows(["14 7/8", "37 1/2", "15"]), "5/8") | more


def wall(number):
    return f"layer_1_wall_{number}"


def kinds(part):
    return [part["ends"][side]["cut"] for side in ("left", "right")]


def test_the_back_of_an_alcove_runs_square_and_its_sides_are_coped():
    """Common practice, no source: the joints then face away from whoever stands before it."""
    said = answered(alcove())
    found = parts(said)
    assert kinds(found[wall(2)]) == ["square", "square"]
    assert kinds(found[wall(1)]) == ["square", "coped"]
    assert kinds(found[wall(3)]) == ["coped", "square"]
    assert [part["length"]["text"] for part in said["parts"]] == ["37 1/2″", "15″", "14 7/8″"]
    assert found[wall(1)]["short_side"]["text"] == "14 1/4″"
    assert found[wall(1)]["ends"]["right"]["angle"] == "bevel first, 45°, saw swung left"


def test_around_a_room_each_piece_is_coped_over_the_last_and_the_end_over_both():
    said = answered(coped(rows([120, 96, 120, 96]), around="closed", first="2"))
    assert [part["key"] for part in said["parts"]] == [wall(each) for each in (2, 3, 4, 1)]
    assert [kinds(part) for part in said["parts"]] == [
        ["square", "square"],
        ["coped", "square"],
        ["coped", "square"],
        ["coped", "coped"],
    ]


def close(value):
    """A told length to nine decimals: its mark and what was dropped."""
    dropped = value["dropped"].strip("≈…")
    return float(Fraction(value["mark"])) + float(Fraction(dropped))


@settings(max_examples=60)
@given(lengths, st.lists(corners, min_size=5, max_size=5), projections, st.data())
def test_pieces_fit_between_the_walls_as_far_as_they_go(walls, turns, projection, data):
    """Independent oracle: lines in the plane, for the wall, its neighbors, and their faces."""
    first = data.draw(st.integers(1, len(walls)))
    found = parts(
        answered(coped(rows(walls, turns[: len(walls)]), f"{projection}", first=f"{first}"))
    )
    for number, long in enumerate(walls):
        part = found[wall(number + 1)]
        taken_back = taken_face = 0.0
        for side, at in (("left", number - 1), ("right", number)):
            if not 0 <= at < len(walls) - 1:
                continue
            back, face = end_by_lines(float(turns[at]), float(projection))
            if part["ends"][side]["cut"] == "coped":
                taken_face += face
            else:
                taken_back += back
                taken_face += back
        assert close(part["long_side"]) == pytest.approx(float(long) - taken_back, abs=1e-6)
        assert close(part["short_side"]) == pytest.approx(float(long) - taken_face, abs=1e-6)


def end_by_lines(corner, projection):
    """(what a square end must leave free, where the faces cross), from the corner along a wall.

    The wall runs along x; the other leaves the corner at an angle; both faces lie `projection` in.
    """
    turn = np.radians(corner)
    other = np.array([np.cos(turn), np.sin(turn)])
    into_the_room = np.array([np.sin(turn), -np.cos(turn)])
    at_the_face = (
        np.linalg.solve(np.column_stack([other, [-1.0, 0.0]]), np.array([0.0, projection]))[0]
        * other
    )
    crossing = np.linalg.solve(
        np.array([[0.0, 1.0], into_the_room]), np.array([projection, projection])
    )
    return max(at_the_face[0], 0.0), crossing[0]


@settings(max_examples=60)
@given(st.integers(2, 8), st.booleans(), st.data())
def test_each_corner_has_one_square_and_one_coped_end_and_the_square_one_is_fitted_first(
    count, closed, data
):
    count = max(count, 3) if closed else count
    first = data.draw(st.integers(1, count))
    turn = Fraction(180 * (count - 2), count) if closed else Fraction(90)
    around = "closed" if closed else "open"
    said = answered(coped(rows([90] * count, [turn] * count), around=around, first=f"{first}"))
    found, order = parts(said), [part["key"] for part in said["parts"]]
    assert order[0] == wall(first)
    for left in range(1, count + 1 if closed else count):
        right = left % count + 1
        ends = {
            wall(left): found[wall(left)]["ends"]["right"]["cut"],
            wall(right): found[wall(right)]["ends"]["left"]["cut"],
        }
        by_order = sorted(ends, key=order.index)
        assert [ends[key] for key in by_order] == ["square", "coped"]


@settings(max_examples=60)
@given(lengths, corners)
def test_the_mirror_image_swaps_left_and_right(walls, turn):
    count = len(walls)
    turns = [turn] * count
    one = parts(answered(coped(rows(walls, turns), first="1")))
    other = parts(answered(coped(rows(walls[::-1], turns), first=f"{count}")))
    for number in range(1, count + 1):
        mine, image = one[wall(number)], other[wall(count + 1 - number)]
        assert kinds(mine) == kinds(image)[::-1]
        assert mine["length"] == image["length"]
        assert mine["short_side"] == image["short_side"]


def test_what_springs_in_is_added_between_two_corners_only():
    found = parts(answered(alcove(extra="1/16")))
    assert found[wall(2)]["length"]["text"] == "37 9/16″"
    assert found[wall(1)]["length"]["text"] == "14 7/8″"


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"walls": rows([30, 30]), "around": "closed"}, "walls", "impossible"),
        ({"walls": rows([90] * 5), "around": "closed"}, "walls", "impossible"),
        ({"walls": []}, "walls", "missing"),
        ({"walls": rows([30, 30], [180])}, "walls", "range"),
        ({"walls": rows([30, 30], [20])}, "walls", "range"),
        ({"first": "4"}, "first", "impossible"),
        ({"layers": stack("0")}, "layers", "range"),
        ({"walls": rows([30, "1/4"]), "first": "1"}, "walls", "impossible"),
    ],
)
def test_bad_input_names_its_field_and_a_remedy(values, field, kind):
    error = errors(asked(alcove(**values)))[field]
    assert error["kind"] == kind
    assert error["remedy"].endswith(".")


def test_the_wall_that_is_too_short_is_named():
    error = errors(asked(alcove(walls=rows([30, "1/4"]), first="1")))["walls"]
    assert (error["row"], error["part"]) == (1, "length")
    assert error["message"].startswith("Wall 2: ")


@pytest.mark.parametrize("around", ["open", "closed"])
@pytest.mark.parametrize("count", [3, 4, 8])
def test_the_plan_names_every_wall_and_stays_in_its_box(around, count):
    turn = Fraction(180 * (count - 2), count) if around == "closed" else 110
    said = answered(coped(rows([60] * count, [turn] * count), around=around))
    for drawing in (said["drawing"], *(part["drawing"] for part in said["parts"])):
        left, top, right, bottom = drawing["box"]
        for shape in drawing["shapes"]:
            for x, y in shape.get("points", []):
                assert left <= x <= right
                assert top <= y <= bottom
    texts = [shape.get("text") for shape in said["drawing"]["shapes"]]
    assert {f"{number}" for number in range(1, count + 1)} <= set(texts)


@pytest.mark.parametrize("joint", ["cope", "miter"])
def test_a_wall_that_its_neighbors_fill_is_refused_coped_or_mitered(joint):
    """By hand: two moldings 5/8 off their walls meet before a wall of 1 1/4 shows."""
    walls = [row | {"joint": joint} for row in rows(["15", "1 1/4", "15"])]
    error = errors(asked(alcove(walls=walls)))["walls"]
    assert error["message"].startswith("Back wall: none of its molding would show")
    walls[1]["length"] = "1 5/16"
    assert answered(alcove(walls=walls))["ok"]


def test_grain_is_carried_around_a_case_and_not_around_the_inside_of_a_room():
    """Common practice, no source: in a coped corner no grain goes around."""
    assert "grain" not in answered(alcove())["by_key"]["order"]["text"]
    case = answered(coped([{"length": "15"}, {"length": "37"}]))
    assert "grain" in case["by_key"]["order"]["text"]
