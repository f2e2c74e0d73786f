"""The act that adds a case to fill in: its questions in order, linked by names, all else blank."""

import json
from functools import cache
from pkgutil import get_data

from sawside.project.acts.arrange import calling
from sawside.project.evaluation.graph import Graph
from sawside.project.kinds.entries import kind_of, read_entry
from sawside.project.schema.document import unit_of
from sawside.project.schema.finding import refuse_too_many, taken_names


@cache
def _order():
    """The lines and readings of `new_case.json`, from the top down."""
    return tuple(json.loads(get_data("sawside.project", "new_case.json")))


def new_case(document):
    """A document with a case to fill in at its end.

    Where one of its names is taken all of them get one number, so that a second case is called by
    itself alone: its carcass is Carcass 2 and takes the width of Space 2.
    """
    first, unit = document["next"], unit_of(document)
    entries = [_entry(each, str(number), unit) for number, each in enumerate(_order(), start=first)]
    entries = _numbered(entries, taken_names(document))
    new = document | {"next": first + len(entries), "entries": [*document["entries"], *entries]}
    refuse_too_many({"entries": new["entries"][1:]})  # as many as a project holds are enough
    undo = [{"act": "delete", "id": each["id"]} for each in reversed(entries)]
    undo = {"act": "several", "acts": undo, "said": "Removed the case."}
    return new, undo, "Added a case to fill in.", entries[0]["id"]


def _entry(each, identity, unit):
    kind = "line" if "reckoner" in each else "reading"
    return read_entry({"id": identity, "kind": kind, "unit": unit} | each)


def _numbered(entries, taken):
    """The entries under names that are free, calling each other by them."""
    names, number = {each["id"]: each["name"] for each in entries}, 1
    while any(name.casefold() in taken for name in names.values()):
        number += 1
        names = {each["id"]: f"{each['name']} {number}" for each in entries}
    if number == 1:
        return entries
    graph = Graph({"entries": entries})
    return [
        (calling(each, graph, names) if graph.known[each["id"]].linked else each)
        | {"name": kind_of(each).name(names[each["id"]])}
        for each in entries
    ]
