"""Where each panel of a case stands in it: boxes in exact inches, as `geometry/placed.py` says."""

from sawside.geometry.placed import Box, Placed
from sawside.reckoners.case.shared.carcass.shelf_levels import shelf_levels


def placed_case(sizes, panels, shelving=None):
    """The `Placed` case; `shelving` is the `Shelving` that was laid out for it.

    A panel in a joint reaches into its neighbor's box, and a shelf starts at the left of its bay.
    """
    by_key = {panel.key: panel for panel in panels}
    shelves, laid_out = shelf_levels(sizes, shelving)
    found = {}
    for key, box in (
        *_shell(sizes, by_key),
        *_dividers(sizes, by_key),
        *_shelves(sizes, by_key, shelves),
        *_back(sizes, by_key),
        *_kick(sizes, by_key),
    ):
        found.setdefault(key, []).append(box)
    parts = {key: tuple(boxes) for key, boxes in found.items()}
    return Placed(
        parts,
        Box(0, sizes.width, 0, sizes.height, 0, sizes.depth),
        edging=_edging(sizes, by_key, parts),
        inside=Box(
            sizes.thickness,
            sizes.width - sizes.thickness,
            _floor(sizes),
            _ceiling(sizes),
            0,
            sizes.inside_depth,
        ),
        bays=tuple(_bays(sizes)),
        openings=tuple(_openings(sizes, laid_out)),
        levelled=bool(laid_out) or not shelves,
        loose=frozenset(key for key in parts if key.startswith("adjustable")),
        behind=frozenset({"back"}),
    )


def _floor(sizes):
    return sizes.kick_height + sizes.thickness


def _ceiling(sizes):
    return sizes.height - sizes.thickness


def _bays(sizes):
    for start, bay in zip(sizes.bay_starts, sizes.bays, strict=True):
        yield sizes.thickness + start, sizes.thickness + start + bay


def _openings(sizes, laid_out):
    """Between the shelves that were laid out, or the whole inside."""
    floor, thick = _floor(sizes), sizes.shelf_thickness
    lows = (floor, *(floor + low + thick for low in laid_out))
    return zip(lows, (*(floor + low for low in laid_out), _ceiling(sizes)), strict=True)


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
    front = sizes.inside_depth
    yield (
        "back",
        Box(left, left + panel.width, low, low + panel.length, front, front + panel.thickness),
    )


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


def _edging(sizes, by_key, parts):
    """The strips in front of the panels: on the case up to its inside, on a shelf its length."""
    strips = {}
    for key, boxes in parts.items():
        bands, shelf = by_key[key].bands, key.startswith(("fixed", "adjustable"))
        deep = sizes.shelf_band if shelf else sizes.case_band
        if not bands or not deep:
            continue
        start = sizes.setback if shelf else 0
        strips[key] = tuple(
            Box(*_band_ends(sizes, by_key[key], box), start, start + deep) for box in boxes
        )
    return strips


def _band_ends(sizes, panel, box):
    """From where to where a strip goes across and up; one on a level panel is in its middle."""
    if panel.upright:
        low = sizes.kick_height if panel.key == "side" else _floor(sizes)
        return box.left, box.right, low, low + panel.bands
    spare = (panel.length - panel.bands) / 2
    return box.left + spare, box.right - spare, box.low, box.high
