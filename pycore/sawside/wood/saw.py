"""What is said at a miter saw: the cautions that several questions show with their answers."""

from sawside.wood.caution import Caution

SHORTEST_TO_HOLD = 8
"""Inches. Common practice, no source: a hand stays 6 inches from the blade, and needs 2 to hold."""

SAW_CAUTIONS = (
    Caution(
        "Unplug before you change a setting.",
        "Unplug the saw before you change a setting or clear a jam. The saw maker’s instructions "
        "come first.",
    ),
    Caution(
        "Test on scrap. Let the blade stop.",
        "Test a new setting on scrap of the same width. Let the blade stop before you raise it: a "
        "small offcut can get caught between the fence and the blade.",
    ),
)
TURNS_TO, TILTS_TO = 50, 45
"""Degrees: about what most miter saws turn to, and most blades tilt to. From memory, no source."""
SHORT_PIECE = Caution(
    f"Under {SHORTEST_TO_HOLD}″: clamp it, or cut it from a longer piece.",
    f"This piece is short: under {SHORTEST_TO_HOLD}″ you can’t hold it with your hand 6″ from the "
    "blade (shop practice). Cut it from a longer piece, or clamp it the way the saw maker says.",
)
THIN_STRIPS = (
    "Thin strips break and catch easily. Cut them against a backer, the way the saw maker says "
    "(shop practice)."
)


def cautions_at_the_saw(*short_sides):
    """The cautions for pieces with these short sides (exact inches)."""
    short = any(side < SHORTEST_TO_HOLD for side in short_sides)
    return (*SAW_CAUTIONS, SHORT_PIECE) if short else SAW_CAUTIONS
