"""What the questions about the joints of a ring share: its fields, and how a gap is told."""

from sawside.geometry.ring import true_setting
from sawside.lengths.display import decimal_text
from sawside.lengths.show import degrees_text
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.fields import count, length
from sawside.reckoners.miters.shared.field_bounds import ACROSS

CORNERS = count(
    "corners", "Corners", help="Around the whole frame.", default="4", least="3", most="24"
)


def width_field(**more):
    """The width of the stock."""
    return length("width", "Stock width", help="Across the face of the miter.", **ACROSS, **more)


def setting_worked(corners):
    """The line of working that finds the setting at which the ring closes."""
    return f"True miter: 180 ÷ {corners} = {degrees_text(true_setting(corners))}°"


def feeler_text(gap):
    """A small gap (exact inches) as feelers are sold: thousandths of an inch, hundredths of mm."""
    thousandths = decimal_text(gap, 3).rstrip("…")
    return f"{thousandths}″, {decimal_text(gap * (1 / INCHES_PER['mm']), 2).rstrip('…')} mm"
