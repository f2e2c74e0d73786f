"""How far a kept plan has come: which of its pieces are cut, which it lacks, what changed since."""

from dataclasses import dataclass, field
from functools import cached_property

from sawside.lengths.words import counted, listed
from sawside.project.plans.board import boards_of
from sawside.project.plans.checked import checked_of
from sawside.project.plans.suiting import is_off, makes
from sawside.project.plans.wanted import blank
from sawside.project.schema.finding import of_kind

_LETTERS = "abcdefghjkmnpqrstuvwxyz"


@dataclass
class Standing:
    """A kept plan beside its project: `boards`, and the `pieces` of the project by (entry, part).

    `cut` are the places, (key of the board, number of its part), of pieces that are cut: the n-th
    of a part that was cut or scrapped since the plan was made is at its n-th place, of which a bad
    board has none but those that were cut before it was found (`done`). `checked` is what was known
    of better plans when this one was made.
    """

    boards: list
    pieces: dict
    cut: set = field(default_factory=set)
    lacks: dict = field(default_factory=dict)
    over: dict = field(default_factory=dict)
    checked: list = field(default_factory=list)

    @property
    def shopped(self):
        """Whether what is to be bought is there: some of it was cut, or found bad."""
        return any(board.bought and (board.bad or self.cut_of(board)) for board in self.boards)

    @cached_property
    def _numbers(self):
        in_time = sorted(self.pieces, key=lambda key: (len(key[0]), *key))
        return {key: number for number, key in enumerate(in_time)}

    def mark(self, piece):
        """The letters of a piece on the drawings of its boards, the same on all of them and
        in the next plan: its parts' in the order in which they were kept; "?" where it is gone."""
        number = self._numbers.get(piece.key)
        return "?" if number is None else _letters(number)

    def is_cut(self, board, piece):
        """Whether a piece of a board is cut."""
        return piece.done or (board.key, piece.of) in self.cut

    def cut_of(self, board):
        """The pieces of a board that are cut."""
        return [piece for piece in board.pieces if self.is_cut(board, piece)]

    def state(self, board):
        """What became of a board: "bad", "cut", "begun" or "to cut"."""
        if board.bad:
            return "bad"
        cut = len(self.cut_of(board))
        if cut < len(board.pieces) or not cut:
            return "begun" if cut else "to cut"
        return "cut"

    def thicknesses(self, board):
        """How thick pieces of a board are asked to be, where it is told apart from that."""
        known = (self.pieces.get(piece.key) for piece in board.pieces if not piece.done)
        asked = {blank(piece, "thickness") for piece in known if piece}
        return sorted(each for each in asked if is_off(board.form, board.thickness, each))

    @cached_property
    def otherwise(self):
        """Names of pieces that are not cut and are asked for in another size now."""
        return list(
            dict.fromkeys(
                self.pieces[piece.key].told["name"]
                for board in self.boards
                for piece in board.pieces
                if piece.key in self.pieces
                and not board.bad
                and not self.is_cut(board, piece)
                and not _fits(board, piece, self.pieces[piece.key])
            )
        )

    @cached_property
    def gone(self):
        """How many pieces of the plan are not in the project, or have no size now."""
        places = (piece for board in self.boards if not board.bad for piece in board.pieces)
        return sum(not piece.done and piece.key not in self.pieces for piece in places)

    @property
    def stale(self):
        """What changed since the plan was kept, as sentences; "" for nothing."""
        said = []
        if self.lacks:
            number = sum(self.lacks.values())
            names = listed(_named(self.pieces, self.lacks))
            said.append(f"The plan lacks {counted(number, 'piece')}: {names}.")
        if self.otherwise:
            said.append(f"Other sizes now: {listed(self.otherwise)}.")
        if self.over:
            names = listed(_named(self.pieces, self.over))
            said.append(f"The plan has more than you need of {names}.")
        if self.gone:
            are = "is" if self.gone == 1 else "are"
            said.append(f"{counted(self.gone, 'piece')} of it {are} no longer in the project.")
        return " ".join([*said, "Plan again."]) if said else ""


def standing(document, pieces):
    """The `Standing` of a document's plan; None without one. `pieces` are all of the project."""
    if "plan" not in document:
        return None
    found = Standing(
        boards_of(document["plan"]),
        {(piece.entry["id"], piece.part.key): piece for piece in pieces},
        checked=checked_of(document["plan"]),
    )
    places = {}
    for board in found.boards:
        for piece in board.pieces:
            if not piece.done and not board.bad:
                places.setdefault(piece.key, []).append((board, piece))
    taken = _taken(document)
    for key, those in places.items():
        number = max(taken.get(key, 0), 0)
        found.cut |= {(board.key, piece.of) for board, piece in those[:number]}
    _compare(found, places)
    return found


def _letters(number):
    """a to z without those that are taken for a figure, then aa, ab and so on."""
    first, last = divmod(number, len(_LETTERS))
    return (_letters(first - 1) if first else "") + _LETTERS[last]


def _taken(document):
    """How many of each part were cut or scrapped since the plan was made."""
    taken = {
        (entry["id"], part): len(entry.get("cut", {}).get(part, ()))
        + len(entry.get("spoiled", {}).get(part, ()))
        for entry in of_kind(document, "line")
        for part in {**entry.get("cut", {}), **entry.get("spoiled", {})}
    }
    for each in document["plan"]["begun"]:
        key = each["entry"], each["part"]
        taken[key] = taken.get(key, 0) - each["cut"] - each["spoiled"]
    return taken


def _compare(found, places):
    for key, piece in found.pieces.items():
        open_places = sum(
            (board.key, each.of) not in found.cut for board, each in places.get(key, ())
        )
        missing = max(piece.told["left"], 0) - open_places
        if missing > 0:
            found.lacks[key] = missing
        elif missing < 0:
            found.over[key] = -missing


def _named(pieces, numbers):
    return [
        pieces[key].told["name"] + (f" ({number})" if number > 1 else "")
        for key, number in numbers.items()
    ]


def _fits(board, placed, piece):
    part = board.parts[placed.of]
    sizes = {"length": part.length, "width": part.width}
    if placed.turned:
        sizes["length"], sizes["width"] = part.width, part.length
    now = {measure: blank(piece, measure) for measure in sizes}
    return makes(board.form, board.thickness, blank(piece, "thickness")) and all(
        now[measure] == size
        for measure, size in sizes.items()
        if size is not None and now[measure] is not None
    )
