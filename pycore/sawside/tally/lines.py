"""The lines of a tally worked out: each a sum that may use the lines above it.

`[1]` in a line stands for line 1, and so does its name. A line sees only the lines above it, so
there are no loops, and a correction is followed by every line below that used it. What it took from
a project (`tally_names`) follows that, and has no value while another is open.
"""

from functools import lru_cache
from typing import NamedTuple

from sawside.errors import Refusal, quoted
from sawside.lengths.reading.names import Named
from sawside.lengths.reading.reader import read
from sawside.project.evaluation.names_for import NamesOf
from sawside.reckoning.reading import reading_told
from sawside.settings.settings import Settings, read_settings
from sawside.tally.document import EMPTY
from sawside.tally.names import called, of_project, up_to_date, uses_in


class Around(NamedTuple):
    """What lines are read by: the settings, and the names of the open project."""

    settings: Settings
    project: NamesOf


def opened(tally=None, settings=None, document=None, project=""):
    """(a checked tally, up to date; what its lines are read by) of what a message holds.

    `document` is the project whose names lines may use, `project` what the page knows it by.
    """
    around = Around(settings or read_settings(None), NamesOf(document, project))
    return up_to_date(tally or EMPTY, around.project), around


def worked_out(tally, around):
    """(every line as data, {what it is called: what that stands for}); a line in error says so."""
    above, told = {}, []
    for line in tally["lines"]:
        said, named = _told(line, above, around)
        told.append({"id": line["id"], "name": line["name"], "text": line["text"]} | said)
        above |= dict.fromkeys(called([line]), named)
    return told, above


def stand_for(line, above, project):
    """{name as written: what it stands for} in a line; a name that nobody gave is left out."""
    own, used = of_project(line), {}
    for use in uses_in(line, above):
        key = use.written.casefold()
        if key in own:
            used[use.written] = project.named(own[key], use.written)
        elif key in above:
            used[use.written] = above[key]
    return used


def refusal_of(error):
    """The refusal of a line that is in error, as that is told, of the field "text"."""
    return Refusal(
        error["kind"],
        error["message"],
        error["remedy"],
        field="text",
        at=error["at"],
        unfinished=error.get("unfinished", False),
    )


def _told(line, above, around):
    mark = line.get("project")
    if mark and not around.project.is_of(mark):
        return {"ok": False, "value": None, "error": _not_open(mark, around), "note": ""}, None
    used = stand_for(line, above, around.project)
    said, named = _line_told(line["text"], line["unit"], around.settings, tuple(used.items()))
    return said | {"note": _note(line, above, around.project)}, named


def _not_open(mark, around):
    message = f"This line uses a name from {mark['name']}, which isn’t open."
    remedy = "Open that project, or correct the line."
    if mark["name"] == around.project.name:
        message = f"This line uses a name from another {mark['name']}, not the one that’s open."
        remedy = "Undo the restore or open that project, or correct the line."
    return Refusal("missing", message, remedy).as_data()


def _note(line, above, project):
    """What must be known of names that are a line's above as well, or another's in the project."""
    own = of_project(line)
    both = [quoted(key) for key in own if key in above]
    if not both:
        return ""
    verb = "is" if len(both) == 1 else "are"
    return f"{' and '.join(both)} {verb} from {project.name} here, not from a line above."


@lru_cache(maxsize=4096)
def _line_told(text, unit, settings, used):
    """One line: a pure function of its text and the values that it uses, so it is remembered."""
    try:
        said = reading_told(text, settings, unit=unit, names=dict(used))
    except Refusal as refusal:
        return {"ok": False, "value": None, "error": refusal.as_data()}, None
    reading = read(text, unit, dict(used))
    return {"ok": True, "value": said["value"], "error": None}, Named(reading.value, reading.power)
