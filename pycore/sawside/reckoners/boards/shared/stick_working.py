"""How a plan of sticks adds up, stick by stick."""

from collections import Counter

from sawside.boards.slants import middle, slope, steepness
from sawside.drawing.lazy import lazy
from sawside.lengths.show import degrees_text
from sawside.reckoners.miters.shared.corner_field import past_lines

_MOST_LINES = 20


@lazy
def working(given, show, request, groups):
    """What each stick gives and what is in it; the least that any plan needs."""
    mitered = next((piece for piece in request.pieces if not piece.square), None)
    lines = [*past_lines(given, "corner")]
    lines += _mitered(show, request, mitered) if mitered else ()
    for group in groups[:_MOST_LINES]:
        lines += _stick(show, request, group)
    if len(groups) > _MOST_LINES:
        lines.append(f"{len(groups) - _MOST_LINES} more kinds of stick, each checked the same way")
    if not (request.on_hand or mitered) and len(request.to_buy) == 1:
        lines.append(_least(show, request))
    return tuple(lines)


def _stick(show, request, group):
    stock = group.stick.stock
    for section, runs in group.sections:
        if not runs:
            continue
        usable = section.end - section.start
        name = group.numbers
        if stock.bad:
            name += f" from {show.brief(section.start, 'reach')}"
            ends = f"{show.number(section.end)} − {show.number(section.start)}"
            yield f"{name}: {ends} = {show.number(usable)} usable"
        elif request.trim:
            trimmed = f"{show.number(stock.length)} − 2 × {show.number(request.trim)}"
            yield f"{name}: {trimmed} = {show.number(usable)} usable"
        if any(run.mitered for run in runs):
            yield from _slanted(show, request, name, section)
        else:
            yield from _straight(show, request, name, section, runs)


def _straight(show, request, name, section, runs):
    usable, kerf = show.number(section.end - section.start), show.number(request.kerf)
    number = sum(run.count for run in runs)
    taken = sum(run.length * run.count for run in runs) + (number - 1) * request.kerf
    sums = " + ".join(f"{run.count} × {show.number(run.length)}" for run in runs)
    kerfs = f" + {number - 1} × {kerf}" if number > 1 else ""
    yield f"{name}: {sums}{kerfs} = {show.number(taken)}, of {usable}"
    if section.left:
        rounded = show.rounded(section.left, "be there")
        yield f"Left: {usable} − {show.number(taken)} − {kerf}{show.equals(rounded)}"


def _mitered(show, request, piece):
    """What a miter does to a piece and to the kerf."""
    degrees = abs(piece.left or piece.right)
    angle, width, kerf = degrees_text(degrees), show.number(request.width), request.kerf
    yield (
        f"Along its middle a miter shortens a piece by half of ({width} × tan {angle}°) = "
        f"{show.number(slope(degrees).by(request.width / 2).low)}"
    )
    taken = show.number(steepness(degrees).by(kerf).low)
    yield f"Along the edge the blade takes {show.number(kerf)} ÷ cos {angle}° = {taken}"


def _slanted(show, request, name, section):
    """The middles of the pieces, and what lies between and beside them."""
    middles = Counter(middle(request.pieces[laid.place], request.width).up for laid in section.laid)
    total = sum(each * count for each, count in middles.items())
    last = section.laid[-1]
    end = max(last.near[1], last.far[1]) - section.start
    sums = " + ".join(f"{count} × {show.number(each)}" for each, count in middles.items())
    yield f"{name}, middles: {sums} = {show.number(total)}"
    usable = section.end - section.start
    yield (
        f"{name}, with cuts and slants: {show.number(total)} + {show.number(end - total)} = "
        f"{show.number(end)}, of {show.number(usable)}"
    )
    if section.left:
        taken, rounded = usable - end - section.left, show.rounded(section.left, "be there")
        yield (
            f"Left: {show.number(usable)} − {show.number(end)} − {show.number(taken)}"
            f"{show.equals(rounded)}"
        )


def _least(show, request):
    usable = request.usable(request.to_buy[0])
    pieces = sum(piece.count for piece in request.pieces)
    needed = sum((piece.length + request.kerf) * piece.count for piece in request.pieces)
    room = usable + request.kerf
    return (
        f"{pieces} pieces, each with a kerf, take {show.number(needed)}; a stick has room for "
        f"{show.number(room)}: {show.number(needed)} ÷ {show.number(room)} = "
        f"{show.pure(needed / room, decimals=True)} sticks at least"
    )
