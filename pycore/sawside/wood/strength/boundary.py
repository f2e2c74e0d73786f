"""Where a condition that is checked exactly changes: a rational where it is one, else a real."""

from fractions import Fraction

from sawside.lengths.real import FIRST_BITS, Real, simplest_between


def boundary(excess, low, high):
    """The x between two rationals where `excess`, an exact function, is 0.

    `excess` changes its sign once between `low` and `high`; a zero that is a simple rational, as
    one that a person typed, is found as that.
    """
    rising = excess(low) <= 0

    def enclose(bits):
        """Bisection on the grid of 2**-bits."""
        left, right = (int(end * (1 << bits)) for end in (low, high))
        right += 1
        while right - left > 1:
            middle = (left + right) // 2
            if (excess(Fraction(middle, 1 << bits)) <= 0) == rising:
                left = middle
            else:
                right = middle
        return left, right

    ends = (Fraction(end, 1 << FIRST_BITS) for end in enclose(FIRST_BITS))
    simplest = simplest_between(*ends)
    return simplest if excess(simplest) == 0 else Real(enclose)


_CLOSE = Fraction(1, 2**20)


def near(excess, low, high):
    """As `boundary`, for an `excess` that is only near: within 2**-20, where it is at most 0.

    By the straight line between the ends, of which one that stays counts half as much (the Illinois
    method), and by halves at every fourth step.
    """
    ends, found = [low, high], [excess(low), excess(high)]
    stayed, step = None, 0
    while ends[1] - ends[0] > _CLOSE:
        step += 1
        part = Fraction(1, 2) if step % 4 == 0 else found[0] / (found[0] - found[1])
        place = round((ends[0] + (ends[1] - ends[0]) * part) / _CLOSE) * _CLOSE
        place = min(max(place, ends[0] + _CLOSE / 2), ends[1] - _CLOSE / 2)
        value = excess(place)
        moves = 0 if (value <= 0) == (found[0] <= 0) else 1
        ends[moves], found[moves] = place, value
        if stayed == 1 - moves:
            found[stayed] /= 2
        stayed = 1 - moves
    simplest = simplest_between(*ends)
    if excess(simplest) <= 0:
        return simplest
    return ends[0] if found[0] <= 0 else ends[1]
