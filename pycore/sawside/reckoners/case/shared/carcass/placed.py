"""Where each part of a case stands in it: boxes in exact inches, as `geometry/placed.py` says."""

from sawside.geometry.placed import Box, Placed
from sawside.reckoners.case.shared.carcass.shelf_levels import (
    lays_out_all,
    lays_out_fixed,
    shelf_levels,
)
from sawside.reckoners.case.shared.carcass.strips import band_of


def placed_case(sizes, panels, strips, shelving=None):
    """The `Placed` case; `shelving` is the `Shelving` that was laid out for it.

    A panel in a joint reaches into its neighbor's box, and a shelf starts at the left of its bay.
    """
    by_key = {panel.key: panel for panel in panels}
    shelves = shelf_levels(sizes, shelving)
    laid_out = lays_out_all(sizes, shelving)
    parts = {}
    for key, box in (
        *_shell(sizes, by_key),
        *_dividers(sizes, by_key),
        *_shelves(sizes, by_key, shelves),
        *_back(sizes, by_key),
        *_kick(sizes, by_key),
    ):
        parts.setdefault(key, []).append(box)
    edging = {f"strip_{key}": list(_edging(sizes, by_key[key], parts[key])) for key in parts}
    edging = {panel.key: edging[panel.key] for panel in strips}
    thick = sizes.thickness
    clear = (thick, sizes.width - thick, _floor(sizes), _ceiling(sizes))
    return Placed(
        {key: tuple(boxes) for key, boxes in (parts | edging).items()},
        outside=Box(0, sizes.width, 0, sizes.height, 0, sizes.depth),
        inside=Box(*clear, 0, sizes.inside_depth),
        bays=tuple(_bays(sizes)),
        openings=tuple(
            _openings(sizes, [low for low, kind in shelves if laid_out or kind == "fixed"])
        ),
        shelves=len(shelves),
        levelled=laid_out or not sizes.adjustable,
        agrees=shelving is None or laid_out or lays_out_fixed(sizes, shelving),
        loose=frozenset(key for key in (*parts, *edging) if "adjustable" in key),
        behind=frozenset({"back"}),
        strips=frozenset(edging),
        spaces=dict(_spaces(sizes)),
    )


def _spaces(sizes):
    """What is clear of dividers or fixed shelves, from the front edge of the case back."""
    face, floor, bays = sizes.front - (sizes.case_band or 0), _floor(sizes), list(_bays(sizes))
    whole = (sizes.thickness, sizes.width - sizes.thickness), (floor, _ceiling(sizes))

    def box(across=whole[0], up=whole[1]):
        return Box(*across, *up, face, sizes.inside_depth)

    yield ("inside_width", None), (box(),)
    yield ("inside_height", None), (box(),)
    least = min(sizes.bays)
    yield ("bay", None), tuple(box(each) for each in bays if each[1] - each[0] == least)
    for number, each in enumerate(bays, 1):
        yield ("bays", number), (box(each),)
    levels = list(_openings(sizes, sizes.heights.lows))
    if len({high - low for low, high in levels}) == 1:
        yield ("openings", 1), tuple(box(up=each) for each in levels)
        return
    for number, each in enumerate(levels, 1):
        yield ("openings", number), (box(up=each),)


def _floor(sizes):
    return sizes.foot + sizes.floor


def _ceiling(sizes):
    return sizes.height - sizes.thickness


def _bays(sizes):
    for start, bay in zip(sizes.bay_starts, sizes.bays, strict=True):
        yield sizes.thickness + start, sizes.thickness + start + bay


def _openings(sizes, lows):
    """(low, high) of what is clear between shelves with these lower faces above the bottom."""
    floor, thick = _floor(sizes), sizes.shelf_thickness
    starts = (floor, *(floor + low + thick for low in lows))
    return zip(starts, (*(floor + low for low in lows), _ceiling(sizes)), strict=True)


def _shell(sizes, by_key):
    """The two sides, the top and the bottom."""
    thick, front, side = sizes.thickness, sizes.front, by_key["side"]
    for left in (0, sizes.width - thick):
        right, back = left + thick, front + side.width
        notch = None
        if sizes.kick == "notched":
            notch = Box(left, right, 0, sizes.kick_height, front, sizes.recess)
        yield "side", Box(left, right, sizes.foot, sizes.foot + side.length, front, back, notch)
    for key, low in (("top", _ceiling(sizes)), ("bottom", sizes.kick_height)):
        panel = by_key[key]
        left = 0 if panel.length == sizes.width else thick - sizes.joint
        yield key, Box(left, left + panel.length, low, low + thick, front, front + panel.width)


def _dividers(sizes, by_key):
    low, front = _floor(sizes) - sizes.joint, sizes.front
    for left, _ in list(_bays(sizes))[1:]:
        panel = by_key["divider"]
        ends = (left - sizes.thickness, left, low, low + panel.length)
        yield panel.key, Box(*ends, front, front + panel.width)


def _shelves(sizes, by_key, shelves):
    front, floor = sizes.shelf_front, _floor(sizes)
    for bay, (left, _) in enumerate(_bays(sizes)):
        for level, kind in shelves:
            panel = by_key[sizes.shared.shelf_key(kind, bay)]
            start = left + (sizes.gap if kind == "adjustable" else -sizes.joint)
            low = floor + level
            ends = (start, start + panel.length, low, low + panel.thickness)
            yield panel.key, Box(*ends, front, front + panel.width)


def _back(sizes, by_key):
    if "back" not in by_key:
        return
    panel, free = by_key["back"], sizes.room / 2
    left = 0 if sizes.back == "on" else sizes.thickness - sizes.seat + free
    low = (_floor(sizes) - sizes.seat if sizes.back == "groove" else sizes.kick_height) + free
    ends = (left, left + panel.width, low, low + panel.length)
    yield "back", Box(*ends, sizes.inside_depth, sizes.inside_depth + panel.thickness)


def _kick(sizes, by_key):
    thick, front = sizes.thickness, sizes.recess
    if "kick" in by_key:
        board = by_key["kick"]
        yield "kick", Box(thick, thick + board.length, 0, board.width, front, front + thick)
    if "base_rail" in by_key:
        rail, piece, left = by_key["base_rail"], by_key["base_crosspiece"], sizes.end_recess
        for at in (front, sizes.depth - thick):
            yield rail.key, Box(left, left + rail.length, 0, rail.width, at, at + thick)
        last = left + rail.length - thick
        front += thick
        for at in (left, last, (left + last) / 2)[: piece.count]:
            yield piece.key, Box(at, at + thick, 0, piece.width, front, front + piece.length)


def _edging(sizes, panel, boxes):
    """The strips in front of panels that are alike; one on a level panel is in its middle."""
    deep = band_of(panel, sizes) or 0
    start = sizes.strip_front if panel.is_shelf else sizes.front - deep
    spare = (panel.length - panel.bands) / 2
    for box in boxes:
        if panel.upright:
            low = sizes.kick_height if panel.key == "side" else _floor(sizes)
            ends = (box.left, box.right, low, low + panel.bands)
        else:
            ends = (box.left + spare, box.right - spare, box.low, box.high)
        yield Box(*ends, start, start + deep)
