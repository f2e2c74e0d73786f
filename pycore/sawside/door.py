"""The one door: a closed list of messages, JSON in and JSON out, never an exception.

    {"do": "describe"}                                   all reckoners and settings, declared
    {"do": "read", "text", "settings"?}                  a length or a sum
    {"do": "strip", "settings"?}                        an inch drawn large, to touch a mark on
    {"do": "reckon", "reckoner", "values", "settings"?}  a question answered
    {"do": "tally", "tally", "act"?, "settings"?}       the lines of the pad, changed or told
    {"do": "change", "document", "act"}                  a project changed, and how to undo it
    {"do": "view", "document"}                           a project with everything worked out

Imports: everything below it.
"""

import json
from dataclasses import replace

from sawside.errors import Refusal, Refusals, quoted
from sawside.lengths.settings import read_settings
from sawside.lengths.strip import strip
from sawside.project.change import change
from sawside.project.document import read_document, unit_checked
from sawside.project.tally import read_names, tally_told
from sawside.project.view import view
from sawside.reckoning.describe import reckoners_told, settings_told
from sawside.reckoning.reading import reading_told
from sawside.reckoning.reckon import find, reckon

CONTRACT = 1
VERSION = "0.1.0"
MOST_CHARACTERS = 4_000_000
"""The longest message as text that is looked at."""

MOST_DEPTH = 12
"""How deep a message may be nested; a project's rows need eight."""


def handle(message):
    """Answer one message. Always returns a dict: `{"ok": True, …}` or `{"ok": False, "error": …}`.

    Several errors come as `error`, the first, and `more`. A fault of this program comes as kind
    "internal".
    """
    try:
        _check(message)
        do = message.get("do")
        if not isinstance(do, str) or do not in _MESSAGES:
            raise Refusal(
                "message",
                f"There is no message {quoted(str(do))}.",
                f"Send one of {', '.join(_MESSAGES)}.",
                field="do",
            )
        return {"ok": True} | _MESSAGES[do](message)
    except Refusal as refusal:
        return {"ok": False, "error": refusal.as_data()}
    except Refusals as several:
        first, *more = (refusal.as_data() for refusal in several.refusals)
        return {"ok": False, "error": first} | ({"more": more} if more else {})
    except Exception as fault:  # the door never raises: a bug becomes a sentence
        return {"ok": False, "error": _internal(fault)}


def handle_json(text):
    """`handle` from text to text: the same bytes on every machine.

    Text that is not JSON, or longer than `MOST_CHARACTERS`, is refused with kind "message".
    """
    try:
        if len(text) > MOST_CHARACTERS:
            raise ValueError("too long")
        message = json.loads(text)
    except (TypeError, ValueError, RecursionError):
        message = None
    return json.dumps(handle(message), ensure_ascii=False, separators=(",", ":"))


def _internal(fault):
    return {
        "kind": "internal",
        "field": None,
        "at": None,
        "message": "Something went wrong inside the program; nothing that was typed is lost.",
        "remedy": f"Try it another way, and report this: {type(fault).__name__}.",
    }


def _check(message):
    """Refuse what is not a message, or is nested too deep to be one."""
    if not isinstance(message, dict):
        raise Refusal("message", "This is not a message.", "Send an object with “do”.")
    level = [message]
    for _ in range(MOST_DEPTH):
        inside = [
            each
            for outer in level
            for each in (outer.values() if isinstance(outer, dict) else outer)
        ]
        if any(isinstance(each, int) and each.bit_length() > 64 for each in inside):
            raise Refusal("message", "A number here is too long.", "Send numbers as text.")
        level = [each for each in inside if isinstance(each, (dict, list))]
        if not level:
            return
    raise Refusal("message", "This message is nested too deep.", "Send a flatter one.")


def _describe(_message):
    return {
        "contract": CONTRACT,
        "version": VERSION,
        "settings": list(settings_told()),
        "reckoners": reckoners_told(),
    }


def _read(message):
    text = message.get("text")
    if not isinstance(text, str):
        raise Refusal("message", "There is no text to read.", "Send it as “text”.", field="text")
    return reading_told(text, _settings(message), names=read_names(message))


def _tally(message):
    return tally_told(message.get("tally"), message.get("act"), message.get("settings"))


def _strip(message):
    return strip(read_settings(message.get("settings")))


def _reckon(message):
    return reckon(find(message.get("reckoner")), message.get("values", {}), _settings(message))


def _settings(message):
    """The settings of a message; its own `unit`, if any, is what a bare number of it means."""
    settings = read_settings(message.get("settings"))
    unit = message.get("unit")
    return settings if unit is None else replace(settings, unit=unit_checked(unit, "unit"))


def _change(message):
    document = message.get("document")
    return change(None if document is None else read_document(document), message.get("act"))


def _view(message):
    return view(read_document(message.get("document")))


_MESSAGES = {
    "describe": _describe,
    "read": _read,
    "strip": _strip,
    "tally": _tally,
    "reckon": _reckon,
    "change": _change,
    "view": _view,
}
