"""How far a shelf may sag, what the eye notices, and how much more it sags over the years."""

from fractions import Fraction

from sawside.lengths.real import sign
from sawside.wood.tables import entries

LIMITS = entries("sag_limits.csv", "part")
"""Limits by their key: a part of the span, some with a most in inches in their row."""
CREEP = entries("creep.csv", "factor")
"""Sag after years for each sag at once, by key."""

_USUAL_BY_MATERIAL = {key: key for key in ("plywood", "osb", "particleboard", "mdf", "hardboard")}
_USUAL_BY_MATERIAL |= {"wood_plastic": "most", "own": "unseasoned"}


def limit(key, span, own=None):
    """The most sag of a limit on a span, in inches; `own` where the key is "own"."""
    if key == "own":
        return own
    entry = LIMITS[key]
    part = entry.number * span
    return min(part, Fraction(entry.row["most"])) if entry.row["most"] else part


def usual_creep(materials):
    """The entry of `CREEP` for what a shelf is made of; the larger one of a shelf with a strip."""
    keys = {_USUAL_BY_MATERIAL.get(material.key, "seasoned") for material in materials}
    return max((CREEP[key] for key in keys), key=lambda entry: entry.number)


def seen(sag, span):
    """What the eye makes of a sag, by two shop rules: "not", "perhaps" or "yes"."""
    if sign(LIMITS["eye"].number * span - sag) >= 0:
        return "not"
    return "perhaps" if sign(LIMITS["eye_loose"].number * span - sag) >= 0 else "yes"
