"""Panels and species with their stiffness, from `materials.csv`.

The file holds only rows that were read in the source, or confirmed against a second copy; each
says its source, its table there, and which of the two it was. Elasticity is in millions of
pounds per square inch at 12 % moisture, printed as a range for panels.
"""

import csv
from dataclasses import dataclass
from fractions import Fraction
from pkgutil import get_data


@dataclass(frozen=True, slots=True)
class Material:
    """One row of the table; elasticity in 10**6 psi, the same twice where one figure is printed."""

    key: str
    name: str
    kind: str
    elasticity_least: Fraction
    elasticity_most: Fraction
    source: str
    table: str
    status: str


def _materials():
    lines = get_data(__package__, "materials.csv").decode("utf-8").splitlines()
    for row in csv.DictReader(lines):
        for column in ("elasticity_least", "elasticity_most"):
            row[column] = Fraction(row[column])
        yield Material(**row)


MATERIALS = {material.key: material for material in _materials()}
"""Every material by its key, panels first."""
