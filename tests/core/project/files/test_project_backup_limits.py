"""What is backed up can be restored, however large, and no file takes more than its share."""

import json
import re
from pathlib import Path

import pytest
from hostile import WHEN
from projects import ask, begun, cabinet, linked

import sawside
from sawside.door import MOST_CHARACTERS
from sawside.project.files.backup import MOST_PHOTOS
from sawside.project.files.backup_text import MOST_BYTES
from tests.core.oracles.hostile_memory import BOMBS, looked_at

PICTURE = 200_000
"""Characters: a photograph of 1024 × 768 at quality 0.7 as a data address (from memory, rounded
up)."""


def photos(count, characters):
    """So many pictures of a size."""
    start = "data:image/jpeg;base64,"
    return {f"p{each}": start + "A" * (characters - len(start)) for each in range(count)}


def test_the_door_the_backup_and_the_page_agree_on_what_is_too_large():
    page = Path(__file__).parents[4] / "web/widgets/device/read-file.js"
    at_the_page = re.search(r"const MOST_BYTES = ([\d_]+);", page.read_text("utf-8"))[1]
    assert int(at_the_page) == MOST_BYTES
    assert MOST_PHOTOS * PICTURE <= MOST_BYTES
    assert MOST_CHARACTERS >= MOST_BYTES * 4 // 3


def test_as_many_pictures_as_may_be_are_backed_up_and_come_back():
    many = photos(MOST_PHOTOS, PICTURE - 100)
    message = json.dumps({"do": "backup", "document": cabinet(), "when": WHEN, "photos": many})
    text = json.loads(sawside.handle_json(message))["text"]
    back, part = looked_at(text)
    assert (back["document"], back["photos"]) == (cabinet(), many)
    assert part < 1
    merged, part = looked_at(text, "merge", document=begun())
    assert len(merged["document"]["entries"]) == 3
    assert part < 1


def test_what_could_not_be_restored_is_not_backed_up():
    said = ask("backup", cabinet(), when=WHEN, photos=photos(150, 410_000))
    assert said["error"] == {
        "kind": "range",
        "field": "photos",
        "at": None,
        "message": "This backup would take 62 MB, and a backup can have at most 60 MB.",
        "remedy": "Remove photos from some readings, then back up again.",
    }
    said = ask("backup", cabinet(), when=WHEN, photos=photos(MOST_PHOTOS + 1, 100))
    assert said["error"]["message"] == f"A backup can have at most {MOST_PHOTOS} pictures."
    assert said["error"]["remedy"] == "Remove photos from some readings, then back up again."


def test_a_project_with_more_values_than_are_read_is_not_backed_up():
    notes = [
        {"id": f"{each}", "kind": "note", "name": f"n{each}", "text": "," * 4000}
        for each in range(1, 300)
    ]
    said = ask("backup", begun() | {"next": 300, "entries": notes}, when=WHEN)
    assert said["error"]["message"] == "There’s more in this project than a backup can hold."


def test_what_no_backup_could_hold_is_said_at_the_door():
    said = json.loads(sawside.handle_json(" " * (MOST_CHARACTERS + 1)))
    assert said["error"]["message"] == "This is larger than 80 MB."
    assert said["error"]["remedy"] == "Choose a smaller file, or take photos out of some readings."


@pytest.mark.parametrize("schema", [99, 9])
def test_a_backup_that_only_says_of_itself_that_it_is_newer_is_refused(schema):
    whole = {"sawside": "backup", "schema": schema, "when": WHEN, "document": linked(), "new": 1}
    for do, document in (("restore", None), ("merge", linked())):
        error = ask(do, document, text=json.dumps(whole))["error"]
        assert error["kind"] == "newer"
        assert error["message"] == "This project was saved by a newer version of Sawside."


@pytest.mark.parametrize("schema", [0, "3", None, True, 3.0, [3]])
def test_a_backup_whose_schema_is_none_is_refused(schema):
    whole = {"sawside": "backup", "schema": schema, "when": WHEN, "document": linked()}
    error = ask("restore", None, text=json.dumps(whole))["error"]
    assert (error["kind"], error["field"]) == ("message", "document.schema")


@pytest.mark.parametrize("what", BOMBS)
def test_a_file_made_to_take_all_memory_is_refused_with_its_place(what):
    said, part = looked_at(BOMBS[what]())
    assert not said["ok"], what
    assert said["error"]["field"]
    assert part < 1, what
