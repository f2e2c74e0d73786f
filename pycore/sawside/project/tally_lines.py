"""The lines of a tally worked out: each a sum that may use the lines above it.

`[1]` in a line stands for line 1, and so does its name. A line sees only the lines above it, so
there are no loops, and a correction is followed by every line below that used it. What no line is
called may be a name of the open project.
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
        used = {name: names[name] for name in names_in(line["text"], names)}
        called = {name.casefold() for name in used}
        for name, named in around.project.used_in(line["text"]).items():
            if name.casefold() not in called:
                used[name] = named
        said, named = _line_told(line["text"], line["unit"], around.settings, tuple(used.items()))
        told.append({"id": line["id"], "name": line["name"], "text": line["text"]} | said)
        for name in filter(None, (line["id"], line["name"])):
            names[name] = named
    return told, names


@lru_cache(maxsize=4096)
def _line_told(text, unit, settings, used):
    """One line: a pure function of its text and the values that it uses, so it is remembered."""
    try:
        said = reading_told(text, settings, unit=unit, names=dict(used))
    except Refusal as refusal:
        return {"ok": False, "value": None, "error": refusal.as_data()}, None
    reading = read(text, unit, dict(used))
    return {"ok": True, "value": said["value"], "error": None}, Named(reading.value, reading.power)
