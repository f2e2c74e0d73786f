"""Scarfed pieces fill the run at back and face, each within its stick, joints on studs."""

from fractions import Fraction
from itertools import pairwise
from math import radians, tan

import pytest
from asking import as_drawn, ask, errors, exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

runs = st.fractions(min_value=97, max_value=400, max_denominator=16)
sticks = st.fractions(min_value=60, max_value=96, max_denominator=8)
thicknesses = st.fractions(min_value="1/4", max_value=1, max_denominator=16)
slopes = st.integers(1, 8)


def run(**more):
    return {"run": "141 3/8", "stick": "96", "thickness": "5/8"} | more


def test_a_45_overlaps_by_the_thickness():
    """Common practice, no source: at a 45 a piece grows by its thickness; 78 1/2 + 5/16."""
    said = reckon("scarf", **run(spacing="16", first="14 1/2"))
    by_key = said["by_key"]
    assert by_key["overlap"]["text"] == by_key["extra"]["text"] == "5/8″"
    assert by_key["joints"]["text"] == "78 1/2″"
    assert by_key["pieces"]["text"] == "78 13/16″, 63 3/16″"
    assert by_key["count"]["text"] == "2"


def test_a_slope_of_one_in_eight_is_eight_thicknesses_long():
    """arctan 8 = 82.875 degrees and the root of 65 = 8.0623: printed tables of both."""
    said = reckon("scarf", {"mark": ".001 in"}, **run(thickness="1", cut="slope", slope="8"))
    by_key = said["by_key"]
    assert by_key["overlap"]["text"] == "8.000″"
    assert by_key["face"]["text"] == "8.062″"
    assert by_key["setting"]["text"] == "≈ 82.87°"
    assert any("≈ 7.13°" in caution for caution in said["cautions"])


def laid(said, long, overlap):
    """(back, face) of each piece along the run, from its told tips and the cuts at its ends."""
    joints = [exact(item) for item in said["by_key"]["joints"]["items"]]
    ends = [Fraction(0), *joints, long]
    for part, (start, stop) in zip(said["parts"], pairwise(ends), strict=True):
        first, last = start == 0, stop == long
        tip = start if first else start - overlap / 2
        end = tip + exact(part["length"])
        sloped = [part["ends"][side]["cut"] == "bevel" for side in ("left", "right")]
        assert sloped == [not first, not last]
        back = (tip if first else tip + overlap, end)
        face = (tip, end if last else end - overlap)
        yield part, back, face


@settings(max_examples=120)
@given(runs, sticks, thicknesses, slopes, st.sampled_from(["12", "16", "19 1/5", "24", ""]))
def test_the_pieces_fill_the_run_at_back_and_face(long, stick, thickness, slope, spacing):
    values = {
        "run": f"{long} in",
        "stick": f"{stick} in",
        "thickness": f"{thickness} in",
        "cut": "slope",
        "slope": f"{slope}",
        "spacing": spacing,
        "kerf": "0",
    }
    said = reckon("scarf", **values)
    overlap = thickness * slope
    pieces = list(laid(said, long, overlap))
    for which in (1, 2):
        edges = [piece[which] for piece in pieces]
        assert edges[0][0] == 0
        assert edges[-1][1] == long
        assert all(one[1] == other[0] for one, other in pairwise(edges))
    for part, back, face in pieces:
        assert exact(part["length"]) <= stick
        both = sorted([back[1] - back[0], face[1] - face[0]])
        assert [exact(part["short_side"]), exact(part["long_side"])] == both
    if spacing:
        step = {"19 1/5": Fraction("19.2")}.get(spacing) or Fraction(spacing)
        joints = [exact(item) for item in said["by_key"]["joints"]["items"]]
        assert all(joint / step == joint // step for joint in joints)
        assert len(joints) == fewest(long, stick, overlap, step)
    else:
        assert len({part["length"]["exact"] for part, _, _ in pieces}) == 1
        assert len(pieces) == -((overlap - long) // (stick - overlap))


def fewest(long, stick, overlap, step):
    """The oracle: breadth first over every stud that a stick can reach."""
    studs = [number * step for number in range(1, int(long / step) + 1)]
    studs = [stud for stud in studs if overlap / 2 < stud < long - overlap / 2]
    tips, joints = {Fraction(0)}, 0
    while not any(long <= tip + stick for tip in tips):
        tips = {
            stud - overlap / 2
            for tip in tips
            for stud in studs
            if tip < stud - overlap / 2 and stud + overlap / 2 <= tip + stick
        }
        joints += 1
    return joints


@pytest.mark.parametrize("angle", ["22 1/2", "30", "60"])
def test_another_angle_overlaps_by_its_tangent(angle):
    """Plane trigonometry, by the machine's own tangent."""
    said = reckon("scarf", {"mark": ".001 in"}, **run(cut="other", angle=angle))["by_key"]
    turn = float(sum(Fraction(each) for each in angle.split()))
    assert said["overlap"]["text"] == f"{0.625 * tan(radians(turn)):.3f}″"


def test_both_ends_of_a_joint_are_cut_alike():
    parts = reckon("scarf", **run(run="250"))["parts"]
    assert len(parts) == 3
    for left, right in pairwise(parts):
        assert left["ends"]["right"] == right["ends"]["left"]
    middle = parts[1]["drawing"]["words"]
    assert f"tip to tip {parts[1]['length']['text']}" in middle


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"run": "90"}, "run", "impossible"),
        ({"stick": "1"}, "stick", "impossible"),
        ({"stick": "30", "spacing": "48"}, "stick", "impossible"),
        ({"run": "2000", "stick": "20"}, "stick", "impossible"),
        ({"cut": "other", "angle": "90"}, "angle", "range"),
        ({"cut": "other", "angle": "0"}, "angle", "range"),
        ({"cut": "slope", "slope": "0"}, "slope", "range"),
        ({"run": "14x"}, "run", "unreadable"),
    ],
)
def test_bad_input_names_its_field_and_a_remedy(values, field, kind):
    error = errors(ask("scarf", **run(**values)))[field]
    assert error["kind"] == kind
    assert error["remedy"].endswith(".")


@pytest.mark.parametrize("cut", [{}, {"cut": "slope", "slope": "12"}, {"cut": "30"}])
@pytest.mark.parametrize("long", ["100", "300", "1500"])
def test_the_drawing_stays_in_its_box_and_tells_the_joints(cut, long):
    said = reckon("scarf", **run(run=long, **cut))
    for drawing in (said["drawing"], *(part["drawing"] for part in said["parts"])):
        left, top, right, bottom = drawing["box"]
        for shape in drawing["shapes"]:
            for x, y in shape.get("points", []):
                assert left <= x <= right
                assert top <= y <= bottom
    texts = [shape.get("text") for shape in said["drawing"]["shapes"]]
    for item in said["by_key"]["joints"]["items"][:4]:
        assert as_drawn(item) in texts
        assert item["text"] in said["drawing"]["words"]


def test_the_verdict_says_that_it_goes_to_the_center_and_how_long_both_pieces_are():
    said = reckon("scarf", **run(spacing="16", first="14 1/2"))
    assert said["verdict"] == (
        "Center of the joint, from the left end (long points 78 13/16″ and 63 3/16″)"
    )
    texts = {shape.get("text") for shape in said["drawing"]["shapes"]}
    assert {"wall side", "face side"} <= texts
    assert "first of 2 joints" in reckon("scarf", **run(run="250"))["verdict"]
