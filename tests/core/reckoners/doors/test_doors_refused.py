"""Doors that cannot be made: each is refused with its field, and the limit that is named is taken.

The limits are arithmetic on common practice, no source.
"""

import pytest
from asking import ask, errors

from tests.core.reckoners.doors.opening import OPENING, SOLID


@pytest.mark.parametrize(
    ("values", "field", "word"),
    [
        ({"stile": "16"}, "stile", "29 5/16″ at most"),
        ({"top_rail": "12", "bottom_rail": "12"}, "bottom_rail", "23 5/16″ at most"),
        ({"doors": "12", "width": "12"}, "doors", "fewer doors"),
        ({"gap": "2", "width": "4 1/2"}, "width", "bigger opening"),
        ({"tongue": "1/2"}, "tongue", "3/8″ at most"),
        ({"joint": "mortise", "tenon": "2 1/4"}, "tenon", "2 1/8″ at most"),
        ({"joint": "miter", "top_rail": "3"}, "top_rail", "one width"),
        ({"groove": "1 1/4"}, "groove", "less than"),
        ({"clearance": "3/8"}, "clearance", "less than"),
        ({"made": "glass", "glass_clearance": "3/8"}, "glass_clearance", "less than"),
        ({"made": "glass", "panel": "5/8"}, "panel", "1/2″ thick at most"),
        ({"made": "glass", "deep": "3/4"}, "deep", "less than 3/4″"),
        ({"panel": "7/8"}, "panel", "3/4″ at most"),
        ({"made": "wood", "groove": "1/16", "clearance": "0", **SOLID}, "groove", "middle member"),
        ({"fit": "lipped", "lip_rabbet": "1/4"}, "lip_rabbet", "wider than"),
        ({"fit": "full", "reveal": "1"}, "reveal", "at most"),
        ({"fit": "half", "between": "1"}, "between", "at most"),
        ({"known": "door", "fit": "overlay", "lap": "12"}, "height", "smaller laps"),
        ({"middle": "rail", "middle_width": "19"}, "middle_width", "Make it 18 5/16″ at most"),
        ({"width": "5 1/2", "middle": "stile"}, "middle_width", "Leave it out, or make the door"),
    ],
)
def test_doors_that_cannot_be_made_are_refused_with_the_field_and_a_remedy(values, field, word):
    said = ask("doors", **OPENING | values)
    assert set(errors(said)) == {field}
    assert said["error"]["kind"] == "impossible"
    assert word in said["error"]["remedy"]


def test_the_limit_that_a_remedy_names_is_taken():
    """A tongue as long as the groove, glass as thick as its rabbet, a tenon 1/8 short; rails or a
    middle one that leave 1/2 of each opening in 23 13/16."""
    for values in (
        {"tongue": "3/8"},
        {"made": "glass", "panel": "1/2"},
        {"joint": "mortise", "tenon": "2 1/8"},
        {"top_rail": "11 5/16", "bottom_rail": "12"},
        {"middle": "rail", "middle_width": "18 5/16"},
    ):
        assert ask("doors", **OPENING | values)["ok"], values
