"""ERROR: a sentence with a remedy, and its place."""

from typing import Literal, NotRequired, TypedDict


class Error(TypedDict):
    """`field` is the key of the field, `at` the place in its text; `row` and `part` are the place
    inside a list; `unfinished` says that the text only has to go on."""

    kind: Literal[
        "message",
        "unknown",
        "missing",
        "unreadable",
        "range",
        "impossible",
        "conflict",
        "newer",
        "internal",
    ]
    field: str | None
    at: int | None
    message: str
    remedy: str
    row: NotRequired[int]
    part: NotRequired[str]
    unfinished: NotRequired[Literal[True]]
