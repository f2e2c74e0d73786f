"""How a plan of sheets adds up: the first cuts of each sheet, and the area that any plan needs."""

from sawside.drawing.lazy import lazy
from sawside.reckoners.boards.shared.sheet_groups import chain_of

_MOST_LINES = 20


@lazy
def working(show, request, groups):
    """What the first cuts of each sheet take of its side; the least by area."""
    lines = []
    for group in groups[:_MOST_LINES]:
        lines += _first_cuts(show, request, group)
    if len(groups) > _MOST_LINES:
        lines.append(f"{len(groups) - _MOST_LINES} more kinds of sheet, each checked the same way")
    if not request.on_hand and len(request.to_buy) == 1:
        lines += _least(show, request)
    return tuple(lines)


def _first_cuts(show, request, group):
    chain = chain_of(group.sheet)
    if chain is None:
        return
    side = chain.width if chain.way == "rip" else chain.length
    usable = side - 2 * request.trim
    if request.trim:
        trimmed = f"{show.number(side)} − 2 × {show.number(request.trim)}"
        yield f"{group.numbers}: {trimmed} = {show.number(usable)} usable"
    sizes = [each.size for each in chain.taken if each.panel is not None or each.further]
    counts = {size: sizes.count(size) for size in sizes}
    kerfs = len(sizes) - 1
    taken = sum(sizes) + kerfs * request.kerf
    sums = " + ".join(f"{n} × {show.number(size)}" for size, n in counts.items())
    kerf_sum = f" + {kerfs} × {show.number(request.kerf)}" if kerfs else ""
    way = "rips" if chain.way == "rip" else "crosscuts"
    yield (
        f"{group.numbers}, first {way}: {sums}{kerf_sum} = {show.number(taken)}, "
        f"of {show.number(usable)}"
    )


def _least(show, request):
    sheet, kerf = request.to_buy[0], request.kerf
    length, width = (side - 2 * request.trim + kerf for side in (sheet.length, sheet.width))
    needed = sum((p.length + kerf) * (p.width + kerf) * p.count for p in request.panels)
    pieces = sum(panel.count for panel in request.panels)
    room = f"{show.number(length)} × {show.number(width)}"
    yield f"Room in a sheet, a kerf more each way: {room} = {show.number(length * width)}"
    yield (
        f"{pieces} pieces, each with a kerf, take {show.number(needed)}: {show.number(needed)} ÷ "
        f"{show.number(length * width)} = {show.pure(needed / (length * width), decimals=True)} "
        "sheets at least"
    )
