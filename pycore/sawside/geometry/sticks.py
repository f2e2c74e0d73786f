"""How many sticks of one length some pieces need."""

from sawside.lengths.real import nearby

_UNITS = 1 << 60
"""Parts of an inch: what differs by less fills a stick just as well."""


def fewest_sticks(lengths, stick):
    """How many sticks of one length a few pieces need: no way to lay them out takes fewer.

    Meant for the pieces of one layer, some fourteen at most. No piece may be longer than the stick.
    """
    sizes = sorted((int(nearby(length) * _UNITS) for length in lengths), reverse=True)
    room = int(stick * _UNITS) + len(sizes)
    found = _first_fit(sizes, room)
    return found if found <= -(-sum(sizes) // room) else _of_all_ways(sizes, room)


def _first_fit(sizes, room):
    """Each piece off the first stick that has it: often the fewest already."""
    left = []
    for size in sizes:
        at = next((number for number, rest in enumerate(left) if size <= rest), len(left))
        left[at:] = [room] if at == len(left) else left[at:]
        left[at] -= size
    return len(left)


def _of_all_ways(sizes, room):
    """For each set of pieces the fewest sticks, and then the least that the last one gives."""
    best = [(1, 0)]
    for pieces in range(1, 1 << len(sizes)):
        ways = (
            _added(*best[pieces ^ (1 << number)], size, room)
            for number, size in enumerate(sizes)
            if pieces >> number & 1
        )
        best.append(min(ways))
    return best[-1][0]


def _added(sticks, used, size, room):
    return (sticks, used + size) if used + size <= room else (sticks + 1, size)
