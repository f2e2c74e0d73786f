"""Changing a project: each act gives the new document and the act that undoes it.

An id is never used twice, so a project's `next` only grows, and so does its log; apart from these
an act followed by its undo gives the document as it was.
"""

from sawside.errors import Refusal, Refusals
from sawside.needs import checked
from sawside.project.acts.effects import effects
from sawside.project.acts.table import BEGIN, made
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.evaluation.graph import Graph
from sawside.project.evaluation.to_fill import to_fill
from sawside.project.pieces.judge_told import judged_anew
from sawside.project.pieces.trials import trial_told
from sawside.project.schema.document import MOST_LOG, log_line


def change(document=None, *, act, follows=True):
    """Apply an act that has a name to a checked document (None only for "begin").

    Returns {"document", "undo", "said", "id", "follows", "judged"}, the last two without anything
    in them unless `follows`; the given document stays as it is. Refusals: "message" for an act that
    is none, "unknown" for an id or part that is not there, "conflict" for a name that is taken or a
    circle, and those of reading and reckoning what is kept.
    """
    if act["act"] == "begin":
        return _begin(document, act)
    one = made(document, act)
    answer = followed(document, one, act, tell=follows)
    if act["act"] == "trial":
        answer["trial"] = trial_told(one.document, one.id, act["part"])
    return answer


def followed(document, one, act, *, tell=True):
    """What was made as it is answered, once its new document holds; see `change`."""
    new = _logged(one.document, act, one.said)
    answer = {"document": new, "undo": one.undo, "said": one.said, "id": one.id}
    answer |= {"follows": [], "judged": []}
    if not one.moves:
        return answer
    before = Evaluation(document) if tell else None
    after = Evaluation(new)
    if after.graph.links.cycle and not Graph(document).links.cycle:
        _refuse_cycle(after, one.id)
    for number, identity in one.must_work:
        if _stays_to_fill(document, after, identity):
            continue
        _refuse_failed(after.worked.get(identity), number if act["act"] == "several" else None)
    if tell:
        answer["follows"] = effects(before, after, but=one.id)
        answer["judged"] = judged_anew(document, before, new, after)
    return answer


def _stays_to_fill(document, after, identity):
    """Whether an entry that was to be filled in is so still, by what was typed until now."""
    worked = after.worked.get(identity)
    if worked is None or worked.ok or to_fill(after, identity) is None:
        return False
    return to_fill(Evaluation(document), identity) is not None


def _logged(document, act, said):
    """The document with one more line in its log."""
    line = log_line(act.get("when"), said)
    return document | {"log": [*document.get("log", ()), line][-MOST_LOG:]}


def _begin(document, act):
    if document is not None:
        raise Refusal("message", "A project is open already.", "Begin without one.", field="act")
    new = BEGIN.make(**checked(act, BEGIN))
    said = f"Started {new['name']}."
    return {
        "document": _logged(new, act, said),
        "undo": None,
        "said": said,
        "id": None,
        "follows": [],
        "judged": [],
    }


def _refuse_failed(worked, number):
    """Refuse an entry that can't be worked out with what was typed.

    Where it is one of several acts, the refusal has the `number` of its act as `row`.
    """
    if worked is None or worked.ok:
        return
    if number is not None:
        first = worked.refusals[0]
        raise Refusal(first.kind, first.message, first.remedy, field=first.field, row=number)
    if len(worked.refusals) > 1:
        raise Refusals(worked.refusals)
    raise worked.refusals[0]


def _refuse_cycle(after, identity):
    """Refuse a change that makes a chain go round, with the chain named."""
    chain = list(after.graph.links.cycle[:-1])
    if identity in chain:
        at = chain.index(identity)
        chain = chain[at:] + chain[:at]
    raise Refusal(
        "conflict",
        f"{' → '.join(after.names[each] for each in [*chain, chain[0]])} refers back to itself.",
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
