"""Boards as one looks at them: a picture has the names and numbers of what is said of it."""

from asking import reckon, texts

from sawside.reckoners import RECKONERS


def labels(said, role=None):
    """The texts on and beside the wood, without dimensions; those of a `role` alone."""
    return [
        shape["text"]
        for shape in said["drawing"]["shapes"]
        if shape["kind"] == "label" and role in {None, shape["role"]}
    ]


def crossed(said):
    """(from, to) along the wood of each stretch that is crossed out."""
    lines = [shape for shape in said["drawing"]["shapes"] if shape.get("role") == "hidden"]
    ends = [tuple(sorted((line["from"][0], line["to"][0]))) for line in lines]
    assert all(ends.count(each) == 2 for each in ends)
    return sorted(set(ends))


def example(key, **more):
    return reckon(key, **RECKONERS[key].example | more)


def test_sticks_are_called_in_the_picture_what_the_list_calls_them():
    said = example("sticks")
    names = labels(said, "name")
    assert names == ["Sticks 1 and 2: 8 ft", "Stick 3: 8 ft"]
    assert all(name.split(":")[0] in texts(said)["list"] for name in names)


def test_pieces_that_have_no_room_for_their_length_are_told_below_their_stick():
    """By hand: of 96 in. in 290 pixels a piece of 16 1/2 has 50, its length takes more."""
    assert {"2 × 30 1/4″ stile", "2 × 16 1/2″ rail", "61 3/4″ left"} <= set(
        labels(example("sticks"))
    )
    many = reckon("sticks", pieces=[{"length": "3", "count": "30", "name": "peg"}], sold="8 ft")
    assert "30 × 3″ peg" in labels(many)


def test_pieces_at_the_end_of_a_stick_are_told_although_their_text_is_wider_than_they():
    mitered = [
        {"length": "22", "count": "4"},
        {"length": "9 1/2", "count": "2", "miters": "one", "name": "return"},
    ]
    said = reckon("sticks", ends="mitered", mitered=mitered, profile="molding", sold="16 ft")
    assert {"2 × 9 1/2″", "4 × 22″"} <= {each.removesuffix(" return") for each in labels(said)}


def test_every_length_of_the_picture_of_sticks_is_one_of_the_list():
    said = reckon(
        "sticks",
        pieces=[{"length": "22", "count": "3"}, {"length": "9", "count": "3", "name": "stile"}],
        on_hand=[{"length": "60", "count": "1", "bad": "12 to 15"}],
    )
    for text in labels(said, "note"):
        assert text in texts(said)["list"]


def test_bad_wood_of_a_stick_is_crossed_out():
    said = reckon(
        "sticks",
        pieces=[{"length": "24"}, {"length": "38"}],
        on_hand=[{"length": "80", "bad": "12 to 15, 40 to 41 1/2"}],
    )
    assert crossed(said) == [(12, 15), (40, 41.5)]
    assert "crossed out" in said["drawing"]["words"]


def test_wood_on_hand_is_called_in_the_picture_by_its_number_and_all_its_sizes():
    said = reckon(
        "wood_on_hand",
        wood=[
            {"thickness": "13/16", "width": "6 3/8", "length": "85 1/2", "material": "cherry"},
            {"form": "stick", "stick_width": "2 1/2", "length": "12 ft", "count": "3"},
        ],
    )
    assert labels(said, "name") == [
        "Wood 1: 13/16″ × 6 3/8″ × 85 1/2″, cherry",
        "Wood 2: 3 of 2 1/2″ × 144″",
    ]


def test_one_piece_of_wood_on_hand_needs_no_number():
    assert labels(example("wood_on_hand"), "name") == ["13/16″ × 6 3/8″ × 85 1/2″, cherry"]


def test_bad_wood_on_hand_is_crossed_out_and_told_from_which_end_on():
    said = example("wood_on_hand")
    assert crossed(said) == [(0, 1.5), (40, 44)]
    assert labels(said, "note") == ["0 to 1 1/2″", "40″ to 44″"]
    assert "from the left end" in said["drawing"]["words"]


def test_no_note_of_bad_wood_lies_on_another_stretch_of_it():
    """A note beside a stretch is between it and the next one, in as wide letters as there are."""
    said = reckon(
        "wood_on_hand",
        wood=[
            {"thickness": "1", "width": "6", "length": "96", "bad": "10 to 12, 14 to 15, 90 to 95"}
        ],
    )
    pixel = 96 / 290
    for shape in said["drawing"]["shapes"]:
        if shape.get("role") == "note":
            wide, at = len(shape["text"]) * 7.5 * pixel, shape["at"][0]
            start, end = (at, at + wide) if shape["align"] == "start" else (at - wide, at)
            assert start >= 0
            assert end <= 96
            assert not any(start < bad[1] and bad[0] < end for bad in crossed(said))


def test_a_sheet_is_called_in_feet_both_ways():
    wood = [{"sold": "sheet", "thickness": "3/4", "width": "4 ft", "length": "8 ft"}]
    assert labels(reckon("wood_to_buy", wood=wood)) == ["3/4″ × 4 ft × 8 ft sheet"]


def test_strips_of_a_panel_are_numbered_as_the_boards_that_the_verdict_names():
    said = reckon(
        "glued_panel",
        length="34 1/2",
        width="15 3/4",
        thickness="3/4",
        boards=["5 1/2", "6 1/4", "4", "3 1/2", "7"],
    )
    assert said["verdict"] == "Glue up boards 1, 3 and 5"
    assert labels(said, "note")[:3] == ["Board 1", "Board 3", "Board 5"]


def test_one_board_that_is_wide_enough_is_no_glue_up():
    said = reckon("glued_panel", length="34 1/2", width="15 3/4", thickness="3/4", boards=["17"])
    assert "strips" not in said["drawing"]["words"]
    assert not any("triangle" in each for each in said["parts"][0]["about"])


def test_a_triangle_is_drawn_across_all_strips_of_a_panel():
    """The mark of the trade for which strip goes where: its sides cross every glue line."""
    said = example("glued_panel")
    wide = 3 * 5.375
    sides = [s for s in said["drawing"]["shapes"] if s.get("role") == "break"]
    places = [place for line in sides for place in (line["from"], line["to"])]
    assert len(sides) == 3
    assert all(places.count(place) == 2 for place in places)
    assert 0 < min(y for _, y in places) < 5.375
    assert 2 * 5.375 < max(y for _, y in places) < wide


def dimensions(said, role):
    """{text: (x of its start, which way its line is away)} of the dimensions of a role."""
    return {
        shape["text"]: (shape["from"][0], shape["offset"])
        for shape in said["drawing"]["shapes"]
        if shape["kind"] == "dimension" and shape["role"] == role
    }


def test_many_small_pieces_of_a_sheet_are_told_together_and_each_is_in_one_block():
    """By hand: seven strips of 6 take 9 pieces of 10 each, the last of them 6: 54 and 6."""
    piece = {"length": "10", "width": "6", "count": "60", "name": "drawer side"}
    said = reckon("sheets", pieces=[piece], trim="1/4")
    assert "54 × drawer side" in labels(said)
    blocks = [shape for shape in said["drawing"]["shapes"] if shape.get("role") == "stock"]
    assert len(blocks) == 2


def test_a_block_of_pieces_never_tells_the_size_of_one_without_how_many():
    pieces = [
        {"length": "30", "width": "7", "count": "4", "grain": "side", "name": "front"},
        {"length": "20", "width": "20", "count": "3", "grain": "free"},
    ]
    told = labels(reckon("sheets", pieces=pieces))
    assert "20″ × 20″" not in told
    assert "3 of 20″ × 20″" in told


def test_widths_that_are_ripped_first_are_on_the_other_side_than_the_sheets_own():
    said = reckon(
        "sheets",
        {"unit": "mm", "display": "mm", "mark": "1 mm"},
        pieces=[
            {"length": "900", "width": "400", "count": "4", "name": "side"},
            {"length": "700", "width": "390", "count": "4", "name": "shelf"},
        ],
        trim="5",
    )
    ripped, given = dimensions(said, "answer"), dimensions(said, "given")
    assert list(ripped) == ["400 mm", "807 mm"]
    assert {x for x, _ in ripped.values()} == {0}
    assert round(given["1220 mm"][0] * 25.4) == 2440
