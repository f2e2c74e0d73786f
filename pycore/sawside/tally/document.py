"""The tally of the pad as it is kept: lines entered one after another, and what is checked of them.

    {"schema": 2, "next": 4, "lines": [{"id": "1", "name": "", "text": "31 5/8", "unit": "in"}]}

Text in, nothing derived: a line is what was typed and the unit that a bare number meant then, and
where it uses names of a project also `project`: the {id, name} of that one, and in `names` each
name in small letters with the {entry, answer} that it means ("" for the first answer).
"""

from sawside.errors import Refusal
from sawside.lengths.reading.refusals import MOST_CHARACTERS
from sawside.project.kinds.checks import (
    MOST_NAME,
    damaged,
    keys_checked,
    text_checked,
    whole_number,
    words_checked,
)
from sawside.settings.settings import read_settings
from sawside.tally.migrate import OLDEST, with_names

SCHEMA = 2
MOST_LINES = 2000
_MOST = 3 * MOST_CHARACTERS
"""A name in small letters may be longer than it was."""
EMPTY = {"schema": SCHEMA, "next": 1, "lines": []}


def read_tally(data):
    """A checked copy of a tally. Refusals: "message" naming the place, "newer"."""
    keys_checked(data, "the tally", ("schema", "next", "lines"))
    schema = data["schema"]
    if not isinstance(schema, int) or isinstance(schema, bool) or schema < OLDEST:
        raise damaged("schema", "is not a version that this program knows")
    if schema > SCHEMA:
        raise Refusal("newer", "This history was saved by a newer version.", "Update Sawside.")
    if not isinstance(data["lines"], list) or len(data["lines"]) > MOST_LINES:
        raise damaged("lines", f"is not a list of at most {MOST_LINES}")
    lines = with_names(read_line(line, f"lines[{at}]") for at, line in enumerate(data["lines"]))
    upcoming = whole_number(data["next"], "next", 1, 10**9)
    identities = [line["id"] for line in lines]
    names = [line["name"].casefold() for line in lines if line["name"]]
    if len(set(identities)) != len(lines) or len(set(names)) != len(names):
        raise damaged("lines", "holds the same line twice")
    if any(int(identity) >= upcoming for identity in identities):
        raise damaged("next", "is not above every line")
    return {"schema": SCHEMA, "next": upcoming, "lines": lines}


def read_line(data, place):
    """A checked copy of a line; a mark of schema 1 is still without its names."""
    keys_checked(data, place, ("id", "name", "text", "unit"), ("project",))
    for key, most in (("id", 9), ("name", MOST_NAME), ("text", MOST_CHARACTERS), ("unit", 9)):
        if not isinstance(data[key], str) or len(data[key]) > most:
            raise damaged(f"{place}.{key}", f"is not a text of at most {most} characters")
    identity = data["id"]
    if not (identity.isascii() and identity.isdigit() and identity[0] != "0"):
        raise damaged(f"{place}.id", "is not the number of a line")
    read_settings({"unit": data["unit"]})
    line = {key: data[key] for key in ("id", "name", "text", "unit")}
    if "project" in data:
        line["project"] = _mark(data["project"], f"{place}.project")
    return line


def _mark(data, place):
    keys_checked(data, place, ("id", "name"), ("names",))
    mark = {key: words_checked(data[key], f"{place}.{key}") for key in ("id", "name")}
    if "names" not in data:
        return mark
    if not isinstance(data["names"], dict):
        raise damaged(f"{place}.names", "is not an object")
    place = f"{place}.names"
    names = {
        text_checked(key, place, _MOST): _target(data["names"][key], place) for key in data["names"]
    }
    return mark | {"names": names}


def _target(data, place):
    keys_checked(data, place, ("entry", "answer"))
    return {key: text_checked(data[key], place, _MOST) for key in ("entry", "answer")}
