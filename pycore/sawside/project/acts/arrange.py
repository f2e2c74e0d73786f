"""The acts that rename, move, delete, bring back, and put entries as they were.

Each gives the new document, the act that undoes it, what was done, and the entry's id.
"""

from sawside.errors import Refusal
from sawside.lengths.reading.uses import renamed
from sawside.project.evaluation.graph import Graph
from sawside.project.kinds.entries import kind_of, read_entry
from sawside.project.schema.finding import found, refuse_taken, refuse_too_many
from sawside.project.schema.list_edits import with_id, with_more, without


def rename(document, id, name):
    """A new name; the texts that call it by the old one are rewritten."""
    _, entry = found(document, id)
    name = kind_of(entry).name(name)
    refuse_taken(document, name, but=entry["id"])
    changed = {entry["id"]: entry | {"name": name}}
    graph = Graph(document)
    for each in document["entries"]:
        if entry["id"] in graph.links.uses.get(each["id"], ()):
            changed[each["id"]] = calling(changed.get(each["id"], each), graph, {entry["id"]: name})
    new, undo = _put(document, changed)
    return new, undo, f"Renamed {entry['name']} to {name}.", entry["id"]


def calling(entry, graph, names):
    """An entry that calls others by new names, {id: name}; "range" where a text gets too long."""
    vocabulary = graph.vocabulary

    def new(written):
        target = vocabulary.target(written)
        if target is None or target.entry not in names:
            return None
        name, label = names[target.entry], written.rpartition(":")[2].strip()
        return f"{name}: {label}" if target.answer else name

    def rewritten(text):
        return renamed(text, vocabulary.longest, new)

    linked = graph.known[entry["id"]].linked
    return _short_enough(kind_of(entry).with_texts(entry, rewritten, linked))


def _short_enough(entry):
    """An entry whose rewritten texts can be kept."""
    try:
        return read_entry(entry)
    except Refusal:
        raise Refusal(
            "range",
            f"With that name, the text of {entry['name']} gets too long.",
            "Choose a shorter name.",
            field="name",
        ) from None


def delete(document, id):
    at, entry = found(document, id)
    undo = {"act": "restore", "entry": entry, "at": at}
    new = document | {"entries": without(document["entries"], at)}
    return new, undo, f"Deleted {entry['name']}.", None


def restore(document, entry, at):
    entries = with_more(document["entries"], entry, at, "at")
    if with_id(document["entries"], entry["id"]) or int(entry["id"]) >= document["next"]:
        raise Refusal(
            "conflict", f"{entry['name']} is already in the project.", "There’s nothing to do."
        )
    refuse_too_many(document)
    refuse_taken(document, entry["name"])
    undo = {"act": "delete", "id": entry["id"]}
    return document | {"entries": entries}, undo, f"Put {entry['name']} back.", entry["id"]


def move(document, id, to):
    """An entry to another place among the others."""
    at, entry = found(document, id)
    others = without(document["entries"], at)
    new = document | {"entries": with_more(others, entry, to, "to")}
    return new, {"act": "move", "id": entry["id"], "to": at}, f"Moved {entry['name']}.", entry["id"]


def put(document, entries):
    """Whole entries as they were: what undoes most acts."""
    for entry in entries:
        found(document, entry["id"])
    new, undo = _put(document, {entry["id"]: entry for entry in entries})
    names = {entry["name"].casefold() for entry in new["entries"]}
    if len(names) != len(new["entries"]):
        raise Refusal("conflict", "Two entries would have the same name.", "Rename one of them.")
    return new, undo, f"Undid a change to {entries[0]['name']}.", entries[0]["id"]


def _put(document, changed):
    new = document | {"entries": [changed.get(each["id"], each) for each in document["entries"]]}
    old = [each for each in document["entries"] if each["id"] in changed]
    return new, {"act": "put", "entries": old}
