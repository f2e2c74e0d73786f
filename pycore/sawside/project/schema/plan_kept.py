"""A cutting plan as a document keeps it: which piece comes out of which board, by which cuts."""

import re
from copy import deepcopy
from fractions import Fraction

from sawside.boards.sawing import SawCut, sawn, whole_parts
from sawside.project.kinds.checks import (
    choice_checked,
    damaged,
    id_checked,
    inches_checked,
    keys_checked,
    list_checked,
    whole_number,
    words_checked,
)
from sawside.project.kinds.entry_parts import checked

MOST_BOARDS = 10_000
MOST_PLANNED = 10_000
"""Pieces of one plan, and cuts of one board; a plan has no more boards than pieces."""

MOST_FLAWS = 200
MOST_COUNT = 10**6
FORMS = ("board", "sheet", "stick")
_PRICE = re.compile(r"\d{1,9}(?:/[1-9]\d{0,8})?", re.ASCII)


def _yes(value, place):
    if value is not True:
        raise damaged(place, "is not true")
    return value


def _size(value, place):
    """An exact number of inches, 0 or more."""
    if (text := inches_checked(value, place)).startswith("-"):
        raise damaged(place, "is less than 0")
    return text


def _price(value, place):
    if not isinstance(value, str) or not _PRICE.fullmatch(value):
        raise damaged(place, "is not an exact number of dollars")
    return value


def _number(most):
    return lambda value, place: whole_number(value, place, 0, most)


def _way(value, place):
    return choice_checked(value, place, ("rip", "crosscut"))


def _form(value, place):
    return choice_checked(value, place, FORMS)


def _several(most, needed, optional):
    def check(value, place):
        return [
            checked(each, f"{place}[{at}]", needed, optional)
            for at, each in enumerate(list_checked(value, place, most))
        ]

    return check


def _ids(value, place):
    ids = list_checked(value, place, MOST_BOARDS)
    return [id_checked(each, f"{place}[{at}]") for at, each in enumerate(ids)]


_PLACE = {"entry": id_checked, "part": words_checked}
_CHECKED = _several(MOST_BOARDS, {"boards": _ids, "over": _price}, {"priced": _yes})
_CUTS = _several(
    MOST_PLANNED, {"way": _way, "part": _number(2 * MOST_PLANNED), "at": _size}, {"trim": _yes}
)
_PIECES = _several(
    MOST_PLANNED, _PLACE | {"of": _number(2 * MOST_PLANNED)}, {"turned": _yes, "done": _yes}
)
_BEGUN = _several(
    MOST_PLANNED, _PLACE | {"cut": _number(MOST_COUNT), "spoiled": _number(MOST_COUNT)}, {}
)
_NEEDED = {"key": id_checked, "form": _form, "length": _size, "cuts": _CUTS, "pieces": _PIECES}
_MAY = {
    "flaws": _several(MOST_FLAWS, {"start": _size, "end": _size}, {}),
    "width": _size,
    "thickness": _size,
    "trim": _size,
    "kerf": _size,
    "material": words_checked,
    "name": words_checked,
    "price": _price,
    "from": words_checked,
    "bought": _yes,
    "here": _yes,
    "bad": _yes,
    "saved": _yes,
}


def read_plan(data, place="plan"):
    """A checked copy of a plan, each of whose boards can be sawn as it says."""
    keys_checked(data, place, ("kerf", "boards", "begun"), ("checked",))
    kerf = _size(data["kerf"], f"{place}.kerf")
    boards = [
        _board(each, f"{place}.boards[{at}]", kerf)
        for at, each in enumerate(list_checked(data["boards"], f"{place}.boards", MOST_BOARDS))
    ]
    if len({board["key"] for board in boards}) != len(boards):
        raise damaged(f"{place}.boards", "holds the same key twice")
    if sum(len(board["pieces"]) for board in boards) > MOST_PLANNED:
        raise damaged(f"{place}.boards", f"holds more than {MOST_PLANNED} pieces")
    read = {"kerf": kerf, "boards": boards, "begun": _BEGUN(data["begun"], f"{place}.begun")}
    if "checked" in data:
        read["checked"] = _CHECKED(data["checked"], f"{place}.checked")
    return read


_checked = {}


def plan_checked(data, place="plan"):
    """`read_plan`, but that a plan that was just checked is not sawn again: it is copied."""
    written = repr(data)
    if written not in _checked:
        read = read_plan(data, place)
        _checked.clear()
        _checked[written] = read
    return deepcopy(_checked[written])


def _board(data, place, kerf):
    board = checked(data, place, _NEEDED, _MAY)
    width = inches_of(board["width"]) if "width" in board else None
    cuts = cuts_of(board)
    try:
        own = inches_of(board.get("kerf", kerf))
        parts = sawn(inches_of(board["length"]), width, cuts, own)
    except ValueError as fault:
        raise damaged(f"{place}.cuts", f"holds {fault}") from None
    of = [piece["of"] for piece in board["pieces"]]
    if len(set(of)) != len(of) or not set(of) <= set(whole_parts(parts, cuts)):
        raise damaged(f"{place}.pieces", "holds a piece that the cuts don’t give")
    return board


def cuts_of(board):
    """The cuts of a checked board, as they are sawn."""
    return tuple(
        SawCut(cut["way"], cut["part"], inches_of(cut["at"]), cut.get("trim", False))
        for cut in board["cuts"]
    )


def inches_of(text):
    """The exact number of a checked text: "289/8 in"."""
    return Fraction(text.removesuffix(" in"))
