"""What is said beside a drawer box: what may rub, show or break, and safety at the saw."""

from sawside.lengths.fine import fine_text
from sawside.reckoners.wood.shared.moisture_fields import CAUTIONS as MOVEMENT
from sawside.wood.caution import Caution

_GROOVES = Caution(
    "Groove one long board, then crosscut the parts.",
    "Groove one long board, then crosscut the parts: short ones are hard to hold. Use guards, "
    "featherboards and push blocks. The saw and router makers’ instructions come first.",
)
_SLIDES = Caution(
    "Get the slides before you cut.",
    "Get the slides before you cut. Their maker gives the clearance, the screws and the load.",
)
_UNDER = Caution(
    "Get the slides before you cut.",
    "Get the slides before you cut. Their maker gives the thickest sides, the space below the "
    "bottom (enter it as Groove up from the bottom edge), holes or notches in the back, the screws "
    "and the load.",
)
_DOWELS = Caution(
    "Set a stop before you drill the sides.",
    "Set a stop before you drill the sides: little is left behind the holes. Clamp the part, and "
    "wear eye protection. The drill and doweling guide makers’ instructions come first.",
)


def _hidden_groove(given, joints):
    """Where the groove shows: at corners where both parts take turns, the back's only where it has
    a groove."""
    front, back = joints
    grooved = (front, back) if given.back == "full" else (front,)
    for kind, names in (("pin", ("box",)), ("tail", ("dovetail", "half_blind"))):
        if any(each in names for each in grooved):
            question = "Box joint" if kind == "pin" else "Dovetail layout"
            yield Caution(
                f"Keep the bottom groove within a {kind} of the sides.",
                f"Keep the bottom groove within a {kind} of the sides, or it shows at the corner. "
                f"{question} says where.",
            )


def cautions(box, show):
    """Every caution of this box, what is wrong with it first."""
    given = box.given
    if 2 * given.groove > given.side:
        yield (
            f"The groove leaves {fine_text(given.side - given.groove, show)} of the side. Half the "
            "side’s thickness is the most that’s usual (shop practice)."
        )
    joints = (given.front_joint, box.back_joint)
    yield from _hidden_groove(given, joints)
    if "butt" in joints:
        yield "Glue alone won’t hold a butt corner. Use dowels or screws."
    if "dowel" in joints:
        yield _DOWELS
    if given.solid == "none" and given.runs == "wood":
        yield (
            "No wood movement is figured in. If the sides are solid, pick that under Solid wood, "
            "so they don’t stick in the humid season."
        )
    if given.runs == "under":
        yield _UNDER
    elif given.runs == "slides":
        yield _SLIDES
    yield _GROOVES
    if box.board is not None:
        yield from MOVEMENT
