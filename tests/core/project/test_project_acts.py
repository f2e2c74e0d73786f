"""Notes, places, several acts as one, and the log of what was done."""

import pytest
from projects import acts, answered, ask, begun, change, changed, lasting, linked, view


def test_a_note_is_kept_shown_changed_and_stands_in_no_sum():
    document = changed(linked(), "keep_note", text="Glue up on Friday.\nThen sand.")
    note = view(document)["entries"][-1]
    assert (note["title"], note["name"], note["summary"], note["ok"]) == (
        "Note",
        "Note",
        "Glue up on Friday.",
        True,
    )
    assert note["text"] == "Glue up on Friday.\nThen sand."
    assert changed(document, "correct", id="5", text="Done.")["entries"][-1]["text"] == "Done."
    assert change(document, "keep_reading", name="a", text="[Note]")["error"]["kind"] == "missing"


@pytest.mark.parametrize(("text", "kind"), [("", "missing"), ("x" * 4001, "range"), (3, "message")])
def test_a_note_that_can_not_be_kept_is_refused(text, kind):
    assert change(linked(), "keep_note", text=text)["error"]["kind"] == kind


def test_an_entry_is_moved_and_moved_back():
    said = change(linked(), "move", id="4", to=0)
    assert [each["id"] for each in said["document"]["entries"]] == ["4", "1", "2", "3"]
    back = answered("change", said["document"], act=said["undo"])["document"]
    assert lasting(back) == lasting(linked())
    assert change(linked(), "move", id="4", to=4)["error"]["field"] == "to"


def test_several_acts_are_made_and_taken_back_as_one():
    both = [
        {"act": "correct", "id": "1", "text": "37 1/2"},
        {"act": "keep_reading", "name": "Depth", "text": "[Case width] ÷ 3"},
        {"act": "delete", "id": "4"},
    ]
    said = change(linked(), "several", acts=both)
    assert [each["name"] for each in said["document"]["entries"]] == [
        "Alcove width",
        "Case width",
        "Top rail",
        "Depth",
    ]
    back = answered("change", said["document"], act=said["undo"])["document"]
    assert lasting(back) == lasting(linked())


def test_of_several_acts_all_are_made_or_none():
    both = [{"act": "delete", "id": "4"}, {"act": "correct", "id": "1", "text": "3//4"}]
    said = change(linked(), "several", acts=both)
    assert (said["error"]["row"], "document" in said) == (1, False)
    assert change(linked(), "several", acts=[])["error"]["field"] == "acts"
    nested = [{"act": "several", "acts": both}]
    assert change(linked(), "several", acts=nested)["error"]["kind"] == "message"


def test_the_log_says_what_was_done_and_when_the_latest_first_and_only_so_much():
    document = changed(begun(), "keep_reading", name="Width", text="3", when="2026-11-25T17:20")
    assert view(document)["log"] == [
        {"when": "2026-11-25T17:20", "said": "Saved Width."},
        {"when": "", "said": "Started Record cabinet."},
    ]
    many = [("rename", {"id": "1", "name": f"Width {number}"}) for number in range(201)]
    log = acts(document, *many)["log"]
    assert (len(log), log[-1]["said"]) == (200, "Renamed Width 199 to Width 200.")
    assert change(document, "delete", id="1", when="at noon")["error"]["field"] == "when"


def test_following_may_be_left_out():
    said = answered(
        "change", linked(), act={"act": "correct", "id": "1", "text": "38"}, follows=False
    )
    assert (said["follows"], said["judged"]) == ([], [])


NO_MOMENTS = [
    "2026-99-99T77:88",
    "2026-02-30",
    "0000-01-01",
    "10000-01-01T00:00",
    "+010000-01-01T00:00",
    "2026-11-25T24:61",
    "2026-W48-3",
    "20261125",
    "2026-11-25 17:20",
    "at noon",
    3,
    [],
    {},
    True,
]
MOMENTS = ["2024-02-29", "9999-12-31T23:59", "0001-01-01T00:00", "2026-11-25T17:20:31.5Z", "", None]


@pytest.mark.parametrize("when", NO_MOMENTS)
def test_a_moment_of_no_calendar_is_refused_by_its_field(when):
    reading = {"act": "correct", "id": "1", "text": "38", "when": when}
    table = "Name,Text\r\nDepth,12\r\n"
    text = answered("backup", linked())["text"]
    for do, more in (
        ("change", {"act": reading}),
        ("take_csv", {"what": "readings", "text": table, "when": when}),
        ("merge", {"text": text, "when": when}),
        ("backup", {"when": when}),
    ):
        error = ask(do, linked(), **more)["error"]
        assert (error["kind"], error["field"], error["remedy"]) == (
            "message",
            "when",
            "Type it as in 2026-11-25T17:20.",
        )
    said = change(linked(), "describe", id="1", read_at=when)
    assert said["error"]["field"] == "read_at"


@pytest.mark.parametrize("when", MOMENTS)
def test_a_moment_of_the_calendar_or_none_at_all_is_kept(when):
    document = changed(linked(), "correct", id="1", text="38", when=when)
    assert view(document)["log"][0]["when"] == (when or "")
    assert document["entries"][0].get("when") == (when or None)
    assert (
        document
        == answered("restore", None, text=answered("backup", document, when=when)["text"])[
            "document"
        ]
    )
    answered("merge", document, text=answered("backup", document, when=when)["text"], when=when)


def test_a_moment_that_was_kept_before_it_was_looked_up_in_a_calendar_bars_no_project():
    document = changed(linked(), "describe", id="1", read_at="2026-11-25")
    document["entries"][0]["when"] = "2026-99-99T77:88"
    assert view(document)["entries"][0]["when"] == "2026-99-99T77:88"
    text = answered("backup", document, when="")["text"]
    assert answered("restore", None, text=text)["document"] == document
    assert (
        answered("restore", None, text=text)["said"] == "Record cabinet: 4 entries, 0 pieces cut."
    )
