"""A question: how it is declared, and how it is answered."""

from typing import Any, Literal, NotRequired, TypedDict

from sawside.contract.pictures import Drawing, Picture, Sheet, Tape
from sawside.contract.steps import StepToDo
from sawside.contract.values import Length, Value

Typed = dict[str, Any]
"""What was typed, by the keys of the fields: texts, lists of texts, rows of texts."""


class Choice(TypedDict):
    """One of several; `value` is what is typed for it, `picture` a small drawing of it."""

    value: str
    label: str
    help: NotRequired[str]
    picture: NotRequired[Drawing]


ShownWhen = TypedDict("ShownWhen", {"field": str, "is": list[str]})
ShownWhen.__doc__ = (
    "The field is asked only while another has one of these values, and all such hold."
)


class Group(TypedDict):
    """A heading under which several settings belong."""

    label: str
    help: str


class Twin(TypedDict):
    """The field that is as a rule filled in like this one: both are asked for once, under `label`,
    until they are made different. `apart` and `together` say so."""

    key: str
    label: str
    apart: str
    together: str


class PlainField(TypedDict):
    """What is asked. `least` and `most` are exact, in inches, degrees or its `unit`; of a moment
    as it is typed, "2026-11-30T18:00"."""

    key: str
    label: str
    kind: Literal[
        "length",
        "angle",
        "count",
        "number",
        "choice",
        "material",
        "text",
        "moment",
        "lengths",
        "rows",
    ]
    help: str
    default: str | None
    unit: str | None
    least: str | None
    most: str | None
    default_metric: NotRequired[str]
    may_be_blank: bool
    blank_means: str | None
    shown_when: list[ShownWhen]
    basic: bool
    setting: NotRequired[str]
    choices: NotRequired[list[Choice]]
    choices_from: NotRequired[str]
    choices_prefix: NotRequired[str]
    row_label: NotRequired[str]
    most_rows: NotRequired[int]
    group: NotRequired[Group]
    twin: NotRequired[Twin]


class Field(PlainField):
    """What is asked; one of kind "rows" has the `fields` of each row."""

    fields: NotRequired[list[PlainField]]


class AnswerDeclared(TypedDict):
    """An answer that a question may give."""

    key: str
    label: str
    kind: Literal["length", "angle", "count", "weight", "text", "lengths"]


class Job(TypedDict):
    """What several questions are for; a question names its `key`."""

    key: str
    title: str
    picture: Picture


class Reckoner(TypedDict):
    """A question as the page draws it; one that is not `offered` is in no list."""

    key: str
    title: str
    job: str
    picture: Picture
    asks: str
    words: list[str]
    fields: list[Field]
    solve_one_of: list[str]
    answers: list[AnswerDeclared]
    source: str
    makes_parts: bool
    offered: bool
    example: Typed
    example_metric: Typed


class End(TypedDict):
    """One end of a piece: how it is cut, at what angle, and what to set at the saw."""

    cut: str
    angle: str
    at_the_saw: list[str]


class Ends(TypedDict):
    """Both ends of a piece as it lies."""

    left: End
    right: End


class Part(TypedDict):
    """Pieces to cut that are alike; `about` are sentences on grain, edging and joints."""

    key: str
    name: str
    count: int
    length: Length
    width: Length | None
    thickness: Length | None
    ends: Ends
    about: NotRequired[list[str]]
    long_side: NotRequired[Length]
    short_side: NotRequired[Length]
    drawing: Drawing | None


class Step(TypedDict):
    """One line of the working."""

    text: str


class StickMark(TypedDict):
    """A mark of a story stick at its exact place; its text says the graduation."""

    name: str
    at_mm: float
    text: str
    dropped_text: str


class Setback(TypedDict):
    """A row of holes, by its distance from its edge."""

    name: str
    mm: float
    text: str


class Stick(TypedDict):
    """A story stick, or a template where `hole_mm` is the diameter of its holes."""

    name: str
    start: str
    note: str
    length_mm: float
    text: str
    hole_mm: float | None
    setbacks: list[Setback]
    marks: list[StickMark]


class InRow(TypedDict):
    """A row of a list, and the field of the row where it has several."""

    row: int
    part: str | None


class NameUsed(TypedDict):
    """A name in a text as it is written there, and what it stands for in the document; of a list
    `rows` are where it is written."""

    name: str
    stands_for: str
    rows: NotRequired[list[InRow]]


class Caution(TypedDict):
    """What can hurt or spoil the work: one short line of hazard and act, and all of it."""

    short: str
    full: str


class Fix(TypedDict):
    """What mends a bad answer, in a word or two, and the key of the field to change for it."""

    label: str
    field: str


class Reckoning(TypedDict):
    """The whole answer of a question, the answer that was asked for first.

    `verdict` says in a few words what to make of it, "" where the number says all; `fixes` are ways
    to what mends a bad one. `echoes` say how
    the texts of the fields were read, `names` by the field which names of the document they use.
    `steps` are there where the question has some to do.
    """

    reckoner: str
    answers: list[Value]
    verdict: str
    working: list[Step]
    source: str
    drawing: Drawing | None
    stick: Stick | None
    tape: Tape | None
    fixes: list[Fix]
    cautions: list[Caution]
    parts: list[Part]
    echoes: dict[str, Any]
    summary: str
    solved: list[str]
    names: NotRequired[dict[str, list[NameUsed]]]
    steps: NotRequired[list[StepToDo]]


class PaperMark(TypedDict):
    """A mark to transfer by hand."""

    name: str
    text: str
    dropped_text: str


class OnPaper(TypedDict):
    """The answer of a question at true size."""

    title: str
    summary: str
    paper: str
    sheets: list[Sheet]
    start: str
    marks: list[PaperMark]


class Paper(TypedDict):
    """A kind of paper, in millimeters."""

    key: str
    label: str
    width: float
    height: float
