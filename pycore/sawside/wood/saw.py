"""What is said at a miter saw: the cautions that several questions show with their answers."""

SHORTEST_TO_HOLD = 8
"""Inches. Common practice, no source: a hand stays 6 inches from the blade, and needs 2 to hold."""

SAW_CAUTIONS = (
    "Unplug the saw before changing a setting or clearing a jam, and follow its maker's "
    "instructions first.",
    "Prove a new setting on scrap of the same width before cutting the piece. Let the blade stop "
    "before it is raised: a small offcut can be caught between fence and blade.",
)
TURNS_TO, TILTS_TO = 50, 45
"""Degrees: about what most miter saws turn to, and most blades tilt to. From memory, no source."""
SHORT_PIECE = (
    f"This piece is short: under {SHORTEST_TO_HOLD}″ it can't be held with the hand 6″ from the "
    "blade (common practice, no source). Cut it from a longer length, or clamp it as the saw's "
    "maker says."
)


def cautions_at_the_saw(*short_sides):
    """The cautions for pieces with these short sides (exact inches)."""
    short = any(side < SHORTEST_TO_HOLD for side in short_sides)
    return (*SAW_CAUTIONS, SHORT_PIECE) if short else SAW_CAUTIONS
