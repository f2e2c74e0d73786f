"""Cases at random through the door, each put together and looked at from all sides.

What should be wood must be wood, what should be clear must be clear, and the outside must be what
was asked for. Only behind the front face of the back may a joint that runs through be empty.
"""

from fractions import Fraction
from itertools import pairwise

import sawside
from tests.core.oracles.assembled_case import assembled, cut_for, deep_for, panels_cut, shelf_of_bay
from tests.core.oracles.cells import cells_of
from tests.core.oracles.random_case import random_case, values_of

A_MARK = Fraction(1, 16)


def check_case(random):
    """What is wrong with a random case, as sentences."""
    asked = random_case(random)
    values = values_of(asked)
    said = sawside.handle({"do": "reckon", "reckoner": "carcass", "values": values})
    if not said["ok"]:
        return [f"refused: {said['error']['message']} for {values}"]
    faults = [*_told(asked, said), *check_built(asked, panels_cut(values))]
    return [f"{fault} for {values}" for fault in faults]


def _told(asked, said):
    """The answers that are not what was asked for."""
    told = {each["key"]: each for each in said["answers"]}
    for place in ("outside", "inside"):
        for each in asked.known:
            wanted = getattr(asked, each if place == "outside" else f"inside_{each}")
            if Fraction(told[f"{place}_{each}"]["exact"]) != wanted:
                yield f"{place} {each} is not {wanted}"
    alike = len(set(asked.bays)) == 1
    if _lengths(told.get("bays", {})) != ([] if alike else asked.bays):
        yield f"bays are told as {told.get('bays')}"
    if (alike or not asked.listed) and Fraction(told["bay"]["exact"]) != min(asked.bays):
        yield f"the bay is not {min(asked.bays)}"
    if asked.fixed:
        yield from _told_openings(asked, _lengths(told["openings"]))


def _lengths(answer):
    return [Fraction(each["exact"]) for each in answer.get("items", ())]


def _told_openings(asked, told):
    """The openings that are not those between the shelves; one stands for all that are equal."""
    thick, lows = asked.shelf_thickness, asked.shelves[0][: asked.fixed]
    wanted = [high - low - thick for low, high in pairwise([-thick, *lows, asked.inside_height])]
    if told != (wanted if len(set(wanted)) > 1 else wanted[:1]):
        yield f"openings are {told}"


def check_built(asked, panels):
    """What is wrong with the case when it is put together."""
    made, bays, floor, ceiling = assembled(asked, panels)
    if [right - left for left, right in bays] != asked.bays:
        yield "the dadoes leave other bays"
    if (ceiling + asked.thickness, ceiling - floor) != (asked.height, asked.inside_height):
        yield "it is not as high"
    wood = list(_wood(asked, bays, floor, ceiling))
    ahead = _ahead(asked)
    clear = [(*bay, -ahead, asked.inside_depth, floor, ceiling) for bay in bays]
    loose = [*_loose(asked), *_short(asked, panels, bays, floor)]
    notch = (0, asked.width, 0, asked.recess, 0, asked.low)
    faults, planes, cells = made.filled([*wood, *clear, *loose, notch])
    yield from faults
    for axis, size in enumerate((asked.width, asked.depth, asked.height)):
        if planes[axis][0] != (-ahead if axis == 1 else 0) or planes[axis][-1] != size:
            yield f"from {planes[axis][0]} to {planes[axis][-1]} along axis {axis}"
    open_ = {cell for box in loose for cell in cells_of(box, planes)}
    if asked.kick == "notched":
        open_.update(cells_of(notch, planes))
        if any(cell in cells for cell in cells_of(notch, planes)):
            yield "there is wood in the toe space"
    for box in wood:
        if any(cell not in cells for cell in cells_of(box, planes) if cell not in open_):
            yield f"a gap in {tuple(map(str, box))}"
    yield from _ends(asked, panels, made, bays, ceiling)
    yield from _shelf_strips(asked, panels, made, bays)
    for box in clear:
        found = {cells[cell] for cell in cells_of(box, planes) if cell in cells}
        if any("shelf" not in name for name in found):
            yield f"{sorted(found)} in a bay"


def _ahead(asked):
    """How far strips that stand proud are in front of the depth that was asked for."""
    if not asked.proud:
        return 0
    shelves = asked.fixed + asked.adjustable
    return max(asked.case_band, asked.shelf_band - asked.setback if shelves else 0, 0)


def _ends(asked, panels, made, bays, ceiling):
    """Shelves and a back that don't reach as far to the right, back and up as their joints go."""
    side, top = panels["side"], panels["top"]
    owners = [panels.get("divider")] * asked.dividers + [side]
    for name, box, _ in made.parts:
        if name.startswith(("fixed", "adjustable")):
            bay = int(name.rpartition(" ")[2]) - 1
            into = deep_for(owners[bay], "a fixed shelf")
            kind = name.partition(" ")[0]
            narrow = _narrowest(asked, panels, kind, bay)
            end = bays[bay][0] + narrow + (into if kind == "fixed" else -asked.gap)
            if asked.there[bay] - narrow > A_MARK:
                yield f"{name} is {asked.there[bay] - narrow} short"
            if (box[1], box[3]) != (end, asked.inside_depth):
                yield f"{name} ends at {box[1]}, {box[3]}"
        if name == "back":
            free = asked.room / 2
            wide = asked.width - asked.thickness + deep_for(side, "the back") - free
            high = ceiling + deep_for(top, "the back") - free
            end = (asked.width if asked.back == "on" else wide, box[3], asked.height - free)
            if cut_for(top, "the back"):
                end = (wide, box[3], high)
            if box[1::2] != end:
                yield f"the back ends at {box[1]}, {box[5]}"


def _shelf_strips(asked, panels, made, bays):
    """Strips of shelves that are not as long as they are seen, or not as high as the shelf: those
    that are all behind the front of the case go into its dadoes."""
    strip = asked.setback - (asked.shelf_band if asked.proud else 0)
    for name, box, _ in made.parts:
        if not name.startswith("strip of a") or " shelf in bay " not in name:
            continue
        kind, bay = name.split()[3], int(name.rpartition(" ")[2]) - 1
        joint = deep_for(panels["side"], "a fixed shelf") if strip >= asked.front else 0
        into = joint if kind == "fixed" else -asked.gap
        left = bays[bay][0]
        right = left + _narrowest(asked, panels, kind, bay)
        if (box[0], box[1]) != (left - into, right + into):
            yield f"{name} goes from {box[0]} to {box[1]}"
        if (box[3] - box[2], box[5] - box[4]) != (asked.shelf_band, asked.shelf_thickness):
            yield f"{name} is {box[3] - box[2]} by {box[5] - box[4]}"


def _short(asked, panels, bays, floor):
    """Where a fixed shelf that is cut for a narrower bay leaves the end of its right dado empty."""
    owners = [panels.get("divider")] * asked.dividers + [panels["side"]]
    for bay, (left, right) in enumerate(bays):
        for low in asked.shelves[bay][: asked.fixed]:
            end = right + deep_for(owners[bay], "a fixed shelf")
            short = right - left - _narrowest(asked, panels, "fixed", bay)
            z = (floor + low, floor + low + asked.shelf_thickness)
            if short:
                yield (end - short, end, 0, asked.inside_depth, *z)


def _narrowest(asked, panels, kind, bay):
    """The narrowest of the bays that a shelf is for, asked for and as the case is marked."""
    own = shelf_of_bay(panels, kind, bay)
    return min(
        min(asked.bays[each], asked.there[each])
        for each in range(len(asked.bays))
        if shelf_of_bay(panels, kind, each) is own
    )


def _wood(asked, bays, floor, ceiling):
    """Where a case is wood all through."""
    t, wide, deep, low = asked.thickness, asked.width, asked.inside_depth, asked.low
    rear = deep + asked.behind + asked.back_thickness * (asked.back != "on")
    for x in ((0, t), (wide - t, wide)):
        yield (*x, 0, rear, asked.foot, asked.height)
    for z in ((low, floor), (ceiling, asked.height)):
        yield (0, wide, 0, asked.depth - asked.back_thickness * (asked.back == "on"), *z)
    for before, after in pairwise(bays):
        yield (before[1], after[0], 0, deep, floor, ceiling)
    if asked.proud and asked.case_band:
        y = (-asked.case_band, 0)
        yield from ((*x, *y, low, asked.height) for x in ((0, t), (wide - t, wide)))
        yield from ((0, wide, *y, *z) for z in ((low, floor), (ceiling, asked.height)))
        yield from ((before[1], after[0], *y, floor, ceiling) for before, after in pairwise(bays))
    if asked.back != "none":
        yield (t, wide - t, deep, deep + asked.back_thickness, floor, ceiling)
    if asked.back == "on":
        yield (0, wide, deep, asked.depth, low, asked.height)
    if asked.kick == "notched":
        yield (t, wide - t, asked.recess, asked.recess + t, 0, low)
    if asked.kick == "base":
        ends = (asked.end_recess, wide - asked.end_recess)
        for y in (asked.recess, asked.depth - t):
            yield (*ends, y, y + t, 0, low)
        for x in (ends[0], ends[1] - t):
            yield (x, x + t, asked.recess, asked.depth, 0, low)


def _loose(asked):
    """Where a joint that runs through may be empty: behind the front of the back, as deep as the
    deepest joint goes into sides, top and bottom."""
    if asked.back not in ("rabbet", "groove"):
        return
    t, wide, high = asked.thickness, asked.width, asked.height
    into = max(asked.seat, asked.joint_depth if asked.joint == "dado" else 0)
    behind = (asked.inside_depth, asked.depth)
    inner = (t - into, wide - t + into)
    for x in ((inner[0], t), (wide - t, inner[1])):
        yield (*x, *behind, 0, high)
    free = asked.room / 2
    for z in (
        (asked.low + t - into, asked.low + t),
        (high - t, high - t + into),
        (asked.low, asked.low + free),
        (high - free, high),
    ):
        if z[0] < z[1]:
            yield (*inner, *behind, *z)
