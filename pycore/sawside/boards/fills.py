"""What goes together into one stick, from the fullest on.

The sums that pieces can come to are the ones of a binary number: those of one piece more are the
same number or-ed with itself, moved up by that piece.
"""

from bisect import bisect_left


_BITS_A_STEP = 13
"""Of a binary number this long (as a power of 2), an act takes about a step more."""


class OutOfStepsError(Exception):
    """The steps that were given are used up."""


class Steps:
    """A budget that is the same on every machine: steps of work, not seconds."""

    def __init__(self, most):
        self.left = most

    def spend(self, number):
        """Take some away; raises `OutOfStepsError` where there are no more."""
        self.left -= number
        if self.left < 0:
            raise OutOfStepsError


def fills(sizes, counts, room, most_waste, steps):
    """Yield (waste, ((index, how many), …)) of what fits into `room`, by its waste.

    Of two fills where one long piece could stand for all of the other, only the one with the long
    piece is given, and none to which a piece could be added (dominance, of S. Martello, P. Toth,
    "Knapsack problems", 1990, 8.4). The best of them, taken stick after stick, is the heuristic
    MBS' of K. Fleszar, K. Hindi, "New heuristics for one-dimensional bin-packing", Computers &
    Operations Research 29 (2002).
    """
    negative = [-size for size in sizes]
    longest = next(
        (i for i in range(bisect_left(negative, -room), len(sizes)) if counts[i]), None
    )
    if longest is None:
        if room <= most_waste:
            yield room, ()
        return
    reached = _reached(sizes, counts, room, steps)
    low = max(room - most_waste, sizes[longest])
    sums = reached[0] >> low
    while sums:
        target = low + sums.bit_length() - 1
        sums ^= 1 << (target - low)
        if target == sizes[longest]:
            yield room - target, ((longest, 1),)
        else:
            for _, fill in _within(sizes, negative, counts, reached, target, 0, steps):
                yield room - target, fill


def long_first(sizes, counts, room, spare, steps):
    """Yield (waste, fill) of what fills `room` but for `spare` at most, the longest pieces first.

    What is filled to the last bit uses up the short pieces, and the long ones then don't go
    together: some waste at each stick avoids that (relaxed MBS', of the same paper as `fills`).
    """
    negative = [-size for size in sizes]
    reached = _reached(sizes, counts, room, steps)
    spare = min(spare, room)
    if reached[0] >> (room - spare):
        yield from _within(sizes, negative, counts, reached, room, spare, steps)


def _reached(sizes, counts, room, steps):
    """For each place in `sizes`: the sums up to `room` of the pieces from there on, as bits."""
    steps.spend(len(sizes) * (3 + (room >> _BITS_A_STEP)))
    mask = (1 << (room + 1)) - 1
    reached = [1] * (len(sizes) + 1)
    for i in range(len(sizes) - 1, -1, -1):
        sums, left, many = reached[i + 1], counts[i], 1
        while left:
            many = min(many, left)
            sums |= (sums << many * sizes[i]) & mask
            left -= many
            many *= 2
        reached[i] = sums
    return reached


def _within(sizes, negative, counts, reached, room, spare, steps):
    """Every choice of pieces that fills `room` but for `spare` at most, as (waste, fill); those
    with long pieces first."""
    stack, window = [(0, room, ())], (1 << (spare + 1)) - 1
    while stack:
        i, left, chosen = stack.pop()
        i = max(i, bisect_left(negative, -left))
        if i == len(sizes):
            yield left, chosen
            continue
        steps.spend(1)
        beyond = reached[i + 1]
        for number in range(min(counts[i], left // sizes[i]) + 1):
            rest = left - number * sizes[i]
            if rest <= spare or beyond >> (rest - spare) & window:
                stack.append((i + 1, rest, (*chosen, (i, number)) if number else chosen))
