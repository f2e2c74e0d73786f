"""Whether a case can be stood up under a ceiling, and whether it goes through a doorway."""

from sawside.drawing.case.raised_case import raised_case
from sawside.reckoners.case.shared.separate_kick import SEPARATE_KICK, raised_of
from sawside.reckoners.case.shared.standing_up import TALLEST, Box, raised_line, tallest_line
from sawside.reckoners.case.shared.way_in.readings import WAY_IN, asks_for_door, asks_for_stair
from sawside.reckoners.case.shared.way_in.said import cautions_of, verdict_of
from sawside.reckoners.case.shared.way_in.stair_told import (
    STAIR_ANSWERS,
    stair_answers,
    stair_drawing,
    stair_of,
    stair_working,
)
from sawside.reckoners.case.shared.way_in.whole import Journey
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import length

_FIXES = (("Lower case", "height"), ("Shallower case", "depth"), ("Separate toe kick", "kick"))


def compute(given, show):
    """Whether it goes in whole: the diagonal against the ceiling, the way through the doorway with
    the most room, the first way that passes round the stair."""
    box = _box(given, show)
    journey = _journey(given, box)
    way = journey.through
    diagonal = show.rounded(box.diagonal, "reach")
    return Reckoning(
        answers={
            "goes": journey.said,
            "diagonal": diagonal,
            **_raised(box),
            **({} if journey.boxes is None else {"boxes": journey.boxes}),
            **_through(way),
            **stair_answers(journey),
        },
        working=tuple(_working(given, show, box, journey)),
        drawing=_drawing(show, given, box, journey, diagonal),
        cautions=tuple(cautions_of(given, show, journey)),
        verdict=verdict_of(given, show, journey),
        fixes=_fixes(journey),
    )


def _drawing(show, given, box, journey, diagonal):
    """The turn of the stair where one is asked for: there is less to see in how it's raised."""
    return stair_drawing(show, journey) or raised_case(show, given, box, diagonal)


def _box(given, show):
    raised, kick = raised_of(given, show, given.height)
    return Box(raised, given.depth, given.ceiling, kick)


def _journey(given, box):
    sizes = {"height": box.height, "width": given.width, "depth": box.depth}
    door = (given.door_width, given.door_height) if asks_for_door(given) else None
    return Journey(box, sizes, door, stair_of(given) if asks_for_stair(given) else None)


def _fixes(journey):
    box = journey.box
    if box.above < 0 or not journey.stands_up:
        return _FIXES
    if journey.stuck:
        return _FIXES[:1]
    return () if journey.whole else (*_FIXES[:2], ("Narrower case", "width"))


def _raised(box):
    answers = {}
    if box.stands_up and box.spare > 0:
        answers["spare"] = box.spare
    return answers | box.tallest_answer()


def _through(way):
    if way is None:
        return {}
    if not way.passes:
        return {"through": "No, whichever way it’s carried straight through"}
    return {"through": way.said.capitalize(), "beside": way.beside, "over": way.over}


def _working(given, show, box, journey):
    number, way = show.number, journey.through
    if given.kick:
        high = f"{number(given.height)} − {number(given.kick)}"
        yield f"Without its toe kick: {high} = {number(box.height)}"
    yield raised_line(show, box)
    if box.stands_up and box.above >= 0:
        yield from _headroom(show, box)
    if box.limited:
        yield tallest_line(show, box)
    if journey.sideways is not None:
        yield raised_line(show, journey.sideways, "Raised off its side")
    if way is not None and way.passes:
        sizes = journey.sizes
        for name, door, across, left in (
            ("Beside it", given.door_width, way.across, way.beside),
            ("Above it", given.door_height, way.upright, way.over),
        ):
            told = show.equals(show.rounded(left, "be there"))
            yield f"{name} in the doorway: {number(door)} − {number(sizes[across])}{told}"
    yield from stair_working(show, journey)


def _headroom(show, box):
    """On the way up, and on its base where it has one: the less of both is to spare."""
    number = show.number
    left = box.ceiling - box.diagonal
    if left > 0:
        told = show.equals(show.rounded(left, "be there"))
        yield f"Headroom: {number(box.ceiling)} − {number(box.diagonal)}{told}"
    if box.kick:
        told = show.equals(show.rounded(box.above, "be there"))
        yield f"Above it on its base: {number(box.ceiling)} − {number(box.height + box.kick)}{told}"


RECKONER = Reckoner(
    key="getting_it_in",
    title="Getting it in",
    asks="Does this case go in whole: up under the ceiling, through the door, round the stair?",
    words=(
        "tip up, stand up, tilt up, raise, ceiling height, too tall, diagonal, headroom, doorway, "
        "get through, move in, carry, stair, stairs, staircase, stair turn, landing, round the "
        "corner, hallway, hall corner, bookcase, cabinet, tall case, in one piece, toe kick, "
        "stacked"
    ),
    order=610,
    job="cases",
    picture={
        "wood": "M20 35l-11-26l8-4l11 26z",
        "ink": "M3 37h34M3 3h34",
        "chalk": "M32 30a20 20 0 0 0-3-20m-1 4l1-5l4 3",
    },
    basic=(
        "height",
        "depth",
        "ceiling",
        "door",
        "width",
        "door_width",
        "door_height",
        "stair_below",
        "stair_above",
        "headroom",
    ),
    fields=(
        length("height", "Case height", least="1 in", in_short="{} high"),
        length("depth", "Case depth", least="1/2 in", in_short="{} deep"),
        length(
            "ceiling",
            "Ceiling height",
            help="At its lowest where you’ll raise the case, under any light.",
            least="1 in",
            in_short="{} ceiling",
        ),
        SEPARATE_KICK,
        *WAY_IN,
    ),
    answers=(
        Answer("goes", "In one piece", "text"),
        Answer("diagonal", "Diagonal to tip it up", must="reach"),
        Answer("spare", "Headroom to spare", must="be there"),
        *TALLEST,
        Answer("boxes", "Boxes to stack", "count"),
        Answer("through", "Through the doorway", "text"),
        Answer("beside", "Left beside it", must="be there"),
        Answer("over", "Left above it", must="be there"),
        *STAIR_ANSWERS,
    ),
    source=(
        "Pythagorean theorem: a case raised off its back is as high as the diagonal of its side. "
        "A box goes straight through an opening if two of its sizes do. Round a corner: the "
        "ladder round the corner of calculus textbooks, with a breadth, level."
    ),
    compute=compute,
    example={
        "height": "93 3/4",
        "depth": "15 3/8",
        "ceiling": "96 1/8",
        "door": "yes",
        "width": "36 7/8",
        "door_width": "31 1/2",
        "door_height": "79 1/2",
    },
)
