"""The acts on the steps of a line: ticked when one is done, and unticked.

Each gives the new document, the act that undoes it, what was done, and the entry's id.
"""

from sawside.errors import Refusal
from sawside.moments import at as kept_at
from sawside.moments import is_moment, read_moment, said
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.kinds.entries import read_entry
from sawside.project.kinds.step_done import humidity_typed, temperature_typed
from sawside.project.schema.document import unit_of
from sawside.project.schema.finding import found, with_entry
from sawside.reckoners.shared.step_order import before_each


def tick(document, id, step, when="", done_at=None, temperature="", humidity="", **more):
    """A step done at `done_at`, or else at the act's own moment; what was kept of it is replaced.

    Refusals: "unknown" for a step that the line does not have, "conflict" for a moment before that
    of a step which comes first, or after that of one which follows or that of the act.
    """
    at, entry = found(document, id)
    steps = _steps(document, entry)
    one = _named(steps, step)
    moment = read_moment(when if done_at is None else done_at, "done_at")
    _refuse_to_come(moment, when)
    _refuse_out_of_order(steps, one, moment, entry.get("done", {}))
    record = {
        "when": kept_at(moment),
        "temperature": temperature_typed(temperature, unit_of(document)),
        "humidity": humidity_typed(humidity),
        **{key: text.strip() for key, text in more.items()},
    }
    done = entry.get("done", {}) | {step: record}
    return _with(document, at, entry, done, f"{one.said}: done {said(moment)}.")


def untick(document, id, step):
    """A step that is not done after all."""
    at, entry = found(document, id)
    done = dict(entry.get("done", {}))
    if done.pop(step, None) is None:
        message = "That step isn’t ticked."
        raise Refusal("conflict", message, "There’s nothing to do.", field="step")
    return _with(document, at, entry, done, f"Unticked a step of {entry['name']}.")


def _with(document, at, entry, done, told):
    undo = {"act": "put", "entries": [entry]}
    new = {key: value for key, value in entry.items() if key != "done"}
    if done:
        new["done"] = done
    return with_entry(document, at, read_entry(new)), undo, told, entry["id"]


def _steps(document, entry):
    """The steps of a line as they are now; its own refusal where it has no answer."""
    worked = Evaluation(document).worked.get(entry["id"])
    if worked is not None and not worked.ok:
        raise worked.refusals[0]
    return () if worked is None or worked.reckoner is None else worked.found.steps


def _named(steps, key):
    for step in steps:
        if step.key == key:
            return step
    message = "That step isn’t in this list."
    raise Refusal("unknown", message, "Reopen the project.", field="step")


def _refuse_to_come(moment, when):
    """`when` is that of the act; one with a zone, or without a time, can't be compared."""
    if is_moment(when) and read_moment(when) < moment:
        message = f"{said(moment)} is still to come."
        raise Refusal("conflict", message, "Tick the step when it’s done.", field="done_at")


def _refuse_out_of_order(steps, one, moment, done):
    before = before_each(steps)
    for step in steps:
        if step.key not in done:
            continue
        then = read_moment(done[step.key]["when"])
        if step.key in before[one.key] and moment < then:
            raise _conflict(one, "before", step, then)
        if one.key in before[step.key] and then < moment:
            raise _conflict(one, "after", step, then)


def _conflict(one, way, other, then):
    return Refusal(
        "conflict",
        f"“{one.said}” can’t be done {way} “{other.said}”, {said(then)}.",
        "Check the time, or untick the other step first.",
        field="done_at",
    )
