"""The search for a plan in whole numbers."""

from collections import Counter
from contextlib import suppress
from itertools import product

from sawside.boards.bounds import could_hold, least_cost
from sawside.boards.buying import by_cost, key
from sawside.boards.fills import OutOfStepsError, Steps
from sawside.boards.first_plans import NoRoomError
from sawside.boards.sheets.area_bounds import area_sums
from sawside.boards.sheets.filling import WAYS, fill
from sawside.boards.sheets.fullest import fullest
from sawside.boards.sheets.packing import ORDERS, pack
from sawside.boards.sheets.pattern_bounds import pattern_sums
from sawside.boards.sheets.rules import Rules
from sawside.boards.sheets.trees import offcuts, set_ups, used

_SHARE = 10
"""A method that may not help gets this part of the steps that are left."""

_MANY = 400
"""More than so many items are put in a few ways at first, so that there is an answer at once."""

_STRAIGHT = WAYS[0], WAYS[2], WAYS[1]
"""For items by area, by width (rips first) and by length (crosscuts first): of all ways these were
the best of each order in lists of 2,000."""

_ENOUGH = 10**12
"""Steps for what always ends soon."""


class _Buying:
    """What is on sale as `boards/buying` asks for it, areas in the place of lengths."""

    def __init__(self, exact):
        self.buys = tuple(length * width for length, width in exact.buys)
        self.costs = exact.costs
        self.counts = tuple(item.count for item in exact.items)


class Search:
    """After `run()` the `best` plan, [(("hand" or "buy", which), tree), …], and the `bound` in
    whole units of cost that no plan is below."""

    def __init__(self, exact, steps):
        self.exact, self.steps = exact, steps
        self.rules = Rules(exact.first, exact.stages, exact.handled)
        self.buying = _Buying(exact)
        self.order = [i for i, item in enumerate(exact.items) for _ in range(item.count)]
        number = len(self.order)
        self.hand = [
            ("hand", i)
            for i in sorted(range(len(exact.rooms)), key=lambda i: _area(exact.rooms[i]))
            for _ in range(min(exact.hand[i] or 0, number))
        ]
        self.sums = area_sums(exact)
        rooms = [exact.rooms[i] for _, i in self.hand]
        self.bound = least_cost(self.sums, rooms, exact.buys, exact.costs) or 0
        self.best = None

    def run(self):
        """First what is had at once, then what is found in the steps; raises `NoRoomError`."""
        self._at_once()
        with suppress(OutOfStepsError):
            self._improve()

    def room(self, place):
        """The room of the sheet at a place."""
        kind, i = place
        return (self.exact.rooms if kind == "hand" else self.exact.buys)[i]

    def _at_once(self):
        mains = range(len(self.exact.buys)) or (None,)
        failed, ways = None, tuple(product(ORDERS[:3], WAYS[:3]))
        if len(self.order) > _MANY:
            ways = tuple(zip(ORDERS, _STRAIGHT, strict=False))
        for main, (by, way) in product(mains, ways):
            try:
                self._keep(self._one_by_one(main, by, way))
            except NoRoomError as error:
                failed = error
        if self.best is None:
            found = pack(self.exact, self.order, self._rooms(self.hand), self.rules, self.steps)
            if found is None:
                raise failed
            self._keep(list(zip(self.hand, found, strict=True)))

    def _rooms(self, places):
        return [self.room(place) for place in places]

    def _one_by_one(self, main, by, way):
        """Sheets on hand, then those of one kind that are bought, each filled with what is left;
        of another kind where only that holds an item."""
        items, steps = self.exact.items, Steps(_ENOUGH)
        left = sorted(self.order, key=lambda i: (self._on_sale(i), by(items[i])))
        made, waiting = [], list(self.hand)
        while left:
            if waiting:
                place = waiting.pop(0)
            elif main is not None and self._holds(self.exact.buys[main], left[0]):
                place = "buy", main
            else:
                place = "buy", self._for_this(left[0])
            (tree,), rest = fill(items, left, [self.room(place)], self.rules, way, steps)
            if place[0] == "buy" and len(rest) == len(left):
                raise NoRoomError(left[:1])
            if len(rest) < len(left):
                made.append((place, tree))
            left = [left[number] for number in rest]
        return made

    def _on_sale(self, which):
        return any(self._holds(room, which) for room in self.exact.buys)

    def _for_this(self, which):
        kinds = [j for j, room in enumerate(self.exact.buys) if self._holds(room, which)]
        if not kinds:
            raise NoRoomError((which,))
        return min(kinds, key=lambda j: (self.exact.costs[j], self.buying.buys[j]))

    def _holds(self, room, which):
        _, left = fill(self.exact.items, [which], [room], self.rules, WAYS[0], Steps(_ENOUGH))
        return not left

    def _keep(self, made):
        """Keep a plan that is better than the best one so far."""
        made = self._smaller(made)
        if self.best is None or self._key(made) < self._key(self.best):
            self.best = made

    def _smaller(self, made):
        """Each sheet that is bought as the cheapest, then the smallest one that holds its items."""
        kinds = sorted(
            range(len(self.exact.buys)), key=lambda j: (self.exact.costs[j], self.buying.buys[j])
        )
        told = []
        for place, tree in made:
            if tree is None:
                continue
            if place[0] == "buy":
                place, tree = self._smallest(place, tree, kinds)
            told.append((place, tree))
        return told

    def _smallest(self, place, tree, kinds):
        items = sorted(used(tree))
        for j in kinds:
            if j == place[1]:
                break
            room = self.exact.buys[j]
            if _area(room) < sum(self.exact.items[i].area for i in items):
                continue
            for way in WAYS:
                (other,), left = fill(
                    self.exact.items, items, [room], self.rules, way, Steps(_ENOUGH)
                )
                if not left:
                    return ("buy", j), other
        return place, tree

    def _bought(self, made):
        places = Counter(i for (kind, i), _ in made if kind == "buy")
        return tuple(places[j] for j in range(len(self.exact.buys)))

    def _key(self, made):
        """By which plans are compared: cost, number and area of what is bought, the largest
        offcut in quarters of its sheet, how often fence or stop is set, how many parts are cut,
        how many cuts there are, the largest offcut."""
        kerf = self.exact.kerf
        left = [
            ((length - kerf) * (width - kerf), _area(self.room(place)))
            for place, tree in made
            for length, width in offcuts(tree, *self.room(place))
            if min(length, width) > kerf
        ]
        largest, sheet = max(left, default=(0, 1))
        work = [0, 0, 0]
        for _, tree in made:
            parts = list(set_ups(tree))
            work[0] += len({each for cuts in parts for each in cuts})
            work[1] += len(parts)
            work[2] += sum(map(len, parts))
        return *key(self.buying, self._bought(made)), -(4 * largest // sheet), *work, -largest

    def _improve(self):
        """The first set of sheets, from the cheapest on, that is found to hold all."""
        self._by_whole_sheets()
        for main in range(len(self.exact.buys)):
            if self._value() > self.bound:
                self._fullest_first(main)
        if self._value() > self.bound:
            self._raise_bound()
            self._by_whole_sheets()
        value = key(self.buying, self._bought(self.best))
        for bought in by_cost(self.buying, self.steps):
            this = key(self.buying, bought)
            if this >= value:
                break
            if this[0] < self.bound:
                continue
            places = [*self.hand, *(("buy", j) for j, n in enumerate(bought) for _ in range(n))]
            rooms = self._rooms(places)
            self.steps.spend(len(self.sums) // 4)
            if not could_hold(self.sums, Counter(rooms)):
                continue
            part = Steps(self.steps.left // 2)
            given = part.left
            found = pack(self.exact, self.order, rooms, self.rules, part)
            self.steps.left -= given - max(part.left, 0)
            if found:
                self._keep(list(zip(places, found, strict=True)))
                break
        self._one_large_offcut()

    def _value(self):
        return key(self.buying, self._bought(self.best))[0]

    def _by_whole_sheets(self):
        """Nobody buys half a sheet: the bound is what the first set of sheets costs of which no sum
        says that it is too little."""
        part = Steps(self.steps.left // _SHARE)
        given, value = part.left, self._value()
        rooms = Counter(self.room(place) for place in self.hand)
        with suppress(OutOfStepsError):
            for bought in by_cost(self.buying, part):
                cost = key(self.buying, bought)[0]
                sheets = Counter(self.exact.buys[j] for j, n in enumerate(bought) for _ in range(n))
                part.spend(len(self.sums) // 4)
                self.bound = min(max(self.bound, cost), value)
                if cost >= value or could_hold(self.sums, rooms + sheets):
                    break
        self.steps.left -= given - max(part.left, 0)

    def _raise_bound(self):
        """By prices of the items, as far as a part of the steps lasts."""
        part = Steps(self.steps.left // _SHARE)
        given, made = part.left, []
        rooms = [self.room(place) for place in self.hand]
        for sums in pattern_sums(self.exact, self.sums, part):
            made.append(sums)
            least = least_cost((sums,), rooms, self.exact.buys, self.exact.costs)
            self.bound = max(self.bound, least or 0)
            if self.bound >= self._value():
                break
        self.sums += tuple(made)
        self.steps.left -= given - max(part.left, 0)

    def _fullest_first(self, main):
        """Sheet after sheet as full as can be, where a part of the steps lasts for it."""
        items, part = self.exact.items, Steps(self.steps.left // _SHARE)
        given, made = part.left, []
        counts, waiting = [item.count for item in items], list(self.hand)
        with suppress(OutOfStepsError):
            while any(counts):
                place = waiting.pop(0) if waiting else ("buy", main)
                room = self.room(place)
                found, _ = fullest(items, counts, [item.area for item in items], room, part)
                if found is None and place[0] == "buy":
                    break
                tree = found and found.filling(room)
                if tree and self.rules.allow(tree, *room, items):
                    made.append((place, tree))
                    for i in used(tree):
                        counts[i] -= 1
                elif tree:
                    break
        if not any(counts):
            self._keep(made)
        self.steps.left -= given - max(part.left, 0)

    def _one_large_offcut(self):
        """The same sheets filled in other ways, for the largest offcut."""
        for by, way in product(ORDERS, WAYS):
            with suppress(NoRoomError):
                for main in range(len(self.exact.buys)) or (None,):
                    self.steps.spend(3 * len(self.order))
                    self._keep(self._one_by_one(main, by, way))


def _area(room):
    return room[0] * room[1]
