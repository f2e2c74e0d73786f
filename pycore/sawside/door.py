"""The one door: a closed list of messages, JSON in and JSON out, never an exception.

    describe    all reckoners and settings, declared
    read        a length or a sum
    strip       an inch drawn large, to touch a mark on
    reckon      a question answered
    paper       its answer drawn at true size on sheets
    tally       the lines of the pad, changed or told
    tally_sum   what a project keeps of such a line
    labels      labels for its pieces, on stickers

and those of `project.messages`: {"do": "read", "text": "31 5/8"}. What each needs and may have
stands beside its name (`Message`, in `needs.py`) and is checked before it is answered; null is as
good as left out, and a key that nobody asks for is left unread. `read`, `reckon` and `paper` take a
"document", whose names may stand in the texts, and the "id" of the entry that is being corrected.
Typed over a reading with a tape, `read` tells what will be kept as `value`, and beside what was
read in `corrected`.

An error is `errors.Refusal.as_data`: kind, field, at, message, remedy; `row` and `part` inside a
list; `unfinished` true where the text is the beginning of one that can be read.

Imports: everything below it.
"""

import json
from copy import deepcopy
from importlib import import_module
from math import isfinite

from sawside.errors import Refusal, Refusals, each_of, quoted
from sawside.lengths.strip import strip
from sawside.needs import Message, checked
from sawside.settings.settings import read_settings, settings_sent

MOST_CHARACTERS = 80_000_000
"""The longest message as text that is looked at: the largest backup (`project.files.backup`), what
of it is escaped inside a message, and a document that it is merged into."""

MOST_DEPTH = 12
"""How deep a message may be nested; a project's rows need eight."""


def handle(message):
    """Answer one message. Always returns a dict: `{"ok": True, …}` or `{"ok": False, "error": …}`.

    Several errors come as `error`, the first, and `more`. A fault of this program comes as kind
    "internal". The answer is the caller's own, to do with as it likes.
    """
    return deepcopy(_answer(message))


def _answer(message):
    """The answer, parts of which are remembered for the next message."""
    try:
        _check(message)
        do = message.get("do")
        asked = _message(do) if isinstance(do, str) else None
        if asked is None:
            offered = ", ".join([*import_module("sawside.messages").MESSAGES, *AT_ONCE])
            raise Refusal(
                "message",
                f"There is no message {quoted(str(do))}.",
                f"Send one of {offered}.",
                field="do",
            )
        return {"ok": True} | asked.answer(**checked(message, asked))
    except (Refusal, Refusals) as fault:
        first, *more = (refusal.as_data() for refusal in each_of(fault))
        return {"ok": False, "error": first} | ({"more": more} if more else {})
    except Exception as fault:  # the door never raises: a bug becomes a sentence
        return {"ok": False, "error": _internal(fault)}


def handle_json(text):
    """`handle` from text to text: the same bytes on every machine.

    Text that is not JSON, or longer than `MOST_CHARACTERS`, is refused with kind "message".
    """
    try:
        said = _too_large() if len(text) > MOST_CHARACTERS else _answer(json.loads(text))
    except (TypeError, ValueError, RecursionError):
        said = _answer(None)
    answer = json.dumps(said, ensure_ascii=False, separators=(",", ":"))
    try:
        answer.encode()
    except UnicodeEncodeError:  # half a character, as an escape in JSON may have it
        return answer.encode(errors="replace").decode()
    return answer


def _too_large():
    message = f"This is larger than {MOST_CHARACTERS // 10**6} MB."
    remedy = "Choose a smaller file, or take photos out of some readings."
    return {"ok": False, "error": Refusal("message", message, remedy, field="text").as_data()}


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
        if any(map(_unwritable, inside)):
            raise Refusal("message", "A number here is too long.", "Send numbers as text.")
        level = [each for each in inside if isinstance(each, (dict, list))]
        if not level:
            return
    raise Refusal("message", "This message is nested too deep.", "Send a flatter one.")


def _unwritable(each):
    """Whether JSON can't be counted on to hold this number, where it is told again."""
    if isinstance(each, float):
        return not isfinite(each)
    return isinstance(each, int) and each.bit_length() > 64


def _strip(settings=None):
    return strip(settings or read_settings(None))


AT_ONCE = {"strip": Message(_strip, may={"settings": settings_sent})}
"""What is answered without any other file."""


def _message(do):
    """The `Message` of this name; None where there is none."""
    return AT_ONCE.get(do) or import_module("sawside.messages").MESSAGES.get(do)
