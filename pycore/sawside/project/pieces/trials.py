"""A set-up that was tried, told by the question that reckons over or under."""

from sawside.errors import Refusal, Refusals
from sawside.lengths.display import mixed_text
from sawside.project.pieces.size import inches
from sawside.project.schema.document import settings_of
from sawside.reckoning.reckon import find, reckon


def trial_told(document, identity, part):
    """The last trial of a part as `reckon` answers `over_or_under`."""
    entry = next(each for each in document["entries"] if each["id"] == identity)
    return _reckoned(document, entry["trials"][part][-1])


def in_brief(document, entry, part):
    """The last trial of a part in a few words; None where there is none, or it can't be read."""
    kept = entry.get("trials", {}).get(part)
    if not kept:
        return None
    try:
        answers = {each["key"]: each for each in _reckoned(document, kept[-1])["answers"]}
    except (Refusal, Refusals):
        return None
    told = {key: answers[key]["text"] for key in ("difference", "direction", "remedy")}
    return told | {"when": kept[-1].get("when", ""), "tried": len(kept)}


def _reckoned(document, trial):
    """A trial as `reckon` answers it."""
    values = {
        "aimed": f"{mixed_text(inches(trial['aimed']))} in",
        "measured": trial["measured"],
        "cut": trial["cut"],
    }
    return reckon(find("over_or_under"), values, settings_of(document, trial["unit"]))
