"""The acts on the cutting plan of a project: kept or dropped, and a board found bad.

Each gives the new document, the act that undoes it, what was done, and no entry's id.
"""

from sawside.errors import Refusal
from sawside.lengths.words import counted
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.pieces.pieces import pieces_of
from sawside.project.plans.board import board_kept, found_bad
from sawside.project.plans.standing import standing
from sawside.project.plans.words import name_of
from sawside.project.schema.plan_kept import inches_of


def keep_plan(document, plan=None):
    """A plan instead of the one that there was; without any it is dropped."""
    rest = {key: value for key, value in document.items() if key != "plan"}
    if plan is None:
        return rest, _as_it_was(document), "Dropped the cutting plan.", None
    said = f"Saved a cutting plan of {counted(len(plan['boards']), 'board')}."
    return rest | {"plan": plan}, _as_it_was(document), said, None


def board_bad(document, board):
    """A board of the plan that is bad: what was to come out of it and isn’t cut waits."""
    if not any(each["key"] == board for each in document.get("plan", {}).get("boards", ())):
        raise Refusal("unknown", "That board isn’t in the plan.", "Reopen it.", field="board")
    before = standing(document, pieces_of(document, Evaluation(document), drawings=False))
    found = next(each for each in before.boards if each.key == board)
    if found.bad:
        message = f"{name_of(found)} is marked bad already."
        raise Refusal("conflict", message, "Plan again.", field="board")
    cut = before.cut_of(found)
    begun = _counted(document["plan"]["begun"], [piece for piece in cut if not piece.done])
    kept = board_kept(found_bad(found, cut), inches_of(document["plan"]["kerf"]))
    boards = [kept if each["key"] == board else each for each in document["plan"]["boards"]]
    new = document | {"plan": document["plan"] | {"boards": boards, "begun": begun}}
    waits = len(found.pieces) - len(cut)
    said = f"Marked {name_of(found)} bad: {counted(waits, 'piece')} left to plan again."
    return new, _as_it_was(document), said, None


def _as_it_was(document):
    plan = document.get("plan")
    return {"act": "keep_plan"} | ({} if plan is None else {"plan": plan})


def _counted(begun, cut):
    """What was cut when the plan was made, with these pieces, which the plan has as cut now."""
    told = {(each["entry"], each["part"]): each for each in begun}
    for piece in cut:
        none = {"entry": piece.entry, "part": piece.part, "cut": 0, "spoiled": 0}
        each = told.get(piece.key, none)
        told[piece.key] = each | {"cut": each["cut"] + 1}
    return [*told.values()]
