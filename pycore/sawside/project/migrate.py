"""Documents of older schemas brought up, one step a schema.

A step is given unchecked data and changes only what has the shape that it knows; whatever else
is wrong is left for the check that follows.
"""

from sawside.project.entry_parts import MOST_PIECES

OLDEST = 1


def migrated(data, schema):
    """A document of an older schema as one of `schema`; the given one stays as it is."""
    for older in range(data["schema"], schema):
        data = _STEPS[older](data) | {"schema": older + 1}
    return data


def migrated_entry(data):
    """An entry as it was kept by schema 1, or by this one."""
    cut = data.get("cut") if isinstance(data, dict) else None
    if not isinstance(cut, dict):
        return data
    return data | {"cut": {part: _unknown_pieces(many) for part, many in cut.items()}}


def _from_1(data):
    """Pieces cut were only counted: of each it is not known at what length it was cut."""
    if not isinstance(data.get("entries"), list):
        return data
    return data | {"entries": [migrated_entry(entry) for entry in data["entries"]]}


def _unknown_pieces(many):
    whole = isinstance(many, int) and not isinstance(many, bool)
    return [{} for _ in range(many)] if whole and 0 <= many <= MOST_PIECES else many


def _from_2(data):
    """What came with 3 may be left out: `off` of a reading, `labels`, weights and clearances."""
    return data


_STEPS = {1: _from_1, 2: _from_2}
