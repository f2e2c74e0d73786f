"""A project as it is told: its entries worked out, its pieces, its cuts, what a change does."""

from typing import Any, Literal, NotRequired, TypedDict

from sawside.contract.documents import Document, Logged, Tolerance
from sawside.contract.errors import Error
from sawside.contract.pieces import Case, CutGroup, Cuts, Judged, Piece, Stock
from sawside.contract.plans import CuttingPlan
from sawside.contract.questions import Field, Reckoning
from sawside.contract.steps import CheckList, StepAhead
from sawside.contract.values import Fine, Length, Value

Act = dict[str, Any]
"""What is done to a project or a tally: its name as `act`, and what it needs."""


class Waits(TypedDict):
    """A name without a value that an entry waits for; `id` None where there is no such entry."""

    id: str | None
    name: str


class FieldToFill(TypedDict):
    """A field that is to be filled in."""

    key: str
    label: str


class ToFill(TypedDict):
    """What of an entry is to be filled in: "fill" has no answer for want of `fields`, "check" has
    one that stands on what is usual in them, "waits" uses the entries `waits_for` without one."""

    state: Literal["fill", "check", "waits"]
    fields: list[FieldToFill]
    waits_for: list[str]


class EarlierTold(TypedDict):
    """What a reading was before, for the eye."""

    text: str
    when: str


class Entry(TypedDict):
    """An entry of a project; a reading has what is told of it as well. `verdict` says what to make
    of a line whose number does not say it."""

    id: str
    kind: Literal["reading", "line", "note"]
    name: str
    title: str
    ok: bool
    headline: Value | None
    verdict: str
    summary: str
    error: Error | None
    text: str
    uses: list[str]
    used_by: list[str]
    waits: list[Waits]
    to_fill: ToFill | None
    insert: str
    where: NotRequired[str]
    tape: NotRequired[str]
    side: NotRequired[str]
    when: NotRequired[str]
    fineness: NotRequired[str]
    off: NotRequired[str]
    photo: NotRequired[str]
    earlier: NotRequired[list[EarlierTold]]
    fineness_told: NotRequired[str]
    off_told: NotRequired[str]


class View(TypedDict):
    """A project with everything worked out; `steps` are those of its check lists that are not done,
    in their order, `plan` is the cutting plan that is kept, if any."""

    name: str
    schema: int
    entries: list[Entry]
    pieces: list[Piece]
    cuts: Cuts
    set_ups: list[CutGroup]
    cases: list[Case]
    plan: CuttingPlan | None
    tally: list[Stock]
    check_lists: list[CheckList]
    steps: list[StepAhead]
    tolerance: Tolerance | None
    tolerance_told: str
    log: list[Logged]


class Link(TypedDict):
    """An answer that a name can stand for; `insert` is what is typed for it."""

    label: str
    kind: Literal["length", "angle", "count", "weight", "area", "volume"]
    insert: str
    text: str


class EntryInFull(TypedDict):
    """One entry with all that belongs to it."""

    entry: Entry
    reckoning: Reckoning | None
    links: list[Link]


class Other(TypedDict):
    """An answer that is not the first, before and after a change."""

    key: str
    label: str
    before: str
    after: str
    difference: str


class Follow(TypedDict):
    """What a change does to another entry."""

    id: str
    name: str
    ok: bool
    error: Error | None
    label: str
    before: Value | None
    after: Value | None
    difference: Value | None
    others: list[Other]


class Change(TypedDict):
    """A project changed: how to undo it, what was done, and what follows."""

    document: Document
    undo: Act | None
    said: str
    id: str | None
    follows: list[Follow]
    judged: list[Judged]
    trial: NotRequired[Reckoning]


class Merged(Change):
    """A project with what a backup has more; `photos` by their keys as data addresses."""

    rule: str
    photos: dict[str, str]


class Range(TypedDict):
    """Between what and what a number lies."""

    label: str
    low: Fine
    high: Fine
    by: Fine | None


class Influence(TypedDict):
    """What one reading does to a number."""

    id: str
    name: str
    text: str
    by: str
    off: str
    moves: Fine | None
    share: str | None


class Again(TypedDict):
    """The reading that is best measured again."""

    id: str
    name: str
    said: str


class Fit(TypedDict):
    """Whether a clearance covers what its number may be off by."""

    field: str
    label: str
    answer: str
    clearance: Length
    covers: bool
    said: str


class Asked(TypedDict):
    """What was asked: which number, by which rule for tapes."""

    answer: str
    tape: str


class Sure(TypedDict):
    """How sure a number is."""

    value: Value
    label: str
    steps: bool
    worst: Range | None
    likely: Range | None
    readings: list[Influence]
    measure_again: Again | None
    said: str
    fit: Fit | None
    asked: Asked
    fields: list[Field]
