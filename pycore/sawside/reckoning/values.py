"""Reading the values of a form by its declaration: every bad field hears of its own."""

from functools import cached_property
from types import SimpleNamespace

from sawside.errors import Refusal, Refusals, each_of, left_blank, quoted
from sawside.lengths.as_typed import given_text
from sawside.reckoning.one_value import ONE
from sawside.reckoning.sentence import BETWEEN_ROWS, Said, sentence


class Form:
    """What was read: `given` for the reckoner; `echoes`, `summary`, `solved` for the person."""

    def __init__(self, given, echoes, said):
        self.given = given
        self.echoes = echoes
        self.said = said
        self.solved = []

    @cached_property
    def summary(self):
        """What was filled in, as a sentence."""
        return sentence(self.said)

    def lengths(self, reckoner):
        """Every length that was filled in, or taken from the settings, in exact inches.

        They are only looked up when the first one is asked for: a line often isn't told.
        """
        return _lengths_of(reckoner.fields, self.given)


def read_values(reckoner, values, settings, names=None):
    """Read a reckoner's values; `names` may stand in its texts (see `lengths.reading.names`).

    Raises `Refusals` with one refusal for each bad field.
    """
    form, blank, refusals = _read_fields(reckoner.fields, values, settings, names)
    if form is None:
        raise refusals[0].of("values")
    solved = _solve_one_of(reckoner, values, settings.unit)
    empty = [field for field in solved if field.key in blank]
    wanting = all(refusal.kind == "missing" for refusal in refusals)
    if solved and len(empty) != 1 and wanting:
        refusals.append(_not_one_blank(solved, empty))
    if refusals:
        raise Refusals(refusals)
    form.solved = [field.key for field in empty]
    return form


def _solve_one_of(reckoner, values, unit):
    """The fields of which one is left blank; none while the form doesn't ask for all of them."""
    solved = [field for field in reckoner.fields if field.key in reckoner.solve_one_of]
    return solved if all(_shown(each, reckoner.fields, values, unit) for each in solved) else []


def reread(reckoner, form, values, settings, names, linked):
    """The form that only differs in the fields `linked`, whose names now stand for others.

    How a text was understood does not depend on what its names stand for. Refusals as
    `read_values`.
    """
    given = SimpleNamespace(**vars(form.given))
    for field in linked:
        try:
            value, _ = read_field(field, _typed(field, values, settings.unit), settings, names)
        except (Refusal, Refusals):
            return read_values(reckoner, values, settings, names)
        setattr(given, field.key, value)
    again = Form(given, form.echoes, form.said)
    again.solved = form.solved
    return again


def _lengths_of(fields, given):
    for field in fields:
        if field.kind not in ("length", "lengths", "rows"):
            continue
        value = getattr(given, field.key)
        if value is None:
            continue
        if field.kind == "length":
            yield value
        elif field.kind == "lengths":
            yield from value
        else:
            for row in value:
                yield from _lengths_of(field.fields, row)


def linkable(reckoner, values, unit):
    """(field, text, (row, key of the field in it or None) or None) of every text that may hold
    names: those of numbers that are shown.

    `unit` is that of a bare number. What is neither a text nor a list of what belongs there is
    refused when it is read.
    """
    yield from _linkable(reckoner.fields, values, unit)


def _linkable(fields, values, unit):
    for field in fields:
        if field.kind not in LINKABLE or not _shown(field, fields, values, unit):
            continue
        value = values.get(field.key, "")
        if isinstance(value, list):
            yield from _linkable_rows(field, value, unit)
        elif isinstance(value, str):
            yield field, value, None


def _linkable_rows(field, rows, unit):
    for at, row in enumerate(rows):
        if isinstance(row, str):
            yield field, row, (at, None)
        elif isinstance(row, dict) and field.kind == "rows":
            for part, text, _ in _linkable(field.fields, row, unit):
                yield field, text, (at, part.key)


LINKABLE = ("length", "angle", "count", "number", "lengths", "rows")
"""The kinds of fields whose texts are read as sums."""


def _not_one_blank(solved, empty):
    labels = [field.label for field in solved]
    named = f"{', '.join(labels[:-1])} and {labels[-1]}"
    if empty:
        message = f"Only one of {named} can be left blank."
        return Refusal("conflict", message, f"Fill in {empty[0].label}.", field=empty[0].key)
    message = f"There’s nothing left to solve for: {named} are all filled in."
    return Refusal("conflict", message, "Leave one of them blank.", field=solved[-1].key)


def _read_fields(fields, values, settings, names):
    """(form, keys left blank, refusals) of some fields; values of hidden fields are not read."""
    if not isinstance(values, dict):
        refusal = Refusal("message", "The values are not readable.", "Send them by field.")
        return None, set(), [refusal]
    refusals = [_no_field(key) for key in values if key not in {field.key for field in fields}]
    given, echoes, said, blank = {field.key: None for field in fields}, {}, [], set()
    for field in fields:
        if not _shown(field, fields, values, settings.unit):
            continue
        value = _typed(field, values, settings.unit)
        if value is None and (length := settings.set_lengths.get(field.setting)) is not None:
            given[field.key] = length
            echoes[field.key] = f"{given_text(length, settings)} from Settings"
        elif value is None:
            blank.add(field.key)
            if not field.may_be_blank:
                refusals.append(left_blank(field.label, "Fill it in.", field.key))
        else:
            try:
                given[field.key], echo = read_field(field, value, settings, names)
            except (Refusal, Refusals) as fault:
                refusals += [refusal.of(field.key) for refusal in each_of(fault)]
                continue
            said.append(Said(field, echo, value != field.start(settings.unit)))
            if not (field.choices or field.choices_from):
                echoes[field.key] = echo
    return Form(SimpleNamespace(**given), echoes, said), blank, refusals


def _no_field(key):
    message = f"There’s no field {quoted(str(key))}."
    return Refusal("unknown", message, "Remove it.", field=str(key))


def read_field(field, value, settings, names=None):
    """(what a reckoner is given, how it was read) of what was typed in one field; not blank."""
    return _READ[field.kind](field, value, settings, names)


def _typed(field, values, unit):
    """The value as typed, or its default where a bare number is in `unit`; None for a blank."""
    value = values.get(field.key)
    if isinstance(value, (int, float)) and not isinstance(value, bool):
        value = str(value)
    return field.start(unit) if is_blank(value) else value


def is_blank(value):
    """Whether nothing was typed into a field."""
    if isinstance(value, str):
        return not value.strip()
    return value is None or value == []


def shown_fields(reckoner, values, unit):
    """The fields that a reckoner asks for with these values; `unit` is that of a bare number."""
    return [each for each in reckoner.fields if _shown(each, reckoner.fields, values, unit)]


def _shown(field, fields, values, unit):
    by_key = {each.key: each for each in fields} if field.conditions else {}
    return all(_typed(by_key[key], values, unit) in shown_by for key, shown_by in field.conditions)


def _list(field, value):
    if not isinstance(value, list):
        raise Refusal("message", f"{field.label} is not a list.", "Send it as a list.")
    if len(value) > field.most_rows:
        raise Refusal(
            "range", f"{field.label} has more than {field.most_rows} entries.", "Remove some."
        )
    return value


def _lengths(field, value, settings, names):
    """The lengths of a list; blank entries are skipped."""
    read, echoes, refusals = [], [], []
    for row, typed in enumerate(_list(field, value)):
        typed = _typed(field, {field.key: typed}, settings.unit)
        if typed is None:
            continue
        try:
            length, echo = ONE["length"](field, typed, settings, names)
        except Refusal as refusal:
            refusals.append(_in_row(refusal, field, row))
        else:
            read.append(length)
            echoes.append(echo)
    return _all(field, read, echoes, refusals)


def _rows(field, value, settings, names):
    """The rows of a field; a row with nothing typed is skipped."""
    read, echoes, refusals = [], [], []
    for row, typed in enumerate(_list(field, value)):
        if isinstance(typed, dict) and not any(typed.values()):
            continue
        form, _, wrong = _read_fields(field.fields, typed, settings, names)
        for refusal in wrong:
            refusals.append(_in_row(refusal, field, row))
        if not wrong:
            read.append(form.given)
            echoes.append(form.summary)
    return _all(field, read, echoes, refusals)


def _in_row(refusal, field, row):
    """A refusal inside a list: told of the list, with its row (from 0) and its part."""
    part, refusal.field = refusal.field, None
    refusal.message = f"{field.row_label or field.label} {row + 1}: {refusal.message}"
    return refusal.of(field.key, row=row, part=part)


def _all(field, read, echoes, refusals):
    if refusals:
        raise Refusals(refusals)
    if not read and not field.may_be_blank:
        raise left_blank(field.label, "Fill in at least one.")
    return read, BETWEEN_ROWS.join(echoes)


_READ = ONE | {"lengths": _lengths, "rows": _rows}
