"""The lines of a tally worked out: each a sum that may use the lines above it.

`[1]` in a line stands for line 1, and so does its name. A line sees only the lines above it, so
there are no loops, and a correction is followed by every line below that used it. What no line is
called may be a name of the project that was open when the line was entered: it is marked with that,
and has no value while another is open.
"""

from functools import lru_cache
from typing import NamedTuple

from sawside.errors import Refusal
from sawside.lengths.names import Named, names_in
from sawside.lengths.reader import read
from sawside.lengths.settings import Settings
from sawside.project.names_for import NamesOf
from sawside.reckoning.reading import reading_told


class Around(NamedTuple):
    """What lines are read by: the settings, and the names of the open project."""

    settings: Settings
    project: NamesOf


def worked_out(tally, around):
    """(every line as data, what each name stands for); a line in error says so."""
    names, told = {}, []
    for line in tally["lines"]:
        said, named = _told(line, names, around)
        told.append({"id": line["id"], "name": line["name"], "text": line["text"]} | said)
        names |= dict.fromkeys(called([line]), named)
    return told, names


def called(lines):
    """What some lines are called: their numbers and their names."""
    return [each for line in lines for each in (line["id"], line["name"]) if each]


def marked(line, names, around):
    """A line with the mark of the project whose names it uses beside those above it, or without."""
    bare = {key: value for key, value in line.items() if key != "project"}
    used = _of_project(line["text"], names, around)
    return bare | {"project": around.project.mark} if used else bare


def _told(line, names, around):
    mark = line.get("project")
    if mark and not around.project.is_of(mark):
        error = Refusal(
            "missing",
            f"This line uses a name of {mark['name']}, which is not open.",
            "Open that project, or correct the line.",
        )
        return {"ok": False, "value": None, "error": error.as_data()}, None
    used = {name: names[name] for name in names_in(line["text"], names)}
    if mark:
        used |= _of_project(line["text"], names, around)
    return _line_told(line["text"], line["unit"], around.settings, tuple(used.items()))


def _of_project(text, names, around):
    """What a text uses of the open project: a line of the tally of the same name is nearer."""
    nearer = {name.casefold() for name in names_in(text, names)}
    used = around.project.used_in(text)
    return {name: named for name, named in used.items() if name.casefold() not in nearer}


@lru_cache(maxsize=4096)
def _line_told(text, unit, settings, used):
    """One line: a pure function of its text and the values that it uses, so it is remembered."""
    try:
        said = reading_told(text, settings, unit=unit, names=dict(used))
    except Refusal as refusal:
        return {"ok": False, "value": None, "error": refusal.as_data()}, None
    reading = read(text, unit, dict(used))
    return {"ok": True, "value": said["value"], "error": None}, Named(reading.value, reading.power)
