"""Crown around a case or along walls: its pieces meet at every corner as solids."""

import random
from dataclasses import replace
from fractions import Fraction

import pytest
from asking import ask, errors, reckon

from sawside.lengths.real import nearby
from tests.core.oracles import crown_runs
from tests.core.oracles.crown_runs import CHECKS

CASES = 120
HUNDREDTH = Fraction(1, 100)
CROWN = {"of": "run", "found": "legs", "drop": "2 5/8", "projection": "2 1/16"}


def around(*lengths, turn="outside", corner="90", **more):
    """Crown 2 1/16 out from the case, around a case 36 7/8 wide and 15 1/4 deep or other walls."""
    walls = [
        {"length": long, "turn": turn, "corner": corner}
        for long in lengths or ("15 1/4", "36 7/8", "15 1/4")
    ]
    return CROWN | {"walls": walls} | more


def parts(said):
    return {part["key"]: part for part in said["parts"]}


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.__name__)
def test_what_was_told_closes_at_every_corner(check):
    for seed in range(CASES):
        assert check(random.Random(f"{check.__name__} {seed}")) == []


@pytest.mark.parametrize("turn", ["inside", "outside"])
@pytest.mark.parametrize("measured_on", ["top", "bottom"])
@pytest.mark.parametrize("corner", ["88.7", "90.4", "91.3", "121.5"])
@pytest.mark.parametrize("mark", ["1/16", "1/32", "1 mm"])
def test_a_piece_alone_and_in_a_run_is_told_by_one_number_and_so_is_its_longer_edge(
    turn, measured_on, corner, mark
):
    """Between like corners a piece goes from tip to tip of its longer edge: one quantity."""
    settings = {"mark": mark}
    run = reckon("crown", settings, **around(turn=turn, corner=corner, measured_on=measured_on))
    ends = {
        f"{side}_{key}": each
        for side in ("left", "right")
        for key, each in (("end", turn), ("corner", corner))
    }
    legs = {key: each for key, each in CROWN.items() if key != "of"}
    one = reckon("crown", settings, **legs, **ends, measured="36 7/8", measured_on=measured_on)
    alone, longer = one["by_key"], "bottom" if turn == "inside" else "top"
    assert alone["tips"]["text"] == alone[longer]["text"] == one["parts"][0]["length"]["text"]
    part = parts(run)["wall_2"]
    number = [each["name"] for each in run["parts"]].index(part["name"])
    in_run = [run["by_key"][key]["items"][number]["text"] for key in ("pieces", f"{longer}s")]
    assert in_run == [alone["tips"]["text"]] * 2
    assert part["length"]["text"] == part["long_side"]["text"] == alone["tips"]["text"]


@pytest.mark.parametrize("off", ["edges", "turned", "tilted"])
def test_a_run_that_is_a_hair_off_is_seen(off, monkeypatch):
    """The judge is not blind: one part in ten thousand, or a hundredth of a degree, shows."""
    told, pieces = crown_runs.exactly, crown_runs.pieces

    def longer(*question, **values):
        found = told(*question, **values)
        return found | {"tops": [(name, long * 1.0001) for name, long in found["tops"]]}

    def turned(*question, **values):
        return [
            replace(
                part,
                **{
                    side: replace(end, **{off: nearby(getattr(end, off)) + HUNDREDTH})
                    for side, end in (("left", part.left), ("right", part.right))
                    if end.how == "compound"
                },
            )
            for part in pieces(*question, **values)
        ]

    if off == "edges":
        monkeypatch.setattr(crown_runs, "exactly", longer)
    else:
        monkeypatch.setattr(crown_runs, "pieces", turned)
    for seed in range(10):
        assert crown_runs.crown_run(random.Random(seed)) != []


def test_around_a_case_the_top_edge_grows_by_the_projection_at_each_corner():
    """Worked by hand: 36 7/8 + 2 x 2 1/16 = 41, and 15 1/4 + 2 1/16 = 17 5/16."""
    said = reckon("crown", **around())
    assert [part["name"] for part in said["parts"]] == ["Front", "Left return", "Right return"]
    assert [item["text"] for item in said["by_key"]["tops"]["items"]] == [
        "41″",
        "17 5/16″",
        "17 5/16″",
    ]
    miter, bevel = (said["by_key"][each]["text"] for each in ("miter", "tilt"))
    assert said["verdict"] == f"Miter {miter}, bevel {bevel}; 3 pieces, longest 41″"
    assert said["answers"][0]["text"] == "41″"
    assert said["by_key"]["held"]["text"] == "45°"


def test_each_piece_of_a_run_is_cut_as_the_same_piece_by_itself():
    said = parts(reckon("crown", **around(corner="91.5")))
    ends = {"left_end": "outside", "left_corner": "91.5", "right_end": "outside"}
    alone = CROWN | ends | {"of": "one", "right_corner": "91.5", "measured": "36 7/8"}
    (one,) = reckon("crown", **alone)["parts"]
    front = said["wall_2"]
    assert {**front, "key": "piece", "name": "Crown"} == one


def test_a_mitered_return_is_a_piece_as_long_as_the_projection_and_brings_its_caution():
    said = reckon("crown", **around(left_stop="return"))
    cap = parts(said)["left_self_return"]
    assert (cap["long_side"]["text"], cap["short_side"]["text"]) == ("2 1/16″", "0″")
    assert cap["ends"]["left"]["cut"] == "square"
    assert any("mitered return is too small" in each for each in said["cautions"])
    assert parts(said)["wall_1"]["short_side"]["text"] == "13 3/16″"


def test_all_around_a_room_it_shrinks_at_every_corner():
    """Worked by hand: 140 - 2 x 2 1/16 = 135 7/8, 110 - 2 x 2 1/16 = 105 7/8."""
    walls = ("140", "110", "140", "110")
    said = reckon("crown", **around(*walls, turn="inside", around="closed"))
    assert [item["text"] for item in said["by_key"]["tops"]["items"]] == [
        "135 7/8″",
        "135 7/8″",
        "105 7/8″",
        "105 7/8″",
    ]


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        (around("15", "4", "15", turn="inside"), "walls", "impossible"),
        (around("1", "30", left_stop="return"), "walls", "impossible"),
        (around("30", "30", around="closed"), "walls", "impossible"),
        (around(walls=[]), "walls", "missing"),
        (around(found="angle", spring="38"), "width", "missing"),
        (around(ceiling="sloped"), "ceiling", "impossible"),
    ],
)
def test_what_can_not_be_names_its_field_and_a_remedy(values, field, kind):
    error = errors(ask("crown", **values))[field]
    assert error["kind"] == kind
    assert error["remedy"].endswith(".")


def test_the_plan_shows_each_piece_by_its_number():
    said = reckon("crown", **around(left_stop="return"))
    texts = [shape.get("text") for shape in said["drawing"]["shapes"]]
    assert {"1", "2", "3", "top edge 41″", "36 7/8″"} <= set(texts)
