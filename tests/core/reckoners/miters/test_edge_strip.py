"""Strips around a panel close at its corners, however their ends meet."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.core.oracles.solid import board, faces_meet, overlap, placed

panels = st.fractions(min_value=6, max_value=60, max_denominator=32)
thin = st.fractions(min_value="1/8", max_value=2, max_denominator=32)


def strip(panel, thickness, left, right, **more):
    values = {
        "panel": f"{panel} in",
        "thickness": f"{thickness} in",
        "left_end": left,
        "right_end": right,
    }
    return reckon("edge_strip", **(values | more))


def sides(said):
    return tuple(exact(said["by_key"][key]) for key in ("panel_side", "face_side"))


@settings(max_examples=100)
@given(panels, thin)
def test_a_mitered_end_adds_the_thickness_at_the_face_only(panel, thickness):
    """Common practice, no source: at a 45 a piece grows by its thickness."""
    assert sides(strip(panel, thickness, "miter", "miter")) == (panel, panel + 2 * thickness)
    assert sides(strip(panel, thickness, "miter", "flush")) == (panel, panel + thickness)


@settings(max_examples=100)
@given(panels, panels, thin, thin, st.sampled_from(["miter", "over"]))
def test_two_strips_close_at_the_corner_of_the_panel(panel, other, thick, next_thick, end):
    """Independent oracle: both strips as solids around the corner at the origin."""
    if end == "miter":
        next_thick = thick
    along = strip(panel, thick, "flush", end, neighbor=f"{next_thick} in")
    beside = strip(other, next_thick, "miter" if end == "miter" else "flush", "flush")
    one = solid(along, thick, end == "miter").moved(
        placed((-float(panel), 0, 0), (1, 0, 0), (0, -1, 0))
    )
    two = solid(beside, next_thick, end == "miter", at="left").moved(
        placed((0, 0, 0), (0, 1, 0), (1, 0, 0))
    )
    assert overlap(one, two) < 1e-9
    if end == "miter":
        assert faces_meet(one, "right", two, "left")
    else:
        assert one.face("right")[:, 0].max() == pytest.approx(float(next_thick))
        assert two.face("left")[:, 1].min() == pytest.approx(0)
        assert one.extent((0, 1, 0)) == pytest.approx((-float(thick), 0))


def solid(said, thick, mitered, at="right"):
    """The strip with its panel side on y = 0 and its left end at 0; one end may be at 45."""
    back = float(exact(said["by_key"]["panel_side"]))
    lean = {"left": 0.0, "right": 0.0}
    if mitered:
        end = said["parts"][0]["ends"][at]
        assert end["angle"] == f"45°, saw swung {at}"
        lean[at] = 1.0
    return (
        board(float(thick), 1.0)
        .cut("left", (-1, -lean["left"], 0), (0, 0, 0))
        .cut("right", (1, -lean["right"], 0), (back, 0, 0))
    )


def test_a_chamfered_end_runs_over_its_neighbor_and_its_face_stops_short():
    """Worked by hand: 34 + 3/8 at the panel, 3/16 less at the face."""
    said = strip(34, Fraction(3, 8), "flush", "chamfer", right_chamfer="3/16")
    assert sides(said) == (Fraction("34.375"), Fraction("34.1875"))
    assert said["by_key"]["right_set_back"]["text"] == "3/16″"
    right = said["parts"][0]["ends"]["right"]
    assert (right["cut"], right["angle"]) == ("square", "chamfered 3/16″")


@pytest.mark.parametrize(
    ("left", "right", "cut"),
    [
        ("miter", "chamfer", "35 1/16"),
        ("chamfer", "miter", "35 1/16"),
        ("miter", "miter", "35 1/16"),
        ("flush", "chamfer", "34 11/16"),
        ("chamfer", "chamfer", "35 1/16"),
        ("miter", "flush", "34 11/16"),
    ],
)
def test_it_is_cut_so_long_that_it_still_reaches_over_a_chamfered_end(left, right, cut):
    """By hand: 34 5/16, and 3/8 at each end that is mitered or runs over; a chamfer comes after."""
    values = {"left_chamfer": "3/16", "right_chamfer": "3/16"}
    said = strip(Fraction("34.3125"), Fraction(3, 8), left, right, **values)
    assert said["by_key"]["long_side"]["text"] == f"{cut}″"
    assert said["parts"][0]["length"]["text"] == f"{cut}″"


@settings(max_examples=60)
@given(
    panels,
    thin,
    st.sampled_from(["miter", "over", "flush"]),
    st.sampled_from(["miter", "over", "flush"]),
)
def test_the_mirror_image_swaps_left_and_right(panel, thickness, left, right):
    one, other = strip(panel, thickness, left, right), strip(panel, thickness, right, left)
    assert sides(one) == sides(other)
    assert one["by_key"]["left_set_back"]["exact"] == other["by_key"]["right_set_back"]["exact"]


def test_a_corner_of_120_degrees_is_mitered_at_30():
    """Textbook trigonometry: tan 30 = 0.57735."""
    said = strip(20, 1, "flush", "miter", right_corner="120")
    assert said["by_key"]["right_set_back"]["decimals"] == "0.577350…"
    assert said["parts"][0]["ends"]["right"]["angle"] == "30°, saw swung right"


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"panel": ""}, "panel", "missing"),
        ({"left_end": "chamfer", "left_chamfer": "1/4"}, "left_chamfer", "impossible"),
        ({"left_end": "chamfer"}, "left_chamfer", "missing"),
        (
            {
                "left_end": "chamfer",
                "left_chamfer": "4",
                "right_end": "flush",
                "panel": "2",
                "thickness": "5",
                "neighbor": "1",
            },
            "panel",
            "impossible",
        ),
        ({"left_corner": "180"}, "left_corner", "range"),
        ({"thickness": "0"}, "thickness", "range"),
    ],
)
def test_bad_input_names_its_field_and_a_remedy(values, field, kind):
    said = ask("edge_strip", **({"panel": "34", "thickness": "1/4"} | values))
    error = errors(said)[field]
    assert error["kind"] == kind
    assert error["remedy"].endswith(".")


def without_fields(drawing):
    """The drawing of the piece itself opens no fields."""
    shapes = [{**shape, "field": None} for shape in drawing["shapes"]]
    return drawing | {"shapes": shapes}


@pytest.mark.parametrize("left", ["miter", "over", "chamfer", "flush"])
@pytest.mark.parametrize("panel", ["1", "34"])
def test_the_drawing_shows_both_ends_in_its_box(left, panel):
    said = reckon("edge_strip", panel=panel, thickness="3/8", left_end=left, left_chamfer="1/8")
    (part,) = said["parts"]
    assert without_fields(part["drawing"]) == without_fields(said["drawing"])
    x0, y0, x1, y1 = said["drawing"]["box"]
    for shape in said["drawing"]["shapes"]:
        for x, y in shape.get("points", []):
            assert x0 <= x <= x1
            assert y0 <= y <= y1
    wanted = {"miter": "45°, saw swung left", "chamfer": "chamfered 1/8″"}.get(left, "square")
    texts = " ".join(shape.get("text", "") for shape in said["drawing"]["shapes"])
    assert wanted in texts
