"""How the boards of a plan are said: their names, their sizes, what they cost."""

from sawside.lengths.words import counted, listed
from sawside.reckoners.boards.shared.stick_groups import stock_text as sold_length

_NAMES = {"board": "Board", "sheet": "Sheet", "stick": "Stick"}


def name_of(board):
    """What a board is called in the plan: "Sheet 2"."""
    return f"{_NAMES[board.form]} {board.key}"


def forms(number, form):
    """So many boards: "2 sheets"."""
    return counted(number, form)


def size_text(show, length, width):
    """A size of two sides, or a length where there is no other."""
    return " × ".join(show.brief(each) for each in (length, width) if each is not None)


def planned_text(board, standing, show):
    """What a board is, and how thick its pieces are where that is something else."""
    told, asked = stock_text(board, show), standing.thicknesses(board)
    if not asked:
        return told
    thick = listed([show.brief(each) for each in asked])
    return f"{told}, for {thick} parts" if board.form == "sheet" else f"{told}, plane to {thick}"


def stock_text(board, show):
    """What a board is: "Birch plywood 8 ft × 4 ft × 23/32″"."""
    sides = [sold_length(show, board.length)]
    if board.width is not None:
        is_sheet = board.form == "sheet"
        sides.append(sold_length(show, board.width) if is_sheet else show.brief(board.width))
    if board.thickness is not None:
        sides.append(show.brief(board.thickness))
    words = [each for each in (board.name, board.material) if each]
    if len(words) == 2 and words[1].casefold() in words[0].casefold():
        words.pop()
    return " ".join([*words[:1], *(f"({each})" for each in words[1:]), " × ".join(sides)])
