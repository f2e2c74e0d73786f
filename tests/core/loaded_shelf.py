"""Shelves at random, through the door, against a beam and a section that share no code with it."""

from fractions import Fraction

import sawside
from tests.core import beam_oracle

MILLION_PSI = {
    "plywood": 1.01, "mdf": 0.52, "particleboard": 0.40, "maple_red": 1.64, "oak_white": 1.78,
    "cherry_black": 1.49, "pine_longleaf": 1.98, "own": 1.3,
}  # fmt: skip
"""Wood Handbook, Tables 5-3b and 12-1, the least of a range; and one of one's own."""
POUNDS_PER_CUBIC_FOOT = {
    "plywood": 34, "mdf": 48, "particleboard": 45, "maple_red": 37.757664, "oak_white": 47.546688,
    "cherry_black": 34.9608, "pine_longleaf": 41.253744, "own": 0,
}  # fmt: skip
"""Panels: common practice, no source. Woods: .54, .68, .50 and .59 of Wood Handbook, Table 5-3,
each times 69.9216, which is 62.43 lb of water and 12 % more. One given for this time has none."""
CLOSE = 3e-5


def random_shelf(random):
    """What a person might fill in, as text."""
    sixteenths = lambda low, high: f"{random.randint(low * 16, high * 16)}/16 in"  # noqa: E731
    supports = random.choice(["resting", "fixed", "overhanging"])
    return {
        "span": sixteenths(8, 90), "depth": sixteenths(3, 24),
        "thickness": f"{random.randint(12, 64)}/32 in",
        "material": random.choice(list(MILLION_PSI)), "own_stiffness": "1.3",
        "load": "own_lb_ft", "own_lb_ft": str(random.randint(1, 90)),
        "supports": supports, "overhang": sixteenths(1, 6),
        "spread": random.choice(["even", "middle", "quarters"]),
        "strip": random.choice(["none", "front", "back", "both"]),
        "strip_place": random.choice(["edge", "under"]),
        "strip_material": random.choice([*MILLION_PSI, "same"]), "strip_own_stiffness": "1.3",
        "strip_thickness": f"{random.randint(4, 24)}/16 in",
        "strip_height": f"{random.randint(4, 48)}/16 in",
    }  # fmt: skip


def rectangles(values):
    """The section of a shelf as the oracle takes it, and the weight of an inch of it."""
    named = [values["material"], values["strip_material"]]
    named = [named[0], named[0] if named[1] == "same" else named[1]]
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
    """Faults of one shelf at random: none, or a sentence that says what was filled in."""
    values = random_shelf(random)
    said = sawside.handle({"do": "reckon", "reckoner": "shelf_sag", "values": values})
    if not said["ok"]:
        return [f"{said} for {values}"]
    found, expected = float(Fraction(said["answers"][0]["exact"])), sag_of(values)
    if abs(found - expected) > CLOSE * abs(expected) + 1e-9:
        return [f"sag {found}, by the beam {expected}, for {values}"]
    return []


CHECKS = [sag]
