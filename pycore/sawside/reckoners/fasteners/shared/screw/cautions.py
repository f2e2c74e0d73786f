"""What is said beside a screw: what is weak, what splits, what can hurt."""

from fractions import Fraction

from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.real import sign
from sawside.reckoners.fasteners.shared.two_pieces import INTO_A_WALL, little_left
from sawside.wood.caution import Caution
from sawside.wood.numbers import metric

LEAST_REACH = 6
"""Diameters (NDS 12.1.5.6)."""
_LEAST_UNDER_HEAD = Fraction(3, 16)
"""Inches of wood. Common practice, no source."""
_ALWAYS = (
    Caution(
        "Clamp small parts to drill them, and wear eye protection.",
        "Clamp small parts to drill them, and wear eye protection. Try both bits and the screw in "
        "scrap of the same wood: threads and woods differ. The screw and drill makers’ "
        "instructions come first.",
    ),
    INTO_A_WALL,
)


def cautions(given, show, screw):
    """Every caution of this screw, what holds badly first."""
    if given.into == "end":
        yield (
            "End grain holds a screw badly: don’t count on a straight pull. Use a longer screw, a "
            "dowel across its path, or another joint."
        )
    if given.into == "edge" and given.wood == "board":
        corner = "75 mm" if metric(show) else "3″"
        yield (
            "MDF and particleboard split at their edges. Drill the pilot as deep as the screw "
            f"goes, and stay {corner} from the corners (shop practice)."
        )
    if given.edge is not None and 4 * screw.shank > given.edge:
        yield (
            f"A screw {fine_text(screw.shank, show)} thick is more than a quarter of that edge. "
            "Keep it centered, and drill both holes (shop practice)."
        )
    yield from little_left(given, show, screw)
    yield from _under_the_head(show, screw)
    yield from _too_short(show, screw)
    if given.pull == "yes" and given.into != "end" and given.species.kind == "panel":
        yield "The pull isn’t figured for panels: the published formula is for solid wood."
    yield from _ALWAYS


def _under_the_head(show, screw):
    """What is said of a head that can pull through the first piece."""
    left = screw.through - (screw.cone or 0)
    if sign(left - _LEAST_UNDER_HEAD) < 0:
        told = show.text(on_fine_marks(left, show, "be there"))
        yield (
            f"Only {told} of wood is left under the head: it can pull through. Sink it less, or "
            "use a washer head (shop practice)."
        )


def _too_short(show, screw):
    """What is said of a screw that reaches less far than a rule asks."""
    told = show.text(on_fine_marks(screw.reach, show, "be there"))
    if screw.reach < LEAST_REACH * screw.shank:
        yield (
            f"It bites only {told}, less than six shank diameters. Use a thinner or longer screw, "
            "or more of them."
        )
    elif 2 * screw.reach < screw.length:
        yield (
            f"It bites {told}, less than half of its length: two thirds is usual. Use more of "
            "them, or a thinner first piece (shop practice)."
        )
