"""Two projects made one: what the backup has and the project has not is added."""

from itertools import count

from sawside.project.acts import Made
from sawside.project.acts_placed import rename
from sawside.project.backup import restore
from sawside.project.change import followed
from sawside.project.checks import MOST_NAME
from sawside.project.finding import refuse_too_many

RULE = (
    "What the backup has and this project has not is added. What both have under one name and "
    "with the same content stays as it is. What both have under one name with other content is "
    "added under a numbered name. The settings and the labels of this project stay."
)


def merge(document, text, when):
    """The contract of `merge`: a change that adds what is in a backup; refusals as `restore`."""
    found = restore(text)
    other, added = _without_the_same(document, found["document"])
    new = document
    for entry in added:
        refuse_too_many(new)
        entry = next(each for each in other["entries"] if each["id"] == entry["id"])
        kept = entry | {"id": str(new["next"])}
        new = new | {"next": new["next"] + 1, "entries": [*new["entries"], kept]}
    undo = {
        "act": "several",
        "acts": [
            {"act": "delete", "id": str(number)}
            for number in range(new["next"] - 1, document["next"] - 1, -1)
        ],
    }
    said = f"Added {len(added)} of {len(other['entries'])} entries of {other['name']}."
    if not added:
        return {"document": document, "undo": None, "said": said, "id": None, "follows": [],
                "judged": [], "rule": RULE, "photos": {}}  # fmt: skip
    made = Made(new, undo, said, None, True, ())
    return followed(document, made, {"when": when}) | {"rule": RULE, "photos": found["photos"]}


def _without_the_same(document, other):
    """(the other document with its conflicting names numbered, its entries to be added)."""
    here = {entry["name"].casefold(): entry for entry in document["entries"]}
    taken = set(here) | {entry["name"].casefold() for entry in other["entries"]}
    added = []
    for entry in other["entries"]:
        same = here.get(entry["name"].casefold())
        if same is not None and _content(same) == _content(entry):
            continue
        added.append(entry)
        if same is not None:
            name = _numbered(entry["name"], taken)
            taken.add(name.casefold())
            other = rename(other, {"id": entry["id"], "name": name})[0]
    return other, added


def _content(entry):
    return {key: value for key, value in entry.items() if key != "id"}


def _numbered(name, taken):
    for number in count(2):
        one = f"{name[: MOST_NAME - 10]} {number}"
        if one.casefold() not in taken:
            return one
    return name
