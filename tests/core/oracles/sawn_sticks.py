"""A plan of sticks sawn stick by stick, and small ones tried in every way.

Shares no code with the planner: a blade moves along each stick and eats its kerf.
"""

from collections import Counter
from fractions import Fraction
from itertools import combinations_with_replacement
from pathlib import Path

U120 = Path(__file__).parents[2] / "published/boards/u120.csv"


def sawn(length, pieces, kerf, trim):
    """What is left of a stick after these pieces, or a sentence about what does not come out."""
    blade, end = Fraction(trim), Fraction(length) - trim
    for piece in pieces:
        if blade + piece > end:
            return f"{piece} does not come out of {length} at {blade}"
        blade = min(blade + piece + kerf, end)
    return end - blade


def faults(request, plan):
    """What is wrong with a plan, as sentences: sizes, what is left, pieces, sticks, cost."""
    said, cut, used = [], Counter(), Counter()
    cost = Fraction(0)
    for stick in plan.sticks:
        lengths = [request.pieces[place].length for place in stick.pieces]
        left = sawn(stick.stock.length, lengths, request.kerf, request.trim)
        if left != stick.offcut:
            said.append(f"{left} is left of {stick}")
        if not stick.pieces:
            said.append(f"nothing comes out of {stick}")
        cut.update(stick.pieces)
        used[stick.stock, stick.bought] += 1
        if stick.bought:
            cost += 1 if any(each.price is None for each in request.to_buy) else stick.stock.price
    wanted = Counter({place: piece.count for place, piece in enumerate(request.pieces)})
    if cut != +wanted:
        said.append(f"cut {cut}, wanted {wanted}")
    for (stock, bought), number in used.items():
        there = request.to_buy if bought else request.on_hand
        most = None if bought else sum(each.count for each in there if each == stock)
        if stock not in there or (most is not None and number > most):
            said.append(f"{number} of {stock}")
    if cost != plan.value:
        said.append(f"{plan.value} is not {cost}")
    if plan.bound > plan.value:
        said.append(f"{plan.value} is less than the bound {plan.bound}")
    return said


def least(pieces, hand, lengths, costs, kerf, trim):
    """What has to be bought at least, by trying every set of sticks; for a few pieces only.

    `pieces` and `hand` are lists of lengths, each once.
    """
    if _go_in(sorted(pieces, reverse=True), [each - 2 * trim for each in hand], kerf):
        return Fraction(0)
    best = None
    for number in range(1, len(pieces) + 1):
        for bought in combinations_with_replacement(range(len(lengths)), number):
            cost = sum(costs[each] for each in bought)
            sticks = [*hand, *(lengths[each] for each in bought)]
            if best is not None and cost >= best:
                continue
            if _go_in(sorted(pieces, reverse=True), [each - 2 * trim for each in sticks], kerf):
                best = cost
    return best


def _go_in(pieces, rests, kerf):
    if not pieces:
        return True
    for place in range(len(rests)):
        rest = rests[place]
        if rest >= pieces[0] and rest not in rests[:place]:
            after = [*rests[:place], max(rest - pieces[0] - kerf, Fraction(0)), *rests[place + 1 :]]
            if _go_in(pieces[1:], after, kerf):
                return True
    return False


def cut_apart(random, sticks, length, kerf, parts=64):
    """Pieces that so many sticks were sawn into without a rest, so that no fewer will do."""
    pieces = []
    for _ in range(sticks):
        number = random.randint(2, 5)
        room = int((length - (number - 1) * kerf) * parts)
        cuts = sorted(random.sample(range(1, room), number - 1))
        pieces += [
            Fraction(end - start, parts)
            for start, end in zip([0, *cuts], [*cuts, room], strict=True)
        ]
    random.shuffle(pieces)
    return pieces


def published():
    """(name, sizes, room, the known number of sticks) of each set of the published class u120."""
    for line in U120.read_text().splitlines():
        if not line.startswith("#"):
            name, room, best, sizes = line.split(";")
            yield name, [Fraction(size) for size in sizes.split()], Fraction(room), int(best)


def triplets(random, sticks):
    """Sizes of which three always fill a stick of 1000, and no two or four do: as E. Falkenauer,
    "A Hybrid Grouping Genetic Algorithm for Bin Packing", 1996, made his."""
    sizes = []
    for _ in range(sticks):
        first = random.randint(380, 490)
        second = random.randint(250, (1000 - first) // 2)
        sizes += [first, second, 1000 - first - second]
    random.shuffle(sizes)
    return sizes


def first_fit_decreasing(sizes, room):
    """How many sticks the oldest rule takes: the longest first, each into the first with room."""
    rests = []
    for size in sorted(sizes, reverse=True):
        place = next((i for i, rest in enumerate(rests) if rest >= size), None)
        if place is None:
            rests.append(room - size)
        else:
            rests[place] -= size
    return len(rests)
