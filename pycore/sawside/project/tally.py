"""The tally of the pad: lines entered one after another, each a sum that may use earlier lines.

    {"schema": 1, "next": 4, "lines": [{"id": "1", "name": "", "text": "31 5/8", "unit": "in"}]}

Text in, nothing derived: a line is what was typed and the unit that a bare number meant then.
`[1]` in a line stands for line 1, and so does its name. A line sees only the lines above it, so
there are no loops, and a correction is followed by every line below that used it. Each act gives
the new tally and the act that undoes it.
"""

from fractions import Fraction
from functools import lru_cache

from sawside.errors import Refusal, quoted
from sawside.lengths.names import Named, check_name, names_in, renamed
from sawside.lengths.reader import last_step, read
from sawside.lengths.refusals import MOST_CHARACTERS
from sawside.lengths.settings import read_settings
from sawside.project.checks import MOST_NAME, damaged, keys_checked, whole_number
from sawside.reckoning.reading import reading_told

SCHEMA = 1
MOST_LINES = 2000
EMPTY = {"schema": SCHEMA, "next": 1, "lines": []}
STEPS = {"half": "÷ 2", "double": "× 2"}
"""The one-touch steps that are always there; `kerf` takes the kerf of the settings away."""


def tally_told(data, act, settings_data):
    """The contract of `tally` (without "ok"): a tally changed by an act (None: only told).

    Refusals: "message" for a damaged tally or an act that is none, "unknown" for a line that is
    not there, "missing" where there is nothing to repeat, and those of reading what is entered.
    """
    tally = EMPTY if data is None else read_tally(data)
    settings = read_settings(settings_data)
    undo = None
    if act is not None:
        if not isinstance(act, dict) or act.get("act") not in _ACTS:
            offered = ", ".join(_ACTS)
            raise Refusal(
                "message", "There is no such act.", f"Send one of {offered}.", field="act"
            )
        tally, undo = _ACTS[act["act"]](tally, act, settings)
    return {"tally": tally, "undo": undo, "lines": _worked_out(tally, settings)[0]}


def _worked_out(tally, settings):
    """(every line as data, what each name stands for); a line in error says so."""
    names, told = {}, []
    for line in tally["lines"]:
        used = tuple((name, names[name]) for name in names_in(line["text"], names))
        said, named = _line_told(line["text"], line["unit"], settings, used)
        told.append({"id": line["id"], "name": line["name"], "text": line["text"]} | said)
        for name in filter(None, (line["id"], line["name"])):
            names[name] = named
    return told, names


@lru_cache(maxsize=4096)
def _line_told(text, unit, settings, used):
    """One line: a pure function of its text and the values that it uses, so it is remembered."""
    try:
        said = reading_told(text, settings, unit=unit, names=dict(used))
    except Refusal as refusal:
        return {"ok": False, "value": None, "error": refusal.as_data()}, None
    reading = read(text, unit, dict(used))
    return {"ok": True, "value": said["value"], "error": None}, Named(reading.value, reading.power)


def _enter(tally, act, settings):
    """A new line at the end; refused when it can't be read."""
    text = act.get("text")
    if not isinstance(text, str):
        raise Refusal("message", "There is no text to enter.", "Send it as “text”.", field="text")
    return _entered(tally, text.strip(), settings)


def _entered(tally, text, settings):
    if len(tally["lines"]) >= MOST_LINES:
        raise Refusal("range", f"A tally holds at most {MOST_LINES} lines.", "Clear it first.")
    line = {"id": str(tally["next"]), "name": "", "text": text, "unit": settings.unit}
    new = tally | {"next": tally["next"] + 1, "lines": [*tally["lines"], line]}
    _check(new, line["id"], settings)
    return new, {"act": "delete", "id": line["id"]}


def _step(tally, act, settings):
    """The last line taken one step on: `half`, `double`, `kerf`, or `again`, its own last step."""
    if not tally["lines"]:
        raise Refusal("missing", "There is no line to go on from.", "Enter a length first.")
    last = tally["lines"][-1]
    how = act.get("how")
    if how == "again":
        step = last_step(last["text"], last["unit"], _worked_out(tally, settings)[1])
        if step is None:
            raise Refusal(
                "missing",
                f"{quoted(last['text'])} has no step to repeat.",
                "Enter a sum first, as in 31 5/8 + 3/4.",
            )
    elif how == "kerf":
        step = f"− {settings.kerf_text}"
    elif how in STEPS:
        step = STEPS[how]
    else:
        raise Refusal("message", "There is no such step.", "Send again, half, double or kerf.")
    return _entered(tally, f"[{last['name'] or last['id']}] {step}", settings)


def _correct(tally, act, settings):
    at, line = _find(tally, act)
    text = act.get("text")
    if not isinstance(text, str):
        raise Refusal("message", "There is no text to keep.", "Send it as “text”.", field="text")
    new = _with(tally, at, line | {"text": text.strip()})
    _check(new, line["id"], settings)
    return new, {"act": "correct", "id": line["id"], "text": line["text"]}


def _name(tally, act, _settings):
    """Name a line; the lines that called it by its old name or number follow."""
    at, line = _find(tally, act)
    name = act.get("name")
    if not isinstance(name, str) or len(name) > MOST_NAME:
        raise Refusal("message", "The name is not a text of a usual length.", "Shorten it.")
    name = name.strip()
    if name:
        check_name(name)
        if any(
            each["name"].casefold() == name.casefold()
            for each in tally["lines"]
            if each is not line
        ):
            raise Refusal(
                "conflict",
                f"There is a line {quoted(name)} already.",
                "Choose another name.",
                field="name",
            )
    lines = [*tally["lines"]]
    lines[at] = line | {"name": name}
    if line["name"]:
        for below in range(at + 1, len(lines)):
            text = renamed(lines[below]["text"], line["name"], name or line["id"])
            lines[below] = lines[below] | {"text": text}
    return tally | {"lines": lines}, {"act": "put", "lines": tally["lines"]}


def _delete(tally, act, _settings):
    at, line = _find(tally, act)
    lines = tally["lines"]
    return tally | {"lines": lines[:at] + lines[at + 1 :]}, {
        "act": "restore",
        "line": line,
        "at": at,
    }


def _restore(tally, act, _settings):
    line, at = _line(act.get("line"), "line"), act.get("at")
    lines = tally["lines"]
    if isinstance(at, bool) or not isinstance(at, int) or not 0 <= at <= len(lines):
        raise Refusal("message", "The place to restore is none.", "Send an index.", field="at")
    new = tally | {
        "lines": [*lines[:at], line, *lines[at:]],
        "next": max(tally["next"], int(line["id"]) + 1),
    }
    return read_tally(new), {"act": "delete", "id": line["id"]}


def _clear(tally, _act, _settings):
    return tally | {"lines": []}, {"act": "put", "lines": tally["lines"]}


def _put(tally, act, _settings):
    """All lines at once: what undoes `clear` and `name`."""
    new = read_tally(tally | {"lines": act.get("lines")})
    return new, {"act": "put", "lines": tally["lines"]}


_ACTS = {
    "enter": _enter,
    "step": _step,
    "correct": _correct,
    "name": _name,
    "delete": _delete,
    "restore": _restore,
    "clear": _clear,
    "put": _put,
}


def _check(tally, identity, settings):
    """Refuse a line that can't be read, with the reader's own refusal."""
    told = next(each for each in _worked_out(tally, settings)[0] if each["id"] == identity)
    if not told["ok"]:
        error = told["error"]
        raise Refusal(
            error["kind"],
            error["message"],
            error["remedy"],
            field="text",
            at=error["at"],
            unfinished=error.get("unfinished", False),
        )


def _find(tally, act):
    for at, line in enumerate(tally["lines"]):
        if line["id"] == act.get("id"):
            return at, line
    raise Refusal("unknown", "That line is not in the tally.", "Open the tally anew.", field="id")


def _with(tally, at, line):
    return tally | {"lines": [*tally["lines"][:at], line, *tally["lines"][at + 1 :]]}


POWERS = {"count": 0, "length": 1, "area": 2, "volume": 3}


def read_names(message):
    """The names of a message, {name: {"exact", "kind"}} as VALUEs have them; None without any."""
    names = message.get("names")
    if not names:
        return None
    try:
        return {
            name: Named(Fraction(value["exact"]), POWERS[value["kind"]])
            for name, value in names.items()
            if name and len(value["exact"]) <= MOST_CHARACTERS
        }
    except (AttributeError, KeyError, TypeError, ValueError, ZeroDivisionError):
        raise Refusal(
            "message", "The names are not readable.", "Send exact values by name.", field="names"
        ) from None


def read_tally(data):
    """A checked copy of a tally. Refusals: "message" naming the place, "newer"."""
    keys_checked(data, "the tally", ("schema", "next", "lines"))
    if data["schema"] != SCHEMA or isinstance(data["schema"], (bool, float)):
        newer = isinstance(data["schema"], int) and data["schema"] > SCHEMA
        if newer:
            raise Refusal(
                "newer", "This tally was saved by a newer version.", "Update the program."
            )
        raise damaged("schema", "is not a version that this program knows")
    if not isinstance(data["lines"], list) or len(data["lines"]) > MOST_LINES:
        raise damaged("lines", f"is not a list of at most {MOST_LINES}")
    lines = [_line(line, f"lines[{at}]") for at, line in enumerate(data["lines"])]
    upcoming = whole_number(data["next"], "next", 1, 10**9)
    identities = [line["id"] for line in lines]
    names = [line["name"].casefold() for line in lines if line["name"]]
    if len(set(identities)) != len(lines) or len(set(names)) != len(names):
        raise damaged("lines", "holds the same line twice")
    if any(int(identity) >= upcoming for identity in identities):
        raise damaged("next", "is not above every line")
    return {"schema": SCHEMA, "next": upcoming, "lines": lines}


def _line(data, place):
    keys_checked(data, place, ("id", "name", "text", "unit"))
    for key, most in (("id", 9), ("name", MOST_NAME), ("text", MOST_CHARACTERS), ("unit", 9)):
        if not isinstance(data[key], str) or len(data[key]) > most:
            raise damaged(f"{place}.{key}", "is not a short text")
    identity = data["id"]
    if not (identity.isascii() and identity.isdigit() and identity[0] != "0"):
        raise damaged(f"{place}.id", "is not the number of a line")
    read_settings({"unit": data["unit"]})
    return {key: data[key] for key in ("id", "name", "text", "unit")}
