"""Letting a hinge in: how deep a butt hinge's gains are, where the bore of a cup hinge goes."""

from fractions import Fraction

from sawside.drawing.fasteners.let_in import butt_hinge, cup_hinge
from sawside.lengths.fine import on_fine_marks
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fasteners.shared.decimals import decimals
from sawside.reckoners.fasteners.shared.hinge_fit.fields import FIELDS
from sawside.reckoners.fasteners.shared.hinge_fit.let_in import bore_of, gains_of, tip_left
from sawside.wood.caution import Caution

_LEAST_LEFT = Fraction(1, 8)
_CAUTIONS = (
    Caution(
        "Try it on scrap, with the door held up.",
        "Try it on scrap, with the door held up or clamped. Drill pilots for the screws: steel "
        "first, then brass. The hinge maker’s instructions come first.",
    ),
    Caution(
        "Clamp the door to bore or rout it, and wear eye protection.",
        "Clamp the door to bore or rout it, and wear eye protection. Bore cups with a stop: the "
        "bit’s point goes deeper than the hole. The tool maker’s instructions come first.",
    ),
)


def compute(given, show):
    """The depth of the gains or the place of the bore, and the wood that is left. Inches."""
    return _butt(given, show) if given.kind == "butt" else _cup(given, show)


def _butt(given, show):
    gains = gains_of(given, show)
    number = show.number
    left = tip_left(given, show, given.leaf - gains.depth)
    thick = number(gains.closed)
    lines = [f"Closed: 2 × {number(given.leaf)} + {number(given.between)} = {thick}"]
    if gains.depth:
        into = f"{thick} − {number(gains.gap)}"
        shared = f"({into}) ÷ 2" if given.gains == "both" else into
        lines.append(f"Gain: {shared} = {number(gains.depth)}")
    answers = {"gap": on_fine_marks(gains.gap, show)}
    if gains.depth:
        answers["gain"] = on_fine_marks(gains.depth, show)
    verdict = "Gap between door and frame"
    if gains.depth:
        where = "Gain in door" if given.gains == "door" else "Gain in both"
        verdict = f"{where} (gap {show.bare(on_fine_marks(gains.gap, show))})"
    return Reckoning(
        answers=answers | _left(show, {"tip": left}),
        main="gain" if gains.depth else "gap",
        working=(*lines, *_tip_line(given, show, given.leaf - gains.depth, left)),
        drawing=butt_hinge(show, given, gains),
        cautions=(*_warned(show, left, "screw’s tip"), *_CAUTIONS),
        verdict=verdict,
    )


def _cup(given, show):
    bore = bore_of(given, show)
    tab, cup, middle, wood, deep, left = (
        decimals(show, each)
        for each in (bore.tab, given.cup, bore.center, given.wood, given.deep, bore.left)
    )
    tip = tip_left(given, show, Fraction(0))
    center = on_fine_marks(bore.center, show)
    covers = decimals(show, bore.covers)
    lines = (
        f"Tab: {covers} + {decimals(show, given.plate)} − {_signed(show, given.constant)} = {tab}",
        f"Center: {tab} + {cup} ÷ 2 = {middle}",
        f"Left behind the cup: {wood} − {deep} = {left}",
        *_tip_line(given, show, Fraction(0), tip),
    )
    answers = {
        "center": center,
        "tab": on_fine_marks(bore.tab, show),
        "bore": on_fine_marks(given.deep, show),
    }
    return Reckoning(
        answers=answers | _left(show, {"behind": bore.left, "tip": tip}),
        main="center",
        working=lines,
        drawing=cup_hinge(show, given, bore),
        cautions=(*_warned(show, bore.left, "cup"), *_warned(show, tip, "screw’s tip"), *_CAUTIONS),
        verdict="Cup’s center, from the door’s edge",
    )


def _signed(show, inches):
    return decimals(show, inches) if inches >= 0 else f"({decimals(show, inches)})"


def _tip_line(given, show, proud, left):
    if left is None:
        return
    screw, wood = decimals(show, given.screw), decimals(show, given.wood)
    leaf = "" if not proud else f" {'+' if proud > 0 else '−'} {decimals(show, abs(proud))}"
    yield f"Past the screw’s tip: {wood} − {screw}{leaf} = {decimals(show, left)}"


def _left(show, wood):
    """The answers about what wood is left, of those that there are."""
    return {
        key: on_fine_marks(each, show, "be there") for key, each in wood.items() if each is not None
    }


def _warned(show, left, what):
    if left is not None and left < _LEAST_LEFT:
        told = show.text(on_fine_marks(left, show, "be there"))
        yield f"Only {told} of wood is left past the {what}: it could show or break out."


RECKONER = Reckoner(
    key="hinge_fit",
    title="Fitting a hinge",
    asks="How deep is a butt hinge let in, or where is a cup hinge bored?",
    words=(
        "butt hinge, butt hinges, hinge gain, gains, concealed hinge, concealed hinges, 35 mm "
        "hole, hinge boring, european hinge, european hinge boring, hinge overlay, boring distance"
    ),
    order=830,
    job="screws and hinges",
    picture={
        "wood": "M3 4h15v32H3zM22 4h15v32H22z",
        "ink": "M14 12h4v16h-4zM22 12h4v16h-4zM20 12v16",
        "chalk": "M10 20h4m-2-2l2 2-2 2M30 20h-4m2-2l-2 2 2 2",
    },
    basic=("kind", "leaf", "between", "gap", "sits", "overlay", "reveal", "constant", "plate"),
    fields=FIELDS,
    answers=(
        Answer("gain", "Gain depth", must="agree"),
        Answer("gap", "Gap at the hinge", must="agree"),
        Answer("center", "Cup’s center, from the door’s edge", must="agree"),
        Answer("tab", "Tab, edge to the cup hole", must="agree"),
        Answer("bore", "Cup hole depth", must="agree"),
        Answer("behind", "Wood left behind the cup", must="be there"),
        Answer("tip", "Wood left past the screw’s tip", must="be there"),
    ),
    source=(
        "Geometry: two leaves and what is between them fill the gap and both gains; overlay = tab "
        "+ the hinge’s constant − plate height, by the figures of its maker, which come first. "
        "Common practice, no source: a cup hole of 35 mm, 11.5 to 13 mm deep, 3 to 6 mm from the "
        "edge; gaps of 1/16 to 3/32 in; 1/8 in of wood left."
    ),
    compute=compute,
    example={
        "kind": "butt",
        "leaf": "5/64",
        "between": "1/16",
        "gap": "1/16",
        "wood": "2",
        "screw": "3/4",
    },
)
