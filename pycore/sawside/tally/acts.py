"""What is done to a tally: each act gives the new tally and the act that undoes it."""

from sawside.errors import Refusal, quoted
from sawside.lengths.reading.reader import last_step
from sawside.tally.document import MOST_LINES, read_line, read_tally
from sawside.tally.lines import refusal_of, stand_for, worked_out
from sawside.tally.names import called, marked, of_project
from sawside.tally.naming import name_line

STEPS = {"half": "÷ 2", "double": "× 2"}
"""The one-touch steps that are always there; `kerf` takes the kerf of the settings away."""


def _enter(tally, act, around):
    """A new line at the end; refused when it can't be read."""
    text = act.get("text")
    if not isinstance(text, str):
        raise Refusal("message", "There is no text to enter.", "Send it as “text”.", field="text")
    return _entered(tally, text.strip(), around)


def _entered(tally, text, around, taken=()):
    if len(tally["lines"]) >= MOST_LINES:
        raise Refusal("range", f"A tally holds at most {MOST_LINES} lines.", "Clear it first.")
    line = {"id": str(tally["next"]), "name": "", "text": text, "unit": around.settings.unit}
    line = marked(line, called(tally["lines"]), around.project, taken)
    new = tally | {"next": tally["next"] + 1, "lines": [*tally["lines"], line]}
    _check(new, line["id"], around)
    return new, {"act": "delete", "id": line["id"]}


def _step(tally, act, around):
    """The last line taken one step on: `half`, `double`, `kerf`, or `again`, its own last step."""
    if not tally["lines"]:
        raise Refusal("missing", "There is no line to go on from.", "Enter a length first.")
    last = tally["lines"][-1]
    how = act.get("how")
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
    elif isinstance(how, str) and how in STEPS:
        step = STEPS[how]
    else:
        remedy = "Send again, half, double or kerf."
        raise Refusal("message", "There is no such step.", remedy, field="how")
    return _entered(tally, f"[{last['name'] or last['id']}] {step}", around, of_project(last))


def _correct(tally, act, around):
    at, line = _find(tally, act)
    text = act.get("text")
    if not isinstance(text, str):
        raise Refusal("message", "There is no text to keep.", "Send it as “text”.", field="text")
    line = marked(line | {"text": text.strip()}, called(tally["lines"][:at]), around.project)
    new = _with(tally, at, line)
    _check(new, line["id"], around)
    return new, {"act": "put", "lines": tally["lines"]}


def _name(tally, act, _around):
    at, _ = _find(tally, act)
    new = tally | {"lines": name_line(tally["lines"], at, act.get("name"))}
    return new, {"act": "put", "lines": tally["lines"]}


def _delete(tally, act, _around):
    at, line = _find(tally, act)
    lines = tally["lines"]
    return tally | {"lines": lines[:at] + lines[at + 1 :]}, {
        "act": "restore",
        "line": line,
        "at": at,
    }


def _restore(tally, act, _around):
    line, at = read_line(act.get("line"), "line"), act.get("at")
    lines = tally["lines"]
    if isinstance(at, bool) or not isinstance(at, int) or not 0 <= at <= len(lines):
        raise Refusal("message", "The place to restore is none.", "Send an index.", field="at")
    new = tally | {
        "lines": [*lines[:at], line, *lines[at:]],
        "next": max(tally["next"], int(line["id"]) + 1),
    }
    return read_tally(new), {"act": "delete", "id": line["id"]}


def _clear(tally, _act, _around):
    return tally | {"lines": []}, {"act": "put", "lines": tally["lines"]}


def _put(tally, act, _around):
    """All lines at once: what undoes `clear` and `name`."""
    new = read_tally(tally | {"lines": act.get("lines")})
    return new, {"act": "put", "lines": tally["lines"]}


ACTS = {
    "enter": _enter,
    "step": _step,
    "correct": _correct,
    "name": _name,
    "delete": _delete,
    "restore": _restore,
    "clear": _clear,
    "put": _put,
}
BRING_BACK = ("restore", "put")


def _check(tally, identity, around):
    """Refuse a line that can't be read, with the reader's own refusal."""
    told = next(each for each in worked_out(tally, around)[0] if each["id"] == identity)
    if not told["ok"]:
        raise refusal_of(told["error"])


def _find(tally, act):
    for at, line in enumerate(tally["lines"]):
        if line["id"] == act.get("id"):
            return at, line
    raise Refusal("unknown", "That line is not in the tally.", "Open the tally anew.", field="id")


def _with(tally, at, line):
    return tally | {"lines": [*tally["lines"][:at], line, *tally["lines"][at + 1 :]]}
