"""Openings that get smaller from the bottom up, by a constant step or by a constant ratio.

Every function gives all `terms` openings from the bottom up, exactly (`Real` where a ratio is
irrational), whatever sign or order they come out in; ValueError where there are none at all.
"""

from sawside.lengths.roots import ratio_of_sum, root


class Step:
    """Each opening is the one below less the step (inches)."""

    @staticmethod
    def from_lowest(lowest, step, terms):
        return [lowest - power * step for power in range(terms)]

    @staticmethod
    def from_highest(highest, step, terms):
        return [highest + power * step for power in reversed(range(terms))]

    @staticmethod
    def between(lowest, highest, terms):
        return Step.from_lowest(lowest, (lowest - highest) / (terms - 1), terms)

    @staticmethod
    def filling(clear, step, terms):
        """Openings that add up to `clear`, whose mean is that of the lowest and the highest."""
        return Step.from_highest(clear / terms - step * (terms - 1) / 2, step, terms)

    @staticmethod
    def filling_from_lowest(clear, lowest, terms):
        return Step.between(lowest, 2 * clear / terms - lowest, terms)

    @staticmethod
    def filling_from_highest(clear, highest, terms):
        return Step.between(2 * clear / terms - highest, highest, terms)


class Ratio:
    """Each opening is the ratio (a number from 0 to 1) of the one below."""

    @staticmethod
    def from_lowest(lowest, ratio, terms):
        openings = [lowest]
        for _ in range(terms - 1):
            openings.append(openings[-1] * ratio)
        return openings

    @staticmethod
    def from_highest(highest, ratio, terms):
        return Ratio.from_lowest(highest, 1 / ratio, terms)[::-1]

    @staticmethod
    def between(lowest, highest, terms):
        """Geometric means: each a root by itself, so that rational ones stay rational."""
        last = terms - 1
        return [root(lowest ** (last - n) * highest**n, last) for n in range(terms)]

    @staticmethod
    def filling(clear, ratio, terms):
        return Ratio.from_lowest(clear / sum(ratio**n for n in range(terms)), ratio, terms)

    @staticmethod
    def filling_from_lowest(clear, lowest, terms):
        return Ratio.from_lowest(lowest, ratio_of_sum(terms, clear / lowest), terms)

    @staticmethod
    def filling_from_highest(clear, highest, terms):
        growth = ratio_of_sum(terms, clear / highest)
        return Ratio.from_lowest(highest, growth, terms)[::-1]
