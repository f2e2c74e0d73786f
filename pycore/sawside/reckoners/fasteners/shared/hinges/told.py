"""How hinges are told: the working line by line, and the cautions."""

from sawside.lengths.words import counted
from sawside.reckoners.fasteners.shared.hinges.places import pounds_of, weighed
from sawside.reckoners.shared.door_weight import weight_working
from sawside.wood.caution import Caution
from sawside.wood.weights import POUNDS_IN

_MOST_LINES = 6
_WIDE = 24
"""Inches from which a door hangs heavier on its hinges. Common practice, no source."""
_ALWAYS = Caution(
    "Hold the door up while you hang it.",
    "Hold the door up while you hang it: shim it from below or have a helper. The hinge maker’s "
    "instructions, weights and screws come first.",
)


def hinge_working(given, show, found):
    """Every line: weight, number, places."""
    number = show.number
    if pounds_of(given, "weight") is None:
        yield from weight_working([weighed(given, show)], show)
    tall = number(given.height)
    yield f"By its height, {tall}: {counted(found.by_height, 'hinge')}"
    rating = pounds_of(given, "rating")
    if rating:
        weights = (weight / POUNDS_IN[given.units] for weight in (found.pounds, rating))
        whole, each = (show.pure(weight, decimals=True) for weight in weights)
        share = show.pure(found.pounds / rating, decimals=True)
        yield f"By weight: {whole} ÷ {each} = {share}, so {counted(found.by_weight, 'hinge')}"
    inset = found.wished[0]
    yield f"Top hinge: {tall} − {number(inset)} = {number(found.wished[-1])}"
    steps, (first, *_, last) = len(found.centers) - 1, found.centers
    if steps > 1:
        apart = (last - first) / steps
        yield f"On center: ({number(last)} − {number(first)}) ÷ {steps} = {number(apart)}"
        for at, wished in enumerate(found.wished[1:-1][:_MOST_LINES], 1):
            yield (f"Hinge {at + 1}: {number(first)} + {at} × {number(apart)} = {number(wished)}")
    for at, (wished, center) in enumerate(zip(found.wished, found.centers, strict=True), 1):
        if wished != center:
            way, by = ("+", center - wished) if center > wished else ("−", wished - center)
            yield (
                f"Hinge {at}, clear of a shelf: {number(wished)} {way} {number(by)}"
                f"{show.equals(center)}"
            )


def hinge_cautions(given, found):
    """Every caution: too few, moved, what can hurt."""
    if len(found.centers) < found.asked:
        why = "weight" if (found.by_weight or 0) > found.by_height else "height"
        yield (
            f"A door of that {why} usually has {counted(found.asked, 'hinge')} or more (shop "
            "practice). The hinge maker’s table comes first."
        )
    moved = [
        at
        for at, pair in enumerate(zip(found.wished, found.centers, strict=True), 1)
        if pair[0] != pair[1]
    ]
    if moved:
        which = f"Hinge{'s' if len(moved) > 1 else ''} {', '.join(map(str, moved))}"
        at_an_end = {1, len(found.centers)} & set(moved)
        ends = " The door’s ends may no longer look alike." if at_an_end else ""
        yield f"{which} moved to clear a shelf.{ends}"
    if pounds_of(given, "weight") and not pounds_of(given, "rating"):
        yield (
            "That weight isn’t checked against the hinges. Enter the rating of each hinge, from "
            "its maker."
        )
    if given.width > _WIDE and not pounds_of(given, "rating"):
        yield (
            "Check the hinge maker’s table: a door this wide may need more hinges than its height "
            "asks for."
        )
    yield _ALWAYS
