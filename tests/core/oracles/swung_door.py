"""A door swung open by small steps, in floats, and looked at: what is where it may not be.

It turns the corners of door and handle about the pin and nothing else; no angle is solved for. From
above: the hinge edge is at x = 0, the back at y = 0, the room towards y.
"""

from fractions import Fraction
from functools import partial
from math import cos, radians, sin

from tests.core.asking import ask
from tests.core.oracles.random_forms import number, typed

STEP = 0.05
NEAR = 1e-6
TOLD = 0.0051
"""Degrees that an angle told to a hundredth may be off by."""


def random_swing(random):
    """What is asked, as {key: value}; lengths are inches."""

    size = partial(number, random, parts=32)
    hinge, fit = random.choice(("butt", "cup")), random.choice(("inset", "overlay"))
    asked = {
        "width": size(4, 30),
        "thickness": size(0.5, 1.5),
        "hinge": hinge,
        "fit": fit,
        "handle": random.choice((Fraction(0), size(0.25, 3))),
        "handle_from": size(0, 1.5),
        "handle_wide": size(0, 2),
        "stops": Fraction(random.choice((90, 95, 110, 165, 180))),
    }
    if random.random() < 0.7:
        asked["wall"] = random.choice((Fraction(0), size(0, 1), size(0, 12)))
    if random.random() < 0.6:
        asked["drawer"] = random.choice((Fraction(0), size(0, 2), size(0, 4)))
    if fit == "inset":
        asked["gap"] = random.choice((Fraction(1, 64), size(0.03, 0.2)))
    if hinge == "butt":
        asked["neighbor"] = random.choice(("no", "no", "yes"))
        asked |= {"out": size(0, 0.5)} if random.random() < 0.5 else {}
    if hinge == "cup" and random.random() < 0.5:
        asked |= {"behind": size(0, 0.5), "along": size(0, 1)}
    return asked


def answered(asked):
    """(the answers by key, or None; the error, or None)."""
    said = ask("door_swing", **typed(asked, numbers=("stops",)))
    return said.get("by_key"), said.get("error")


class Swung:
    """The door of a form on its pin, opened by degrees."""

    def __init__(self, asked):
        self.wide, self.thick = float(asked["width"]), float(asked["thickness"])
        half = self.thick / 2
        butt = asked["hinge"] == "butt"
        out = float(asked.get("out", 0))
        self.x = 0.0 if butt else float(asked.get("along", half))
        self.y = self.thick + out if butt else self.thick - float(asked.get("behind", half))
        self.leaf = [(x, y) for x in (0.0, self.wide) for y in (0.0, self.thick)]
        self.handle = []
        if asked["handle"]:
            right, out = self.wide - float(asked["handle_from"]), float(asked["handle"])
            left = right - float(asked["handle_wide"])
            self.handle = [(x, self.thick + out) for x in (left, right)]

    def opened(self, places, degrees):
        """Where places of the closed door are."""
        turn = radians(degrees)
        for x, y in places:
            past, before = x - self.x, y - self.y
            yield (
                self.x + past * cos(turn) - before * sin(turn),
                self.y + past * sin(turn) + before * cos(turn),
            )

    def first(self, holds, most):
        """The first angle, found by steps and then by halves, at which something holds."""
        last = 0.0
        for step in range(int(most / STEP) + 2):
            degrees = min(step * STEP, most)
            if holds(degrees):
                for _ in range(30):
                    middle = (last + degrees) / 2
                    last, degrees = (last, middle) if holds(middle) else (middle, degrees)
                return degrees
            last = degrees
        return None

    def hits(self, wall):
        """A function of degrees: whether something is in the wall."""
        return lambda degrees: any(
            x < -wall - NEAR for x, _ in self.opened((*self.leaf, *self.handle), degrees)
        )

    def hits_neighbor(self):
        """A function of degrees: whether the handle is in the front beside the hinge edge, which
        is in one plane with the door's face."""
        return lambda degrees: any(
            x < 0 and y < self.thick - NEAR for x, y in self.opened(self.handle, degrees)
        )

    def lets_by(self, drawer):
        """A function of degrees: whether the leaf is out of a drawer's way."""
        return lambda degrees: all(x <= drawer + NEAR for x, _ in self.opened(self.leaf, degrees))

    def reaches(self, bevel=0.0):
        """How far the free edge gets in x while it is inside its frame."""
        edge = [(self.wide - bevel * (1 - part / 16), self.thick * part / 16) for part in range(17)]
        return max(
            x
            for step in range(int(100 / STEP))
            for x, y in self.opened(edge, step * STEP)
            if y <= self.thick + NEAR
        )


def check_swing(random):
    """What is wrong with a random door's swing, a sentence each."""
    asked = random_swing(random)
    told, error = answered(asked)
    if told is None:
        fine = error["kind"] == "impossible" and error["field"] in _may_be_refused(asked)
        return [] if fine else [f"refused: {error['message']} {asked}"]
    return [f"{fault} ({asked})" for fault in check_answers(asked, told)]


def _may_be_refused(asked):
    """The fields for which such a form can be one of no door that opens."""
    if "wall" in asked and Swung(asked).hits(float(asked["wall"]))(0.1):
        yield "wall"
    if asked["fit"] == "inset" and asked["thickness"] * 2 > asked["width"] / 4:
        yield "thickness"


def degrees_of(answer):
    """An angle as it is told."""
    return float(answer["text"].removeprefix("≈ ").removesuffix("°"))


def check_answers(asked, told):
    """The faults of what was told."""
    door = Swung(asked)
    opens, stops = degrees_of(told["opens"]), float(asked["stops"])
    meets = None if "wall" not in asked else door.first(door.hits(float(asked["wall"])), stops)
    if asked.get("neighbor") == "yes":
        beside = door.first(door.hits_neighbor(), stops)
        meets = min((each for each in (meets, beside) if each is not None), default=None)
    wanted = stops if meets is None else meets
    if abs(opens - wanted) > TOLD + 0.003:
        yield f"opens to {opens}, not {wanted}"
    touched = not told["touches"]["text"].startswith("Nothing")
    if touched != (meets is not None and meets < stops - 0.003):
        yield f"touches is wrong: {told['touches']['text']}, {meets}"
    yield from _frame(asked, told, door)
    if "drawer" in asked:
        yield from _drawer(asked, told, door, opens)


def _frame(asked, told, door):
    if asked["fit"] != "inset":
        return
    needed = float(Fraction(told["square_gap"]["mark"]))
    reach, gap = door.reaches() - door.wide, float(asked["gap"])
    if not reach - 1e-4 <= needed <= reach + 1 / 64 + 5e-4:  # steps miss the last of its way
        yield f"a square edge needs {reach}, not {needed}"
    if "bevel" in told:
        bevel = float(Fraction(told["bevel"]["mark"]))
        if door.reaches(bevel) > door.wide + gap + 1e-4:
            yield f"the beveled edge hits the frame: {bevel}"
        if bevel > 1 / 32 and door.reaches(bevel - 1 / 32) < door.wide + gap - 1e-3:
            yield f"less than {bevel} would do"
    elif reach > gap + 1e-4:
        yield f"a square edge hits the frame: {reach} in {gap}"


def _drawer(asked, told, door, opens):
    drawer = float(asked["drawer"])
    needs = door.first(door.lets_by(drawer), 180.0)
    if (needs is None) != ("needs" not in told):
        yield f"a drawer passes from {needs}"
    elif needs is not None and abs(needs - degrees_of(told["needs"])) > TOLD + 0.02:
        yield f"a drawer passes from {needs}, not {told['needs']['text']}"
    passes = needs is not None and needs <= opens
    close = needs is not None and abs(needs - opens) < 0.03
    if not close and passes != told["drawer"]["text"].startswith("Passes"):
        yield f"a drawer passes: {passes}"
