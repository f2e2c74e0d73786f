"""A plan as it is told: each stick with its pieces where they lie, in exact inches."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.boards.laying import Laid, laid_out
from sawside.boards.request import Stock


@dataclass(frozen=True, slots=True)
class Section:
    """A stretch of a stick without bad wood, in exact inches from its measured end: the pieces in
    it in their order, and the length that is left at its end, along the shorter edge."""

    start: Fraction
    end: Fraction
    laid: tuple[Laid, ...]
    left: Fraction


@dataclass(frozen=True, slots=True)
class PlannedStick:
    """One stick: its stock, whether it has to be bought, its pieces (places in the request) as
    they are cut from its measured end on, and the `sections` that they lie in, one where the
    stick has no bad wood."""

    stock: Stock
    bought: bool
    pieces: tuple[int, ...]
    sections: tuple[Section, ...]

    @property
    def offcuts(self):
        """What is left, section by section, in exact inches; none of nothing."""
        return tuple(section.left for section in self.sections if section.left)

    @property
    def offcut(self):
        """The longest of them, 0 where there is none."""
        return max(self.offcuts, default=Fraction(0))


@dataclass(frozen=True, slots=True)
class Plan:
    """Sticks filled. `value` is the cost where there are prices, else how many sticks are bought;
    no plan has less than `bound`. With `longest` no plan that buys the same sticks has a longer
    offcut in one of them."""

    sticks: tuple[PlannedStick, ...]
    value: Fraction
    bound: Fraction
    longest: bool = False

    @property
    def proved(self):
        """Whether no plan buys less."""
        return self.value == self.bound


def told(request, exact, filled):
    """The `PlannedStick` of each filled stick of a search."""
    bought, on_hand = [], {}
    for (kind, i), places in _with_places(exact, filled):
        if kind == "buy":
            stretch = _bought(request, i)
            bought.append(_stick(request.to_buy[i], True, [_section(request, *stretch, places)]))
        else:
            on_hand.setdefault(i, []).append(places)
    return tuple(_hand_sticks(request, exact, on_hand) + bought)


def goes_in(request, exact, filled):
    """Whether the pieces of every filled stick go into it as they are laid."""
    return all(
        _fits(request, *(_bought(request, i) if kind == "buy" else exact.of_hand[i][1:]), places)
        for (kind, i), places in _with_places(exact, filled)
    )


def _fits(request, start, end, places):
    laid = _section(request, start, end, places).laid
    return all(max(each.near[1], each.far[1]) <= end for each in laid)


def _with_places(exact, filled):
    """(place, the pieces by their places in the request) of each filled stick."""
    unit = [list(places) for places in exact.pieces]
    for place, fill in filled:
        yield place, [unit[j].pop(0) for j, number in sorted(fill) for _ in range(number)]


def _bought(request, i):
    """(start, end) of what can be used of a stick to buy."""
    return request.trim, request.to_buy[i].length - request.trim


def _hand_sticks(request, exact, filled):
    """The sticks on hand that something is cut from; `filled` are the pieces of each filled
    stretch of `exact.of_hand`."""
    made = []
    for stick, stock in enumerate(request.on_hand):
        stretches = [i for i, (of, _, _) in enumerate(exact.of_hand) if of == stick]
        for number in range(max((len(filled.get(i, ())) for i in stretches), default=0)):
            sections = []
            for i in stretches:
                _, start, end = exact.of_hand[i]
                places = filled.get(i, ())[number : number + 1]
                sections.append(_section(request, start, end, places[0] if places else ()))
            made.append(_stick(stock, False, sections))
    return made


def _section(request, start, end, places):
    """The pieces in their order: long ones first, but for what miters do."""
    pieces = request.pieces
    places = sorted(places, key=lambda each: (-pieces[each].length, pieces[each].name, each))
    laid, taken = laid_out(request, places, start)
    return Section(start, end, laid, max(end - taken, Fraction(0)))


def _stick(stock, bought, sections):
    pieces = tuple(each.place for section in sections for each in section.laid)
    return PlannedStick(stock, bought, pieces, tuple(sections))
