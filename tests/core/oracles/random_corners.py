"""Box joints and dovetails at random through the door: pins and tails must fill the corner, no
more and no less. Strips and trapezoids in exact rationals; no formula is shared with the question.
"""

from fractions import Fraction
from itertools import pairwise

from tests.core.asking import ask
from tests.core.oracles.random_forms import length, typed

A_64TH = Fraction(1, 64)
MOST_PINS = 200


def told(key, values):
    """(answers by key, the refusal) of a question; one of them is None."""
    said = ask(key, **typed(values))
    return said.get("by_key"), said.get("error")


def check_box_joint(random):
    """What is wrong with a random box joint, as sentences."""
    values = {
        "height": length(random, 1, 14),
        "thickness": length(random, 0.25, 1),
        "other": length(random, 0.25, 1),
        "pin": length(random, 0.25, 1),
        "gives": random.choice(("height", "pin")),
        "count": random.choice(("any", "odd", "even")),
        "starts": random.choice(("sides", "ends")),
        "proud": length(random, 0, 0.125),
    }
    found, refused = told("box_joint", values)
    numbers = [each for each in range(2, MOST_PINS) if _is_right(each, values["count"])]
    if values["gives"] == "height":
        numbers = [each for each in numbers if each * values["pin"] <= values["height"]][-1:]
    else:
        off = {each: abs(values["height"] / each - values["pin"]) for each in numbers}
        numbers = [each for each in numbers if off[each] == min(off.values())]
    if refused:
        small = 2 * values["pin"] > values["height"]
        return [] if small or not numbers else [f"{refused['message']}: {values}"]
    return [f"{fault}: {values}" for fault in _strips(values, found, numbers)]


def _is_right(number, count):
    return {"any": True, "odd": number % 2 == 1, "even": number % 2 == 0}[count]


def _strips(values, found, numbers):
    """The corner as strips that are pins of one board or of the other."""
    number = int(found["number"]["text"])
    if number not in numbers:
        yield f"{number} pins, not {numbers}"
    rips = values["gives"] == "height"
    high = Fraction(found["height"]["exact"]) if rips else values["height"]
    places = [Fraction(0), *(Fraction(each["exact"]) for each in found["lines"]["items"]), high]
    strips = [low - start for start, low in pairwise(places)]
    if len(strips) != number or len(set(strips)) != 1 or (rips and strips[0] != values["pin"]):
        yield f"the strips are {strips}"
    begins, other = sum(strips[::2]), sum(strips[1::2])
    if begins + other != high or begins < other:
        yield f"pins of {begins} and {other} don't fill {high}"
    first = {"sides": "Sides", "ends": "Front and back"}[values["starts"]]
    if not found["first"]["text"].startswith(f"{first}: {len(strips[::2])} pin"):
        yield found["first"]["text"]
    for each in found["lines"]["items"]:
        if abs(Fraction(each["mark"]) - Fraction(each["exact"])) > A_64TH / 2:
            yield f"a line is told at {each['text']}"
    deep = {"side_slots": values["other"], "end_slots": values["thickness"]}
    for key, thick in deep.items():
        mark = Fraction(found.get(key, found["side_slots"])["mark"])
        if not 0 <= mark - thick - values["proud"] < A_64TH:
            yield f"{key} are {mark} deep"


def check_dovetails(random):
    """What is wrong with random dovetails, as sentences."""
    thick = length(random, 0.375, 1.25)
    values = {
        "height": length(random, 2, 14),
        "tails": random.randint(1, 9),
        "pin_board": thick,
        "kind": random.choice(("through", "blind")),
        "lap": length(random, 0.125, 0.375),
        "slope": random.choice(("6", "7", "8", "5.5")),
        "pin": length(random, 0.125, 0.5),
        "half": length(random, 0.125, 0.5),
    }
    found, refused = told("dovetail_layout", values)
    deep = thick - (values["lap"] if values["kind"] == "blind" else 0)
    flare = deep / Fraction(values["slope"])
    if refused:
        wood = 2 * values["half"] + (values["tails"] - 1) * values["pin"]
        tails = values["height"] - wood
        fits = deep > 0 and tails > 2 * flare * values["tails"]
        return [f"{refused['message']}: {values}"] if fits else []
    return [f"{fault}: {values}" for fault in _trapezoids(values, found, deep, flare)]


def _lines(answer):
    return [Fraction(each["exact"]) for each in answer["items"]]


def _trapezoids(values, found, deep, flare):
    """Pins as asked for and tails as told, one after the other from the edge."""
    many, high = values["tails"], values["height"]
    pins = [values["half"], *[values["pin"]] * (many - 1), values["half"]]
    flares = [1, *[2] * (many - 1), 1]
    at_end, at_shoulder = _lines(found["at_end"]), _lines(found["at_shoulder"])
    area = Fraction(0)
    for name, lines, wider in (("end", at_end, 0), ("shoulder", at_shoulder, flare)):
        pin_widths = [pin + sides * wider for pin, sides in zip(pins, flares, strict=True)]
        starts, stops = [Fraction(0), *lines[1::2]], [*lines[::2], high]
        gaps = [stop - start for start, stop in zip(starts, stops, strict=True)]
        if gaps != pin_widths:
            yield f"at the {name} the pins are {pin_widths}, what the tails leave is {gaps}"
        tails = [stop - start for start, stop in zip(lines[::2], lines[1::2], strict=True)]
        if len(tails) != many or len(set(tails)) != 1 or min(tails) <= 0:
            yield f"at the {name} the tails are {tails}"
        area += (sum(tails) + sum(pin_widths)) / 2 * deep
    if area != high * deep:
        yield f"tails and pins cover {area} of {high * deep}"
    for key, size in (("tail_line", deep), ("wide_pin", values["pin"] + 2 * flare)):
        if abs(Fraction(found[key]["mark"]) - size) > A_64TH / 2:
            yield f"{key} is told as {found[key]['text']}"
    for each in (*found["at_end"]["items"], *found["at_shoulder"]["items"]):
        if abs(Fraction(each["mark"]) - Fraction(each["exact"])) > A_64TH / 2:
            yield f"a line is told at {each['text']}"
