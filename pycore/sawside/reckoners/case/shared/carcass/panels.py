"""The panels of a case, in the order in which they are cut, each with its joints."""

from itertools import chain

from sawside.reckoners.case.shared.carcass.panel import Panel
from sawside.reckoners.case.shared.carcass.panel_cuts import divider_cuts, level_cuts, side_cuts

_CENTER_FROM = 36
"""Inches: a separate base wider than this has a crosspiece in the center (common practice, no
source)."""


def panels_of(sizes):
    """Every `Panel` of a case of these `Sizes`."""
    return tuple(
        chain(
            (_side(sizes), _top(sizes), _bottom(sizes)),
            _dividers(sizes),
            _fixed(sizes),
            _adjustable(sizes),
            _back(sizes),
            _kick(sizes),
        )
    )


def _banded(sizes, long):
    return long if sizes.case_band is not None else 0


def _side(sizes):
    over = sizes.thickness - sizes.joint if sizes.top == "over" else 0
    length = sizes.height - sizes.foot - over
    seen = sizes.height - (sizes.thickness if sizes.top == "over" else 0) - sizes.kick_height
    return Panel(
        key="side",
        name="Side",
        length=length,
        width=sizes.rear - sizes.front,
        thickness=sizes.thickness,
        count=2,
        upright=True,
        bands=_banded(sizes, seen),
        cuts=tuple(side_cuts(sizes, length)),
        notes=("Left and right are mirror images.",),
    )


def _top(sizes):
    if sizes.top == "between":
        return _level(sizes, "top", sizes.inside_width + 2 * sizes.joint, sizes.bottom_rear)
    return _level(sizes, "top", sizes.width, sizes.rear)


def _bottom(sizes):
    return _level(sizes, "bottom", sizes.inside_width + 2 * sizes.joint, sizes.bottom_rear)


def _level(sizes, key, length, rear):
    over = length == sizes.width
    return Panel(
        key=key,
        name=key.capitalize(),
        length=length,
        width=rear - sizes.front,
        thickness=sizes.thickness,
        bands=_banded(sizes, sizes.width if over else sizes.inside_width),
        cuts=tuple(level_cuts(sizes, key, length, rear)),
        notes=("Its ends show: band them too if you like.",) if over else (),
        turned=key == "top" and tuple(sizes.bays) != tuple(reversed(sizes.bays)),
    )


def _dividers(sizes):
    if sizes.dividers:
        yield Panel(
            key="divider",
            name="Divider",
            length=sizes.inside_height + 2 * sizes.joint,
            width=sizes.inside_depth - sizes.front,
            thickness=sizes.thickness,
            count=sizes.dividers,
            upright=True,
            must="go in",
            bands=_banded(sizes, sizes.inside_height),
            cuts=tuple(divider_cuts(sizes)),
        )


def _bays_alike(sizes):
    """(the clear width that shelves are cut for, how its bays are called, their numbers)."""
    widths, given = {}, zip(sizes.shared.cut_for, sizes.bays, strict=True)
    for number, (narrow, bay) in enumerate(given, 1):
        key = narrow if sizes.shared.even is not None else (narrow, bay)
        widths.setdefault(key, (narrow, []))[1].append(number)
    for narrow, numbers in widths.values():
        named = f"bay{'s' if len(numbers) > 1 else ''} {', '.join(map(str, numbers))}"
        yield narrow, "" if len(widths) == 1 else f", {named}", numbers


def _fixed(sizes):
    for bay, named, numbers in _bays_alike(sizes) if sizes.fixed else ():
        length = bay + 2 * sizes.joint
        bands = 0 if sizes.shelf_band is None else length if sizes.band_goes_in else bay
        yield _shelf(sizes, ("fixed", sizes.fixed), named, numbers, length, bands)


def _adjustable(sizes):
    for bay, named, numbers in _bays_alike(sizes) if sizes.adjustable else ():
        length = bay - 2 * sizes.gap
        bands = 0 if sizes.shelf_band is None else length
        yield _shelf(sizes, ("adjustable", sizes.adjustable), named, numbers, length, bands)


def _shelf(sizes, kind, named, numbers, length, bands):
    """The shelves of one (kind, how many in a bay) for the bays with these numbers."""
    key, many = kind
    differ = len({sizes.bays[number - 1] for number in numbers}) > 1
    return Panel(
        key=f"{key}_{numbers[0]}" if named else key,
        name=f"{key.capitalize()} shelf{named}",
        length=length,
        width=sizes.inside_depth - sizes.shelf_front,
        thickness=sizes.shelf_thickness,
        count=many * len(numbers),
        must="go in",
        bands=bands,
        notes=("Cut for the narrowest of its bays: all are alike.",) if differ else (),
    )


def _back(sizes):
    """Upright, from the underside of the bottom up, or from groove to groove; with the room
    around it."""
    clear = sizes.inside_height
    high, wide = {
        "none": (0, 0),
        "on": (clear + 2 * sizes.thickness, sizes.width),
        "groove": (clear + 2 * sizes.seat, sizes.inside_width + 2 * sizes.seat),
        "rabbet": (
            clear + sizes.thickness + (sizes.seat if sizes.top == "over" else sizes.thickness),
            sizes.inside_width + 2 * sizes.seat,
        ),
    }[sizes.back]
    if sizes.back != "none":
        yield Panel(
            key="back",
            name="Back",
            length=high - sizes.room,
            width=wide - sizes.room,
            thickness=sizes.back_thickness,
            upright=True,
            must=None if sizes.back == "on" else "go in",
        )


def _kick(sizes):
    high, thick = sizes.kick_height, sizes.thickness
    if sizes.kick == "notched":
        yield Panel("kick", "Toe kick", sizes.inside_width, high, thick, must="go in")
    if sizes.kick == "base":
        wide = sizes.width - 2 * sizes.end_recess
        center = wide > _CENTER_FROM
        where = "One at each end of the base" + (", one in the center." if center else ".")
        yield Panel("base_rail", "Base rail", wide, high, thick, 2, notes=("Front and back.",))
        yield Panel(
            "base_crosspiece",
            "Base crosspiece",
            sizes.depth - sizes.recess - 2 * thick,
            high,
            thick,
            3 if center else 2,
            notes=(where,),
        )
