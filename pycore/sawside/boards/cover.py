"""Sticks with next to nothing to waste: the piece with the fewest ways to go in is put in first.

Where little may be wasted few fillings of a stick are left, and each piece has only some of them:
an exact cover, of which the item with the fewest choices is settled first (D. E. Knuth, "Dancing
links", 2000, who has it of S. W. Golomb, L. D. Baumert, 1965).
"""

from sawside.boards.fills import OutOfStepsError, all_fills

_MOST_FILLS = 2_500

_A_NODE = 20
"""Steps of a node beside those for each filling that is looked at."""


def cover(sizes, counts, room, number, steps):
    """All pieces in so many sticks of one room, as [(room, fill), …]; False where they don't go
    in. None where there are too many fillings, or the steps end before it is known."""
    waste = number * room - sum(size * count for size, count in zip(sizes, counts, strict=True))
    try:
        found = all_fills(sizes, counts, room, waste, _MOST_FILLS, steps)
        return None if found is None else _settled(counts, number, waste, found, room, steps)
    except OutOfStepsError:
        return None


def _settled(counts, number, waste, found, room, steps):
    """A search in depth; what is left of pieces, waste and fillings is a node."""
    start = (tuple(counts), number, waste)
    seen, path = {start}, []
    stack = [_choices(start, found, steps)]
    while stack:
        step = next(stack[-1], None)
        if step is None:
            stack.pop()
            if path:
                path.pop()
            continue
        fill, state, alive = step
        if not any(state[0]):
            return [(room, each) for each in (*path, fill) if each]
        if state not in seen:
            seen.add(state)
            path.append(fill)
            stack.append(_choices(state, alive, steps))
    return False


def _choices(state, fills, steps):
    """Yield (fill, what is then left, the fillings that can still be) for one piece."""
    counts, number, waste = state
    steps.spend(_A_NODE + len(fills))
    if not number:
        return
    alive = [each for each in fills if each[0] <= waste and all(counts[i] >= n for i, n in each[1])]
    ways = [0] * len(counts)
    for _, fill in alive:
        for i, _ in fill:
            ways[i] += 1
    # many alike have as many times the ways
    piece = min(
        (i for i, count in enumerate(counts) if count), key=lambda i: (ways[i] / counts[i], i)
    )
    for left, fill in alive:
        if any(i == piece for i, _ in fill):
            after = list(counts)
            for i, many in fill:
                after[i] -= many
            yield fill, (tuple(after), number - 1, waste - left), alive
