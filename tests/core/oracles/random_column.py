"""Drawers in a column at random through the door, stacked again from the told fronts."""

from fractions import Fraction
from functools import partial

from tests.core.asking import ask
from tests.core.oracles.random_forms import check_answered, number, typed

A_MARK = Fraction(1, 16)
length = partial(number, parts=32)


def random_column(random):
    """What is asked for, in exact inches; some can't be built."""
    many = random.randint(2, 7)
    return {
        "height": length(random, 12, 60),
        "drawers": many,
        "layout": random.choice(("equal", "step", "ratio", "given")),
        "step": length(random, 0.25, 2),
        "percent": random.randint(60, 99),
        "heights": [length(random, 2, 6) for _ in range(many - 1)],
        "divided": random.choice(("gaps", "rails")),
        "rail": length(random, 0.5, 2),
        "front": random.choice(("inset", "overlay")),
        "gap": length(random, 0.0625, 0.25),
        "lap": length(random, 0.125, 0.75),
        "less": length(random, 0.5, 2),
    }


def asked_for(asked):
    """What is said to it."""
    return ask("drawer_column", **typed(asked))


def check_column(random):
    """What is wrong with a random column as it was told; one that is refused is another one."""
    return check_answered(random, random_column, asked_for, check_told)


def check_told(asked, said):
    """What is wrong with a column as it was told, as sentences."""
    return [f"{fault}: {asked}" for fault in stacked_faults(asked, said["by_key"])]


def _told(answers, key):
    return [Fraction(each["mark"]) for each in answers[key]["items"]]


def stacked_faults(asked, answers):
    """The fronts one below the other, with what is between them, must come to the opening."""
    fronts, boxes = _told(answers, "fronts"), _told(answers, "boxes")
    edge = asked["gap"] if asked["front"] == "inset" else -asked["lap"]
    rails = asked["divided"] == "rails"
    between = asked["rail"] + 2 * edge if rails else asked["gap"]
    place, tops, openings = edge, [], []
    for front in fronts:
        tops.append(place - edge)
        openings.append(front + 2 * edge)
        place += front + between
    if place - between + edge != asked["height"] or len(fronts) != asked["drawers"]:
        yield f"fronts of {fronts} don't fill the opening"
    if _told(answers, "marks") != tops[1:]:
        yield f"the top edges are {tops}"
    if rails and _told(answers, "openings") != openings:
        yield f"the openings are {openings}"
    if boxes != [front - asked["less"] for front in fronts] or min(boxes) <= 0:
        yield f"the boxes are {boxes}"
    if rails and any(box > opening for box, opening in zip(boxes, openings, strict=True)):
        yield "a box is higher than its opening"
    yield from _shares(asked, fronts)


def _shares(asked, fronts):
    """Each front is as the series has it, within a mark."""
    ideal = _series(asked, sum(fronts))
    for front, wanted in zip(fronts, ideal, strict=True):
        if abs(front - wanted) > A_MARK:
            yield f"{fronts} are not {[float(each) for each in ideal]}"
            return


def _series(asked, total):
    """The heights from the top down, weighed by hand: one unknown, the rest follows from it."""
    many, layout = asked["drawers"], asked["layout"]
    if layout == "given":
        return [*asked["heights"], total - sum(asked["heights"])]
    if layout == "ratio":
        weights = [Fraction(100, asked["percent"]) ** number for number in range(many)]
        return [total * each / sum(weights) for each in weights]
    added = [asked["step"] * number if layout == "step" else 0 for number in range(many)]
    first = (total - sum(added)) / many
    return [first + each for each in added]
