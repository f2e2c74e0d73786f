"""Hinges on a door, found by trying every place on a fine grid; a closed hinge, laid together.

Shares no code with the questions. Inches, exact.
"""

from fractions import Fraction


def clear_place(wished, height, hinge, shelves, clear, step):
    """The grid's place nearest to `wished` (the lower of two) where a hinge lies on the door and
    `clear` of every shelf (bottom, thickness); None where there is none. Every size but `wished` is
    a whole number of steps."""

    def is_clear(center):
        low, high = center - half, center + half
        return low >= 0 and high <= whole and all(high <= a or low >= b for a, b in barred)

    whole, half = (int(each / step) for each in (height, hinge / 2))
    barred = [(int((a - clear) / step), int((a + b + clear) / step)) for a, b in shelves]
    places = [each * step for each in range(whole + 1) if is_clear(each)]
    return min(places, key=lambda each: (abs(each - wished), each), default=None)


def gap_when_closed(leaf, between, in_frame, in_door):
    """What is left between frame and door, the hinge's parts laid side by side from the bottom of
    the frame's gain: leaf, what is between, leaf, up to the bottom of the door's gain."""
    frame_face = Fraction(in_frame)
    door_gain = leaf + between + leaf
    return door_gain - in_door - frame_face


def overlay_of_bore(tab, constant, plate):
    """How far a door covers its side, as the maker of a cup hinge has it: more tab or constant
    moves the door over the side, a higher plate moves it away."""
    return tab + constant - plate
