"""Gains and bores: every closed hinge laid together again, every overlay measured again."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon, texts
from hypothesis import given, settings
from hypothesis import strategies as st
from oracles.hinged_door import gap_when_closed, overlay_of_bore

KEY = "hinge_fit"
BUTT = {"kind": "butt", "leaf": "5/64", "between": "1/16", "gap": "1/16", "wood": "2"}
CUP = {"kind": "cup", "overlay": "17 mm", "constant": "13 mm", "plate": "0 mm", "wood": "3/4"}
SIZES = st.integers(1, 32).map(lambda number: Fraction(number, 128))


def test_two_leaves_and_what_is_between_fill_the_gap_and_both_gains():
    """2 × 5/64 + 1/16 = 7/32; less a gap of 1/16 are 5/32, a half of that 5/64 each."""
    said = reckon(KEY, **BUTT)
    assert said["by_key"]["gain"]["text"] == "5/64″"
    assert said["verdict"] == "Gain in both (gap 1/16″)"
    door = reckon(KEY, **BUTT, gains="door")
    assert door["by_key"]["gain"]["text"] == "5/32″"
    assert door["working"][1]["text"] == "Gain: 7/32 − 1/16 = 5/32"
    bare = reckon(KEY, **BUTT, gains="none")["by_key"]
    assert bare["gap"]["text"] == "7/32″"
    assert "gain" not in bare


@settings(max_examples=150)
@given(SIZES, SIZES, SIZES, st.sampled_from(["both", "door", "none"]))
def test_a_hinge_that_is_laid_together_leaves_the_gap(leaf, between, gap, gains):
    values = {"leaf": f"{leaf} in", "between": f"{between} in", "gap": f"{gap} in", "wood": "1/2"}
    said = ask(KEY, kind="butt", gains=gains, **values)
    if not said["ok"]:
        assert gains != "none"
        (field,) = errors(said)
        thick = gap_when_closed(leaf, between, 0, 0)
        assert gap >= thick if field == "gap" else thick - gap >= Fraction(1, 2)
        return
    told = {each["key"]: exact(each) for each in said["answers"]}
    depth = told.get("gain", Fraction(0))
    in_frame = depth if gains == "both" else 0
    assert gap_when_closed(leaf, between, in_frame, depth) == told["gap"]
    assert told["gap"] == gap or gains == "none"


def test_a_cup_is_bored_where_the_makers_figures_put_it():
    """17 = tab + 13 − 0: tab 4, center 4 + 17.5 = 21.5 (the form of the trade's catalogs; common
    practice, no source)."""
    told = texts(reckon(KEY, {"unit": "mm"}, **CUP | {"wood": "18"}))
    assert (told["tab"], told["center"], told["behind"]) == ("4.0 mm", "21.5 mm", "5.5 mm")


@settings(max_examples=150)
@given(st.integers(0, 50), st.integers(0, 40), st.integers(0, 40), st.booleans())
def test_a_bored_door_covers_its_side_as_far_as_was_asked(covers, constant, plate, inset):
    """All in half millimeters; 3 to 6 mm of tab are allowed."""
    mm = [Fraction(each, 2) for each in (covers, constant, plate)]
    values = {"constant": f"{float(mm[1])} mm", "plate": f"{float(mm[2])} mm"}
    values |= {"sits": "in", "reveal": f"{float(mm[0])} mm"} if inset else {}
    values |= {} if inset else {"overlay": f"{float(mm[0])} mm"}
    said = ask(KEY, kind="cup", **values)
    wanted = -mm[0] if inset else mm[0]
    allowed = [Fraction(tab, 2) for tab in range(6, 13)]
    found = [each for each in allowed if overlay_of_bore(each, mm[1], mm[2]) == wanted]
    assert said["ok"] == bool(found)
    if found:
        told = {each["key"]: exact(each) for each in said["answers"]}
        assert told["tab"] * Fraction("25.4") == found[0]
        assert told["center"] == told["tab"] + Fraction("17.5") / Fraction("25.4")
    else:
        assert errors(said)["plate"]["kind"] == "impossible"


@pytest.mark.parametrize(
    ("values", "remedy"),
    [
        (
            {"plate": "3 mm"},
            "Use a plate 0 to 2 mm high, or a hinge with a constant of 14 to 17 mm",
        ),
        (
            {"overlay": "14 mm"},
            "Use a plate 2 to 5 mm high, or a hinge with a constant of 8 to 11 mm",
        ),
        ({"overlay": "20 mm"}, "with a constant of 14 to 17 mm, or cover 1.0 mm less"),
    ],
)
def test_a_tab_that_is_not_allowed_names_the_plates_that_are(values, remedy):
    """17 = tab + 13 − plate: tabs of 3 to 6 go with plates of −1 to 2; 14: 2 to 5; 20: none, as 6
    + 13 are 19."""
    said = ask(KEY, {"unit": "mm"}, **CUP | {"wood": "18"} | values)
    assert remedy in errors(said)["plate"]["remedy"]


@pytest.mark.parametrize(
    ("values", "remedy"),
    [
        ({"overlay": "1/2 in"}, "a plate 3.3 to 6.3 mm high, or a hinge with a constant of 6.7 to"),
        ({"sits": "in", "reveal": "2 mm"}, "a constant of −8 to −5 mm"),
    ],
)
def test_a_makers_figures_are_in_millimeters_in_a_project_in_inches_too(values, remedy):
    """Plates and constants are sold by the millimeter. 12.7 + 0 − 3 to 6 is 9.7 to 6.7, and the
    plates are 3 to 6 + 13 − 12.7; inset by 2 it is −2 − 6 to −2 − 3."""
    said = ask(KEY, **CUP | values)
    assert remedy in errors(said)["plate"]["remedy"]


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        (BUTT | {"gap": "7/32"}, "gap", "impossible"),
        (BUTT | {"gap": "13/64"}, "gap", None),
        (BUTT | {"leaf": "3/8", "wood": "3/8"}, "leaf", "impossible"),
        (BUTT | {"leaf": "3/8", "wood": "1/2"}, "leaf", None),
        (BUTT | {"screw": "2"}, "screw", "impossible"),
        (BUTT | {"screw": "1 7/8"}, "screw", None),
        (CUP | {"screw": "3/4"}, "screw", "impossible"),
        (CUP | {"wood": "12.5 mm"}, "wood", "impossible"),
        (CUP | {"tab_least": "7 mm"}, "tab_most", "impossible"),
        (BUTT | {"leaf": "0"}, "leaf", "range"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    """The hinge is 7/32 thick; two leaves of 3/8 take (13/16 − 1/16) ÷ 2 = 3/8 of each side. The
    leaf of 5/64 is flush in its gain, so a screw of 2 comes out of 2."""
    said = ask(KEY, **values)
    assert (None if said["ok"] else errors(said)[field]["kind"]) == kind


@pytest.mark.parametrize(
    ("values", "warned"),
    [
        (BUTT | {"screw": "1 15/16"}, "Only 1/16″ of wood is left past the screw’s tip"),
        (CUP | {"wood": "14 mm"}, "of wood is left past the cup"),
        (CUP | {"screw": "11/16"}, "Only 1/16″ of wood is left past the screw’s tip"),
    ],
)
def test_thin_wood_behind_a_hinge_is_warned_of_first(values, warned):
    said = reckon(KEY, **values)["cautions"]
    assert warned in said[0]
    assert len(reckon(KEY, **BUTT)["cautions"]) == 2


def test_the_leaf_in_its_gain_leaves_the_wood_that_its_screw_does():
    """Two leaves of 1/16, 1/16 between, gap 1/8: gains of 1/32, so the leaf is 1/32 proud. A
    screw of 3/4 goes 3/4 − 1/32 = 23/32 into 2, leaving 1 9/32."""
    values = BUTT | {"leaf": "1/16", "gap": "1/8", "screw": "3/4"}
    assert exact(reckon(KEY, **values)["by_key"]["tip"]) == Fraction(41, 32)


def test_the_cautions_name_what_can_hurt_and_defer():
    said = " ".join(reckon(KEY, **CUP)["cautions"])
    assert "eye protection" in said
    assert "maker’s instructions come first" in said


def test_hinge_and_bore_are_drawn_in_scale():
    leaves = [
        each["points"]
        for each in reckon(KEY, **BUTT)["drawing"]["shapes"]
        if each.get("role") == "hatch"
    ]
    assert [points[1][0] - points[0][0] for points in leaves] == pytest.approx(
        [5 / 64] * 2, abs=2e-4
    )
    between = leaves[1][0][0] - leaves[0][1][0]
    assert between == pytest.approx(1 / 16, abs=2e-4)
    (hole,) = [each for each in reckon(KEY, **CUP)["drawing"]["shapes"] if each["kind"] == "circle"]
    assert hole["radius"] == pytest.approx(17.5 / 25.4, abs=1e-3)
    assert hole["center"][0] == pytest.approx(21.5 / 25.4, abs=1e-3)
