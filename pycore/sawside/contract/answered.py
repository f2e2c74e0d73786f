"""What is answered to a message beside `"ok": true`, where it has no file of its own here."""

from typing import Literal, NotRequired, TypedDict

from sawside.contract.asked import FormKept
from sawside.contract.documents import Document, Tally
from sawside.contract.errors import Error
from sawside.contract.pictures import Sheet, Tape
from sawside.contract.projects import Act
from sawside.contract.questions import Field, Job, NameUsed, Paper, Reckoner
from sawside.contract.values import Value


class Refused(TypedDict):
    """The answer to a message that is refused: the first error, and the others if any."""

    ok: Literal[False]
    error: Error
    more: NotRequired[list[Error]]


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
