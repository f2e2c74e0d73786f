"""The published tables as rows; their first line names the source."""

import csv
from pathlib import Path

PUBLISHED = Path(__file__).resolve().parents[1] / "published"


def rows(name):
    """The rows of a table in tests/published, in whichever folder, as dicts of text."""
    [table] = PUBLISHED.rglob(name)
    lines = table.read_text(encoding="utf-8").splitlines()
    assert lines[0].startswith("# Source: ")
    return list(csv.DictReader(lines[1:]))
