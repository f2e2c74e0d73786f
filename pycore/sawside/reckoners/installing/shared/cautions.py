"""What is said wherever a case is put up: wires and pipes, lifting, tipping."""

from sawside.wood.caution import Caution
from sawside.wood.numbers import metric

LIFT = Caution(
    "Lift it empty, with a helper, and brace it until it’s screwed.",
    "Lift it empty, with a helper, and brace it until it’s screwed. Use a stepladder that’s rated "
    "for you.",
)
TIP_OVER = Caution(
    "Anchor a case that could tip before you load it.",
    "Anchor a case that could tip before you load it: see Tip-over. The anchor maker’s "
    "instructions and local rules come first.",
)


def hidden_in_walls(show):
    """Wires and pipes, with the rule for plates in the person's own units."""
    near = "32 mm" if metric(show) else "1 1/4″"
    return Caution(
        "Find wires and pipes first.",
        "Find wires and pipes first, and pick another place where there could be one. Steel plates "
        f"guard most that are less than {near} from a stud’s edge (National Electrical Code "
        "300.4), but not in old walls: where a bit stops hard, stop. If you aren’t sure, ask a "
        "licensed pro; local rules come first.",
    )
