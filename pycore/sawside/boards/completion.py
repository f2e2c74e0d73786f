"""Whether pieces go into given sticks, stick by stick: bin completion.

R. E. Korf, "A new algorithm for optimal bin packing", AAAI 2002: the longest piece that is left has
to go into some stick, so it is tried with everything that can go beside it, the fullest first. A
branch ends where more is wasted than there is to waste, and where the same is left as before.
First only the best few ways at each stick are tried, then more, then all (limited discrepancy:
W. D. Harvey, M. L. Ginsberg, IJCAI 1995).
"""

from heapq import merge
from itertools import islice

from sawside.boards.fills import OutOfStepsError, Steps, fills

_WAYS = (1, 2, 3, 5)
"""How many ways are tried at each stick, pass after pass, before all are."""

_SHARE = 8
"""A pass gets this part of the steps that are left."""


def pack(sizes, counts, sticks, steps):
    """The sticks filled, as [(room, ((index, how many), …)), …]; False where they don't hold all.

    `sizes` are from large to small, `sticks` so many of each room. None where the steps end before
    it is known.
    """
    for ways in _WAYS:
        part = Steps(steps.left // _SHARE)
        given = part.left
        found = _attempt(sizes, counts, sticks, part, ways)
        steps.left -= given - max(part.left, 0)
        if found or found is False:
            return found
    return _attempt(sizes, counts, sticks, steps, None)


def _attempt(sizes, counts, sticks, steps, ways):
    """As `pack`, with so many ways at each stick (None: all); None where some were not tried."""
    try:
        return _search(sizes, counts, sticks, steps, ways)
    except OutOfStepsError:
        return None


def _search(sizes, counts, sticks, steps, ways):
    rooms = sorted(sticks)
    start = tuple(counts), tuple(sticks[room] for room in rooms)
    seen, cut_short, path = {start}, [False], []
    stack = [_ways_on(sizes, rooms, start, steps, ways, cut_short)]
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
            stack.append(_ways_on(sizes, rooms, state, steps, ways, cut_short))
    return None if cut_short[0] else False


def _ways_on(sizes, rooms, state, steps, ways, cut_short):
    """Yield (room, fill, what is then left) for the longest piece that is left."""
    counts, left = state
    longest = next(i for i, count in enumerate(counts) if count)
    shortest = next(sizes[i] for i in range(len(sizes) - 1, -1, -1) if counts[i])
    usable = sum(room * many for room, many in zip(rooms, left, strict=True) if room >= shortest)
    waste = usable - sum(size * count for size, count in zip(sizes, counts, strict=True))
    if waste < 0:
        return
    beside = (*counts[:longest], counts[longest] - 1, *counts[longest + 1 :])
    found = merge(
        *(
            _with_place(place, fills(sizes, beside, room - sizes[longest], waste, steps))
            for place, room in enumerate(rooms)
            if left[place] and room >= sizes[longest]
        )
    )
    for _, place, fill in islice(found, ways):
        after = list(beside)
        for i, number in fill:
            after[i] -= number
        sticks = (*left[:place], left[place] - 1, *left[place + 1 :])
        yield rooms[place], ((longest, 1), *fill), (tuple(after), sticks)
    if ways and next(found, None) is not None:
        cut_short[0] = True


def _with_place(place, found):
    return ((waste, place, fill) for waste, fill in found)
