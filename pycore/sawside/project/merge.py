"""Two projects made one: what the backup has and the project has not is added.

No number changes by it, neither of the project nor of the backup, but for those that the settings
make otherwise, which are told.
"""

from sawside.project.acts import Made
from sawside.project.acts_placed import calling
from sawside.project.backup import restore
from sawside.project.change import followed
from sawside.project.checks import MOST_NAME, moment_given
from sawside.project.finding import refuse_too_many
from sawside.project.graph import Graph
from sawside.project.merge_settings import brought, calling_own, numbered_name
from sawside.project.merge_told import otherwise

RULE = (
    "What the backup has and this project has not is added, its tapes and materials as well. What "
    "both have under one name and with the same content stays as it is. What both have under one "
    "name with other content is added under a numbered name, and so is all of the backup that "
    "depends on it, so that every number stays what it was. The other settings and the labels of "
    "this project stay: a number that comes out otherwise by them is told below, before and after."
)


def merge(document, text, when):
    """The contract of `merge`: a change that adds what is in a backup; refusals as `restore`."""
    when = moment_given(when)
    found = restore(text)
    other = found["document"]
    settings, owned = brought(document["settings"], other["settings"])
    added = _added(document, other, owned)
    new, places = _with(document | {"settings": settings}, other, added)
    undo = [
        {"act": "delete", "id": str(number)}
        for number in range(new["next"] - 1, document["next"] - 1, -1)
    ]
    if settings != document["settings"]:
        undo.append({"act": "set", "settings": document["settings"]})
    refuse_too_many({"entries": undo[1:]})  # one act undoes as many as a project holds
    said = f"Added {len(added)} of {len(other['entries'])} entries of {other['name']}."
    said += otherwise(document, other, new, places)
    if not undo:
        return {"document": document, "undo": None, "said": said, "id": None, "follows": [],
                "judged": [], "rule": RULE, "photos": {}}  # fmt: skip
    made = Made(new, {"act": "several", "acts": undo}, said, None, True, ())
    answer = followed(document, made, {"when": when})
    here = {entry["id"] for entry in document["entries"]}
    answer["judged"] = [
        each for each in answer["judged"] if each["id"] in here or each["verdict"] != "good"
    ]
    return answer | {"rule": RULE, "photos": found["photos"]}


def _with(document, other, added):
    """(the document with what is added to it, {id in the other: id here})."""
    here = {entry["name"].casefold(): entry["id"] for entry in document["entries"]}
    places, entries, upcoming = {}, [*document["entries"]], document["next"]
    for entry in other["entries"]:
        kept = added.get(entry["id"])
        if kept is None:
            places[entry["id"]] = here[entry["name"].casefold()]
            continue
        refuse_too_many({"entries": entries})
        places[entry["id"]] = str(upcoming)
        entries.append(kept | {"id": str(upcoming)})
        upcoming += 1
    return document | {"next": upcoming, "entries": entries}, places


def _added(document, other, owned):
    """{id: entry} of the other document's entries that are to be added, as they are called here.

    What uses an entry that gets a numbered name is added as well, and calls it by that name.
    """
    here = {entry["name"].casefold(): _content(entry) for entry in document["entries"]}
    entries = {entry["id"]: calling_own(entry, owned) for entry in other["entries"]}
    used_by = Graph(other).links.used_by
    both = {each for each, entry in entries.items() if entry["name"].casefold() in here}
    numbered = set()
    waiting = [
        each for each in both if here[entries[each]["name"].casefold()] != _content(entries[each])
    ]
    while waiting:
        each = waiting.pop()
        if each in both and each not in numbered:
            numbered.add(each)
            waiting += used_by.get(each, ())
    names = _numbered_names(entries, numbered, here)
    graph = Graph(other | {"entries": [*entries.values()]})
    return {
        each: _called(entry, names, graph)
        for each, entry in entries.items()
        if each in numbered or each not in both
    }


def _called(entry, names, graph):
    """An entry under its own new name, if any, that calls the others by theirs."""
    if not names.keys().isdisjoint(graph.links.uses.get(entry["id"], ())):
        entry = calling(entry, graph, names)
    return entry | {"name": names.get(entry["id"], entry["name"])}


def _content(entry):
    return {key: value for key, value in entry.items() if key != "id"}


def _numbered_names(entries, numbered, here):
    """{id: name with a number that nothing of both has} of some entries, in their order."""
    taken = {*here, *(entry["name"].casefold() for entry in entries.values())}
    names = {}
    for each, entry in entries.items():
        if each in numbered:
            names[each] = numbered_name(entry["name"], taken, MOST_NAME)
            taken.add(names[each].casefold())
    return names
