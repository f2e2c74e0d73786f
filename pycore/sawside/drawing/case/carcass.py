"""A case in scale: its front, and a section through one bay seen from its right side.

`sizes` is a case as `reckoners/case/shared/carcass/sizes.py` has it. The heights of its shelves are
for the eye only.
"""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon, rectangle
from sawside.lengths.real import nearby
from sawside.lengths.words import counted

_SCREEN = 300
_MOST_BAYS = 4
"""More than these have no room for their widths."""


@lazy
def carcass_drawing(show, sizes):
    """The front view, at its right the section."""
    wide, deep, high = (float(nearby(each)) for each in (sizes.width, sizes.depth, sizes.height))
    pixel = max(wide * 4 / 3 + deep, high) / _SCREEN
    start = wide + 64 * pixel
    shapes = [*_front(sizes), *_section(sizes, start), *_told(show, sizes, start, pixel)]
    box = (-52 * pixel, -high - 44 * pixel, start + deep + 12 * pixel, 30 * pixel)
    return drawing(_words(show, sizes), box, shapes)


def _box(x, z, role="stock"):
    """A rectangle from (left, right) and (bottom, top), up from the floor."""
    return rectangle(x[0], -z[1], x[1], -z[0], role)


def _shelves(sizes):
    """(bottom, top, whether fixed) of each shelf of a bay, spread evenly."""
    high, thick = sizes.inside_height, sizes.shelf_thickness
    low = sizes.kick_height + sizes.thickness
    opening = (high - sizes.fixed * thick) / (sizes.fixed + 1)
    for number in range(1, sizes.fixed + 1):
        at = low + number * opening + (number - 1) * thick
        yield at, at + thick, True
    for place in range(sizes.fixed + 1):
        many = len(range(place, sizes.adjustable, sizes.fixed + 1))
        room = (opening - many * thick) / (many + 1)
        for number in range(1, many + 1):
            at = low + place * (opening + thick) + number * room + (number - 1) * thick
            yield at, at + thick, False


def _heights(sizes):
    """The levels of a case: foot, underside and top of the bottom, underside and top of the top."""
    low, thick = sizes.kick_height, sizes.thickness
    return sizes.foot, low, low + thick, sizes.height - thick, sizes.height


def _front(sizes):
    foot, low, floor, ceiling, top = _heights(sizes)
    thick, joint, right = sizes.thickness, sizes.joint, sizes.width - sizes.thickness
    over = sizes.top == "over"
    for x in ((0, thick), (right, sizes.width)):
        yield _box(x, (foot, ceiling + joint if over else top))
    shown = 0 if sizes.case_band else joint
    yield _box((thick - shown, right + shown), (low, floor))
    if over:
        yield _box((0, sizes.width), (ceiling, top))
    else:
        yield _box((thick - shown, right + shown), (ceiling, top))
    for start, bay in zip(sizes.bay_starts, sizes.bays, strict=True):
        left = thick + start
        if start:
            yield _box((left - thick, left), (floor, ceiling))
        for bottom, upper, fixed in _shelves(sizes):
            end = left + bay
            yield _box((left, end), (bottom, upper), "stock" if fixed else "hatch")
    if sizes.kick != "none":
        ends = (thick, right)
        if sizes.kick == "base":
            ends = (sizes.end_recess, sizes.width - sizes.end_recess)
        yield _box(ends, (0, low), "ghost")


def _section(sizes, start):
    """Parts that are cut through are wood, the side behind them is an outline."""
    foot, low, floor, ceiling, top = _heights(sizes)
    front, over = sizes.front, sizes.top == "over"

    def box(y, z, role="stock"):
        return _box((start + y[0], start + y[1]), z, role)

    outline = [(front, foot), (front, top), (sizes.rear, top), (sizes.rear, foot)]
    if sizes.kick == "notched":
        outline[:1] = [(sizes.recess, 0), (sizes.recess, low), (front, low)]
    yield polygon([(start + y, -z) for y, z in outline], "ghost")
    yield box((front, sizes.bottom_rear), (low, floor))
    yield box((front, sizes.rear if over else sizes.bottom_rear), (ceiling, top))
    for bottom, upper, fixed in _shelves(sizes):
        ends = (sizes.shelf_front, sizes.inside_depth)
        yield box(ends, (bottom, upper), "stock" if fixed else "hatch")
        if sizes.shelf_band:
            yield box((sizes.setback, sizes.shelf_front), (bottom, upper), "hatch")
    for level in ((low, floor), (ceiling, top)) if front else ():
        yield box((0, front), level, "hatch")
    if sizes.back != "none":
        yield box((sizes.inside_depth, sizes.inside_depth + sizes.back_thickness), _back(sizes))
    if sizes.kick != "none":
        yield box((sizes.recess, sizes.recess + sizes.thickness), (0, low))
    if sizes.kick == "base":
        yield box((sizes.depth - sizes.thickness, sizes.depth), (0, low))


def _back(sizes):
    """From where to where the back goes up."""
    _, low, floor, ceiling, top = _heights(sizes)
    if sizes.back == "groove":
        return floor - sizes.seat, ceiling + sizes.seat
    stops = sizes.back == "rabbet" and sizes.top == "over"
    return low, ceiling + sizes.seat if stops else top


def _told(show, sizes, start, pixel):
    _, _, floor, ceiling, top = _heights(sizes)
    thick, wide = sizes.thickness, sizes.width
    roles = {each: "given" if known else "answer" for each, known in sizes.known.items()}
    level = (floor + ceiling) / 2
    first = min((bottom for bottom, _, _ in _shelves(sizes)), default=level)
    middle = (floor + first) / 2 if first < level else level
    yield dimension((0, -top), (wide, -top), 20 * pixel, show.brief(wide), roles["width"])
    yield dimension((0, 0), (0, -top), 22 * pixel, show.brief(top), roles["height"])
    depth = show.brief(sizes.depth)
    yield dimension((start, -top), (start + sizes.depth, -top), 20 * pixel, depth, roles["depth"])
    if len(sizes.bays) <= _MOST_BAYS:
        for left, bay in zip(sizes.bay_starts, sizes.bays, strict=True):
            ends = ((thick + left, -middle), (thick + left + bay, -middle))
            yield dimension(*ends, 0, show.brief(bay), "answer")
    if sizes.kick != "none":
        right = start + sizes.depth
        yield line((start, 0), (right, 0), "edge")
    yield from _names(sizes, start, pixel)


def _names(sizes, start, pixel):
    """The parts by name, each where it is."""
    _, low, floor, ceiling, _ = _heights(sizes)
    middle = start + sizes.inside_depth / 2
    yield label((middle, -ceiling + 10 * pixel), "top", "note")
    yield label((middle, -floor - 10 * pixel), "bottom", "note")
    for bottom, _, fixed in list(_shelves(sizes))[:1]:
        text = "shelf" if fixed else "loose shelf"
        yield label((middle, -bottom + 10 * pixel), text, "note")
    if sizes.back != "none":
        place = sizes.inside_depth + sizes.back_thickness / 2
        yield label((start + place, -(floor + ceiling) / 2), "back", "note", "end")
    if sizes.kick != "none":
        place = start + sizes.recess + sizes.thickness + 4 * pixel
        yield label((place, -low / 2), "toe kick", "note", "start")
    yield label((sizes.width / 2, 20 * pixel), "front", "name")
    yield label((start + sizes.depth / 2, 20 * pixel), "section", "name")


def _words(show, sizes):
    outside = " × ".join(
        f"{show.brief(each)} {word}"
        for each, word in ((sizes.width, "wide"), (sizes.height, "high"), (sizes.depth, "deep"))
    )
    shelves = counted(sizes.fixed + sizes.adjustable, "shelf", "shelves")
    return (
        f"A case {outside}, from the front and in section, with {counted(len(sizes.bays), 'bay')} "
        f"and {shelves} in each. The shelves are drawn evenly spaced."
    )
