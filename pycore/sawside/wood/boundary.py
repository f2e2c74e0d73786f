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
