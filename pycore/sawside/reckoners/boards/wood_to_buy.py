"""Wood as it is sold: what one piece costs, is counted as and weighs. Its rows are offers."""

from sawside.boards.offer import Offer
from sawside.drawing.boards.pieces_of_wood import MOST_DRAWN, pieces_of_wood
from sawside.drawing.lazy import lazy
from sawside.reckoners.boards.shared.amounts import money
from sawside.reckoners.boards.shared.buy_fields import BOARD, QUARTERS, WOOD
from sawside.reckoners.boards.shared.buy_told import (
    amount,
    compared,
    in_short,
    title,
    told,
    weighed_of,
    working,
)
from sawside.reckoners.boards.shared.sold import all_sold
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.wood.caution import Caution

_RANDOM_WIDTHS = Caution(
    "Random widths: pick boards wide enough.",
    "Widths are random: a cutting plan takes every board as wide as your average, and real ones "
    "run wider and narrower. Pick boards wide enough for your widest part, and buy extra for "
    "defects: 15 to 30% is shop practice.",
)
_HEAVY = 50
"""Pounds that one person lifts at most: about the 51 lb of the lifting equation of NIOSH (1994),
from memory."""

_THIN = Caution(
    "Sold by the board foot, wood under 1″ is counted as 1″.",
    "A yard counts wood under 1″ as 1″ thick, and by the size it was sawn to. Where it does, enter "
    "it as hardwood by quarters or by its nominal size: it costs more than its own volume.",
)
_LEAST_COUNTED = 1
"""Inches: thinner wood is counted as this thick (`wood/board_measure.py`)."""

_LIFT = Caution(
    f"Over {_HEAVY} lb: get help to lift it.",
    f"At least one of these is over {_HEAVY} lb. Get a second person or a cart, and have the yard "
    "cut a sheet down if you can’t.",
)


def compute(given, show):
    """What one of each row costs and is counted as; "missing" for a price without a unit."""
    wood = all_sold(given, show)
    rates, short = compared(wood, show), _in_short(wood, show)
    return Reckoning(
        answers={
            "short": short,
            "each": "; ".join(told(sold, show) for sold in wood) + ".",
            **({"compared": rates} if rates else {}),
        },
        working=working(wood, show),
        drawing=_drawing(wood, show),
        cautions=tuple(_cautions(wood, show)),
        verdict=_verdict(wood, short, show),
        stock=tuple(_offer(sold) for sold in wood),
    )


def _offer(sold):
    return Offer(
        key=str(sold.number),
        form=sold.form,
        material=sold.row.material or "",
        length=sold.length,
        width=sold.width,
        thickness=sold.used_thickness,
        price=sold.cost,
        trim=sold.trim,
        name=sold.called,
    )


def _in_short(wood, show):
    """What stands in the bar: what one costs, or how much it is."""
    if len(wood) == 1:
        return in_short(wood[0], show)
    costs = sorted(sold.cost for sold in wood if sold.per)
    if not costs:
        return f"{len(wood)} kinds of wood"
    least, most = money(costs[0]), money(costs[-1])
    return least if least == most else f"{least} to {most}"


def _verdict(wood, short, show):
    """The same as one says it, with how much wood the only one is."""
    if not any(sold.per for sold in wood):
        return short
    if len(wood) > 1:
        return f"{len(wood)} kinds of wood, {short} each"
    return ", ".join(filter(None, (f"{short} each", amount(wood[0], show))))


def _cautions(wood, show):
    if any(sold.row.sold == QUARTERS for sold in wood):
        yield _RANDOM_WIDTHS
    if any(_is_thin(sold) for sold in wood):
        yield _THIN
    weighed = [each for each in (weighed_of(sold, show) for sold in wood) if each]
    if any(each.pounds > _HEAVY for each in weighed):
        yield _LIFT


def _is_thin(sold):
    """Whether a board is priced by its own volume, and a yard counts more."""
    is_own = sold.row.sold == BOARD and sold.per == "board_foot"
    return is_own and sold.thickness < _LEAST_COUNTED


@lazy
def _drawing(wood, show):
    shown = wood[:MOST_DRAWN]
    words = "One of each kind of wood, in scale."
    if len(wood) > len(shown):
        words += f" The first {len(shown)} of {len(wood)}."
    if any(sold.trim for sold in shown):
        words += " The edge trim is dashed."
    return pieces_of_wood(words, [_drawn(sold, show, many=len(wood) > 1) for sold in shown])


def _drawn(sold, show, *, many):
    """A row in the drawing, with its number where there are `many`."""
    name = f"Wood {sold.number}: {title(sold, show)}" if many else title(sold, show)
    return name, sold.length, sold.width, (), sold.trim


RECKONER = Reckoner(
    key="wood_to_buy",
    title="Wood to buy",
    asks="What does a board or sheet cost, and how many board feet is it?",
    words=(
        "board feet, bdft, price, cost, price per board, cost of a board, cost of plywood, plywood "
        "price, price of a sheet, surface measure, wood to buy, what a board costs, plywood weigh, "
        "weight of plywood, sheet weight, how heavy, hardwood price, softwood price, lumber price, "
        "lumber cost"
    ),
    order=910,
    job="boards",
    picture={
        "wood": "M2 6h26v7H2zM2 17h26v7H2zM2 28h26v7H2z",
        "ink": "M8 6v7M20 17v7",
        "chalk": "M37 13q-5-3-5 1t5 3q0 5-5 2M34.5 8v16",
    },
    fields=(WOOD,),
    answers=(
        Answer("short", "One piece", "text"),
        Answer("each", "One of each", "text"),
        Answer("compared", "Prices compared", "text"),
    ),
    source=(
        "Board foot: NIST Handbook 44. Softwood sizes: NIST PS 20, counted by nominal size. "
        "Hardwood: NHLA rules; surface measure drops part feet and rounds to a whole number (half "
        "goes up here, up and down in turn at a yard). Weight: Wood Handbook at 12% moisture, "
        "panels as noted in Wood and panel data. Volume and price are arithmetic."
    ),
    compute=compute,
    example={
        "wood": [
            {
                "sold": "hardwood",
                "quarters": "thickness_5_4",
                "planed": "1",
                "average": "6 1/4",
                "length": "8 ft",
                "material": "cherry",
                "price": "9.40",
                "per": "surface",
            }
        ]
    },
)
