"""What a plan tells of its boards: cuts, drawings, letters of the parts, the buy list."""

from planned import by_hand, kept, on_hand, on_sale, planned, rails, said_of, wanted
from projects import acts, ask, begun, changed, view

from tests.core.oracles.sawn_plan import faults

SHEET = {"form": "sheet", "thickness": "23/32", "width": "48", "length": "96"}


def test_cuts_of_one_setting_stand_together_and_boards_that_share_it_are_named():
    told = planned(rails())["plan"]
    assert said_of(told)["Board 1"] == [
        "Set the stop to 30 1/4″. Crosscut 2: 2 × Stile.",
        "Set the stop to 16 1/2″. Crosscut 2: 2 × Rail.",
    ]
    assert told["groups"][0]["together"][0] == (
        "Set the stop to 60″: crosscut 2 times, 1 from Board 2 and 1 from Board 3."
    )


def test_a_sheet_is_broken_down_before_anything_is_cut_to_length():
    document = acts(begun(), on_hand(SHEET), by_hand("Side", "30", "11 1/4", "23/32", count="6"))
    told = planned(document)["plan"]
    assert told["said"] == "Nothing to buy: 6 pieces to cut from 1 sheet"
    cuts = told["groups"][0]["boards"][0]["cuts"]
    assert [cut["way"] for cut in cuts] == sorted((cut["way"] for cut in cuts), reverse=True)
    assert cuts[0]["said"].startswith("Set the fence to 11 1/4″. Rip ")
    assert [piece for cut in cuts for piece in cut["pieces"]] == [
        {"entry": "2", "part": "piece"}
    ] * 6


def test_bad_wood_in_between_is_crosscut_at_and_off_the_end_and_slivers_go_on_no_pile():
    """By hand: the first blade is in the bad wood, 44 − 40 1/8 = 3 7/8 of it are left on the end;
    96 − 44 = 52, less the stile and a kerf 7/8, and 40 less the rail and a kerf 3/8."""
    document = acts(
        begun(),
        on_hand({"width": "2 1/4", "bad": "40 to 44"}),
        by_hand("Rail", "39 1/2"),
        by_hand("Stile", "51"),
    )
    (board,) = planned(document)["plan"]["groups"][0]["boards"]
    said = {cut["said"]: cut["pile"] for cut in board["cuts"]}
    assert said == {
        "Crosscut at 40″, clear of the bad wood.": "40″ × 2 1/4″",
        "Crosscut 3 7/8″ of bad wood off the end.": "",
        "Set the stop to 51″. Crosscut 1: Stile.": "",
        "Set the stop to 39 1/2″. Crosscut 1: Rail.": "",
    }


def test_narrow_and_short_cuts_say_how_they_are_held():
    document = acts(begun(), on_hand(SHEET), by_hand("Cleat", "5", "2", "23/32", count="2"))
    said = [each for cuts in said_of(planned(document)["plan"]).values() for each in cuts]
    assert any("Narrow rip: use a push block." in each for each in said)
    assert any("Under 8″: clamp it" in each for each in said)


def test_the_buy_list_is_a_text_to_share_and_a_table():
    wood = {
        "sold": "sheet",
        "length": "96",
        "width": "48",
        "thickness": "23/32",
        "price": "62.50",
        "sheet_per": "piece",
    }
    document = acts(begun(), on_sale(wood), by_hand("Side", "30", "23 3/4", "23/32", count="7"))
    told = planned(document)["plan"]
    assert told["cost"] == "$125.00"
    assert told["text"].splitlines()[-2:] == ["Total $125.00", told["waste"]]
    table = ask("csv", kept(document), what="buy")["text"].splitlines()
    assert table[1].endswith(",96,48,0.71875,62.50,125.00")
    assert ask("take_csv", document, what="buy", text="Count\r\n1")["ok"] is False


def test_the_drawing_shows_each_piece_where_it_is_sawn():
    document = kept(rails())
    boards = [b for group in view(document)["plan"]["groups"] for b in group["boards"]]
    drawn = [s for s in boards[0]["drawing"]["shapes"] if s.get("part")]
    assert [shape["part"] for shape in drawn] == ["1/piece", "1/piece", "2/piece", "2/piece"]
    assert [shape["points"][0][0] for shape in drawn] == [0, 30.375, 60.75, 77.375]
    bare = view(document, drawings=False)["plan"]["groups"][0]["boards"][0]
    assert bare["drawing"] is None


def test_every_piece_of_a_drawing_has_its_mark_and_the_list_below_its_name_and_size():
    document = acts(
        begun(),
        on_hand({"width": "6", "bad": "40 to 46"}),
        by_hand("Stile", "39", "1 1/2", count="3"),
        by_hand("A rail with a long name", "13", "2", count="2"),
    )
    (board,) = planned(document)["plan"]["groups"][0]["boards"]
    texts = [s["text"] for s in board["drawing"]["shapes"] if s["kind"] == "label"]
    marked = [text.split()[0] for text in texts if text.split()[0] in {"a", "b"}]
    assert sorted(marked) == ["a", "a", "a", "b", "b"]
    assert board["marks"] == [
        {"mark": "a", "name": "Stile", "size": "39″ × 1 1/2″", "count": 3},
        {"mark": "b", "name": "A rail with a long name", "size": "13″ × 2″", "count": 2},
    ]
    crossed = [s for s in board["drawing"]["shapes"] if s.get("role") == "hidden"]
    assert {place[0] for line in crossed for place in (line["from"], line["to"])} == {40, 46}
    assert "crossed out" in board["drawing"]["words"]


def test_a_part_has_the_same_mark_on_every_board_and_after_it_is_planned_again():
    document = kept(rails())

    def marks(document):
        told = [b for group in view(document)["plan"]["groups"] for b in group["boards"]]
        return {(each["mark"], each["name"]) for board in told for each in board["marks"]}

    assert marks(document) == {("a", "Stile"), ("b", "Rail"), ("c", "Long rail")}
    again = kept(changed(document, "cut", id="3", part="piece", by=1))
    assert marks(again) == marks(document)


def test_a_trimmed_sheet_is_squared_on_all_four_sides_before_it_is_broken_down():
    """By hand: 48 − 2 × 1/2 = 47 to rip, 96 − 2 × 1/2 = 95 to crosscut."""
    row = {"sold": "sheet", "thickness": "23/32", "width": "48", "length": "96", "trim": "1/2"}
    document = acts(begun(), on_sale(row), by_hand("Side", "95", "23 7/16", "23/32", count="2"))
    answer = planned(document)
    assert faults(answer["act"]["plan"], wanted(document)) == []
    assert said_of(answer["plan"])["Sheet 1"] == [
        "Trim 1/2″ off one edge.",
        "Trim the other edge at 47″.",
        "Trim 1/2″ off one end.",
        "Trim the other end at 95″.",
        "Set the fence to 23 7/16″. Rip 1: 2 × Side.",
    ]
