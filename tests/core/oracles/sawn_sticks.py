"""A plan of sticks sawn stick by stick, and small ones tried in every way.

Shares no code with the planner: a blade moves along each stick and eats its kerf.
"""

from collections import Counter
from fractions import Fraction
from itertools import combinations_with_replacement, pairwise
from pathlib import Path

PUBLISHED = Path(__file__).parents[2] / "published/boards"


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
        said += section_faults(request, stick)
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


def section_faults(request, stick):
    """Each stretch of good wood of a stick sawn by itself, as sentences."""
    good = list(good_stretches(stick.stock, request.kerf, request.trim))
    if good != [(each.start, each.end) for each in stick.sections]:
        yield f"{good} is good of {stick}"
    in_order = tuple(laid.place for section in stick.sections for laid in section.laid)
    if in_order != stick.pieces:
        yield f"{in_order} is not {stick.pieces}"
    for section in stick.sections:
        lengths = [request.pieces[laid.place].length for laid in section.laid]
        left = sawn(section.end - section.start, lengths, request.kerf, 0)
        if left != section.left:
            yield f"{left} is left of {section}"


def good_stretches(stock, kerf, trim):
    """What is neither trimmed nor within a kerf of bad wood: looked at between each two places
    where that can change."""
    bad = [(start - kerf, end + kerf) for start, end in stock.bad if end > 0]
    bad = [each for each in bad if each[0] + kerf < stock.length]
    first, last = Fraction(trim), stock.length - trim
    places = sorted({first, last, *(p for each in bad for p in each if first < p < last)})
    for start, end in pairwise(places):
        if not any(one < (start + end) / 2 < other for one, other in bad) and first < last:
            yield start, end


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


def published(name):
    """(name, sizes, room, the known number of sticks) of each set of a published class."""
    for line in (PUBLISHED / f"{name}.csv").read_text().splitlines():
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


def longest_offcut(pieces, sticks, kerf, trim):
    """The longest piece that is left of any of these sticks, by trying every way of filling all."""
    rests = [stick.stock.length - 2 * trim for stick in sticks]
    return max(max(left) for left in _ways(sorted(pieces, reverse=True), tuple(rests), kerf))


def _ways(pieces, rests, kerf):
    """What is left of each stick, in every way in which all pieces go in."""
    ends = {rests}
    for piece in pieces:
        ends = {
            tuple(sorted((*rests[:i], max(rest - piece - kerf, Fraction(0)), *rests[i + 1 :])))
            for rests in ends
            for i, rest in enumerate(rests)
            if rest >= piece
        }
    return ends
