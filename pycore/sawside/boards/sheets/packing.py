"""All items into given sheets, or none: filled in several ways, then again and again in part.

What is left over goes with all that is in a few of the sheets, these are filled anew in another
order, and that is kept where no more is left (ruin and recreate: G. Schrimpf and others, "Record
breaking optimization results using the ruin and recreate principle", Journal of Computational
Physics 159 (2000)).
"""

from contextlib import suppress
from itertools import product

from sawside.boards.fills import OutOfStepsError, Steps
from sawside.boards.sheets.filling import WAYS, fill
from sawside.boards.sheets.joining import Cover, strips
from sawside.boards.sheets.trees import used

ORDERS = (
    lambda item: -item.area,
    lambda item: (-item.width, -item.length),
    lambda item: (-item.length, -item.width),
    lambda item: (-max(item.length, item.width), -item.area),
    lambda item: (-item.length - item.width, -item.area),
)
"""In which order items are put in."""

_TIGHT = 50
"""Sheets of which less than one part in so many is wasted are joined from the bottom up."""

_FOR_STRIPS = 3
"""So many times the steps there are for these, of which half are gone then: few lists are so tight,
and they may take longer."""

_MOST_STRIPS = 2000
"""Strips that are looked for to choose from."""


class Draws:
    """Numbers as if drawn at random, the same ones every time (a linear congruence of D. E. Knuth,
    "The Art of Computer Programming" 2, 3.3.4)."""

    def __init__(self):
        self.state = 1

    def below(self, most):
        """One from 0 to below `most`."""
        self.state = (self.state * 6364136223846793005 + 1442695040888963407) % 2**64
        return (self.state >> 33) % most


def pack(exact, order, rooms, rules, steps):
    """A tree for each room, so that all items of `order` are in one of them; None where that is
    not found in the steps."""
    if not rooms:
        return None
    total = sum(exact.items[i].area for i in order)
    if total > sum(length * width for length, width in rooms):
        return None
    return (
        _joined(exact, order, rooms, rules, steps)
        or _Packing(exact, order, rooms, rules, steps).run()
    )


def _joined(exact, order, rooms, rules, steps):
    """From the bottom up, where hardly anything may be wasted."""
    area = rooms[0][0] * rooms[0][1]
    waste = len(rooms) * area - sum(exact.items[i].area for i in order)
    if len(set(rooms)) > 1 or waste * _TIGHT > area:
        return None
    counts = [0] * len(exact.items)
    for i in order:
        counts[i] += 1
    part = Steps(_FOR_STRIPS * steps.left)
    given = part.left
    found = strips(exact.items, counts, rooms[0], waste, part, _MOST_STRIPS)
    steps.left -= (given - max(part.left, 0)) // (2 * _FOR_STRIPS)

    def allow(tree):
        return rules.allow(tree, *rooms[0], exact.items)

    made = None
    with suppress(OutOfStepsError):
        part = Steps(steps.left // 2)
        given = part.left
        cover = Cover(found, counts, rooms[0], allow, part)
        made = cover.sheets(cover.lanes.most, len(rooms), waste)
    steps.left -= given - max(part.left, 0)
    return made


class _Packing:
    """The best filling so far: `trees` of the sheets, and what is `left`."""

    def __init__(self, exact, order, rooms, rules, steps):
        self.items, self.order, self.rooms = exact.items, order, rooms
        self.rules, self.steps, self.draws = rules, steps, Draws()
        self.trees, self.left, self.missing = [None] * len(rooms), list(order), None

    def run(self):
        """The trees once nothing is left, or None."""
        try:
            for by, way in product(ORDERS, WAYS):
                self._try(range(len(self.rooms)), sorted(self.order, key=self._by(by)), way)
                if not self.left:
                    return self.trees
            while self.left:
                self._again()
        except OutOfStepsError:
            return None
        return self.trees

    def _by(self, by):
        return lambda i: by(self.items[i])

    def _try(self, sheets, order, way):
        """Fill these sheets with these items; keep that where no more is left."""
        rooms = [self.rooms[place] for place in sheets]
        trees, left = fill(self.items, order, rooms, self.rules, way, self.steps)
        left = [order[number] for number in left]
        missing = sum(self.items[i].area for i in left)
        if self.missing is None or missing <= self.missing:
            self.missing, self.left = missing, left
            for place, tree in zip(sheets, trees, strict=True):
                self.trees[place] = tree

    def _again(self):
        number = min(1 + self.draws.below(3), len(self.rooms))
        sheets = []
        while len(sheets) < number:
            place = self.draws.below(len(self.rooms))
            if place not in sheets:
                sheets.append(place)
        order = list(self.left)
        for place in sheets:
            order += used(self.trees[place])
        by, noise = ORDERS[self.draws.below(len(ORDERS))], 1 + self.draws.below(60)
        ranks = {}
        for rank, i in enumerate(sorted(order, key=self._by(by))):
            ranks.setdefault(i, rank)
        shaken = sorted(
            order, key=lambda i: ranks[i] * 100 // noise + self.draws.below(len(order) + 1)
        )
        self._try(sheets, shaken, WAYS[self.draws.below(len(WAYS))])
