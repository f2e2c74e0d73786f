"""The pieces that were cut or spoiled as a table, and such a table taken into a project."""

from sawside.errors import Refusal, quoted
from sawside.lengths.display import decimal_text
from sawside.project.csv_text import read_table, written
from sawside.project.entry_parts import PIECE
from sawside.project.size import inches

_COLUMNS = {"Length exact": "length", "Width exact": "width", "Thickness exact": "thickness",
            "Short side exact": "short_side",
            "Ends": "ends", "When": "when"}  # fmt: skip
HEADER = ("Name", "Part", "State", "Length in", *_COLUMNS)
_STATES = {"cut": "cut", "spoiled": "spoiled"}


def out(document):
    """A row for every piece that was cut or spoiled, as it was cut."""
    return written(HEADER, (
        _row(entry, part, state, piece)
        for entry in document["entries"]
        for state in _STATES
        for part, pieces in entry.get(state, {}).items()
        for piece in pieces
    ))  # fmt: skip


def _row(entry, part, state, piece):
    decimal = decimal_text(inches(piece["length"])).rstrip("…") if "length" in piece else ""
    told = (piece.get(key, "") for key in _COLUMNS.values())
    return (entry["name"], part, state, decimal, *told)


def taken(document, text):
    """[(row, act)] that take a table in: what it has of a line replaces what was kept of it.

    Of a column that is not there each piece keeps what the piece in its place had.
    """
    lines = {
        entry["name"].casefold(): entry for entry in document["entries"] if entry["kind"] == "line"
    }
    changed = {}
    for number, row in read_table(text, HEADER, ("Name", "Part")):
        entry = lines.get(row["Name"].strip().casefold())
        state = _STATES.get(row.get("State", "").strip().casefold() or "cut")
        if entry is None or state is None:
            raise Refusal(
                "unknown",
                f"Row {number}: there is no line {quoted(row['Name'])}."
                if entry is None
                else f"Row {number}: {quoted(row['State'])} is neither cut nor spoiled.",
                "Mend that row.",
                field="text",
            )
        states = _STATES if "State" in row else ("cut",)
        _, _, kept = changed.setdefault(entry["id"], (number, entry, {each: {} for each in states}))
        part = row["Part"].strip()
        pieces = kept[state].setdefault(part, [])
        there = entry.get(state, {}).get(part, ())[len(pieces) : len(pieces) + 1]
        piece = {key: row[column].strip() for column, key in _COLUMNS.items() if column in row}
        pieces.append(_piece(dict(*there) | piece, number))
    return [
        (number, {"act": "put", "entries": [entry | kept]})
        for number, entry, kept in changed.values()
    ]


def _piece(piece, number):
    kept = {key: text for key, text in piece.items() if text}
    for key, text in kept.items():
        try:
            PIECE[key](text, key)
        except Refusal:
            raise Refusal("unreadable", f"Row {number}: {quoted(text)} can't be read.",
                          "Write lengths as 289/8 in, dates as 2026-11-25T17:20.",
                          field="text") from None  # fmt: skip
    return kept
