"""How sure a number is: what each reading behind it may be off by, and what that does to it.

Each reading is moved to the ends of what it may be, one at a time, and the number is worked out
again; `uncertainty.py` says how that is taken together.
"""

from sawside.errors import Refusal, Refusals, quoted
from sawside.lengths.tape_tolerances import RULES
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.evaluation.numbers import numbers
from sawside.project.schema.finding import found
from sawside.project.uncertainty.fit import fit_told
from sawside.project.uncertainty.perturb import Perturbed
from sawside.project.uncertainty.sure_told import sure_told
from sawside.project.uncertainty.uncertainty import Uncertainty
from sawside.reckoners.fields import choice
from sawside.reckoning.describe import field_told

_RULE = choice(
    "tape",
    "Tapes you haven’t checked",
    {"": "Assume accurate"} | RULES,
    help="Extra error to allow for when you haven’t checked the tape.",
)


def sure(document, id, answer=None, tape=None):
    """The contract of `sure` for a number of an entry: its first, or the `answer` of that key.

    `tape`, one of `tape_tolerances.RULES`, adds what it allows to readings by a tape whose own
    error nobody measured. Refusals: "unknown", and those of an entry that has no answer.
    """
    found(document, id)
    if tape and tape not in RULES:
        raise Refusal(
            "unknown", "There’s no such rule for tapes.", f"Use {', '.join(RULES)}.", field="tape"
        )
    evaluation = Evaluation(document)
    worked = evaluation.worked.get(id)
    if worked is None:
        raise Refusal("unknown", "A note has no number.", "Choose a reading or a line.", field="id")
    if not worked.ok:
        raise Refusals(worked.refusals)
    offered = numbers(worked)
    number = _asked(offered, answer)
    moved = Perturbed(document, evaluation, id, tape or None)
    return sure_told(Uncertainty(number, moved), moved) | {
        "fit": fit_told(moved),
        "asked": {"answer": number.key, "tape": tape or ""},
        "fields": [field_told(field) for field in _fields(offered, moved)],
    }


def _fields(offered, moved):
    """What can be chosen: another number, and what tapes may be off by."""
    if len(offered) > 1:
        labels = {each.key: each.label for each in offered.values()}
        yield choice("answer", "Which number", labels)
    if moved.readings:
        yield _RULE


def _asked(offered, answer):
    if not offered:
        raise Refusal(
            "unknown", "This line has no number to check.", "Choose another line.", field="id"
        )
    if answer and answer not in offered:
        raise Refusal(
            "unknown",
            f"There’s no number {quoted(answer)} among the answers.",
            "Choose another answer.",
            field="answer",
        )
    return offered[answer] if answer else next(iter(offered.values()))
