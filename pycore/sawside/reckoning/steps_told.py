"""Steps as data for the page: when each is due, what was done of it, and which comes next."""

from collections.abc import Mapping
from datetime import datetime
from typing import NamedTuple

from sawside.moments import at, said
from sawside.reckoners.declaration import NONE_DONE, Done
from sawside.reckoners.shared.step_order import overtaken


class Ticks(NamedTuple):
    """By the key of a step its `Done`, and what is told of it as done; `now` if that is known."""

    done: Mapping[str, Done] = NONE_DONE
    told: Mapping[str, dict] = NONE_DONE
    now: datetime | None = None


NO_TICKS = Ticks()


def steps_told(steps, done=NONE_DONE, now=None):
    """The contract of STEPTODO for each of some `Step`.

    `done` has by the key of a step what is told of it as done; `now` is a `datetime`, None where
    that is not known, and then none is "due". A caution is in full at the first step to do.
    """
    told, cautioned, upcoming = [], set(), "next"
    passed = overtaken(steps, done)
    states = dict.fromkeys(passed, "passed") | dict.fromkeys(done, "done")
    for step in steps:
        state = states.setdefault(step.key, _state(step, now, upcoming, states))
        upcoming = "waits" if state == "next" else upcoming
        told.append(
            {
                "key": step.key,
                "said": step.said,
                "about": step.about,
                "caution": _caution(step.caution, state, cautioned),
                "due": due_told(step.due),
                "earliest": due_told(step.earliest),
                "state": state,
                "done": done.get(step.key),
            }
        )
    return told


def _state(step, now, upcoming, before):
    """Of a step that isn't done; `before` are the states of those before it, by their keys.

    It goes by when those were done: until then its time isn't come, unless it is of one go with one
    that is due. Who put a coat on and did not tick it still has rags about.
    """
    is_time = now is not None and step.due is not None and step.due <= now
    enough = ("done", "passed", "due") if step.one_go else ("done", "passed")
    is_time = is_time and all(before.get(key) in enough for key in step.after)
    return "due" if is_time else upcoming


def due_told(moment):
    """A moment as the contract has it, or None."""
    return None if moment is None else {"at": at(moment), "said": said(moment)}


def _caution(caution, state, cautioned):
    """A caution, in full at the first step to do that has it."""
    if caution is None:
        return None
    if state == "done" or caution in cautioned:
        return {"short": caution.short, "full": caution.short}
    cautioned.add(caution)
    return {"short": caution.short, "full": caution.full}
