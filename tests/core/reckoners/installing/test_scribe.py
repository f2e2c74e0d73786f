"""A strip scribed to a wall: by hand, and held, marked, cut and moved home in a model."""

from fractions import Fraction

import pytest
from asking import ask, errors, items, reckon, texts
from hypothesis import given
from hypothesis import strategies as st
from oracles.put_up import along, scribed

KEY = "scribe"
STRIP = {"gaps": ["3/4", "7/16", "5/8"], "long": "76"}
SIXTEENTHS = st.integers(0, 40).map(lambda number: Fraction(number, 16))


def test_a_strip_at_a_bowed_wall_by_hand():
    """3/4 and 1/4 extra is 1; held at the wall it laps the case by 1 − 7/16 = 9/16."""
    said = reckon(KEY, **STRIP)
    assert said["verdict"] == "Rip 1″, set the compass to"
    assert texts(said)["compass"] == "9/16″"
    assert [(each["label"], each["text"]) for each in said["by_key"]["widths"]["items"]] == [
        ("0″ up", "3/4″"),
        ("38″ up", "7/16″"),
        ("76″ up", "5/8″"),
    ]
    assert texts(said)["least"] == "7/16″"
    (part,) = said["parts"]
    assert (part["length"]["text"], part["width"]["text"]) == ("76″", "1″")


def test_without_extra_the_compass_is_set_to_the_widest_gap_beside_the_strip():
    """The rule of the trade: 3/4 − 7/16 = 5/16 is the widest gap with the strip at the wall
    (common practice, no source)."""
    assert texts(reckon(KEY, **STRIP, spare="0"))["compass"] == "5/16″"


def test_a_lap_is_left_on_the_strip_everywhere():
    said = reckon(KEY, **STRIP, lap="1/2")
    assert texts(said)["rip"] == "1 1/2″"
    assert texts(said)["compass"] == "9/16″"
    assert items(said, "widths") == [Fraction(5, 4), Fraction(15, 16), Fraction(9, 8)]


def test_a_strip_of_ones_own_changes_the_compass_and_not_what_is_left():
    said = reckon(KEY, **STRIP, strip="2")
    assert texts(said)["compass"] == "1 9/16″"
    assert texts(said)["least"] == "7/16″"


@given(
    st.lists(SIXTEENTHS, min_size=2, max_size=6),
    SIXTEENTHS,
    SIXTEENTHS,
    st.integers(100, 1000).map(lambda number: Fraction(number, 16)),
    st.sampled_from(("1/4", "1/16", "1 mm")),
)
def test_a_strip_that_is_marked_as_told_goes_in_and_closes_the_gap(gaps, lap, spare, long, mark):
    """At every height: no wider than gap and lap, and short of it by a mark of the compass at
    most; the widths that are told go in as well."""
    if max(gaps) + lap == 0:
        return
    said = reckon(
        KEY,
        {"mark": mark},
        gaps=[inches(each) for each in gaps],
        long=inches(long),
        lap=inches(lap),
        spare=inches(spare),
    )["by_key"]
    wall = [(long * at / (len(gaps) - 1), gap) for at, gap in enumerate(gaps)]
    wide, compass = (Fraction(said[key]["mark"]) for key in ("rip", "compass"))
    for step in range(41):
        height = long * Fraction(step, 40)
        left = scribed(wall, lap, wide, compass, height)
        assert 0 <= along(wall, height) + lap - left < Fraction(1, 60)
    told = [Fraction(each["mark"]) for each in said["widths"]["items"]]
    room = [gap + lap for gap in gaps if gap + lap]
    assert all(0 <= have - each < Fraction(1, 4) for each, have in zip(told, room, strict=True))


def inches(length):
    return f"{length} in"


def test_a_strip_at_the_gaps_that_the_space_foresees_is_as_wide_as_it_says():
    """The question of the space, told of the same bowed wall before the case is there."""
    rows = [
        {"height": up, "left": left, "right": "20"}
        for up, left in (("0", "20"), ("40", "19 3/4"), ("80", "19 7/8"))
    ]
    case = {"built": "walls", "widths": ["40", "39 3/4"], "left_height": "90", "scribe": "1/4"}
    space = reckon("space", **case, bowed="line", off_line=rows)["by_key"]["strips"]["items"]
    left = [each["text"] for each in space if each["label"].startswith("Left")]
    said = reckon(KEY, gaps=left, long="80")
    assert [each["text"] for each in said["by_key"]["widths"]["items"]] == left


@pytest.mark.parametrize(
    ("gaps", "told"),
    [(["1/2", "1/8"], "only 1/8″ of the strip"), (["1/2", "0"], "nothing of the strip")],
)
def test_a_strip_that_nearly_runs_out_is_warned_of(gaps, told):
    said = reckon(KEY, gaps=gaps, long="30")
    assert told in said["cautions"][0]
    assert [each["field"] for each in said["fixes"]] == ["lap"]
    assert reckon(KEY, **STRIP)["fixes"] == []


@pytest.mark.parametrize(
    ("values", "field", "words"),
    [
        ({"gaps": ["1/2"]}, "gaps", "One gap doesn’t show"),
        ({"gaps": ["0", "0"]}, "gaps", "There’s no gap"),
        ({"strip": "5/8"}, "strip", "doesn’t reach the wall"),
    ],
)
def test_what_can_not_be_scribed_is_refused(values, field, words):
    assert words in errors(ask(KEY, **STRIP | values))[field]["message"]


def test_the_narrowest_strip_that_the_remedy_names_is_taken():
    remedy = errors(ask(KEY, **STRIP | {"strip": "1/2"}))["strip"]["remedy"]
    assert remedy == "Use one 3/4″ wide or more."
    assert ask(KEY, **STRIP, strip="3/4")["ok"]


def test_the_drawn_strip_is_as_wide_as_it_is_told_at_each_height():
    shapes = reckon(KEY, **STRIP)["drawing"]["shapes"]
    told = [each for each in shapes if each["kind"] == "dimension"]
    drawn = {each["text"]: each["to"][0] - each["from"][0] for each in told}
    assert set(drawn) == {"3/4″", "7/16″", "5/8″"}
    assert drawn["7/16″"] / drawn["3/4″"] == pytest.approx(7 / 12, abs=1e-4)
