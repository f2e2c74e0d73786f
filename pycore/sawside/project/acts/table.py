"""The acts on a project by name, what each needs and may have, and what is to be seen to after."""

from collections.abc import Callable, Mapping
from typing import NamedTuple

from sawside.errors import Refusal, message_fault, on_one_line, quoted
from sawside.needs import NOTHING, an_object, checked, index, one_of, require, some, text
from sawside.project.acts import (
    arrange,
    finish_parts,
    keep,
    new_case,
    plan_acts,
    save_offcuts,
    ticks,
)
from sawside.project.acts import saw_acts as saw
from sawside.project.acts import whole_project as whole
from sawside.project.kinds.checks import Damaged, clean_name, moment_given, short_sum
from sawside.project.kinds.checks import unit_checked as unit
from sawside.project.schema.document import MOST_ENTRIES, MOST_SAID
from sawside.project.schema.given import (
    DETAILS,
    entries,
    kept_entry,
    places,
    plan,
    reckoner,
    values,
)


class Act(NamedTuple):
    """`make` is given the document and the checked keys; `needs` and `may` are as in `needs.py`.

    `moves` says that numbers may change, `must_work` that the entry must have an answer. What
    `brings_back` is given was kept before; what others are given was typed.
    """

    make: Callable
    needs: Mapping[str, Callable] = NOTHING
    may: Mapping[str, Callable] = NOTHING
    moves: bool = True
    must_work: bool = False
    brings_back: bool = False


def an_act(value, place):
    """An act with a name; its other keys are checked when it is made."""
    if not isinstance(an_object(value, place).get("act"), str):
        raise message_fault(place, "an object with the name of an act as “act”")
    moment_given(value.get("when"))
    return value


_ONE = {"id": text}
_PART = _ONE | {"part": text}
_WHEN = {"when": moment_given}
_DESCRIBED = {key: check for key, check in DETAILS.items() if key != "when"}
_NAMED = {"name": text, "unit": unit}
BEGIN = Act(whole.begun, needs={"name": clean_name})
"""The act that has no document before it."""

SEVERAL = Act(None, needs={"acts": some(MOST_ENTRIES)}, may={"said": text})
"""Acts made one after another, by `made`; those are checked in their turn."""

ACTS = {
    "rename_project": Act(whole.rename_project, needs={"name": clean_name}, moves=False),
    "set": Act(whole.set_settings, may={"settings": an_object}),
    "tolerance": Act(whole.set_tolerance, needs={"text": text}, may={"unit": unit}),
    "labels": Act(whole.set_labels, needs={"values": an_object}, may={"unit": unit}, moves=False),
    "keep_reading": Act(
        keep.keep_reading, needs={"text": short_sum}, may=_NAMED | DETAILS, must_work=True
    ),
    "keep_line": Act(
        keep.keep_line,
        needs={"reckoner": reckoner, "values": values},
        may=_NAMED | {"about": an_object},
        must_work=True,
    ),
    "new_case": Act(new_case.new_case),
    "keep_note": Act(keep.keep_note, needs={"text": text}, may={"name": text}, moves=False),
    "rename": Act(arrange.rename, needs=_ONE | {"name": text}),
    "correct": Act(
        keep.correct,
        needs=_ONE,
        may={"text": text, "values": values, "unit": unit} | DETAILS,
        must_work=True,
    ),
    "describe": Act(
        keep.describe, needs=_ONE, may=_DESCRIBED | {"read_at": moment_given}, must_work=True
    ),
    "delete": Act(arrange.delete, needs=_ONE),
    "restore": Act(arrange.restore, needs={"entry": kept_entry, "at": index}, brings_back=True),
    "move": Act(arrange.move, needs=_ONE | {"to": index}, moves=False),
    "put": Act(arrange.put, needs={"entries": entries}, brings_back=True),
    "cut": Act(saw.cut, needs=_PART | {"by": one_of(1, -1)}, may=_WHEN, moves=False),
    "spoil": Act(saw.spoil, needs=_PART, may={"which": index} | _WHEN, moves=False),
    "recut": Act(saw.recut, needs=_PART | {"which": places}, may=_WHEN, moves=False),
    "about": Act(saw.about, needs=_PART | {"about": an_object}, moves=False),
    "keep_plan": Act(plan_acts.keep_plan, may={"plan": plan}, moves=False),
    "board_bad": Act(plan_acts.board_bad, needs={"board": text}, moves=False),
    "finish_parts": Act(finish_parts.finish_parts, must_work=True),
    "save_offcuts": Act(save_offcuts.save_offcuts, needs={"board": text}, must_work=True),
    "trial": Act(
        saw.trial,
        needs=_PART | {"measured": text},
        may={"aimed": text, "cut": text} | _WHEN,
        moves=False,
    ),
    "tick": Act(
        ticks.tick,
        needs=_ONE | {"step": text},
        may=_WHEN | dict.fromkeys(("done_at", "temperature", "humidity", "note", "photo"), text),
        moves=False,
    ),
    "untick": Act(ticks.untick, needs=_ONE | {"step": text}, moves=False),
}


class Made(NamedTuple):
    """What an act made: the new document, its undo, a sentence, and the id of its entry or None.

    `moves` says whether numbers may have changed, `must_work` lists (number of the act, id) of the
    entries that must have an answer.
    """

    document: dict
    undo: dict
    said: str
    id: str | None
    moves: bool
    must_work: tuple


def made(document, act):
    """The `Made` of an act; refusals as the acts themselves, "message" for what is none."""
    require(document, "document")
    if act["act"] == "several":
        return _several(document, **checked(act, SEVERAL))
    return _one(document, act, 0)


def _one(document, act, number):
    name = act["act"]
    if name not in ACTS:
        raise Refusal(
            "message",
            f"There is no act {quoted(name)}.",
            f"Send one of begin, several, {', '.join(ACTS)}.",
            field="act",
        )
    kind = ACTS[name]
    try:
        new, undo, said, identity = kind.make(document, **checked(act, kind))
    except Damaged as fault:
        raise (fault if kind.brings_back else fault.as_typed()) from None
    must_work = ((number, identity),) if kind.must_work else ()
    return Made(new, undo, said, identity, kind.moves, must_work)


def _several(document, acts, said=None):
    """Acts one after another, undone together. A refusal has the number of its act as `row`."""
    if said is None:
        said = f"Made {len(acts)} changes."
    if len(said) > MOST_SAID:
        raise message_fault("said", f"a text of at most {MOST_SAID} characters")
    undos, must_work, moves = [], [], False
    for number, act in enumerate(acts):
        try:
            one = _one(document, an_act(act, "act"), number)
        except Refusal as refusal:
            refusal.row = number
            raise
        document = one.document
        undos.append(one.undo)
        must_work += one.must_work
        moves |= one.moves
    undo = {"act": "several", "acts": undos[::-1]}
    return Made(document, undo, on_one_line(said), None, moves, tuple(must_work))
