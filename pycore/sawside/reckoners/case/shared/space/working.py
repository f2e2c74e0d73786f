"""The working of the largest case for a space, with its own numbers."""

from sawside.reckoners.case.shared.space.baseboard import notch_lines
from sawside.reckoners.case.shared.space.found import bows, scribes
from sawside.reckoners.case.shared.space.located import Located
from sawside.reckoners.case.shared.space.located_working import located_lines, located_strips
from sawside.reckoners.case.shared.space.walls import SIDES
from sawside.reckoners.case.shared.standing_up import deepest_line, raised_line, tallest_line


def working_of(given, show, found):
    """Line by line: the width and its strips, the height and its shims, the depth, standing it."""
    return (
        *_width(given, show, found),
        *_strips(show, found),
        *notch_lines(given, show, found),
        *_height(given, show, found),
        *_floor(given, show, found),
        *_depth(show, found),
        *_raised(given, show, found),
    )


def _width(given, show, found):
    walls, number = found.walls, show.number
    if isinstance(walls, Located):
        yield from located_lines(show, walls)
        less = _scribed(given, show, walls)
        yield f"Case width: {number(walls.clear)} − {less}{show.equals(found.width)}"
        return
    if len(given.widths) > 1:
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
    bowed = bows(given, walls)
    if walls.uneven and walls.leans:
        yield _uneven(given, show, walls, bowed)
    less = number(bowed) if bowed else _scribed(given, show, walls)
    yield f"Case width: {number(walls.clear)} − {less}{show.equals(found.width)}"


def _scribed(given, show, walls):
    """What the strips take, as a product; 0 where there is no wall for one."""
    return f"{len(walls.leans)} × {show.number(given.scribe)}" if walls.leans else "0"


def _uneven(given, show, walls, bowed):
    """By how much the readings differ, and what comes of it."""
    number, change = show.number, abs(walls.change)
    less, more = (f" − {number(change)}", " more than the walls lean") if change else ("", "")
    differ = (
        f"The readings differ by {number(walls.largest)} − {number(walls.narrowest)}{less} = "
        f"{number(walls.uneven)}{more}"
    )
    if not bowed:
        return f"{differ}, so the strips start that much wider"
    return (
        f"{differ}, which is more than the scribes’ {_scribed(given, show, walls)} = "
        f"{number(scribes(given, walls))}, so {number(bowed)} is left free for bowed walls"
    )


def _strips(show, found):
    walls, number = found.walls, show.number
    if isinstance(walls, Located):
        yield from located_strips(show, found)
        return
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
    for at, measured in enumerate(heights.between):
        drop = heights.floor_between(at)
        if drop:
            yield (
                f"From the floor’s high point, height {at + 1} between: {number(measured)} − "
                f"{number(drop)} = {number(measured - drop)}"
            )
    yield from _smallest(show, heights.ceilings)
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


def _depth(show, found):
    back, number = found.back, show.number
    if back is None:
        return
    yield from _smallest(show, back.depths)
    least = min(back.depths)
    if back.at_floor != least:
        lean, at_floor = show.term(back.lean), number(back.at_floor)
        yield f"Depth at the floor: {number(least)}{lean} = {at_floor}"
    if back.takes or back.lean:
        at_floor = number(back.at_floor)
        yield f"Case depth: {at_floor} − {number(back.takes)}{show.equals(found.depth)}"
    if back.lean:
        yield from _behind(show, found)


def _behind(show, found):
    back, number, depth = found.back, show.number, found.depth.mark
    at_floor = back.at_floor - depth
    yield f"Gap behind at the floor: {number(back.at_floor)} − {number(depth)} = {number(at_floor)}"
    lean, at_ceiling = show.term(-back.lean), number(at_floor - back.lean)
    yield f"Gap behind at the ceiling: {number(at_floor)}{lean} = {at_ceiling}"


def _raised(given, show, found):
    box = found.box
    if given.kick:
        yield (
            f"Without its toe kick: {show.number(found.height.mark)} − {show.number(given.kick)} = "
            f"{show.number(found.raised)}"
        )
    if found.deepest is not None:
        yield deepest_line(show, found.raised, found.heights.lowest)
    if box is None:
        return
    yield raised_line(show, box)
    if box.limited and not box.stands_up:
        yield tallest_line(show, box)
