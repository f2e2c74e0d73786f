"""How the boards of a plan are said: their names, their sizes, what they cost."""

from sawside.lengths.words import counted

_NAMES = {"board": "Board", "sheet": "Sheet", "stick": "Stick"}
_FOOT = 12


def name_of(board):
    """What a board is called in the plan: "Sheet 2"."""
    return f"{_NAMES[board.form]} {board.key}"


def forms(number, form):
    """So many boards: "2 sheets"."""
    return counted(number, form)


def size_text(show, length, width):
    """A size of two sides, or a length where there is no other."""
    return " × ".join(show.brief(each) for each in (length, width) if each is not None)


def stock_text(board, show):
    """What a board is: "Birch plywood 8 ft × 4 ft × 23/32″"."""
    sides = [_sold(show, board.length)]
    if board.width is not None:
        sides.append((_sold if board.form == "sheet" else _brief)(show, board.width))
    if board.thickness is not None:
        sides.append(show.brief(board.thickness))
    words = [each for each in (board.name, board.material) if each]
    if len(words) == 2 and words[1].casefold() in words[0].casefold():
        words.pop()
    return " ".join([*words[:1], *(f"({each})" for each in words[1:]), " × ".join(sides)])


def _brief(show, length):
    return show.brief(length)


def _sold(show, length):
    """A length as wood is sold by it: "8 ft" where it is whole feet and not told in millimeters."""
    if show.settings.display != "mm" and length % _FOOT == 0:
        return f"{length // _FOOT} ft"
    return show.brief(length)


def money(amount):
    """An amount of dollars, up to the next cent."""
    cents = -(-amount * 100 // 1)
    return f"${cents // 100:,}.{cents % 100:02d}"
