"""What is said of each piece of a face frame, and what is warned of."""

import pytest
from asking import reckon

from tests.core.oracles.laid_out_frame import ALONE, CABINET, KEY


def about(said):
    """{name of a part: what is said of it}."""
    return {part["name"]: part["about"] for part in said["parts"]}


def test_the_list_says_where_what_meets_each_piece():
    """By hand: a foot of 3 1/2 and a rail of 1 1/2, and (34 1/2 − 3 1/2 − 4 1/2) ÷ 2 = 13 1/4 on
    top of them, 18 1/4 from the floor and 13 1/4 up the middle stile, 3/8 more with its tenon;
    33 ÷ 2 − 3/4 = 15 3/4 to the middle stile along a rail."""
    values = CABINET | {"middle_stiles": "1", "middle_rails": "1", "stiles_run": "floor"}
    grain = "Grain runs along the length."
    said = about(reckon(KEY, **values))
    holes = "Pocket holes in the back at both ends."
    assert said["Stile"] == [
        grain,
        "On the inside edge, from the bottom end: bottom rail 3 1/2″ to 5″, middle rail 18 1/4″ to "
        "19 3/4″ and top rail 33″ to 34 1/2″.",
        "Left and right are mirror images.",
    ]
    assert said["Middle rail"] == [grain, holes]
    assert said["Bottom rail"] == [
        grain,
        holes,
        "On the upper edge, from the left end: middle stile 15 3/4″ to 17 1/4″.",
    ]
    tenoned = about(reckon(KEY, **values, joint="tenon", tenon="3/8"))
    assert tenoned["Middle stile"] == [
        grain,
        "Tenon 3/8″ long at both ends.",
        "On both edges, from the bottom end, tenon included: middle rail 13 5/8″ to 15 1/8″. A "
        "mortise within each, a hair over 3/8″ deep.",
    ]
    mortises = " A mortise within each, a hair over 3/8″ deep."
    assert tenoned["Stile"] == [grain, said["Stile"][1] + mortises, said["Stile"][2]]
    doweled = about(reckon(KEY, **values, joint="dowels"))
    assert doweled["Top rail"][1] == "Dowels at both ends: see Dowel layout."
    assert doweled["Stile"][1].endswith("Dowel holes within each: see Dowel layout.")


def test_the_list_says_how_long_a_through_tenon_is_at_which_end():
    """Through an outer stile of 2 and half of a middle one of 1 1/2; through rails of 3 and 2.
    24 − 2 − 3 − 3 = 16 is 256 sixteenths, 85, 85 and 86: 3 + 5 3/8, and 1 1/2 + 5 5/16 more."""
    values = ALONE | {"middle_stiles": "2", "middle_rails": "2", "joint": "through"}
    said = about(reckon(KEY, **values, left_stile="2", top_rail="2", bottom_rail="3"))
    assert said["Middle rail (bay 1)"][1] == (
        "Tenon 3/4″ long at the end in the middle stile, 2″ at the other."
    )
    assert said["Middle stile"][1] == "Tenon 3″ long at the bottom end, 2″ at the top end."
    assert said["Top rail"][1] == "Tenon 2″ long at the left end, 1 1/2″ at the right end."
    assert said["Right stile"][1] == (
        "On the inside edge, from the bottom end: bottom rail 0″ to 3″, middle rail 8 3/8″ to "
        "9 7/8″, middle rail 15 3/16″ to 16 11/16″ and top rail 22″ to 24″. A mortise within each, "
        "right through."
    )
    assert said["Middle stile"][2].endswith("A mortise within each, half way through.")


@pytest.mark.parametrize(
    ("values", "warned"),
    [
        ({"edge": "flush"}, "a stile 3/4″ wide"),
        ({"edge": "flush", "joint": "dowels"}, None),
        ({"stile": "1 1/4"}, None),
        ({"right_stile": "1 7/32"}, "a stile 1 7/32″ wide"),
        ({"middle_stile": "1", "middle_stiles": "1", "middle_rails": "1"}, "a stile 1″ wide"),
        ({"middle_stile": "1", "middle_stiles": "1"}, None),
        ({"bottom_edge": "flush", "middle_stiles": "1"}, "a rail 3/4″ wide"),
        ({"bottom_edge": "flush"}, None),
    ],
)
def test_pocket_screws_into_a_narrow_edge_are_warned_of(values, warned):
    """A usual 1 1/4 screw through 3/4 stock; common practice, no source."""
    said = [each for each in reckon(KEY, **CABINET | values)["cautions"] if "come through" in each]
    assert [warned in each for each in said] == ([] if warned is None else [True])


@pytest.mark.parametrize("joint", ["screws", "dowels", "tenon", "through"])
def test_every_joint_has_its_caution_and_defers_to_instructions(joint):
    said = reckon(KEY, **ALONE, joint=joint)["cautions"]
    assert any("instructions" in each or "maker calls for" in each for each in said)
    assert any("Unplug" in each for each in said)


@pytest.mark.parametrize(("joint", "trimmed"), [("tenon", False), ("through", True)])
def test_a_tenon_is_kept_from_the_end_of_its_stile_and_a_through_one_left_long(joint, trimmed):
    """Common practice, no source: a length rounds down, and a through tenon is planed flush."""
    said = " ".join(reckon(KEY, **ALONE, joint=joint)["cautions"])
    assert "keep the mortise back from the end of the stile" in said
    assert ("a hair long, and plane it flush" in said) == trimmed


@pytest.mark.parametrize(
    ("values", "warned"),
    [
        ({"middle_stile": "1 3/8"}, True),
        ({"middle_stile": "1 3/8", "joint": "dowels"}, False),
        ({"middle_stile": "1 1/2"}, False),
        ({"middle_stile": "1 3/8", "middle_rails": "0"}, False),
    ],
)
def test_pocket_screws_that_meet_in_a_middle_stile_are_warned_of(values, warned):
    """Each goes in about 3/4 in; common practice, no source."""
    said = reckon(KEY, **CABINET | {"middle_stiles": "1", "middle_rails": "1"} | values)
    assert any("may hit each other" in each for each in said["cautions"]) == warned
