"""Doors at random through the door, put together as solids in exact inches and looked at.

It knows what a cabinetmaker knows who was given the cut list: which part goes where, what a joint
looks like, how far wood moves for each percent of moisture (Wood Handbook, equation 13-2, with a
coefficient of its own). It shares no formula with the question. Space is divided at every face
into cells; each must hold as many parts as it should.

x goes from the left of a door, y from its face to the back, z up from its bottom.
"""

from fractions import Fraction

from tests.core.asking import ask
from tests.core.oracles.framed_doors import framed_faults, swollen
from tests.core.oracles.random_doors import FRAMED, NONE, form, random_doors

STEPS = {"1/16": Fraction(1, 16), "1/64": Fraction(1, 64), "1 mm": Fraction(5, 127)}


def told(asked, mark):
    """(what is said, the refusal) of the question; one of them is None."""
    said = ask("doors", {"mark": mark, "display": "mm" if mark == "1 mm" else "in"}, **form(asked))
    return (said, None) if said["ok"] else (None, said["error"])


def check_doors(random):
    """What is wrong with a random form's doors, a sentence each; refused only where they can't be
    made."""
    asked, mark = random_doors(random), random.choice(list(STEPS))
    said, error = told(asked, mark)
    if said is None:
        fine = error["kind"] == "impossible" and may_be_refused(asked, error["field"])
        return [] if fine else [f"refused: {error['message']} {asked}"]
    return [f"{fault} ({asked}, {mark})" for fault in check_told(asked, said, STEPS[mark])]


def may_be_refused(asked, field):
    """Whether a form at random can be one that no doors are made of, for such a field."""
    if field == "groove":
        return asked["made"] == "wood" and _may_come_out(asked)
    return field == "tenon" and _tenon_shows(asked)


def _tenon_shows(asked):
    """Whether a tenon may come within an eighth (at most) of a lip's rabbet, in stile or rail."""
    if asked["fit"] != "lipped" or "tenon" not in asked:
        return False
    widths = [asked["stile"]]
    if asked.get("middle") == "stile":
        widths += [asked["top_rail"], asked["bottom_rail"]]
    return asked["tenon"] + asked["lip_rabbet"] + Fraction(1, 8) > min(widths)


def _may_come_out(asked):
    """Whether a panel as wide as these doors may be comes out of its groove at its driest; with a
    mark for rounding it down."""
    doors = 1 if asked["known"] == "door" else asked["doors"]
    most = max(asked["width"] / doors, asked["height"])
    wet = most + 3 + 2 * (asked["groove"] - asked["clearance"]) - Fraction(1, 16)
    now = wet / (1 + asked["own_tangential"] * (asked["high"] - asked["now"]))
    return swollen(asked, now, "low") <= most + 3


def check_told(asked, said, step):
    """The faults of an answer: around the doors, in their frame, in their panel."""
    answers = {each["key"]: each for each in said["answers"]}
    parts = {each["key"]: each for each in said["parts"]}
    yield from _around(asked, answers, step)
    wide, high = _door(asked, answers)
    if asked["made"] in FRAMED:
        yield from framed_faults(asked, parts, wide, high, step)
    else:
        yield from _slabs(asked, parts, wide, high)


def _items(answers, key):
    found = answers.get(key)
    if found is None:
        return {}
    return {each["label"]: Fraction(each["exact"]) for each in found.get("items", [found])}


def _door(asked, answers):
    """Width and height of a door, on their marks."""
    if asked["known"] == "door":
        return asked["width"], asked["height"]
    return tuple(Fraction(answers[key]["mark"]) for key in ("width", "height"))


def _wanted(asked):
    """The gaps at left, right, bottom and top; how far a lap goes is below 0.

    Of a full overlay the reveal shows beside the door, of a half one two doors and the gap between
    them cover the edge that they share.
    """
    if asked["fit"] == "inset":
        return [asked["gap"], asked["gap"], asked["bottom_gap"], asked["top_gap"]]
    usual = asked.get("lap", asked.get("lip"))
    sides = ends = usual
    if usual is None:
        sides = ends = asked["edge"] - asked["reveal"]
    if asked["fit"] == "half":
        sides = asked["edge"] / 2 - asked["between"] / 2
    whole = {"left": sides, "right": sides, "bottom": ends, "top": ends}
    return [-asked.get(f"{side}_lap", each) for side, each in whole.items()]


def _around(asked, answers, step):
    """Doors and gaps make the opening, and no gap is less than was asked for at the wettest."""
    wide, high = _door(asked, answers)
    count, wanted = asked["doors"], _wanted(asked)
    if asked["known"] == "door":
        opening = [Fraction(answers[f"opening_{key}"]["mark"]) for key in ("width", "height")]
    else:
        opening = [asked["width"], asked["height"]]
    gaps = _items(answers, "gaps") | {key: -each for key, each in _items(answers, "laps").items()}
    between = [gaps[key] for key in gaps if key.startswith("Between")]
    if len(between) != count - 1:
        yield f"{len(between)} gaps between {count} doors"
    if count * wide + gaps["Left"] + gaps["Right"] + sum(between) != opening[0]:
        yield f"doors and gaps across are not the opening: {gaps}"
    if high + gaps["Bottom"] + gaps["Top"] != opening[1]:
        yield f"doors and gaps up are not the opening: {gaps}"
    grow_wide = grow_high = NONE
    if asked["made"] == "solid":
        grown = swollen(asked, Fraction(1), "high") - 1
        grow_wide, grow_high = (
            (grown * wide, NONE) if asked["grain"] == "up" else (NONE, grown * high)
        )
    # Hung at the left and right, a door swells towards its neighbor; of one, towards the right.
    tight_across = gaps["Left"] + gaps["Right"] + sum(between) - count * grow_wide
    least_across = wanted[0] + wanted[1] + (count - 1) * asked["between"]
    tight_up = gaps["Bottom"] + gaps["Top"] - grow_high
    for name, tight, least, most in (
        ("across", tight_across, least_across, count * step * 2),
        ("up", tight_up, wanted[2] + wanted[3], 2 * step),
    ):
        if tight < least:
            yield f"gaps {name} are less than asked for: {tight} < {least}"
        if tight - least > most:
            yield f"gaps {name} are wider than rounding makes them: {tight} > {least}"
    if gaps["Left"] != wanted[0] or gaps["Bottom"] != wanted[2]:
        yield f"left or bottom is not as asked: {gaps}, {wanted}"
    if asked["fit"] == "lipped":
        behind = Fraction(answers["lip_gap"]["exact"])
        if behind != min(asked["lip_rabbet"] + each for each in wanted) or behind <= 0:
            yield f"what is behind the lip does not go in: {behind}"


def _slabs(asked, parts, wide, high):
    """A slab with its edges is the door, and what is trimmed."""
    slab = parts["slab"]
    long, across = Fraction(slab["length"]["exact"]), Fraction(slab["width"]["exact"])
    sizes = (long, across) if asked.get("grain") == "across" else (across, long)
    trim = 2 * asked.get("trim", NONE) - 2 * asked.get("banding", NONE)
    if sizes != (wide + trim, high + trim):
        yield f"a slab {sizes} is not the door {wide, high}"
    if slab["count"] != asked["doors"]:
        yield "not a slab for each door"
