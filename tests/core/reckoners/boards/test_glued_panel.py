"""A glued-up panel: the strips that are told, jointed and glued, make it, and no fewer would."""

import re
from fractions import Fraction

import pytest
from asking import as_number, ask, errors, exact, inches, items, reckon, texts
from hypothesis import assume, given
from hypothesis import strategies as st

from sawside.boards.widths import fewest
from tests.core.oracles import glued_up

PANEL = {"length": "34 1/2", "width": "15 3/4", "thickness": "3/4"}


def panel(*boards, settings=None, **more):
    return reckon("glued_panel", settings, boards=list(boards), **PANEL | more)


def refused(*boards, **more):
    return errors(ask("glued_panel", boards=list(boards), **PANEL | more))


def pieces(said):
    """(length, width, thickness, count) of the parts, on the marks that they are cut to."""
    return [
        (
            *(Fraction(part[each]["mark"]) for each in ("length", "width", "thickness")),
            part["count"],
        )
        for part in said["parts"]
    ]


def test_strips_of_one_width_are_ripped_alike_and_a_bit_wide():
    """By hand: 15 3/4 + 1/4 = 16; 6 − 2 × 1/16 = 5 7/8; 16 ÷ 5 7/8 is under 3; 16 ÷ 3 + 1/8 = 5
    11/24, up to 5 1/2; jointed 5 3/8, glued up 16 1/8."""
    said = panel("6")
    assert said["verdict"] == "3 strips, ripped to ≈ 5 1/2″"
    assert (texts(said)["strip"], texts(said)["glued"]) == ("5 3/8″", "16 1/8″")
    assert pieces(said) == [(Fraction(71, 2), Fraction(11, 2), Fraction(13, 16), 3)]
    assert panel("5 1/2")["verdict"] == "3 strips, ripped to 5 1/2″"


def test_a_hair_more_takes_another_strip():
    """By hand: 3 × 5 3/8 = 16 1/8 less 1/4 is 15 7/8."""
    assert texts(panel("5 1/2", width="15 7/8"))["strips"] == "3"
    assert texts(panel("5 1/2", width="15 57/64"))["strips"] == "4"


def test_no_strip_is_ripped_wider_than_its_board():
    """By hand: 5.35 + 2 × 1/16 = 5.475 is on no sixteenth, and a mark up is more than the board."""
    said = panel("5.475", width="15.8")
    assert texts(said)["rip"] == "5.475″"
    assert panel("5.475", width="15.79")["by_key"]["rip"]["exact"] == "219/40"


def test_boards_of_their_own_widths_are_chosen_the_fewest_then_the_least_over():
    """By hand, jointed: 5 3/8, 6 1/8, 3 7/8, 3 3/8, 6 7/8; of three, 5 3/8 + 3 7/8 + 6 7/8 is 16
    1/8, and 6 1/8 + 3 3/8 + 6 7/8 already 16 3/8."""
    said = panel("5 1/2", "6 1/4", "4", "3 1/2", "7")
    assert said["verdict"] == "Glue up boards 1, 3 and 5"
    assert texts(said)["glued"] == "16 1/8″"
    assert [part["name"] for part in said["parts"]] == ["Board 1", "Board 3", "Board 5"]
    assert [part["width"]["text"] for part in said["parts"]] == ["5 1/2″", "4″", "7″"]


def test_a_board_that_is_wide_enough_needs_no_glue():
    said = panel("17")
    assert said["verdict"] == "One board will do, ripped to 16 1/8″"
    assert "lines" not in texts(said)
    assert "clamps" not in texts(said)
    assert panel("4", "17")["verdict"] == "Board 2 is wide enough by itself"


def test_several_panels_take_so_many_strips_of_one_size():
    said = panel("5 1/2", panels="2")
    assert said["verdict"].startswith("6 strips")
    assert [part["count"] for part in said["parts"]] == [6]
    assert texts(said)["strips"] == "3"


def test_clamps_and_cauls_are_as_many_as_a_shop_sets():
    """Common practice, no source: 35 1/2 less 2 at each end is 31 1/2; at most 10 3/4 apart, twice
    5 3/8, that is 3 spaces. Cauls at most 18 apart: 2 spaces."""
    assert texts(panel("5 3/8", joint="0", extra_width="3/8"))["clamps"] == (
        "4 clamps 10 1/2″ on center, 2 under and 2 over; 3 pairs of cauls across"
    )
    assert texts(panel("5 1/2", spacing="6"))["clamps"].startswith(
        "7 clamps 5 1/4″ on center, 4 un"
    )
    assert texts(panel("5 1/2"))["lines"] == "2"


def test_narrow_outer_strips_get_a_batten_and_not_a_clamp_every_hand():
    """Common practice, no source: 97 less 2 at each end is 93, 6 apart 16 spaces of 5 13/16; their
    half, 2 29/32, is 1 15/32 more than the strip of 1 7/16."""
    said = panel("2", length="96", width="4", thickness="1 1/2")
    assert texts(said)["strip"] == "1 7/16″"
    assert texts(said)["clamps"] == (
        "17 clamps 5 13/16″ on center, 9 under and 8 over, against a stiff batten at least "
        "1 15/32″ wide along each edge; 7 pairs of cauls across"
    )
    assert "batten" not in texts(panel("5 1/2"))["clamps"]


def test_boards_measured_jointed_lose_nothing():
    said = panel("5 1/2", joint="0", extra_width="0", width="16 1/2", extra_length="0")
    assert (texts(said)["rip"], texts(said)["long"]) == ("5 1/2″", "34 1/2″")
    assert texts(said)["glued"] == "16 1/2″"


def test_the_lay_up_is_told_with_each_strip_and_drawn_on_the_end():
    def rings(said):
        return [shape for shape in said["drawing"]["shapes"] if shape.get("role") == "hidden"]

    def crests(said):
        """The y of the middle of each ring, strip by strip."""
        return [shape["to"][1] for shape in rings(said)[3::8]]

    matched, turned = panel("5 1/2"), panel("5 1/2", grain="alternate")
    assert len(set(crests(matched))) == 1
    assert len(set(crests(turned))) == 2
    assert any("triangle" in each for each in matched["parts"][0]["about"])
    assert any("Turn every other strip" in each for each in turned["parts"][0]["about"])


def test_given_sizes_of_the_drawing_open_their_fields():
    shapes = panel("5 1/2")["drawing"]["shapes"]
    fields = {shape["field"]: shape["text"] for shape in shapes if shape.get("field")}
    assert fields == {"length": "34 1/2″", "width": "15 3/4″"}


@pytest.mark.parametrize(
    ("boards", "more", "field", "says"),
    [
        (["5 1/2"], {"joint": "1", "boards": ["2"]}, "joint", "takes all of board 1"),
        (["5", "4"], {}, "boards", "8 3/4″ wide together, and you need 16″"),
        (["5", "6", "7"], {"panels": "2"}, "panels", "one panel at a time"),
        (["1/2"], {"width": "60"}, "boards", "The most is 60"),
        ([], {}, "boards", "blank"),
        (["5"], {"length": ""}, "length", "blank"),
        (["5"], {"thickness": "0"}, "thickness", "at least 1/8"),
    ],
)
def test_what_makes_no_panel_says_so_beside_its_field(boards, more, field, says):
    said = refused(*more.pop("boards", boards), **more)[field]
    assert says in said["message"]
    assert said["remedy"].endswith(".")


def test_in_millimeters_the_usual_is_in_millimeters_too():
    """By hand: 400 + 6 = 406, 140 − 3 = 137, 406 ÷ 3 = 135.33, up to 136."""
    said = reckon("glued_panel", {"unit": "mm"}, length="876", width="400", boards=["140"])
    assert said["verdict"] == "3 strips, ripped to ≈ 139 mm"
    assert texts(said)["long"] == "901 mm"
    assert texts(said)["thick"] == "19.5 mm"


sixteenths = st.integers(16, 160)


@given(
    st.integers(16, 640),
    st.integers(8, 480),
    st.integers(24, 160),
    st.integers(0, 3),
    st.sampled_from(["1/4", "1/8", "1/16", "1/64", "1 mm"]),
)
def test_what_is_told_makes_the_panel_and_one_strip_fewer_would_not(long, wide, board, joint, mark):
    length, width, board, joint = (Fraction(each, 16) for each in (long, wide, board, joint))
    values = {"length": inches(length), "width": inches(width), "joint": inches(joint)}
    said = ask("glued_panel", {"mark": mark}, thickness="3/4", boards=[inches(board)], **values)
    if not said["ok"]:
        assert (width + Fraction(1, 4)) / (board - 2 * joint) > 60
        return
    made = glued_up.put_together(pieces(said), joint=joint)
    assert all(
        have >= need for have, need in zip(made, (length + 1, width, Fraction(3, 4)), strict=True)
    )
    [(_, rip, _, number)] = pieces(said)
    assert rip <= board
    assert made[1] >= width + Fraction(1, 4)
    assert (number - 1) * (board - 2 * joint) < width + Fraction(1, 4)
    assert exact(said["by_key"]["glued"]) == made[1]


@given(st.lists(sixteenths, min_size=2, max_size=8), st.integers(16, 800))
def test_the_boards_that_are_chosen_are_the_fewest_and_have_the_least_over(widths, needed):
    chosen, best = fewest(widths, needed), glued_up.fewest(widths, needed)
    if best is None:
        assert chosen is None
    else:
        assert (len(chosen), sum(widths[place] for place in chosen)) == best


@given(st.integers(12, 96), st.integers(2, 9), st.lists(st.integers(2, 9), max_size=5))
def test_clamps_reach_every_place_of_the_first_glue_line(long, first, others):
    """The spread of 45 degrees is common practice, no source."""
    boards = [first, *others, first]
    width = sum(boards)
    said = panel(
        *map(str, boards),
        length=str(long),
        width=str(width),
        joint="0",
        extra_width="0",
        extra_length="0",
    )
    assume("clamps" in said["by_key"])
    number = int(re.match(r"\d+", texts(said)["clamps"])[0])
    batten = re.search(r"at least (?:≈ )?([\d /]+)″", texts(said)["clamps"])
    reach = first + (as_number(batten[1]) if batten else 0)
    end = min(2, Fraction(long, 6))
    assert len(items(said, "jointed")) == len(boards)
    assert glued_up.squeezed(long, reach, end, number)
