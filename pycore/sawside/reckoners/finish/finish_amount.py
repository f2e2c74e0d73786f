"""How much finish to buy for the parts of a project, and how much goes into each coat."""

from sawside.lengths.areas import area_text
from sawside.lengths.plain_numbers import number_text
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.finish.shared.amount_fields import BASIC, FIELDS
from sawside.reckoners.finish.shared.amounts import areas_of, needed, thickness_of
from sawside.reckoners.finish.shared.faces import AREA_UNITS, area_worked
from sawside.reckoners.finish.shared.finish_cautions import RAGS, SOLVENT, SOURCES, WATER, to_buyers
from sawside.reckoners.finish.shared.finishes import FINISHES
from sawside.wood.caution import Caution

_UNMIXED = ("none", None)
_MIX = Caution(
    "Mix just what you’ll use before it sets.",
    "Mix just what you’ll use before it sets, in the order and by the measure that its label says. "
    "A second part can be much more harmful than the first: follow its safety data sheet.",
)


def compute(given, show):
    """The cans to buy and what each coat takes, exact in gallons or liters."""
    found = needed(given, show)
    total = sum(kind.total for kind in found.kinds)
    answers = {
        "buy": _buy_text(given, found),
        "need": found.sold.amount(total),
        "coat": _coats_text(found),
    }
    if given.mix not in _UNMIXED:
        answers["mix"] = _mix_text(given, found)
    answers["area"] = area_text(found.area * found.sold.square_inches, AREA_UNITS[given.measured])
    finish = FINISHES[given.finish]
    return Reckoning(
        answers=answers,
        working=tuple(_working(given, show, found)),
        cautions=(
            *((_MIX,) if given.mix not in _UNMIXED else ()),
            *((to_buyers(RAGS),) if finish.rags else ()),
            to_buyers(SOLVENT if finish.flammable else WATER),
        ),
        verdict=f"Buy {answers['buy']}",
    )


def _parts(given):
    """The parts of A and B of a whole of 1."""
    whole = given.part_a + given.part_b
    return given.part_a / whole, given.part_b / whole


def _buy_text(given, found):
    sold = found.sold
    if given.mix in _UNMIXED:
        return "; ".join(
            f"{kind.name.lower()}, {sold.buy(kind.total)}" if kind.name else sold.buy(kind.total)
            for kind in found.kinds
        )
    total = sum(kind.total for kind in found.kinds)
    both = zip("AB", _parts(given), strict=True)
    if given.mix == "volume":
        return "; ".join(f"{name}, {sold.buy(total * part)}" for name, part in both)
    weight = total * _density(given)
    return "; ".join(f"{name}, {sold.weight(weight * part)}" for name, part in both)


def _density(given):
    return given.density_us if given.measured == "us" else given.density_metric


def _coats_text(found):
    told = []
    for kind in found.kinds:
        alike = list(dict.fromkeys(found.sold.amount(each) for each in kind.coats))
        named = f"{kind.name} {alike[0]}" if kind.name else alike[0]
        told.append(named if len(alike) == 1 else f"{named} the first, then {alike[1]}")
    return "; ".join(told)


def _mix_text(given, found):
    """A and B of one coat, the largest one, by volume or weight."""
    coat = max(each for kind in found.kinds for each in kind.coats)
    sold = found.sold
    tell, whole = (
        (sold.amount, coat) if given.mix == "volume" else (sold.weight, coat * _density(given))
    )
    a, b = (tell(whole * part) for part in _parts(given))
    return f"{a} of A and {b} of B"


def _working(given, show, found):
    if given.faces:
        yield from area_worked(given.faces, show, given.measured, thickness_of(given, show))
    if areas := areas_of(given):
        summed = " + ".join(number_text(each, 4) for each in areas)
        unit = AREA_UNITS[given.measured]
        yield f"All faces, {unit}: {summed} = {number_text(found.area, 4)}"
    each, unit = found.sold.poured
    kept = f"(1 − {number_text(given.loss, 2)} ÷ 100)"
    area, covers = number_text(found.area, 4), found.covers
    coats = [coat for kind in found.kinds for coat in kind.coats]
    names = ("Each coat",) if covers[0] == covers[1] else ("First coat", "Each later coat")
    for name, covered, coat in zip(names, covers, coats, strict=False):
        told = number_text(coat * each, 3)
        yield f"{name}, {unit}: {area} ÷ {number_text(covered, 4)} × {each} ÷ {kept} = {told}"
    first, total = (number_text(number * each, 3) for number in (coats[0], sum(coats)))
    if len(coats) > 1:
        later = f"{len(coats) - 1} × {number_text(coats[1] * each, 3)}"
        yield f"All coats: {first} + {later} = {total}"
    if given.mix not in _UNMIXED:
        a, b = (number_text(part, 2) for part in (given.part_a, given.part_b))
        share = number_text(_parts(given)[1], 4)
        yield f"B of the whole: {b} ÷ ({a} + {b}) = {share}"


RECKONER = Reckoner(
    key="finish_amount",
    title="How much finish",
    asks="How much finish do I buy for these parts, and how much is a coat?",
    words=(
        "how much finish, how much varnish, how much oil, how much paint, gallons of paint, "
        "quarts of finish, coverage, square feet per gallon, cans, finish to buy, two part "
        "finish, hardener, mixing ratio, mix two parts, catalyst, parts by volume"
    ),
    order=50,
    job="finish",
    picture={
        "wood": "M6 12h18v24H6z",
        "ink": "M6 12a9 3 0 0 1 18 0M6 20h18M6 29h18",
        "chalk": "M29 10h8v26h-8M29 19h5M29 28h5",
    },
    basic=BASIC,
    fields=FIELDS,
    answers=(
        Answer("buy", "Buy", "text"),
        Answer("need", "Needed", "text"),
        Answer("coat", "Each coat", "text"),
        Answer("mix", "To mix for a coat", "text"),
        Answer("area", "Area", "text"),
    ),
    source=(
        "Arithmetic: area ÷ coverage × coats ÷ what isn’t lost. A US gallon is 231 cubic inches "
        "(NIST Handbook 44). The can’s coverage comes first; without it the cautious end of what’s "
        "usual, 300 ft² a gallon for a first coat of oil or for lacquer, 350 for paint, 400 for "
        "the rest: common practice, no source. As few cans as leave a third over at most: common "
        f"practice, no source. {SOURCES}"
    ),
    compute=compute,
    example={
        "faces": [{"length": "36", "width": "15 1/2", "count": "4"}],
        "finish": "blend",
        "thickness": "3/4",
    },
)
