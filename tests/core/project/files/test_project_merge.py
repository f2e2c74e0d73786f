"""A merge adds what a backup has more, and no number changes without being told."""

import random
import re

from hostile import backup_text
from hypothesis import given, settings
from hypothesis import strategies as st
from merging import OLD, STRETCHED, by_tape, copy_with, exact, merged, shelf, sums
from projects import acts, ask, begun, changed, headlines, linked, view


def test_what_uses_a_numbered_entry_is_added_with_it_so_that_its_number_stays():
    mine = sums(("A", "10"), ("L", "[A] + 1"))
    theirs = sums(("A", "12"), ("L", "[A] + 1"), ("M", "[L] + 1"), ("N", "7"))
    said = merged(mine, theirs)
    assert headlines(said["document"]) == {
        "A": "10″",
        "L": "11″",
        "A 2": "12″",
        "L 2": "13″",
        "M": "14″",
        "N": "7″",
    }
    texts = {each["name"]: each["text"] for each in said["document"]["entries"]}
    assert (texts["L 2"], texts["M"]) == ("[A 2] + 1", "[L 2] + 1")
    assert said["said"] == "Added 4 of 4 entries from Record cabinet."


def test_a_tape_that_is_missing_here_comes_with_its_readings():
    said = merged(begun(), by_tape(STRETCHED))
    assert headlines(said["document"]) == headlines(by_tape(STRETCHED))
    assert said["document"]["settings"] == {"tapes": [STRETCHED]}


def test_a_tape_that_differs_comes_under_a_numbered_name_and_its_readings_with_it():
    said = merged(by_tape(OLD), by_tape(STRETCHED))
    told = headlines(said["document"])
    assert told["Width"] == "30″"
    assert (told["Width 2"], told["Half 2"]) == tuple(headlines(by_tape(STRETCHED)).values())
    assert told["Width 2"] != "30″"
    assert [tape["name"] for tape in said["document"]["settings"]["tapes"]] == ["Old", "Old 2"]
    assert [each.get("tape") for each in said["document"]["entries"]] == [
        "Old",
        None,
        "Old 2",
        None,
    ]


def test_the_numbers_of_a_tape_mean_what_they_meant_in_the_other_unit():
    tape = {"name": "Old", "block": "100", "block_reads": "99"}
    theirs = by_tape(tape, "30 in", unit="mm")
    here = merged(begun(), theirs)["document"]
    exact = [each["headline"]["exact"] for each in view(here)["entries"]]
    assert exact == [each["headline"]["exact"] for each in view(theirs)["entries"]]
    assert merged(here, here | {"settings": theirs["settings"]})["undo"] is None


def test_own_materials_come_as_tapes_do():
    said = merged(begun(), shelf("0.003"))
    assert headlines(said["document"]) == headlines(shelf("0.003"))
    said = merged(shelf("0.003"), shelf("0.006"))
    assert headlines(said["document"]) == {
        "Top": headlines(shelf("0.003"))["Top"],
        "Top 2": headlines(shelf("0.006"))["Top"],
    }
    names = [each["name"] for each in said["document"]["settings"]["materials"]]
    assert names == ["Plank", "Plank 2"]


def test_more_tapes_than_a_project_holds_are_refused_with_what_to_do():
    def many(first):
        tapes = [OLD | {"name": f"T{number}"} for number in range(first, first + 8)]
        return changed(begun(), "set", settings={"tapes": tapes})

    error = ask("merge", many(0), text=backup_text(many(8)))["error"]
    assert error["message"] == "Both projects together have more than 12 tapes."
    assert error["field"] == "text"


def sticks(kerf):
    """A project whose line takes the kerf of its settings."""
    return acts(
        begun(),
        ("set", {"settings": {"kerf": kerf}}),
        (
            "keep_line",
            {
                "name": "Sticks",
                "reckoner": "how_many_fit",
                "values": {"stick": "42", "piece": "10"},
            },
        ),
        ("keep_reading", {"name": "Rest", "text": "[Sticks: Left over] × 2"}),
    )


def test_what_another_kerf_makes_otherwise_is_told_for_all_that_depends_on_it():
    said = merged(begun(), sticks("1/4"))
    assert said["said"] == (
        "Added 2 of 2 entries from Record cabinet. With this project’s settings these differ from "
        "the backup: Sticks: Left over 1″ → 1 1/2″, Rest 2″ → 3″."
    )


def test_what_the_settings_here_change_is_told_with_before_and_after():
    mine = changed(begun(), "set", settings={"mark": "1/2"})
    theirs = sums(("Width", "30 1/4 + 1/10"), ("Depth", "12"))
    said = merged(mine, theirs)
    assert said["said"] == (
        "Added 2 of 2 entries from Record cabinet. With this project’s settings these differ from "
        "the backup: Width 30 3/8″ → 30 1/2″."
    )
    assert "before" in said["rule"]


def test_good_pieces_that_come_with_a_backup_ask_for_nothing():
    theirs = acts(linked(), ("cut", {"id": "3", "part": "piece", "by": 1}))
    said = merged(changed(linked(), "correct", id="1", text="37"), theirs)
    assert [each["cut"] for each in said["document"]["entries"] if "cut" in each]
    assert (said["follows"], said["judged"]) == ([], [])


def test_what_waited_here_for_a_name_that_comes_is_told():
    mine = changed(sums(("A", "10"), ("L", "[A] + 1")), "delete", id="1")
    said = merged(mine, sums(("A", "12")))
    assert headlines(said["document"]) == {"L": "13″", "A": "12″"}
    assert said["said"].endswith(" These change here: L nothing → 13″.")


def test_no_more_than_twenty_are_told_by_name():
    mine = changed(begun(), "set", settings={"mark": "1/2"})
    said = merged(mine, sums(*((f"R{each}", "1 1/4 + 1/10") for each in range(23))))["said"]
    assert said.count("→") == 20
    assert said.endswith(", and 3 more.")


@settings(max_examples=150)
@given(st.integers(0, 10**9))
def test_after_a_merge_both_projects_are_there_with_their_own_numbers(seed):
    chance = random.Random(seed)
    start = copy_with(chance, copy_with(chance, changed(begun(), "set", settings={"tapes": [OLD]})))
    mine, theirs = copy_with(chance, start), copy_with(chance, start)
    said = ask("merge", mine, text=backup_text(theirs))
    if not said["ok"]:
        assert "refers back to itself" in said["error"]["message"], said
        return
    document = merged(mine, theirs)["document"]
    now, here, there = exact(document), exact(mine), exact(theirs)
    for identity, number in here.items():
        assert number is None or now[identity] == number, (identity, said["said"])
    by_name = {each["name"]: each["id"] for each in document["entries"]}
    for entry in theirs["entries"]:
        number, name = there[entry["id"]], entry["name"]
        called = [by_name[n] for n in by_name if re.fullmatch(rf"{re.escape(name)}( \d+)?", n)]
        assert number is None or number in [now[each] for each in called], (name, said["said"])
