"""Reading a text, or the texts of a question not yet kept, with the names of a project."""

from typing import NamedTuple

from sawside.errors import Refusal, quoted
from sawside.lengths.reading.names import Named
from sawside.project.evaluation.names_for import NamesOf, names_for
from sawside.project.kinds.reading_worked import ReadingWorked
from sawside.project.schema.document import unit_of
from sawside.reckoning.reading import names_told, place_told, reading_told
from sawside.reckoning.values import linkable


def read_in_project(text, settings, *, document=None, id=None, names=None):
    """The contract of `read` (without "ok"), with the names that a checked document and the page
    give; `id` is the entry that is being corrected.

    Where both have a name, the page's is meant, and `note` says so. `names` tells what those of the
    document stand for that the text uses.

    Where the text is typed over a reading that was taken with a tape, `value` is what will be kept
    of it, and `corrected` tells it beside what was read. Refusals: as the reader's and the tape's.
    """
    lines = names or {}
    own = names_for(document, [text], id, lines)[0] if document else {}
    names = own | {
        use.written: lines[use.written.casefold()]
        for use in NamesOf(document).uses(text, lines)
        if use.written.casefold() in lines
    }
    said = reading_told(text, settings, names=names or None)
    if told := names_told(_without(own, lines), settings):
        said["names"] = told
    both = [
        each
        for each, named in own.items()
        if each.casefold() in lines and not isinstance(named, Refusal)
    ]
    if both:
        said["note"] = _nearer(both, document)
    for entry in document["entries"] if document else ():
        if entry["id"] == id and "tape" in entry:
            worked = ReadingWorked(entry | {"text": text}, settings, names)
            return said | _corrected(said["value"], worked)
    return said


def _without(names, lines):
    return {written: named for written, named in names.items() if written.casefold() not in lines}


def _nearer(names, document):
    """That a line of the tally is nearer than what the project calls the same."""
    called = " and ".join(quoted(each) for each in names)
    what, one = ("means the line", "the one") if len(names) == 1 else ("mean the lines", "those")
    return f"{called} {what} in the history here, not {one} in {document['name']}."


def _corrected(read_as, worked):
    value, tape = worked.headline, worked.entry["tape"]
    corrected = f"Reads {read_as['brief']} with {tape}; corrected, {value['brief']}."
    place, finer = place_told(worked.named("").value, worked.settings)
    told = {"value": value, "corrected": corrected, "kept": value["brief"]}
    return told | {"tape": place, "finer": finer}


class _Used(NamedTuple):
    """What a name stands for in a field, and where in its list it is written."""

    named: Named | Refusal
    rows: tuple[tuple[int, str | None], ...]


def names_of_question(reckoner, values, *, document=None, id=None):
    """{key of a field: {name in it as written: the `_Used` of it in a checked document}}.

    None where there is no document; `id` as above.
    """
    if document is None:
        return None
    texts = list(linkable(reckoner, values, unit_of(document)))
    each = names_for(document, [text for _, text, _ in texts], id)
    names = {}
    for (field, _, place), used in zip(texts, each, strict=True):
        of_field = names.setdefault(field.key, {})
        for written, named in used.items():
            rows = of_field[written].rows if written in of_field else ()
            of_field[written] = _Used(named, rows if place is None else (*rows, place))
    return names


def by_field_told(by_field, settings):
    """{"names"}, what `reckon` tells of the names in its fields; nothing where there are none."""
    told = {key: _field_told(used, settings) for key, used in (by_field or {}).items()}
    told = {key: names for key, names in told.items() if names}
    return {"names": told} if told else {}


def _field_told(used, settings):
    named = {written: each.named for written, each in used.items()}
    return [
        told | ({"rows": _rows_told(rows)} if (rows := used[told["name"]].rows) else {})
        for told in names_told(named, settings)
    ]


def _rows_told(rows):
    return [{"row": row, "part": part} for row, part in rows]


def all_names(by_field):
    """The names of all fields in one; None where there are none to be had."""
    if by_field is None:
        return None
    return {written: each.named for used in by_field.values() for written, each in used.items()}
