"""What goes together into one stick, from the fullest on.

The sums that pieces can come to are the ones of a binary number: those of one piece more are the
same number or-ed with itself, moved up by that piece.
"""

from bisect import bisect_left
from itertools import islice

_BITS_A_STEP = 12
"""Of a binary number this long (as a power of 2), an act takes about a step more."""


class OutOfStepsError(Exception):
    """The steps that were given are used up."""


class Steps:
    """A budget that is the same on every machine: steps of work, not seconds.

    What is done with so many steps is planned by `left`; `rest` is how many there truly are. So
    with more of them the same is done, and goes on where it would have ended.
    """

    def __init__(self, most, rest=None):
        self.left = most
        self.rest = most if rest is None else rest

    def spend(self, number):
        """Take some away; raises `OutOfStepsError` where there are no more."""
        self.left -= number
        self.rest -= number
        if self.left < 0 or self.rest < 0:
            raise OutOfStepsError

    def part(self, most):
        """So many of them, for a part of the work; `charge` takes away what it used."""
        return Steps(most, self.rest)

    def charge(self, part, most):
        """Take away what `part` used of the `most` that it had."""
        self.left -= most - max(part.left, 0)
        self.rest = part.rest


def fills(sizes, counts, room, most_waste, steps):
    """Yield (waste, ((index, how many), …)) of what fits into `room`, by its waste.

    Of two fills where one long piece could stand for all of the other, only the one with the long
    piece is given, and none to which a piece could be added (dominance, of S. Martello, P. Toth,
    "Knapsack problems", 1990, 8.4). The best of them, taken stick after stick, is the heuristic
    MBS' of K. Fleszar, K. Hindi, "New heuristics for one-dimensional bin-packing", Computers &
    Operations Research 29 (2002).
    """
    there = _There(sizes, counts, room)
    if not there.sizes:
        if room <= most_waste:
            yield room, ()
        return
    there.reach(room, steps)
    longest = there.sizes[0]
    low = max(room - most_waste, longest)
    sums = there.reached[0] >> low
    while sums:
        target = low + sums.bit_length() - 1
        sums ^= 1 << (target - low)
        if target == longest:
            yield room - target, ((there.places[0], 1),)
        else:
            for _, fill in there.within(target, 0, steps):
                yield room - target, fill


def long_first(sizes, counts, room, spare, steps):
    """Yield (waste, fill) of what fills `room` but for `spare` at most, the longest pieces first.

    What is filled to the last bit uses up the short pieces, and the long ones then don't go
    together: some waste at each stick avoids that (relaxed MBS', of the same paper as `fills`).
    """
    there, spare = _There(sizes, counts, room), min(spare, room)
    there.reach(room, steps)
    if there.reached[0] >> (room - spare):
        yield from there.within(room, spare, steps)


def all_fills(sizes, counts, room, most_waste, most, steps):
    """Every (waste, fill) of a room that wastes so much at most, the fullest first; None where
    there are more than `most`."""
    there = _There(sizes, counts, room)
    there.reach(room, steps)
    found = list(islice(there.within(room, min(most_waste, room), steps), most + 1))
    return sorted(found, key=lambda each: each[0]) if len(found) <= most else None


def sums_of(sizes, counts, room, steps):
    """What pieces can come to together, up to `room`, as bits of a number."""
    there = _There(sizes, counts, room)
    there.reach(room, steps)
    return there.reached[0]


class _There:
    """The pieces that are left and go into a room: their places among all, sizes and counts."""

    def __init__(self, sizes, counts, room):
        self.places = [i for i, n in enumerate(counts) if n and sizes[i] <= room]
        self.sizes = [sizes[i] for i in self.places]
        self.counts = [counts[i] for i in self.places]
        self.reached = []

    def reach(self, room, steps):
        """For each place: the sums up to `room` of the pieces from there on, as bits."""
        steps.spend(1 + len(self.sizes) * (3 + (room >> _BITS_A_STEP)))
        mask, sums = (1 << (room + 1)) - 1, 1
        self.reached = [sums]
        for size, left in zip(reversed(self.sizes), reversed(self.counts), strict=True):
            many = 1
            while left:
                many = min(many, left)
                sums |= (sums << many * size) & mask
                left -= many
                many *= 2
            self.reached.append(sums)
        self.reached.reverse()

    def within(self, room, spare, steps):
        """Every choice of pieces that fills `room` but for `spare` at most, as (waste, fill);
        those with long pieces first."""
        sizes, counts, reached = self.sizes, self.counts, self.reached
        negative = [-size for size in sizes]
        stack, window = [(0, room, ())], (1 << (spare + 1)) - 1
        while stack:
            i, left, chosen = stack.pop()
            i = max(i, bisect_left(negative, -left))
            if i == len(sizes):
                yield left, chosen
                continue
            steps.spend(1 + (room >> _BITS_A_STEP))
            beyond = reached[i + 1]
            for number in range(min(counts[i], left // sizes[i]) + 1):
                rest = left - number * sizes[i]
                if rest <= spare or beyond >> (rest - spare) & window:
                    more = (*chosen, (self.places[i], number)) if number else chosen
                    stack.append((i + 1, rest, more))
