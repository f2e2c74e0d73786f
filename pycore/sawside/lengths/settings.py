"""How a person wants lengths read and told: four choices, each with a usual value."""

from dataclasses import dataclass

from sawside.errors import Refusal, quoted
from sawside.lengths.marks import GRIDS, ROUNDINGS, Grid
from sawside.lengths.units import INCHES_PER

USUAL = ""
"""The value of a setting that is left to follow the unit."""

CHOICES = {
    "unit": {
        "in": "Inches",
        "ft": "Feet",
        "mm": "Millimeters",
        "cm": "Centimeters",
        "m": "Meters",
    },
    "mark": {
        USUAL: "The usual one for the unit",
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
        USUAL: "The usual one for the unit",
        "in": "Inches",
        "ft-in": "Feet and inches",
        "mm": "Millimeters",
    },
}
"""Each setting's values with the words for them, in the order they are offered."""

_METRIC = ("mm", "cm", "m")


@dataclass(frozen=True, slots=True)
class Settings:
    """What a bare number means, how marks are chosen, and the form in which they are shown."""

    unit: str = "in"
    grid: Grid = GRIDS["1/16"]
    rounding: str = "nearest"
    display: str = "in"


def read_settings(data):
    """Settings from a message; what is not given follows the unit.

    A mark in millimeters can't be told exactly in inches, so it is always told in millimeters.
    Errors: "message" when `data` is not an object, "unknown" for a setting or value not offered.
    """
    if data is None:
        data = {}
    if not isinstance(data, dict):
        raise Refusal(
            "message", "The settings are not readable.", "Send them by name.", field="settings"
        )
    for name, value in data.items():
        if name not in CHOICES:
            raise Refusal(
                "unknown",
                f"There is no setting {quoted(str(name))}.",
                f"Use one of {', '.join(CHOICES)}.",
                field="settings",
            )
        if not isinstance(value, str) or value not in CHOICES[name]:
            offered = ", ".join(choice for choice in CHOICES[name] if choice)
            raise Refusal(
                "unknown",
                f"The setting “{name}” can't be {quoted(str(value))}.",
                f"Use one of {offered}.",
                field=f"settings.{name}",
            )
    unit = data.get("unit", "in")
    display = data.get("display") or None
    mark = data.get("mark") or None
    if mark is None:
        metric = display == "mm" if display else unit in _METRIC
        mark = "1 mm" if metric else "1/16"
    grid = GRIDS[mark]
    if display is None or grid.unit == "mm":
        display = "mm" if grid.unit == "mm" else "in"
    return Settings(unit, grid, data.get("rounding", "nearest"), display)


assert set(CHOICES["mark"]) - {USUAL} == set(GRIDS)
assert set(CHOICES["rounding"]) == set(ROUNDINGS)
assert set(CHOICES["unit"]) <= set(INCHES_PER)
