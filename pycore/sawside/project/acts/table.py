"""The acts on a project by name, and what is to be seen to after each."""

from typing import NamedTuple

from sawside.errors import Refusal, on_one_line, quoted
from sawside.project.acts import at_the_saw as saw
from sawside.project.acts import kept, placed
from sawside.project.acts import whole_project as whole
from sawside.project.schema.checks import Damaged, moment_given
from sawside.project.schema.document import MOST_ENTRIES, MOST_SAID


class _Act(NamedTuple):
    """`moves` says that numbers may change, `must_work` that the entry must have an answer.

    What `brings_back` is given was kept before; what others are given was typed.
    """

    make: object
    moves: bool = True
    must_work: bool = False
    brings_back: bool = False


ACTS = {
    "rename_project": _Act(whole.rename_project, moves=False),
    "set": _Act(whole.set_settings),
    "tolerance": _Act(whole.set_tolerance),
    "labels": _Act(whole.set_labels, moves=False),
    "keep_reading": _Act(kept.keep_reading, must_work=True),
    "keep_line": _Act(kept.keep_line, must_work=True),
    "keep_note": _Act(kept.keep_note, moves=False),
    "rename": _Act(placed.rename),
    "correct": _Act(kept.correct, must_work=True),
    "describe": _Act(kept.describe, must_work=True),
    "delete": _Act(placed.delete),
    "restore": _Act(placed.restore, brings_back=True),
    "move": _Act(placed.move, moves=False),
    "put": _Act(placed.put, brings_back=True),
    "cut": _Act(saw.cut, moves=False),
    "spoil": _Act(saw.spoil, moves=False),
    "recut": _Act(saw.recut, moves=False),
    "about": _Act(saw.about, moves=False),
    "trial": _Act(saw.trial, moves=False),
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
    if document is None:
        raise Refusal("message", "There is no project yet.", "Begin one first.", field="document")
    if act["act"] == "several":
        return _several(document, act)
    return _one(document, act, 0)


def checked(act):
    """An act with a name, and a moment that can be read if any."""
    if not isinstance(act, dict) or not isinstance(act.get("act"), str):
        raise Refusal("message", "There is no act.", "Send it as “act”.", field="act")
    moment_given(act.get("when"))
    return act


def _one(document, act, number):
    name = act["act"]
    if name not in ACTS:
        raise Refusal(
            "message",
            f"There is no act {quoted(name)}.",
            f"Send one of begin, several, {', '.join(ACTS)}.",
            field="act",
        )
    make, moves, must_work, brings_back = ACTS[name]
    try:
        new, undo, said, identity = make(document, act)
    except Damaged as fault:
        raise (fault if brings_back else fault.as_typed()) from None
    return Made(new, undo, said, identity, moves, ((number, identity),) if must_work else ())


def _several(document, act):
    """Acts one after another, undone together. A refusal has the number of its act as `row`."""
    acts, said = act.get("acts"), act.get("said")
    if not isinstance(acts, list) or not 0 < len(acts) <= MOST_ENTRIES:
        raise Refusal("message", "There are no acts.", "Send a list.", field="acts")
    if said is None:
        said = f"Made {len(acts)} changes."
    if not isinstance(said, str) or len(said) > MOST_SAID:
        raise Refusal(
            "message", "What is said of it can't be shown.", "Leave it out.", field="said"
        )
    said = on_one_line(said)
    undos, must_work, moves = [], [], False
    for number, each in enumerate(acts):
        try:
            one = _one(document, checked(each), number)
        except Refusal as refusal:
            refusal.row = number
            raise
        document = one.document
        undos.append(one.undo)
        must_work += one.must_work
        moves |= one.moves
    undo = {"act": "several", "acts": undos[::-1]}
    return Made(document, undo, said, None, moves, tuple(must_work))
