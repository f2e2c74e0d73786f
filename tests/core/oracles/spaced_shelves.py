"""Cases at random, through the door, against a case that is built up from the floor by hand.

Each check asks one question with numbers of its own and gives what is wrong as sentences. The
judge is `brute_shelves`, which only adds up pieces; it shares nothing with the core.
"""

from fractions import Fraction
from functools import partial
from itertools import combinations

import sawside
from tests.core.asking import inches
from tests.core.oracles.brute_shelves import built, measured
from tests.core.oracles.random_forms import number

length = partial(number, parts=32)
DIVISIONS = (8, 16, 32, 64)
HAIR = Fraction(1, 10_000)
"""What no judge here may overlook, in inches."""
PITCHES = {"1": Fraction(1), "5/4": Fraction(5, 4), "32 mm": Fraction(320, 254)}
"""Pitches of holes; 1 in = 25.4 mm exactly (international yard and pound agreement, 1959)."""


class Case:
    """A random case around given openings, as a form's values, and as a judge sees it."""

    def __init__(self, random, openings, thicknesses):
        bottom, top, kick = (length(random, 0, 3) for _ in range(3))
        self.edge = random.choice(["bottom", "top", "center"])
        self.origin = random.choice(["inside_bottom", "floor", "lower_end", "upper_end"])
        self.foot = random.choice(["floor", "under_bottom", "over_bottom"])
        self.head = random.choice(["over_top", "under_top"])
        self.division = random.choice(DIVISIONS)
        self.openings, self.thicknesses = openings, thicknesses
        self.edges = built(openings, thicknesses, bottom, top, kick)
        self.values = {
            "edge": self.edge,
            "case_parts": "whole",
            "origin": self.origin,
            "foot": self.foot,
            "head": self.head,
            "bottom": inches(bottom),
            "top": inches(top),
            "kick": inches(kick),
            "height": inches(self.edges["overall"]),
            "thickness": inches(thicknesses[0]),
        }

    @property
    def inside(self):
        """The clear height."""
        return self.edges["inside_top"] - self.edges["inside_bottom"]

    def marks(self):
        """The exact measure of each shelf's marked edge."""
        return [
            measured(self.edges, shelf, self.edge, self.origin, self.foot, self.head)
            for shelf in self.edges["shelves"]
        ]

    def ask(self, key, **values):
        """(answers by key, fault): one of the two is None."""
        said = sawside.handle(
            {
                "do": "reckon",
                "reckoner": key,
                "values": self.values | values,
                "settings": {"mark": f"1/{self.division}"},
            }
        )
        if not said["ok"]:
            return None, [f"{key}: {said['error']['message']} for {self.values | values}"]
        return {answer["key"]: answer for answer in said["answers"]}, None

    def faults(self, told):
        """What is wrong with marks and openings."""
        found = [Fraction(item["exact"]) for item in told["marks"]["items"]]
        if found != self.marks():
            yield f"marks {found}, by hand {self.marks()}"
        half = Fraction(1, 2 * self.division)
        if any(abs(Fraction(item["dropped"])) > half for item in told["marks"]["items"]):
            yield "a mark lies more than half a division off"
        openings = [Fraction(item["exact"]) for item in told["openings"]["items"]]
        if sum(openings) + sum(self.thicknesses) != self.inside:
            yield f"the openings of the marks do not fill {self.inside}: {openings}"
        if any(abs(one - two) > 2 * half for one, two in zip(openings, self.openings, strict=True)):
            yield "an opening is off by more than its two marks"
        if Fraction(told["difference"]["exact"]) != max(openings) - min(openings):
            yield "the largest difference is not that of the openings"


def sentences(key, case, faults):
    """The faults with the case that they are of."""
    return [f"{key}: {fault} ({case.values})" for fault in faults]


def thickness(random):
    """A shelf as measured."""
    return length(random, 1 / 4, 2)


def equal(random):
    """Equal openings, with any one of height, count and opening left blank."""
    shelves, opening = random.randint(1, 12), length(random, 2, 20)
    case = Case(random, [opening] * (shelves + 1), [thickness(random)] * shelves)
    values = {"shelf_count": str(shelves), "opening": inches(opening)}
    values |= {"height": case.values["height"]}
    values[random.choice(list(values))] = ""
    told, fault = case.ask("shelf_layout", **values)
    if fault:
        return fault
    faults = list(case.faults(told))
    if told["shelf_count"]["text"] != str(shelves):
        faults.append(f"{told['shelf_count']['text']} shelves, not {shelves}")
    if Fraction(told["opening"]["exact"]) != opening:
        faults.append(f"opening {told['opening']['exact']}, not {opening}")
    if Fraction(told["height"]["exact"]) != case.inside:
        faults.append(f"inside {told['height']['exact']}, not {case.inside}")
    return sentences("equal", case, faults)


def graduated(random):
    """Openings smaller by a step, two of the figures left blank."""
    shelves, highest, step = random.randint(1, 8), length(random, 2, 12), length(random, 1 / 8, 2)
    openings = [highest + step * number for number in range(shelves, -1, -1)]
    case = Case(random, openings, [thickness(random)] * shelves)
    values = {
        "lowest": inches(openings[0]),
        "highest": inches(highest),
        "step": inches(step),
        "height": case.values["height"],
    }
    for key in random.sample(list(values), 2):
        values[key] = ""
    told, fault = case.ask(
        "shelf_layout", layout="graduated", by="step", shelf_count=str(shelves), **values
    )
    if fault:
        return fault
    faults = list(case.faults(told))
    for key, true in (("lowest", openings[0]), ("highest", highest), ("step", step)):
        if Fraction(told[key]["exact"]) != true:
            faults.append(f"{key} {told[key]['exact']}, not {true}")
    return sentences("graduated", case, faults)


def to_fit(random):
    """Openings for things, the leftover shared or given to one of them."""
    things = [
        (length(random, 1, 14), length(random, 0, 3), random.randint(1, 3))
        for _ in range(random.randint(1, 4))
    ]
    needed = [high + clear for high, clear, many in things for _ in range(many)]
    if len(needed) == 1:
        return to_fit(random)
    left, rest = length(random, 0, 9), random.choice(["shared", "bottom", "top", "numbered"])
    number = random.randint(1, len(needed))
    openings = list(needed)
    if rest == "shared":
        openings = [each + left / len(openings) for each in openings]
    else:
        openings[{"bottom": 0, "top": -1}.get(rest, number - 1)] += left
    case = Case(random, openings, [thickness(random)] * (len(needed) - 1))
    rows = [
        {"height": inches(high), "clearance": inches(clear), "openings": str(many)}
        for high, clear, many in things
    ]
    told, fault = case.ask(
        "shelf_layout", layout="fit", things=rows, rest=rest, opening_number=str(number)
    )
    if fault:
        return fault
    faults = list(case.faults(told))
    if Fraction(told["left_over"]["exact"]) != left:
        faults.append(f"left over {told['left_over']['exact']}, not {left}")
    return sentences("to fit", case, faults)


def around_a_fixed_one(random):
    """One shelf where it was told to be, the others even below and above it."""
    below, above = random.randint(0, 5), random.randint(0, 5)
    low, high = length(random, 2, 16), length(random, 2, 16)
    thick, fixed = thickness(random), thickness(random)
    if below:  # the form's thickness is that of the others, which the first shelf then is
        thicknesses = [thick] * below + [fixed] + [thick] * above
    else:
        thicknesses = [fixed] + [thick] * above
    case = Case(random, [low] * (below + 1) + [high] * (above + 1), thicknesses)
    told, fault = case.ask(
        "shelf_layout",
        layout="fixed",
        thickness=inches(thick),
        fixed_thickness=inches(fixed),
        fixed_at=inches(case.marks()[below]),
        below=str(below),
        above=str(above),
    )
    if fault:
        return fault
    faults = list(case.faults(told))
    for key, true in (("opening_below", low), ("opening_above", high)):
        if Fraction(told[key]["exact"]) != true:
            faults.append(f"{key} {told[key]['exact']}, not {true}")
    return sentences("around a fixed one", case, faults)


def on_a_hole_grid(random):
    """All shelves on the holes that a trial of every choice finds to make openings most equal."""
    pitch, first, rest = random.choice(list(PITCHES)), length(random, 1, 6), length(random, 0, 1)
    shelves, thick, high = random.randint(1, 3), Fraction(23, 32), length(random, 12, 30)
    holes, place = [], first
    while place + rest + thick <= high:
        holes.append(place)
        place += PITCHES[pitch]
    choices = []
    for chosen in combinations(holes, shelves):
        tops = [Fraction(0), *(hole + rest + thick for hole in chosen)]
        bottoms = [*(hole + rest for hole in chosen), high]
        openings = [bottom - top for top, bottom in zip(tops, bottoms, strict=True)]
        if min(openings) > 0:
            squares = sum(each**2 for each in openings)
            choices.append((max(openings) - min(openings), squares, [-each for each in openings]))
    if not choices:
        return on_a_hole_grid(random)
    case = Case(random, [-each for each in min(choices)[2]], [thick] * shelves)
    told, fault = case.ask(
        "shelves_on_a_hole_grid",
        pitch=pitch,
        first=inches(first),
        rest=inches(rest),
        wanted="equal",
        shelf_count=str(shelves),
    )
    if fault:
        return fault
    found = [Fraction(item["exact"]) for item in told["marks"]["items"]]
    faults = [] if found == case.marks() else [f"marks {found}, by hand {case.marks()}"]
    return sentences("on a hole grid", case, faults)


CHECKS = (equal, graduated, to_fit, around_a_fixed_one, on_a_hole_grid)
