"""The cut order "plan": a group for each board of the kept plan, with the cuts that are left."""

from sawside.project.pieces.cut_order import group_told
from sawside.project.plans.words import name_of, planned_text


def cuts_by_plan(pieces, standing, show):
    """The order of the cuts by a plan: its boards one after another, then what is in none."""
    told, planned = [], set()
    by_key = {(piece.entry["id"], piece.part.key): piece for piece in pieces}
    for board in standing.boards if standing else ():
        keys = dict.fromkeys(piece.key for piece in board.pieces if piece.key in by_key)
        if keys and not board.bad:
            planned |= keys.keys()
            told.append(_board(board, [by_key[key] for key in keys], standing, show))
    rest = [piece for key, piece in by_key.items() if key not in planned]
    if rest:
        told.append(group_told("Not in the plan" if standing else "No plan yet", rest))
    return {"order": "plan", "groups": told}


def _board(board, group, standing, show):
    left = sum(not standing.is_cut(board, piece) for piece in board.pieces)
    cuts = "all cut" if not left else "1 cut" if left == 1 else f"{left} cuts"
    return {
        "setting": None,
        "said": f"{name_of(board)}, {planned_text(board, standing, show)}: {cuts}",
        "waits": "",
        "left": left,
        "pieces": [piece.where for piece in group],
        "board": board.key,
    }
