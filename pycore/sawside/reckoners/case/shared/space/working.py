"""The working of the largest case for a space, with its own numbers."""

from sawside.reckoners.case.shared.space.floor_and_ceiling import depths_of
from sawside.reckoners.case.shared.space.found import bows
from sawside.reckoners.case.shared.space.walls import SIDES
from sawside.reckoners.case.shared.standing_up import raised_line, tallest_line


def working_of(given, show, found):
    """Line by line: the width and its strips, the height and its shims, the depth, standing it."""
    return (
        *_width(given, show, found),
        *_strips(show, found),
        *_height(given, show, found),
        *_floor(given, show, found),
        *_depth(given, show, found),
        *_raised(given, show, found),
    )


def _width(given, show, found):
    walls, number = found.walls, show.number
    told = ", ".join(number(each) for each in given.widths)
    yield f"Smallest of {told}: {number(walls.smallest)}"
    change = abs(walls.change)
    if walls.narrowest < walls.smallest:
        yield (
            f"Narrowest by the walls’ lean: {number(walls.largest)} − {number(change)}"
            f" = {number(walls.narrowest)}"
        )
    if walls.change > 0:
        yield (
            f"Width at the floor: {number(walls.narrowest)} + {number(change)}"
            f" = {number(walls.at_floor)}"
        )
    takes = [walls.takes(side) for side in SIDES if walls.takes(side)]
    if takes:
        less = "".join(f" − {number(each)}" for each in takes)
        yield f"Clear at every height: {number(walls.at_floor)}{less} = {number(walls.clear)}"
    if walls.uneven:
        yield (
            f"Widths vary more than the walls lean: {number(walls.largest)} − "
            f"{number(walls.narrowest)} − {number(change)} = {number(walls.uneven)}"
        )
    if walls.leans:
        bowed = bows(given, walls)
        less = number(bowed) if bowed else f"{len(walls.leans)} × {number(given.scribe)}"
        yield f"Case width: {number(walls.clear)} − {less}{show.equals(found.width)}"


def _strips(show, found):
    walls, number = found.walls, show.number
    if not any(strip.rip for strip in found.strips):
        return
    spare = (walls.clear - found.width.mark) / len(walls.leans)
    yield (
        f"Strip where it’s narrowest: ({number(walls.clear)} − {number(found.width.mark)}) ÷ "
        f"{len(walls.leans)} = {number(spare)}"
    )
    for strip in found.strips:
        side, lean = strip.side.capitalize(), walls.leans[strip.side]
        told = show.equals(show.rounded(strip.bottom, "reach"))
        yield (
            f"{side} strip at the floor: {number(spare)} + {number(walls.takes(strip.side))}{told}"
        )
        sign = "−" if lean > 0 else "+"
        told = show.equals(show.rounded(strip.top, "reach"))
        yield (
            f"{side} strip at the ceiling: {number(strip.bottom)} {sign} {number(abs(lean))}{told}"
        )
    if walls.uneven:
        yield from _ripped(show, found)


def _ripped(show, found):
    walls, number = found.walls, show.number
    for strip in found.strips:
        yield (
            f"{strip.side.capitalize()} strip, ripped: {number(max(strip.bottom, strip.top))} + "
            f"{number(walls.uneven)}{show.equals(show.rounded(strip.rip, 'reach'))}"
        )


def _height(given, show, found):
    heights, number = found.heights, show.number
    for side in SIDES if heights.low_side else ():
        yield (
            f"From the floor’s high point, {side}: {number(heights.measured[side])} − "
            f"{number(heights.drops[side])} = {number(heights.ceiling(side))}"
        )
    yield from _smallest(show, [heights.ceiling(side) for side in SIDES])
    if given.above:
        yield (
            f"Case height: {number(heights.clear)} − {number(given.above)}"
            f"{show.equals(found.height)}"
        )


def _smallest(show, lengths):
    """Which one counts, where they differ."""
    if min(lengths) < max(lengths):
        told = ", ".join(show.number(each) for each in lengths)
        yield f"Smallest of {told}: {show.number(min(lengths))}"


def _floor(given, show, found):
    side = found.heights.low_side
    if side is None:
        return
    drop = found.heights.drop
    yield (
        f"Level line at the {side}: {show.number(given.line)} + {show.number(drop)}"
        f"{show.equals(given.line + drop)}"
    )


def _depth(given, show, found):
    if found.depth is None:
        return
    depths, takes = depths_of(given)
    yield from _smallest(show, depths)
    if takes:
        space = show.number(min(depths))
        yield f"Case depth: {space} − {show.number(takes)}{show.equals(found.depth)}"


def _raised(given, show, found):
    box = found.box
    if box is None:
        return
    if given.kick:
        yield (
            f"Without its toe kick: {show.number(found.height.mark)} − {show.number(given.kick)} = "
            f"{show.number(box.height)}"
        )
    yield raised_line(show, box)
    if box.tallest is not None and not box.stands_up:
        yield tallest_line(show, box)
