"""A drawer stands in its opening where its told parts, put together, have it."""

from collections import Counter
from fractions import Fraction

from asking import found
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from sawside.errors import Refusal
from sawside.geometry.placed import Box
from sawside.lengths.marks import exact_of
from tests.core.oracles.drawers_together import Drawer
from tests.core.oracles.random_drawer import random_drawer, values_of

LEFT, LOW, FRONT = Fraction(3), Fraction(9), Fraction(-3, 4)
"""Where the lower left corner of an opening is, and its front."""


def placed(values, settings=None):
    """(a drawer in its opening, what was found)."""
    said = found("drawer_box", values, settings)
    wide, high = said.fills.size
    opening = Box(LEFT, LEFT + wide, LOW, LOW + high, FRONT, Fraction(0))
    return said.fills.place(opening), said


def from_opening(box):
    """A box as the oracle writes it."""
    across, inward, upward = (
        tuple(end - start for end in ends)
        for ends, start in ((box.across, LEFT), (box.inward, FRONT), (box.upward, LOW))
    )
    return (*across, *inward, *upward)


@settings(max_examples=150, deadline=None)
@given(st.randoms(use_true_random=False))
def test_each_part_is_where_a_drawer_that_is_put_together_has_it(random):
    """`drawers_together`, which knows only the told parts and the joints: each part by the box
    around it, joints and all."""
    asked = random_drawer(random)
    try:
        drawer, said = placed(values_of(asked), {"mark": asked.mark})
    except Refusal:
        assume(False)
    told = {part.key: (mark(part.length), mark(part.width)) for part in said.parts}
    solids = Drawer(asked, told).solids()
    boxes = [box for several in drawer.parts.values() for box in several]
    assert Counter(map(from_opening, boxes)) == Counter(around(each.boxes) for each in solids)
    assert {key: len(several) for key, several in drawer.parts.items()} == {
        part.key: part.count for part in said.parts
    }


def mark(length):
    return length.mark if hasattr(length, "mark") else exact_of(length)


def around(boxes):
    """The box around some boxes."""
    ends = zip(*boxes, strict=True)
    return tuple(pick(each) for each, pick in zip(ends, (min, max) * 3, strict=True))


def test_an_overlay_front_stands_before_its_opening():
    """By hand: 12 × 6 with laps of 1/2; a front of 3/4 before it."""
    values = {"width": "12", "height": "6", "depth": "15", "front": "overlay", "lap": "1/2"}
    drawer, _ = placed(values | {"face": "3/4"})
    [face] = drawer.parts["face"]
    half = Fraction(1, 2)
    assert from_opening(face) == (-half, 12 + half, Fraction(-3, 4), 0, -half, 6 + half)
