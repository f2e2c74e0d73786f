"""Where pieces can come out of: stretches of boards on hand, of boards that are cut already, and of
boards to buy."""

from dataclasses import dataclass, field, replace
from fractions import Fraction

from sawside.boards.breaking_down import Node, in_order, pieces_in
from sawside.project.plans.board import Board, Placed

_MOST_WORDS = 80


@dataclass
class Draft:
    """A board of a plan in the making: by the number of a part of it the stretches (start, end)
    along the board that are clear, and what becomes of each: {(part, which stretch): a `Node`, the
    number of a piece, or None}."""

    board: Board
    stretches: dict = field(default_factory=dict)
    became: dict = field(default_factory=dict)


@dataclass(frozen=True, eq=False)
class Source:
    """A stretch of a board that pieces can come out of; `length` and `width` in exact inches are
    what the trims leave. `one_way` says that only its length has to be cut."""

    draft: Draft
    place: tuple
    length: Fraction
    width: Fraction | None
    one_way: bool


def board_of(source, offer, kerf, **marks):
    """A board of an offer, without a key."""
    return Board(
        "",
        offer.form if offer.form in ("board", "sheet") else "stick",
        offer.length,
        offer.width,
        offer.thickness,
        offer.trim,
        offer.material.strip()[:_MOST_WORDS],
        offer.name.strip()[:_MOST_WORDS],
        source[:_MOST_WORDS],
        offer.price,
        kerf,
        tuple(offer.bad),
        **marks,
    )


def sources_of(board):
    """Every `Source` of a board: all of it, or what its cuts have left."""
    draft, trim = Draft(board), trimmed(board)
    sources = []
    for number in board.rest:
        part = board.parts[number]
        edges = _edges(board, part)
        width = None if part.width is None else part.width - edges * trim
        if width is not None and width <= 0:
            continue
        ends = part.x + part.length, board.length - trim
        draft.stretches[number] = found = _clear(board, max(part.x, trim), min(ends))
        one_way = edges == 0 or not trim
        sources += [
            Source(draft, (number, at), end - start, width, one_way)
            for at, (start, end) in enumerate(found)
        ]
    return sources


def trimmed(board):
    """How much goes off an end or edge that is trimmed: no less than the blade takes."""
    return max(board.trim, board.kerf) if board.trim else Fraction(0)


def _edges(board, part):
    """How many edges of a part are still to be trimmed: those of a stick never are."""
    if board.form == "stick" or part.width is None:
        return 0
    return (part.y == 0) + (part.y + part.width == board.width)


def _clear(board, start, end):
    """The stretches between two places along a board that are not bad, as a saw can free them."""
    found = []
    for begins, ends in sorted(board.flaws):
        if ends <= start or begins >= end:
            continue
        if begins > start:
            found.append((start, begins))
            cuts = 1 if ends <= begins + board.kerf else 2
            start = max(ends, begins + cuts * board.kerf)
        else:
            start = max(ends, start + board.kerf)
    return [*found, (start, end)] if end > start else found


def sawn_board(draft, wants):
    """The board of a draft with its cuts in order and the pieces that come off; `wants` by the
    numbers that the draft calls them."""
    board = _sized(draft, wants)
    roots = {
        part: _whole(draft, part)
        for part in draft.stretches
        if any(of == part and child is not None for (of, _), child in draft.became.items())
    }
    cuts, pieces = in_order(roots, len(board.cuts))
    placed = [(part, wants[number]) for part, number in sorted(pieces.items())]
    made = replace(board, cuts=(*board.cuts, *cuts))
    new = (Placed(*want.key, part, _turned(made.parts[part], want)) for part, want in placed)
    return replace(made, pieces=(*board.pieces, *new))


def _sized(draft, wants):
    """The board of a draft; a stick of any size is as wide and thick as what comes out of it."""
    board = draft.board
    if board.form != "stick":
        return board
    numbers = (number for node in draft.became.values() for number in pieces_in(node))
    want = wants[next(numbers)]
    return replace(
        board,
        width=want.width if board.width is None else board.width,
        thickness=want.thickness if board.thickness is None else board.thickness,
    )


def _turned(part, want):
    sizes = part.length, part.width
    return want.width is not None and part.width is not None and sizes != (want.length, want.width)


def _whole(draft, number):
    """What a part becomes: edges and ends trimmed, what is bad cut out, and then the pieces."""
    board = draft.board
    part, trim = board.parts[number], trimmed(board)
    inner = _along(draft, number, trim)
    if not trim or not _edges(board, part):
        return inner
    near, far = part.y == 0, part.y + part.width == board.width
    items = [(trim - board.kerf, None)] if near else []
    if not far:
        return Node("rip", items, inner, trims=True)
    items.append((part.width - (near + far) * trim, inner))
    return Node("rip", items, None, trims=True)


def _along(draft, number, trim):
    board, stretches = draft.board, draft.stretches[number]
    part = board.parts[number]
    at, far, items = part.x, part.x + part.length, []
    for which, (start, end) in enumerate(stretches):
        child = draft.became.get((number, which))
        if at < start:
            items.append((start - at - board.kerf, None))
        if which == len(stretches) - 1 and (end == far or (end == far - trim and _keeps(board))):
            return Node("crosscut", items, child, trims=True) if items else child
        items.append((end - start, child))
        at = end + board.kerf
    return Node("crosscut", items, None, trims=True)


def _keeps(board):
    """Whether the far end is only trimmed by what is cut off last, as that of a stick is."""
    return board.form == "stick"
