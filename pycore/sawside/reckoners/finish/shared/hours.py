"""The hours when a person is there to finish, and the first of them in which some work fits."""

from dataclasses import dataclass
from datetime import datetime, time, timedelta

_DAY = timedelta(days=1)
_WORKDAYS = 5
_LOOKED_AT = 9
"""Days: a workday, a weekend and one more."""


@dataclass(frozen=True, slots=True)
class Hours:
    """From `up` to `down`, hours of the clock, but not from `leaves` to `back` on Monday to Friday,
    None for never. Either goes into the next day where it ends no later than it begins."""

    up: int
    down: int
    leaves: int | None = None
    back: int | None = None

    def fit(self, moment, work):
        """The first moment from `moment` on with so much time for `work` (a `timedelta`) before
        the person leaves or sleeps; None where no day has it."""
        midnight = datetime.combine(moment.date(), time()) - _DAY
        for day in range(_LOOKED_AT):
            for begin, end in self._stretches(midnight + day * _DAY):
                if (start := max(begin, moment)) + work <= end:
                    return start
        return None

    def longest(self):
        """The longest stretch of any day."""
        monday = datetime(2001, 1, 1)
        days = (monday + day * _DAY for day in range(7))
        return max((end - begin for day in days for begin, end in self._stretches(day)), default=0)

    def _stretches(self, midnight):
        """The stretches (begin, end) of the day that begins at a midnight."""
        parts = [_hours(midnight, self.up, self.down)]
        around = (midnight - _DAY, midnight, midnight + _DAY) if self.leaves is not None else ()
        for day in around:
            if day.weekday() < _WORKDAYS:
                away = _hours(day, self.leaves, self.back)
                parts = [each for part in parts for each in _without(part, *away)]
        return parts


def _hours(midnight, begin, end):
    """From one hour of a day to another, of the next day where that is not later."""
    later = end if begin < end else end + 24
    return midnight + timedelta(hours=begin), midnight + timedelta(hours=later)


def _without(part, leaves, back):
    """What is left of a stretch without the hours away."""
    begin, end = part
    left = (begin, min(end, leaves)), (max(begin, back), end)
    return [(one, other) for one, other in left if one < other]
