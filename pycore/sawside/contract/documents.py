"""What is kept: the document of a project, and the tally of the pad. Texts as they were typed."""

from typing import Any, Literal, NotRequired, TypedDict

from sawside.contract.questions import Typed

Settings = dict[str, Any]
"""The settings by the keys of their fields; what is not there is as it was at first."""


class Earlier(TypedDict):
    """What a reading was before it was corrected."""

    text: str
    unit: str
    when: NotRequired[str]


class CutPiece(TypedDict):
    """A piece as it was cut; sizes are exact inches ("289/8 in")."""

    length: NotRequired[str]
    width: NotRequired[str]
    thickness: NotRequired[str]
    short_side: NotRequired[str]
    ends: NotRequired[str]
    when: NotRequired[str]


class Trial(TypedDict):
    """A set-up that was tried."""

    aimed: str
    measured: str
    unit: str
    cut: Literal["stop", "mark"]
    when: NotRequired[str]


class Reading(TypedDict):
    """What the tape said, or a sum with names."""

    id: str
    kind: Literal["reading"]
    name: str
    unit: str
    text: str
    where: NotRequired[str]
    tape: NotRequired[str]
    side: NotRequired[Literal["light", "heavy"]]
    when: NotRequired[str]
    fineness: NotRequired[str]
    off: NotRequired[str]
    photo: NotRequired[str]
    earlier: NotRequired[list[Earlier]]


class Done(TypedDict):
    """A step that was done: when by the person's own clock, without a zone ("2026-12-01T07:30"),
    and what was written down of it. Temperature and humidity have their unit: "68 °F", "45%".

    The act "tick" takes {id, step}, these but `when`, and the moment as `done_at`; without it that
    of the act itself. It replaces what was kept of the step; "untick" takes {id, step}."""

    when: str
    temperature: NotRequired[str]
    humidity: NotRequired[str]
    note: NotRequired[str]
    photo: NotRequired[str]


class Line(TypedDict):
    """A question with what was typed, by part what became of its pieces, and by the key of a step
    how it was done."""

    id: str
    kind: Literal["line"]
    name: str
    unit: str
    reckoner: str
    values: Typed
    about: NotRequired[dict[str, dict[str, str]]]
    cut: NotRequired[dict[str, list[CutPiece]]]
    spoiled: NotRequired[dict[str, list[CutPiece]]]
    trials: NotRequired[dict[str, list[Trial]]]
    done: NotRequired[dict[str, Done]]


class Note(TypedDict):
    """Words."""

    id: str
    kind: Literal["note"]
    name: str
    text: str


class Tolerance(TypedDict):
    """How far a piece may be off, as typed."""

    text: str
    unit: str


class LabelGrid(TypedDict):
    """The grid of the person's sheet of stickers, as typed."""

    unit: str
    values: Typed


class Logged(TypedDict):
    """One line of the log."""

    when: str
    said: str


class SawCut(TypedDict):
    """A cut of a plan: through which of the parts that there are by then (0 is the board, cut n
    makes 2n + 1, which comes off, and 2n + 2), and how much comes off. A `trim` is waste."""

    way: Literal["rip", "crosscut"]
    part: int
    at: str
    trim: NotRequired[bool]


class PieceOf(TypedDict):
    """A piece of a plan: which part of its board it is; `turned` where its length goes across,
    `done` where it was cut when the plan was made."""

    entry: str
    part: str
    of: int
    turned: NotRequired[bool]
    done: NotRequired[bool]


BoardOf = TypedDict(
    "BoardOf",
    {
        "key": str,
        "form": Literal["board", "sheet", "stick"],
        "length": str,
        "width": NotRequired[str],
        "thickness": NotRequired[str],
        "material": NotRequired[str],
        "name": NotRequired[str],
        "trim": NotRequired[str],
        "kerf": NotRequired[str],
        "price": NotRequired[str],
        "from": NotRequired[str],
        "flaws": NotRequired[list[dict[str, str]]],
        "bought": NotRequired[bool],
        "here": NotRequired[bool],
        "bad": NotRequired[bool],
        "saved": NotRequired[bool],
        "cuts": list[SawCut],
        "pieces": list[PieceOf],
    },
)
BoardOf.__doc__ = """A board of a plan in exact inches: to be `bought`, or bought for an earlier
plan and `here`; `bad`, or its offcuts `saved` in a list of wood. One that was begun with another
blade has its own `kerf`."""


class Begun(TypedDict):
    """How many of a part were cut and spoiled when the plan was made."""

    entry: str
    part: str
    cut: int
    spoiled: int


class Checked(TypedDict):
    """How far what these boards cost together can be over the best: dollars where they are
    `priced`, else boards."""

    boards: list[str]
    over: str
    priced: NotRequired[bool]


class Plan(TypedDict):
    """A cutting plan as it is kept."""

    kerf: str
    boards: list[BoardOf]
    begun: list[Begun]
    checked: NotRequired[list[Checked]]


class Document(TypedDict):
    """A project."""

    schema: int
    name: str
    settings: Settings
    next: int
    entries: list[Reading | Line | Note]
    tolerance: NotRequired[Tolerance]
    labels: NotRequired[LabelGrid]
    plan: NotRequired[Plan]
    log: NotRequired[list[Logged]]


class Target(TypedDict):
    """What a name means: an entry, and which of its answers."""

    entry: str
    answer: str


class OfProject(TypedDict):
    """The project whose names a line of the tally uses, and what they meant when it was entered."""

    id: str
    name: str
    names: NotRequired[dict[str, Target]]


class TallyLine(TypedDict):
    """A line of the pad as it was typed."""

    id: str
    name: str
    text: str
    unit: str
    project: NotRequired[OfProject]


class Tally(TypedDict):
    """The lines of the pad."""

    schema: int
    next: int
    lines: list[TallyLine]
