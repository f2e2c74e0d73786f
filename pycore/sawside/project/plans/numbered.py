"""Which key a new board of a plan has, and in which order they are."""

from dataclasses import replace
from itertools import count


def numbered(new, before, carried):
    """New boards (each with the number of its group) with their keys: wood on hand has the one of
    the plan before, which may be chalked on it, once boards of that plan stay (`carried`)."""
    taken = {board.key for board in carried}
    had = {}
    for board in before.boards if before and carried else ():
        if board.key not in taken and board.source and not board.bought:
            had.setdefault((board.source, board.like), []).append(board.key)
    taken |= {key for keys in had.values() for key in keys}
    free = (key for key in map(str, count(1)) if key not in taken)

    def key_of(board):
        keys = had.get((board.source, board.like), ()) if not board.bought else ()
        return keys.pop(0) if keys else next(free)

    return [(replace(board, key=key_of(board)), of) for board, of in new]


def alike_together(boards):
    """New boards (each with the number of its group) in their order, those that are cut alike one
    after another."""
    places = {}
    for board, _ in boards:
        places.setdefault((board.like, board.cuts), len(places))
    return sorted(boards, key=lambda each: places[each[0].like, each[0].cuts])
