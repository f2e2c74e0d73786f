"""What is done to a tally: each act gives the new tally and the act that undoes it."""

from collections.abc import Callable, Mapping
from typing import NamedTuple

from sawside.errors import Refusal, quoted
from sawside.lengths.reading.reader import last_step
from sawside.needs import NOTHING, a_list, index, one_of, text
from sawside.project.schema.list_edits import with_id, with_more, with_one, without
from sawside.tally.document import MOST_LINES, read_line, read_tally
from sawside.tally.lines import refusal_of, stand_for, worked_out
from sawside.tally.names import called, marked, of_project
from sawside.tally.naming import name_line

STEPS = {"half": "÷ 2", "double": "× 2"}
"""The one-touch steps that are always there; `kerf` takes the kerf of the settings away."""


def _enter(tally, around, text):
    """A new line at the end; refused when it can't be read."""
    return _entered(tally, text.strip(), around)


def _entered(tally, text, around, taken=()):
    if len(tally["lines"]) >= MOST_LINES:
        raise Refusal("range", f"History is full ({MOST_LINES} lines).", "Clear it first.")
    line = {"id": str(tally["next"]), "name": "", "text": text, "unit": around.settings.unit}
    line = marked(line, called(tally["lines"]), around.project, taken)
    new = tally | {"next": tally["next"] + 1, "lines": [*tally["lines"], line]}
    _check(new, line["id"], around)
    return new, {"act": "delete", "id": line["id"]}


def _step(tally, around, how):
    """The last line taken one step on: `half`, `double`, `kerf`, or `again`, its own last step."""
    if not tally["lines"]:
        raise Refusal("missing", "There’s no line to build on.", "Enter a length first.")
    last = tally["lines"][-1]
    if how == "again":
        used = stand_for(last, worked_out(tally, around)[1], around.project)
        step = last_step(last["text"], last["unit"], used)
        if step is None:
            raise Refusal(
                "missing",
                f"{quoted(last['text'])} has no step to repeat.",
                "Enter a sum first, as in 31 5/8 + 3/4.",
            )
    elif how == "kerf":
        step = f"− {around.settings.kerf_text}"
    else:
        step = STEPS[how]
    return _entered(tally, f"[{last['name'] or last['id']}] {step}", around, of_project(last))


def _correct(tally, around, id, text):
    at, line = _found(tally, id)
    line = marked(line | {"text": text.strip()}, called(tally["lines"][:at]), around.project)
    new = tally | {"lines": with_one(tally["lines"], at, line)}
    _check(new, line["id"], around)
    return new, {"act": "put", "lines": tally["lines"]}


def _name(tally, _around, id, name):
    at, _ = _found(tally, id)
    new = tally | {"lines": name_line(tally["lines"], at, name)}
    return new, {"act": "put", "lines": tally["lines"]}


def _delete(tally, _around, id):
    at, line = _found(tally, id)
    undo = {"act": "restore", "line": line, "at": at}
    return tally | {"lines": without(tally["lines"], at)}, undo


def _restore(tally, _around, line, at):
    lines = with_more(tally["lines"], line, at, "at")
    new = tally | {"lines": lines, "next": max(tally["next"], int(line["id"]) + 1)}
    return read_tally(new), {"act": "delete", "id": line["id"]}


def _clear(tally, _around):
    return tally | {"lines": []}, {"act": "put", "lines": tally["lines"]}


def _put(tally, _around, lines):
    """All lines at once: what undoes `clear` and `name`."""
    return read_tally(tally | {"lines": lines}), {"act": "put", "lines": tally["lines"]}


class Act(NamedTuple):
    """`make` is given the tally, what its lines are read by, and the checked keys.

    `needs` and `may` are as in `needs.py`. What `brings_back` is given was kept before.
    """

    make: Callable
    needs: Mapping[str, Callable] = NOTHING
    may: Mapping[str, Callable] = NOTHING
    brings_back: bool = False


ACTS = {
    "enter": Act(_enter, needs={"text": text}),
    "step": Act(_step, needs={"how": one_of("again", "kerf", *STEPS)}),
    "correct": Act(_correct, needs={"id": text, "text": text}),
    "name": Act(_name, needs={"id": text, "name": text}),
    "delete": Act(_delete, needs={"id": text}),
    "restore": Act(_restore, needs={"line": read_line, "at": index}, brings_back=True),
    "clear": Act(_clear),
    "put": Act(_put, needs={"lines": a_list}, brings_back=True),
}


def _check(tally, identity, around):
    """Refuse a line that can't be read, with the reader's own refusal."""
    told = next(each for each in worked_out(tally, around)[0] if each["id"] == identity)
    if not told["ok"]:
        raise refusal_of(told["error"])


def _found(tally, id):
    there = with_id(tally["lines"], id)
    if there is None:
        message = "That line isn’t in the history."
        raise Refusal("unknown", message, "Open the history again.", field="id")
    return there
