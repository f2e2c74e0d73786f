"""Steps that are ticked: what is to be done, when, and what was done of it."""

from typing import Literal, NotRequired, TypedDict


class StepCaution(TypedDict):
    """What can hurt at this step: one short line, and all of it the first time that it stands in a
    list; after that "full" is the short line again."""

    short: str
    full: str


class Due(TypedDict):
    """A moment of the person's own clock: `at` as "2026-12-01T07:30", without a zone."""

    at: str
    said: str


class DoneTold(TypedDict):
    """What was kept of a step that is done, and in `said` all of it in a line."""

    when: str
    said: str
    temperature: NotRequired[str]
    humidity: NotRequired[str]
    note: NotRequired[str]
    photo: NotRequired[str]


class StepToDo(TypedDict):
    """One step of a list. `key` stays whatever is typed; `about` goes with it, "" for nothing.

    `due` is when to do it, in hours when the person is there; `earliest` is the first moment at
    which it may be done. Of those not done, "due" are those whose time has come by the `now` that
    was sent and that wait for nothing, "passed" those that were not ticked while one that
    comes after them is done, "next" is the first of the others, and the rest "waits".
    """

    key: str
    said: str
    about: str
    caution: StepCaution | None
    due: Due | None
    earliest: Due | None
    state: Literal["done", "passed", "next", "waits", "due"]
    done: DoneTold | None


class CheckList(TypedDict):
    """All the steps of a line of a project, `title` is what its question is called."""

    entry: str
    name: str
    title: str
    steps: list[StepToDo]


class StepAhead(TypedDict):
    """A step of a project that is still to do: `entry` and `name` are its line, `step` its key.
    `line` says it in one line: "Second coat, from Tue, Dec 1, 7:30 AM"."""

    entry: str
    name: str
    step: str
    said: str
    line: str
    due: Due | None
    state: Literal["next", "waits", "due"]
