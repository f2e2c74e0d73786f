"""Dowels that cannot be, those that make a weak joint, and what is said before the drill."""

import pytest
from asking import ask, errors, reckon

from tests.core.reckoners.case.dowels import JOINT, KEY


def test_a_stile_too_narrow_for_dowels_from_both_sides_says_so():
    said = ask(KEY, **JOINT | {"stile": "1", "both": "yes"})
    assert "from both sides" in said["error"]["message"]
    assert "both" not in ask(KEY, **JOINT | {"stile": "1/2"})["error"]["message"]


def test_the_largest_inset_that_is_named_is_taken_off_the_marks_too():
    """Half of 2 3/128 is 1 3/256, nearer to 1 1/64 than to 1: that would be past the middle."""
    joint = JOINT | {"rail": "2 3/128", "count": "1"}
    said = errors(ask(KEY, **joint, inset="1 1/4"))
    assert said["inset"]["remedy"] == "Enter 1″ or less."
    assert ask(KEY, **joint, inset="1")["ok"]
    assert "inset" in errors(ask(KEY, **joint, inset="1 1/64"))


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"diameter": "13/32"}, "diameter", "impossible"),
        ({"diameter": "3/8"}, "diameter", None),
        ({"thickness": "3/8"}, "thickness", "impossible"),
        ({"dowel_length": "3 3/8"}, "dowel_length", "impossible"),
        ({"dowel_length": "3 5/16"}, "dowel_length", None),
        ({"dowel_length": "1 5/8", "both": "yes"}, "dowel_length", "impossible"),
        ({"dowel_length": "1 9/16", "both": "yes"}, "dowel_length", None),
        ({"stile": "1/2"}, "stile", "impossible"),
        ({"stile": "1 3/16", "both": "yes"}, "stile", "impossible"),
        ({"stile": "1 1/4", "both": "yes"}, "stile", None),
        ({"from_face": "3/16"}, "from_face", "impossible"),
        ({"from_face": "9/16"}, "from_face", "impossible"),
        ({"inset": "3/16"}, "inset", "impossible"),
        ({"inset": "1", "count": "2"}, "inset", "impossible"),
        ({"inset": "2 1/4", "count": "1"}, "inset", "impossible"),
        ({"count": "6"}, "count", "impossible"),
        ({"rail": "3/8"}, "rail", "impossible"),
        ({"rail": "1/4"}, "rail", "impossible"),
        ({"rail": "1/2"}, "rail", None),
        ({"rail": "3/8", "diameter": "3/8"}, "diameter", "impossible"),
        ({"inset": "1 1/4"}, "inset", "impossible"),
        ({"inset": "1 1/4", "count": "1"}, "inset", "impossible"),
        ({"inset": "1 1/8", "count": "1"}, "inset", None),
        ({"count": "0"}, "count", "range"),
        ({"rail": "0"}, "rail", "range"),
        ({"play": "-1/8"}, "play", "range"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    """Two holes of 1 ÷ 2 + 1/16 with 1/8 between them take 1 1/4. A
    hole of 3 3/8 ÷ 2 + 1/16 = 1 3/4 comes through; two of
    1 5/8 ÷ 2 + 1/16 = 7/8 meet."""
    said = ask(KEY, **(JOINT | values))
    assert (None if said["ok"] else errors(said)[field]["kind"]) == kind


@pytest.mark.parametrize(
    ("values", "warned"),
    [
        ({"dowel_length": "3 5/16"}, "Only 1/32″ of the stile is left"),
        ({"dowel_length": "1 9/16", "both": "yes"}, "Only 1/16″ is left between the holes"),
        ({"dowel_length": "1 1/4", "diameter": "3/8"}, "less than two diameters"),
        ({"diameter": "3/16"}, "less than a third of the thickness"),
        ({"from_face": "1/4"}, "Only 1/16″ of wood is left at a face"),
        ({"inset": "1/4"}, "Only 1/16″ of wood is left at the rail’s edge"),
        ({"count": "3", "inset": "5/8"}, "Only 1/8″ of wood is left between two"),
        ({"count": "1"}, "One dowel lets the rail twist"),
        ({"play": "0"}, "no glue room"),
    ],
)
def test_what_weakens_the_joint_is_warned_of_first(values, warned):
    said = reckon(KEY, **JOINT | values)["cautions"]
    assert warned in said[0]
    assert len(reckon(KEY, **JOINT)["cautions"]) == 4


def test_the_cautions_say_how_both_parts_are_marked_and_defer_to_instructions():
    said = " ".join(reckon(KEY, **JOINT)["cautions"])
    assert "from the same edge, inside face down" in said
    assert "instructions for the drill and the doweling guide come first" in said
    assert "glue’s instructions" in said
