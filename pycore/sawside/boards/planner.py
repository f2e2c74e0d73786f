"""The plan that buys least: what is had at once, then better ones, then the proof.

The number of sticks (or their cost) is looked for from the least that any plan needs
(`bounds`): the first set of sticks that holds all pieces is the best one, if every set before it
was proved not to. The search has so many steps; a plan that is not proved says how far it can be
from the best. The same request and steps give the same plan on every machine.
"""

from collections import Counter
from contextlib import suppress
from dataclasses import replace
from itertools import chain

from sawside.boards.bounds import all_sums, could_hold, least_cost
from sawside.boards.buying import by_cost, by_length, key
from sawside.boards.completion import pack
from sawside.boards.fills import OutOfStepsError, Steps
from sawside.boards.first_plans import NoRoomError, first_fit, fullest_first, longest_on_sale
from sawside.boards.longest import longest_offcut
from sawside.boards.offcuts import tidied
from sawside.boards.slants import low_models, safe_models
from sawside.boards.told import Plan, goes_in, told
from sawside.boards.whole import whole

STEPS = 400_000
"""Steps of a plan that somebody waits for: enough for the published lists of the tests, but for the
hardest class, of which 23 of 28 take one stick more than they must. Of the bench's lists, 60 to 200
pieces each, none took more than 0.47 s of a processor in Pyodide; a busy one has it for longer."""

_FINE = 1 << 14
"""Units in the longest stick up to which sums of pieces are looked at one by one."""

_SHARE = 4

_FOR_OFFCUTS = 4
"""So many times as many steps as for the longest offcut."""


_FIRST, _TIMES = 40_000, 4
"""Steps of the first round, and how many times as many each round after it has."""


def plan(request, most_steps=STEPS):
    """The best plan that is found in so many steps; with more of them it is never a worse one.

    Raises `NoRoomError` where a piece goes into no stick, or where those too long for what is on
    sale don't go into what is on hand (or were not found to).
    """
    search = _Search(request)
    search.run(most_steps)
    exact = search.exact
    bound = min(search.bound, search.value[0])
    filled, longest = _with_longest_offcut(request, search, most_steps // _FOR_OFFCUTS)
    return Plan(
        told(request, exact, filled),
        search.value[0] * exact.cost_unit,
        bound * exact.cost_unit,
        longest,
    )


def _with_longest_offcut(request, search, most_steps):
    exact, filled = search.exact, search.best
    bought = [place for place in filled if place[0][0] == "buy"]
    if not (request.least and bought and search.is_exact):
        return filled, False
    worth = (request.least + request.kerf) / exact.unit
    with suppress(OutOfStepsError):
        filled, sure = longest_offcut(exact, filled, Steps(most_steps), worth)
        sure = sure and len(filled) == len(bought) and len(request.to_buy) == 1
        return filled, sure
    return filled, False


class _Search:
    """The search in whole numbers: after `run()` the `best` sticks filled, by `exact`, and the
    `bound` that no plan is below, unless that is already above the best.

    `exact` is what always goes in, `low` what no plan takes less than; without miters they are the
    same.
    """

    def __init__(self, request):
        self.request = request
        self.steps, self.best, self.cut_short = Steps(0), None, False
        self.ways = [whole(request, model) for model in safe_models(request)]
        self._by(self.ways[0])
        square = all(piece.square for piece in request.pieces)
        lows = [self.exact] if square else [whole(request, each) for each in low_models(request)]
        bounds = [_bound(low) for low in lows]
        self.bound = max(bounds)
        self.low = lows[bounds.index(self.bound)]
        self.loose = _on_grid(self.low, up=True)
        self.is_exact = self.coarse is self.low
        self.sums = _sums(self.low)
        self.low_rooms = Counter(_hand_rooms(self.low))

    def _by(self, exact):
        self.exact, self.hand = exact, exact.hand
        self.coarse = _on_grid(exact, up=False)

    def run(self, most_steps):
        """First what is had at once, then what is found in the steps, in rounds of more and more:
        each does the same whatever there is after it. Raises `NoRoomError`."""
        self._at_once()
        rest, given = most_steps, _FIRST
        while rest > 0 and self.bound < self.value[0]:
            self.steps, self.cut_short = Steps(given, rest), False
            with suppress(OutOfStepsError):
                if self._by_low():
                    return
                self._improve()
                if not self.cut_short:
                    return
            rest, given = self.steps.rest, given * _TIMES

    def _at_once(self):
        """The plans that are had at once, by each way of adding up; the best one stays."""
        found = []
        for exact in self.ways:
            self._by(exact)
            self.best = None
            with suppress(NoRoomError):
                self._at_once_by_this()
                found.append((self.value, exact, self.best))
        if not found:
            raise NoRoomError(())
        _, exact, best = min(found, key=lambda each: each[0])
        self._by(exact)
        self.best = best

    def _at_once_by_this(self):
        mains = range(max(len(self.exact.buys), 1))
        ways = [(fullest_first, self.coarse, main) for main in mains]
        for make, given, *main in ((first_fit, self.exact), *ways):
            with suppress(NoRoomError):
                self._keep(make(given, self.hand, *main))
        if self.best is None:  # what just goes in may not on the grid
            self._keep(fullest_first(self.exact, self.hand, None))

    def _keep(self, filled):
        """Keep a plan that is better than the best one so far; whether it is."""
        filled = tidied(self.exact, self.hand, filled)
        is_better = self.best is None or key(self.exact, self._bought(filled)) < self.value
        if is_better:
            self.best = filled
        return is_better

    def _bought(self, filled):
        places = Counter(i for (kind, i), _ in filled if kind == "buy")
        return tuple(places[j] for j in range(len(self.exact.buys)))

    @property
    def value(self):
        """The `key` of the best plan so far."""
        return key(self.exact, self._bought(self.best))

    def _improve(self):
        if any(cost != 1 for cost in self.exact.costs):
            self._try(by_cost(self.exact, self.steps))
        elif self.exact.buys:
            longest = longest_on_sale(self.exact)
            self._fewer(longest)
            numbers = range(self.bound, self.value[0] + 1)
            self._try(_all_of(longest, n, len(self.exact.buys)) for n in numbers)
            number = self.value[0]
            if len(self.exact.buys) > 1 and number:
                self._try(by_length(self.exact, number, self.steps), sure=False)

    def _by_low(self):
        """Where pieces are mitered in several ways what adds up may be too safe: the fewest sticks
        by what is sure to be needed, if the pieces go in as they are laid. Whether they do: then
        `exact` no longer says what goes in, and there is no more to search."""
        if len(self.ways) == 1 or any(cost != 1 for cost in self.low.costs) or not self.low.buys:
            return False
        longest, given = longest_on_sale(self.low), _on_grid(self.low, up=False)
        for number in range(self.bound, self.value[0]):
            bought = _all_of(longest, number, len(self.low.buys))
            found = self._packed(bought, given, self.steps.left // _SHARE)
            if found and goes_in(self.request, self.low, found):
                self._by(self.low)
                self.best = found
                return True
        return False

    def _fewer(self, longest):
        """One stick less, as long as there is such a plan: no proof, but soon better."""
        while (number := self.value[0] - 1) >= self.bound:
            bought = _all_of(longest, number, len(self.exact.buys))
            found = self._packed(bought, self.coarse, self.steps.left // _SHARE)
            if not (found and self._keep(found)):
                return

    def _try(self, sets, sure=True):
        """Keep the plan of the first set of sticks that holds all. While it is `sure` that no set
        before holds them, each raises the bound."""
        for bought in sets:
            value = key(self.exact, bought)
            if sure:
                self.bound = max(self.bound, value[0])
            if value >= self.value:
                return
            if value[0] < self.bound:
                continue
            self.steps.spend(len(self.sums) // 4)
            sticks = Counter(self.low_rooms)
            for room, number in zip(self.low.buys, bought, strict=True):
                sticks.update({room: number} if number else ())
            if not could_hold(self.sums, sticks):
                continue
            most = self.steps.left // _SHARE * (_SHARE - 1)
            found = self._packed(bought, self.coarse, most)
            if found:
                self._keep(found)
                return
            sure = sure and found is False and self._cannot(bought)

    def _cannot(self, bought):
        """Whether no rounding hid a way to put all pieces in."""
        return self.is_exact or (self._packed(bought, self.loose, self.steps.left // 2) is False)

    def _packed(self, bought, given, most):
        """All pieces in those on hand and these: the filled sticks; False or None as `pack`."""
        places = {}
        for kind, rooms, numbers in (
            ("hand", given.rooms, given.hand),
            ("buy", given.buys, bought),
        ):
            for i, (room, number) in enumerate(zip(rooms, numbers, strict=True)):
                places.setdefault(room, []).extend([(kind, i)] * number)
        sticks = {room: len(those) for room, those in places.items() if those}
        part = self.steps.part(most)
        sums = self.sums if given is self.low else _sums(given)
        found = pack(given.sizes, given.counts, sticks, part, sums)
        self.steps.charge(part, most)
        self.cut_short = self.cut_short or found is None
        return found and [(places[room].pop(0), fill) for room, fill in found]


def _sums(exact):
    rooms = [room for room in (*exact.rooms, *exact.buys) if room]
    return all_sums(exact.sizes, exact.counts, rooms or [1])


def _hand_rooms(exact):
    return [room for room, n in zip(exact.rooms, exact.hand, strict=True) for _ in range(n) if room]


def _bound(low):
    return least_cost(_sums(low), _hand_rooms(low), low.buys, low.costs) or 0


def _all_of(place, number, lengths):
    return tuple(number if j == place else 0 for j in range(lengths))


def _on_grid(exact, up):
    """The request on a grid that is not too fine: sticks rounded up and pieces down, so that what
    does not go in never does, or the other way about, so that what goes in always does."""
    longest = max(chain(exact.rooms, exact.buys), default=0)
    by = -(-longest // _FINE) if longest else 1
    if by == 1:
        return exact
    sizes, sticks = (
        ((lambda each: each // by), (lambda each: -(-each // by)))
        if up
        else ((lambda each: -(-each // by)), (lambda each: each // by))
    )
    return replace(
        exact,
        sizes=tuple(map(sizes, exact.sizes)),
        rooms=tuple(map(sticks, exact.rooms)),
        buys=tuple(map(sticks, exact.buys)),
    )
