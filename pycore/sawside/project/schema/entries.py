"""The entries of a project: a checked copy of each kind, with its keys in one order.

What is blank is left out, and every value in an entry is a text, so two entries are the same
exactly when they are equal.
"""

from sawside.project.schema.checks import (
    damaged,
    id_checked,
    name_checked,
    text_checked,
    unit_checked,
)
from sawside.project.schema.entry_parts import (
    MOST_NOTE,
    READING,
    about_checked,
    by_part,
    checked,
    earlier_checked,
    pieces_checked,
    read_values_kept,
    trials_checked,
)


def read_entry(data, place="entry"):
    """A checked copy of one entry; `place` is where it stands, for the refusal."""
    if not isinstance(data, dict):
        raise damaged(place, "is not an object")
    kind = data.get("kind")
    if not isinstance(kind, str) or kind not in _KINDS:
        raise damaged(f"{place}.kind", f"is not one of {', '.join(_KINDS)}")
    needed, optional = _KINDS[kind]
    checks = _HEAD | needed
    entry = {"id": "", "kind": kind} | checked(data, place, checks, optional, ("kind",))
    return {key: value for key, value in entry.items() if value or key in checks or key == "kind"}


_HEAD = {"id": id_checked, "name": name_checked}
_KINDS = {
    "reading": (
        {"unit": unit_checked, "text": text_checked},
        READING | {"earlier": earlier_checked},
    ),
    "line": (
        {"unit": unit_checked, "reckoner": text_checked, "values": read_values_kept},
        {
            "cut": by_part(pieces_checked),
            "spoiled": by_part(pieces_checked),
            "trials": by_part(trials_checked),
            "about": by_part(about_checked),
        },
    ),
    "note": ({"text": lambda value, place: text_checked(value, place, MOST_NOTE)}, {}),
}
"""Kind to the checks of the keys that it needs, and of those that it may have."""
