"""Every message by its name: what is sent, and what is answered beside `"ok": true`.

What may be left out may be null as well.
"""

from typing import Any, Literal, NamedTuple, NotRequired, TypedDict

from sawside.contract.documents import Document, Settings, Tally
from sawside.contract.errors import Error
from sawside.contract.pictures import Sheet, Strip, Tape
from sawside.contract.plans import Planned
from sawside.contract.projects import Act, Change, EntryInFull, Merged, Sure, View
from sawside.contract.questions import (
    Field,
    Job,
    NameUsed,
    OnPaper,
    Paper,
    Reckoner,
    Reckoning,
    Typed,
)
from sawside.contract.values import Value


class Refused(TypedDict):
    """The answer to a message that is refused: the first error, and the others if any."""

    ok: Literal[False]
    error: Error
    more: NotRequired[list[Error]]


class Bare(TypedDict):
    """A message that is its name alone."""

    do: str


class ToDraw(Bare):
    settings: NotRequired[Settings | None]


class ToRead(ToDraw):
    """`names` are VALUEs by name; with a document its names may stand in the text."""

    text: str
    unit: NotRequired[str | None]
    document: NotRequired[Document | None]
    id: NotRequired[str | None]
    names: NotRequired[dict[str, Any] | None]


class ToWorkOut(ToDraw):
    reckoner: str
    values: NotRequired[Typed | None]
    unit: NotRequired[str | None]
    document: NotRequired[Document | None]
    id: NotRequired[str | None]


class ToReckon(ToWorkOut):
    """By `now` a step of the question is due; it is a moment as in `ToTellNow`."""

    now: NotRequired[str | None]


class ToPrint(ToWorkOut):
    paper: str


class ToTally(ToDraw):
    """`project` is what the page knows the document by."""

    tally: NotRequired[Tally | None]
    act: NotRequired[Act | None]
    document: NotRequired[Document | None]
    project: NotRequired[str | None]


class OfDocument(Bare):
    document: Document


class ToLabel(OfDocument):
    paper: str
    values: NotRequired[Typed | None]
    unit: NotRequired[str | None]


class ToChange(Bare):
    """Without a document a project is begun."""

    document: NotRequired[Document | None]
    act: Act
    follows: NotRequired[bool | None]


class ToView(OfDocument):
    order: NotRequired[str | None]
    drawings: NotRequired[bool | None]
    now: NotRequired[str | None]


class FormKept(TypedDict):
    """What was typed into the fields of a question."""

    reckoner: str
    values: Typed


class ToBringUp(Bare):
    """What an earlier version kept."""

    document: NotRequired[Document | None]
    forms: NotRequired[list[FormKept] | None]


class ToTell(OfDocument):
    id: str


class ToTellNow(ToTell):
    """`now` is a moment by the person's own clock, without a zone: "2026-12-01T07:30"."""

    now: NotRequired[str | None]


class ToCalendar(OfDocument):
    """The steps of one line, or of all; `when` is the present moment, `project` is what the page
    knows the document by."""

    when: str
    id: NotRequired[str | None]
    project: NotRequired[str | None]


class ToDoubt(ToTell):
    answer: NotRequired[str | None]
    tape: NotRequired[str | None]


class ToPlan(OfDocument):
    effort: NotRequired[int | None]


class ToTabulate(OfDocument):
    what: Literal["parts", "readings", "cuts", "stock", "buy"]


class ToTakeTable(ToTabulate):
    text: str
    when: NotRequired[str | None]


class ToBackUp(OfDocument):
    when: NotRequired[str | None]
    photos: NotRequired[dict[str, str] | None]


class ToRestore(Bare):
    text: str


class ToMerge(OfDocument):
    text: str
    when: NotRequired[str | None]


class SearchWords(TypedDict):
    """What questions are found by beside their own words: each of `same` is phrases of one
    meaning, `small` words need not be there, those of `elsewhere` are no slips of others."""

    same: list[list[str]]
    small: list[str]
    elsewhere: list[str]


class Described(TypedDict):
    """All questions and settings, declared."""

    contract: int
    version: str
    settings: list[Field]
    papers: list[Paper]
    labels: list[Field]
    jobs: list[Job]
    reckoners: list[Reckoner]
    search: SearchWords
    case: Document


class Read(TypedDict):
    """What a text comes to. `finer` is the sixty-fourth nearer to a length than its mark, "" where
    none is, `kept` how it is told once it is a reading, `stands_for` what a name that stands alone
    in it is worth, `corrected` tells a reading by a tape that errs, `names` are those of the
    document that it uses, `note` says which is meant where a name is in both."""

    value: Value
    echo: str
    tape: Tape | None
    finer: str
    kept: str
    stands_for: str
    corrected: NotRequired[str]
    names: NotRequired[list[NameUsed]]
    note: NotRequired[str]


class TallyLineTold(TypedDict):
    """A line of the pad worked out."""

    id: str
    name: str
    text: str
    ok: bool
    value: Value | None
    error: Error | None
    note: str


class ToKeep(ToDraw):
    """What of the tally is to be kept: a line by its `id`, or a `text` being typed."""

    tally: NotRequired[Tally | None]
    id: NotRequired[str | None]
    text: NotRequired[str | None]
    document: NotRequired[Document | None]
    project: NotRequired[str | None]


class SumKept(TypedDict):
    """A sum of the pad as a project can keep it; `said` where that is only its number."""

    text: str
    unit: str
    value: Value
    said: str


class Tallied(TypedDict):
    """The tally, how to undo what was done, and its lines worked out."""

    tally: Tally
    undo: Act | None
    lines: list[TallyLineTold]


class Labeled(TypedDict):
    """Labels on sheets of stickers."""

    paper: str
    sheets: list[Sheet]
    said: str


class File(TypedDict):
    """A text that leaves as a file."""

    name: str
    type: str
    text: str


class Table(File):
    what: str


class Restored(TypedDict):
    """A document out of a backup, with its photos as data addresses."""

    document: Document
    photos: dict[str, str]
    when: str
    said: str


class BroughtUp(TypedDict):
    """The same as this version keeps it, the forms in their order."""

    document: Document | None
    forms: list[FormKept]


class Message(NamedTuple):
    """What is sent, and what is answered."""

    asks: type
    answers: type


MESSAGES = {
    "describe": Message(Bare, Described),
    "strip": Message(ToDraw, Strip),
    "read": Message(ToRead, Read),
    "reckon": Message(ToReckon, Reckoning),
    "paper": Message(ToPrint, OnPaper),
    "tally": Message(ToTally, Tallied),
    "tally_sum": Message(ToKeep, SumKept),
    "labels": Message(ToLabel, Labeled),
    "change": Message(ToChange, Change),
    "view": Message(ToView, View),
    "today": Message(ToBringUp, BroughtUp),
    "entry": Message(ToTellNow, EntryInFull),
    "sure": Message(ToDoubt, Sure),
    "plan": Message(ToPlan, Planned),
    "csv": Message(ToTabulate, Table),
    "take_csv": Message(ToTakeTable, Change),
    "calendar": Message(ToCalendar, File),
    "backup": Message(ToBackUp, File),
    "restore": Message(ToRestore, Restored),
    "merge": Message(ToMerge, Merged),
}
