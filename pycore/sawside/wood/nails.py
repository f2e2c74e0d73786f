"""Nails by penny: length and wire (ASTM F1667, from memory; lengths read in two old handbooks)."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.wood.tables import rows

KINDS = {
    "finish": "Finish nail",
    "casing": "Casing nail",
    "common": "Common nail",
    "box": "Box nail",
    "brad": "18-gauge brad",
    "own": "My own",
}


@dataclass(frozen=True, slots=True)
class Nail:
    """A nail as it is sold: its length and diameter in inches."""

    name: str
    length: Fraction
    diameter: Fraction


def _by_kind():
    found = {kind: [] for kind in KINDS}
    for row in rows("nails.csv"):
        nail = Nail(row["name"], Fraction(row["length"]), Fraction(row["diameter"]))
        found[row["kind"]].append(nail)
    return found


NAILS = _by_kind()
"""The nails of each kind, shortest first; of "own" there are none."""


def nail_for(sold, least, most):
    """The shortest of some nails from `least` inches up, or else the longest up to `most`; None."""
    staying = [each for each in sold if each.length <= most]
    enough = [each for each in staying if each.length >= least]
    return enough[0] if enough else (staying[-1] if staying else None)
