"""What is said wherever a case is put up: wires and pipes, lifting, tipping."""

from sawside.wood.caution import Caution
from sawside.wood.numbers import metric

LIFT = Caution(
    "Lift it empty, with a helper.",
    "Lift it empty, with a helper, off a rated stepladder, and brace it until it’s screwed.",
)
TIP_OVER = Caution(
    "Anchor a case that could tip.",
    "Anchor a case that could tip before you load it: see Tip-over. Local rules come first.",
)


def hidden_in_walls(show):
    """Wires and pipes, with the rule for plates in the person's own units."""
    near = "32 mm" if metric(show) else "1 1/4″"
    return Caution(
        "Find wires and pipes first.",
        "Find wires and pipes first: steel plates guard only those within "
        f"{near} of a stud’s edge (National Electrical Code 300.4), and old walls may have none. "
        "If you aren’t sure, ask a licensed pro.",
    )
