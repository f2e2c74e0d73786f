"""Whether a case tips with somebody on its front, and what its anchors have to hold."""

from sawside.drawing.case.tipping import tipping_case
from sawside.errors import Refusal
from sawside.reckoners.case.shared.tipping.fields import TIPPING_FIELDS, load_inside, pounds
from sawside.reckoners.case.shared.tipping.moments import LEAST_RATING, Tipping, Turning
from sawside.reckoners.case.shared.tipping.working import (
    at_least,
    times_text,
    tipping_working,
    under,
)
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.wood.caution import Caution
from sawside.wood.weights import weight_text

_CAUTIONS = (
    Caution(
        "Anchor it to studs or masonry, whatever this says.",
        "Anchor it to studs or masonry, whatever this says. Don’t climb it or let anyone else: "
        "it can crush a child. Several anchors rarely share a pull alike. Follow the anchor "
        "maker’s instructions and rating, and local rules; "
        "if you aren’t sure of the wall, ask a licensed contractor.",
    ),
    Caution(
        "Keep heavy things low, and open one drawer at a time.",
        "Keep heavy things low, and open one drawer at a time. Pulled out, they tip it much "
        "sooner: drawers aren’t figured in.",
    ),
)


def compute(given, show):
    """What each anchor must be rated (pounds, as text), and how far the case is from tipping."""
    tipping = _tipping(given)
    rating = f"{at_least(tipping.rating, show)} or more"
    answers = {"rating": rating, "each": at_least(tipping.each, show)}
    if tipping.each > 0:
        answers["by_number"] = _by_number(tipping, show)
    if tipping.load:
        answers["figured"] = _figured(tipping, show)
    if tipping.loaded and tipping.balance is not None:
        answers["lean"] = tipping.balance
    if tipping.margin is not None:
        answers["margin"] = times_text(tipping.margin)
    climber = tipping.least_climber()
    if climber is not None:
        answers["climber"] = under(climber, show)
    fixes = (("More anchors", "anchors"), ("Higher anchors", "anchor_height"))
    return Reckoning(
        answers=answers,
        working=tuple(tipping_working(tipping, show)),
        drawing=tipping_case(show, given, tipping, rating),
        cautions=_CAUTIONS,
        verdict=f"{_verdict(tipping)}: use anchors rated",
        fixes=fixes if tipping.each > LEAST_RATING else (),
    )


def _tipping(given):
    if given.kick >= given.depth:
        raise Refusal(
            "impossible",
            "The toe kick is recessed past the back of the case.",
            "Make the recess less than the depth.",
            field="kick",
        )
    for key, what in (("pull_height", "pull"), ("anchor_height", "anchors")):
        if _or(getattr(given, key), 0) > given.height:
            raise Refusal(
                "impossible",
                f"The height of the {what} is above the top of the case.",
                "Enter less, or leave it blank for the top.",
                field=key,
            )
    arm = given.depth / 2 - given.kick
    door, pull, load = pounds(given, "door"), pounds(given, "pull"), load_inside(given)
    if given.state != "worst" and not load:
        raise Refusal(
            "impossible",
            "There’s no load to figure it full with.",
            "Enter what’s inside, or figure it empty.",
            field="state",
        )
    forces = [Turning("The climber", pounds(given, "climber"), given.out + given.kick)]
    if door:
        forces.append(Turning("The open door", door, given.door_width / 2 + given.kick))
    if pull:
        forces.append(Turning("The pull", pull, _or(given.pull_height, given.height)))
    return Tipping(
        Turning("The case", pounds(given, "weight"), arm),
        Turning("The load", load, arm) if load else None,
        tuple(forces),
        _or(given.anchor_height, given.height),
        given.anchors,
        given.times,
        given.state,
        given.height,
    )


def _or(value, other):
    return other if value is None else value


_WHEN = {"worst": "", "full": " when full", "above": " when full above"}
_MOST_ANCHORS = 4


def _by_number(tipping, show):
    """The pull on each of one to four anchors: "105 lb (48 kg) on 1, …"."""
    return ", ".join(
        f"{at_least(tipping.each_of(many), show)} on {many}" for many in range(1, _MOST_ANCHORS + 1)
    )


def _figured(tipping, show):
    load = weight_text(tipping.load.pounds, show)
    if tipping.loaded:
        where = "the upper half only" if tipping.state == "above" else "all of it"
        return f"With {load} in {where}; the anchors for the worse of empty and full"
    empty = tipping.case.moment <= tipping.held
    return f"Empty, which is worse than with {load}" if empty else f"With {load}, worse than empty"


def _verdict(tipping):
    when = _WHEN[tipping.state]
    if tipping.held <= 0:
        return f"Falls over by itself{when}"
    if tipping.tips > tipping.held:
        return f"Tips over{when}"
    nearly = tipping.times * tipping.tips > tipping.held
    return f"Nearly tips{when}" if nearly else f"Doesn’t tip{when}, but anchor it"


RECKONER = Reckoner(
    key="tip_over",
    title="Tip-over",
    asks="Will this case tip over, and how much must its anchors hold?",
    words=(
        "tip over, tipping, tips over, topple, fall over, falls over, anchor, wall anchor, "
        "anchors, anti-tip, strap, furniture strap, child, kid, climb, climbing, stable, "
        "stability, safe, safety, fasten to the wall, attach to the wall, secure to the wall, "
        "bookcase, dresser, cabinet, tall"
    ),
    order=630,
    job="cases",
    picture={
        "wood": "M13 5l13-3 6 30-13 3z",
        "ink": "M3 36h34M4 36V3",
        "chalk": "M13 7H5m3-3L5 7l3 3",
    },
    basic=("height", "depth", "weight_lb", "weight_kg", "kick"),
    fields=TIPPING_FIELDS,
    answers=(
        Answer("rating", "Rating of each anchor", "text"),
        Answer("each", "Pull on each anchor, figured", "text"),
        Answer("by_number", "Pull by number of anchors", "text"),
        Answer("margin", "Weight against what tips it", "text"),
        Answer("climber", "A climber tips it from", "text"),
        Answer("figured", "Figured", "text"),
        Answer("lean", "Falls if leaned past", "angle"),
    ),
    source=(
        "Statics: moments about the front edge it would tip over, everything at rest and at once, "
        "the case’s weight at the middle of its depth. The empty case is judged unless you choose; "
        "the anchors always for the worse of empty and full. A 60 lb climber is what the U.S. rule "
        "for dressers sold tests with (16 CFR 1261, ASTM F2057-23), unchecked; it doesn’t cover "
        "bookcases and built-ins (CPSC guidance). Furniture anchors are tested with 50 lb (ASTM "
        "F3096), unchecked: none is asked for less. The climber’s reach and a margin of twice are "
        "shop practice. What’s on a shelf: as in Shelf strength."
    ),
    compute=compute,
    example={
        "height": "76",
        "depth": "15 1/4",
        "weight_lb": "118",
        "weight_kg": "53.5",
        "kick": "2 1/2",
        "anchor_height": "72",
    },
)
