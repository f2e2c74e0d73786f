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


def cautions(box, show):
    """Every caution of this box, what is wrong with it first."""
    given = box.given
    if 2 * given.groove > given.side:
        yield (
            f"The groove leaves {fine_text(given.side - given.groove, show)} of the side. Half the "
            "side’s thickness is the most that’s usual (shop practice)."
        )
    joints = (given.front_joint if box.applied else "", box.back_joint)
    if any(each in ("box", "dovetail") for each in joints):
        yield (
            "A groove that runs through shows at a box joint or through dovetail. Stop it short "
            "of the end, or plug it."
        )
    if box.applied and given.front_joint == "butt":
        yield "Glue alone won’t hold a butt corner. Use dowels or screws."
    if given.solid == "none" and given.runs == "wood":
        yield (
            "No wood movement is figured in. If the sides are solid, pick that under Solid wood, "
            "so they don’t stick in the humid season."
        )
    yield _SLIDES if given.runs == "slides" else _GROOVES
    if given.runs == "slides":
        yield _GROOVES
    if box.board is not None:
        yield from MOVEMENT
