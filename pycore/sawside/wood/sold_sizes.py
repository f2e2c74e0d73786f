"""Sizes as wood is sold, and as it measures: plywood, softwood, hardwood.

Each row keeps its source. Structural plywood has limits (PS 1), softwood least dressed sizes
(PS 20), hardwood and hardwood plywood a usual thickness.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.wood.tables import cited, marked, rows


def inches(text):
    """A printed size: "1 1/2" or "0.688"; None where nothing is printed."""
    return sum(Fraction(part) for part in text.split()) if text else None


@dataclass(frozen=True, slots=True)
class Size:
    """One size as it is sold, by its row; `figures` are its printed sizes in inches by column."""

    key: str
    name: str
    cited: str
    figures: dict[str, Fraction | None]


def _sizes(table, *columns):
    return {
        row["key"]: Size(
            row["key"],
            marked(row["name"], row["status"]),
            cited(row),
            {column: inches(row[column]) for column in columns},
        )
        for row in rows(table)
    }


PLYWOOD = _sizes("panel_thickness.csv", "least", "most")
"""Structural plywood by its performance category: least and most thickness."""

SHEETS = _sizes("sheet_thickness.csv", "usual")
"""Hardwood plywood by what it is sold as: the usual thickness, which no standard fixes."""

_SOFTWOOD = _sizes("softwood_sizes.csv", "dry", "green")
SOFTWOOD_THICK = {key: size for key, size in _SOFTWOOD.items() if key.startswith("thickness")}
SOFTWOOD_WIDE = {key: size for key, size in _SOFTWOOD.items() if key.startswith("width")}
"""Softwood boards and dimension lumber by nominal size: least dressed size, dry and green."""

HARDWOOD = _sizes("hardwood_thickness.csv", "one_side", "two_sides")
"""Hardwood by its rough thickness: as surfaced on one side and on two."""
