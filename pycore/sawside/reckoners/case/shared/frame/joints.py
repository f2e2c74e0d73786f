"""What the joints of a face frame add to its members, and how deep they may go. Inches, exact."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.fine import fine_text, limit_text
from sawside.lengths.units import INCHES_PER, METRIC

JOINTS = {
    "screws": "Pocket screws",
    "dowels": "Dowels",
    "tenon": "Stub tenons",
    "through": "Through tenons",
}
_NONE = (Fraction(0), Fraction(0))
_LEAST_LEFT = {False: Fraction(1, 8), True: 3 * INCHES_PER["mm"]}
"""By whether it is metric: wood past a stub tenon, or between two. Common practice, no source."""


def added_by(given, show, layout):
    """A function of (layout, member) to what the joint adds at each end of it.

    Butt joints add nothing, a stub tenon its length, a through tenon the width of what it goes
    through. Only where rails meet in a middle stile it goes half way, to meet the other.
    "impossible" where a stub tenon comes too near the far edge, or the one across from it.
    """
    if given.joint == "tenon":
        _check_stub(given, show, layout)
        return lambda found, each: (
            (given.tenon, given.tenon) if not each.upright or found.is_between(each) else _NONE
        )
    return _through if given.joint == "through" else lambda *_: _NONE


def _through(layout, member):
    outline = layout.outline
    if member.upright:
        return (outline.bottom, outline.top) if layout.is_between(member) else _NONE
    middle = {"middle": layout.middle_stile, "met": layout.middle_stile / 2}
    left, right = layout.ends_of(member)
    return middle.get(left, outline.left), middle.get(right, outline.right)


def entered(layout):
    """(name, width) of each member that a tenon or screw goes into."""
    outline = layout.outline
    yield "left stile", outline.left
    yield "right stile", outline.right
    if any(layout.is_between(each) for each in layout.members):
        yield "top rail", outline.top
        yield "bottom rail", outline.bottom
    if layout.in_bays:
        yield "middle stile", layout.middle_stile


def _check_stub(given, show, layout):
    name, depth = min(entered(layout), key=lambda each: each[1])
    least = _LEAST_LEFT[show.settings.unit in METRIC]
    left, tenon = fine_text(least, show), fine_text(given.tenon, show)
    if given.tenon + least > depth:
        raise Refusal(
            "impossible",
            f"A {tenon} tenon would come too near the far edge of the {name}, which is "
            f"{fine_text(depth, show)} wide: leave {left} or more past it (shop practice).",
            f"Make it {limit_text(depth - least, show, 'stay under')} at most, or pick through "
            "tenons.",
            field="tenon",
        )
    middle = layout.middle_stile
    if layout.crossed and 2 * given.tenon + least > middle:
        raise Refusal(
            "impossible",
            f"{tenon} tenons from both sides would meet, or nearly, in a middle stile "
            f"{fine_text(middle, show)} wide: leave {left} or more between them (shop practice).",
            f"Make them {limit_text((middle - least) / 2, show, 'stay under')} at most, or the "
            "middle stile wider.",
            field="tenon",
        )
