"""What case can't be built, and what is warned of."""

import pytest
from asking import ask, errors, reckon

from tests.core.reckoners.case.carcasses import CABINET


@pytest.mark.parametrize(
    ("values", "field", "words"),
    [
        ({"width": "1 1/2"}, "width", "leaves no width inside"),
        ({"height": "4", "kick": "notched"}, "height", "leaves no height inside"),
        ({"depth": "1", "back_thickness": "1"}, "depth", "leaves no depth inside"),
        ({"joint_depth": "3/4"}, "joint_depth", "goes through a part that’s 3/4″ thick"),
        (
            {"joint_depth": "3/8", "dividers": "1", "fixed": "1"},
            "joint_depth",
            "half its thickness is 3/8″",
        ),
        ({"rabbet_depth": "3/4"}, "rabbet_depth", "goes through"),
        ({"back": "groove", "groove_depth": "1"}, "groove_depth", "goes through"),
        ({"back_room": "3/8"}, "back_room", "could drop out of its rabbet"),
        ({"kick": "notched", "recess": "11 1/4"}, "recess", "no room for the toe kick"),
        ({"kick": "notched", "recess": "1/2", "band": "3/4"}, "recess", "cuts no notch"),
        ({"kick": "base", "end_recess": "17"}, "end_recess", "no room for the base"),
        ({"fixed": "38"}, "fixed", "shelves in a bay take up"),
        ({"adjustable": "38"}, "adjustable", "shelves in a bay take up"),
        ({"dividers": "20", "width": "16"}, "dividers", "but the inside width is"),
        ({"dividers": "2", "bay_widths": ["10"]}, "bay_widths", "2 dividers make 3 bays"),
        ({"dividers": "1", "bay_widths": ["10", "9"]}, "bay_widths", "1 divider makes 2 bays, but"),
        ({"bay_widths": ["10"]}, "bay_widths", "0 dividers make 1 bay,"),
        ({"dividers": "1", "bay_widths": ["34"]}, "bay_widths", "take up 34 3/4″"),
        ({"shelf_heights": ["9"]}, "shelf_heights", "0 fixed shelves per bay, but 1 height."),
        ({"fixed": "2", "shelf_heights": ["9"]}, "shelf_heights", "2 fixed shelves per bay, but 1"),
        ({"fixed": "2", "shelf_heights": ["9", "9 3/4"]}, "shelf_heights", "Shelf 2 is no higher"),
        ({"fixed": "1", "shelf_heights": ["0"]}, "shelf_heights", "Shelf 1 rests on the bottom"),
        (
            {"fixed": "1", "shelf_heights": ["27 3/4"]},
            "shelf_heights",
            "its lower face is 27 3/4″ above the bottom",
        ),
        ({"fixed": "1", "setback": "11 3/4"}, "setback", "inside depth is 11 3/4″"),
        ({"band": "5", "depth": "5"}, "band", "leaves nothing of the depth"),
        ({"adjustable": "1", "dividers": "8", "gap": "2"}, "gap", "leave nothing of a shelf"),
    ],
)
def test_what_cant_be_built_is_refused_by_the_field_to_change(values, field, words):
    said = errors(ask("carcass", **CABINET | values))
    assert words in said[field]["message"]
    assert said[field]["remedy"].endswith(".")


def test_a_bay_width_without_a_divider_is_told_how_many_dividers_to_enter():
    said = errors(ask("carcass", **CABINET, bay_widths=["10"]))["bay_widths"]
    assert said["message"].startswith("0 dividers make 1 bay, but there is 1 bay width")
    assert said["remedy"] == "Enter 1 divider for 2 bays."


def test_a_deep_joint_and_a_thin_strip_of_wood_are_warned_of():
    said = reckon("carcass", **CABINET, joint_depth="1/2", kick="notched", kick_height="1/2")
    assert "The joint takes more than half the thickness: only 1/4″ is left." in said["cautions"]
    assert any(each.startswith("There’s only 1/2″ of wood under") for each in said["cautions"])
    plain = reckon("carcass", **CABINET)["cautions"]
    assert any("Fasten it to a stud, follow the anchor’s instructions" in each for each in plain)
    assert not any("more than half" in each for each in plain)
