"""The parts of a project as a table, and a table of parts put into a project by hand."""

from sawside.lengths.show import Show
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.files.tables.csv_numbers import refuse_grouped
from sawside.project.files.tables.csv_text import read_table, written
from sawside.project.files.tables.measures import cells, columns, numbers, typed
from sawside.project.files.tables.parts_there import PartsThere
from sawside.project.pieces.pieces import allowance, pieces_of
from sawside.project.pieces.size import inches_text
from sawside.project.schema.document import settings_of, unit_of

_SIZES = {"Length": "length", "Width": "width", "Thickness": "thickness"}
_ABOUT = {
    "Material": "material",
    "Grain": "grain",
    "Place": "place",
    "Rough length": "rough_length",
    "Rough width": "rough_width",
    "Rough thickness": "rough_thickness",
}
_ENDS = {"Left end": "left", "Right end": "right"}
HEADER = (
    "Name",
    "Count",
    *(column for size in _SIZES for column in columns(size)),
    *_ENDS,
    *_ABOUT,
    "From",
    "Cut",
    "Spoiled",
)
_IN_PASSING = ("Name", "From", "Cut", "Spoiled")
"""The columns that do not say what a part is."""

_CHECKED = ("Count", *(column for column, key in _ABOUT.items() if key.startswith("rough_")))
_NUMBERS = (*(column for size in _SIZES for column in numbers(size)), *_CHECKED)


def out(document):
    """The table of all parts, the longest first."""
    return written(HEADER, (cells.values() for _, cells in _told(document)))


def _row(piece):
    told, show = piece.told, piece.worked.show
    return (
        told["name"],
        str(told["count"]),
        *(cell for key in _SIZES.values() for cell in cells(getattr(piece.part, key), show)),
        *(
            f"{told['ends'][side]['cut']} {told['ends'][side]['angle']}".strip()
            for side in _ENDS.values()
        ),
        *(_told_about(piece, key) for key in _ABOUT.values()),
        told["from"],
        str(told["cut"]),
        str(told["spoiled"]),
    )


def _told_about(piece, key):
    """What is told of a part; a rough allowance in exact inches, which say their unit."""
    if not key.startswith("rough_"):
        return piece.entry.get("about", {}).get(piece.part.key, {}).get(key, "")
    added = allowance(piece.entry, piece.part, key.removeprefix("rough_"))
    return inches_text(added) if added else ""


def taken(document, text):
    """([(row, act)] that take a table in, how many rows are here already).

    Each row is kept as a piece of a known size. What is here already under its name, or under a
    numbered one, with the same content is left out: a table taken in again adds nothing.
    """
    show = Show(settings_of(document, unit_of(document)))
    table = read_table(text, HEADER, ("Name", "Length"), _NUMBERS)
    there = PartsThere(_told(document), _IN_PASSING)
    rows = ((row, _act(row, show)) for row in table)
    new = [(row.number, act) for row, act in rows if not there.has(row.cells, act)]
    return new, len(table) - len(new)


def _told(document):
    """(entry, cells by the names of the columns) of every piece, the longest first."""
    for piece in pieces_of(document, Evaluation(document), drawings=False):
        yield piece.entry, dict(zip(HEADER, _row(piece), strict=True))


def _act(row, show):
    for column in _CHECKED:
        refuse_grouped(row, row.cells.get(column, ""))
    about = {key: row.cells.get(column, "").strip() for column, key in _ABOUT.items()}
    return {
        "act": "keep_line",
        "name": row.cells["Name"].strip(),
        "reckoner": "piece_by_hand",
        "values": _values(row, show),
        "about": {"piece": about},
    }


def _values(row, show):
    values = {key: typed(row, size, show) for size, key in _SIZES.items()}
    values["count"] = row.cells.get("Count", "").strip()
    for column, side in _ENDS.items():
        words = row.cells.get(column, "").strip()
        if words and words not in ("square", "square 0°"):
            values |= {f"{side}_end": "told", f"{side}_told": words}
    return {key: value for key, value in values.items() if value}
