"""Changing a project: each act gives the new document and the act that undoes it.

An id is never used twice, so a project's `next` only grows, and so does its log; apart from these
an act followed by its undo gives the document as it was.
"""

from typing import NamedTuple

from sawside.errors import Refusal, Refusals, quoted
from sawside.project import acts_at_the_saw as saw
from sawside.project import acts_kept as kept
from sawside.project import acts_placed as placed
from sawside.project import acts_project as whole
from sawside.project.checks import moment_checked
from sawside.project.document import MOST_LOG, MOST_SAID
from sawside.project.evaluate import Evaluation
from sawside.project.follows import follows
from sawside.project.judge import judged_anew
from sawside.project.trials import trial_told


class _Act(NamedTuple):
    """`moves` says that numbers may change, `must_work` that the entry must have an answer."""

    make: object
    moves: bool = True
    must_work: bool = False


_ACTS = {
    "rename_project": _Act(whole.rename_project, moves=False),
    "set": _Act(whole.set_settings),
    "tolerance": _Act(whole.set_tolerance),
    "keep_reading": _Act(kept.keep_reading, must_work=True),
    "keep_line": _Act(kept.keep_line, must_work=True),
    "keep_note": _Act(kept.keep_note, moves=False),
    "rename": _Act(placed.rename),
    "correct": _Act(kept.correct, must_work=True),
    "describe": _Act(kept.describe, must_work=True),
    "delete": _Act(placed.delete),
    "restore": _Act(placed.restore),
    "move": _Act(placed.move, moves=False),
    "put": _Act(placed.put),
    "cut": _Act(saw.cut, moves=False),
    "spoil": _Act(saw.spoil, moves=False),
    "recut": _Act(saw.recut, moves=False),
    "about": _Act(saw.about, moves=False),
    "trial": _Act(saw.trial, moves=False),
}


def change(document, act, *, tell=True):
    """Apply an act to a checked document (None only for "begin").

    Returns {"document", "undo", "said", "id", "follows", "judged"}, the last two without anything
    in them unless `tell`; the given document stays as it is. Refusals: "message" for an act that is
    none, "unknown" for an id or part that is not there, "conflict" for a name that is taken or a
    circle, and those of reading and reckoning what is kept.
    """
    if not isinstance(act, dict) or not isinstance(act.get("act"), str):
        raise Refusal("message", "There is no act.", "Send it as “act”.", field="act")
    if act.get("when"):
        moment_checked(act["when"], "when")
    name = act["act"]
    if name == "begin":
        return _begin(document, act)
    if document is None:
        raise Refusal("message", "There is no project yet.", "Begin one first.", field="document")
    if name not in _ACTS:
        raise Refusal(
            "message",
            f"There is no act {quoted(name)}.",
            f"Send one of begin, {', '.join(_ACTS)}.",
            field="act",
        )
    made = _ACTS[name]
    new, undo, said, identity = made.make(document, act)
    answer = told(document, logged(new, act, said), undo, said, identity, made, tell=tell)
    return answer | {"trial": trial_told(new, identity, act["part"])} if name == "trial" else answer


def told(document, new, undo, said, identity, made, *, tell):
    """A change as it is answered, once its new document holds."""
    answer = {"document": new, "undo": undo, "said": said, "id": identity}
    if not made.moves:
        return answer | {"follows": [], "judged": []}
    before, after = Evaluation(document), Evaluation(new)
    _refuse_circle(before, after, identity)
    if made.must_work:
        _refuse_failed(after.worked.get(identity))
    answer["follows"] = follows(before, after, but=identity) if tell else []
    answer["judged"] = judged_anew(document, before, new, after) if tell else []
    return answer


def logged(document, act, said):
    """The document with one more line in its log."""
    line = {"when": act.get("when") or "", "said": said[:MOST_SAID]}
    return document | {"log": [*document.get("log", ()), line][-MOST_LOG:]}


def _begin(document, act):
    if document is not None:
        raise Refusal("message", "A project is open already.", "Begin without one.", field="act")
    new = whole.begun(act)
    said = f"Began {new['name']}."
    return {"document": logged(new, act, said), "undo": None, "said": said, "id": None,
            "follows": [], "judged": []}  # fmt: skip


def _refuse_failed(worked):
    """Refuse an entry that can't be worked out with what was typed."""
    if worked is not None and not worked.ok:
        if len(worked.refusals) > 1:
            raise Refusals(worked.refusals)
        raise worked.refusals[0]


def _refuse_circle(before, after, identity):
    """Refuse a change that makes a chain go round, with the chain named."""
    circle = after.graph.circle
    if not circle or before.graph.circle:
        return
    chain = list(circle[:-1])
    if identity in chain:
        at = chain.index(identity)
        chain = chain[at:] + chain[:at]
    raise Refusal(
        "conflict",
        f"{' → '.join(after.names[each] for each in [*chain, chain[0]])} goes round in a circle.",
        "Type the number there, or take it from another entry.",
        field=_field(after, identity, chain),
    )


def _field(after, identity, chain):
    """The field of the entry where the chain goes on."""
    known = after.graph.known.get(identity)
    for call in known.calls.values() if known else ():
        if call.target and call.target.entry in chain:
            return call.field.key if call.field else "text"
    return None
