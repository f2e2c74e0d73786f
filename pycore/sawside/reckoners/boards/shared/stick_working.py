"""How a plan of sticks adds up, stick by stick."""

from sawside.drawing.lazy import lazy

_MOST_LINES = 20


@lazy
def working(show, request, groups):
    """What each stick gives and what is in it; the least that any plan needs."""
    lines = []
    kerf = show.number(request.kerf)
    for group in groups[:_MOST_LINES]:
        usable = show.number(request.usable(group.stick.stock))
        if request.trim:
            trimmed = f"{show.number(group.stick.stock.length)} − 2 × {show.number(request.trim)}"
            lines.append(f"{group.numbers}: {trimmed} = {usable} usable")
        number = sum(n for _, n, _ in group.pieces)
        taken = sum(length * n for length, n, _ in group.pieces) + (number - 1) * request.kerf
        sums = " + ".join(f"{n} × {show.number(length)}" for length, n, _ in group.pieces)
        kerfs = f" + {number - 1} × {kerf}" if number > 1 else ""
        lines.append(f"{group.numbers}: {sums}{kerfs} = {show.number(taken)}, of {usable}")
        if left := group.stick.offcut:
            rounded = show.rounded(left, "be there")
            lines.append(f"Left: {usable} − {show.number(taken)} − {kerf}{show.equals(rounded)}")
    if len(groups) > _MOST_LINES:
        lines.append(f"{len(groups) - _MOST_LINES} more kinds of stick, each checked the same way")
    if not request.on_hand and len(request.to_buy) == 1:
        lines.append(_least(show, request))
    return tuple(lines)


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
