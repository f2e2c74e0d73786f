"""The act that puts what is left of a board of the plan into the project's wood on hand."""

from sawside.errors import Refusal
from sawside.lengths.display import mixed_text
from sawside.lengths.words import counted
from sawside.project.acts.keep import correct, keep_line
from sawside.project.acts.plan_acts import as_it_was, board_of_plan, with_board
from sawside.project.plans.offcuts import kept_offcuts
from sawside.project.plans.words import name_of
from sawside.project.schema.finding import of_kind
from sawside.reckoning.reckon import find

_QUESTION = "wood_on_hand"
_ROWS = "wood"


def save_offcuts(document, board):
    """Rows of the first line "wood on hand", or of a new one, for the offcuts worth saving of a
    board whose pieces are all cut. Its answer is seen to by the caller."""
    standing, found = board_of_plan(document, board)
    parts = kept_offcuts(found)
    _refuse(standing, found, parts)
    rows = _rows(found, parts)
    line = next(
        (entry for entry in of_kind(document, "line") if entry["reckoner"] == _QUESTION), None
    )
    if line is None:
        new, undo, _, identity = keep_line(document, find(_QUESTION), {_ROWS: rows})
    else:
        there = line["values"].get(_ROWS, [])
        values = line["values"] | {_ROWS: [*there, *rows]}
        new, undo, _, identity = correct(document, line["id"], values=values)
    new = with_board(new, found, saved=True)
    undo = {"act": "several", "acts": [as_it_was(document), undo]}
    said = f"Saved {counted(len(parts), 'offcut')} of {name_of(found)} to the wood on hand."
    return new, undo, said, identity


def _refuse(standing, board, parts):
    name = name_of(board)
    if board.saved:
        message = f"The offcuts of {name} are on the list already."
        raise Refusal("conflict", message, "There’s nothing to do.", field="board")
    if standing.state(board) != "cut":
        message = f"{name} isn’t all cut yet."
        raise Refusal("conflict", message, "Cut its pieces first.", field="board")
    if not parts:
        message = f"{name} has no offcut worth saving."
        raise Refusal("impossible", message, "There’s nothing to do.", field="board")
    if board.thickness is None and board.form != "stick":
        raise Refusal(
            "impossible",
            f"{name} has no thickness.",
            "Measure it, and add the offcut to the wood on hand yourself.",
            field="board",
        )


def _rows(board, parts):
    """Offcuts as rows of the question, those of one size once."""
    counts = {}
    for part in parts:
        size = part.length, part.width
        counts[size] = counts.get(size, 0) + 1
    prefix = "stick_" if board.form == "stick" else ""
    rows = []
    for (length, width), number in counts.items():
        sizes = {"length": length, f"{prefix}width": width, f"{prefix}thickness": board.thickness}
        row = {"form": board.form, "material": board.material, "count": str(number)}
        row |= {key: f"{mixed_text(size)} in" for key, size in sizes.items() if size is not None}
        rows.append({key: text for key, text in row.items() if text} | {"note": name_of(board)})
    return rows
