"""A finish put on by a clock that goes minute by minute: no moment is solved for.

At each minute it is asked whether the person is there for all that is to be done, and whether the
coat before has been drying for long enough.
"""

from datetime import timedelta

MINUTE = timedelta(minutes=1)
DAY = timedelta(days=1)
WORKDAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday")


def is_there(moment, up, down, away):
    """Whether somebody is up and at home in a minute; `away` is (from, to) of a workday or None,
    into the next morning where it ends no later than it begins."""
    hour = moment.hour
    is_up = up <= hour < down if up < down else hour >= up or hour < down
    if not away:
        return is_up
    leaves, back = away
    works, worked = ((moment - ago).strftime("%A") in WORKDAYS for ago in (0 * DAY, DAY))
    if leaves < back:
        return is_up and not (works and leaves <= hour < back)
    return is_up and not ((works and hour >= leaves) or (worked and hour < back))


def stays(moment, minutes, hours):
    """Whether somebody is there for so many minutes from one on."""
    return all(is_there(moment + step * MINUTE, *hours) for step in range(minutes))


def coats(start, dries, wipe, sands, hours, done=()):
    """The moment of each coat: `dries` are the minutes that each has to dry, `sands` whether it is
    sanded before; `done` are moments of the first ones that were put on otherwise."""
    moments, clock = [], start
    for number, (minutes, sanded) in enumerate(zip(dries, sands, strict=True)):
        if number < len(done):
            coat = done[number]
        else:
            before = 30 if sanded else 0
            while not stays(clock, before + 30 + wipe, hours):
                clock += MINUTE
            coat = clock + before * MINUTE
        moments.append(coat)
        clock = coat + (wipe + minutes) * MINUTE
    return moments
