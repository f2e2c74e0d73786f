"""The order of the cuts: by set-up, so that each stop is set once, or by part."""

from itertools import groupby

ORDERS = ("set-up", "part")


def cuts(pieces, order):
    """Groups of pieces in the order in which they are cut; `pieces` come longest first.

    "set-up": pieces of one length are one group, longest first; within it those with the same
    ends, and so the same settings of the saw, stand together. "part": a group for each line.
    """
    if order == "set-up":
        groups = [_by_set_up(group) for _, group in groupby(pieces, key=_mark)]
    else:
        by_line = sorted(pieces, key=lambda piece: int(piece.entry["id"]))
        groups = [_by_line(group) for _, group in groupby(by_line, key=_line)]
    return {"order": order, "groups": groups}


def _mark(piece):
    return piece.told["length"]["mark"]


def _line(piece):
    return piece.entry["id"]


def _ends(piece):
    sides = piece.told["ends"]["left"], piece.told["ends"]["right"]
    return tuple(text or "" for side in sides for text in (side["cut"], side["angle"]))


def _by_set_up(group):
    group = sorted(group, key=_ends)
    left = sum(piece.told["left"] for piece in group)
    setting = group[0].told["length"]
    return {
        "setting": setting,
        "said": f"Stop at {setting['text']}: {_cuts(left)}",
        "left": left,
        "pieces": [piece.where for piece in group],
    }


def _by_line(group):
    group = list(group)
    left = sum(piece.told["left"] for piece in group)
    return {
        "setting": None,
        "said": f"{group[0].entry['name']}: {_cuts(left)}",
        "left": left,
        "pieces": [piece.where for piece in group],
    }


def _cuts(left):
    if left == 0:
        return "all cut"
    return "1 cut" if left == 1 else f"{left} cuts"
