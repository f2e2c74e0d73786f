"""A line: a question with what was typed, what became of its pieces, and its steps done."""

from sawside.needs import require
from sawside.project.kinds.checks import callable_name, text_checked, unit_checked
from sawside.project.kinds.entry_parts import (
    about_checked,
    by_part,
    pieces_checked,
    read_values_kept,
    trials_checked,
)
from sawside.project.kinds.kind import Kind
from sawside.project.kinds.line_worked import LineWorked
from sawside.project.kinds.step_done import step_done_checked
from sawside.reckoners import RECKONERS
from sawside.reckoning.values import LINKABLE, linkable
from sawside.wood.own import PREFIX


def _title(entry, _calls):
    reckoner = RECKONERS.get(entry["reckoner"])
    return reckoner.title if reckoner else entry["reckoner"]


def _texts(entry):
    reckoner = RECKONERS.get(entry["reckoner"])
    if reckoner is None:
        return ()
    return ((field, text) for field, text, _ in linkable(reckoner, entry["values"], entry["unit"]))


def _with_texts(entry, change, fields):
    return entry | {"values": _values_changed(entry["values"], change, fields)}


def _values_changed(values, change, fields):
    linked = {field.key: field for field in fields}
    return {
        key: _changed(value, change, linked[key]) if key in linked else value
        for key, value in values.items()
    }


def _changed(value, change, field):
    if isinstance(value, str):
        return change(value)
    if isinstance(value, list):
        return [_changed(each, change, field) for each in value]
    return _values_changed(value, change, [each for each in field.fields if each.kind in LINKABLE])


def _with_own(entry, renamed):
    reckoner = RECKONERS.get(entry["reckoner"])
    if reckoner is None or not any(renamed.values()):
        return entry
    materials = {PREFIX + old: PREFIX + name for old, name in renamed["materials"].items()}
    own = {"tape": renamed["tapes"], "material": materials}
    return entry | {"values": _own_values(reckoner.fields, entry["values"], own)}


def _own_values(fields, values, own):
    """Values in which tapes and materials have their new names, in rows as well."""
    new = dict(values)
    for field in fields:
        value = values.get(field.key)
        if field.kind in own and isinstance(value, str):
            new[field.key] = own[field.kind].get(value, value)
        elif field.kind == "rows" and isinstance(value, list):
            new[field.key] = [
                _own_values(field.fields, row, own) if isinstance(row, dict) else row
                for row in value
            ]
    return new


def _corrected(entry, values=None, **_others):
    require(values, "values")
    done = "Filled in" if all(map(_is_link, entry["values"].values())) else "Corrected"
    return entry | {"values": values}, f"{done} {entry['name']}."


def _is_link(value):
    """Whether nothing stands in a field but what another entry gives."""
    return isinstance(value, str) and (not value.strip() or "[" in value)


LINE = Kind(
    needs={"unit": unit_checked, "reckoner": text_checked, "values": read_values_kept},
    may={
        "cut": by_part(pieces_checked),
        "spoiled": by_part(pieces_checked),
        "trials": by_part(trials_checked),
        "about": by_part(about_checked),
        "done": by_part(step_done_checked),
    },
    name=callable_name,
    title=_title,
    texts=_texts,
    with_texts=_with_texts,
    with_own=_with_own,
    corrected=_corrected,
    work=LineWorked,
)
