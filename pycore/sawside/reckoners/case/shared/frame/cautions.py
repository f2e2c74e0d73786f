"""What is said beside a face frame: of the saw, of its joints, and of what it covers."""

from fractions import Fraction

from sawside.lengths.fine import fine_text
from sawside.lengths.units import INCHES_PER, METRIC
from sawside.reckoners.case.shared.frame.columns import rails_of
from sawside.reckoners.case.shared.frame.joints import entered
from sawside.wood.caution import Caution
from sawside.wood.saw import cautions_at_the_saw

_FOR_SCREWS = {False: Fraction(5, 4), True: 32 * INCHES_PER["mm"]}
"""By whether it is metric: what a usual pocket screw stays inside. Common practice, no source."""
_FOR_TWO = {False: Fraction(3, 2), True: 38 * INCHES_PER["mm"]}
"""The same of two at one height from both sides. Common practice, no source."""
_BY_JOINT = {
    "screws": Caution(
        "Clamp the joint before you drive screws.",
        "Clamp each joint flush before you drive its screws, and keep your hands out of line with "
        "the tip. The jig’s instructions come first for the drill stop and the screw length. Test "
        "on scrap of the same thickness, so no tip comes through.",
    ),
    "dowels": Caution(
        "Clamp the part before you drill it.",
        "Clamp the part before you drill it, and never hold it in your hand. Follow the "
        "instructions for your drill and guide. Dowel layout tells you where the holes go and how "
        "deep.",
    ),
    "tenon": Caution(
        "Hold the part in a jig or gauge.",
        "Cut tenons with the part held by a jig or gauge, never freehand, and keep the guard the "
        "saw or router maker calls for. Test the fit in scrap of the same thickness. At a corner, "
        "keep the mortise back from the end of the stile, or it splits out (shop practice).",
    ),
}
_BY_JOINT["through"] = _BY_JOINT["tenon"]._replace(
    full=f"{_BY_JOINT['tenon'].full} Leave a through tenon a hair long, and plane it flush once "
    "it’s glued."
)
_MEASURE = Caution(
    "Measure the glued-up case first.",
    "Measure the case at its front edges once it’s glued up. Cut the frame to that, not to the "
    "plan.",
)


def cautions(given, show, layout, kinds):
    """Every caution of this frame, what may be wrong with it first."""
    if layout.outline.insides is not None:
        yield from _on_the_case(show, layout.outline)
    if given.joint == "through" and layout.crossed:
        yield (
            "Through tenons from both sides would hit each other in a middle stile, so where rails "
            "meet there they stop half way."
        )
    if given.joint == "screws":
        yield from _narrow(show, layout)
    yield from _unequal(given, show, layout)
    yield from cautions_at_the_saw(*(each.member.length for each in kinds))
    yield _BY_JOINT[given.joint]
    if given.size_of == "case":
        yield _MEASURE


def _narrow(show, layout):
    """Of the narrowest stile or rail that pocket screws go into, where a screw may be too long."""
    name, width = min(entered(layout), key=lambda each: each[1])
    if width < _FOR_SCREWS[show.settings.unit in METRIC]:
        yield (
            f"A pocket screw may come through the far edge of a {name.split()[-1]} "
            f"{fine_text(width, show)} wide. Use dowels, or try your shortest screw in scrap of "
            "that width."
        )
    middle = layout.middle_stile
    if layout.crossed and middle < _FOR_TWO[show.settings.unit in METRIC]:
        yield (
            f"Pocket screws from both sides may hit each other in a middle stile "
            f"{fine_text(middle, show)} wide. Set their holes at different heights, or use dowels."
        )


def _unequal(given, show, layout):
    """By how much openings differ that were to be equal."""
    across = [layout.widths] if given.bays == "equal" else []
    down = [layout.heights[0]] if given.rows == "equal" else []
    if given.rows == "columns":
        down = [
            heights
            for column, heights in enumerate(layout.heights, 1)
            if not any(rails_of(given, column))
        ]
    for way, alike in (("across", across), ("down", down)):
        off = max((max(sizes) - min(sizes) for sizes in alike), default=0)
        if off:
            yield (
                f"Openings {way} differ by up to {fine_text(off, show)}. Equal ones would be off "
                "your marks. Make doors and drawers to each opening."
            )


def _on_the_case(show, outline):
    for side, inside in zip(("left", "right"), outline.insides, strict=True):
        if inside < 0:
            yield (
                f"The {side} stile leaves {show.text(-inside)} of the side’s edge showing. Use a "
                "wider stile, or start it closer to the inside."
            )
    if outline.lip < 0:
        yield (
            f"The bottom rail leaves {show.text(-outline.lip)} of the case bottom’s edge showing. "
            "Use a wider rail."
        )
    most = max(outline.insides)
    if most > 0:
        yield (
            f"The stiles cover up to {show.text(most)} of the inside. Fur out drawer slides "
            "and pullouts past that, or they’ll hit the stile."
        )
