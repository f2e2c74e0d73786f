"""The tally of the pad as it is kept: lines entered one after another, and what is checked of them.

    {"schema": 1, "next": 4, "lines": [{"id": "1", "name": "", "text": "31 5/8", "unit": "in"}]}

Text in, nothing derived: a line is what was typed and the unit that a bare number meant then, and
where it uses names of a project also `project`, {id, name} of that one.
"""

from sawside.errors import Refusal
from sawside.lengths.refusals import MOST_CHARACTERS
from sawside.lengths.settings import read_settings
from sawside.project.checks import MOST_NAME, damaged, keys_checked, whole_number, words_checked

SCHEMA = 1
MOST_LINES = 2000
EMPTY = {"schema": SCHEMA, "next": 1, "lines": []}


def read_tally(data):
    """A checked copy of a tally. Refusals: "message" naming the place, "newer"."""
    keys_checked(data, "the tally", ("schema", "next", "lines"))
    if data["schema"] != SCHEMA or isinstance(data["schema"], (bool, float)):
        newer = isinstance(data["schema"], int) and data["schema"] > SCHEMA
        if newer:
            raise Refusal(
                "newer", "This tally was saved by a newer version.", "Update the program."
            )
        raise damaged("schema", "is not a version that this program knows")
    if not isinstance(data["lines"], list) or len(data["lines"]) > MOST_LINES:
        raise damaged("lines", f"is not a list of at most {MOST_LINES}")
    lines = [read_line(line, f"lines[{at}]") for at, line in enumerate(data["lines"])]
    upcoming = whole_number(data["next"], "next", 1, 10**9)
    identities = [line["id"] for line in lines]
    names = [line["name"].casefold() for line in lines if line["name"]]
    if len(set(identities)) != len(lines) or len(set(names)) != len(names):
        raise damaged("lines", "holds the same line twice")
    if any(int(identity) >= upcoming for identity in identities):
        raise damaged("next", "is not above every line")
    return {"schema": SCHEMA, "next": upcoming, "lines": lines}


def read_line(data, place):
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
    keys_checked(data, place, ("id", "name"))
    return {key: words_checked(data[key], f"{place}.{key}") for key in ("id", "name")}
