"""The pieces that a plan is made for: their blanks, and which of them come out of one wood."""

import re
from dataclasses import dataclass
from fractions import Fraction

from sawside.project.pieces.pieces import allowance
from sawside.reckoning.links import rational

_FREE = re.compile(r"\b(?:any|either|free|none|no)\b", re.IGNORECASE)
_MATCHED = re.compile(r"\b(?:match|matched|matching|sequence)\b", re.IGNORECASE)
_END = re.compile(r"\bend\b", re.IGNORECASE)
_ACROSS = re.compile(r"\b(?:across|cross|width|short)\b", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Want:
    """So many pieces of one part still to be cut, their blank in exact inches (None: not told).

    `grain` is "along" the length, "across" it, or "free"; "matched" pieces are cut next to each
    other out of one board, side by side, and those "in a row" end to end. `profile` is that of
    its `Part`.
    """

    entry: str
    part: str
    name: str
    material: str
    length: Fraction
    width: Fraction | None
    thickness: Fraction | None
    grain: str
    count: int
    profile: str = ""

    @property
    def key(self):
        """Of which part it is."""
        return self.entry, self.part

    @property
    def wood(self):
        """What pieces that come out of one wood have in common."""
        return self.material.casefold(), self.thickness, self.profile

    @property
    def is_matched(self):
        """Whether all of them come out of one board, next to each other."""
        return self.grain in ("matched", "in a row")

    def together(self, kerf):
        """(along the board, across it) of what is cut as one: a piece, or all that are matched."""
        length, width = self.laid
        if self.grain == "matched":
            width = self.count * width + (self.count - 1) * kerf
        elif self.grain == "in a row":
            length = self.count * length + (self.count - 1) * kerf
        return length, width

    @property
    def laid(self):
        """(along the board, across it) as the grain has it."""
        return (self.width, self.length) if self.grain == "across" else (self.length, self.width)


def wanted(piece, count):
    """The `Want` for so many of a `pieces.Piece`."""
    length, width, thickness = (blank(piece, each) for each in ("length", "width", "thickness"))
    return Want(
        piece.entry["id"],
        piece.part.key,
        piece.told["name"],
        material_of(piece),
        length,
        width,
        thickness,
        _grain(piece.told["grain"], count) if width is not None else "along",
        count,
        piece.part.profile,
    )


def blank(piece, measure):
    """A measure of what a piece is cut from, as it is set at the saw, with its rough allowance;
    None where it has none. What ends at an angle comes out of its longest side."""
    value = getattr(piece.part, measure)
    if value is None:
        return None
    longest = piece.part.long_side if measure == "length" else None
    if longest is not None and rational(longest) > rational(value):
        value = longest
    added = allowance(piece.entry, piece.part, measure)
    whole = rational(value) + added if added else value
    return piece.worked.show.rounded(whole, "reach" if added else None).mark


def material_of(piece):
    """What a piece is cut of, as told of it or as chosen in its question; "" where nobody said."""
    chosen = getattr(piece.worked.form.given, "material", None)
    return piece.told["material"] or getattr(chosen, "name", "")


def _grain(text, count):
    if _MATCHED.search(text):
        if count == 1:
            return "along"
        return "in a row" if _END.search(text) else "matched"
    if _FREE.search(text):
        return "free"
    return "across" if _ACROSS.search(text) else "along"
