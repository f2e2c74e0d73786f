"""Which boards make up a width: the fewest that do, and of those the ones with the least over."""

from itertools import combinations


def fewest(widths, needed):
    """The places of the chosen boards in `widths`, or None where all of them are too narrow.

    As few as will do, then the least width together, then the first. For a dozen boards at most.
    """
    if sum(widths) < needed:
        return None
    for number in range(1, len(widths) + 1):
        enough = [
            (total, places)
            for places in combinations(range(len(widths)), number)
            if (total := sum(widths[place] for place in places)) >= needed
        ]
        if enough:
            return min(enough)[1]
    return None
