"""How the swing of a door is worked out, line by line, with this case's numbers."""

from sawside.lengths.real import sign
from sawside.lengths.show import angle_equals, angle_text


def working(given, show, swing, edge, needs):
    """Every line: what touches first, the free edge in its frame, the drawer."""
    number = show.number
    if swing.touch is not None:
        yield from _touch(given, show, swing)
    else:
        yield f"Smallest of the hinge’s stop and what the door touches: {angle_text(swing.stops)}"
    past, deep = given.width - swing.pin, swing.deep
    if swing.pin and (edge is not None or needs is not None):
        yield (
            f"Free edge from the pivot: {number(given.width)} − {number(swing.pin)} = "
            f"{number(past)}"
        )
        yield (
            f"Back of the door from the pivot: {number(given.thickness)} − "
            f"{number(given.thickness - deep)} = {number(deep)}"
        )
    if edge is not None:
        yield from _free_edge(given, show, swing, edge, past)
    if needs is not None:
        yield from _drawer(given, show, swing, needs, past)


def _touch(given, show, swing):
    """The angle at which a corner meets the wall."""
    corner, number = swing.touch, show.number
    name, past = corner.name, abs(corner.past)
    yield (
        f"{name[0].upper()}{name[1:]} from the pivot: √({number(past)}² + "
        f"{number(abs(corner.before))}²) = {number(corner.radius)}"
    )
    if swing.meets == "neighbor":
        yield _neighbor(given, show, swing)
        return
    away = number(given.wall)
    if swing.pin:
        away = f"({away} + {number(swing.pin)})"
    turn = f"90° + arcsin ({away} ÷ {number(corner.radius)})"
    if corner.before and corner.past:
        way = "−" if (corner.before > 0) == (corner.past > 0) else "+"
        turn += f" {way} arctan ({number(abs(corner.before))} ÷ {number(past)})"
    if corner.past < 0:
        turn += " − 180°"
    elif corner.past == 0:
        turn += " − 90°" if corner.before > 0 else " + 90°"
    yield f"Touches the wall at: {turn}{angle_equals(swing.at)}"


def _neighbor(given, show, swing):
    """The angle at which the handle meets the neighbor's front."""
    corner, number = swing.touch, show.number
    out = swing.deep - given.thickness
    turn = f"180° + arcsin ({number(out)} ÷ {number(corner.radius)})" if out else "180°"
    if corner.before and corner.past:
        way = "−" if corner.before > 0 else "+"
        turn += f" {way} arctan ({number(abs(corner.before))} ÷ {number(corner.past)})"
    elif not corner.past:
        turn += " − 90°"
    return f"Touches the neighbor at: {turn}{angle_equals(swing.at)}"


def _free_edge(given, show, swing, edge, past):
    number, out = show.number, swing.deep - given.thickness
    less = f" − {number(out)}²" if out > 0 else ""
    yield (
        f"Back corner of the free edge from the pivot: √({number(past)}² + {number(swing.deep)}²"
        f"{less}) = {number(edge.reach)}"
    )
    yield f"Gap for a square edge: {number(edge.reach)} − {number(past)} = {number(edge.gap)}"
    if sign(edge.bevel) <= 0:
        return
    more = f" + {number(out)}²" if out > 0 else ""
    yield (
        f"Off the back edge: {number(past)} − √(({number(past)} + {number(given.gap)})² − "
        f"{number(swing.deep)}²{more}) = {number(edge.bevel)}"
    )
    yield (
        f"Bevel: arctan ({number(edge.bevel)} ÷ {number(given.thickness)})"
        f"{angle_equals(edge.angle)}"
    )


def _drawer(given, show, swing, needs, past):
    number, deep = show.number, swing.deep
    room = number(given.drawer)
    if swing.pin:
        room = f"({room} − {number(swing.pin)})"
    yield (
        f"Free edge out of the drawer’s way: 90° − arcsin ({room} ÷ √({number(past)}² + "
        f"{number(deep)}²)) + arctan ({number(deep)} ÷ {number(past)}){angle_equals(needs.free)}"
    )
    if needs.hinged is not None:
        yield (
            f"Hinge edge out of its way: arctan ({number(swing.pin)} ÷ {number(deep)}) + 180° − "
            f"arcsin ({room} ÷ √({number(swing.pin)}² + {number(deep)}²))"
            f"{angle_equals(needs.hinged)}"
        )
