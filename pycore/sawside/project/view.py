"""A project with everything worked out: its entries, and the pieces that its lines make."""

from fractions import Fraction

from sawside.errors import Refusal, Refusals
from sawside.project.document import settings_of
from sawside.reckoning.reading import reading_told
from sawside.reckoning.reckon import find, reckon


def view(document):
    """A checked document as the contract of `view`; a line that fails says so and stops nothing."""
    entries, pieces = [], []
    for entry in document["entries"]:
        told, made = _told(entry, settings_of(document, entry["unit"]))
        entries.append(told)
        pieces += made
    pieces.sort(key=lambda piece: (-Fraction(piece["length"]["mark"]), piece["name"]))
    return {"name": document["name"], "entries": entries, "pieces": pieces}


def _told(entry, settings):
    """(entry as data, its pieces)."""
    told = {
        "id": entry["id"],
        "kind": entry["kind"],
        "name": entry["name"],
        "title": "Reading",
        "ok": True,
        "headline": None,
        "summary": "",
        "error": None,
    }
    pieces = []
    try:
        if entry["kind"] == "reading":
            said = reading_told(entry["text"], settings)
            told |= {"headline": said["value"], "summary": said["echo"]}
        else:
            told["title"] = entry["reckoner"]
            reckoner = find(entry["reckoner"])
            told["title"] = reckoner.title
            said = reckon(reckoner, entry["values"], settings)
            told |= {"headline": said["answers"][0], "summary": said["summary"]}
            pieces = [_piece(entry, reckoner, part, said["parts"]) for part in said["parts"]]
    except Refusal as refusal:
        told |= {"ok": False, "error": refusal.as_data()}
    except Refusals as several:
        told |= {"ok": False, "error": several.refusals[0].as_data()}
    return told, pieces


def _piece(entry, reckoner, part, parts):
    cut = min(entry["cut"].get(part["key"], 0), part["count"])
    alone = len(parts) == 1
    return {
        "entry": entry["id"],
        "part": part["key"],
        "name": entry["name"] if alone else f"{entry['name']}: {part['name']}",
        "count": part["count"],
        "cut": cut,
        "left": part["count"] - cut,
        "length": part["length"],
        "width": part["width"],
        "thickness": part["thickness"],
        "ends": part["ends"],
        "drawing": part["drawing"],
        "from": reckoner.title,
    }
