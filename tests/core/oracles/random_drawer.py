"""Drawers at random through the door, each put together and looked at from all sides."""

from fractions import Fraction
from functools import partial
from types import SimpleNamespace

from tests.core.asking import ask
from tests.core.oracles.drawers_together import Drawer
from tests.core.oracles.random_forms import check_answered, number, typed

MARKS = {"1/16": Fraction(1, 16), "1/8": Fraction(1, 8), "1 mm": Fraction(5, 127)}
COEFFICIENT = Fraction(3, 1000)
"""Of the width for each 1 % of moisture, of wood of one's own. Equation 13-2 of the Wood Handbook
holds from 6 to 14 %."""


def random_drawer(random):
    """What is asked for of a drawer, in exact inches, with the mark to round to; many can't be
    built. Most are on 32nds, where all but what moves is told exactly."""
    parts = random.choice((32, 32, 32, 27, 127))
    mark = "1/16" if parts == 32 else random.choice(list(MARKS))
    steps = partial(number, random, parts=parts)
    side = steps(0.375, 0.875)
    end = random.choice((side, steps(0.375, 0.875)))
    lap = steps(0.0625, 1)
    back = ("rabbet", "dado", "butt", "dowel", "box", "dovetail")
    front_joint, back_joint = random.choice((*back, "half_blind")), random.choice(back)
    runs = random.choice(("slides", "under", "wood"))
    runner_room, below = steps(0, 0.25), steps(0.125, 1)
    return SimpleNamespace(
        mark=mark,
        on_marks=parts == 32,
        width=steps(6, 40),
        height=steps(3, 14),
        depth=steps(10, 26),
        runs=runs,
        side_room=steps(0.25, 1),
        runner_room=runner_room,
        inside_less=2 * side + steps(0, 1),
        depth_less=random.choice((Fraction(0), steps(0, 1))),
        below=below,
        below_under=below,
        above=steps(0.125, 1),
        kicker=steps(0, 0.25),
        behind=steps(0, 1),
        front=random.choice(("overlay", "inset")),
        made=random.choice(("applied", "part")),
        face=steps(0.5, 1.25),
        lap=lap,
        lap_high=random.choice((lap, steps(0.0625, 1))),
        gap=runner_room if runs == "wood" else steps(0, 0.1875),
        side=side,
        end=end,
        front_joint=front_joint,
        back_joint=back_joint,
        joint_depth=random.choice((side / 2, steps(0.125, 0.5))),
        back_in=steps(0, 0.75),
        blind=steps(0.125, 0.375),
        bottom=steps(0.125, 0.5),
        groove=steps(0.125, 0.375),
        up=steps(0.125, 0.75),
        back=random.choice(("low", "full")),
        bottom_room=steps(0, 0.125),
        solid=random.choice(("none", "bottom", "box", "both")),
        now=random.randint(6, 14),
        low=random.randint(6, 9),
        high=random.randint(9, 14),
    )


def values_of(asked):
    """The form of what is asked for."""
    values = {key: each for key, each in vars(asked).items() if key not in ("mark", "on_marks")}
    wood = {"species": "own", "own_tangential": "0.003", "own_radial": "0.003", "year": "own"}
    return typed(values) | wood


def asked_for(asked):
    """What the core says to it."""
    return ask("drawer_box", {"mark": asked.mark}, **values_of(asked))


def check_drawer(random):
    """What is wrong with a random drawer as it was told, as sentences; one that is refused is
    another one."""
    return check_answered(random, random_drawer, asked_for, check_told)


def check_told(asked, said):
    """What is wrong with the told parts of a drawer, at three times of the year."""
    parts = {
        each["key"]: (Fraction(each["length"]["mark"]), Fraction(each["width"]["mark"]))
        for each in said["parts"]
    }
    answers = said["by_key"]
    dry, wet = (
        1 + COEFFICIENT * (moisture - asked.now)
        for moisture in (min(asked.low, asked.now), max(asked.high, asked.now))
    )
    now = Drawer(asked, parts)
    faults = [
        *now.faults(),
        *_counts(said, asked),
        *_sizes(now, answers),
        *_room(now, answers),
        *_face(now),
        *_levels(now),
        *_bottom(now, dry, wet),
        *_grown(asked, parts, wet),
    ]
    return [f"{fault}: {values_of(asked)}" for fault in faults]


def _counts(said, asked):
    counts = {each["key"]: each["count"] for each in said["parts"]}
    wanted = {"side": 2, "back": 1, "bottom": 1, "face": 1}
    if asked.made == "applied":
        wanted["front"] = 1
    if counts != wanted:
        yield f"parts {counts}"


def _mark(answers, key):
    return Fraction(answers[key]["mark"])


def _sizes(drawer, answers):
    """The told outside is that of the parts."""
    asked = drawer.asked
    wide = drawer.inside + 2 * asked.side
    deep = drawer.rear - (drawer.behind if drawer.applied else drawer.behind - asked.face)
    for key, size in (
        ("box_width", wide),
        ("box_height", drawer.parts["side"][1]),
        ("box_depth", deep),
    ):
        if not size - MARKS[asked.mark] < _mark(answers, key) <= size:
            yield f"{key} {answers[key]['text']} is {size}"


def _room(drawer, answers):
    """The gaps around the box are what was asked for, and no wider than rounding makes them."""
    asked = drawer.asked
    room = {
        "slides": asked.side_room,
        "under": asked.inside_less / 2 - asked.side,
        "wood": asked.runner_room,
    }[asked.runs]
    beside = drawer.left - asked.side - room
    if not 0 <= beside < MARKS[asked.mark]:
        yield f"beside the box is {beside} more than asked for"
    if drawer.rear > asked.depth - asked.behind:
        yield "the box is too deep"
    if asked.runs == "wood" and drawer.rear <= asked.depth - asked.behind - 2 * MARKS[asked.mark]:
        yield "the box is not as deep as it could be"
    beyond = Fraction(0)
    if asked.runs != "wood":
        shorter = asked.depth_less if asked.runs == "under" else 0
        beyond = _mark(answers, "slide") - shorter - drawer.rear + drawer.behind
    if beyond if asked.on_marks else abs(beyond) >= MARKS[asked.mark]:
        yield "the box is not as deep as its slide"
    if "above" in answers:
        told, gap = _mark(answers, "above"), asked.height - drawer.low - drawer.parts["side"][1]
        if abs(told - gap) > MARKS[asked.mark] / 2:
            yield f"the gap above is {gap}, told {told}"


def _grown(asked, parts, wet):
    """At the wettest the box and an inset front leave the room above them, and hardly more."""
    grows = wet if asked.solid in ("box", "both") else 1
    slides = asked.runs != "wood"
    top = (asked.below if slides else 0) + parts["side"][1] * grows
    left = asked.height - (asked.above if slides else asked.kicker) - top
    if not 0 <= left < MARKS[asked.mark]:
        yield f"at the wettest {left} more is left above the box than asked for"
    if asked.front == "inset":
        free = 2 * asked.gap if slides else asked.kicker
        left = asked.height - free - parts["face"][1] * grows
        if not 0 <= left < MARKS[asked.mark]:
            yield f"at the wettest {left} more is left above the front than asked for"


def _near(told, wanted, asked):
    """Whether it is what was asked for, as near as it can be told."""
    return told == wanted if asked.on_marks else abs(told - wanted) <= MARKS[asked.mark] / 2


def _face(drawer):
    """The front covers the box; it goes into its opening, or laps it as was asked for."""
    asked = drawer.asked
    left, right, _, _, low, high = drawer.face_box()
    top = drawer.low + drawer.parts["side"][1]
    if left > drawer.left - asked.side or right < drawer.right + asked.side:
        yield "the front is narrower than the box"
    if low > drawer.low or high < top:
        yield "the front does not cover the height of the box"
    if asked.front == "inset":
        if not 0 <= left - asked.gap < MARKS[asked.mark] / 2:
            yield f"the gap beside the front is {left}"
    elif not _near(-2 * left, 2 * asked.lap, asked) or not _near(
        high - asked.height, asked.lap_high, asked
    ):
        yield "the front does not lap as asked for"


def _levels(drawer):
    """The front is as high as the sides; so is the back, or it sits on the bottom. The back fills
    its joints, and no more."""
    asked, high = drawer.asked, drawer.parts["side"][1]
    if drawer.applied and drawer.parts["front"][1] != high:
        yield "the front is not as high as the sides"
    long = drawer.inside + 2 * drawer.reach(drawer.back_joint) - drawer.parts["back"][0]
    if long < 0 or long >= MARKS[asked.mark] or (long and asked.on_marks):
        yield f"the back is {long} too short"
    wanted = high - (asked.up + asked.bottom if asked.back == "low" else 0)
    low_by = wanted - drawer.parts["back"][1]
    if low_by < 0 or low_by >= MARKS[asked.mark] or (low_by and asked.on_marks):
        yield f"the back is not {wanted} high"


def _bottom(drawer, dry, wet):
    """The bottom is free at its wettest, and covered at its driest."""
    asked = drawer.asked
    left, right = drawer.bottom(1).boxes[0][:2]
    if left >= drawer.left or right <= drawer.right:
        yield "the bottom drops out between the sides"
    if left < drawer.left - asked.groove + asked.bottom_room / 2:
        yield "the bottom is too tight between the sides"
    rear = drawer.bottom(dry).boxes[0][3]
    if rear <= drawer.back_front:
        yield "the bottom comes out at the back"
    rear = drawer.bottom(wet).boxes[0][3]
    most = drawer.back_rear
    if asked.back == "full":
        most = drawer.back_front + asked.groove - asked.bottom_room
    if rear > most:
        yield "the bottom pushes out at its wettest"
