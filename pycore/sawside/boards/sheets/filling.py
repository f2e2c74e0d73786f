"""Sheets filled from the top down: each item into the part, left over so far, that it fits best.

With one order of items, one way of judging a fit and one of splitting what is left, this is had at
once: the rules of J. Jylänki, "A thousand ways to pack the bin" (2010), for edge-to-edge cuts;
with rips always first and items by width they are the shelves of F. K. R. Chung, M. R. Garey,
D. S. Johnson, "On packing two-dimensional bins", SIAM Journal on Algebraic and Discrete Methods 3
(1982).
"""

from dataclasses import dataclass

from sawside.boards.sheets.trees import chain


@dataclass(frozen=True, slots=True)
class Way:
    """How to fill: `fit` judges a part by its "area", its "short" or its "long" side left over;
    `split` divides one side first, 0 or 1, or None: so that the larger rest is as large as can
    be."""

    fit: str = "area"
    split: int | None = None


WAYS = tuple(Way(fit, split) for fit in ("short", "area", "long") for split in (None, 0, 1))


class _Open:
    """A part that may still be cut; once it is, by `along` at `at` into `takes` and `leaves`."""

    __slots__ = ("along", "at", "item", "leaves", "length", "state", "takes", "width")

    def __init__(self, length, width, state):
        self.length, self.width, self.state = length, width, state
        self.along = self.item = None

    def cut(self, along, at, state):
        """Cut it; what comes off."""
        self.along, self.at = along, at
        if along == 0:
            self.takes = _Open(at, self.width, state)
            self.leaves = _Open(self.length - at, self.width, state)
        else:
            self.takes = _Open(self.length, at, state)
            self.leaves = _Open(self.length, self.width - at, state)
        return self.takes

    def tree(self):
        """The tree of cuts below it."""
        if self.item is not None:
            return self.item
        if self.along is None:
            return None
        rest = (self.length, self.width)[self.along] - self.at
        return chain(self.along, ((self.at, self.takes.tree()), (rest, self.leaves.tree())))


def fill(items, order, rooms, rules, way, steps):
    """The sheets, of these `rooms`, with the items that are named in `order`, one after the other:
    (a tree for each room, the places in `order` of what did not fit)."""
    sheets = [_Open(*room, (0, None)) for room in rooms]
    free, left, hopeless = list(sheets), [], set()
    least = min(min(items[which].length, items[which].width) for which in {*order}) if order else 0
    shorter, longer = _most(free)
    for number, which in enumerate(order):
        if which in hopeless:
            left.append(number)
            continue
        steps.spend(1 + len(free))
        item = items[which]
        small = min(item.length, item.width) <= shorter and max(item.length, item.width) <= longer
        best = _best(free, item, rules, way) if small else None
        if best is None:
            left.append(number)
            hopeless.add(which)
            continue
        _, place, turned, cuts = best
        part = free.pop(place)
        for along, at, state in cuts:
            taken = part.cut(along, at, state)
            if part.leaves.length >= least and part.leaves.width >= least:
                free.append(part.leaves)
            part = taken
        part.item = ("item", which, turned)
        shorter, longer = _most(free)
    return [sheet.tree() for sheet in sheets], left


def _most(parts):
    """What no item is beyond that goes in: the largest short side, and the largest long one."""
    sides = [(part.length, part.width) for part in parts]
    return max(map(min, sides), default=0), max(map(max, sides), default=0)


def _best(free, item, rules, way):
    best = None
    sides = ((item.length, item.width, False), (item.width, item.length, True))
    for place, part in enumerate(free):
        for length, width, turned in sides if item.turns else sides[:1]:
            more, beside = part.length - length, part.width - width
            if more < 0 or beside < 0:
                continue
            if way.fit == "short":
                left = min(more, beside)
            elif way.fit == "long":
                left = max(more, beside)
            else:
                left = part.length * part.width - length * width
            if best is None or left < best[0]:
                cuts = _cuts(part, length, width, item, rules, way.split)
                if cuts is not None:
                    best = left, place, turned, cuts
    return best


def _cuts(part, length, width, item, rules, split):
    """The cuts that free a rectangle in the corner, as (side divided, at, state after); None where
    the rules bar every way."""
    more, beside = part.length - length, part.width - width
    if more and beside:
        if split is None:
            crosscut_first = max(more * part.width, length * beside)
            rip_first = max(part.length * beside, more * width)
            split = 0 if crosscut_first >= rip_first else 1
        orders = ((split, 1 - split), (1 - split, split))
    else:
        orders = ((0,),) if more else ((1,),) if beside else ((),)
    for order in orders:
        cuts = _allowed(part, (length, width), order, rules)
        if cuts is not None and _may_be_block(cuts, part, item, rules):
            return cuts
    return None


def _allowed(part, wanted, order, rules):
    state, size, cuts = part.state, [part.length, part.width], []
    for along in order:
        state = rules.after(state, along, *size)
        if state is None:
            return None
        cuts.append((along, wanted[along], state))
        size[along] = wanted[along]
    return cuts


def _may_be_block(cuts, part, item, rules):
    state = cuts[-1][2] if cuts else part.state
    return item.tree is None or rules.block(state, item)
