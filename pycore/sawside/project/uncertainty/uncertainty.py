"""How far one number may be off, from what each reading behind it does to it when it is moved.

Where the number follows the readings evenly, the moves are added at worst, and likely is the root
of the sum of their squares, as errors that know nothing of one another add up (textbook error
propagation; the readings are taken as independent). A count, or a length that hangs on one, goes
in steps, and some numbers turn round: half of a move does not make half of the change. The range is
then found by moving each reading alone and all together, and no likely case is told.
"""

from fractions import Fraction
from typing import Any, NamedTuple

from sawside.lengths.real import sqrt
from sawside.project.evaluation.numbers import numbers
from sawside.reckoning.links import rational, total

_FURTHER = (1, 4, 16, 64)
"""How many times its bounds a reading is moved to see which way a number steps."""


class Limit(NamedTuple):
    """A case without an answer: the readings that are off, by so many inches, and why, if known."""

    offs: dict[str, Fraction]
    refusal: Any


class Influence:
    """What one reading does to a number: `down` and `up`, exact, in the number's own unit."""

    def __init__(self, case, reading):
        self._case, self.reading = case, reading
        self.ends = (self._change(reading.low), self._change(reading.high))
        self.down = min(0, *(end or 0 for end in self.ends))
        self.up = max(0, *(end or 0 for end in self.ends))
        self.spread = Fraction(self.up - self.down) / 2

    @property
    def limit(self):
        """The `Limit` at an end of what the reading may be off by; None where there is none."""
        for by, end in zip((self.reading.low, self.reading.high), self.ends, strict=True):
            if end is None:
                return self._case.limit({self.reading.id: by})
        return None

    @property
    def turns(self):
        """Whether the number moves the same way at both ends."""
        low, high = self.ends
        return low * high > 0

    def steps(self):
        """Whether half of the way does clearly not make half of the change."""
        halves = (self._change(self.reading.low / 2), self._change(self.reading.high / 2))
        return any(
            half is None or _apart(end, 2 * half)
            for end, half in zip(self.ends, halves, strict=True)
        )

    def way(self):
        """1 where a longer reading makes the number larger, -1 where smaller, 0 where nothing."""
        for times in _FURTHER:
            ends = (self._change(times * self.reading.low), self._change(times * self.reading.high))
            low, high = (end or 0 for end in ends)
            if low != high:
                return 1 if high > low else -1
        return 0

    def _change(self, by):
        return self._case.change({self.reading.id: by})


class Uncertainty:
    """How far a number may be off: `low` and `high` are exact changes of it, at worst.

    `likely` is (low, high), or None where the number `steps`. With a `limit`, the `Limit` of
    readings that leave no answer, no range is known.
    """

    def __init__(self, number, moved):
        self.number = number
        case = _Case(number, moved)
        self.influences = [Influence(case, each) for each in moved.readings]
        self.influences.sort(key=lambda each: -each.spread)
        self.limit = next((limit for each in self.influences if (limit := each.limit)), None)
        self.steps, self.likely = False, None
        self.low = total(each.down for each in self.influences)
        self.high = total(each.up for each in self.influences)
        if self.limit is None:
            self._all_at_once(case)
        if self.limit is None and not self.steps:
            by, middle = rational(sqrt(self._squares())), Fraction(self.low + self.high) / 2
            self.likely = middle - by, middle + by

    def share(self, influence):
        """The part of what is unsure that a reading makes, from 0 to 1; None where unknown."""
        if self.likely is None:
            return None
        squares = self._squares()
        return influence.spread**2 / squares if squares else Fraction(0)

    def _squares(self):
        return total(each.spread**2 for each in self.influences)

    def _all_at_once(self, case):
        """See whether the number steps, and take its range from all readings at once if so.

        What grows either way, as a difference without its sign does, has no one bad direction.
        """
        ways = [(each.reading, each.way()) for each in self.influences]
        one_way = not any(each.turns for each in self.influences)
        ends = []
        for wanted in (-1, 1):
            offs = {
                reading.id: reading.high if way == wanted else reading.low
                for reading, way in ways
                if way
            }
            ends.append(case.change(offs))
            if ends[-1] is None:
                self.limit = case.limit(offs)
                return
        self.steps = (
            self.number.kind == "count"
            or (one_way and (_apart(self.low, ends[0]) or _apart(self.high, ends[1])))
            or any(each.steps() for each in self.influences)
        )
        if self.steps:
            self.low = min(0, *ends, *(each.down for each in self.influences))
            self.high = max(0, *ends, *(each.up for each in self.influences))


class _Case:
    """One number of a moved entry."""

    def __init__(self, number, moved):
        self._number, self._moved = number, moved

    def change(self, offs):
        """What the number is more with readings off by so much; None where it has no value."""
        worked = self._moved.by(offs)
        other = numbers(worked).get(self._number.key) if worked.ok else None
        return None if other is None else other.exact - self._number.exact

    def limit(self, offs):
        """The `Limit` that such readings are."""
        worked = self._moved.by(offs)
        return Limit(offs, None if worked.ok else worked.refusals[0])


def _apart(one, other):
    """Whether two changes differ by more than a quarter of the larger."""
    return 4 * abs(one - other) > max(abs(one), abs(other))
