"""The cuts by board: what comes out of one stock together, longest first, with what it still takes.

By hand, with the usual kerf of 1/8: 30 + 30 + 12 and two kerfs between them are 72 1/4.
"""

from fractions import Fraction

import pytest
from asking import reckon
from hypothesis import given
from hypothesis import strategies as st
from projects import acts, ask, begun, changed, view

OAK = {"material": "White oak"}


def by_hand(name, length, *, width="2 1/4", thickness="3/4", count="1", end="square", about=None):
    """A piece by hand, as an act."""
    values = {
        "count": count,
        "length": length,
        "width": width,
        "thickness": thickness,
        "left_end": end,
        "right_end": end,
    }
    told = {} if about is None else {"about": {"piece": about}}
    return ("keep_line", {"name": name, "reckoner": "piece_by_hand", "values": values} | told)


def cabinet():
    """Rails and stiles of two oak boards and a birch one, and a strip of which nothing is known."""
    return acts(
        begun(),
        by_hand("Strip", "90", width="", thickness=""),
        by_hand("Stile", "30", about=OAK),
        by_hand("Rail", "12", about={"material": "white OAK"}),
        by_hand("Post", "30", about=OAK),
        by_hand("Panel", "40", width="11", about={"material": "Birch"}),
        by_hand("Cleat", "20", thickness="1/2", about=OAK),
    )


def boards(document):
    """Each group of the cuts by board: its sentence and the names of its pieces."""
    seen = view(document, order="board")
    names = {(each["entry"], each["part"]): each["name"] for each in seen["pieces"]}
    return [
        (group["said"], [names[each["entry"], each["part"]] for each in group["pieces"]])
        for group in seen["cuts"]["groups"]
    ]


def test_a_board_is_one_material_width_and_thickness_and_what_is_not_told_of_stands_last():
    assert boards(cabinet()) == [
        ("Birch, 11″ × 3/4″: 1 cut, 40″", ["Panel"]),
        (
            "White oak, 2 1/4″ × 3/4″: 3 cuts, 72 1/4″ end to end with kerfs",
            ["Post", "Stile", "Rail"],
        ),
        ("White oak, 2 1/4″ × 1/2″: 1 cut, 20″", ["Cleat"]),
        ("Material and size unknown: 1 cut", ["Strip"]),
    ]


def test_what_a_piece_is_cut_of_is_told_of_it_or_else_asked_in_its_question():
    """Plywood is the usual material of a carcass; its back is 1/4 thick."""
    stocks = {each["name"]: each["stock"] for each in view(cabinet())["pieces"]}
    assert stocks["Rail"] == "White OAK, 3/4″ thick"
    assert stocks["Strip"] == "No material named"
    size = {"width": "36", "height": "32", "depth": "15", "thickness": "23/32"}
    about = {"about": {"side": {"material": "Birch"}}}
    case = {"name": "Case", "reckoner": "carcass", "values": size} | about
    pieces = view(acts(begun(), ("keep_line", case)))["pieces"]
    stocks = {each["part"]: each["stock"] for each in pieces}
    assert stocks["side"] == "Birch, 23/32″ thick"
    assert stocks["top"] == "Plywood, 23/32″ thick"
    assert stocks["back"] == "Plywood, 1/4″ thick"


def test_what_is_cut_is_no_longer_needed():
    cut = changed(cabinet(), "cut", id="2", part="piece", by=1)
    assert "2 cuts, 42 1/8″ end to end with kerfs" in boards(cut)[1][0]
    for name in ("3", "4"):
        cut = changed(cut, "cut", id=name, part="piece", by=1)
    assert boards(cut)[1][0] == "White oak, 2 1/4″ × 3/4″: all cut"
    spoiled = changed(cut, "spoil", id="3", part="piece")
    assert boards(spoiled)[1][0].endswith("1 cut, 12″")


def test_a_piece_comes_out_of_a_board_as_large_as_it_is_before_it_is_finished():
    """2 + 1/4 wide and 5/8 + 1/8 thick is the stock of the others; 20 + 1/2 is what it takes."""
    rough = {"rough_length": "1/2", "rough_width": "1/4", "rough_thickness": "1/8"}
    document = acts(
        cabinet(), by_hand("Brace", "20", width="2", thickness="5/8", about=OAK | rough)
    )
    said, names = boards(document)[1]
    assert names == ["Post", "Stile", "Brace", "Rail"]
    assert said.endswith("4 cuts, 92 7/8″ end to end with kerfs")
    tally = [(each["material"], each["width"], each["count"]) for each in view(document)["tally"]]
    assert ("White oak", "2 1/4″", 4) in [
        (wood, width["text"], number) for wood, width, number in tally if width
    ]


@given(
    thousandths=st.integers(20_000, 60_000),
    rough=st.sampled_from(["1/2", "1/3", "0.1"]),
    rounding=st.sampled_from(["nearest", "down", "up"]),
)
def test_a_blank_is_told_no_shorter_than_it_has_to_be(thousandths, rough, rounding):
    """40.143 and a half are 40.643: on sixteenths that reaches 40 11/16, and 40 5/8 does not."""
    length = Fraction(thousandths, 1000)
    about = OAK | {f"rough_{measure}": rough for measure in ("length", "width", "thickness")}
    document = acts(
        begun(),
        ("set", {"settings": {"unit": "in", "rounding": rounding}}),
        by_hand("Rail", str(float(length)), width="2.3", thickness="0.7", about=about),
    )
    told = view(document)["pieces"][0]["rough"]
    wanted = {"length": length, "width": Fraction("2.3"), "thickness": Fraction("0.7")}
    for measure, size in wanted.items():
        mark, asked = Fraction(told[measure]["mark"]), size + Fraction(rough)
        assert asked <= mark < asked + Fraction(1, 16)


def test_a_blank_that_is_no_longer_at_first_is_told_as_its_piece_is():
    about = OAK | {"rough_length": "1/2"}
    document = acts(begun(), by_hand("Rail", "40.143", width="2.3", about=about))
    (piece,) = view(document)["pieces"]
    assert piece["rough"]["length"]["text"] == "40 11/16″"
    assert piece["rough"]["width"]["text"] == piece["width"]["text"]


def test_a_board_of_which_only_some_is_known_says_what_it_is():
    document = acts(
        begun(),
        by_hand("Wide", "30", thickness=""),
        by_hand("Thick", "20", width=""),
        by_hand("Named", "10", width="", thickness="", about=OAK),
    )
    assert [said for said, _ in boards(document)] == [
        "No material, 2 1/4″ wide: 1 cut, 30″",
        "No material, 3/4″ thick: 1 cut, 20″",
        "White oak: 1 cut, 10″",
    ]


def test_equal_lengths_and_equal_ends_stand_together_on_a_board():
    document = acts(
        begun(),
        by_hand("First", "30"),
        by_hand("Second", "30", end="45"),
        by_hand("Third", "30"),
        by_hand("Fourth", "31"),
    )
    names = boards(document)[0][1]
    assert names == ["Fourth", "Second", "First", "Third"]


LENGTHS = st.lists(st.integers(8, 400), min_size=1, max_size=6)


@given(LENGTHS, LENGTHS)
def test_each_piece_stands_on_one_board_and_a_board_sets_the_stop_once_for_a_length(oak, birch):
    """Lengths in eighths of an inch; the sum is made anew from the numbers that were typed."""
    document = acts(
        begun(),
        *(
            by_hand(f"{wood} {at}", f"{eighths}/8", about={"material": wood})
            for wood, lengths in (("Oak", oak), ("Birch", birch))
            for at, eighths in enumerate(lengths)
        ),
    )
    found = {said.split(",")[0]: (said, names) for said, names in boards(document)}
    for wood, lengths in (("Oak", oak), ("Birch", birch)):
        said, names = found[wood]
        in_order = [lengths[int(name.split()[1])] for name in names]
        assert sorted(names) == sorted(f"{wood} {at}" for at in range(len(lengths)))
        assert in_order == sorted(lengths, reverse=True)
        total = Fraction(sum(lengths), 8) + Fraction(len(lengths) - 1, 8)
        whole, rest = divmod(total, 1)
        text = " ".join(str(part) for part in (whole, rest) if part)
        assert f", {text}″" in said


@pytest.mark.parametrize("order", ["board", "part"])
def test_the_shop_sheet_has_the_cuts_by_set_up_whatever_the_order_at_the_saw(order):
    document = cabinet()
    seen = view(document, order=order)
    assert seen["cuts"]["order"] == order
    assert seen["set_ups"] == view(document)["cuts"]["groups"]


@pytest.mark.parametrize("order", ["length", ""])
def test_an_order_that_is_none_is_refused(order):
    refused = ask("view", cabinet(), order=order)["error"]
    assert refused["field"] == "order"
    assert "board" in refused["remedy"]


def test_slanting_cuts_take_more_than_the_blade_is_wide_so_that_it_is_the_least():
    rails = [by_hand(name, "30", end="45", about=OAK) for name in ("Top rail", "Low rail")]
    (said, _), *_ = boards(acts(begun(), *rails))
    assert said == "White oak, 2 1/4″ × 3/4″: 2 cuts, at least 60 1/8″ end to end with kerfs"


MOLDING = (
    "keep_line",
    {
        "name": "Molding",
        "reckoner": "molding_run",
        "values": {
            "walls": [{"length": "15 1/4"}, {"length": "36 7/8"}, {"length": "15 1/4"}],
            "layers": [{"projection": "3/4"}, {"projection": "1/2"}],
        },
    },
)


@pytest.mark.parametrize("order", ["set-up", "board", "part"])
def test_no_order_brings_the_second_layer_of_a_molding_before_the_first(order):
    """The question itself says: one layer after the other, fit it before the next is cut."""
    document = acts(begun(), MOLDING, by_hand("Stile", "45"), by_hand("Rail", "12"))
    advice = [each["text"] for each in reckon("molding_run", **MOLDING[1]["values"])["answers"]]
    assert any("fit it before you cut the next" in each for each in advice)
    groups = view(document, order=order)["cuts"]["groups"]
    keys = [each["part"] for group in groups for each in group["pieces"]]
    layers = [key.split("_")[1] for key in keys if key.startswith("layer")]
    assert layers == ["1"] * 3 + ["2"] * 3
    assert keys.count("piece") == 2
    if order != "part":
        later = [each for each in groups if each["pieces"][0]["part"].startswith("layer_2")]
        assert {each["waits"] for each in later} == {"fit layer 1 first"}
        assert all(each["said"].endswith("; fit layer 1 first") for each in later)


def said_by_stop(document):
    """What is said of each stop."""
    return [group["said"] for group in view(document)["cuts"]["groups"]]


def test_a_piece_judged_wrong_does_not_stand_beside_all_cut():
    """Cut at 30, then asked for at 31: 1 too short; at 29: 1 can be cut down."""
    document = acts(
        begun(),
        ("keep_reading", {"name": "Alcove", "text": "30"}),
        by_hand("Rail", "Alcove"),
        by_hand("Stile", "12"),
    )
    for line in ("2", "3"):
        document = changed(document, "cut", id=line, part="piece", by=1)
    assert said_by_stop(document) == ["Stop at 30″: all cut", "Stop at 12″: all cut"]
    longer = changed(document, "correct", id="1", text="31")
    assert said_by_stop(longer) == ["Stop at 31″: 1 too short", "Stop at 12″: all cut"]
    shorter = changed(document, "correct", id="1", text="29")
    assert said_by_stop(shorter) == ["Stop at 29″: 1 to cut down", "Stop at 12″: all cut"]


def test_what_is_left_is_told_beside_what_is_wrong():
    document = acts(
        begun(),
        ("keep_reading", {"name": "Alcove", "text": "30"}),
        by_hand("Rail", "Alcove", count="3"),
    )
    document = changed(document, "cut", id="2", part="piece", by=1)
    document = changed(document, "correct", id="1", text="31")
    assert said_by_stop(document) == ["Stop at 31″: 2 cuts, 1 too short"]
