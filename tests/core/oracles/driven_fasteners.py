"""A fastener in two boards as intervals along it, and bits and stock lengths by plain search.

Shares no code with the questions. Inches, exact.
"""

from fractions import Fraction


def wood_bitten(over, under, sink, long):
    """(wood of the second board along the fastener, wood of it past the tip; below 0 outside)."""
    tip, face = sink + long, over + under
    return max(Fraction(0), min(tip, face) - max(sink, over)), face - tip


def stock_length(sold, over, under, sink, spare, wanted):
    """The shortest of `sold` from `wanted` up whose tip keeps `spare` away from the far face, else
    the longest that does; None where none of them leaves the first board."""
    staying = [each for each in sold if wood_bitten(over, under, sink, each)[1] >= spare]
    best = None
    for each in sorted(staying):
        best = each
        if each >= wanted:
            break
    return best if best and wood_bitten(over, under, sink, best)[0] > 0 else None


def _bits(step, most=3):
    bit = step
    while bit <= most:
        yield bit
        bit += step


def first_bit_through(shank, step):
    """The first bit of a set that is thicker than a shank, which has to slip through."""
    return next(each for each in _bits(step) if each > shank)


def nearest_bit(wanted, root, step):
    """The bit nearest to `wanted` of those no thicker than `root`, the thinner of two; or None."""
    found = [each for each in _bits(step) if each <= root]
    return min(found, key=lambda each: (abs(each - wanted), each), default=None)


def thickest_bit(most, step):
    """The thickest bit up to `most`, or None."""
    return max((each for each in _bits(step) if each <= most), default=None)
