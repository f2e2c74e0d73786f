"""A case in scale: its front, and a section through one bay seen from its right side.

`sizes` is a case as `reckoners/case/shared/carcass/sizes.py` has it, `shelves` are its levels as
`shelf_levels.py` there. The heights of its adjustable shelves are for the eye only.
"""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, polygon, rectangle
from sawside.lengths.real import nearby
from sawside.lengths.words import counted

_WIDE, _HIGH = 200, 110
"""Pixels of a narrow phone that both views take, beside and between which there is room for names;
and how high they may be there."""
_MOST_BAYS = 3
"""More different ones than these have no room for their widths."""
_ROLES = {"fixed": "stock", "adjustable": "hatch"}


@lazy
def carcass_drawing(show, sizes, shelves):
    """The front view, at its right the section."""
    floor, thick = sizes.kick_height + sizes.thickness, sizes.shelf_thickness
    shelves = [(floor + low, floor + low + thick, kind) for low, kind in shelves]
    wide, deep, high = (float(nearby(each)) for each in (sizes.width, sizes.depth, sizes.height))
    pixel = max((wide + deep) / _WIDE, high / _HIGH)
    start = wide + 80 * pixel
    shapes = [*_front(sizes, shelves), *_section(sizes, shelves, start)]
    shapes += [*_told(show, sizes, start, pixel), *_names(sizes, shelves, start, pixel)]
    box = (-46 * pixel, -high - 54 * pixel, start + deep + 62 * pixel, 44 * pixel)
    return drawing(_words(show, sizes), box, shapes)


def _box(x, z, role="stock", part=None):
    """A rectangle from (left, right) and (bottom, top), up from the floor."""
    return rectangle(x[0], -z[1], x[1], -z[0], role, part)


def _heights(sizes):
    """The levels of a case: foot, underside and top of the bottom, underside and top of the top."""
    low, thick = sizes.kick_height, sizes.thickness
    return sizes.foot, low, low + thick, sizes.height - thick, sizes.height


def _front(sizes, shelves):
    foot, low, floor, ceiling, top = _heights(sizes)
    thick, joint, right = sizes.thickness, sizes.joint, sizes.width - sizes.thickness
    over = sizes.top == "over"
    for x in ((0, thick), (right, sizes.width)):
        yield _box(x, (foot, ceiling + joint if over else top), part="side")
    shown = 0 if sizes.case_band else joint
    yield _box((thick - shown, right + shown), (low, floor), part="bottom")
    if over:
        yield _box((0, sizes.width), (ceiling, top), part="top")
    else:
        yield _box((thick - shown, right + shown), (ceiling, top), part="top")
    for number, (start, bay) in enumerate(zip(sizes.bay_starts, sizes.bays, strict=True)):
        left = thick + start
        if start:
            yield _box((left - thick, left), (floor, ceiling), part="divider")
        for bottom, upper, kind in shelves:
            part = sizes.shared.shelf_key(kind, number)
            yield _box((left, left + bay), (bottom, upper), _ROLES[kind], part)
    if sizes.kick != "none":
        ends = (thick, right)
        if sizes.kick == "base":
            ends = (sizes.end_recess, sizes.width - sizes.end_recess)
        yield _box(ends, (0, low), "ghost", "kick" if sizes.kick == "notched" else "base_rail")


def _section(sizes, shelves, start):
    """Parts that are cut through are wood, the side behind them is an outline."""
    foot, low, floor, ceiling, top = _heights(sizes)
    front, over = sizes.front, sizes.top == "over"

    def box(y, z, role="stock", part=None):
        return _box((start + y[0], start + y[1]), z, role, part)

    outline = [(front, foot), (front, top), (sizes.rear, top), (sizes.rear, foot)]
    if sizes.kick == "notched":
        outline[:1] = [(sizes.recess, 0), (sizes.recess, low), (front, low)]
    yield polygon([(start + y, -z) for y, z in outline], "ghost", "side")
    yield box((front, sizes.bottom_rear), (low, floor), part="bottom")
    yield box((front, sizes.rear if over else sizes.bottom_rear), (ceiling, top), part="top")
    for bottom, upper, kind in shelves:
        ends = (sizes.shelf_front, sizes.inside_depth)
        part = sizes.shared.shelf_key(kind, 0)
        yield box(ends, (bottom, upper), _ROLES[kind], part)
        if sizes.shelf_band:
            ends = (sizes.strip_front, sizes.shelf_front)
            yield box(ends, (bottom, upper), "hatch", f"strip_{part}")
    levels = {"bottom": (low, floor), "top": (ceiling, top)}
    for part, level in levels.items() if sizes.case_band else ():
        yield box((front - sizes.case_band, front), level, "hatch", f"strip_{part}")
    if sizes.back != "none":
        ends = (sizes.inside_depth, sizes.inside_depth + sizes.back_thickness)
        yield box(ends, _back(sizes), part="back")
    if sizes.kick != "none":
        part = "kick" if sizes.kick == "notched" else "base_rail"
        yield box((sizes.recess, sizes.recess + sizes.thickness), (0, low), part=part)
    if sizes.kick == "base":
        yield box((sizes.depth - sizes.thickness, sizes.depth), (0, low), part="base_rail")


def _back(sizes):
    """From where to where the back goes up, in the middle of its room."""
    _, low, floor, ceiling, top = _heights(sizes)
    free = sizes.room / 2
    if sizes.back == "groove":
        return floor - sizes.seat + free, ceiling + sizes.seat - free
    stops = sizes.back == "rabbet" and sizes.top == "over"
    return low + free, (ceiling + sizes.seat if stops else top) - free


def _told(show, sizes, start, pixel):
    """The outside, and below it the width of a bay, or of each where they differ; that of the first
    one of more than two that are equal but for a mark."""
    wide, top, deep = sizes.width, sizes.height, sizes.depth
    for each, ends in (
        ("width", ((0, -top), (wide, -top), 18 * pixel)),
        ("height", ((0, 0), (0, -top), 20 * pixel)),
        ("depth", ((start, -top), (start + deep, -top), 18 * pixel)),
    ):
        role = "given" if sizes.known[each] else "answer"
        yield dimension(*ends, show.brief(getattr(sizes, each)), role, each)
    bays = list(zip(sizes.bay_starts, sizes.bays, strict=True))
    alike = len(set(sizes.bays)) == 1
    one = alike or (sizes.shared.even is not None and len(bays) > 2)
    shown = bays[:1] if one else bays
    name = ("bay" if sizes.dividers else "inside") if alike else "first bay"
    for left, bay in shown if len(shown) <= _MOST_BAYS else ():
        left += sizes.thickness
        text = f"{name} {show.brief(bay)}" if len(shown) == 1 else show.brief(bay)
        yield dimension((left + bay, 0), (left, 0), 16 * pixel, text, "answer")


def _names(sizes, shelves, start, pixel):
    """The parts of the section by name, left of it; the back and the toe kick at its right."""
    _, low, floor, ceiling, top = _heights(sizes)
    beside, behind = start - 8 * pixel, start + sizes.depth + 5 * pixel
    named = [("top", (ceiling + top) / 2), ("bottom", (low + floor) / 2)]
    fixed_first = sorted(shelves, key=lambda each: each[2] != "fixed")
    named += [("shelf", (lower + upper) / 2) for lower, upper, _ in fixed_first[:1]]
    for text, z in named:
        yield label((beside, -z), text, "note", "end")
    if sizes.back != "none":
        yield label((behind, -(floor + ceiling) / 2), "back", "note", "start")
    if sizes.kick != "none":
        yield label((behind, -low / 2), "toe kick", "note", "start")
    yield label((start + sizes.depth / 2, -top - 44 * pixel), "section", "name")


def _words(show, sizes):
    outside = " × ".join(
        f"{show.brief(each)} {word}"
        for each, word in ((sizes.width, "wide"), (sizes.height, "high"), (sizes.depth, "deep"))
    )
    shelves = counted(sizes.fixed + sizes.adjustable, "shelf", "shelves")
    spread = " The adjustable shelves are drawn evenly spaced." if sizes.adjustable else ""
    return (
        f"A case {outside}, from the front and in section, with {counted(len(sizes.bays), 'bay')} "
        f"and {shelves} in each.{spread}"
    )
