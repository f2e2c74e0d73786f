"""The steps of a project as a calendar that other programs read (RFC 5545).

Times are floating (RFC 5545, 3.3.5, form 1): they mean the person's own clock wherever it is.
"""

from datetime import UTC, datetime

from sawside.errors import Refusal
from sawside.moments import FIRST, LAST
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.files.file_name import file_name
from sawside.project.kinds.checks import is_moment
from sawside.project.schema.finding import found, of_kind
from sawside.project.steps.steps_ahead import is_ahead, steps_of

MOST_OCTETS = 75
"""Of a line without its end (RFC 5545, 3.1)."""

_FLOATING = "%Y%m%dT%H%M%S"
_YEARS = int(FIRST[:4]), int(LAST[:4])
_PRIME = 2**61 - 1
_ESCAPES = {"\\": "\\\\", ";": "\\;", ",": "\\,", "\n": "\\n"}
"""RFC 5545, 3.3.11."""


def calendar(document, when, id=None, project=""):
    """The contract of `calendar`: the steps that are not done and have a time, of a line or of all.

    `when` is the present moment; without a zone it is taken as it is. `project` is what the page
    knows the document by; without it that is made of its name. Refusals: "unknown" for an id
    that is not there, "missing" where no step has a time.
    """
    stamp = _stamp(when)
    lines = of_kind(document, "line") if id is None else [found(document, id)[1]]
    evaluation = Evaluation(document)
    known_by = f"{_number(project or document['name']):x}"
    events = [
        line
        for entry in lines
        for step in steps_of(entry, evaluation.worked.get(entry["id"]))
        if is_ahead(step) and step["due"]
        for line in _event(known_by, entry, step, stamp)
    ]
    if not events:
        remedy = "Fill in when you start, or tick the first step."
        raise Refusal("missing", "No step has a time yet.", remedy, field="document")
    whole = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Sawside//Steps//EN"]
    whole += [*events, "END:VCALENDAR"]
    return {
        "name": file_name(document["name"], "steps", "ics"),
        "type": "text/calendar;charset=utf-8",
        "text": "".join(f"{_folded(line)}\r\n" for line in whole),
    }


def _stamp(when):
    """The moment at which the calendar is made, in UTC as it has to be (RFC 5545, 3.8.7.2)."""
    moment = datetime.fromisoformat(when) if is_moment(when) else None
    if moment is None or not _YEARS[0] <= moment.year <= _YEARS[1]:
        message = "That’s not a date and time of today."
        raise Refusal("message", message, "Send it as in 2026-11-25T17:20Z.", field="when")
    moment = moment if moment.tzinfo is None else moment.astimezone(UTC)
    return f"{moment.strftime(_FLOATING)}Z"


def _number(text):
    """A text as a number, always the same one: it may hold what no UID may."""
    return int.from_bytes(text.encode(), "big") % _PRIME


def _event(known_by, entry, step, stamp):
    """The lines of one step. Its UID stays the same, so that it is moved when it is sent again."""
    about = [step["about"], step["caution"]["full"] if step["caution"] else ""]
    described = _text("\n".join(filter(None, about)))
    said = _text(f"{step['said']} ({entry['name']})")
    return [
        "BEGIN:VEVENT",
        f"UID:{_text(step['key'])}-{entry['id']}-{known_by}@sawside",
        f"DTSTAMP:{stamp}",
        f"DTSTART:{datetime.fromisoformat(step['due']['at']).strftime(_FLOATING)}",
        "DURATION:PT15M",
        f"SUMMARY:{said}",
        *([f"DESCRIPTION:{described}"] if described else []),
        "BEGIN:VALARM",
        "ACTION:DISPLAY",
        f"DESCRIPTION:{said}",
        "TRIGGER:PT0S",
        "END:VALARM",
        "END:VEVENT",
    ]


def _text(text):
    return "".join(_ESCAPES.get(each, each) for each in text)


def _folded(line):
    """A line in pieces of at most `MOST_OCTETS`, none of them ending inside a character."""
    pieces, piece, taken = [], "", 0
    for each in line:
        octets = len(each.encode())
        if taken + octets > MOST_OCTETS:
            pieces.append(piece)
            piece, taken = "", 1  # the space that the next line begins with
        piece += each
        taken += octets
    return "\r\n ".join([*pieces, piece])
