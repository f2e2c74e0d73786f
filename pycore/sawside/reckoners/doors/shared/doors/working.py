"""How doors are worked out, line by line, with this case's numbers."""

from sawside.reckoners.doors.shared.doors.cut_list import sizes_cut, slab_size
from sawside.reckoners.doors.shared.doors.sizes import gaps_of
from sawside.reckoners.shared.door_weight import weight_working
from sawside.reckoners.wood.shared.moisture_fields import change_line

_WAYS = (("width", "across"), ("height", "up"))


def working(given, show, doors, frame, panel, pieces):
    """Every line: laps, the doors or their opening, what is spare, members, panels, weight."""
    if doors.board:
        yield from doors.board.rates
    yield from _laps(given, show)
    for key, way in _WAYS:
        span = getattr(doors, way)
        yield from _door(given, show, key, span)
    yield from _added_up(show, doors)
    fitting = show.by("go in")
    if frame is None:
        yield from _slab(given, fitting, doors)
    else:
        yield from _members(given, fitting, frame)
        yield from _panel(given, fitting, frame, panel)
        yield from _moves(show, doors, panel)
    yield from weight_working(pieces, show)


def _laps(given, show):
    if given.fit not in ("full", "half"):
        return
    edge, reveal = show.number(given.edge), show.number(given.reveal)
    yield f"Full overlay: {edge} − {reveal} = {show.number(given.edge - given.reveal)}"
    if given.fit == "half":
        half = show.number((given.edge - given.between) / 2)
        yield f"Half overlay: ({edge} − {show.number(given.between)}) ÷ 2 = {half}"


def _door(given, show, key, span):
    """A door's size, or that of its opening."""
    name = key.capitalize()
    if given.known == "door":
        yield from _opening(given, show, key, span)
        return
    ends = "".join(_signed(show, -each) for each in (span.start, span.end) if each)
    many = span.count - 1
    ends += f" − {_times(show, many, span.between)}" if many and span.between else ""
    room = f"{show.number(span.opening)}{ends}"
    if span.count > 1:
        room = f"({room}) ÷ {span.count}" if ends else f"{room} ÷ {span.count}"
    if span.grown == 1:
        yield f"Door {key}: {room}{show.equals(span.size)}"
        return
    yield f"{name} at its wettest: {room} = {show.number(span.asked)}"
    grown = show.pure(span.grown)
    yield f"Door {key}: {show.number(span.asked)} ÷ {grown}{show.equals(span.size)}"


def _times(show, count, length):
    return f"{count} × {show.number(length)}" if count > 1 else show.number(length)


def _signed(show, length):
    return f" + {show.number(length)}" if length >= 0 else f" − {show.number(-length)}"


def _opening(given, show, key, span):
    door = getattr(given, key)
    if span.grown != 1:
        yield (
            f"{key.capitalize()} at its wettest: {show.number(door)} × {show.pure(span.grown)} = "
            f"{show.number(span.asked)}"
        )
    doors = _times(show, span.count, span.asked)
    ends = "".join(_signed(show, each) for each in (span.start, span.end) if each)
    many = span.count - 1
    ends += f" + {_times(show, many, span.between)}" if many and span.between else ""
    yield f"Opening {key}: {doors}{ends}{show.equals(span.needs)}"


def _added_up(show, doors):
    """Doors and gaps as they come out make the opening."""
    gaps = gaps_of(show, doors)
    for name, span, own in (("Across", doors.across, gaps[:-2]), ("Up", doors.up, gaps[-2:])):
        first, *rest = (each for _, each in own)
        said = f"{_times(show, span.count, span.cut)}{_signed(show, first)}"
        said += "".join(_signed(show, each) for each in rest)
        yield f"{name}, doors and gaps: {said} = {show.number(span.opening)}"


def _slab(given, show, doors):
    if not given.banding and not given.trim:
        return
    sizes = zip(_WAYS, slab_size(given, doors), strict=True)
    for (key, way), size in sizes:
        more = "".join(
            f" {sign} 2 × {show.number(each)}"
            for sign, each in (("−", given.banding), ("+", given.trim))
            if each
        )
        cut = show.number(getattr(doors, way).cut)
        yield f"Slab {key}: {cut}{more}{show.equals(show.rounded(size))}"


def _members(given, show, frame):
    widths = {"rail": 2 * frame.stile, "stile": frame.top + frame.bottom}
    for member, long, _ in sizes_cut(given, frame):
        trim = f" + 2 × {show.number(given.trim)}" if given.trim and long != member.length else ""
        kind = "stile" if member.upright else "rail"
        whole = show.number(frame.height if member.upright else frame.width)
        less = ""
        if member.length != (frame.height if member.upright else frame.width):
            less = f" − {show.number(widths[kind])} + 2 × {show.number(member.adds)}"
        if less or trim:
            yield f"{member.name}: {whole}{less}{trim}{show.equals(show.rounded(long))}"


def _panel(given, show, frame, panel):
    noun = "Glass" if given.made == "glass" else "Panel"
    takes = (2 * frame.stile, frame.top + frame.bottom)
    for axis, (key, _) in enumerate(_WAYS):
        whole = (frame.width, frame.height)[axis]
        inside = f"{show.number(whole)} − {show.number(takes[axis])}"
        if frame.panels > 1 and (given.middle == "rail") == bool(axis):
            inside = f"({inside} − {show.number(frame.middle)}) ÷ 2"
        yield f"Inside {key}: {inside} = {show.number(frame.inside[axis])}"
        room = (
            f"{show.number(frame.inside[axis])} + 2 × ({show.number(given.groove)} − "
            f"{show.number(panel.clearance)})"
        )
        if panel.grown[axis] == 1:
            yield f"{noun} {key}: {room}{show.equals(panel.sizes[axis])}"
            continue
        told = show.number(panel.room[axis])
        yield f"{noun} {key} at its wettest: {room} = {told}"
        yield (
            f"{noun} {key}: {told} ÷ {show.pure(panel.grown[axis])}{show.equals(panel.sizes[axis])}"
        )


def _moves(show, doors, panel):
    if panel.held is None:
        return
    board, cut = doors.board, panel.sizes[panel.across].mark
    yield change_line(show, board, cut, board.year.high, "Panel to its wettest")
    yield change_line(show, board, cut, board.year.low, "Panel to its driest")
