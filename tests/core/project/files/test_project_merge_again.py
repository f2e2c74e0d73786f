"""A merge that is done again changes nothing: what is here already is known by its content."""

import random

from hostile import backup_text
from hypothesis import given, settings
from hypothesis import strategies as st
from merging import OLD, STRETCHED, by_tape, copy_with, merged, shelf, sums
from projects import acts, ask, begun, changed, headlines, linked, view


def test_a_merge_of_what_is_here_already_changes_nothing():
    said = merged(linked(), linked())
    assert (said["undo"], said["document"]) == (None, linked())


def again(mine, theirs):
    """A project after a merge, which changes nothing when it is done again."""
    once = merged(mine, theirs)["document"]
    twice = merged(once, theirs)
    assert (twice["undo"], twice["document"]) == (None, once), twice["said"]
    assert twice["said"].startswith(f"Added 0 of {len(theirs['entries'])} entries")
    return once


def test_a_backup_that_is_merged_again_and_again_gives_its_pieces_once():
    theirs = acts(linked(), ("correct", {"id": "1", "text": "38"}), ("keep_note", {"text": "Oak"}))
    mine = acts(linked(), ("keep_note", {"text": "Birch"}))
    once = again(mine, theirs)
    assert [each["name"] for each in once["entries"]] == [
        "Alcove width",
        "Case width",
        "Top rail",
        "Panel",
        "Note",
        "Alcove width 2",
        "Case width 2",
        "Top rail 2",
        "Panel 2",
        "Note 2",
    ]
    assert sum(each["count"] for each in view(once)["pieces"]) == 4


def test_what_is_new_and_calls_what_was_numbered_is_not_added_again():
    mine = sums(("A", "10"))
    theirs = sums(("A", "12"), ("M", "[A] + 1"), ("B", "3"), ("B 2", "4"), ("N", "[B 2] + [M]"))
    once = again(acts(mine, ("keep_reading", {"name": "B", "text": "5"})), theirs)
    assert headlines(once) == {
        "A": "10″",
        "B": "5″",
        "A 2": "12″",
        "M": "13″",
        "B 3": "3″",
        "B 2": "4″",
        "N": "17″",
    }


def test_names_that_are_too_long_for_a_number_and_alike_are_each_added_once():
    long = "A name that goes on and on until it has no room for a number at its end"
    mine = sums((f"{long} A", "1"), (f"{long} B", "2"), (f"{long[:70]} 7", "3"))
    theirs = sums((f"{long} A", "3"), (f"{long} B", "3"), ("Sum", f"[{long} A] + [{long} B]"))
    once = again(mine, theirs)
    assert len(once["entries"]) == 5
    assert headlines(once)["Sum"] == "6″"


def test_a_tape_and_a_material_are_brought_once():
    for mine, theirs in ((by_tape(OLD), by_tape(STRETCHED)), (shelf("0.003"), shelf("0.006"))):
        again(mine, theirs)
    both = acts(
        by_tape(STRETCHED),
        ("set", {"settings": {"tapes": [STRETCHED, STRETCHED | {"name": "Old 2"}]}}),
        ("keep_reading", {"name": "Height", "text": "40", "tape": "Old 2"}),
    )
    once = again(by_tape(OLD), both)
    assert [each["name"] for each in once["settings"]["tapes"]] == ["Old", "Old 3", "Old 2"]


def test_names_that_differ_in_capitals_alone_are_one_name():
    theirs = by_tape(STRETCHED | {"name": "OLD"})
    theirs["entries"][0]["name"] = "WIDTH"
    said = merged(by_tape(STRETCHED), theirs)
    assert (said["undo"], said["said"]) == (None, "Added 0 of 2 entries from Record cabinet.")


@settings(max_examples=150)
@given(st.integers(0, 10**9))
def test_a_merge_that_is_done_again_changes_nothing(seed):
    chance = random.Random(seed)
    start = copy_with(chance, copy_with(chance, changed(begun(), "set", settings={"tapes": [OLD]})))
    mine, theirs = copy_with(chance, start), copy_with(chance, start)
    if chance.random() < 0.5:  # a project that was merged before, of names with numbers
        before = ask("merge", mine, text=backup_text(copy_with(chance, start)))
        mine = before["document"] if before["ok"] else mine
    said = ask("merge", mine, text=backup_text(theirs))
    if said["ok"]:
        again(mine, theirs)
