"""Sheets to buy: what is said of a plan, in what words, and what is refused."""

import re
from fractions import Fraction

import pytest
from asking import ask, errors, reckon, texts

from sawside.reckoners import RECKONERS


def rows(*pieces):
    """Rows of pieces: (length, width, how many, more)."""
    return [
        {"length": str(length), "width": str(width), "count": str(count)} | dict(*more)
        for length, width, count, *more in pieces
    ]


def buy(*pieces, settings=None, **more):
    """The answer for pieces out of 96 × 48 inches, unless told otherwise."""
    return reckon("sheets", settings, pieces=rows(*pieces), **{"kerf": "1/8"} | more)


def test_eight_that_fill_a_sheet_exactly_need_one():
    """Worked by hand: 4 × 23 29/32 + 3 × 1/8 = 96, 2 × 23 15/16 + 1/8 = 48; a ninth needs one
    sheet more. With a kerf of 9/64 a sheet gives three, one beside the other, and 3 × 3 > 8."""
    said = buy(("23 29/32", "23 15/16", 8))
    assert said["verdict"] == "Buy 1 sheet"
    assert texts(said)["best"] == "Fewer can’t do it"
    assert "offcuts" not in said["by_key"]
    assert buy(("23 29/32", "23 15/16", 9))["verdict"] == "Buy 2 sheets"
    assert buy(("23 29/32", "23 15/16", 8), kerf="9/64")["verdict"] == "Buy 3 sheets"


def test_the_edge_trim_comes_off_every_edge():
    """Worked by hand: 2 × 23 3/4 + 1/8 = 47 5/8, and 48 − 2 × 1/4 = 47 1/2."""
    assert buy(("90", "23 3/4", 2))["verdict"] == "Buy 1 sheet"
    assert buy(("90", "23 3/4", 2), trim="1/4")["verdict"] == "Buy 2 sheets"


def test_the_grain_is_kept_unless_it_may_run_either_way():
    """Worked by hand: 47 × 90 is wider than a sheet; turned, it comes out of one."""
    said = errors(ask("sheets", pieces=rows(("47", "90", 1)), kerf="1/8"))["pieces"]
    assert said["message"].startswith("Piece 1 is 47″ × 90″")
    assert said["remedy"] == "Set its grain to either way."
    assert buy(("47", "90", 1, {"grain": "free"}))["verdict"] == "Buy 1 sheet"


def test_the_cuts_are_told_in_their_order_and_the_offcut_is_that_of_the_saw():
    """Worked by hand: rips first, so 2 × 15 and a rest of 48 − 2 × 15 1/8 = 17 3/4; each strip is
    96 long and gives two of 40: 96 − 2 × 40 1/8 = 15 3/4 are left of it. Crosscuts first, three
    and one leave 48 − 15 1/8 = 32 7/8 beside the one, which is more than a quarter of a sheet."""
    said = buy(("40", "15", 4, {"name": "side"}), first="rip")
    assert texts(said)["list"] == (
        "Sheet 1 (8 ft × 4 ft): Rip 2 × 15″ (A), 17 3/4″ left. "
        "A: crosscut 2 × 40″ side, 15 3/4″ left."
    )
    assert texts(said)["offcuts"] == "96″ × 17 3/4″; 2 × (15 3/4″ × 15″)"
    cut = buy(("40", "15", 4, {"name": "side"}), first="crosscut")
    assert texts(cut)["list"] == (
        "Sheet 1 (8 ft × 4 ft): Crosscut 40″ (A), 40″ (B), 15 3/4″ left. "
        "A: rip 3 × 15″ side, 2 5/8″ left. B: rip 15″ side, 32 7/8″ left."
    )


def test_an_offcut_too_narrow_to_save_is_waste():
    """Worked by hand, as above: 4 × 40 × 15 of 4608 are used, 96 × 17 3/4 and 2 × 15 3/4 × 15 are
    left: (4608 − 2400 − 1704 − 472 1/2) ÷ 4608 = 0.7% are lost."""
    pieces = ("40", "15", 4, {"name": "side"})
    assert texts(buy(pieces, first="rip"))["waste"].startswith("0.7%")
    said = buy(pieces, first="rip", least="16")
    assert texts(said)["offcuts"] == "96″ × 17 3/4″"
    assert texts(said)["waste"].startswith("10.9%")


def test_a_price_is_that_of_all_sheets():
    said = buy(("90", "40", 3), price="41.25")
    assert said["verdict"] == "Buy 3 sheets, $123.75"
    assert texts(said)["best"] == "Fewer can’t do it"


def test_what_is_on_hand_comes_first():
    """Worked by hand: one of 40 × 20 on hand takes one of two; both take both."""
    one = {"length": "40", "width": "20", "count": "1"}
    said = buy(("40", "20", 2), on_hand=[one])
    assert (said["verdict"], texts(said)["sheets"]) == ("Buy 1 sheet", "1")
    both = buy(("40", "20", 2), on_hand=[one | {"count": "2"}])
    assert both["verdict"] == "Nothing to buy: 2 sheets on hand will do"
    assert "Sheets 1 and 2 (40″ × 20″, on hand): one piece" in texts(both)["list"]


def test_in_millimeters_a_sheet_is_2440_by_1220():
    said = reckon("sheets", {"unit": "mm"}, pieces=rows((1200, 600, 4)), kerf="3")
    assert said["verdict"] == "Buy 1 sheet"
    assert "2440 mm × 1220 mm" in texts(said)["list"]
    assert "1200 mm" in texts(said)["list"]


def test_a_blank_kerf_is_that_of_the_settings():
    pieces = rows(("23 29/32", "23 15/16", 8))
    for kerf, verdict in (("1/8", "Buy 1 sheet"), ("9/64", "Buy 3 sheets")):
        assert reckon("sheets", {"kerf": kerf}, pieces=pieces)["verdict"] == verdict


@pytest.mark.parametrize(
    ("values", "field", "says"),
    [
        ({"pieces": rows(("100", "10", 1))}, "pieces", "Piece 1 is 100″ × 10″"),
        ({"pieces": rows(("10", "10", 10000))}, "pieces", "10,000 pieces. The most is 200."),
        ({"pieces": []}, "pieces", ""),
        (
            {"pieces": rows(("1", "1", 1)), "sheet_width": "6", "trim": "3"},
            "trim",
            "edge trims take all",
        ),
        ({"pieces": rows(("10", "5", 1)), "kerf": "2"}, "kerf", ""),
        (
            {"pieces": rows(("10", "5", 1), ("36", "1/2", 2)), "kerf": "1/2"},
            "kerf",
            "Piece 2 is 1/2″ across, no more than the blade cuts, 1/2″.",
        ),
        (
            {
                "pieces": rows(("100", "10", 2)),
                "on_hand": [{"length": "120", "width": "12", "count": "1"}],
            },
            "on_hand",
            "too large for the ones you can buy",
        ),
    ],
)
def test_what_cannot_be_planned_says_so_beside_its_field(values, field, says):
    said = errors(ask("sheets", **values))
    assert says in said[field]["message"]
    assert said[field]["remedy"]


def test_a_heavy_sheet_and_short_pieces_bring_their_cautions():
    cautions = buy(("12", "10", 4))["cautions"]
    assert any("Lift a full sheet with a helper" in each for each in cautions)
    assert not any("under 8″" in each for each in cautions)
    assert any("under 8″" in each for each in buy(("5", "4", 4))["cautions"])


def test_every_panel_is_drawn_where_it_is_cut_and_in_scale():
    """The areas of what is drawn: each panel once, and with the offcuts no more than the sheet."""
    said = reckon("sheets", **RECKONERS["sheets"].example)
    areas = {}
    for shape in said["drawing"]["shapes"]:
        if shape["kind"] == "polygon":
            (left, top), _, (right, bottom), _ = shape["points"]
            areas.setdefault(shape["role"], []).append((right - left) * (bottom - top))
    wanted = sorted([36 * 15.5] * 2 + [28.5 * 15.25] * 4)
    assert sorted(areas["stock"]) == pytest.approx(wanted)
    assert sum(areas["stock"]) + sum(areas.get("ghost", ())) <= 96 * 48
    drawn = [shape["text"] for shape in said["drawing"]["shapes"] if shape.get("text")]
    assert "Sheet 1: grain →" in drawn
    assert {"96″", "48″"} <= set(drawn)


def test_many_kinds_of_sheets_are_not_all_drawn_and_the_drawing_says_so():
    drawn = buy(*((80 + number, 40, 1) for number in range(9)))["drawing"]
    assert "The first 6 kinds of 9" in drawn["words"]
    assert len([shape for shape in drawn["shapes"] if shape.get("role") == "name"]) == 6


def test_two_hundred_pieces_are_planned():
    said = buy(*((f"{20 + n} 1/2", f"{5 + n // 3} 3/8", 10) for n in range(20)))
    bought = int(texts(said)["sheets"])
    area = sum((Fraction(41, 2) + n) * (Fraction(43, 8) + n // 3) * 10 for n in range(20))
    assert bought >= area / (96 * 48)
    assert re.fullmatch(r"Fewer can’t do it|At most 1 sheet more than needed", texts(said)["best"])


def matched(*pieces, **more):
    """The cutting list where all pieces are matched side by side."""
    rows_of = [(*each, {"grain": "side"}) for each in pieces]
    return texts(buy(*rows_of, **more))["list"]


def test_matched_pieces_are_cut_next_to_each_other_in_the_order_of_the_list():
    """Worked by hand: 6 + 9 + 6 and two kerfs are 21 1/4, and cut apart in that order; what is
    shorter is cut to its length after."""
    told = matched(("30", "6", 1), ("30", "9", 1), ("30", "6", 1), sheet_width="21 1/4")
    assert "Crosscut 30″ (A)" in told
    assert "A: rip 6″, 9″, 6″, in this order." in told
    told = matched(("30", "6", 1), ("30", "9", 1), ("24", "6", 1), sheet_width="21 1/4")
    assert "A: rip 6″, 9″, 6″ (B), in this order. B: crosscut 24″, 5 7/8″ left." in told


def test_matched_pieces_of_one_size_are_counted_and_their_order_is_told():
    assert "rip 3 × 6″" in matched(("30", "6", 3))


def test_matched_pieces_wider_together_than_a_sheet_are_told_with_their_size():
    """Worked by hand: 4 × 13 and three kerfs of 1/8 are 52 3/8."""
    pieces = rows(("30", "13", 4, {"grain": "side"}))
    said = errors(ask("sheets", pieces=pieces, kerf="1/8"))["pieces"]
    assert said["message"] == (
        "Side by side the matched pieces are 30″ × 52 3/8″, and a sheet gives 96″ × 48″."
    )
    assert said["remedy"] == "Match fewer pieces, or use a larger sheet."


def test_at_most_two_rounds_of_cuts_are_a_shorter_list_and_more_wood():
    """Worked by hand: with two rounds each piece of a strip is as wide as it."""
    pieces = (("60", "30", 1), ("34", "17", 2), ("60", "15", 1))
    free, few = (texts(buy(*pieces, first="rip", stages=stages)) for stages in ("any", "2"))
    assert ". A" in free["list"]
    assert " B: rip" not in few["list"]


def test_parts_that_one_person_handles_are_left_by_the_first_cuts():
    """Worked by hand: a rip leaves strips 96 long. Three of 30 × 9 side by side, and 60 at most:
    the first cut goes across. Two strips 96 × 20 that may be 96 long: rips come first."""
    pieces = (("30", "9", 3),)
    said = buy(*pieces, sheet_width="9", part_length="60")
    assert texts(said)["list"].startswith("Sheet 1 (8 ft × 9″): Crosscut 3 × 30″")
    short = texts(buy(("44", "20", 4), part_length="60"))["list"]
    assert short.startswith("Sheet 1 (8 ft × 4 ft): Crosscut 2 × 44″ (A)")
    narrow = texts(buy(("44", "20", 4), part_length="96", part_width="20"))["list"]
    assert narrow.startswith("Sheet 1 (8 ft × 4 ft): Rip 2 × 20″ (A)")


def test_what_no_such_cuts_free_is_told_beside_the_rule():
    said = errors(ask("sheets", pieces=rows(("90", "20", 2)), part_length="60", part_width="30"))
    assert said["part_length"]["message"] == "The first cuts leave larger parts than you allow."
    assert said["part_length"]["remedy"] == "Allow larger parts, or have them cut where you buy."


def test_what_takes_more_rounds_of_cuts_than_allowed_is_told_beside_them():
    """Worked by hand: matched strips of two lengths are ripped apart after a crosscut, and the
    shorter one is crosscut again: three rounds, and a fourth where rips come first."""
    pieces = (("30", "6", 1, {"grain": "side"}), ("24", "6", 1, {"grain": "side"}))
    said = errors(ask("sheets", pieces=rows(*pieces), stages="2"))["stages"]
    assert said["message"] == "Not every piece can be cut free that way."
    assert said["remedy"] == "Let it take as many rounds of cuts as it needs."
    assert buy(*pieces, stages="3")["verdict"] == "Buy 1 sheet"
