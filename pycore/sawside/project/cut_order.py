"""The order of the cuts: by set-up, so that each stop is set once, by board, or by part."""

from itertools import groupby

from sawside.project.material import together
from sawside.project.stock import NOT_TOLD, sides, stock_of


def cuts(pieces, order, show):
    """Groups of pieces in the order in which they are cut; `pieces` come longest first.

    "set-up": pieces of one length are one group, longest first; within it those with the same
    ends, and so the same settings of the saw, stand together. "board": a group for each stock that
    pieces come out of, the one with the longest piece first and what nothing is told of last;
    within it they go as by set-up. "part": a group for each line.
    """
    return {"order": order, "groups": _GROUPS[order](pieces, show)}


def _by_set_up(pieces, _show):
    return [_stop(sorted(group, key=_ends)) for _, group in groupby(pieces, key=_mark)]


def _by_board(pieces, show):
    boards = {}
    for _, equal in groupby(pieces, key=_mark):
        for piece in sorted(equal, key=_ends):
            boards.setdefault(stock_of(piece), []).append(piece)
    told = [_board(group, show) for stock, group in boards.items() if stock != NOT_TOLD]
    if NOT_TOLD in boards:
        told.append(_group("Material and size not told", boards[NOT_TOLD]))
    return told


def _by_part(pieces, _show):
    by_line = sorted(pieces, key=lambda piece: int(_line(piece)))
    return [
        _group(group[0].entry["name"], group)
        for group in (list(each) for _, each in groupby(by_line, key=_line))
    ]


_GROUPS = {"set-up": _by_set_up, "board": _by_board, "part": _by_part}
ORDERS = tuple(_GROUPS)


def _mark(piece):
    return piece.told["length"]["mark"]


def _line(piece):
    return piece.entry["id"]


def _ends(piece):
    both = piece.told["ends"]["left"], piece.told["ends"]["right"]
    return tuple(text or "" for end in both for text in (end["cut"], end["angle"]))


def _group(name, group):
    left = _left(group)
    return {
        "setting": None,
        "said": f"{name}: {_cuts(left)}",
        "left": left,
        "pieces": [piece.where for piece in group],
    }


def _stop(group):
    setting = group[0].told["length"]
    return _group(f"Stop at {setting['text']}", group) | {"setting": setting}


def _board(group, show):
    """The group of one stock, with the length that is still to come out of it."""
    told = _group(_stock_name(group[0]), group)
    left = _left(group)
    if left > 0:
        kerfs = (left - 1) * show.settings.kerf
        needed = show.brief(together(group, "left", rough=True) + kerfs, "reach")
        # A slanting cut takes more of the edge than the blade is wide.
        least = "at least " if kerfs and any(map(_is_slanting, group)) else ""
        told["said"] += f", {least}{needed} end to end with kerfs" if kerfs else f", {needed}"
    return told


def _is_slanting(piece):
    return any(end["cut"] != "square" for end in piece.told["ends"].values())


def _stock_name(piece):
    width, thickness = sides(piece)
    if width and thickness:
        size = f"{width['brief']} × {thickness['brief']}"
    else:
        size = (width and f"{width['brief']} wide") or (thickness and f"{thickness['brief']} thick")
    return ", ".join(filter(None, (piece.told["material"] or "No material named", size)))


def _left(group):
    return sum(piece.told["left"] for piece in group)


def _cuts(left):
    if left == 0:
        return "all cut"
    return "1 cut" if left == 1 else f"{left} cuts"
