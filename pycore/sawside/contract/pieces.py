"""The pieces of a project and what is made of them: cuts in their order, material, cases."""

from typing import Literal, NotRequired, TypedDict

from sawside.contract.pictures import Drawing
from sawside.contract.questions import Ends
from sawside.contract.values import Length


class Verdict(TypedDict):
    """Pieces that were cut and are alike in what is to be said of them. `by` is how much the first
    measure differs, as `said` has it: on finer marks than `difference`."""

    verdict: str
    count: int
    which: list[int]
    measure: str | None
    measures: list[str]
    at: Length | None
    now: Length | None
    difference: Length | None
    by: str | None
    said: str


class Judged(Verdict):
    """A verdict that a change gives."""

    id: str
    part: str
    name: str


class TrialInBrief(TypedDict):
    """The last set-up that was tried for a part."""

    difference: str
    direction: str
    remedy: str
    when: str
    tried: int


class Rough(TypedDict):
    """Sizes with what is added before a piece is cut to its finished size."""

    length: Length
    width: Length | None
    thickness: Length | None
    as_typed: dict[str, str]


Piece = TypedDict(
    "Piece",
    {
        "entry": str,
        "part": str,
        "name": str,
        "count": int,
        "cut": int,
        "left": int,
        "spoiled": int,
        "length": Length,
        "length_along": str,
        "width": Length | None,
        "thickness": Length | None,
        "ends": Ends,
        "about": NotRequired[list[str]],
        "drawing": Drawing | None,
        "from": str,
        "material": str,
        "stock": str,
        "grain": str,
        "place": str,
        "rough": Rough | None,
        "trial": TrialInBrief | None,
        "verdicts": list[Verdict],
    },
)
Piece.__doc__ = (
    "Pieces of one part: how many there are to cut, how many are cut, of what; `stock` says in "
    "words what they are cut of, and how thick that is."
)


class PieceAt(TypedDict):
    """Where a piece is in the project."""

    entry: str
    part: str


class CutGroup(TypedDict):
    """Cuts that belong together: one stop, one board or one part; `waits` says for what. By a
    cutting plan it is one of its boards, whose key is `board`."""

    setting: Length | None
    said: str
    waits: str
    left: int
    pieces: list[PieceAt]
    board: NotRequired[str]


class Cuts(TypedDict):
    """The order of the cuts."""

    order: str
    groups: list[CutGroup]


class Stock(TypedDict):
    """How much of one material and section the pieces take together."""

    material: str
    width: Length | None
    thickness: Length | None
    count: int
    length: Length
    rough: Length
    spoiled: int
    spoiled_length: Length


class CasePart(TypedDict):
    """A part in the drawing of a case: its key there, its letter, and where its piece is."""

    key: str
    letter: str
    entry: str
    part: str


class CaseView(TypedDict):
    """A case seen from one side, or cut through."""

    key: Literal["front", "side", "section", "plan"]
    title: str
    drawing: Drawing


class Case(TypedDict):
    """A case that lines of the project make together: the line that it stands on, its parts, and
    how it is seen; `note` is what the drawing does not know."""

    entry: str
    name: str
    parts: list[CasePart]
    views: list[CaseView]
    note: str
