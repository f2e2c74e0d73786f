"""What is sent of each message. What may be left out may be null as well."""

from typing import Any, Literal, NotRequired, TypedDict

from sawside.contract.documents import Document, Settings, Tally
from sawside.contract.projects import Act
from sawside.contract.questions import Typed


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


class ToKeep(ToDraw):
    """What of the tally is to be kept: a line by its `id`, or a `text` being typed."""

    tally: NotRequired[Tally | None]
    id: NotRequired[str | None]
    text: NotRequired[str | None]
    document: NotRequired[Document | None]
    project: NotRequired[str | None]
