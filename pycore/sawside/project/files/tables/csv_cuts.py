"""The pieces that were cut or spoiled as a table, and such a table taken into a project."""

from sawside.errors import Refusal, quoted
from sawside.geometry.end import ends_coded, ends_in_words
from sawside.lengths.display import decimal_text
from sawside.lengths.reading.scanner import plain_spaces
from sawside.project.files.tables.csv_text import read_table, written
from sawside.project.kinds.checks import moment_given
from sawside.project.kinds.entry_parts import PIECE
from sawside.project.pieces.size import inches
from sawside.project.schema.finding import of_kind

_COLUMNS = {
    "Length exact": "length",
    "Width exact": "width",
    "Thickness exact": "thickness",
    "Short side exact": "short_side",
    "Ends": "ends",
    "When": "when",
}
HEADER = ("Name", "Part", "State", "Length in", *_COLUMNS)
_STATES = {"cut": "cut", "spoiled": "spoiled"}


def out(document):
    """A row for every piece that was cut or spoiled, as it was cut."""
    return written(
        HEADER,
        (
            _row(entry, part, state, piece)
            for entry in document["entries"]
            for state in _STATES
            for part, pieces in entry.get(state, {}).items()
            for piece in pieces
        ),
    )


def _row(entry, part, state, piece):
    decimal = decimal_text(inches(piece["length"])).rstrip("…") if "length" in piece else ""
    told = piece | {"ends": ends_in_words(piece.get("ends", ""))}
    cells = (told.get(key, "") for key in _COLUMNS.values())
    return (entry["name"], part, state, decimal, *cells)


def taken(document, text):
    """([(row, act)], 0) that take a table in: what it has of a line replaces what was kept of it.

    Of a column that is not there each piece keeps what the piece in its place had.
    """
    lines = {entry["name"].casefold(): entry for entry in of_kind(document, "line")}
    changed = {}
    for number, cells, _ in read_table(text, HEADER, ("Name", "Part")):
        row = {column: plain_spaces(cell).strip() for column, cell in cells.items()}
        entry = lines.get(row["Name"].casefold())
        state = _STATES.get(row.get("State", "").casefold() or "cut")
        if entry is None or state is None:
            raise Refusal(
                "unknown",
                f"Row {number}: there’s no line named {quoted(row['Name'])}."
                if entry is None
                else f"Row {number}: {quoted(row['State'])} is neither cut nor spoiled.",
                "Fix that row.",
                field="text",
            )
        states = _STATES if "State" in row else ("cut",)
        _, _, kept = changed.setdefault(entry["id"], (number, entry, {each: {} for each in states}))
        part = row["Part"]
        pieces = kept[state].setdefault(part, [])
        there = [*entry.get(state, {}).get(part, ())[len(pieces) : len(pieces) + 1], {}][0]
        piece = {key: row[column] for column, key in _COLUMNS.items() if column in row}
        if "ends" in piece:
            piece["ends"] = ends_coded(piece["ends"])
        pieces.append(_piece(there, piece, number))
    return [
        (number, {"act": "put", "entries": [entry | kept]})
        for number, entry, kept in changed.values()
    ], 0


def _piece(there, piece, number):
    """The piece that was in its place with what a row has of it; refuses what can't be read."""
    for key, text in piece.items():
        if text in ("", there.get(key)):
            continue
        try:
            PIECE[key](text, key)
            if key == "when":
                moment_given(text)
        except Refusal:
            raise Refusal(
                "unreadable",
                f"Row {number}: {quoted(text)} can’t be read.",
                "Write lengths as 289/8 in, dates as 2026-11-25T17:20.",
                field="text",
            ) from None
    return {key: text for key, text in (there | piece).items() if text}
