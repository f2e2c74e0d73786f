"""A project as it is told: its entries worked out, its pieces, its cuts, what a change does."""

from typing import Any, Literal, NotRequired, TypedDict

from sawside.contract.documents import Document, Logged, Tolerance
from sawside.contract.errors import Error
from sawside.contract.pictures import Drawing
from sawside.contract.questions import Ends, Field, Reckoning
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
        "grain": str,
        "place": str,
        "rough": Rough | None,
        "trial": TrialInBrief | None,
        "verdicts": list[Verdict],
    },
)
Piece.__doc__ = "Pieces of one part: how many there are to cut, how many are cut, of what."


class PieceAt(TypedDict):
    """Where a piece is in the project."""

    entry: str
    part: str


class CutGroup(TypedDict):
    """Cuts that belong together: one stop, one board or one part; `waits` says for what."""

    setting: Length | None
    said: str
    waits: str
    left: int
    pieces: list[PieceAt]


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


class View(TypedDict):
    """A project with everything worked out."""

    name: str
    schema: int
    entries: list[Entry]
    pieces: list[Piece]
    cuts: Cuts
    set_ups: list[CutGroup]
    cases: list[Case]
    tally: list[Stock]
    tolerance: Tolerance | None
    tolerance_told: str
    log: list[Logged]


class Link(TypedDict):
    """An answer that a name can stand for; `insert` is what is typed for it."""

    label: str
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
