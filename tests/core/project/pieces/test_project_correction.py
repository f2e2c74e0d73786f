"""A correction follows: each number before and after, and the pieces already cut are judged.

By hand: 1/8 off the alcove is 1/8 off the rail that is measured on its outside, and off its
short side; a piece that is 1/8 too long can be cut down, one 1/8 too short can't be made longer.
"""

import pytest
from projects import acts, change, changed, lasting, linked, view


def cut_twice(document):
    """The linked project with its rail and its panel cut."""
    return acts(
        document,
        ("cut", {"id": "3", "part": "piece", "by": 1, "when": "2026-11-25T18:00"}),
        ("cut", {"id": "4", "part": "piece", "by": 1}),
    )


def correct(document, text):
    said = change(document, "correct", id="1", text=text)
    assert said["ok"], said
    return said


def test_every_number_that_changed_is_listed_before_and_after_in_the_order_of_the_links():
    said = correct(linked(), "37 7/16")
    told = [
        (each["name"], each["before"]["text"], each["after"]["text"], each["difference"]["text"])
        for each in said["follows"]
    ]
    assert told == [
        ("Case width", "37 5/16″", "37 3/16″", "−1/8″"),
        ("Top rail", "37 5/16″", "37 3/16″", "−1/8″"),
        ("Panel", "33 9/16″", "33 7/16″", "−1/8″"),
    ]
    others = said["follows"][1]["others"]
    assert {
        "key": "short_side",
        "label": "Short point",
        "before": "32 13/16″",
        "after": "32 11/16″",
        "difference": "−1/8″",
    } in others
    assert "left_allowance" not in {each["key"] for each in others}
    assert said["judged"] == []


def test_a_correction_that_changes_nothing_lists_nothing():
    assert correct(linked(), "37 18/32")["follows"] == []


def test_settings_that_move_no_number_list_nothing():
    tapes = [{"name": "Old tape", "block": "4", "block_reads": "4 1/16"}]
    assert change(linked(), "set", settings={"tapes": tapes})["follows"] == []


def test_settings_that_only_show_numbers_otherwise_list_each_as_it_was_shown_and_is_shown_now():
    """37 5/16 in is 947.7375 mm and 32 13/16 in is 833.4375 mm, both of them over a 1/2."""
    said = change(linked(), "set", settings={"display": "mm"})
    rail = next(each for each in said["follows"] if each["name"] == "Top rail")
    assert (rail["before"]["text"], rail["after"]["text"]) == ("37 5/16″", "948 mm")
    short = next(each for each in rail["others"] if each["key"] == "short_side")
    assert (short["before"], short["after"]) == ("32 13/16″", "≈ 833 mm")
    assert "none" not in {each["before"] for each in rail["others"]}


def test_a_line_that_a_correction_breaks_is_listed_with_its_error_and_what_waits_for_it():
    rail, panel = correct(linked(), "4")["follows"][1:]
    assert (rail["ok"], rail["before"]["text"], rail["after"]) == (False, "37 5/16″", None)
    assert "The two ends meet" in rail["error"]["message"]
    assert panel["error"]["message"] == "Waiting on Top rail."


def test_a_refused_or_dropped_correction_leaves_the_project_as_it_was():
    document = cut_twice(linked())
    before = lasting(document)
    correct(document, "37 7/16")
    assert not change(document, "correct", id="1", text="37 7//16")["ok"]
    assert lasting(document) == before


@pytest.mark.parametrize(
    ("text", "verdict", "said"),
    [
        ("37 7/16", "cut down", "Top rail: 1 piece can be cut down by 1/8″."),
        ("37 11/16", "too short", "Top rail: 1 piece too short by 1/8″."),
    ],
)
def test_a_piece_that_was_cut_is_judged(text, verdict, said):
    judged = correct(cut_twice(linked()), text)["judged"]
    assert [(each["name"], each["verdict"]) for each in judged] == [
        ("Top rail", verdict),
        ("Panel", verdict),
    ]
    assert judged[0]["said"] == said
    assert judged[0]["at"]["text"] == "37 5/16″"
    assert judged[0]["difference"]["text"] == "1/8″"


def test_a_piece_within_the_tolerance_is_still_good():
    document = changed(cut_twice(linked()), "tolerance", text="1/8")
    assert [each["verdict"] for each in correct(document, "37 7/16")["judged"]] == ["good"] * 2
    assert correct(document, "37 3/8")["judged"][0]["verdict"] == "cut down"
    assert view(document)["tolerance_told"] == "1/8″"


def test_the_usual_tolerance_is_half_a_mark():
    document = cut_twice(linked())
    assert view(document)["tolerance_told"] == "1/32″"
    judged = correct(document, "37 19/32")["judged"]
    assert {each["verdict"] for each in judged} == {"good"}
    fine = changed(document, "set", settings={"mark": "1/64"})
    assert correct(fine, "37 19/32")["judged"][0]["verdict"] == "too short"


def test_the_verdict_stays_after_the_correction_is_accepted_until_something_is_done():
    document = correct(cut_twice(linked()), "37 7/16")["document"]
    rail = next(each for each in view(document)["pieces"] if each["entry"] == "3")
    assert rail["verdicts"][0]["verdict"] == "cut down"
    document = changed(document, "recut", id="3", part="piece", which=[0])
    rail = next(each for each in view(document)["pieces"] if each["entry"] == "3")
    assert rail["verdicts"][0]["verdict"] == "good"
    assert document["entries"][2]["cut"]["piece"] == [
        {
            "length": "595/16 in",
            "width": "9/4 in",
            "short_side": "523/16 in",
            "ends": "@flat 45°; @flat 45°",
        }
    ]


def test_other_stock_and_other_ends_are_judged_as_well():
    document = cut_twice(linked())
    values = document["entries"][2]["values"]
    wide = change(document, "correct", id="3", values=values | {"width": "2 1/2"})["judged"][0]
    assert (wide["verdict"], wide["measure"]) == ("too short", "width")
    assert wide["said"] == "Top rail: 1 piece too narrow by 1/4″."
    steeper = {"left_end": "other", "left_angle": "50"}
    ends = change(document, "correct", id="3", values=values | steeper)
    assert ends["judged"][0]["verdict"] == "recut ends"


def test_a_piece_too_many_and_one_of_a_line_in_error_are_told():
    shelves = {"known": "30", "width": "2", "left_end": "square", "right_end": "square"}
    document = acts(
        linked(),
        ("keep_line", {"name": "Rail", "reckoner": "mitered_length", "values": shelves}),
        ("cut", {"id": "5", "part": "piece", "by": 1}),
    )
    gone = change(document, "correct", id="5", values=shelves | {"known": "[Panel]"})
    assert gone["judged"][0]["verdict"] == "too short"
    broken = change(cut_twice(linked()), "delete", id="1")
    assert {each["verdict"] for each in broken["judged"]} == {"unknown"}


def test_a_spoiled_piece_comes_back_to_the_list_and_counts_in_the_material():
    document = cut_twice(linked())
    document = changed(document, "about", id="3", part="piece", about={"material": "Birch"})
    spoiled = changed(document, "spoil", id="3", part="piece")
    rail = next(each for each in view(spoiled)["pieces"] if each["entry"] == "3")
    assert (rail["cut"], rail["left"], rail["spoiled"]) == (0, 1, 1)
    tally = next(each for each in view(spoiled)["tally"] if each["material"] == "Birch")
    assert (tally["count"], tally["spoiled"]) == (1, 1)
    assert tally["spoiled_length"]["text"] == "37 5/16″"
    again = changed(spoiled, "spoil", id="3", part="piece")
    rail = next(each for each in view(again)["pieces"] if each["entry"] == "3")
    assert (rail["cut"], rail["left"], rail["spoiled"]) == (0, 1, 2)


def test_which_piece_was_spoiled_may_be_said():
    document = cut_twice(linked())
    refused = change(document, "spoil", id="3", part="piece", which=1)
    assert refused["error"]["field"] == "which"
    assert change(document, "spoil", id="3", part="piece", which=0)["ok"]


def test_a_trial_set_up_is_told_and_kept_with_its_piece():
    said = change(linked(), "trial", id="3", part="piece", measured="37 11/32")
    answers = {each["key"]: each["text"] for each in said["trial"]["answers"]}
    assert answers["difference"] == "1/32″"
    assert answers["remedy"].startswith("Move the stop 1/32″ toward the blade")
    rail = next(each for each in view(said["document"])["pieces"] if each["entry"] == "3")
    assert rail["trial"]["direction"] == "Heavy, over the target"
    assert rail["trial"]["difference"] == "1/32″"
    refused = change(linked(), "trial", id="3", part="piece", measured="37 11//32")
    assert refused["error"]["field"] == "measured"


def test_what_is_told_of_a_part_is_kept_with_its_rough_size():
    told = {"material": "Birch", "grain": "along", "place": "above the door", "rough_length": "1/2"}
    document = changed(linked(), "about", id="4", part="piece", about=told)
    panel = next(each for each in view(document)["pieces"] if each["entry"] == "4")
    assert {key: panel[key] for key in ("material", "grain", "place")} == {
        "material": "Birch",
        "grain": "along",
        "place": "above the door",
    }
    assert panel["length"]["text"] == "33 9/16″"
    assert panel["rough"]["length"]["text"] == "34 1/16″"
    bad = change(document, "about", id="4", part="piece", about={"rough_length": "much"})
    assert bad["error"]["field"] == "rough_length"
    cleared = changed(document, "about", id="4", part="piece", about=dict.fromkeys(told, ""))
    assert "about" not in cleared["entries"][3]


def test_cuts_go_by_set_up_longest_first_with_equal_lengths_together():
    square = {"known": "33 9/16", "width": "3", "left_end": "square", "right_end": "square"}
    document = changed(
        linked(), "keep_line", name="Brace", reckoner="mitered_length", values=square
    )
    groups = view(document)["cuts"]["groups"]
    assert [(group["said"], len(group["pieces"])) for group in groups] == [
        ("Stop at 37 5/16″: 1 cut", 1),
        ("Stop at 33 9/16″: 2 cuts", 2),
    ]
    by_part = view(document, order="part")["cuts"]["groups"]
    assert [group["said"] for group in by_part] == [
        "Top rail: 1 cut",
        "Panel: 1 cut",
        "Brace: 1 cut",
    ]
    done = changed(document, "cut", id="3", part="piece", by=1)
    assert view(done)["cuts"]["groups"][0]["said"] == "Stop at 37 5/16″: all cut"


def test_pieces_may_be_told_without_their_drawings():
    assert view(linked())["pieces"][0]["drawing"]["words"]
    assert view(linked(), drawings=False)["pieces"][0]["drawing"] is None
