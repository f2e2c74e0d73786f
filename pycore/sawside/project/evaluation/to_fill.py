"""What is still to be filled in: an entry whose own numbers nobody has given is not wrong yet.

"fill": what it needs is blank, so it has no answer. "check": nothing of its own was typed, only
what links it to others, so its answer stands on usual sizes that nobody has looked at. "waits": it
uses an entry that is one of these without an answer.
"""

from typing import NamedTuple

from sawside.reckoners import RECKONERS
from sawside.reckoning.values import LINKABLE, is_blank, shown_fields

FILL, CHECK, WAITS = "fill", "check", "waits"
_WANTING = ("missing", "conflict")


class ToFill(NamedTuple):
    """`fields` are (key, label) of those to be filled in, `waits_for` the ids of entries."""

    state: str
    fields: tuple = ()
    waits_for: tuple = ()


def to_fill(evaluation, identity):
    """The `ToFill` of an entry; None for one that is filled in, or wrong, or has no value."""
    worked, known = evaluation.worked.get(identity), evaluation.graph.known.get(identity)
    if worked is None:
        return None
    if worked.ok:
        return _unchecked(known, worked)
    if worked.waits:
        return _waiting(evaluation, worked)
    return _wanting(known.entry, worked.refusals)


def _waiting(evaluation, worked):
    """Of what waits; None where something it waits for is missing, wrong or goes in a circle."""
    waits_for = tuple(identity for identity, _ in worked.waits)
    if any(identity is None or not _is_coming(evaluation, identity) for identity in waits_for):
        return None
    return ToFill(WAITS, (), waits_for)


def _is_coming(evaluation, identity):
    """Whether an entry without a value only has to be filled in, or waits for such alone."""
    left, seen = [identity], set()
    while left:
        each = left.pop()
        worked = evaluation.worked[each]
        if each in seen or worked.ok:
            continue
        seen.add(each)
        if worked.waits:
            if any(used is None for used, _ in worked.waits):
                return False
            left += (used for used, _ in worked.waits)
        elif _wanting(evaluation.graph.known[each].entry, worked.refusals) is None:
            return False
    return True


def _wanting(entry, refusals):
    """Of what was refused for nothing but fields that are blank."""
    if entry["kind"] == "reading":
        return ToFill(FILL, (("text", "Reading"),)) if not entry["text"].strip() else None
    reckoner = RECKONERS.get(entry["reckoner"])
    fields = {field.key: field for field in reckoner.fields} if reckoner else {}
    wanted = {}
    for refusal in refusals:
        field = fields.get(refusal.field)
        if field is None or refusal.kind not in _WANTING:
            return None
        if not _is_blank_at(field, refusal, entry):
            return None
        wanted[field.key] = field.label
    return ToFill(FILL, tuple(wanted.items()))


def _is_blank_at(field, refusal, entry):
    """Whether nothing stands, and nothing usual holds, where a refusal points."""
    value = entry["values"].get(field.key)
    if is_blank(value):
        return field.start(entry["unit"]) is None
    if refusal.row is None or not isinstance(value, list) or refusal.row >= len(value):
        return False
    row = value[refusal.row]
    return isinstance(row, dict) and refusal.part is not None and is_blank(row.get(refusal.part))


def _unchecked(known, worked):
    """Of a line with an answer to which nobody has given a number of its own."""
    if worked.reckoner is None or not known.linked:
        return None
    values, linked = known.entry["values"], {field.key for field in known.linked}
    numbers = [
        field
        for field in shown_fields(worked.reckoner, values, known.entry["unit"])
        if field.kind in LINKABLE
    ]
    if any(not is_blank(values.get(each.key)) and each.key not in linked for each in numbers):
        return None
    plain = worked.reckoner.basic
    left = tuple(
        (each.key, each.label)
        for each in numbers
        if is_blank(values.get(each.key))
        and each.start(known.entry["unit"]) is not None
        and (not plain or each.key in plain)
    )
    return ToFill(CHECK, left) if left else None
