"""A board of a plan: what it is, how it is cut, and which pieces come out of it."""

from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cached_property

from sawside.boards.sawing import sawn, whole_parts
from sawside.project.pieces.size import inches_text
from sawside.project.schema.plan_kept import cuts_of, inches_of

_MEASURES = ("length", "width", "thickness", "trim")
_MARKS = ("bought", "here", "bad", "saved")


@dataclass(frozen=True)
class Placed:
    """A piece: its part in the project, and which part of its board it is (`sawing.sawn`)."""

    entry: str
    part: str
    of: int
    turned: bool = False
    done: bool = False

    @property
    def key(self):
        """Of which part of the project it is."""
        return self.entry, self.part


@dataclass(frozen=True)
class Board:
    """A board of a plan; lengths in exact inches. `source` is the offer that it is one of, `flaws`
    are its bad stretches (from, to)."""

    key: str
    form: str
    length: Fraction
    width: Fraction | None = None
    thickness: Fraction | None = None
    trim: Fraction = Fraction(0)
    material: str = ""
    name: str = ""
    source: str = ""
    price: Fraction | None = None
    kerf: Fraction = Fraction(0)
    flaws: tuple = ()
    bought: bool = False
    here: bool = False
    bad: bool = False
    saved: bool = False
    cuts: tuple = ()
    pieces: tuple = ()

    @cached_property
    def parts(self):
        """Every part that its cuts make."""
        return sawn(self.length, self.width, self.cuts, self.kerf)

    @property
    def rest(self):
        """The numbers of the parts that are neither cut further nor a piece."""
        taken = {piece.of for piece in self.pieces}
        return [each for each in whole_parts(self.parts, self.cuts) if each not in taken]

    @property
    def like(self):
        """What boards that are bought as one kind have in common."""
        measures = self.length, self.width, self.thickness
        return self.form, self.material, self.name, *measures, self.price

    def above(self, part):
        """The numbers of the cuts that a part came off by, the last one first."""
        while (cut := self.parts[part].cut) is not None:
            yield cut
            part = self.cuts[cut].part


def boards_of(plan):
    """The boards of a checked plan."""
    kerf = inches_of(plan["kerf"])
    return [_read(data, kerf) for data in plan["boards"]]


def _read(data, kerf):
    measures = {key: inches_of(data[key]) for key in _MEASURES if key in data}
    words = {key: data[key] for key in ("form", "material", "name") if key in data}
    pieces = tuple(Placed(**piece) for piece in data["pieces"])
    return Board(
        data["key"],
        **measures,
        **words,
        source=data.get("from", ""),
        price=Fraction(data["price"]) if "price" in data else None,
        kerf=inches_of(data["kerf"]) if "kerf" in data else kerf,
        flaws=tuple(
            (inches_of(each["start"]), inches_of(each["end"])) for each in data.get("flaws", ())
        ),
        cuts=cuts_of(data),
        pieces=pieces,
        **{mark: True for mark in _MARKS if mark in data},
    )


def board_kept(board, kerf):
    """A board as a document keeps it, in a plan for this kerf."""
    told = {"key": board.key, "form": board.form}
    told |= {
        key: inches_text(value) for key in _MEASURES if (value := getattr(board, key)) is not None
    }
    if not board.trim:
        del told["trim"]
    if board.kerf != kerf:
        told["kerf"] = inches_text(board.kerf)
    words = {"material": board.material, "name": board.name, "from": board.source}
    told |= {key: text for key, text in words.items() if text}
    if board.price is not None:
        told["price"] = str(board.price)
    if board.flaws:
        told["flaws"] = [
            {"start": inches_text(start), "end": inches_text(end)} for start, end in board.flaws
        ]
    told |= {mark: True for mark in _MARKS if getattr(board, mark)}
    told["cuts"] = [
        {"way": cut.way, "part": cut.part, "at": inches_text(cut.at)}
        | ({"trim": True} if cut.trim else {})
        for cut in board.cuts
    ]
    told["pieces"] = [_placed_kept(piece) for piece in board.pieces]
    return told


def _placed_kept(piece):
    told = {"entry": piece.entry, "part": piece.part, "of": piece.of}
    return told | {mark: True for mark in ("turned", "done") if getattr(piece, mark)}


def found_bad(board, cut):
    """A bad board: what of it is `cut` stays for good."""
    pieces = (replace(piece, done=True) if piece in cut else piece for piece in board.pieces)
    return replace(board, bad=True, pieces=tuple(pieces))


def begun(board, cut):
    """A board with only the pieces of it that are `cut`, and the cuts that these took."""
    numbers = sorted({number for piece in cut for number in board.above(piece.of)})
    new = {number: place for place, number in enumerate(numbers)}

    def part(old):
        return old and 2 * new[(old - 1) // 2] + (1 if old % 2 else 2)

    cuts = (replace(board.cuts[number], part=part(board.cuts[number].part)) for number in numbers)
    pieces = (replace(piece, of=part(piece.of), done=True) for piece in cut)
    return replace(board, cuts=tuple(cuts), pieces=tuple(pieces), bought=False)
