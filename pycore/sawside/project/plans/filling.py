"""Pieces of one wood into the boards that there are, and into those that have to be bought."""

from dataclasses import dataclass, field, replace
from fractions import Fraction
from functools import lru_cache

from sawside.boards.breaking_down import of_sheet, of_stick
from sawside.boards.first_plans import NoRoomError
from sawside.boards.planner import plan
from sawside.boards.request import Piece, Request, Stock
from sawside.boards.sheets.planner import plan_sheets
from sawside.boards.sheets.request import Panel, Sheet, SheetRequest
from sawside.project.plans.by_size import by_size, take, to_buy
from sawside.project.plans.wood import WIDEST_BOARD

STEPS = (30_000, 150_000, 750_000, 3_000_000, 12_000_000)
"""Steps of a search, by effort."""


@lru_cache(maxsize=256)
def _sticks(request, steps):
    return plan(request, steps)


@lru_cache(maxsize=256)
def _sheets(request, steps):
    return plan_sheets(request, steps)


def _searched(search, request, effort):
    """The best plan of every search up to this effort: never a worse one than with less of it."""
    best = None
    for steps in STEPS[: effort + 1]:
        found = search(request, steps)
        if best is None or found.value < best.value:
            best = found
        if found.proved:
            break
    return best


@dataclass
class Filled:
    """Pieces in their places: `used` are (source, what it becomes), `left` {number of a want: how
    many no board holds}. `bought` boards cost `cost` (or that many, without prices), and no plan
    costs less than `bound`; `searches` made it. `more_rounds` says that a sheet takes more rounds
    of cuts than it may, `larger_parts` that its first cuts leave larger parts than they may."""

    used: list = field(default_factory=list)
    left: dict = field(default_factory=dict)
    bought: int = 0
    cost: Fraction = Fraction(0)
    bound: Fraction = Fraction(0)
    searches: int = 0
    more_rounds: bool = False
    larger_parts: bool = False

    @property
    def proved(self):
        """Whether no plan buys less."""
        return self.cost <= self.bound

    @property
    def key(self):
        """By which fillings are compared: the least is the best."""
        return sum(self.left.values()), self.cost, self.bought

    def then(self, other):
        """With another one, which was made of what this one left."""
        told = ("more_rounds", "larger_parts")
        for name in ("used", "bought", "cost", "bound", "searches", *told):
            setattr(self, name, getattr(self, name) + getattr(other, name))
        self.left = other.left
        return self


@dataclass
class Wood:
    """What there is to cut: `hand` are sources, each once; `sale` are (what one costs, what makes a
    source of one, such a source). Without prices each costs 1. `first`, `rounds` and
    `handled` are how sheets are broken down, as in the settings."""

    hand: list
    sale: list
    kerf: Fraction
    priced: bool
    first: str = ""
    rounds: str = ""
    handled: tuple[Fraction, Fraction] | None = None

    @property
    def breaking_down(self):
        """What the settings say of the cuts of sheets, as a `SheetRequest` has it."""
        sources = (*self.hand, *(source for *_, source in self.sale))
        if any(source.draft.board.form != "sheet" for source in sources):
            return {}
        told = {"first": self.first} if self.first else {}
        told |= {"stages": int(self.rounds)} if self.rounds else {}
        return told | ({"handled": self.handled} if self.handled else {})

    def without(self, used):
        """The same once these sources are used."""
        gone = {id(source) for source, _ in used}
        return replace(self, hand=[each for each in self.hand if id(each) not in gone])

    def where(self, suits):
        """Only the sources that suit."""
        sale = [each for each in self.sale if suits(each[2])]
        return replace(self, hand=list(filter(suits, self.hand)), sale=sale)


def filled(wants, wood, effort, *, ripped=True):
    """The best `Filled` of `wants` ({number: `Want`}) for an effort: lengths out of boards of their
    width and the rest out of wider ones, or, where boards may be `ripped`, all of them as sheets
    are cut."""
    counts = {number: want.count for number, want in wants.items()}
    first = _by_width(wants, counts, wood, effort)
    wide = wood.where(lambda source: source.width is not None)
    if not first.cost and not first.left:
        return first
    if not (ripped and _can_be_ripped(wants, wide)):
        return first
    plain = {number for number in counts if wants[number].width is None}
    second = _by_width(wants, {n: counts[n] for n in plain}, wood, effort)
    rest = {n: count for n, count in counts.items() if n not in plain}
    second.then(_in_sheets(wants, rest | second.left, wide.without(second.used), effort))
    best = min(first, second, key=lambda each: each.key)
    best.bound = min(second.bound, best.cost)
    best.searches = first.searches + second.searches
    return best


def _can_be_ripped(wants, wide):
    """Whether a piece can come out of wood that is wider than it."""
    sources = (*wide.hand, *(source for *_, source in wide.sale))
    return any(
        want.width is not None and source.width > want.laid[1]
        for want in wants.values()
        for source in sources
    )


def _by_width(wants, counts, wood, effort):
    widths = {}
    for number, count in counts.items():
        if wants[number].grain != "across" and not wants[number].is_matched:
            widths.setdefault(wants[number].width, {})[number] = count
    made, left = Filled(), dict(counts)
    for width, those in widths.items():
        lengths = wood.where(lambda source, width=width: _of_width(source, width))
        found = _in_sticks(wants, those, lengths.without(made.used), effort)
        left |= {number: found.left.get(number, 0) for number in those}
        made.then(found)
    left = {number: count for number, count in left.items() if count}
    made.left = left
    wide = wood.without(made.used).where(lambda source: source.width is not None)
    flat = {n: count for n, count in left.items() if wants[n].width is not None}
    if flat:
        found = _in_sheets(wants, flat, wide, effort)
        found.left |= {n: count for n, count in left.items() if n not in flat}
        made.then(found)
    return made


def _of_width(source, width):
    """Whether a piece of this width only has to be cut to length; one without a width takes that of
    its stick, and a stick of any width is no wider than boards."""
    if source.width is None:
        return source.one_way and (width is None or width <= WIDEST_BOARD)
    is_stick = width is None and source.draft.board.form == "stick"
    return source.one_way and (source.width == width or is_stick)


def _in_sticks(wants, counts, wood, effort):
    hand, sale = by_size(wood, lambda source: source.length)
    lengths = [*hand, *sale]
    fit = {n: count for n, count in counts.items() if any(wants[n].length <= x for x in lengths)}
    left = {n: count for n, count in counts.items() if n not in fit}
    if not fit:
        return Filled(left=left)
    unheld = [n for n in fit if not any(wants[n].length <= x for x in sale)]
    numbers = list(fit)
    stocks, prices = to_buy(hand, sale, unheld, wood.priced)
    request = Request(
        tuple(Piece(wants[n].length, fit[n]) for n in numbers),
        tuple(Stock(length, min(len(hand[length]), sum(fit.values()))) for length in hand),
        tuple(Stock(length, None, price) for length, price in zip(stocks, prices, strict=True)),
        wood.kerf,
    )
    try:
        found = _searched(_sticks, request, effort)
    except NoRoomError:
        return Filled(left=dict(counts))
    made = Filled(left=left, searches=1)
    for stick in found.sticks:
        pieces = [numbers[place] for place in stick.pieces]
        source = take(made, hand, sale, stick.stock.length, stick.bought, pieces)
        if source is not None:
            cut = [(wants[n].length, n) for n in pieces]
            made.used.append((source, of_stick(source.length, cut, wood.kerf)))
    return _bounded(made, found)


def _bounded(made, found):
    made.bound = made.cost if found.proved else min(made.cost, found.bound)
    return made


def _in_sheets(wants, counts, wood, effort):
    hand, sale = by_size(wood, lambda source: (source.length, source.width))
    fit = {n: c for n, c in counts.items() if _held(wants[n], (*hand, *sale), wood.kerf)}
    left = {n: count for n, count in counts.items() if n not in fit}
    if not fit:
        return Filled(left=left)
    unheld = [n for n in fit if not _held(wants[n], sale, wood.kerf)]
    numbers = list(fit)
    stocks, prices = to_buy(hand, sale, unheld, wood.priced)
    request = SheetRequest(
        tuple(_panel(n, wants[n], fit[n]) for n in numbers),
        tuple(Sheet(*size, min(len(hand[size]), sum(fit.values()))) for size in hand),
        tuple(Sheet(*size, None, price) for size, price in zip(stocks, prices, strict=True)),
        wood.kerf,
        **wood.breaking_down,
    )
    made = Filled(left=left, searches=1)
    try:
        found = _searched(_sheets, request, effort)
    except NoRoomError:
        return _less_strictly(wants, counts, wood, effort)
    for sheet in found.sheets:
        size = sheet.stock.length, sheet.stock.width
        node, pieces = of_sheet(sheet, lambda panel: numbers[panel])
        source = take(made, hand, sale, size, sheet.bought, pieces)
        if source is not None:
            made.used.append((source, node))
    return _bounded(made, found)


def _less_strictly(wants, counts, wood, effort):
    """Pieces that the settings for breaking down sheets keep from being cut: larger parts are
    handled, or else more rounds taken, and that is told."""
    rules = wood.breaking_down
    if "handled" in rules:
        made = _in_sheets(wants, counts, replace(wood, handled=None), effort)
        made.larger_parts = bool(made.used)
        return made
    if "stages" in rules:
        made = _in_sheets(wants, counts, replace(wood, rounds=""), effort)
        made.more_rounds = bool(made.used)
        return made
    return Filled(left=dict(counts))


def _held(want, sizes, kerf):
    ways = [want.together(kerf)] + ([want.laid[::-1]] if want.grain == "free" else [])
    return any(long <= size[0] and wide <= size[1] for long, wide in ways for size in sizes)


def _panel(number, want, count):
    grain = "free" if want.grain == "free" else "fixed"
    match = str(number) if want.is_matched else ""
    laid = "end" if want.grain == "in a row" else "side"
    return Panel(*want.laid, count, want.name, grain, match, laid=laid)
