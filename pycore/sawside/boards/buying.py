"""Which sticks to buy: sets of them in the order in which one would want them."""

from heapq import heappop, heappush
from itertools import pairwise


def by_cost(whole, steps):
    """Yield how many of each length to buy, the cheapest set first, then the fewest, then the
    shortest; none of more sticks than there are pieces."""
    yield from _growing(whole, steps, (0,) * len(whole.buys), _added)


def by_length(whole, number, steps):
    """Yield the sets of so many sticks, the shortest first."""
    shortest = min(range(len(whole.buys)), key=lambda j: whole.buys[j])
    start = tuple(number if j == shortest else 0 for j in range(len(whole.buys)))
    yield from _growing(whole, steps, start, _lengthened)


def key(whole, bought):
    """By which sets are compared: what they cost, how many, how long."""
    return tuple(
        sum(each * count for each, count in zip(values, bought, strict=True))
        for values in (whole.costs, [1] * len(bought), whole.buys)
    )


def _growing(whole, steps, start, nexts):
    heap, seen = [(key(whole, start), start)], {start}
    while heap:
        _, bought = heappop(heap)
        steps.spend(2 + len(bought))
        yield bought
        for more in nexts(whole, bought):
            if more not in seen:
                seen.add(more)
                heappush(heap, (key(whole, more), more))


def _added(whole, bought):
    """One stick more, as long as there is a piece for each."""
    if sum(bought) == sum(whole.counts):
        return
    for j in range(len(bought)):
        yield (*bought[:j], bought[j] + 1, *bought[j + 1 :])


def _lengthened(whole, bought):
    """One stick swapped for the next longer length."""
    order = sorted(range(len(bought)), key=lambda j: whole.buys[j])
    for short, long in pairwise(order):
        if bought[short]:
            more = list(bought)
            more[short] -= 1
            more[long] += 1
            yield tuple(more)
