"""Shelves at random, through the door, against beams and plates that share no code with it."""

from fractions import Fraction

import sawside
from tests.core.oracles import beam_oracle, plate_oracle

MILLION_PSI = {
    "plywood": 1.01,
    "mdf": 0.52,
    "particleboard": 0.40,
    "maple_red": 1.64,
    "oak_white": 1.78,
    "cherry_black": 1.49,
    "pine_longleaf": 1.98,
    "own": 1.3,
}
"""Wood Handbook, Tables 5-3b and 12-1, the least of a range; and one of one's own."""
POUNDS_PER_CUBIC_FOOT = {
    "plywood": 34,
    "mdf": 48,
    "particleboard": 45,
    "maple_red": 37.757664,
    "oak_white": 47.546688,
    "cherry_black": 34.9608,
    "pine_longleaf": 41.253744,
    "own": 0,
}
"""Panels: common practice, no source. Woods: .54, .68, .50 and .59 of Wood Handbook, Table 5-3,
each times 69.9216, which is 62.43 lb of water and 12 % more. One given for this time has none."""
CLOSE = 3e-5
CLOSE_PLATE = 0.02
"""Of the largest sag: the core takes few shapes and the oracle few elements."""
ACROSS_AND_SHEAR = {"plywood": (0.3, 1 / 16), "mdf": (1, 0.25), "particleboard": (1, 0.25)}
"""As parts of the stiffness along the board: EN 12369-1 for MDF and particleboard, from memory;
five plies of equal thickness, worked out. All else is taken as wood."""
WOOD = (0.06, 1 / 16)
"""Wood Handbook, Table 5-1, from memory; ASTM D245, from memory."""


def random_shelf(random, strips=("none",), cleats=("none",)):
    """What a person might fill in, as text."""
    sixteenths = lambda low, high: f"{random.randint(low * 16, high * 16)}/16 in"  # noqa: E731
    supports = random.choice(["resting", "fixed", "overhanging"])
    return {
        "span": sixteenths(8, 90),
        "depth": sixteenths(3, 24),
        "thickness": f"{random.randint(12, 64)}/32 in",
        "material": random.choice(list(MILLION_PSI)),
        "own_stiffness": "1.3",
        "load": "own_lb_ft",
        "own_lb_ft": str(random.randint(1, 90)),
        "supports": supports,
        "overhang": sixteenths(1, 6),
        "spread": random.choice(["even", "middle", "quarters"]),
        "strip": random.choice(strips),
        "cleat": random.choice(cleats),
        "strip_place": random.choice(["edge", "under"]),
        "strip_material": random.choice([*MILLION_PSI, "same"]),
        "strip_own_stiffness": "1.3",
        "strip_thickness": f"{random.randint(4, 24)}/16 in",
        "strip_height": f"{random.randint(4, 48)}/16 in",
    }


def rectangles(values):
    """The section of a shelf as the oracle takes it, and the weight of an inch of it."""
    named = named_in(values)
    thick = inches(values, "thickness")
    sizes = [(inches(values, "depth"), thick, 0.0)]
    if values["strip"] != "none":
        wide = inches(values, "strip_thickness") * (2 if values["strip"] == "both" else 1)
        top = thick if values["strip_place"] == "under" else 0.0
        sizes.append((wide, inches(values, "strip_height"), top))
    parts = [(MILLION_PSI[each] * 1e6, *size) for each, size in zip(named, sizes, strict=False)]
    inch = sum(
        POUNDS_PER_CUBIC_FOOT[each] * wide * high / 12**3
        for each, (wide, high, _) in zip(named, sizes, strict=False)
    )
    return parts, inch


def inches(values, key):
    """A length of the form, which is written in inches."""
    return float(Fraction(values[key].removesuffix(" in")))


def sag_of(values):
    """The sag of a shelf in inches, by finite elements and slices: what two loads do is added."""
    span, hangs = inches(values, "span"), values["supports"] == "overhanging"
    over = inches(values, "overhang") if hangs else 0.0
    parts, inch = rectangles(values)
    bending, shear, _ = beam_oracle.section(parts)
    loads = [(values["spread"], float(values["own_lb_ft"]) / 12), ("even", inch)]
    drops = [
        beam_oracle.drops(
            values["supports"], spread, span, each * (span + 2 * over), over, bending, shear
        )
        for spread, each in loads
    ]
    middle, end = (sum(place) for place in zip(*drops, strict=True))
    return max(middle, end) if hangs else middle


def sag(random):
    """Faults of one plain shelf at random: none, or a sentence that says what was filled in."""
    values = random_shelf(random)
    said = sawside.handle({"do": "reckon", "reckoner": "shelf_strength", "values": values})
    if not said["ok"]:
        return [f"{said} for {values}"]
    found, expected = float(Fraction(said["answers"][0]["exact"])), sag_of(values)
    if abs(found - expected) > CLOSE * abs(expected) + 1e-9:
        return [f"sag {found}, by the beam {expected}, for {values}"]
    return []


STEPS = {"span": Fraction(1, 16), "thickness": Fraction(-1, 16), "load": Fraction(1, 10)}
"""One mark further, or a tenth of a pound, towards too much."""


def solved(random):
    """The same of one that was worked out backwards: it keeps its limit, one step more does not."""
    solve, creep, most = random.choice(list(STEPS)), 1.5, random.randint(2, 24)
    values = random_shelf(random)
    if solve == "span" and values["supports"] == "overhanging":
        values["supports"] = "resting"
    limit = {"limit": "own", "own_limit": f"{most}/64 in", "creep": "own", "own_creep": "1.5"}
    asked = values | limit | {"solve": solve}
    said = sawside.handle({"do": "reckon", "reckoner": "shelf_strength", "values": asked})
    if not said["ok"]:
        kind = said["error"]["kind"]
        return [] if kind == "impossible" else [f"{said} for {asked}"]
    answer = said["answers"][0]
    pounds = answer["text"].split(" lb")[0].replace(",", "")
    found = Fraction(pounds if solve == "load" else answer["mark"])
    at, beyond = (
        creep * sag_of(_with(values, solve, size)) if size > 0 else None
        for size in (found, found + STEPS[solve])
    )
    if at > most / 64 * (1 + CLOSE):
        return [f"{solve} {found} sags {at}, more than {most}/64, for {asked}"]
    if beyond is not None and beyond < most / 64 * (1 - CLOSE):
        return [f"{solve} {found} could be a step further, {beyond}, for {asked}"]
    return []


def _with(values, solve, size):
    """The form with what was worked out filled in; a load on the whole shelf by the foot."""
    if solve != "load":
        return values | {solve: f"{size} in"}
    over = inches(values, "overhang") if values["supports"] == "overhanging" else 0.0
    return values | {"own_lb_ft": str(float(size) * 12 / (inches(values, "span") + 2 * over))}


def edges(random):
    """The same of one shelf with strips or a cleat: its front, its back and the largest sag."""
    values = random_shelf(random, ("front", "back", "both"), ("none", "none", "back"))
    values |= {"span": f"{random.randint(20 * 16, 72 * 16)}/16 in"}
    values |= {"depth": f"{random.randint(6 * 16, 16 * 16)}/16 in"}
    values |= {"strip_height": f"{random.randint(8, 40)}/16 in"}
    said = sawside.handle({"do": "reckon", "reckoner": "shelf_strength", "values": values})
    if not said["ok"]:
        return [f"{said} for {values}"]
    told = {answer["key"]: answer.get("exact") for answer in said["answers"]}
    found = [float(Fraction(told[key])) for key in ("sag_front", "sag_back", "sag")]
    expected = edges_of(values)
    if any(
        abs(one - other) > CLOSE_PLATE * expected[2]
        for one, other in zip(found, expected, strict=True)
    ):
        return [f"front, back, most {found}, by the plate {expected}, for {values}"]
    return []


def edges_of(values):
    """(front, back, most) of a shelf with strips or a cleat, by finite elements, shear added."""
    span, depth, thick = (inches(values, key) for key in ("span", "depth", "thickness"))
    hangs, cleat = values["supports"] == "overhanging", values["cleat"] == "back"
    over = inches(values, "overhang") if hangs else 0.0
    glued = [edge for edge in ("front", "back") if values["strip"] in (edge, "both")]
    glued = [edge for edge in glued if edge == "front" or not cleat]
    strips = [strip_of(values, edge, depth, thick) for edge in glued]
    parts, _ = rectangles(values | {"strip": {0: "none", 1: "front", 2: "both"}[len(glued)]})
    load, own = loads_of(values, parts, span + 2 * over)
    stiffness = MILLION_PSI[values["material"]] * 1e6
    across, shear = ACROSS_AND_SHEAR.get(values["material"], WOOD)
    drop, _ = plate_oracle.bent(
        (stiffness, across * stiffness, shear * stiffness, thick, depth, span),
        strips,
        [
            (values["spread"], load, "all"),
            ("even", own[0], "board"),
            *(("even", weight, "strips") for weight in own[1:]),
        ],
        supports=values["supports"],
        overhang=over,
        cleat=cleat,
    )
    slips = slips_of(values, parts, span, over, ((values["spread"], load), ("even", sum(own))))
    faces = [0.0, depth, *(face for strip in strips for face in strip[2:4])]
    low, high = min(faces), max(faces)
    rows = []
    for slip, x in zip(slips, (span / 2, -over)[: 2 if hangs else 1], strict=False):
        places = (low + (high - low) * part / 8 for part in range(9))
        rows.append([drop(x, y) + slip * (max(1 - y / depth, 0) if cleat else 1) for y in places])
    front, back = (max(0.0, *(row[at] for row in rows)) for at in (0, -1))
    return front, back, max(max(row) for row in rows)


def loads_of(values, parts, whole):
    """(pounds that stand on it, what each part weighs itself)."""
    own = [
        POUNDS_PER_CUBIC_FOOT[named] * wide * high * whole / 12**3
        for named, (_, wide, high, _) in zip(named_in(values), parts, strict=False)
    ]
    return float(values["own_lb_ft"]) / 12 * whole, own


def slips_of(values, parts, span, over, loads):
    """What shear adds in the middle and at the ends: a beam less one that is stiff in shear."""
    bending, slide, _ = beam_oracle.section(parts)
    slips = [0.0, 0.0]
    for spread, pounds in loads:
        for sign, shear in ((1, slide), (-1, 1e9 * slide)):
            beam = values["supports"], spread, span, pounds, over, bending, shear
            slips = [a + sign * b for a, b in zip(slips, beam_oracle.drops(*beam), strict=True)]
    return slips


def named_in(values):
    """The materials of the board and the strip."""
    board, strip = values["material"], values["strip_material"]
    return board, board if strip == "same" else strip


def strip_of(values, edge, depth, thick):
    """A strip as the oracle of plates takes it."""
    named = named_in(values)[1]
    stiffness = MILLION_PSI[named] * 1e6
    wide, high = inches(values, "strip_thickness"), inches(values, "strip_height")
    if values["strip_place"] == "under":
        front, top = 0.0 if edge == "front" else depth - wide, thick / 2
    else:
        front, top = -wide if edge == "front" else depth, -thick / 2
    shear = ACROSS_AND_SHEAR.get(named, WOOD)[1] * stiffness
    return stiffness, shear, front, front + wide, top, top + high


CHECKS = [sag]
