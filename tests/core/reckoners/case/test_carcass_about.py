"""What is said and drawn of the parts of a case."""

import pytest
from asking import reckon

from tests.core.reckoners.case.carcasses import CABINET, about, sizes


def test_butted_parts_are_told_where_they_go():
    """Kick 3 1/2. Inside 34 1/2, two dividers: (34 1/2 − 1 1/2) ÷ 3 = 11 each; the second one at
    2 × 11 + 3/4 = 22 3/4 from the inside, 23 1/2 from the end of a top over the sides. Up, 25 less
    two shelves in 3: 7 5/6, and 2 × 7 5/6 + 3/4 = 16 5/12, on marks 7 13/16 and 16 7/16; on the
    sides 3 1/2 + 3/4 more."""
    case = CABINET | {"joint": "butt", "dividers": "2", "fixed": "2", "kick": "notched"}
    said = reckon("carcass", **case, top="over")
    assert "Bottom: its lower face 3 1/2″ from the bottom end." in about(said, "side")
    assert "Top: on the top end." in about(said, "side")
    for key, lows in (("side", "12 1/16″ and 20 11/16″"), ("divider", "7 13/16″ and 16 7/16″")):
        shelves = f"Fixed shelves: their lower faces {lows} from the bottom end."
        assert shelves in about(said, key)
    assert [line for line in about(said, "bottom") if "ivider" in line] == [
        "Divider 1: its left face 11″ from the left end.",
        "Divider 2: its left face 22 3/4″ from the left end.",
    ]
    assert "Sides: under its ends, flush with them." in about(said, "top")
    assert "Divider 2: its left face 23 1/2″ from the left end." in about(said, "top")


def test_a_toe_kick_is_told_where_it_goes():
    assert about(reckon("carcass", **CABINET, kick="notched"), "kick") == [
        "Grain runs along the length.",
        "Between the sides, its face at the back of the notch, 3″ from the front of the case.",
        "Cut it a hair under its height if the floor is crowned.",
    ]


def test_a_side_and_a_divider_send_to_their_pin_holes():
    said = reckon("carcass", **CABINET, adjustable="2", dividers="1")
    for key, where in (("side", "the inside face"), ("divider", "both faces")):
        line = f"Holes for shelf pins in {where}: lay them out in Shelf pin holes."
        assert line in about(said, key)
    assert not any("pins" in line for line in about(reckon("carcass", **CABINET), "side"))


def test_solid_strips_are_fitted_where_their_parts_show():
    """Strips of 1/4 between the sides: 36 − 1 1/2 = 34 1/2, not the 35 of the parts with their
    joints; between bottom and top 28 1/2; on the sides 30. All: 2 × 30 + 3 × 34 1/2 = 163 1/2; and
    a tenth: 179.85, up to 179 7/8. A shelf set back takes its strip into its dadoes with it."""
    said = reckon("carcass", **CABINET, fixed="1", band="1/4")
    strips = {key: each for key, each in sizes(said).items() if key.startswith("strip")}
    assert strips == {
        "strip_side": (2, "30″", "3/4″", "1/4″"),
        "strip_top": (1, "34 1/2″", "3/4″", "1/4″"),
        "strip_bottom": (1, "34 1/2″", "3/4″", "1/4″"),
        "strip_fixed": (1, "34 1/2″", "3/4″", "1/4″"),
    }
    for key in ("top", "bottom", "fixed"):
        assert "Fit it between the sides once the case is together." in about(said, f"strip_{key}")
        assert "Edging 1/4″ thick on the front edge, already taken off the width." in about(
            said, key
        )
    assert said["by_key"]["edging"]["text"] == "179 7/8″"
    kicked = reckon("carcass", **CABINET, dividers="1", fixed="1", band="1/4", kick="notched")
    assert sizes(kicked)["strip_side"][1] == "26 1/2″"
    assert "From the top end of the side down." in about(kicked, "strip_side")
    assert sizes(kicked)["strip_divider"][1] == "25″"
    assert "Fit it between bottom and top once the case is together." in about(
        kicked, "strip_divider"
    )
    assert sizes(kicked)["strip_fixed"][:2] == (2, "16 7/8″")
    assert "Fit it into its bay once the case is together." in about(kicked, "strip_fixed")
    inset = reckon("carcass", **CABINET, fixed="1", band="1/4", setback="1")
    assert sizes(inset)["strip_fixed"][1] == "35″"
    assert not any("Fit it" in line for line in about(inset, "strip_fixed"))
    tape = reckon("carcass", **CABINET, fixed="1")
    assert not any(key.startswith("strip") for key in sizes(tape))


def test_proud_edging_leaves_the_panels_as_wide_as_the_depth():
    """12 deep with a back of 1/4 in rabbets: sides 12, top and bottom 11 3/4, and a shelf too; with
    strips of 1/4 in front 12 1/4 in all. Within the depth each is 1/4 narrower."""
    case = CABINET | {"fixed": "1", "band": "1/4"}
    said = reckon("carcass", **case, solid_edging="proud")
    assert [sizes(said)[key][2] for key in ("side", "top", "fixed")] == [
        "12″",
        "11 3/4″",
        "11 3/4″",
    ]
    assert said["by_key"]["over_edging"]["text"] == "12 1/4″"
    assert "Edging 1/4″ thick on the front edge, in front of the width." in about(said, "side")
    assert sizes(said)["strip_side"] == (2, "30″", "3/4″", "1/4″")
    within = reckon("carcass", **case)
    assert [sizes(within)[key][2] for key in ("side", "fixed")] == ["11 3/4″", "11 1/2″"]
    assert "over_edging" not in within["by_key"]


@pytest.mark.parametrize(
    ("back", "who"),
    [("rabbet", "All but the back"), ("groove", "All but the back"), ("none", "Parts")],
)
def test_a_back_is_left_out_of_what_bottoms_out(back, who):
    said = reckon("carcass", **CABINET, back=back)["cautions"]
    assert any(each.startswith(f"{who} bottom out in their joints.") for each in said)


def test_the_drawing_is_in_scale_and_names_its_parts():
    """36 wide, 30 high, at the right a section 12 deep."""
    said = reckon("carcass", **CABINET, fixed="1", kick="notched", dividers="1")
    shapes = said["drawing"]["shapes"]
    lines = [each for each in shapes if each["kind"] == "dimension"]
    spans = {
        each["text"]: max(
            abs(each["to"][0] - each["from"][0]), abs(each["to"][1] - each["from"][1])
        )
        for each in lines
    }
    assert [spans[each] for each in ("36″", "30″", "12″")] == pytest.approx([36, 30, 12])
    fields = {each["text"]: each.get("field") for each in lines}
    assert (fields["36″"], fields["30″"], fields["12″"]) == ("width", "height", "depth")
    texts = {each["text"] for each in shapes if each["kind"] == "label"}
    assert {"top", "bottom", "shelf", "back", "toe kick", "section"} <= texts


def test_bays_a_mark_apart_are_drawn_with_the_first_one():
    """Three numbers of this length have no room side by side."""
    said = reckon("carcass", **CABINET | {"width": "35"}, dividers="2")
    drawn = {each.get("text") for each in said["drawing"]["shapes"]}
    assert "first bay 10 11/16″" in drawn
    assert "10 5/8″" not in drawn


def test_a_side_is_drawn_with_its_notch_and_joints():
    said = reckon("carcass", **CABINET, kick="notched")
    side = next(part for part in said["parts"] if part["key"] == "side")["drawing"]
    outline = next(each for each in side["shapes"] if each.get("role") == "stock")
    assert len(outline["points"]) == 6
    assert sum(each.get("role") == "hatch" for each in side["shapes"]) == 3


TURNED = (
    "Left is as it goes in the case: lower face up, front edge toward you, the left end is on your "
    "right."
)


def dadoes_drawn(said, key):
    """From where to where across the panel as it is drawn."""
    shapes = next(part["drawing"]["shapes"] for part in said["parts"] if part["key"] == key)
    xs = [[x for x, _ in each["points"]] for each in shapes if each.get("role") == "hatch"]
    return [(min(each), max(each)) for each in xs if max(each) - min(each) < 1]


@pytest.mark.parametrize("joint", ["dado", "butt"])
def test_a_top_with_unlike_bays_says_where_its_left_end_is_with_its_lower_face_up(joint):
    """A bay of 10 at the left: the dado 1/4 + 10 from the left end, 35 − 10 1/4 − 3/4 = 24 from the
    other one. On the bench the lower face is up and the front edge toward one, so the top is turned
    about and its left end is at the right; the bottom isn't."""
    case = CABINET | {"dividers": "1", "joint": joint}
    said = reckon("carcass", **case, bay_widths=["10"])
    assert TURNED in about(said, "top")
    assert TURNED not in about(said, "bottom")
    assert TURNED not in about(reckon("carcass", **case), "top")
    if joint == "dado":
        assert dadoes_drawn(said, "bottom") == [(10.25, 11)]
        assert dadoes_drawn(said, "top") == [(24, 24.75)]


def test_what_is_cut_from_the_front_edge_is_measured_without_the_edging():
    """A notch of 3 less 1/4 of edging is 2 3/4 deep in the panel without its strip."""
    case = CABINET | {"fixed": "1", "kick": "notched", "band": "1/4"}
    line = "Edging 1/4″ thick on the front edge, already taken off the width."
    assert f"{line} Measure the notch from the panel, without it." in about(
        reckon("carcass", **case), "side"
    )
    both = about(reckon("carcass", **case, setback="1"), "side")
    assert f"{line} Measure the notch and stops from the panel, without it." in both
    assert line in about(reckon("carcass", **case), "top")


def test_a_strip_of_a_side_under_a_top_begins_at_its_underside():
    said = reckon("carcass", **CABINET, band="1/4", top="over", kick="notched")
    assert "From the underside of the top down." in about(said, "strip_side")


@pytest.mark.parametrize(("deep", "left"), [("1/4", None), ("5/16", "1/8″")])
def test_dadoes_that_leave_little_of_a_divider_are_warned_of(deep, left):
    """3/4 less twice 5/16 is 1/8: under a quarter of the thickness (common practice, no source)."""
    said = reckon("carcass", **CABINET, dividers="1", fixed="1", joint_depth=deep)
    warned = [each for each in said["cautions"] if "of a divider is left" in each]
    assert [each.split(" of a ")[0] for each in warned] == ([f"Only {left}"] if left else [])
