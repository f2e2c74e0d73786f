"""One entry of a project as data: what it says, what it uses, and what it waits for."""

from sawside.lengths.as_typed import given_text
from sawside.lengths.display import mark_text
from sawside.lengths.marks import GRIDS, to_mark
from sawside.project.uncertainty.resolution import bounds, fineness_of
from sawside.reckoners import RECKONERS

_READING = ("where", "tape", "side", "when", "fineness", "off", "photo")


def entry_told(entry, evaluation):
    """An entry as the contract of `view` has it."""
    identity = entry["id"]
    told = {
        "id": identity,
        "kind": entry["kind"],
        "name": entry["name"],
        "title": _title(entry, evaluation),
        "ok": True,
        "headline": None,
        "summary": "",
        "error": None,
        "text": entry.get("text", ""),
        "uses": evaluation.graph.links.uses.get(identity, []),
        "used_by": evaluation.graph.links.used_by.get(identity, []),
        "waits": [],
        "insert": f"[{entry['name']}]",
    }
    if entry["kind"] == "note":
        return told | {"summary": entry["text"].strip().split("\n")[0], "insert": ""}
    worked = evaluation.worked[identity]
    if worked.ok:
        told |= {"headline": worked.headline, "summary": worked.summary}
    else:
        waits = [{"id": each, "name": name} for each, name in worked.waits]
        told |= {"ok": False, "error": worked.refusals[0].as_data(), "waits": waits}
    return told | _reading_told(entry, worked) if entry["kind"] == "reading" else told


def _title(entry, evaluation):
    if entry["kind"] == "note":
        return "Note"
    if entry["kind"] == "reading":
        return "Sum" if evaluation.graph.known[entry["id"]].calls else "Reading"
    reckoner = RECKONERS.get(entry["reckoner"])
    return reckoner.title if reckoner else entry["reckoner"]


def _reading_told(entry, worked):
    told = {key: entry.get(key, "") for key in _READING}
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
