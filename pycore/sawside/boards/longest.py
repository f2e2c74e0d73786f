"""Of plans that buy the same sticks, the one with the longest offcut.

All pieces go into the same sticks but for one that is shorter: the shorter the better. What can be
in that one are sums of pieces, tried from the least on that the others leave over.
"""

from sawside.boards.bounds import all_sums
from sawside.boards.completion import pack
from sawside.boards.fills import sums_of
from sawside.boards.first_plans import room_of

_TRIES = 24
"""Shorter sticks that are tried: each takes the time of a plan of its own."""

_A_TRY = 2_000
"""Steps of one beside those of its search."""


def longest_offcut(exact, filled, steps, worth):
    """(the sticks filled anew or as they were, whether no way of filling them leaves more in one).

    `filled` is a plan of `exact`, in sticks that are all needed; only offcuts of `worth` units and
    more are looked for. Where there are several lengths it is an offcut of the longest.
    """
    places = sorted((place for place, _ in filled), key=lambda place: room_of(exact, place))
    rooms = [room_of(exact, place) for place in places]
    *others, largest = rooms
    best = min(
        sum(exact.sizes[i] * number for i, number in fill)
        for place, fill in filled
        if room_of(exact, place) == largest
    )
    total = sum(size * count for size, count in zip(exact.sizes, exact.counts, strict=True))
    least = max(total - sum(others), exact.sizes[-1])
    if largest - least < worth:
        return filled, False
    sure = True
    for tried, used in enumerate(_sums(exact, least, best, steps)):
        found = None
        if tried < _TRIES:
            steps.spend(_A_TRY)
            found = _packed(exact, others, used, steps)
        if found:
            return _placed(exact, places, used, found), sure
        sure = sure and found is False
        if tried >= _TRIES:
            return filled, False
    return filled, sure


def _sums(exact, least, best, steps):
    """What pieces can come to together, from `least` on and less than the `best`."""
    reached = sums_of(exact.sizes, exact.counts, best, steps) >> least
    for used in range(least, best):
        if reached & 1:
            yield used
        reached >>= 1


def _packed(exact, others, used, steps):
    sticks = {}
    for room in (*others, used):
        sticks[room] = sticks.get(room, 0) + 1
    sums = all_sums(exact.sizes, exact.counts, sticks)
    most = steps.left // 4
    part = steps.part(most)
    found = pack(exact.sizes, exact.counts, sticks, part, sums)
    steps.charge(part, most)
    return found


def _placed(exact, places, used, found):
    """The sticks of a plan at their places: the short one is the last, longest."""
    *rest, longest = places
    free = {used: [longest]}
    for place in rest:
        free.setdefault(room_of(exact, place), []).insert(0, place)
    return [(free[room].pop(), fill) for room, fill in found]
