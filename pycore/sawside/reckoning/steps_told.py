"""Steps as data for the page: when each is due, what was done of it, and which comes next."""

from collections.abc import Mapping
from datetime import datetime
from typing import NamedTuple

from sawside.moments import at, said
from sawside.reckoners.declaration import NONE_DONE, Done
from sawside.reckoners.shared.step_order import come_due, overtaken


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
    states = dict.fromkeys(overtaken(steps, done), "passed") | dict.fromkeys(done, "done")
    if now is not None:
        states |= dict.fromkeys(come_due(steps, states, now), "due")
    for step in steps:
        state = states.get(step.key, upcoming)
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
