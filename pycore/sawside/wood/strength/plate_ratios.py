"""How stiff a material is across its length and in shear, as parts of its stiffness along it.

Rows of `plate_ratios.csv`, each with its source. What is no panel of that table is taken as solid
wood, also a material of the person's own: the least stiff across.
"""

from fractions import Fraction

from sawside.wood.tables import cited, rows

_RATIOS = {row["key"]: row for row in rows("plate_ratios.csv")}


def ratios_of(material):
    """(across, shear, what it was taken as, where that is from) of a `Material`."""
    row = _RATIOS.get(material.key, _RATIOS["wood"])
    return Fraction(row["across"]), Fraction(row["shear"]), row["name"], cited(row)
