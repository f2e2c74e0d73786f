"""A space built of its faces, and a box tried in it: an oracle that shares nothing with the core.

Every face is sampled finely; a box is tried at every place where one of its sides nearly touches.
Places in inches: x from the foot of the left wall to the right, z up from a level line.
"""

from fractions import Fraction

STEPS = 48


class Space:
    """A space between two walls that lean `left` and `right` into it at the top (less than 0: away
    from it), `wide` at their feet; `floor` and `ceiling` are heights at even steps from left to
    right, two or more. `bows` are (how far the left wall stands out, the right one) at a step of
    their height. It is `deep` at the floor, and `back` is how its back wall leans."""

    def __init__(self, wide, left, right, floor, ceiling, bows=None, deep=None, back=0):
        self.wide, self.left, self.right = wide, left, right
        self.floor, self.ceiling, self.bows = floor, ceiling, bows or {}
        self.deep, self.back = deep, back

    def faces(self, part):
        """(left, right) face of the walls at a `part` of their height, from 0 to 1."""
        left, right = self.bows.get(part * STEPS, (0, 0))
        return self.left * part + left, self.wide - self.right * part - right

    def reading(self, part):
        """What a tape held level reads at a `part` of the height."""
        left, right = self.faces(part)
        return right - left

    def heights(self):
        """What a tape reads from the floor to the ceiling at the left and at the right."""
        return self.height(Fraction(0)), self.height(Fraction(1))

    def height(self, part):
        """What a tape reads from the floor to the ceiling at a `part` of the width."""
        return _along(self.ceiling, part) - _along(self.floor, part)

    def depth(self, part):
        """What a tape reads from the back wall to the front at a `part` of the height."""
        return self.deep - self.back * part

    def takes_depth(self, deep, base):
        """Whether an upright box so deep goes before the back wall and `base` at its foot."""
        parts = [Fraction(step, STEPS) for step in range(STEPS + 1)]
        room = min(self.depth(part) for part in parts)
        return deep <= room and deep + base <= self.depth(Fraction(0))

    def takes_width(self, wide, spare):
        """Whether an upright box goes between the walls with `spare` beside it at all heights."""
        faces = [self.faces(Fraction(step, STEPS)) for step in range(STEPS + 1)]
        return any(
            all(left + spare <= start and start + wide + spare <= right for left, right in faces)
            for start in {left + spare for left, _ in faces}
        )

    def takes_height(self, high, spare):
        """Whether a level box as wide as the space goes on the floor with `spare` above it."""
        parts = [Fraction(step, STEPS) for step in range(STEPS + 1)]
        foot = max(_along(self.floor, part) for part in parts)
        return all(foot + high + spare <= _along(self.ceiling, part) for part in parts)

    def amid(self, wide):
        """Where an upright box so wide starts that stands amid what is free at all heights."""
        faces = [self.faces(Fraction(step, STEPS)) for step in range(STEPS + 1)]
        return (max(left for left, _ in faces) + min(right for _, right in faces) - wide) / 2

    def gaps(self, start, wide, part):
        """The gaps left and right of a box from `start` on, at a `part` of the height."""
        left, right = self.faces(part)
        return start - left, right - start - wide


def _along(heights, part):
    """A height at a `part` of the way along, straight from each of them to the next."""
    at = min(int(part * (len(heights) - 1)), len(heights) - 2)
    here, there = heights[at], heights[at + 1]
    return here + (there - here) * (part * (len(heights) - 1) - at)
