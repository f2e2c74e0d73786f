"""What is asked of cases, at random: sizes, joints, backs, kicks, edging, bays and shelves."""

from fractions import Fraction
from itertools import pairwise

from tests.core.oracles.assembled_case import Asked
from tests.core.oracles.random_forms import length


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
