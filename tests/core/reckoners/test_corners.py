"""A corner is typed one way in every question, as an angle finder reads it on either side."""

import pytest
from asking import ask, errors, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.reckoners import RECKONERS

FIELDS = [
    ("crown", {"of": "one", "left_end": "outside"}, "left_corner"),
    ("crown", {"of": "one", "right_end": "outside"}, "right_corner"),
    ("edge_strip", {"left_end": "miter"}, "left_corner"),
    ("mitered_length", {"left_end": "corner"}, "left_corner"),
    ("mitered_length", {"right_end": "unequal", "right_neighbor": "2"}, "right_corner"),
    ("piece_by_hand", {"left_end": "corner", "width": "2 1/4"}, "left_corner"),
    ("corner_setting", {"found": "angle", "read": "outside"}, "angle"),
    ("sticks", {"ends": "mitered", "mitered": [{"length": "24", "count": "4"}]}, "corner"),
]


def corner_fields(fields):
    for field in fields:
        yield from corner_fields(field.fields)
        if field.kind == "angle" and "corner" in field.label.lower():
            yield field


def test_every_corner_is_asked_for_by_one_convention():
    """What a question takes on one side of straight it takes on the other, and says so."""
    found = [
        (key, field)
        for key, reckoner in RECKONERS.items()
        for field in corner_fields(reckoner.fields)
    ]
    assert {key for key, _ in found} == {key for key, *_ in FIELDS} | {"molding_run"}
    for key, field in found:
        assert int(field.least) + int(field.most) == 360, key
        assert "as an angle finder reads it: square is 90" in field.help
        assert "Past 180" in field.help


@pytest.mark.parametrize(("question", "more", "key"), FIELDS)
@settings(max_examples=12, deadline=None)
@given(degrees=st.integers(4 * 60, 4 * 149).map(lambda quarter: quarter / 4))
def test_an_outside_corner_is_the_same_read_on_either_side(question, more, key, degrees):
    values = RECKONERS[question].example | more
    around, past = (
        ask(question, **values | {key: f"{each:g}"}) for each in (degrees, 360 - degrees)
    )
    assert around["ok"] == past["ok"]
    if around["ok"]:
        assert around["answers"] == past["answers"]
        assert around["parts"] == past["parts"]
        line = f"An outside corner: 360 − {360 - degrees:g} = {degrees:g}"
        assert question == "piece_by_hand" or line in [each["text"] for each in past["working"]]


CHOOSE = "or choose an outside corner of 90°"
INSIDE_WALLS = [
    {"length": "30", "turn": "inside"},
    {"length": "30", "turn": "inside", "corner": "270"},
    {"length": "20"},
]
INSIDE = [
    (
        "crown",
        {"of": "one", "left_end": "inside", "left_corner": "270"},
        ("left_corner", None, None),
        CHOOSE,
    ),
    ("molding_run", {"walls": INSIDE_WALLS}, ("walls", 1, "corner"), "or choose Outside"),
    (
        "edge_strip",
        {"left_end": "inside", "left_corner": "270"},
        ("left_corner", None, None),
        "or choose Mitered to the next strip",
    ),
]


@pytest.mark.parametrize(("question", "more", "place", "way_out"), INSIDE)
def test_an_inside_corner_past_180_is_refused_at_its_field(question, more, place, way_out):
    """With what can be done in this question, or else in another one."""
    error = ask(question, **RECKONERS[question].example | more)["error"]
    assert (error["field"], error.get("row"), error.get("part")) == place
    assert error["kind"] == "conflict"
    assert way_out in error["remedy"]
    assert ("outside corner of 90°" in error["remedy"]) == (way_out == CHOOSE)


@pytest.mark.parametrize(("question", "more", "key"), FIELDS[:6])
def test_a_corner_that_is_as_good_as_straight_is_refused(question, more, key):
    for degrees in ("179.5", "180", "180.5"):
        said = errors(ask(question, **RECKONERS[question].example | more | {key: degrees}))
        assert said[key]["kind"] == "range"


def test_a_protractor_read_around_an_outside_corner_gives_the_outside_cut():
    around = reckon("corner_setting", found="angle", angle="100", read="outside")["by_key"]
    past = reckon("corner_setting", found="angle", angle="260")["by_key"]
    assert around["way"] == past["way"]
    assert around["corner"]["exact"] == "260"
    inside = reckon("corner_setting", found="angle", angle="100")["by_key"]
    assert inside["corner"]["exact"] == "100"
