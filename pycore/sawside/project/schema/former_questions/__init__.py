"""Questions that became part of another one until documents had schema 6, one file a subject.

A line of such a question asks the other one what it asked before: same numbers. Its answers keep
their old labels by `reckoning/old_labels.py`.
"""

from sawside.project.schema.former_questions import miters, shelves, tape, wood
from sawside.project.schema.former_questions.became import Became

MERGED: dict[str, Became] = {**tape.MERGED, **miters.MERGED, **shelves.MERGED, **wood.MERGED}
"""By the key of the question of before."""


def line_of_today(entry):
    """An entry, unchecked; a line of a merged question asks the one that it became part of."""
    key = entry.get("reckoner") if isinstance(entry, dict) else None
    became = MERGED.get(key) if isinstance(key, str) else None
    return became.brought_up(entry) if became else entry
