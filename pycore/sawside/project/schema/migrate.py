"""Documents of older schemas brought up, one step a schema.

A step is given unchecked data and changes only what has the shape that it knows; whatever else
is wrong is left for the check that follows.
"""

from sawside.geometry.end import ends_coded
from sawside.lengths.units import METRIC
from sawside.project.kinds.entry_parts import MOST_PIECES
from sawside.project.schema.former_questions import line_of_today
from sawside.project.schema.old_defaults import (
    ANYWHERE,
    MARGINS,
    METRIC_CLEARANCES,
    METRIC_LINES,
    METRIC_ROWS,
    METRIC_SETTINGS,
)

OLDEST = 1


def migrated(data, schema):
    """A document of an older schema as one of `schema`; the given one stays as it is."""
    for older in range(data["schema"], schema):
        data = _STEPS[older](data) | {"schema": older + 1}
    return data


def migrated_entry(data):
    """An entry as it was kept by any schema, but for its old defaults."""
    return line_of_today(_with_coded_ends(_with_unknown_pieces(data)))


def _from_1(data):
    """Pieces cut were only counted: of each it is not known at what length it was cut."""
    return _each_entry(data, _with_unknown_pieces)


def _each_entry(data, step):
    if not isinstance(data.get("entries"), list):
        return data
    return data | {"entries": [step(entry) for entry in data["entries"]]}


def _with_unknown_pieces(entry):
    return _each_part(entry, "cut", _unknown_pieces)


def _each_part(entry, state, step):
    """An entry with a step taken over what it has of each part that is "cut" or "spoiled"."""
    parts = entry.get(state) if isinstance(entry, dict) else None
    if not isinstance(parts, dict):
        return entry
    return entry | {state: {part: step(pieces) for part, pieces in parts.items()}}


def _unknown_pieces(many):
    whole = isinstance(many, int) and not isinstance(many, bool)
    return [{} for _ in range(many)] if whole and 0 <= many <= MOST_PIECES else many


def _from_2(data):
    """What came with 3 may be left out: `off` of a reading, `labels`, weights and clearances."""
    return data


def _from_3(data):
    """Some defaults became others: what a line or the settings left blank is what it was."""
    return _each_entry(_with_old_settings(data, METRIC_SETTINGS), _with_old_defaults)


def _with_old_settings(data, old):
    settings = data.get("settings")
    if isinstance(settings, dict) and _metric(settings):
        data = data | {"settings": settings | _missing(settings, old)}
    return data


def _with_old_defaults(entry):
    values = entry.get("values") if isinstance(entry, dict) else None
    key = entry.get("reckoner") if isinstance(values, dict) else None
    if not isinstance(key, str):
        return entry
    added = _missing(values, ANYWHERE.get(key, {}))
    if _metric(entry):
        added |= _missing(values, METRIC_LINES.get(key, {}))
        for field, old in METRIC_ROWS.get(key, {}).items():
            if isinstance(values.get(field), list):
                added[field] = [_row(row, old) for row in values[field]]
    if key == "dado_layout":
        added |= _missing(values | added, _third(values))
    return entry | {"values": values | added}


def _row(row, old):
    filled = isinstance(row, dict) and any(row.values())
    return row | _missing(row, old) if filled else row


def _third(values):
    """A dado was a third of its side, exactly."""
    side = values.get("side_thickness") or '3/4"'
    return {"dado_depth": f"({side}) / 3"} if isinstance(side, str) else {}


def _metric(data):
    return data.get("unit") in METRIC


def _missing(values, old):
    """What is old of `old` where `values` have nothing."""
    blank = (None, "")
    return {key: text for key, text in old.items() if values.get(key) in blank}


def _from_4(data):
    """The ends of a piece that was cut were kept in words, which are a code now."""
    return _each_entry(data, _with_coded_ends)


def _with_coded_ends(entry):
    return _each_part(_each_part(entry, "cut", _coded), "spoiled", _coded)


def _coded(pieces):
    return [_piece_coded(piece) for piece in pieces] if isinstance(pieces, list) else pieces


def _piece_coded(piece):
    ends = piece.get("ends") if isinstance(piece, dict) else None
    return piece | {"ends": ends_coded(ends)} if isinstance(ends, str) else piece


def _from_5(data):
    """Some questions became part of others, and margins of labels start with the unit's own."""
    labels = data.get("labels")
    values = labels.get("values") if isinstance(labels, dict) else None
    if isinstance(values, dict):
        data = data | {"labels": labels | {"values": values | _missing(values, MARGINS)}}
    return _each_entry(data, line_of_today)


def _from_6(data):
    """A metric project has clearances in millimeters: what it left blank is what it was."""
    return _with_old_settings(data, METRIC_CLEARANCES)


def _from_7(data):
    """What came with 8, a cutting plan and the steps done of a line, may be left out."""
    return data


_STEPS = {1: _from_1, 2: _from_2, 3: _from_3, 4: _from_4, 5: _from_5, 6: _from_6, 7: _from_7}
