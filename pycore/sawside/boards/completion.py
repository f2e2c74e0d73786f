"""Whether pieces go into given sticks, stick by stick: bin completion.

R. E. Korf, "A new algorithm for optimal bin packing", AAAI 2002: the longest piece that is left has
to go into some stick, so it is tried with everything that can go beside it, the fullest first. A
branch ends where more is wasted than there is to waste, where a bound says that the rest can't go
in (S. Martello, P. Toth, as in `bounds`), and where the same is left as before.
First only the best few ways at each stick are tried, then more, then all (limited discrepancy:
W. D. Harvey, M. L. Ginsberg, IJCAI 1995).
"""

from heapq import merge
from itertools import islice

from sawside.boards.bounds import Lanes
from sawside.boards.cover import cover
from sawside.boards.fills import OutOfStepsError, fills, long_first

_PASSES = ((1, None), (1, 1), (2, 1), (3, 1), (2, 2), (3, 2), (3, None))
"""(how many ways are tried at each stick, how much each stick may waste), pass after pass before
all ways are: none, where the fullest is tried first, else so many times its share of the waste."""

_SHARE = 8
"""A pass gets this part of the steps that are left."""

_FOR_COVER = 3
"""What has little to waste is tried with this part of the steps first."""

_A_NODE = 30
"""Steps of a node beside those of its fills."""


def pack(sizes, counts, sticks, steps, sums):
    """The sticks filled, as [(room, ((index, how many), …)), …]; False where they don't hold all.

    `sizes` are from large to small, `sticks` so many of each room, `sums` those of `bounds`. None
    where the steps end before it is known.
    """
    rooms = sorted(room for room, number in sticks.items() if room and number)
    lanes = Lanes(sums, rooms, [sticks[room] for room in rooms])
    if lanes.start & lanes.sound != lanes.sound:
        return False
    held = sum(room * number for room, number in sticks.items())
    needed = sum(size * count for size, count in zip(sizes, counts, strict=True))
    if len(rooms) == 1 and any(counts):
        given = steps.left // _FOR_COVER
        part = steps.part(given)
        found = cover(sizes, counts, rooms[0], sticks[rooms[0]], part)
        steps.charge(part, given)
        if found is not None:
            return found
    for ways in _PASSES:
        if held == needed and ways[1]:
            continue  # there is no waste to share
        given = steps.left // _SHARE
        part = steps.part(given)
        found = _attempt(sizes, counts, sticks, part, lanes, ways)
        steps.charge(part, given)
        if found or found is False:
            return found
    return _attempt(sizes, counts, sticks, steps, lanes, (None, None))


def _attempt(sizes, counts, sticks, steps, lanes, ways):
    """As `pack`, in one pass of `_PASSES` (no number of ways: all); None where some were not
    tried."""
    try:
        return _search(sizes, counts, sticks, steps, lanes, ways)
    except OutOfStepsError:
        return None


def _search(sizes, counts, sticks, steps, lanes, ways):
    rooms = sorted(lanes.rooms)
    numbers = tuple(sticks[room] for room in rooms)
    start = tuple(counts), numbers, lanes.start
    seen, cut_short, path = {start}, [False], []
    stack = [_ways_on(sizes, rooms, lanes, start, steps, ways, cut_short)]
    if not any(counts):
        return []
    while stack:
        step = next(stack[-1], None)
        if step is None:
            stack.pop()
            if path:
                path.pop()
            continue
        room, fill, state = step
        if not any(state[0]):
            return [*path, (room, fill)]
        if state not in seen:
            seen.add(state)
            path.append((room, fill))
            stack.append(_ways_on(sizes, rooms, lanes, state, steps, ways, cut_short))
    return None if cut_short[0] else False


def _ways_on(sizes, rooms, lanes, state, steps, ways, cut_short):
    """Yield (room, fill, what is then left) for the longest piece that is left."""
    steps.spend(_A_NODE)
    counts, left, beyond = state
    longest = next(i for i, count in enumerate(counts) if count)
    shortest = next(sizes[i] for i in range(len(sizes) - 1, -1, -1) if counts[i])
    usable = sum(room * many for room, many in zip(rooms, left, strict=True) if room >= shortest)
    waste = usable - sum(size * count for size, count in zip(sizes, counts, strict=True))
    if waste < 0:
        return
    beside = (*counts[:longest], counts[longest] - 1, *counts[longest + 1 :])
    most, times = ways
    spare = waste if times is None else min(waste, times * waste // sum(left))
    fill_by = fills if times is None else long_first
    found = merge(
        *(
            _with_place(place, fill_by(sizes, beside, room - sizes[longest], spare, steps))
            for place, room in enumerate(rooms)
            if left[place] and room >= sizes[longest]
        )
    )
    sound = (
        (place, fill, more)
        for _, place, beside_it in found
        for fill in [((longest, 1), *beside_it)]
        if (more := lanes.after(beyond, rooms[place], fill)) is not None
    )
    for place, fill, more in islice(sound, most):
        after = list(counts)
        for i, number in fill:
            after[i] -= number
        sticks = (*left[:place], left[place] - 1, *left[place + 1 :])
        yield rooms[place], fill, (tuple(after), sticks, more)
    if most and (times is not None or next(sound, None) is not None):
        cut_short[0] = True


def _with_place(place, found):
    return ((waste, place, fill) for waste, fill in found)
