"""A kept plan as it is told: what to buy, its boards group by group, their cuts and drawings."""

from fractions import Fraction

from sawside.drawing.boards.planned_board import Drawn, NextCut, planned_board
from sawside.lengths.display import decimal_text
from sawside.lengths.words import counted, listed
from sawside.project.plans.buying import buy_told, cost_told, list_text
from sawside.project.plans.checked import how_good
from sawside.project.plans.cuts_told import cuts_made, cuts_told, together_told
from sawside.project.plans.offcuts import kept_offcuts
from sawside.project.plans.words import forms, name_of, planned_text, size_text
from sawside.project.schema.plan_kept import FORMS
from sawside.wood.materials import started

_SAFE = (
    "Support long and heavy stock, and break it down first. Clamp what you can’t hold. The saw "
    "maker’s instructions come first."
)
_ROUGH = "Joint an edge before you rip: the plan counts on straight ones, and on the whole width."
_FEW = 3


def plan_told(standing, show, *, drawings=True, is_new=False):
    """A `Standing` as the contract of `CuttingPlan` has it, with nothing left out; of a new one
    nothing can have changed since."""
    boards = [board for board in standing.boards if board.pieces or board.bad]
    groups = {}
    for board in boards:
        groups.setdefault((board.material.casefold(), board.thickness, _molding(board)), []).append(
            board
        )
    buy = buy_told(standing.boards, show)
    told = [_group(group, standing, show, drawings) for group in groups.values()]
    stale = "" if is_new else standing.stale
    for group, those in zip(told, groups.values(), strict=True):
        group["best"] = "" if stale else how_good(those, standing.checked)
    spare = sum(not board.pieces and not board.bad for board in standing.boards)
    note = [f"{counted(spare, 'board')} bought and not needed now."] if spare else []
    if not is_new and any(board.bought and not board.source for board in boards):
        note.append("Planned on usual sizes: check them against what your yard sells.")
    return {
        "said": _said(boards, buy, standing),
        "buy": buy,
        "cost": cost_told(standing.boards),
        "waste": _waste(boards, show),
        "groups": told,
        "left_out": [],
        "stale": stale,
        "note": " ".join([*note, *_off(boards, standing, show), _SAFE]) if boards else "",
        "text": list_text(buy, cost_told(standing.boards), _waste(boards, show)),
    }


def _off(boards, standing, show):
    """What boards that are planed need first; of sheets that aren't as thick as their pieces are
    told to be a sentence for each size."""
    named = {}
    if any(board.form == "board" and standing.thicknesses(board) for board in boards):
        yield _ROUGH
    for board in boards:
        for asked in standing.thicknesses(board) if board.form == "sheet" else ():
            named.setdefault((board.thickness, asked), []).append(name_of(board))
    for (thickness, asked), names in named.items():
        sheets = listed(names) if len(names) <= _FEW else counted(len(names), "sheet")
        real, told = show.brief(thickness), show.brief(asked)
        are = "is" if len(names) == 1 else "are"
        yield f"{sheets} {are} {real} thick, not {told}: size joints and inside parts to that."


def _said(boards, buy, standing):
    """The verdict: what to buy, else how much is there."""
    pieces = sum(
        not standing.is_cut(board, piece)
        for board in boards
        if not board.bad
        for piece in board.pieces
    )
    left = f"{counted(pieces, 'piece')} to cut" if pieces else "All cut"
    if not boards:
        return "Nothing to cut"
    if not buy:
        return f"Nothing to buy: {left} from {_numbers(boards)}"
    bought = listed([forms(*each) for each in _counted([b for b in boards if b.bought])])
    return f"Buy {bought}: {left}" + (f" from {_numbers(boards)}" if _has_hand(boards) else "")


def _has_hand(boards):
    return any(not board.bought for board in boards)


def _numbers(boards):
    return listed([forms(*each) for each in _counted(boards)])


def _counted(boards):
    numbers = [(sum(board.form == form for board in boards), form) for form in FORMS]
    return [each for each in numbers if each[0]]


def _group(boards, standing, show, drawings):
    first = boards[0]
    thick = f", {show.brief(first.thickness)} thick" if first.thickness is not None else ""
    number = sum(len(board.pieces) for board in boards)
    fresh = [(b, name_of(b)) for b in boards if standing.state(b) == "to cut"]
    return {
        "material": f"{started(first.material or _molding(first) or 'Wood')}{thick}",
        "said": f"{counted(number, 'piece')} from {_numbers(boards)}",
        "best": "",
        "waste": _waste(boards, show),
        "together": together_told(fresh, show),
        "boards": [_board(board, standing, show, drawings) for board in boards],
    }


def _molding(board):
    """What a stick of a profile is called that is usually sold; "" for what is none."""
    return board.name if board.form == "stick" and not board.source else ""


def _board(board, standing, show, drawings):
    return {
        "key": board.key,
        "name": name_of(board),
        "stock": planned_text(board, standing, show),
        "bought": board.bought,
        "saved": board.saved,
        "state": standing.state(board),
        "drawing": _drawing(board, standing, show) if drawings else None,
        "marks": _marks(board, standing, show),
        "cuts": cuts_told(board, standing, show),
        "pieces": [_where(piece) for piece in board.pieces],
        "left": [_where(piece) for piece in board.pieces if not standing.is_cut(board, piece)],
        "offcuts": [size_text(show, p.length, p.width) for p in kept_offcuts(board)],
    }


def _where(piece):
    return {"entry": piece.entry, "part": piece.part}


def _area(length, width):
    return length * (1 if width is None else width)


def _waste(boards, show):
    """How much of the wood is neither a piece nor an offcut to save; "" where not all is known."""
    widths = {board.width is None for board in boards}
    if len(widths) != 1:
        return ""
    taken = sum(_area(board.length, board.width) for board in boards)
    used = sum(
        _area(part.length, part.width)
        for board in boards
        for part in (*(board.parts[piece.of] for piece in board.pieces), *kept_offcuts(board))
    )
    percent = Fraction(round((taken - used) / taken * 1000), 10) if taken else Fraction(0)
    return f"{decimal_text(percent)}% waste, kerfs included"


def _drawing(board, standing, show):
    rectangles = [_piece(board, piece, standing, show) for piece in board.pieces]
    rectangles += [
        Drawn(part.x, part.y, part.length, part.width, "ghost", texts=_left(part, show))
        for part in kept_offcuts(board)
    ]
    number = counted(len(board.pieces), "piece")
    words = f"{name_of(board)} with {number} laid out on it."
    if board.flaws:
        words += " What is bad of it is crossed out."
    is_sheet, sides = board.form == "sheet", (board.length, board.width)
    words += " The grain runs from left to right." if is_sheet else ""
    sizes = ["" if each is None else show.brief(each) for each in sides]
    drawn = (*sides, sizes, "grain →" if is_sheet else "")
    return planned_board(words, drawn, rectangles, board.flaws, _next_cut(board, standing))


def _left(part, show):
    return "offcut", size_text(show, part.length, part.width)


def _next_cut(board, standing):
    """The first cut that isn't made, in the drawing; None where there is none to make."""
    made = cuts_made(board, standing)
    number = next((each for each in range(len(board.cuts)) if each not in made), None)
    if number is None or board.bad:
        return None
    cut, part = board.cuts[number], board.parts[board.cuts[number].part]
    name = "next cut" if made else "first cut"
    if cut.way == "rip":
        return NextCut(name, "rip", part.y + cut.at, part.x, part.x + part.length)
    end = None if part.width is None else part.y + part.width
    return NextCut(name, "crosscut", part.x + cut.at, part.y, end)


def _marks(board, standing, show):
    """Each part that comes out of a board once, with its mark and how many of it there are."""
    told = {}
    for piece in board.pieces:
        part, known = board.parts[piece.of], standing.pieces.get(piece.key)
        sides = (part.width, part.length) if piece.turned else (part.length, part.width)
        size = size_text(show, *sides)
        mark = standing.mark(piece)
        name = known.told["name"] if known else "A piece that’s gone"
        one = {"mark": mark, "name": name, "size": size, "count": 0}
        told.setdefault((piece.key, size), one)["count"] += 1
    return sorted(told.values(), key=lambda one: (len(one["mark"]), one["mark"]))


def _piece(board, piece, standing, show):
    part, known = board.parts[piece.of], standing.pieces.get(piece.key)
    name = known.told["name"] if known else ""
    texts = name, size_text(show, part.length, part.width)
    key, mark, role = f"{piece.entry}/{piece.part}", standing.mark(piece), "stock"
    if standing.is_cut(board, piece):
        mark, role = f"{mark} ✓", "hatch"
    return Drawn(part.x, part.y, part.length, part.width, role, mark, texts, key)
