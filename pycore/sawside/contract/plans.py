"""A cutting plan: what to buy, and which piece comes out of which board, by which cuts.

In the drawing of a board a piece is a polygon whose `part` is "entry/part" of the project; a view
without drawings has none.
"""

from typing import Any, Literal, NotRequired, TypedDict

from sawside.contract.errors import Error
from sawside.contract.pictures import Drawing
from sawside.contract.pieces import PieceAt
from sawside.contract.values import Length

Act = dict[str, Any]


class PlanCut(TypedDict):
    """One cut, in the order in which they are made: `setting` is what the fence or stop is set to,
    `hand` what is in the hand after it, `pile` what goes back, `pieces` those that come off,
    `before` the pieces that can't be cut until it is made."""

    key: str
    way: Literal["trim", "rip", "crosscut"]
    said: str
    setting: Length | None
    hand: str
    pile: str
    pieces: list[PieceAt]
    before: list[PieceAt]
    done: bool


class PlanMark(TypedDict):
    """What a mark on the drawing of a board means, and how many of it come out of the board."""

    mark: str
    name: str
    size: str
    count: int


class PlanBoard(TypedDict):
    """One board, sheet or stick of a plan; `stock` says in words what it is, `left` are those of
    its pieces that are not cut, `saved` that its offcuts are in the wood on hand (the act
    `save_offcuts` {board}, once all of it is cut)."""

    key: str
    name: str
    stock: str
    bought: bool
    saved: bool
    state: Literal["to cut", "begun", "cut", "bad"]
    drawing: Drawing | None
    marks: list[PlanMark]
    cuts: list[PlanCut]
    pieces: list[PieceAt]
    left: list[PieceAt]
    offcuts: list[str]


class PlanGroup(TypedDict):
    """What is cut of one material and thickness: `best` says how good that is, `together` the first
    cuts of its boards that share a setting, a sentence each."""

    material: str
    said: str
    best: str
    waste: str
    together: list[str]
    boards: list[PlanBoard]


class ToBuy(TypedDict):
    """So many of one size to buy; the texts of money are "" where there is no price."""

    count: int
    said: str
    each: str
    cost: str


class LeftOut(TypedDict):
    """Pieces that no wood holds, and what can be done."""

    name: str
    pieces: list[PieceAt]
    error: Error


class CuttingPlan(TypedDict):
    """A plan as it is told. `stale` says what has changed since it was kept, and which pieces it
    lacks ("" for nothing), `text` is the buy list to be shared."""

    said: str
    buy: list[ToBuy]
    cost: str
    waste: str
    groups: list[PlanGroup]
    left_out: list[LeftOut]
    stale: str
    note: str
    text: str


class Planned(TypedDict):
    """A plan that was made: `act` keeps it (None where there is nothing to keep). With `more` a
    greater `effort` may find a better one; `progress` says how far it is, `unplanned` how many
    pieces are left out."""

    plan: CuttingPlan
    act: Act | None
    effort: int
    more: bool
    progress: str
    unplanned: NotRequired[int]
