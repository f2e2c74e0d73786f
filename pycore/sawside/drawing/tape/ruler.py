"""A piece of a ruler as the eye sees it: its upper edge, its graduations, its numbers.

Drawn in pixels of a narrow phone, because what it tells is where a place lies between two marks.
"""

from fractions import Fraction

from sawside.drawing.shapes import label, line
from sawside.lengths.display import mixed_text
from sawside.lengths.real import nearby
from sawside.lengths.tape import INCH_SIZES
from sawside.lengths.units import INCHES_PER

WIDTH = 316
"""Units across a drawing that come out as pixels on a narrow phone."""

_MM = INCHES_PER["mm"]
_CLOSEST = 5
_NUMBER_ROOM = 34
_INCH_STEPS = [Fraction(1, parts) for parts in (64, 32, 16, 8, 4, 2, 1)]
_MM_STEPS = [Fraction(1, 2), Fraction(1), Fraction(5), Fraction(10)]


class Ruler:
    """The stretch of a ruler from `low` to `high` (exact inches), between two places x."""

    def __init__(self, low, high, left, right, *, metric=False):
        self.unit = _MM if metric else Fraction(1)
        self.low, self.high = nearby(low) / self.unit, nearby(high) / self.unit
        self.left, self.right = Fraction(left), Fraction(right)
        self.metric = metric

    def at(self, place):
        """Where a length (exact inches) lies, x in pixels."""
        part = (nearby(place) / self.unit - self.low) / (self.high - self.low)
        return self.left + part * (self.right - self.left)

    def shapes(self, top, tall=30, *, numbers=True):
        """Edge and graduations below the height `top`, the longest `tall` pixels, and numbers."""
        shapes = [line((self.left, top), (self.right, top), "edge")]
        step = self._step()
        first, last = -(-self.low // step), self.high // step
        marks = [number * step for number in range(int(first), int(last) + 1)]
        for mark in marks:
            x = self.at(mark * self.unit)
            shapes.append(line((x, top), (x, top + tall * self._size(mark)), "edge"))
        for mark in self._told(marks) if numbers else ():
            place = self.at(mark * self.unit), top + tall + 12
            shapes.append(label(place, mixed_text(mark), "note"))
        return shapes

    def _told(self, marks):
        """The marks with a number: whole ones, or the longest where none is whole."""
        every = self._numbered()
        whole = [mark for mark in marks if mark >= 0 and mark % every == 0]
        if whole or not marks:
            return whole
        return [max((mark for mark in marks if mark >= 0), key=self._size, default=marks[0])]

    def _pixels(self, step):
        return step * (self.right - self.left) / (self.high - self.low)

    def _step(self):
        steps = _MM_STEPS if self.metric else _INCH_STEPS
        return next((step for step in steps if self._pixels(step) >= _CLOSEST), steps[-1])

    def _numbered(self):
        each = 10 if self.metric else 1
        while self._pixels(each) < _NUMBER_ROOM:
            each *= 2
        return each

    def _size(self, mark):
        if not self.metric:
            return INCH_SIZES[mark.denominator]
        return 1.0 if mark % 10 == 0 else 0.7 if mark % 5 == 0 else 0.45 if mark % 1 == 0 else 0.25
