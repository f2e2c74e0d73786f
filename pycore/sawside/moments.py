"""Moments of a person's own clock, without a zone: read as a page gives them, and said.

There is no clock here: every moment was typed, or came with a message. Imports: errors.
"""

import re
from datetime import datetime, timedelta

from sawside.errors import Refusal, left_blank, quoted

FIRST, LAST = "2000-01-01T00:00", "2100-12-31T23:59"
_MOMENT = re.compile(r"\d{4}-\d\d-\d\dT\d\d:\d\d(?::\d\d(?:\.\d{1,3})?)?", re.ASCII)
_DAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
_NOON = 12
HOUR = timedelta(hours=1)
_FEW_DAYS = 3 * 24


def read_moment(text, field=None, label="The time"):
    """A text as `<input type="datetime-local">` gives it, "2026-11-30T18:00", as a `datetime`.

    Seconds are dropped. Refusals: "missing" for a blank one, "unreadable" for one that is no moment
    of the calendar, "range" outside `FIRST` to `LAST`.
    """
    text = text.strip()
    if not text:
        raise left_blank(label, "Pick a date and a time.", field)
    try:
        if not _MOMENT.fullmatch(text):
            raise ValueError(text)
        moment = datetime.fromisoformat(text[:16])
    except ValueError:
        message = f"{quoted(text)} isn’t a date and time."
        remedy = "Pick both, as in 2026-11-30T18:00."
        raise Refusal("unreadable", message, remedy, field=field) from None
    if not datetime.fromisoformat(FIRST) <= moment <= datetime.fromisoformat(LAST):
        message = f"{label} must be in a year from {FIRST[:4]} to {LAST[:4]}."
        raise Refusal("range", message, "Check the year.", field=field)
    return moment


def is_moment(text):
    """Whether a text is such a moment."""
    try:
        read_moment(text)
    except Refusal:
        return False
    return True


def at(moment):
    """A moment as it is kept: "2026-12-01T07:30"."""
    return moment.isoformat(timespec="minutes")


def said(moment):
    """A moment as one says it: "Tue Dec 1, 7:30 AM"."""
    return f"{_DAYS[moment.weekday()]} {_MONTHS[moment.month - 1]} {moment.day}, {clock(moment)}"


def clock(moment):
    """The time of day: "7:30 AM"."""
    half = "AM" if moment.hour < _NOON else "PM"
    return f"{(moment.hour - 1) % _NOON + 1}:{moment.minute:02} {half}"


def lost_hour(begin, end):
    """What a clock goes ahead by from one moment to another where it is set ahead in spring.

    That is on the second Sunday of March in the US (15 U.S.C. 260a), on the last one in Europe
    (Directive 2000/84/EC), both from memory: on either, as no zone is known.
    """
    nights = (_sunday(year, day) for year in range(begin.year, end.year + 1) for day in (8, 25))
    return HOUR if any(begin < night <= end for night in nights) else timedelta()


def _sunday(year, day):
    """2 AM on the first Sunday from a day of March on."""
    first = datetime(year, 3, day, 2)
    return first + timedelta(days=6 - first.weekday())


def lasting(span):
    """A time from 0 up, rounded up to a minute, of days to an hour: "20 min", "24 h", "28 days"."""
    minutes = -(-span // timedelta(minutes=1))
    hours, left = divmod(minutes, 60)
    if hours >= _FEW_DAYS:
        days, hours = divmod(-(-minutes // 60), 24)
        return f"{days} days {hours} h" if hours else f"{days} days"
    told = [f"{hours} h"] if hours else []
    return " ".join([*told, f"{left} min"] if left or not hours else told)
