"""The pins of a box joint that come out whole. Inches.

All pins and slots are one width, so the height is so many times that width. Board by board they
take turns: what is a pin on one is a slot on the other.
"""

from dataclasses import dataclass
from fractions import Fraction
from math import floor

from sawside.errors import Refusal
from sawside.reckoners.case.shared.carcass.as_measured import measured_text

_MOST = 200


@dataclass(frozen=True, slots=True)
class BoxJoint:
    """`number` of pins and slots in all, each `pin` wide, on boards `height` wide. `sides` says
    that the sides have a pin at the reference edge. Slots are so deep in the sides and ends."""

    number: int
    pin: Fraction
    height: Fraction
    sides: bool
    side_slots: Fraction
    end_slots: Fraction

    @property
    def lines(self):
        """Every line between a pin and a slot, from the reference edge."""
        return [number * self.pin for number in range(1, self.number)]

    @property
    def first_pins(self):
        """How many pins has the board that begins with one."""
        return (self.number + 1) // 2

    @property
    def spaced(self):
        """How many pins of one board, each spaced by the jig, come before its last line."""
        return self.number // 2

    @property
    def hidden(self):
        """(from, to) of the first pin of the sides that isn't at the reference edge; None where
        there is none. A groove in it ends in a slot of the front."""
        first = 2 if self.sides else 1
        return (first * self.pin, (first + 1) * self.pin) if first < self.number else None

    def slots(self, of_sides):
        """(from, to) of each slot in the sides, or in front and back."""
        begin = 1 if of_sides == self.sides else 0
        return [
            (number * self.pin, (number + 1) * self.pin) for number in range(begin, self.number, 2)
        ]


def box_joint_of(given, show):
    """The `BoxJoint` of a form; "impossible" where fewer than two or too many pins come out."""
    if 2 * given.pin > given.height:
        raise Refusal(
            "impossible",
            f"A board {measured_text(given.height, show)} wide has no room for two pins "
            f"{measured_text(given.pin, show)} wide.",
            f"Use pins of {show.text(show.rounded(given.height / 2, 'stay under'))} or less.",
            field="pin",
        )
    number = _number(given)
    if number > _MOST:
        raise Refusal(
            "impossible",
            f"That makes {number} pins.",
            f"Use pins of {show.text(show.rounded(given.height / _MOST, 'reach'))} or more.",
            field="pin",
        )
    if number < 2:
        raise Refusal(
            "impossible",
            f"An odd number of pins {measured_text(given.pin, show)} wide needs three, wider than "
            f"a board of {measured_text(given.height, show)}.",
            f"Use pins of {show.text(show.rounded(given.height / 3, 'stay under'))} or less, or "
            "an even number.",
            field="pin",
        )
    rips = given.gives == "height"
    pin = given.pin if rips else given.height / number
    ends = given.thickness if given.other is None else given.other
    return BoxJoint(
        number,
        pin,
        number * pin,
        given.starts == "sides",
        ends + given.proud,
        given.thickness + given.proud,
    )


def _number(given):
    """How many pins and slots: all that the board holds, or so that they are nearest in width."""
    wanted = given.height / given.pin
    if given.gives == "height":
        whole = floor(wanted)
        if given.count == "any":
            return whole
        return whole if whole % 2 == (given.count == "odd") else whole - 1
    numbers = range(max(floor(wanted) - 2, 2), floor(wanted) + 4)
    right = [each for each in numbers if given.count == "any" or each % 2 == (given.count == "odd")]
    return min(right, key=lambda each: abs(given.height / each - given.pin))
