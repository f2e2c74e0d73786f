"""How lengths are read and told, the kerf of the saw, clearances, own tapes and own materials."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from types import MappingProxyType

from sawside.errors import Refusal, Refusals, quoted
from sawside.lengths.marks import GRIDS, ROUNDINGS, Grid
from sawside.lengths.units import INCHES_PER, METRIC
from sawside.settings.clearances import CLEARANCES
from sawside.settings.handled import HANDLED, largest_part
from sawside.settings.own_material import MATERIALS, OwnMaterial, read_materials
from sawside.settings.own_tape import OwnTape
from sawside.settings.set_length import SetLength
from sawside.settings.tape_rows import TAPES, read_tapes

USUAL = ""
"""The value of a setting that is left to follow the unit."""

CHOICES = {
    "unit": {"in": "Inches", "ft": "Feet", "mm": "Millimeters", "cm": "Centimeters", "m": "Meters"},
    "mark": {
        USUAL: "Default for the unit",
        "1/2": "Halves of an inch",
        "1/4": "Quarters of an inch",
        "1/8": "Eighths of an inch",
        "1/16": "Sixteenths of an inch",
        "1/32": "Thirty-seconds of an inch",
        "1/64": "Sixty-fourths of an inch",
        ".01 in": "Hundredths of an inch",
        ".001 in": "Thousandths of an inch",
        "1 mm": "Millimeters",
        "0.5 mm": "Half millimeters",
        "0.1 mm": "Tenths of a millimeter",
    },
    "rounding": {
        "nearest": "To the nearest mark",
        "up": "Up to the next mark",
        "down": "Down to the last mark",
    },
    "display": {
        USUAL: "Default for the unit",
        "in": "Inches",
        "ft-in": "Feet and inches",
        "mm": "Millimeters",
    },
    "first_cut": {USUAL: "Whichever fits best", "rip": "Rips", "crosscut": "Crosscuts"},
    "rounds": {USUAL: "As many as it takes", "2": "Two at most", "3": "Three at most"},
}
"""Each setting's values with the words for them, in the order they are offered."""

KERF = SetLength(
    "kerf",
    "Kerf",
    "Your blade’s cut width. Measure a cut in scrap.",
    "1/8",
    "0.01 in",
    "3/4 in",
    "3 mm",
)
"""What many table saw blades take (common practice, no source). The limits are narrow and wide
enough for every saw, and close enough to refuse inches that were meant as millimeters and the other
way round."""

SET_LENGTHS = (KERF, *HANDLED, *CLEARANCES.values())
"""What a field's `setting` may name."""

MOST_TAPES = 12
MOST_MATERIALS = 40

OWN = (*(each.key for each in SET_LENGTHS), "tapes", "materials")
"""The settings that are filled in, beside the `CHOICES`."""


@dataclass(frozen=True, slots=True)
class Settings:
    """What a bare number means, how marks are chosen, in which form they are shown, what saws take,
    and how sheets are broken down (`first_cut` and `rounds`, "" for any).

    `set_lengths` are in exact inches by the key of each setting, None for one of `HANDLED` that is
    blank; `kerf_text` is as it was typed; `tapes` and `materials` are the person's own.
    """

    unit: str
    grid: Grid
    rounding: str
    display: str
    set_lengths: Mapping[str, Fraction | None]
    kerf_text: str
    tapes: tuple[OwnTape, ...]
    materials: tuple[OwnMaterial, ...]
    first_cut: str
    rounds: str

    @property
    def kerf(self):
        """The kerf of the saw in exact inches."""
        return self.set_lengths[KERF.key]

    @property
    def handled(self):
        """The largest part to handle after the first cuts of a sheet, long side first in exact
        inches; None for any."""
        return largest_part(*(self.set_lengths[each.key] for each in HANDLED))

    def __hash__(self):
        """Quick, because a tally asks for it once for every line: hashing a rational is slow."""
        return hash((self.unit, self.grid.name, self.rounding, self.display, self.kerf_text))


def read_settings(data):
    """Settings from a message; what is not given follows the unit.

    A mark in millimeters can't be told exactly in inches, so it is always told in millimeters. The
    usual kerf is 3 mm in a metric project, and its clearances are in millimeters too. Errors:
    "message" when `data` is not an object, "unknown" for a setting or value not offered, and for
    what is filled in whatever the reader refuses, several as `Refusals`.
    """
    if data is None:
        data = {}
    if not isinstance(data, dict):
        raise Refusal(
            "message", "The settings are not readable.", "Send them by name.", field="settings"
        )
    for name, value in data.items():
        if name not in OWN:
            _refuse_not_offered(name, value)
    return _settings(
        data.get("unit", "in"),
        data.get("mark") or None,
        data.get("rounding", "nearest"),
        data.get("display") or None,
        tuple(each.typed(data[each.key]) if each.key in data else "" for each in SET_LENGTHS),
        TAPES.rows_typed(data.get("tapes") or [], MOST_TAPES),
        MATERIALS.rows_typed(data.get("materials") or [], MOST_MATERIALS),
        (data.get("first_cut") or USUAL, data.get("rounds") or USUAL),
    )


def _refuse_not_offered(name, value):
    if name not in CHOICES:
        raise Refusal(
            "unknown",
            f"There’s no setting {quoted(str(name))}.",
            f"Use one of {', '.join((*CHOICES, *OWN))}.",
            field="settings",
        )
    if not isinstance(value, str) or value not in CHOICES[name]:
        offered = ", ".join(choice for choice in CHOICES[name] if choice)
        raise Refusal(
            "unknown",
            f"The setting “{name}” can’t be {quoted(str(value))}.",
            f"Use one of {offered}.",
            field=f"settings.{name}",
        )


def settings_sent(value, _place):
    """The check (`needs.py`) of the settings of a message."""
    return read_settings(value)


@lru_cache(maxsize=64)  # asked at every key press, and nearly always the same
def _settings(unit, mark, rounding, display, lengths, tapes, materials, cuts):
    if mark is None:
        metric = display == "mm" if display else unit in METRIC
        mark = "1 mm" if metric else "1/16"
    grid = GRIDS[mark]
    if display is None or grid.unit == "mm":
        display = "mm" if grid.unit == "mm" else "in"
    read, refusals = read_tapes(tapes, unit)
    own, wrong = read_materials(materials)
    refusals += wrong
    set_lengths, faults = {}, []
    for each, typed in zip(SET_LENGTHS, lengths, strict=True):
        try:
            set_lengths[each.key] = each.read(each.meant(typed, unit), unit)
        except Refusal as refusal:
            faults.append(refusal)
    refusals = faults + refusals
    if len(refusals) > 1:
        raise Refusals(refusals)
    if refusals:
        raise refusals[0]
    kerf_text = KERF.meant(lengths[0], unit)
    taken = MappingProxyType(set_lengths)
    return Settings(unit, grid, rounding, display, taken, kerf_text, read, own, *cuts)


assert set(CHOICES["mark"]) - {USUAL} == set(GRIDS)
assert set(CHOICES["rounding"]) == set(ROUNDINGS)
assert set(CHOICES["unit"]) <= set(INCHES_PER)
