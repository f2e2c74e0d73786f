"""What is said wherever a case is put up: wires and pipes, lifting, tipping."""

from sawside.wood.caution import Caution
from sawside.wood.numbers import metric

LIFT = Caution(
    "Lift it with a helper, and brace it until it’s screwed.",
    "Lift it with a helper, and brace it until it’s screwed. Empty it first, take doors, drawers "
    "and shelves out, and work from a stepladder that’s rated for you, not from a chair.",
)
TIP_OVER = Caution(
    "Anchor a case that could tip before you load it.",
    "Anchor a case that could tip before you load it; the Tip-over question figures what its "
    "anchors must hold. The anchor maker’s instructions and local rules come first.",
)


def hidden_in_walls(show):
    """Wires and pipes, with the rule for plates in the person's own units."""
    near = "32 mm" if metric(show) else "1 1/4″"
    return Caution(
        "Find wires and pipes first.",
        "Find wires and pipes first, and pick another place where there could be one: near "
        "outlets, switches, sinks and radiators, and above and below them. Cables and pipes less "
        f"than {near} from a stud’s edge are usually behind steel plates (National Electrical "
        "Code 300.4), older ones often aren’t. A screw or bit that stops hard may be on a plate: "
        "stop there. If you aren’t sure, turn the power off and ask a licensed pro; local rules "
        "come first.",
    )
