"""A test hole in scrap: how far it is off the depth that is told, and which way the stop goes."""

from fractions import Fraction

from sawside.lengths.fine import fine_text, on_fine_marks

_FINEST = Fraction(1, 64)
"""What is off by less is as near as a stop is set. Common practice, no source."""


def over_by(given, show, joint):
    """How much deeper a test hole is than the depth that is told, in inches, less than 0 where it
    is shallower; None without one."""
    if given.test_hole is None:
        return None
    return given.test_hole - on_fine_marks(joint.depth, show, "reach").mark


def tested(given, show, joint):
    """The answers about a test hole; none without one."""
    over = over_by(given, show, joint)
    if over is None:
        return {}
    return {"off": on_fine_marks(abs(over), show), "move": f"{remedy(over, show)}."}


def remedy(over, show):
    """What to do about a hole that is `over` too deep, as the end of a sentence begins."""
    if abs(over) < _FINEST:
        return "Leave the stop where it is"
    return f"Move the stop {fine_text(abs(over), show)} {_way(over)}, and drill another"


def _way(over):
    return "toward the tip" if over > 0 else "away from the tip"


def in_brief(over, show):
    """The same in the few words of a verdict."""
    if abs(over) < _FINEST:
        return "test hole right"
    how = "deep" if over > 0 else "shallow"
    return f"test hole {fine_text(abs(over), show)} too {how}: move the stop {_way(over)}"
