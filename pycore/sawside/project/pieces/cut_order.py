"""The order of the cuts: by set-up, so that each stop is set once, by board, or by part."""

from itertools import groupby

from sawside.project.pieces.judge_told import SHORT
from sawside.project.pieces.material import together
from sawside.project.pieces.stock import NOT_TOLD, sides, stock_of


def cuts(pieces, order, show):
    """Groups of pieces in the order in which they are cut; `pieces` come longest first.

    "set-up": pieces of one length are one group, longest first; within it those with the same
    ends, and so the same settings of the saw, stand together. "board": a group for each stock that
    pieces come out of, the one with the longest piece first and what nothing is told of last;
    within it they go as by set-up. "part": a group for each line. In every order the first layer
    of a molding comes before the second, which is measured once the first is fitted.
    """
    return {"order": order, "groups": _GROUPS[order](pieces, show)}


def _layer(piece):
    return piece.part.layer


def _by_set_up(pieces, _show):
    in_layers = sorted(pieces, key=_layer)
    stops = groupby(in_layers, key=lambda piece: (_layer(piece), _mark(piece)))
    return [_stop(sorted(group, key=_ends)) for _, group in stops]


def _by_board(pieces, show):
    boards = {}
    for _, equal in groupby(pieces, key=_mark):
        for piece in sorted(equal, key=_ends):
            boards.setdefault((_layer(piece), stock_of(piece)), []).append(piece)
    in_layers = sorted(boards.items(), key=lambda each: (each[0][0], each[0][1] == NOT_TOLD))
    return [
        _waiting(
            group_told("Material and size unknown", group)
            if stock == NOT_TOLD
            else _board(group, show),
            group,
        )
        for (_, stock), group in in_layers
    ]


def _by_part(pieces, _show):
    by_line = sorted(pieces, key=lambda piece: (int(_line(piece)), _layer(piece)))
    return [
        group_told(group[0].entry["name"], group)
        for group in (list(each) for _, each in groupby(by_line, key=_line))
    ]


_WRONG = {"cut down": "to cut down", "recut ends": "with different ends", "unknown": "to check"}
"""The verdicts on pieces that are cut and not as they are asked for, in a word or two."""

_GROUPS = {"set-up": _by_set_up, "board": _by_board, "part": _by_part}
ORDERS = tuple(_GROUPS)


def _mark(piece):
    return piece.told["length"]["mark"]


def _line(piece):
    return piece.entry["id"]


def _ends(piece):
    both = piece.told["ends"]["left"], piece.told["ends"]["right"]
    return tuple(text or "" for end in both for text in (end["cut"], end["angle"]))


def group_told(name, group):
    """A group of pieces under a name, with how many are to be cut yet, and what is wrong."""
    left = _left(group)
    return {
        "setting": None,
        "said": f"{name}: {_cuts(group)}",
        "waits": "",
        "left": left,
        "pieces": [piece.where for piece in group],
    }


def _stop(group):
    setting = group[0].told["length"]
    stop = group_told(f"Stop at {setting['text']}", group) | {"setting": setting}
    return _waiting(stop, group)


def _waiting(told, group):
    """A group, with what has to be fitted before it is cut."""
    layer = _layer(group[0])
    if layer > 1 and told["left"]:
        told["waits"] = f"fit layer {layer - 1} first"
        told["said"] += f"; {told['waits']}"
    return told


def _board(group, show):
    """The group of one stock, with the length that is still to come out of it."""
    told = group_told(_stock_name(group[0]), group)
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
    return ", ".join(filter(None, (piece.told["material"] or "No material", size)))


def _left(group):
    return sum(piece.told["left"] for piece in group)


def _cuts(group):
    """How many are to be cut yet, and what is wrong with those that are."""
    left = _left(group)
    told = [] if left == 0 else ["1 cut" if left == 1 else f"{left} cuts"]
    wrong = {}
    for piece in group:
        for each in piece.told["verdicts"]:
            if words := _wrong(each):
                wrong[words] = wrong.get(words, 0) + each["count"]
    told += [f"{many} {words}" for words, many in wrong.items()]
    return ", ".join(told) or "all cut"


def _wrong(verdict):
    """A verdict on pieces that are not as they are asked for, in a word or two; None for others."""
    if verdict["verdict"] == "too short":
        return SHORT[verdict["measure"]]
    return _WRONG.get(verdict["verdict"])
