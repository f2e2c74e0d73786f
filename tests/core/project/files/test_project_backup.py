"""A backup gives the project back; what is no backup is refused whole, with the place named."""

import json

import pytest
from hostile import WHEN, backup_text, crashes, project
from projects import acts, answered, ask, cabinet, changed, headlines, lasting, linked


def test_a_project_comes_back_from_its_backup_as_it_was():
    document = project()
    said = answered("restore", None, text=backup_text(document))
    assert said["document"] == document
    assert said["photos"] == {"p1": "data:image/jpeg;base64,AAAA"}
    assert said["said"] == "Record cabinet: 7 entries, 1 piece cut, saved 2026-11-25."


def test_a_backup_is_called_after_its_project_and_says_what_it_is():
    said = answered("backup", linked(), when=WHEN)
    assert said["name"] == "record-cabinet-2026-11-25.sawside.json"
    assert json.loads(said["text"]) == {
        "sawside": "backup",
        "schema": 8,
        "when": WHEN,
        "document": linked(),
        "photos": {},
    }


@pytest.mark.parametrize(
    ("text", "kind", "words"),
    [
        ("", "message", "line 1, character 1"),
        ("{", "message", "line 1, character 2"),
        ("[]", "message", "isn’t a Sawside backup"),
        ("[" * 100_000, "message", "nested too deep"),
        ('{"sawside":"backup","sawside":"backup"}', "message", "“sawside” twice"),
        ('{"sawside":' + "9" * 5000 + "}", "message", "too long"),
        ('{"sawside":NaN}', "message", "NaN"),
    ],
)
def test_what_is_no_backup_is_refused(text, kind, words):
    said = ask("restore", None, text=text)
    assert said["error"]["kind"] == kind
    assert words in said["error"]["message"]
    assert said["error"]["field"]


def test_a_backup_of_a_newer_version_is_refused():
    text = backup_text(linked()).replace('"schema": 8', '"schema": 9')
    assert ask("restore", None, text=text)["error"]["kind"] == "newer"


def test_a_picture_is_a_picture():
    said = ask("backup", linked(), when=WHEN, photos={"p1": "data:text/html;base64,AAAA"})
    assert said["error"]["field"] == "document.photos.p1"
    said = ask("backup", linked(), when=WHEN, photos={"../p": "data:image/png;base64,AAAA"})
    assert said["error"]["field"] == "document.photos"


def test_a_merge_adds_what_is_missing_and_numbers_what_differs():
    mine = changed(linked(), "delete", id="4")
    theirs = acts(
        linked(),
        ("correct", {"id": "2", "text": "Alcove width - 1"}),
        ("keep_note", {"name": "Oil", "text": "Two coats."}),
    )
    said = answered("merge", mine, text=backup_text(theirs))
    assert said["said"] == "Added 4 of 5 entries from Record cabinet."
    assert headlines(said["document"]) == {
        "Alcove width": "37 9/16″",
        "Case width": "37 5/16″",
        "Top rail": "37 5/16″",
        "Case width 2": "36 9/16″",
        "Top rail 2": "36 9/16″",
        "Panel": "32 13/16″",
        "Oil": None,
    }
    undone = answered("change", said["document"], act=said["undo"])
    assert lasting(undone["document"]) == lasting(mine)
    again = answered("merge", said["document"], text=backup_text(said["document"]))
    assert (again["undo"], again["document"]) == (None, said["document"])
    assert said["rule"]


def test_a_document_of_schema_1_is_brought_up():
    old = {
        "schema": 1,
        "name": "Record cabinet",
        "settings": {},
        "next": 3,
        "entries": [
            {"id": "1", "kind": "reading", "name": "Width", "unit": "in", "text": "37 9/16"},
            {
                "id": "2",
                "kind": "line",
                "name": "Rail",
                "unit": "in",
                "reckoner": "mitered_length",
                "values": {"known": "30", "width": "2"},
                "cut": {"piece": 1},
            },
        ],
    }
    seen = answered("view", old)
    assert (seen["schema"], seen["pieces"][0]["cut"]) == (8, 1)
    assert seen["pieces"][0]["verdicts"][0]["said"] == (
        "Rail: 1 piece can’t be checked: one of the sizes is missing."
    )
    document = changed(old, "rename", id="1", name="Alcove")
    assert document["schema"] == 8
    assert document["entries"][1]["cut"] == {"piece": [{}]}
    gone = changed(document, "delete", id="2")
    back = changed(gone, "restore", entry=old["entries"][1], at=1)
    assert back["entries"][1] == document["entries"][1]
    assert old["schema"] == 1


def test_a_document_of_schema_2_is_brought_up_with_all_that_is_in_it():
    now = linked()
    document = changed(now | {"schema": 2}, "rename_project", name="Cabinet")
    assert lasting(document) == lasting(now) | {"name": "Cabinet"}


@pytest.mark.parametrize("cut", [{"piece": -1}, {"piece": 10**9}, {"piece": True}, 7])
def test_a_damaged_document_of_schema_1_is_refused_as_any_other(cut):
    old = {
        "schema": 1,
        "name": "a",
        "settings": {},
        "next": 3,
        "entries": [
            {
                "id": "2",
                "kind": "line",
                "name": "Rail",
                "unit": "in",
                "reckoner": "mitered_length",
                "values": {},
                "cut": cut,
            }
        ],
    }
    assert ask("view", old)["error"]["field"] == "document.entries[0].cut"


def test_files_gone_wrong_are_taken_whole_or_refused_with_the_place():
    assert crashes(400, "tests") == []


def test_the_cabinet_without_links_is_a_document_as_well():
    assert answered("restore", None, text=backup_text(cabinet()))["document"] == cabinet()
