"""The sources of one wood by their size, and what can be bought of each size at which price."""

from fractions import Fraction

_MISSING = 10**6
"""Times the dearest board: what one costs that there is not, so that it is the last resort."""


def by_size(wood, size):
    """({size: the sources on hand}, {size: (what one costs, what makes one)}), large ones first;
    of equal ones on sale the cheapest."""
    hand, sale = {}, {}
    for source in wood.hand:
        hand.setdefault(size(source), []).append(source)
    for price, make, source in wood.sale:
        if size(source) not in sale or price < sale[size(source)][0]:
            sale[size(source)] = price, make
    return tuple(dict(sorted(each.items(), reverse=True)) for each in (hand, sale))


def to_buy(hand, sale, unheld, priced):
    """(sizes, prices) of what can be bought. Where some pieces (`unheld`) only go into what is on
    hand, of which there may be too little, as much of it as is missing can be had at a price that
    nobody pays; what comes out of that is left."""
    if not sale:
        return list(hand), [None] * len(hand)
    if not unheld:
        return list(sale), [price if priced else None for price, _ in sale.values()]
    dear = max(max(price for price, _ in sale.values()), Fraction(1)) * _MISSING
    missing = [size for size in hand if size not in sale]
    prices = [price for price, _ in sale.values()]
    return [*sale, *missing], prices + [dear] * len(missing)


def take(made, hand, sale, size, bought, pieces):
    """The source that pieces come out of; None where there is none, and they are left."""
    if not bought:
        return hand[size].pop(0)
    if size not in sale:
        for number in pieces:
            made.left[number] = made.left.get(number, 0) + 1
        return None
    price, make = sale[size]
    made.bought += 1
    made.cost += price
    return make()
