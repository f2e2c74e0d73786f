"""Whether a case can be stood up under a ceiling, and whether it goes through a doorway."""

from fractions import Fraction

from sawside.drawing.case.raised_case import raised_case
from sawside.errors import Refusal
from sawside.lengths.words import counted
from sawside.reckoners.case.shared.doorway import carried
from sawside.reckoners.case.shared.separate_kick import SEPARATE_KICK
from sawside.reckoners.case.shared.standing_up import (
    ANCHOR,
    LITTLE,
    TALLEST,
    TIPPING,
    Box,
    onto_base,
    raised_line,
    tallest_line,
)
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import choice, length

_DOOR = {"shown_when": ("door", ("yes",))}
_STRAIGHT = (
    "Only straight through the doorway is checked. That’s level, with no tilting. Walk the rest of "
    "the way with a tape: halls, turns, stairs, door handles and light fixtures."
)
_ONTO = (
    "Set the base first, then lift the case onto it level. Tilted on top of the base, it needs "
    "more height than it has standing."
)
_HARDLY = (
    "There’s hardly any headroom to spare. Padding on the floor, a light fixture or a low spot in "
    "the ceiling can stop it. Measure the ceiling where you’ll raise it."
)
_FIXES = (("Lower case", "height"), ("Shallower case", "depth"), ("Separate toe kick", "kick"))


def compute(given, show):
    """The diagonal against the ceiling, and the way through the doorway with the most room."""
    box = _box(given, show)
    way = _way(given, box)
    sideways = _sideways(given, box)
    diagonal = show.rounded(box.diagonal, "reach")
    return Reckoning(
        answers={"diagonal": diagonal, **_raised(box), **_through(way)},
        working=tuple(_working(given, show, box, sideways, way)),
        drawing=raised_case(show, given, box, diagonal),
        cautions=(
            *_warnings(given, show, box, sideways),
            *((_ONTO,) if given.kick else ()),
            *((_STRAIGHT,) if way else ()),
            TIPPING,
            ANCHOR,
        ),
        verdict=_standing(given, show, box, sideways) + _passing(way),
        fixes=_fixes(box, sideways),
    )


def _box(given, show):
    kick = given.kick or Fraction(0)
    if kick >= given.height:
        raise Refusal(
            "impossible",
            f"A toe kick of {show.text(kick)} leaves nothing of a case {show.text(given.height)} "
            "high.",
            "Enter a lower toe kick.",
            field="kick",
        )
    return Box(given.height - kick, given.depth, given.ceiling, kick)


def _sideways(given, box):
    """The same box raised off its side, where that passes and off its back doesn't, or None."""
    if box.stands_up or given.door != "yes":
        return None
    other = Box(box.height, given.width, box.ceiling, box.kick)
    return other if other.stands_up else None


def _fixes(box, sideways):
    if box.above < 0 or not (box.stands_up or sideways is not None):
        return _FIXES
    return _FIXES[:1] if _stuck(box) else ()


def _stuck(box):
    """Whether it just goes under the ceiling on its base, but not onto it."""
    return bool(box.kick) and box.above == 0


def _way(given, box):
    if given.door != "yes":
        return None
    sizes = {"height": box.height, "width": given.width, "depth": given.depth}
    return carried(sizes, given.door_width, given.door_height)


def _raised(box):
    answers = {}
    if box.stands_up and box.spare > 0:
        answers["spare"] = box.spare
    answers |= box.tallest_answer()
    if box.boxes is not None and not box.stands_up:
        answers["boxes"] = box.boxes
    return answers


def _through(way):
    if way is None:
        return {}
    if not way.passes:
        return {"through": "No, whichever way it’s carried straight through"}
    return {"through": way.said.capitalize(), "beside": way.beside, "over": way.over}


def _standing(given, show, box, sideways):
    if given.height > given.ceiling:
        return f"Taller than the ceiling, which is {show.bare(given.ceiling)}"
    stuck = ", but there’s no room to lift it onto its base" if _stuck(box) else ""
    if box.stands_up:
        spare = box.spare
        room = f"{show.bare(spare, 'be there')} to spare" if spare > 0 else "nothing to spare"
        return f"Tips up{stuck or f', {room}'}"
    if sideways is not None:
        return f"Tips up off its side, not off its back{stuck}"
    return f"Won’t tip up under {show.bare(given.ceiling)}"


def _passing(way):
    if way is None:
        return ""
    return f"; through the doorway {way.held}" if way.passes else "; won’t go through the doorway"


def _warnings(given, show, box, sideways):
    if given.height > given.ceiling:
        yield "It’s taller than the ceiling. Build it lower."
    elif not box.stands_up and sideways is None:
        yield _remedy(show, box)
    else:
        if (sideways or box).ceiling - (sideways or box).diagonal < LITTLE:
            yield _HARDLY
        if box.kick:
            yield from onto_base(box.above)


def _remedy(show, box):
    if box.tallest is None:
        return "It won’t tip up in one piece. It’s as deep as the ceiling is high."
    many = f" Or stack {counted(box.boxes, 'box', 'boxes')} of one height." if box.boxes else ""
    base = (
        " without its toe kick, or make the toe kick higher."
        if box.kick
        else ", or put it on a separate base."
    )
    return (
        f"It won’t tip up in one piece. Build it no higher than "
        f"{show.bare(box.tallest, 'stay under')}{base}{many} Or assemble it standing."
    )


def _working(given, show, box, sideways, way):
    number = show.number
    if given.kick:
        high = f"{number(given.height)} − {number(given.kick)}"
        yield f"Without its toe kick: {high} = {number(box.height)}"
    yield raised_line(show, box)
    if box.stands_up and box.above >= 0:
        yield from _headroom(show, box)
    if box.limited:
        yield tallest_line(show, box)
    if sideways is not None:
        yield raised_line(show, sideways, "Raised off its side")
    if way is not None and way.passes:
        sizes = {"height": box.height, "width": given.width, "depth": given.depth}
        for name, door, across, left in (
            ("Beside it", given.door_width, way.across, way.beside),
            ("Above it", given.door_height, way.upright, way.over),
        ):
            told = show.equals(show.rounded(left, "be there"))
            yield f"{name} in the doorway: {number(door)} − {number(sizes[across])}{told}"


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
    asks="Can this case stand up in the room, and get through the doorway?",
    words=(
        "tip up, stand up, tilt up, raise, ceiling height, too tall, diagonal, headroom, doorway, "
        "get through, move in, carry, bookcase, cabinet, tall case, in one "
        "piece, toe kick, stacked"
    ),
    order=610,
    job="cases",
    picture={
        "wood": "M20 35l-11-26l8-4l11 26z",
        "ink": "M3 37h34M3 3h34",
        "chalk": "M32 30a20 20 0 0 0-3-20m-1 4l1-5l4 3",
    },
    basic=("height", "depth", "ceiling", "door", "width", "door_width", "door_height"),
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
        choice("door", "Doorway", {"no": "None to check", "yes": "Check a doorway"}, in_short="{}"),
        length("width", "Case width", least="1/2 in", in_short="{} wide", **_DOOR),
        length(
            "door_width",
            "Doorway width",
            help="At its narrowest: door open, from its face to the other stop.",
            least="1 in",
            **_DOOR,
        ),
        length("door_height", "Doorway height", least="1 in", **_DOOR),
    ),
    answers=(
        Answer("diagonal", "Diagonal to tip it up", must="reach"),
        Answer("spare", "Headroom to spare", must="be there"),
        *TALLEST,
        Answer("boxes", "Boxes to stack", "count"),
        Answer("through", "Through the doorway", "text"),
        Answer("beside", "Left beside it", must="be there"),
        Answer("over", "Left above it", must="be there"),
    ),
    source=(
        "Pythagorean theorem: a case raised off its back is as high as the diagonal of its side. "
        "A box goes straight through an opening if two of its sizes do."
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
