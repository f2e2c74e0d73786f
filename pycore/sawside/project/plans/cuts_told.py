"""The cuts of a board as one person follows them, one setting of fence or stop after another."""

from dataclasses import dataclass
from fractions import Fraction
from itertools import groupby

from sawside.lengths.words import counted, listed
from sawside.project.plans.offcuts import kept_offcuts
from sawside.project.plans.words import size_text
from sawside.reckoning.answers import length_told
from sawside.wood.saw import SHORT_PIECE, SHORTEST_TO_HOLD

NARROWEST_TO_RIP = 3
"""Inches between fence and blade; below it a hand has no room there. Common practice, no source."""

NARROWEST_LEFT = 1
"""Inches: what is narrower than this isn't held, it falls free. Common practice, no source."""

THINNEST_AT_FENCE = Fraction(1, 2)
"""Inches: what is thinner is not pushed between fence and blade. Common practice, no source."""

_THIN = (
    "Too thin for the fence side: take each off the far side of the blade, the wide part at the "
    "fence, and move the fence for the next."
)
_PUSH = "Narrow rip: use a push block."
_FREE = "Thin strip: let it fall free, away from the fence."


@dataclass
class Round:
    """Cuts with one setting, one after another: their numbers in the board."""

    board: object
    numbers: list

    @property
    def cut(self):
        """The first of them; all have its way and setting."""
        return self.board.cuts[self.numbers[0]]

    @property
    def takes(self):
        """The numbers of the parts that come off."""
        return [2 * number + 1 for number in self.numbers]

    @property
    def leaves(self):
        """The numbers of the parts that are left, but for those that are cut again at once."""
        again = {self.board.cuts[number].part for number in self.numbers}
        return [2 * number + 2 for number in self.numbers if 2 * number + 2 not in again]


def rounds_of(board):
    """Every `Round` of a board, in order."""
    numbers = range(len(board.cuts))

    def setting(number):
        cut = board.cuts[number]
        return cut.way, cut.at, number if cut.trim else None

    return [Round(board, list(those)) for _, those in groupby(numbers, key=setting)]


def cuts_told(board, standing, show):
    """Every cut of a board as the contract of `PlanCut` has it."""
    made = cuts_made(board, standing)
    further = {cut.part for cut in board.cuts}
    pieces = {piece.of: piece for piece in board.pieces}
    waits = _waits(board, standing, made)
    return [
        _told(str(number), each, pieces, further, made, standing, show)
        | {"before": [_where(piece) for piece, cuts in waits if cuts & {*each.numbers}]}
        for number, each in enumerate(rounds_of(board), 1)
    ]


def _waits(board, standing, made):
    """[(the next piece of each part, the numbers of the cuts that it waits for)], without the one
    that it comes off by."""
    following = {}
    for piece in board.pieces:
        if not standing.is_cut(board, piece):
            following.setdefault(piece.key, piece)
    own = {number: {*each.numbers} for each in rounds_of(board) for number in each.numbers}
    found = []
    for piece in following.values():
        last, *earlier = board.above(piece.of) if board.parts[piece.of].cut is not None else (None,)
        found.append((piece, {*earlier} - made - own.get(last, set())))
    return found


def cuts_made(board, standing):
    """The numbers of the cuts that are made: those by which a piece came off that is cut."""
    cut = standing.cut_of(board)
    return {number for piece in cut for number in board.above(piece.of)}


def _told(key, each, pieces, further, made, standing, show):
    board, cut = each.board, each.cut
    off = [*each.takes, *each.leaves]
    finished = [pieces[part] for part in off if part in pieces]
    pile = [part for part in each.takes if part in further]
    hand = [part for part in each.leaves if part in further]
    rest = [part for part in off if part not in pieces and part not in further]
    rest = [part for part in rest if _is_left(board, part, trim=cut.trim)]
    setting = None if cut.trim else length_told("setting", "Setting", cut.at, show)
    piled = [*_sizes(board, pile, show), *(f"{size} offcut" for size in _sizes(board, rest, show))]
    return {
        "key": key,
        "way": "trim" if cut.trim else cut.way,
        "said": _said(each, finished, standing, show),
        "setting": setting,
        "hand": listed(_sizes(board, hand, show)) if hand else "",
        "pile": listed(piled) if piled else "",
        "pieces": [_where(piece) for piece in finished],
        "done": all(number in made for number in each.numbers),
    }


def _where(piece):
    return {"entry": piece.entry, "part": piece.part}


def _is_left(board, number, *, trim):
    """Whether a part that is neither a piece nor cut further goes on the pile: a sliver goes with
    the dust, and of a trim only what is good stays."""
    part = board.parts[number]
    if trim:
        return part in kept_offcuts(board)
    return all(side is None or side >= NARROWEST_LEFT for side in (part.length, part.width))


def _sizes(board, parts, show):
    """Parts in words, equal ones together: "2 × 96″ × 11 1/4″"."""
    counts = {}
    for part in parts:
        size = size_text(show, board.parts[part].length, board.parts[part].width)
        counts[size] = counts.get(size, 0) + 1
    return [f"{number} of {size}" if number > 1 else size for size, number in counts.items()]


def _said(each, finished, standing, show):
    board, cut, number = each.board, each.cut, len(each.numbers)
    names = listed(_names(finished, standing)) if finished else ""
    come = f": {names}" if names else ""
    if cut.trim:
        return _trim_said(each, show) + (f" Off comes {names}." if names else "")
    setting = show.brief(cut.at)
    if cut.way == "rip" and cut.at < THINNEST_AT_FENCE:
        said = f"Rip {number} at {setting}{come}."
    elif cut.way == "rip":
        said = f"Set the fence to {setting}. Rip {number}{come}."
    else:
        said = f"Set the stop to {setting}. Crosscut {number}{come}."
    return " ".join([said, *_cautions(board, each)])


def _trim_said(each, show):
    """A trim: what goes off, or what is to be left."""
    board, cut = each.board, each.cut
    edge = "edge" if cut.way == "rip" else "end"
    if _is_good(board, 2 * each.numbers[0] + 1):
        at = show.brief(cut.at)
        if cut.way == "crosscut" and _goes_on(board, 2 * each.numbers[0] + 2):
            return f"Crosscut at {at}, clear of the bad wood."
        return f"Trim the other {edge} at {at}."
    part, off = board.parts[cut.part], show.brief(cut.at + board.kerf)
    if part.y if cut.way == "rip" else part.x:
        return f"{cut.way.capitalize()} {off} of bad wood off the {edge}."
    return f"Trim {off} off one {edge}."


def _is_good(board, number):
    """Whether a part is cut further, a piece, or an offcut to save."""
    further = {cut.part for cut in board.cuts} | {piece.of for piece in board.pieces}
    return number in further or board.parts[number] in kept_offcuts(board)


def _goes_on(board, number):
    """Whether good wood comes out of what is left, behind what is bad."""
    on = {cut.part: 2 * at for at, cut in enumerate(board.cuts)}
    sides = [number] if number not in on else [on[number] + 1, on[number] + 2]
    return any(_is_good(board, side) for side in sides)


def _names(finished, standing):
    counts = {}
    for piece in finished:
        known = standing.pieces.get(piece.key)
        name = known.told["name"] if known else "a piece that’s gone"
        counts[name] = counts.get(name, 0) + 1
    return [f"{number} × {name}" if number > 1 else name for name, number in counts.items()]


def _cautions(board, each):
    cut = each.cut
    if cut.way == "crosscut":
        short = cut.at < SHORTEST_TO_HOLD or any(
            0 < board.parts[part].length < SHORTEST_TO_HOLD
            for part in each.leaves
            if any(piece.of == part for piece in board.pieces)
        )
        return [SHORT_PIECE.short] if short else []
    if cut.at < THINNEST_AT_FENCE:
        return [_THIN]
    told = [_PUSH] if cut.at < NARROWEST_TO_RIP else []
    narrow = any(0 < board.parts[part].width < NARROWEST_LEFT for part in each.leaves)
    return told + ([_FREE] if narrow else [])


def together_told(boards, show):
    """The first cuts that boards share, which one setting makes: a sentence for each."""
    shared = {}
    for board, name in boards:
        for each in rounds_of(board):
            if each.cut.trim or board.parts[each.takes[0]].level > 1:
                continue
            named = shared.setdefault((each.cut.way != "rip", -each.cut.at), {})
            named[name] = named.get(name, 0) + len(each.numbers)
    return [
        _shared(is_crosscut, show.brief(-at), named)
        for (is_crosscut, at), named in sorted(shared.items())
        if len(named) > 1
    ]


def _shared(is_crosscut, setting, named):
    where = listed([f"{number} from {name}" for name, number in named.items()])
    set_up, act = ("stop", "crosscut") if is_crosscut else ("fence", "rip")
    return f"Set the {set_up} to {setting}: {act} {counted(sum(named.values()), 'time')}, {where}."
