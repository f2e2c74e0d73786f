"""The entries of a project: a checked copy of each kind, with its keys in one order.

What is blank is left out, and every value in an entry is a text, so two entries are the same
exactly when they are equal.
"""

from sawside.project.kinds.checks import damaged, id_checked, name_checked
from sawside.project.kinds.entry_parts import checked
from sawside.project.kinds.line import LINE
from sawside.project.kinds.note import NOTE
from sawside.project.kinds.reading import READING

KINDS = {"reading": READING, "line": LINE, "note": NOTE}
_HEAD = {"id": id_checked, "name": name_checked}


def kind_of(entry):
    """The `Kind` of a checked entry."""
    return KINDS[entry["kind"]]


def read_entry(data, place="entry"):
    """A checked copy of one entry; `place` is where it stands, for the refusal."""
    if not isinstance(data, dict):
        raise damaged(place, "is not an object")
    kind = data.get("kind")
    if not isinstance(kind, str) or kind not in KINDS:
        raise damaged(f"{place}.kind", f"is not one of {', '.join(KINDS)}")
    checks = _HEAD | KINDS[kind].needs
    entry = {"id": "", "kind": kind} | checked(data, place, checks, KINDS[kind].may, ("kind",))
    return {key: value for key, value in entry.items() if value or key in checks or key == "kind"}
