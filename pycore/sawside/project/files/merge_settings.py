"""The person's own tapes and materials of a backup brought into the settings of a project."""

from dataclasses import replace
from itertools import count

from sawside.errors import Refusal
from sawside.project.schema.settings_kept import tape_kept
from sawside.settings.own_material import MATERIALS
from sawside.settings.own_rows import MOST_OWN_NAME
from sawside.settings.settings import MOST_MATERIALS, MOST_TAPES, read_settings
from sawside.settings.tape_rows import TAPES

_KINDS = ((TAPES, MOST_TAPES), (MATERIALS, MOST_MATERIALS))


def brought(settings, others):
    """(the settings with what the others have more, {"tapes": {old name: new}, "materials": …}).

    What differs under one name is brought under a numbered one. Refusals: "range" for too many.
    """
    new, renamed = dict(settings), {}
    for kind, most in _KINDS:
        rows, renamed[kind.key] = _brought(settings, others, kind)
        if rows:
            new[kind.key] = [*(settings.get(kind.key) or ()), *rows]
            if len(new[kind.key]) > most:
                raise _too_many(kind.key, most)
    return new, renamed


def _brought(settings, others, kind):
    """(the rows that are to be added, {old name: new}) of one kind.

    What is here already under its numbered name is not brought again.
    """
    mine = getattr(read_settings(settings), kind.key)
    own = {each.name.casefold(): each for each in mine}
    theirs = {each.name.casefold() for each, _ in _rows(others, kind)}
    numbered = [each for each in mine if each.name.casefold() not in theirs]
    taken, rows, renamed = {*own, *theirs}, [], {}
    for each, row in _rows(others, kind):
        same, there, name = own.get(each.name.casefold()), None, each.name
        if same is not None:
            base = name[: MOST_OWN_NAME - 10].casefold()
            alike = [one for one in numbered if base_of(one.name.casefold()) == base]
            there = next((x for x in [same, *alike] if replace(x, name=name) == each), None)
            name = numbered_name(name, taken, MOST_OWN_NAME) if there is None else there.name
        if name != each.name:
            renamed[each.name] = name
        if there is None:
            taken.add(name.casefold())
            numbered += [replace(each, name=name)] if same else []
            if kind is TAPES:
                row = tape_kept(row, row, others.get("unit", "in"), settings.get("unit", "in"))
            rows.append(row | {"name": name})
    return rows, renamed


def _rows(settings, kind):
    """(what was read, the row as it was typed) of each row with something in it."""
    typed = [row for row in settings.get(kind.key) or () if kind.texts(0, row)]
    return [*zip(getattr(read_settings(settings), kind.key), typed, strict=True)]


def _too_many(what, most):
    return Refusal(
        "range",
        f"Both projects together have more than {most} {what}.",
        f"Remove {what} that nothing uses in Settings, then merge again.",
        field="text",
    )


def base_of(name):
    """What a name is called but for its number: of "rail 2" it is "rail"; None without a number."""
    base, _, number = name.rpartition(" ")
    return base if number.isdigit() else None


def numbered_name(name, taken, most):
    """A name with a number, not longer than `most`, that is not among the folded ones taken."""
    for number in count(2):
        one = f"{name[: most - 10]} {number}"
        if one.casefold() not in taken:
            return one
    return name
