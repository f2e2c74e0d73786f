"""Finding entries and names in a document, and putting changed ones in their place."""

from sawside.errors import Refusal
from sawside.project.kinds.checks import clean_name
from sawside.project.schema.document import MOST_ENTRIES
from sawside.project.schema.list_edits import with_id, with_one


def found(document, identity):
    """(index, entry) of an id; "unknown" when it is not there."""
    there = with_id(document["entries"], identity)
    if there is None:
        message = "That entry isn’t in the project."
        raise Refusal("unknown", message, "Reopen the project.", field="id")
    return there


def of_kind(document, kind):
    """The entries of one kind: "reading", "line" or "note"."""
    return [entry for entry in document["entries"] if entry["kind"] == kind]


def with_entry(document, at, entry):
    """The document with another entry in one place."""
    return document | {"entries": with_one(document["entries"], at, entry)}


def refuse_too_many(document):
    """Refuse one entry more than a project holds."""
    if len(document["entries"]) >= MOST_ENTRIES:
        message = f"A project can hold at most {MOST_ENTRIES} entries."
        raise Refusal("range", message, "Start another project.")


def refuse_taken(document, name, but=None):
    """Refuse a name that another entry has ("conflict")."""
    if name.casefold() in taken_names(document, but):
        message = f"There’s already a {name} in this project."
        raise Refusal("conflict", message, "Choose another name.", field="name")


def free_name(document, name):
    """A clean name, with a number added when it is taken."""
    name = clean_name(name)
    taken = taken_names(document)
    number, free = 1, name
    while free.casefold() in taken:
        number += 1
        free = clean_name(f"{name[:70]} {number}")
    return free


def taken_names(document, but=None):
    """The names of all entries, or of all but one, in small letters."""
    return {entry["name"].casefold() for entry in document["entries"] if entry["id"] != but}
