"""A person's own materials from the settings: their figures as typed, with a note on the source.

A figure that was left blank is not known, and no question guesses it.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.reading.reader import read_number
from sawside.settings.own_rows import RowKind

MOST_NOTE = 200
_MILLION = 10**6

FIGURES = {
    "stiffness": ("Stiffness (modulus of elasticity)", "million psi", "0.01", "40"),
    "strength": ("Breaking strength in bending", "psi", "100", "100000"),
    "tangential": ("Movement, flat sawn", "per 1%", "0.0001", "0.02"),
    "radial": ("Movement, quarter sawn", "per 1%", "0.0001", "0.02"),
    "weight": ("Weight", "lb per cubic foot", "1", "120"),
}
"""Label, unit, least and most of each figure, inclusive."""

MATERIALS = RowKind(
    "materials",
    "material",
    {"name": "Name"} | {part: row[0] for part, row in FIGURES.items()} | {"note": "Note"},
)


@dataclass(frozen=True, slots=True)
class OwnMaterial:
    """Stiffness and strength in psi, movement as a part of the width for each 1 % of moisture.

    Weight is in pounds for each cubic foot.
    """

    name: str
    stiffness: Fraction | None
    strength: Fraction | None
    tangential: Fraction | None
    radial: Fraction | None
    weight: Fraction | None
    note: str


def read_materials(rows):
    """(materials, refusals) of rows of texts."""
    return MATERIALS.read(rows, _material)


def _material(number, texts):
    wrong, read = [], {}
    for part, (label, unit, least, most) in FIGURES.items():
        try:
            read[part] = _figure(texts[part], label, unit, least, most)
        except Refusal as refusal:
            said = refusal.kind, refusal.message, refusal.remedy
            wrong.append(MATERIALS.refusal(*said, number, part, refusal.at))
    if len(texts["note"]) > MOST_NOTE or not texts["note"].isprintable():
        message = f"a note can have at most {MOST_NOTE} characters, all of them visible."
        wrong.append(MATERIALS.refusal("range", message, "Shorten it.", number, "note"))
    if not wrong and not any(value for part, value in read.items() if part != "weight"):
        message = "it has no numbers." if not read["weight"] else "it has no number but its weight."
        remedy = "Add its stiffness or its movement."
        wrong.append(MATERIALS.refusal("missing", message, remedy, number, "stiffness"))
    for part, other in (("tangential", "radial"), ("radial", "tangential")):
        if texts[other] and not texts[part]:
            message = f"{FIGURES[part][0]} is blank."
            remedy = "Fill it in, or clear both."
            wrong.append(MATERIALS.refusal("missing", message, remedy, number, part))
    if wrong:
        return None, wrong
    if read["stiffness"]:
        read["stiffness"] *= _MILLION
    return OwnMaterial(texts["name"], **read, note=texts["note"]), []


def _figure(text, label, unit, least, most):
    if not text:
        return None
    value = read_number(text).value
    if not Fraction(least) <= value <= Fraction(most):
        message = f"{label} must be from {least} to {most} {unit}."
        raise Refusal("range", message, "Check the number.", at=0)
    return value
