"""Two projects made one: what the backup has and the project has not is added.

No number changes by it, neither of the project nor of the backup, but for those that the settings
make otherwise, which are told.
"""

from sawside.project.acts.change import followed
from sawside.project.acts.table import Made
from sawside.project.files.backup import restore
from sawside.project.files.merge_places import Places
from sawside.project.files.merge_settings import brought
from sawside.project.files.merge_told import otherwise
from sawside.project.kinds.entries import read_entry
from sawside.project.schema.finding import refuse_too_many

RULE = (
    "Anything in the backup that isn’t here gets added, including tapes and materials. Items "
    "with the same name and contents stay as they are. Items with the same name but different "
    "contents are added under a numbered name, along with everything that depends on them, so "
    "no number changes. Anything added that way before that hasn’t changed isn’t added again. "
    "This project’s other settings and its labels win; any answer they change is listed below, "
    "before and after."
)


def merge(document, text, when=""):
    """The contract of `merge`: a change that adds what is in a backup; refusals as `restore`."""
    found = restore(text)
    other = found["document"]
    settings, owned = brought(document["settings"], other["settings"])
    places = Places(document, other, owned)
    new, ids = _with(document | {"settings": settings}, other, places)
    undo = [
        {"act": "delete", "id": str(number)}
        for number in range(new["next"] - 1, document["next"] - 1, -1)
    ]
    if settings != document["settings"]:
        undo.append({"act": "set", "settings": document["settings"]})
    refuse_too_many({"entries": undo[1:]})  # one act undoes as many as a project holds
    said = f"Added {len(places.added)} of {len(other['entries'])} entries from {other['name']}."
    said += otherwise(document, other, new, ids)
    said += _plan_left(other)
    if not undo:
        return {
            "document": document,
            "undo": None,
            "said": said,
            "id": None,
            "follows": [],
            "judged": [],
            "rule": RULE,
            "photos": {},
        }
    made = Made(new, {"act": "several", "acts": undo}, said, None, True, ())
    answer = followed(document, made, {"when": when})
    here = {entry["id"] for entry in document["entries"]}
    answer["judged"] = [
        each for each in answer["judged"] if each["id"] in here or each["verdict"] != "good"
    ]
    return answer | {"rule": RULE, "photos": found["photos"]}


def _plan_left(other):
    """What is said of a plan in the backup: it is for pieces that may have other names here."""
    return " Its cutting plan isn’t brought along: plan again." if "plan" in other else ""


def _with(document, other, places):
    """(the document with what is added to it, {id in the other: id here})."""
    ids, entries, upcoming = dict(places.here), [*document["entries"]], document["next"]
    for entry in other["entries"]:
        kept = places.added.get(entry["id"])
        if kept is None:
            continue
        refuse_too_many({"entries": entries})
        ids[entry["id"]] = str(upcoming)
        entries.append(read_entry(kept | {"id": str(upcoming)}))
        upcoming += 1
    return document | {"next": upcoming, "entries": entries}, ids
