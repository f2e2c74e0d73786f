"""What is said of the pieces that are cut: each verdict in a sentence, and what a change gives."""

from sawside.lengths.fine import fine_text
from sawside.lengths.show import Show
from sawside.lengths.words import listed
from sawside.project.pieces.judge import verdicts
from sawside.reckoning.answers import length_told
from sawside.settings.settings import read_settings

SHORT = {"length": "too short", "width": "too narrow", "thickness": "too thin"}
_SAID = {
    "good": "still good",
    "gone": "more than you need now",
    "unknown": "can’t be checked: one of the sizes is missing",
}
_ENDS = "different end cuts than needed now"


def told_in_groups(each, name, show):
    """Verdicts as data, those that are alike together; `which` are their places in the list."""
    groups = {}
    for at, verdict in enumerate(each):
        groups.setdefault(verdict, []).append(at)
    return [_group(verdict, which, name, show) for verdict, which in groups.items()]


def _group(verdict, which, name, show):
    worst = verdict.changes[0] if verdict.changes else verdict.length
    pieces = "1 piece" if len(which) == 1 else f"{len(which)} pieces"
    return {
        "verdict": verdict.name,
        "count": len(which),
        "which": which,
        "measure": worst and worst.measure,
        "measures": list(verdict.measures),
        "at": worst and length_told("at", "Cut at", worst.was, show),
        "now": worst and length_told("now", "Now", worst.now, show),
        "difference": worst and length_told("difference", "Difference", abs(worst.missing), show),
        "by": worst and _size(worst, show),
        "said": f"{name}: {pieces} {_said(verdict, len(which), show)}.",
    }


def _said(verdict, count, show):
    if verdict.name == "too short":
        return listed([_small(each, show, verdict.ends) for each in verdict.changes])
    if verdict.name == "unknown" and verdict.ends:
        return f"can’t be checked: cut with {_ENDS}, and the short-point length wasn’t saved"
    if verdict.name in _SAID:
        return _SAID[verdict.name]
    if not verdict.changes:
        return f"with {_ENDS}"
    alone = verdict.changes[0].measure == "length" and len(verdict.changes) == 1
    sizes = [
        _size(each, show) + ("" if alone else f" in {each.measure}") for each in verdict.changes
    ]
    has = "has" if count == 1 else "have"
    down = f"can be cut down by {listed(sizes)}"
    return f"{down}, and {has} {_ENDS}" if verdict.ends else down


def _small(change, show, ends):
    why = " for the end cuts needed now" if ends and change.measure == "length" else ""
    return f"{SHORT[change.measure]} by {_size(change, show)}{why}"


def _size(change, show):
    return fine_text(abs(change.missing), show)


def judged_anew(document, before, new, after):
    """The verdicts that a change gives on pieces that are cut, where one of a part is another."""
    old = {entry["id"]: entry for entry in document["entries"]}
    told = []
    for entry in new["entries"]:
        for part in entry.get("cut", ()):
            was = entry["id"] in old and verdicts(document, before, old[entry["id"]], part)
            now = verdicts(new, after, entry, part)
            if was == now:
                continue
            worked = after.worked[entry["id"]]
            name = part_name(worked, entry["name"], part)
            groups = told_in_groups(now, name, Show(read_settings(new["settings"])))
            told += [{"id": entry["id"], "part": part, "name": name} | group for group in groups]
    return told


def part_name(worked, name, key):
    """How a piece is called: as its line, with the part's own name where there are several."""
    parts = worked.found.parts if worked.ok else ()
    own = next((part.name for part in parts if part.key == key), None)
    return name if own is None or len(parts) == 1 else f"{name}: {own}"
