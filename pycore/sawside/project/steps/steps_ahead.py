"""The steps of a project's lines: those of one line, and all that are not done, in their order."""

from sawside.moments import read_moment
from sawside.needs import text
from sawside.project.kinds.step_done import done_told, read_done
from sawside.project.schema.finding import of_kind
from sawside.reckoning.steps_told import NO_TICKS, Ticks, steps_told


def steps_of(entry, worked, now=None):
    """The steps of a line that was worked out, as the contract has them; [] where it has none.

    `now` is a `datetime`, or None where that is not known.
    """
    if worked is None or not worked.ok or worked.reckoner is None or not worked.found.steps:
        return []
    return steps_told(worked.found.steps, _told(entry), now)


def _told(entry):
    return {key: done_told(kept) for key, kept in entry.get("done", {}).items()}


def ticks_of(reckoner, document=None, id=None):
    """The `Ticks` of the line that is being corrected, where it is one of this question."""
    for entry in document["entries"] if document else ():
        if entry["id"] == id and entry.get("reckoner") == reckoner.key:
            return Ticks(read_done(entry), _told(entry))
    return NO_TICKS


def steps_ahead(document, evaluation, now=None):
    """Every step that is not done: those with a time first, in its order, then the others."""
    ahead = [
        _ahead(entry, step)
        for entry in of_kind(document, "line")
        for step in steps_of(entry, evaluation.worked.get(entry["id"]), now)
        if step["state"] != "done"
    ]
    return sorted(ahead, key=lambda each: (each["due"] is None, (each["due"] or {}).get("at", "")))


def _ahead(entry, step):
    due = step["due"]
    return {
        "entry": entry["id"],
        "name": entry["name"],
        "step": step["key"],
        "said": step["said"],
        "line": step["said"] + (f", from {due['said']}" if due else ""),
        "due": due,
        "state": step["state"],
    }


def now_given(value, place):
    """The check of a moment that is sent as the present one, as a `datetime`."""
    return read_moment(text(value, place), place)
