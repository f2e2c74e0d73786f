"""The working of a case: from its outside to its inside and to every length, with its numbers."""

from dataclasses import replace

from sawside.reckoners.case.shared.carcass.amounts import amounts_working

_MOST_LINES = 6
"""So many shelves or openings have their line, of more the first ones."""


def working(sizes, panels, amounts, given, show):
    """The lines, in the order in which one works."""
    yield from _sizes(sizes, show)
    yield from _bays(sizes, show)
    yield from _fixed_shelves(sizes, show)
    yield from _uprights(sizes, show)
    yield from _levels(sizes, panels, show)
    yield from _depths(sizes, show)
    yield from _sums(sizes, show)
    yield from amounts_working(panels, amounts, given, show)


def _line(name, show, result, first, *terms):
    """ "Inside width: 36 − 2 × 3/4 = 34 1/2"; terms are (sign, times, length), nothing left out.

    "" where there is nothing to add or take away.
    """
    told = [
        f"{sign} {f'{times} × ' if times > 1 else ''}{show.number(length)}"
        for sign, times, length in terms
        if length and times
    ]
    if not told:
        return ()
    return (f"{name}: {' '.join((show.number(first), *told))}{show.equals(result)}",)


def _sizes(sizes, show):
    thick, back = sizes.thickness, sizes.back_thickness
    for each, parts in (
        ("width", ((2, thick),)),
        ("height", ((1, sizes.kick_height), (2, thick))),
        ("depth", ((1, back), (1, sizes.behind))),
    ):
        outside, inside = getattr(sizes, each), getattr(sizes, f"inside_{each}")
        if sizes.known[each]:
            terms = (("−", *part) for part in parts)
            yield from _line(f"Inside {each}", show, inside, outside, *terms)
        else:
            terms = (("+", *part) for part in parts)
            yield from _line(f"Outside {each}", show, outside, inside, *terms)


def _bays(sizes, show):
    many, bays, even = sizes.dividers, sizes.bays, sizes.shared.even
    if not many:
        return
    thick = show.number(sizes.thickness)
    taken = f"{show.number(sizes.inside_width)} − {many} × {thick}"
    if even is None:
        listed = " − ".join(show.number(bay) for bay in bays[:-1])
        yield f"Last bay: {taken} − {listed}{show.equals(bays[-1])}"
    elif len(set(bays)) == 1:
        yield f"Bay: ({taken}) ÷ {many + 1}{show.equals(even)}"
    else:
        yield f"Bay before marking: ({taken}) ÷ {many + 1} = {show.number(even)}"
        yield from _marked(sizes, show)


def _marked(sizes, show):
    """Where the left face of each divider is put on a mark, and what that leaves of the bays."""
    thick, even, before = sizes.thickness, sizes.shared.even, None
    for number, start in enumerate(sizes.bay_starts[1:], 1):
        place, past = start - thick, number - 1
        exact = number * even + past * thick
        told = f"{number} × {show.number(even)}"
        if past:
            told += f" + {f'{past} × ' if past > 1 else ''}{show.number(thick)}"
        mark = replace(show.rounded(exact), mark=place)
        yield f"Divider {number}, from the left side: {told}{show.equals(mark)}"
        if before is not None:
            yield from _left_of(f"Bay {number}", sizes, show, place, before)
        before = place
    yield from _left_of("Last bay", sizes, show, sizes.inside_width, before)


def _left_of(name, sizes, show, end, before):
    """A bay from the divider whose left face is at `before` to `end`."""
    bay = end - before - sizes.thickness
    return _line(name, show, bay, end, ("−", 1, before), ("−", 1, sizes.thickness))


def _fixed_shelves(sizes, show):
    """The openings, and where the dado or the lower face of each shelf is from the bottom end of a
    side; of many shelves the first ones."""
    found, many, thick = sizes.heights, sizes.fixed, show.number(sizes.shelf_thickness)
    if not many:
        return
    high = show.number(sizes.inside_height)
    if found.even is not None:
        same = len(set(found.openings)) == 1
        each = show.equals(found.even) if same else f" = {show.number(found.even)}"
        name = "Opening between fixed shelves" if same else "Opening before marking"
        yield f"{name}: ({high} − {many} × {thick}) ÷ {many + 1}{each}"
    if len(set(found.openings)) > 1:
        yield from _openings(sizes, show)
    foot = sizes.floor - sizes.thickness
    for number, low in enumerate(found.lows[:_MOST_LINES], 1):
        parts = (low, foot, sizes.thickness) if foot else (low, sizes.thickness)
        told = " + ".join(show.number(each) for each in parts)
        place = show.number(low + sizes.floor)
        yield f"Fixed shelf {number}, from the bottom end of a side: {told} = {place}"


def _openings(sizes, show):
    """What is clear below each shelf, and above the last one."""
    found, thick, high = sizes.heights, sizes.shelf_thickness, sizes.inside_height
    edges = [*found.lows, high]
    for number in range(1, min(len(edges), _MOST_LINES)):
        upper, low = edges[number], edges[number - 1]
        name = f"Opening {number + 1}"
        yield from _line(name, show, upper - low - thick, upper, ("−", 1, low), ("−", 1, thick))


def _uprights(sizes, show):
    over = sizes.top == "over"
    yield from _line(
        "Side",
        show,
        sizes.height - sizes.foot - (sizes.thickness - sizes.joint if over else 0),
        sizes.height,
        ("−", 1, sizes.foot),
        ("−", 1, sizes.thickness if over else 0),
        ("+", 1, sizes.joint if over else 0),
    )
    if sizes.dividers:
        length = show.rounded(sizes.inside_height + 2 * sizes.joint, "go in")
        joint = ("+", 2, sizes.joint)
        yield from _line("Divider", show, length, sizes.inside_height, joint)


def _levels(sizes, panels, show):
    names = "Top and bottom" if sizes.top == "between" else "Bottom"
    clear, joint = sizes.inside_width, sizes.joint
    yield from _line(names, show, clear + 2 * joint, clear, ("+", 2, joint))
    for panel in panels:
        if panel.key.startswith("fixed"):
            bay, length = panel.length - 2 * joint, show.rounded(panel.length, panel.must)
            yield from _line(panel.name, show, length, bay, ("+", 2, joint))
        if panel.key.startswith("adjustable"):
            bay, length = panel.length + 2 * sizes.gap, show.rounded(panel.length, panel.must)
            yield from _line(panel.name, show, length, bay, ("−", 2, sizes.gap))
        if panel.key == "back" and sizes.seat:
            wide, seat = show.rounded(panel.width, panel.must), ("+", 2, sizes.seat)
            room = ("−", 1, sizes.room)
            yield from _line("Back width", show, wide, clear, seat, room)
            yield from _back_height(sizes, show, show.rounded(panel.length, panel.must))


def _back_height(sizes, show, high):
    over, thick, seat = sizes.top == "over", sizes.thickness, sizes.seat
    terms = {
        ("rabbet", True): (("+", 1, thick), ("+", 1, seat)),
        ("rabbet", False): (("+", 2, thick),),
    }.get((sizes.back, over), (("+", 2, seat),))
    return _line("Back height", show, high, sizes.inside_height, *terms, ("−", 1, sizes.room))


def _depths(sizes, show):
    depth, back, behind = sizes.depth, sizes.back_thickness, sizes.behind
    band = ("−", 1, sizes.front)
    on, off = ("−", 1, depth - sizes.rear), ("−", 1, depth - sizes.bottom_rear)
    yield from _line("Side width", show, sizes.rear - sizes.front, depth, on, band)
    if sizes.proud and sizes.case_band:
        whole = ("+", 1, sizes.case_band)
        yield from _line("Depth over the edging", show, depth + sizes.case_band, depth, whole)
    name = "Top and bottom width" if sizes.top == "between" else "Bottom width"
    yield from _line(name, show, sizes.bottom_rear - sizes.front, depth, off, band)
    if sizes.fixed or sizes.adjustable:
        front = (("−", 1, sizes.setback), ("−", 1, sizes.shelf_front - sizes.setback))
        width = sizes.inside_depth - sizes.shelf_front
        back = (("−", 1, back), ("−", 1, behind))
        yield from _line("Shelf width", show, width, depth, *back, *front)


def _sums(sizes, show):
    """Across a section all parts come to the outside."""
    thick = show.number(sizes.thickness)
    bays = f" + {thick} + ".join(show.number(bay) for bay in sizes.bays)
    yield f"Across: {thick} + {bays} + {thick}{show.equals(sizes.width)}"
    kick = f"{show.number(sizes.kick_height)} + " if sizes.kick_height else ""
    high = f"{kick}{thick} + {show.number(sizes.inside_height)} + {thick}"
    yield f"Up: {high}{show.equals(sizes.height)}"
