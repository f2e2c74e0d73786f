"""What is told of the turn of a stair: the way round it, and what would go where this won't."""

from fractions import Fraction
from math import cos, radians, sin

from sawside.drawing.case.stair_turn import stair_turn
from sawside.geometry.angles import cosine, sine
from sawside.reckoners.case.shared.standing_up import squared
from sawside.reckoners.case.shared.way_in.stair import Stair
from sawside.reckoners.declaration import Answer
from sawside.wood.caution import Caution

STAIR_ANSWERS = (
    Answer("round", "Round the stair", "text"),
    Answer("tallest_round", "Tallest that goes round", must="stay under"),
)
STAIR_CAUTIONS = (
    Caution(
        "Keep everybody out from under it on the stair.",
        "Carry it with two people or more, and keep everybody out from under it and off the stair "
        "below. If it’s too heavy to stop when it slides, take it apart or hire movers.",
    ),
    Caution(
        "Only a level, square turn is checked.",
        "Only a level, square turn is checked: flat walls, no rail or newel in the way, and no "
        "room to spare for hands and padding. Winders and a half turn aren’t figured. Walk a "
        "cardboard cutout of its plan round first.",
    ),
)


def stair_of(given):
    """The `Stair` of a form."""
    above = given.stair_below if given.stair_above is None else given.stair_above
    return Stair(given.stair_below, above, given.headroom)


def stair_answers(journey):
    """The answers about it; the tallest only where this one doesn't go round."""
    if journey.stair is None:
        return {}
    if journey.round is not None:
        return {"round": journey.round.said.capitalize()}
    tallest = journey.tallest_round
    told = {"round": "No, whichever way it’s carried"}
    return told | ({"tallest_round": tallest} if tallest else {})


def stair_drawing(show, journey):
    """The turn with the case in it, or with the tallest that goes round; None where none does."""
    way = journey.nearest
    return way and stair_turn(show, way, tightest(way), journey.round is not None)


def tightest(way):
    """How far a box is turned where it has the least room, in exact hundredths of a degree; 0 or 90
    where it slides round without turning."""
    across, along = (float(each) for each in sorted((way.plan, way.sizes[way.across])))
    below, above = (float(each) for each in (way.stair.below, way.stair.above))
    if along <= max(below, above):
        return Fraction(0 if along <= above else 90)

    def longest(hundredths):
        turn = radians(hundredths / 100)
        return (above * sin(turn) + below * cos(turn) - across) / (sin(turn) * cos(turn))

    near = min(range(100, 9000, 100), key=longest)
    return Fraction(min(range(near - 99, near + 100), key=longest), 100)


def stair_working(show, journey):
    """Line by line for the way that passes, or that of the tallest case that would."""
    way, stair = journey.nearest, journey.stair
    if way is None:
        return
    if journey.round is None:
        yield f"The tallest that goes round is {show.number(way.sizes['height'])} high, {way.said}"
    number, high = show.number, way.sizes[way.upright]
    if way.tilted:
        yield _tilted(show, way)
    else:
        left = number(stair.headroom - high)
        yield f"Under the headroom: {number(stair.headroom)} − {number(high)} = {left}"
    across, along = sorted((way.plan, way.sizes[way.across]))
    wide = max(stair.below, stair.above)
    if along > wide:
        yield _turned(show, way, across)
    else:
        left = number(wide - along)
        yield f"Room to slide round, not turned: {number(wide)} − {number(along)} = {left}"


def _tilted(show, way):
    long, high, room = way.sizes[way.along], way.sizes[way.upright], way.stair.headroom
    number, square = show.number, f"{squared(show, long)} + {squared(show, high)}"
    return (
        f"Length in plan, tilted up to the headroom: (√({square} − {squared(show, room)}) × "
        f"({squared(show, long)} − {squared(show, high)}) + 2 × {number(long)} × "
        f"{number(high)} × {number(room)}) ÷ ({square}) = {number(way.tilted_plan)}"
    )


def _turned(show, way, across):
    turn, number = tightest(way), show.number
    below, above = way.stair.below, way.stair.above
    most = (above * sine(turn) + below * cosine(turn) - across) / (sine(turn) * cosine(turn))
    told = show.pure(turn, decimals=True)
    return (
        f"Longest that turns, tightest at {told}°: ({number(above)} × sin {told}° + "
        f"{number(below)} × cos {told}° − {number(across)}) ÷ (sin {told}° × cos {told}°) = "
        f"{number(most)}"
    )
