"""Wood to buy in words: what one costs and weighs, how the prices compare, and the working."""

from functools import partial

from sawside.drawing.lazy import lazy
from sawside.lengths.plain_numbers import number_text
from sawside.lengths.units import BOARD_FOOT, INCHES_PER, SQUARE_FOOT
from sawside.reckoners.boards.shared.amounts import area_sum, area_text, board_feet_text, money
from sawside.reckoners.boards.shared.buy_fields import QUARTERS, SHEET, SOFTWOOD
from sawside.reckoners.boards.shared.stick_groups import stock_text
from sawside.reckoners.shared.door_weight import Weighed, density_of, weight_working
from sawside.wood.board_measure import counted_thickness, surface_measure, whole_feet
from sawside.wood.materials import started
from sawside.wood.numbers import metric
from sawside.wood.weights import weight_text


def title(sold, show):
    """What a row is called: "pine, 1 × 6 × 8 ft", "3/4″ × 4 ft × 8 ft sheet"."""
    as_sold = partial(stock_text, show) if sold.form == "sheet" else show.brief
    sides = ((show.brief, sold.thickness), (as_sold, sold.width))
    told = sold.called or " × ".join(tell(each) for tell, each in sides if each is not None)
    if sold.row.sold == QUARTERS:
        told += f" × {show.brief(sold.width)}"
    size = f"{told} × {stock_text(show, sold.length)}" if told else stock_text(show, sold.length)
    if sold.form != "board":
        size += f" {sold.form}"
    return ", ".join(filter(None, (sold.row.material, size)))


def told(sold, show):
    """One of a row in a sentence: its cost, what it is counted as, its weight."""
    said = [f"{money(sold.cost)} each" if sold.per else "", amount(sold, show)]
    if weighed := weighed_of(sold, show):
        said.append(weight_text(weighed.pounds, show))
    size = f" ({_really(sold, show)})" if sold.row.sold in (SOFTWOOD, QUARTERS) else ""
    rest = ", ".join(filter(None, said))
    return ": ".join(filter(None, (f"{started(title(sold, show))}{size}", rest)))


def in_short(sold, show):
    """One of a row as a verdict: what it costs, or else what it is counted as."""
    if sold.per:
        return money(sold.cost)
    return amount(sold, show) or started(title(sold, show))


def amount(sold, show):
    """How much one is: board feet, or the area of a sheet; "" of a stick."""
    if sold.counted is not None:
        return board_feet_text(sold.board_feet, show)
    return area_text(sold.width * sold.length, show) if sold.form == "sheet" else ""


def _really(sold, show):
    """What it measures where it is called otherwise."""
    if sold.planed:
        return f"planed to {show.brief(sold.planed)}"
    thick = show.brief(sold.thickness)
    return f"{thick} × {show.brief(sold.width)}" if sold.row.sold == SOFTWOOD else f"{thick} thick"


def weighed_of(sold, show):
    """One as it is sold, to be weighed; None where its wood or its size is not known."""
    sizes = (sold.thickness, sold.width, sold.length)
    density = density_of(sold.wood)
    if density is None or None in sizes:
        return None
    cubic = sold.thickness * sold.width * sold.length
    name = f"Wood {sold.number} weight"
    return Weighed(name, " × ".join(show.number(each) for each in sizes), cubic, density)


def compared(all_sold, show):
    """What each price comes to for wood that one can use; "" where fewer than two have one."""
    priced = [(sold, *_rate(sold, show)) for sold in all_sold if sold.per]
    if len(priced) < 2:
        return ""
    return "; ".join(
        f"Wood {sold.number}: {money(dollars)} per {what}" for sold, dollars, what in priced
    )


def _rate(sold, show):
    """(dollars, what of): a board foot as it measures, a square foot of a sheet, a foot of stick;
    in the measures of a metric project."""
    meter = INCHES_PER["m"]
    if sold.form == "sheet":
        much, what = (meter**2, "m²") if metric(show) else (SQUARE_FOOT, "sq ft")
        return sold.cost / (sold.width * sold.length) * much, what
    if sold.counted is None:
        much, what = (meter, "m") if metric(show) else (INCHES_PER["ft"], "ft")
        return sold.cost / sold.length * much, what
    cubic = sold.used_thickness * sold.width * sold.length
    return sold.cost / cubic * BOARD_FOOT, "usable board foot"


@lazy
def working(all_sold, show):
    """How each row adds up."""
    lines = []
    for sold in all_sold:
        lines += [*_measured(sold, show), *_counted(sold, show), *_cost(sold, show)]
        if weighed := weighed_of(sold, show):
            lines += weight_working((weighed,), show)
    return tuple(lines)


def _measured(sold, show):
    if sold.row.sold == SOFTWOOD:
        size = f"{show.text(sold.thickness)} × {show.text(sold.width)}"
        yield f"Wood {sold.number}: {sold.called} measures {size}, dry and surfaced (PS 20)"
    elif sold.row.sold == SHEET:
        yield f"Wood {sold.number}: {area_sum(sold.width, sold.length, show)}"


def _counted(sold, show):
    """Board feet are of inches and feet, in a metric project too."""
    if sold.counted is None:
        return
    thickness, width = sold.counted
    told, number = number_text(sold.board_feet, 2), f"Wood {sold.number}"
    pure = partial(show.pure, decimals=metric(show))
    if sold.per == "surface":
        surface = surface_measure(width, sold.length)
        exact = width * whole_feet(sold.length) / 12
        rounded = "" if exact == surface else f" → {surface}"
        feet = whole_feet(sold.length)
        yield (
            f"{number} surface measure, inches by whole feet: {pure(width)} × {feet} ÷ 12 = "
            f"{pure(exact)}{rounded}"
        )
        thick = show.pure(counted_thickness(thickness))
        yield f"{number}: {surface} × {thick} = {told} board feet"
        return
    by = {SOFTWOOD: ", nominal inches", QUARTERS: ", rough inches"}.get(sold.row.sold, ", inches")
    sizes = " × ".join(map(pure, (thickness, width, sold.length)))
    yield f"{number}{by}: {sizes} ÷ 144 = {told} board feet"


def _cost(sold, show):
    if not sold.per or sold.per == "piece":
        return
    quantity, price = (show.pure(each, decimals=True) for each in (sold.quantity, sold.row.price))
    yield f"Wood {sold.number} cost: {quantity} × {price} = {money(sold.cost)[1:]} dollars"
