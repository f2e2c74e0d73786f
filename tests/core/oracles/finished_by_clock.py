"""A finish put on by a clock that goes minute by minute: no moment is solved for.

At each minute it is asked whether the person is there for all that is to be done, and whether the
coat before has been drying for long enough.
"""

from datetime import timedelta

MINUTE = timedelta(minutes=1)
WORKDAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday")


def is_there(moment, up, down, away):
    """Whether somebody is up and at home in a minute; `away` is (from, to) of a workday or None."""
    hour = moment.hour
    is_up = up <= hour < down if up < down else hour >= up or hour < down
    is_away = away and moment.strftime("%A") in WORKDAYS and away[0] <= hour < away[1]
    return is_up and not is_away


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
