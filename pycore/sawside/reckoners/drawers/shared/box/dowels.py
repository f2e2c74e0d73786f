"""The dowels of a butt corner: end grain of one part against the face of the other. Inches.

Common practice, no source: at most half as thick as the part that is bored in its end, one for
every 2 in, two at the least, an eighth of wood left behind the hole in the face, which is no less
deep than wide.
"""

from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from sawside.errors import Refusal
from sawside.lengths.units import INCHES_PER, METRIC
from sawside.reckoners.case.shared.carcass.as_measured import measured_text
from sawside.wood.dowels import diameters_sold, lengths_sold

_LEFT = {False: Fraction(1, 8), True: 3 * INCHES_PER["mm"]}
_GLUE = {False: Fraction(1, 16), True: Fraction(3, 2) * INCHES_PER["mm"]}
_APART = {False: Fraction(2), True: 50 * INCHES_PER["mm"]}
"""By whether it is metric."""


@dataclass(frozen=True, slots=True)
class Dowels:
    """The dowels of one corner: how many, of which size, and how deep their holes are."""

    number: int
    diameter: Fraction
    length: Fraction
    face_hole: Fraction
    end_hole: Fraction

    def told(self, show):
        """ "3 dowels 1/4″ × 1 1/4″"."""
        size = " × ".join(measured_text(each, show) for each in (self.diameter, self.length))
        return f"{self.number} dowels {size}"


def dowels_of(face, end, high, show):
    """The `Dowels` between a face of a part `face` thick and the end of one `end` thick, over
    `high`; "impossible" where no common one goes in."""
    metric = show.settings.unit in METRIC
    deep = face - _LEFT[metric]
    sold = diameters_sold(min(end / 2, deep), metric)
    if not sold:
        thin = min(face, end)
        raise Refusal(
            "impossible",
            f"Parts {measured_text(thin, show)} thick are too thin for common dowels.",
            "Pick another joint, or thicker parts.",
            field="front_joint",
        )
    diameter = sold[0]
    long = lengths_sold(diameter, metric)[0]
    in_face = min(deep, long / 2)
    number = max(2, ceil(high / _APART[metric]))
    return Dowels(number, diameter, long, in_face, long - in_face + _GLUE[metric])
