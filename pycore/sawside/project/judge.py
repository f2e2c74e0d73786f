"""Judging the pieces that are cut by what is asked for now.

A piece may be off by the tolerance and still be good, be it off the exact size or off the mark
that it is cut to. Beyond it a piece that is too large can be cut down; nothing makes one larger.
"""

from contextlib import suppress
from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.fine import fine_text
from sawside.lengths.reader import read_length
from sawside.lengths.settings import read_settings
from sawside.lengths.show import Show
from sawside.project.size import MEASURES, inches, size_of
from sawside.reckoning.answers import length_told
from sawside.reckoning.links import rational

_SHORT = {"length": "too short", "width": "too narrow", "thickness": "too thin"}


def tolerance_of(document):
    """How far a piece may be off either way, in exact inches; usually half a mark."""
    kept = document.get("tolerance")
    if kept is not None:
        with suppress(Refusal):  # a document from elsewhere may hold what can't be read
            return abs(read_length(kept["text"], kept["unit"]).value)
    return read_settings(document["settings"]).grid.step / 2


def verdicts(document, evaluation, entry, part_key):
    """The verdict on each piece cut of a part, in its order: (verdict, measure, difference, at).

    The verdict is "good", "cut down", "too short", "recut ends", "unknown" (nobody kept how it was
    cut, or the line has no answer) or "gone" (it is one more than is asked for). The difference
    is what is asked for less what was cut, in exact inches.
    """
    pieces = entry.get("cut", {}).get(part_key, [])
    worked = evaluation.worked.get(entry["id"])
    if worked is None or not worked.ok:
        return [("unknown", None, None, None)] * len(pieces)
    part = next((each for each in worked.found.parts if each.key == part_key), None)
    if part is None:
        return [("gone", None, None, None)] * len(pieces)
    now, tolerance = size_of(part, worked.show), tolerance_of(document)
    exact = {measure: rational(getattr(part, measure)) for measure in MEASURES if measure in now}
    return [
        _verdict(piece, now, exact, tolerance)
        if number < part.count
        else ("gone", None, None, None)
        for number, piece in enumerate(pieces)
    ]


def _verdict(piece, now, exact, tolerance):
    if "length" not in piece:
        return "unknown", None, None, None
    off, wrong = {}, {}
    for measure in MEASURES:
        if measure in now and measure in piece:
            was = inches(piece[measure])
            off[measure] = inches(now[measure]) - was, was
            if min(abs(off[measure][0]), abs(exact[measure] - was)) > tolerance:
                wrong[measure] = off[measure][0]
    largest = max(wrong, key=wrong.get, default=None)
    if largest and wrong[largest] > 0:
        return "too short", largest, *off[largest]
    if piece.get("ends") != now["ends"]:
        return "recut ends", "length", *off["length"]
    smallest = min(wrong, key=wrong.get, default=None)
    if smallest:
        return "cut down", smallest, *off[smallest]
    return "good", "length", *off["length"]


def told_in_groups(each, name, show):
    """Verdicts as data, those that are alike together; `which` are their places in the list."""
    groups = {}
    for at, verdict in enumerate(each):
        groups.setdefault(verdict, []).append(at)
    return [_group(verdict, which, name, show) for verdict, which in groups.items()]


def _group(found, which, name, show):
    verdict, measure, off, was = found
    value = None if was is None else length_told("at", "Cut at", was, show)
    by = None if off is None else length_told("difference", "Difference", abs(off), show)
    now = None if off is None else length_told("now", "Now", was + off, show)
    return {
        "verdict": verdict,
        "count": len(which),
        "which": which,
        "measure": measure,
        "at": value,
        "now": now,
        "difference": by,
        "said": _said(verdict, measure, off, len(which), name, show),
    }


def _said(verdict, measure, off, count, name, show):
    pieces = "1 piece" if count == 1 else f"{count} pieces"
    size = "" if off is None else fine_text(abs(Fraction(off)), show)
    told = {
        "good": "still good",
        "cut down": f"can be cut down by {size}"
        + ("" if measure == "length" else f" in {measure}"),
        "too short": f"{_SHORT.get(measure)} by {size}",
        "recut ends": "with other ends than are asked for now",
        "gone": "more than is asked for now",
        "unknown": "can’t be judged: the size then or now is not known",
    }
    return f"{name}: {pieces} {told[verdict]}."


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
