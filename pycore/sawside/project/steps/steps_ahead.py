"""The steps of a project's lines: those of one line, and all that are not done, in their order."""

from sawside.errors import Refusal
from sawside.moments import read_moment
from sawside.needs import text
from sawside.project.kinds.step_done import done_told, read_done
from sawside.project.schema.finding import of_kind
from sawside.reckoning.steps_told import Ticks, steps_told


def steps_of(entry, worked, now=None):
    """The steps of a line that was worked out, as the contract has them; [] where it has none.

    `now` is a `datetime`, or None where that is not known.
    """
    if worked is None or not worked.ok or worked.reckoner is None or not worked.found.steps:
        return []
    return steps_told(worked.found.steps, _told(entry), now)


def _told(entry):
    return {key: done_told(kept) for key, kept in entry.get("done", {}).items()}


def ticks_of(reckoner, document=None, id=None, now=None):
    """The `Ticks` of the line that is being corrected, where it is one of this question, by now."""
    for entry in document["entries"] if document else ():
        if entry["id"] == id and entry.get("reckoner") == reckoner.key:
            return Ticks(read_done(entry), _told(entry), now)
    return Ticks(now=now)


def check_lists(document, evaluation, now=None):
    """The lines that have steps, each with all of them, as the contract has them."""
    for entry in of_kind(document, "line"):
        worked = evaluation.worked.get(entry["id"])
        if steps := steps_of(entry, worked, now):
            title = worked.reckoner.title
            yield {"entry": entry["id"], "name": entry["name"], "title": title, "steps": steps}


def steps_ahead(lists):
    """Every step of some check lists that is still to do: those with a time first, in its order."""
    ahead = [_ahead(each, step) for each in lists for step in each["steps"] if is_ahead(step)]
    return sorted(ahead, key=lambda each: (each["due"] is None, (each["due"] or {}).get("at", "")))


def is_ahead(step):
    """Whether a step, as the contract has it, is still to do."""
    return step["state"] not in ("done", "passed")


def _ahead(told, step):
    due = step["due"]
    return {
        "entry": told["entry"],
        "name": told["name"],
        "step": step["key"],
        "said": step["said"],
        "line": step["said"] + (f", from {due['said']}" if due else ""),
        "due": due,
        "state": step["state"],
    }


def now_given(value, place):
    """The check of a moment that is sent as the present one, as a `datetime`.

    By a clock that is not set, in a year before or after ours, it is not known: None.
    """
    try:
        return read_moment(text(value, place), place)
    except Refusal as refused:
        if refused.kind == "range":
            return None
        raise
