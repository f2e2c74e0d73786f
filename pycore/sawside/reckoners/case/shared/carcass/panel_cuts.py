"""Where the joints of a case are cut in its sides, top, bottom and dividers."""

from fractions import Fraction

from sawside.reckoners.case.shared.carcass.panel import Cut

_ZERO = Fraction(0)


def side_cuts(sizes, length):
    """The `Cut`s in the inside face of a side, and the notch of the toe kick."""
    wide, thick = sizes.rear - sizes.front, sizes.thickness
    full = (_ZERO, wide)
    if sizes.kick == "notched":
        across = (_ZERO, sizes.recess - sizes.front)
        along = (_ZERO, sizes.kick_height)
        yield Cut("notch", "through", along, across, thick, "the toe kick")
    if sizes.joint:
        low = sizes.kick_height - sizes.foot
        kind = "dado" if low else "rabbet"
        yield Cut(kind, "inside", (low, low + thick), full, sizes.joint, "the bottom")
        if sizes.top == "between":
            along = (length - thick, length)
            yield Cut("rabbet", "inside", along, full, sizes.joint, "the top")
        yield from _shelf_dadoes(sizes, "inside", wide, sizes.floor)
    hidden = sizes.top == "over" or sizes.joint >= sizes.seat
    upper = length if hidden or sizes.back == "rabbet" else length - thick + sizes.seat
    yield from _back_cut(sizes, "inside", (_ZERO, upper), wide)


def level_cuts(sizes, key, length, rear):
    """The `Cut`s in the lower face of a top, or the upper face of a bottom."""
    wide, thick = rear - sizes.front, sizes.thickness
    full, face = (_ZERO, wide), {"top": "lower", "bottom": "upper"}[key]
    over = key == "top" and sizes.top == "over"
    inside = (length - sizes.inside_width) / 2
    if sizes.joint:
        if over:
            for low, side in ((_ZERO, "left"), (length - thick, "right")):
                along = (low, low + thick)
                yield Cut("rabbet", face, along, full, sizes.joint, f"the {side} side")
        for number, start in enumerate(sizes.bay_starts[1:], 1):
            along = (inside + start - thick, inside + start)
            purpose = "the divider" if sizes.dividers == 1 else f"divider {number}"
            yield Cut("dado", face, along, full, sizes.joint, purpose)
    stop = thick - sizes.seat if over else _ZERO
    if over or sizes.back == "groove":
        yield from _back_cut(sizes, face, (stop, length - stop), wide)


def divider_cuts(sizes):
    """The `Cut`s in both faces of a divider."""
    if sizes.joint:
        yield from _shelf_dadoes(sizes, "both", sizes.inside_depth - sizes.front, sizes.joint)


def _shelf_dadoes(sizes, face, wide, floor):
    """Above the case bottom, whose upper face is at `floor` along the panel; those of a shelf set
    back are stopped."""
    front = sizes.strip_front if sizes.band_goes_in else sizes.shelf_front
    across = (front - sizes.front, wide)
    for low in sizes.heights.lows:
        along = (floor + low, floor + low + sizes.shelf_thickness)
        yield Cut("dado", face, along, across, sizes.joint, "a fixed shelf")


def _back_cut(sizes, face, along, wide):
    """The rabbet or groove of the back, measured across from the front edge."""
    if sizes.back in ("rabbet", "groove"):
        upper = wide - sizes.behind
        across = (upper - sizes.back_thickness, upper)
        yield Cut(sizes.back, face, along, across, sizes.seat, "the back")
