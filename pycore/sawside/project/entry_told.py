"""One entry of a project as data: what it says, what it uses, and what it waits for."""

from sawside.lengths.as_typed import given_text
from sawside.lengths.display import mark_text
from sawside.lengths.marks import GRIDS, to_mark
from sawside.project.evaluation.to_fill import WAITS, to_fill
from sawside.project.kinds.entries import kind_of
from sawside.project.kinds.entry_parts import READING_DETAILS
from sawside.project.uncertainty.resolution import bounds, fineness_of


def entry_told(entry, evaluation):
    """An entry as the contract of `view` has it."""
    identity = entry["id"]
    told = {
        "id": identity,
        "kind": entry["kind"],
        "name": entry["name"],
        "title": kind_of(entry).title(entry, _calls(evaluation, identity)),
        "ok": True,
        "headline": None,
        "verdict": "",
        "summary": "",
        "error": None,
        "text": entry.get("text", ""),
        "uses": evaluation.graph.links.uses.get(identity, []),
        "used_by": evaluation.graph.links.used_by.get(identity, []),
        "waits": [],
        "to_fill": None,
        "insert": f"[{entry['name']}]",
    }
    worked = evaluation.worked.get(identity)
    if worked is None:
        return told | {"summary": entry["text"].strip().split("\n")[0], "insert": ""}
    if worked.ok:
        told |= {"headline": worked.headline, "summary": worked.summary}
        told["verdict"] = "" if worked.reckoner is None else worked.found.verdict
    else:
        waits = [{"id": each, "name": name} for each, name in worked.waits]
        told |= {"ok": False, "error": worked.refusals[0].as_data(), "waits": waits}
    told |= _to_fill_told(told["error"], to_fill(evaluation, identity))
    return told | _reading_told(entry, worked) if entry["kind"] == "reading" else told


def _to_fill_told(error, left):
    """What of an entry is to be filled in, with the error that says so."""
    if left is None:
        return {}
    fields = [{"key": key, "label": label} for key, label in left.fields]
    told = {"state": left.state, "fields": fields, "waits_for": list(left.waits_for)}
    if left.state == WAITS:
        error = error | {"remedy": "Fill that in first."}
    return {"to_fill": told, "error": error}


def _calls(evaluation, identity):
    """The names that stand in an entry."""
    known = evaluation.graph.known.get(identity)
    return known.calls if known else ()


def _reading_told(entry, worked):
    told = {key: entry.get(key, "") for key in READING_DETAILS}
    told["earlier"] = [
        {"text": each["text"], "when": each.get("when", "")} for each in entry.get("earlier", ())
    ]
    told["fineness_told"] = told["off_told"] = ""
    if worked.ok and worked.power == 1 and not worked.names:
        step = fineness_of(worked)
        grid = next(grid for grid in GRIDS.values() if grid.step == step)
        told["fineness_told"] = mark_text(to_mark(step, grid), grid.unit)
    if worked.ok and any(ends := bounds(worked)):
        told["off_told"] = given_text(max(map(abs, ends)), worked.settings)
    return told
