"""The acts on the cutting plan of a project: kept or dropped, and a board found bad.

Each gives the new document, the act that undoes it, what was done, and no entry's id.
"""

from dataclasses import replace

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
        return rest, as_it_was(document), "Dropped the cutting plan.", None
    said = f"Saved a cutting plan of {counted(len(plan['boards']), 'board')}."
    return rest | {"plan": plan}, as_it_was(document), said, None


def board_bad(document, board):
    """A board of the plan that is bad: what was to come out of it and isn’t cut waits."""
    before, found = board_of_plan(document, board)
    if found.bad:
        message = f"{name_of(found)} is marked bad already."
        raise Refusal("conflict", message, "Plan again.", field="board")
    cut = before.cut_of(found)
    begun = _counted(document["plan"]["begun"], [piece for piece in cut if not piece.done])
    new = with_board(document, found_bad(found, cut))
    new["plan"]["begun"] = begun
    waits = len(found.pieces) - len(cut)
    said = f"Marked {name_of(found)} bad: {counted(waits, 'piece')} left to plan again."
    return new, as_it_was(document), said, None


def board_of_plan(document, key):
    """(the plan's `Standing`, its board of this key). Refusals: "unknown" for one not there."""
    if not any(each["key"] == key for each in document.get("plan", {}).get("boards", ())):
        raise Refusal("unknown", "That board isn’t in the plan.", "Reopen it.", field="board")
    there = standing(document, pieces_of(document, Evaluation(document), drawings=False))
    return there, next(board for board in there.boards if board.key == key)


def with_board(document, board, **changed):
    """The document with another board in the place of the one of its key."""
    plan = document["plan"]
    kept = board_kept(replace(board, **changed), inches_of(plan["kerf"]))
    boards = [kept if each["key"] == board.key else each for each in plan["boards"]]
    return document | {"plan": plan | {"boards": boards}}


def as_it_was(document):
    """The act that brings back the plan of a document, or that there was none."""
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
