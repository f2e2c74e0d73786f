"""What is asked of doors, at random: openings, fits, frames, panels and wood."""

from fractions import Fraction

from tests.core.oracles.random_forms import length, typed

NONE = Fraction(0)
FRAMED = ("sheet", "wood", "glass")
NUMBERS = ("own_tangential", "own_radial", "now", "low", "high")
"""What is no length."""


def form(asked):
    """What is asked for as it is typed."""
    return typed(asked, numbers=NUMBERS)


def random_doors(random):
    """What is asked for, as {key: value}; lengths are inches."""
    made = random.choice((*FRAMED, *FRAMED, "slab", "solid"))
    fit = random.choice(("inset", "inset", "overlay", "full", "half", "lipped"))
    known = random.choice(("opening", "opening", "door"))
    doors = random.randint(1, 4)
    asked = {
        "made": made,
        "fit": fit,
        "known": known,
        "doors": doors,
        "width": length(random, 11, 30) * (doors if known == "opening" else 1),
        "height": length(random, 12, 50),
        "between": length(random, 0, 0.25),
        "thickness": length(random, 0.75, 1),
    }
    asked |= _room(random, fit)
    asked |= _frame(random) if made in FRAMED else {}
    if made == "slab":
        asked["banding"] = length(random, 0, 0.5)
    if made == "glass":
        asked |= {"glass_clearance": length(random, 0, 0.15), "deep": Fraction(1, 2)}
    if made in ("sheet", "wood"):
        asked |= {"hold": random.choice(("groove", "rabbet")), "clearance": length(random, 0, 0.15)}
    if fit == "inset" and made != "slab":
        asked["trim"] = random.choice((NONE, Fraction(1, 16), length(random, 0, 0.25)))
    return asked | (_wood(random) if made in ("wood", "solid") else {})


def _room(random, fit):
    if fit == "inset":
        return {key: length(random, 0, 0.2) for key in ("gap", "top_gap", "bottom_gap")}
    asked = {
        f"{side}_lap": length(random, 0, 0.25)
        for side in ("left", "right", "top", "bottom")
        if random.random() < 0.3
    }
    if fit == "overlay":
        return asked | {"lap": length(random, 0, 1)}
    if fit == "lipped":
        return asked | {
            "lip": length(random, 0.125, 0.25),
            "lip_rabbet": length(random, 0.375, 0.5),
        }
    return asked | {"edge": length(random, 0.5, 1.5), "reveal": length(random, 0, 0.25)}


def _frame(random):
    joint = random.choice(("cope", "stub", "mortise", "miter", "lap"))
    stile, groove = length(random, 1.75, 2.75), length(random, 0.25, 0.5)
    same = joint == "miter"
    asked = {
        "joint": joint,
        "stile": stile,
        "top_rail": stile if same else length(random, 1.75, 3),
        "bottom_rail": stile if same else length(random, 1.75, 4),
        "groove": groove,
        "panel": random.choice((Fraction(1, 8), Fraction(1, 4), length(random, 0.125, 0.4))),
    }
    if joint in ("cope", "stub"):
        asked["tongue"] = random.choice((groove, groove * random.randint(2, 4) / 4))
    if joint == "mortise":
        asked["tenon"] = length(random, 0.5, 1.5)
    if joint != "miter":
        asked |= {"middle": random.choice(("none", "rail", "stile"))}
        asked |= {"middle_width": length(random, 1.75, 2.5)} if asked["middle"] != "none" else {}
    return asked


def _wood(random):
    low, now, high = sorted(Fraction(random.randint(60, 140), 10) for _ in range(3))
    return {
        "species": "own",
        "own_tangential": Fraction(random.randint(100, 400), 100_000),
        "own_radial": Fraction(1, 1000),
        "grain": random.choice(("up", "up", "across")),
        "now": now,
        "year": "own",
        "low": low,
        "high": high,
    }
