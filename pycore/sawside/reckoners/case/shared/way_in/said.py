"""What is said of the way in: yes or no, each part of it, and what to do where it won't go."""

from sawside.lengths.words import counted
from sawside.reckoners.case.shared.standing_up import ANCHOR, LITTLE, TIPPING, TOO_DEEP, onto_base
from sawside.reckoners.case.shared.way_in.stair_told import STAIR_CAUTIONS

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


_TIGHT = (
    "There’s hardly any room to spare round the stair. Hands, padding or a wall out of plumb can "
    "stop it. Measure the turn again at its narrowest."
)


def verdict_of(given, show, journey):
    """Yes or no in a sentence, and after it how it goes or what stops it."""
    told = f"{_standing(given, show, journey)}{_passing(journey.through)}{_rounding(journey)}"
    return f"{journey.said}. {told}"


def cautions_of(given, show, journey):
    """Those of this case first, then the usual ones."""
    yield from _warnings(given, show, journey)
    if given.kick:
        yield _ONTO
    if journey.through:
        yield _STRAIGHT
    if journey.stair:
        yield from STAIR_CAUTIONS
    yield TIPPING
    yield ANCHOR


def _standing(given, show, journey):
    box = journey.box
    if given.height > given.ceiling:
        return f"Taller than the ceiling, which is {show.bare(given.ceiling)}"
    stuck = ", but there’s no room to lift it onto its base" if journey.stuck else ""
    if box.stands_up:
        spare = box.spare
        room = f"{show.bare(spare, 'be there')} to spare" if spare > 0 else "nothing to spare"
        return f"Tips up{stuck or f', {room}'}"
    if journey.sideways is not None:
        return f"Tips up off its side, not off its back{stuck}"
    return f"Won’t tip up under {show.bare(given.ceiling)}"


def _passing(way):
    if way is None:
        return ""
    return f"; through the doorway {way.held}" if way.passes else "; won’t go through the doorway"


def _rounding(journey):
    if journey.stair is None:
        return ""
    way = journey.round
    return "; won’t go round the stair" if way is None else f"; round the stair {way.said}"


def _warnings(given, show, journey):
    box, lowest = journey.box, _lowest_limit(journey)
    if given.height > given.ceiling:
        yield "It’s taller than the ceiling. Build it lower."
    elif not journey.stands_up:
        if lowest != "stair":
            yield _remedy(show, journey)
    else:
        raised = journey.sideways or box
        if raised.ceiling - raised.diagonal < LITTLE:
            yield _HARDLY
        if box.kick:
            yield from onto_base(box.above)
    if journey.stair is None:
        return
    if journey.round is None and lowest != "ceiling":
        yield _round_remedy(show, journey)
    if journey.stair.is_tight(journey.sizes, LITTLE):
        yield _TIGHT


def _lowest_limit(journey):
    """Of a case that neither tips up nor goes round the stair, what lets it be less high: "ceiling"
    or "stair", so that one height is told that does for both; None for any other case."""
    box = journey.box
    if journey.stands_up or box.above < 0 or journey.stair is None or journey.round is not None:
        return None
    tallest = journey.tallest_round
    if not tallest or box.tallest is None:
        return None
    return "stair" if tallest < box.tallest else "ceiling"


def _round_remedy(show, journey):
    """What height of this width and depth would go round the stair, or in how many boxes."""
    tallest = journey.tallest_round
    if not tallest:
        return (
            "It won’t go round the stair at any height. Make it narrower or shallower, or "
            "assemble it in the room."
        )
    base = " without its toe kick" if journey.box.kick else ""
    boxes = journey.boxes
    many = f", or stack {counted(boxes, 'box', 'boxes')} of one height" if boxes else ""
    return (
        "It won’t go round the stair whole. Build it no higher than "
        f"{show.bare(tallest, 'stay under')}{base}{many}, or assemble it in the room."
    )


def _remedy(show, journey):
    box, boxes = journey.box, journey.boxes
    if box.tallest is None:
        return TOO_DEEP
    many = f" Or stack {counted(boxes, 'box', 'boxes')} of one height." if boxes else ""
    base = (
        " without its toe kick, or make the toe kick higher."
        if box.kick
        else ", or put it on a separate base."
    )
    return (
        f"It won’t tip up in one piece. Build it no higher than "
        f"{show.bare(box.tallest, 'stay under')}{base}{many} Or assemble it standing."
    )
