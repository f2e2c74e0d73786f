"""Settings when the unit of a bare number changes: what was filled in keeps its meaning."""

from sawside.errors import Refusal
from sawside.lengths.reading.unit_kept import pinned
from sawside.settings.own_material import MATERIALS
from sawside.settings.settings import CHOICES, SET_LENGTHS
from sawside.settings.tape_rows import PARTS, TAPES

_LENGTHS = tuple(part for part, (_, least, _) in PARTS.items() if least)


def meaning_kept(old, new, *, in_use):
    """The settings `new` with each text that is as in `old` pinned to the unit it was typed in.

    What was changed with the unit is in the new one. Where they are `in_use` by something kept,
    what was left blank and is another length in the new unit is written down as it was. `old` has
    been checked, `new` has not: one whose unit is none stays as it is.
    """
    before, after = old.get("unit", "in"), new.get("unit", "in")
    if before == after or not isinstance(after, str) or after not in CHOICES["unit"]:
        return new
    kept = dict(new)
    for each in SET_LENGTHS:
        _pin(kept, old, each.key, before, after)
        usual = each.usual_named(before)
        blank = not (old.get(each.key) or kept.get(each.key))
        if in_use and blank and usual != each.usual_named(after):
            kept[each.key] = usual
    if isinstance(new.get("tapes"), list):
        olds = old.get("tapes") or []
        kept["tapes"] = [
            tape_kept(row, olds[at] if at < len(olds) else {}, before, after)
            for at, row in enumerate(new["tapes"])
        ]
    return kept


def names_plain(settings):
    """Checked settings in which tapes and materials have the names that they are called by."""
    kept = dict(settings)
    for kind in (TAPES, MATERIALS):
        if rows := settings.get(kind.key):
            kept[kind.key] = [
                row | {"name": kind.texts(number, row)[0]} if row.get("name") else row
                for number, row in enumerate(rows)
            ]
    return kept


def tape_kept(row, old, before, after):
    """A row of a tape whose texts that are as in `old` mean in the unit `after` what they did."""
    if not isinstance(row, dict):
        return row
    row = dict(row)
    for part in _LENGTHS:
        _pin(row, old, part, before, after)
    return row


def _pin(texts, old, key, before, after):
    text = texts.get(key)
    if isinstance(text, str) and text == old.get(key):
        try:
            texts[key] = pinned(text, before, after)
        except Refusal:
            return
