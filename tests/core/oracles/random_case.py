"""Cases at random through the door, each put together and looked at from all sides.

What should be wood must be wood, what should be clear must be clear, and the outside must be what
was asked for. Only behind the front face of the back may a joint that runs through be empty.
"""

from fractions import Fraction
from itertools import pairwise
from math import ceil, floor

import sawside
from tests.core.oracles.assembled_case import (
    Asked,
    assembled,
    cells_of,
    cut_for,
    deep_for,
    panels_cut,
    shelf_of_bay,
)

A_MARK = Fraction(1, 16)


def length(random, least, most):
    """A random length, mostly on a mark."""
    parts = random.choice((8, 16, 32, 64, 7))
    return Fraction(random.randint(ceil(least * parts), floor(most * parts)), parts)


def random_case(random):
    """An `Asked`, outside, with the clear bays and the places of its shelves."""
    t = length(random, 0.5, 1.25)
    back = random.choice(("rabbet", "on", "groove", "none"))
    kick = random.choice(("none", "notched", "base"))
    banding = random.choice(("all", "case", "shelves", "none"))
    band = random.choice((Fraction(0), length(random, 0.125, 0.75)))
    asked = Asked(
        thickness=t,
        top=random.choice(("between", "over")),
        joint=random.choice(("dado", "butt")),
        joint_depth=random.randint(1, 15) * t / 32,
        back=back,
        back_thickness=length(random, 0.125, 0.75) if back != "none" else Fraction(0),
        seat=random.randint(2, 24) * t / 32,
        room=Fraction(0),
        behind=length(random, 0.25, 2) if back == "groove" else Fraction(0),
        kick=kick,
        kick_height=length(random, 1, 5) if kick != "none" else Fraction(0),
        recess=length(random, 1, 3.5),
        end_recess=random.choice((Fraction(0), length(random, 0.25, 2))),
        banding=banding,
        proud=random.choice((True, False)),
        case_band=band if banding in ("all", "case") else Fraction(0),
        shelf_band=band if banding in ("all", "shelves") else Fraction(0),
        setback=random.choice((Fraction(0), length(random, 0, 2))),
        shelf_thickness=random.choice((t, length(random, 0.5, 1))),
        gap=length(random, 0, 0.25),
        dividers=random.choice((0, 0, 1, 2, 3)),
        fixed=random.randint(0, 2),
        adjustable=random.randint(0, 2),
        inside_width=length(random, 20, 60),
        inside_height=length(random, 14, 80),
        inside_depth=length(random, 8, 24),
    )
    if back in ("rabbet", "groove"):
        asked.room = random.randint(0, 3) * asked.seat / 4
    _bays(random, asked)
    fixed = _fixed_places(random, asked)
    asked.shelves = [[*fixed, *_between(random, asked, fixed)] for _ in asked.bays]
    asked.width = asked.inside_width + 2 * t
    asked.height = asked.inside_height + 2 * t + asked.kick_height
    asked.depth = asked.inside_depth + asked.back_thickness + asked.behind
    asked.known = {each: random.random() < 0.6 for each in ("width", "height", "depth")}
    return asked


def _bays(random, asked):
    many, clear = asked.dividers + 1, asked.inside_width - asked.dividers * asked.thickness
    asked.listed = bool(asked.dividers) and random.random() < 0.5
    shares = [random.randint(2, 6) for _ in range(many)] if asked.listed else [1] * many
    asked.bays = [clear * share / sum(shares) for share in shares]
    t, joint = asked.thickness, asked.joint_depth if asked.joint == "dado" else 0
    if not asked.listed:
        asked.bays = _laid_out(asked, [on_a_mark(face) for face in _faces(asked)])
    asked.there = asked.bays
    if asked.dividers:
        faces = [on_a_mark(joint + face, 64) - joint for face in _faces(asked)]
        asked.there = _laid_out(asked, faces)
        right = on_a_mark(asked.inside_width + 2 * joint) - 2 * joint
        asked.there[-1] = right - t - faces[-1]


def on_a_mark(place, division=16):
    """A place in inches as a tape in sixteenths has it: on a sixty-fourth, or else the nearest
    mark."""
    return place if (place * 64).denominator == 1 else Fraction(round(place * division), division)


def _faces(asked):
    """The left face of each divider, from the inside of the left side."""
    return [
        sum(asked.bays[:number]) + (number - 1) * asked.thickness
        for number in range(1, asked.dividers + 1)
    ]


def _laid_out(asked, faces):
    """The clear bays between the sides and dividers whose left faces are there."""
    left, bays = Fraction(0), []
    for face in faces[: asked.dividers]:
        bays.append(face - left)
        left = face + asked.thickness
    return [*bays, asked.inside_width - left]


def _fixed_places(random, asked):
    """Where the fixed shelves of every bay are above its floor: asked for, or evenly on marks."""
    many, thick, high = asked.fixed, asked.shelf_thickness, asked.inside_height
    asked.heights_listed = bool(many) and random.random() < 0.6
    if asked.heights_listed:
        pitch = high / (many + 1)
        return [
            number * pitch + Fraction(random.randint(0, 4), 8) * (pitch - thick)
            for number in range(1, many + 1)
        ]
    pitch = (high + thick) / (many + 1)
    return [on_a_mark(number * pitch - thick) for number in range(1, many + 1)]


def _between(random, asked, fixed):
    """Where the adjustable shelves of a bay are, in the openings that the fixed ones leave."""
    thick, found = asked.shelf_thickness, []
    edges = [(-thick, 0), *((low, low + thick) for low in fixed), (asked.inside_height, 0)]
    for number, ((_, low), (high, _)) in enumerate(pairwise(edges)):
        many = len(range(number, asked.adjustable, len(fixed) + 1))
        pitch = (high - low) / (many + 1)
        found += [
            low + place * pitch + Fraction(random.randint(0, 4), 8) * (pitch - thick)
            for place in range(1, many + 1)
        ]
    return found


def values_of(asked):
    """The form of a case."""
    told = {
        f"{each}": f"{getattr(asked, each if asked.known[each] else f'inside_{each}')} in"
        for each in asked.known
    }
    told |= {f"{each}_is": "outside" if out else "inside" for each, out in asked.known.items()}
    for each in ("thickness", "shelf_thickness", "joint_depth", "setback", "gap", "band"):
        value = max(asked.case_band, asked.shelf_band) if each == "band" else getattr(asked, each)
        told[each] = f"{value} in"
    for each in ("top", "joint", "back", "kick", "banding", "dividers", "fixed", "adjustable"):
        told[each] = str(getattr(asked, each))
    if asked.back != "none":
        told["back_thickness"] = f"{asked.back_thickness} in"
    if asked.back in ("rabbet", "groove"):
        told[f"{asked.back}_depth"] = f"{asked.seat} in"
        told["back_room"] = f"{asked.room} in"
    if asked.back == "groove":
        told["behind"] = f"{asked.behind} in"
    for each in ("kick_height", "recess", "end_recess") if asked.kick != "none" else ():
        told[each] = f"{getattr(asked, each)} in"
    if asked.listed:
        told["bay_widths"] = [f"{bay} in" for bay in asked.bays[:-1]]
    told["solid_edging"] = "proud" if asked.proud else "within"
    if asked.heights_listed:
        told["shelf_heights"] = [f"{low} in" for low in asked.shelves[0][: asked.fixed]]
    return told | {"known": "each"}


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
    bays = asked.bays
    if "bays" in told:
        bays = [Fraction(each["exact"]) for each in told["bays"]["items"]]
    if bays != asked.bays:
        yield f"bays are {bays}"
    if "bay" in told and Fraction(told["bay"]["exact"]) != min(asked.bays):
        yield f"the bay is not {min(asked.bays)}"
    if asked.fixed:
        yield from _told_openings(asked, told["openings"]["items"])


def _told_openings(asked, items):
    """The openings that are not those between the shelves; one stands for all that are equal."""
    thick, lows = asked.shelf_thickness, asked.shelves[0][: asked.fixed]
    wanted = [high - low - thick for low, high in pairwise([-thick, *lows, asked.inside_height])]
    told = [Fraction(each["exact"]) for each in items]
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
