"""What the joints of a face frame add to its members, and how deep they may go. Inches, exact."""

from fractions import Fraction

from sawside.errors import Refusal

JOINTS = {
    "screws": "Pocket screws",
    "dowels": "Dowels",
    "tenon": "Stub tenons",
    "through": "Through tenons",
}
_NONE = (Fraction(0), Fraction(0))


def added_by(given, show, layout):
    """A function of (layout, member) to what the joint adds at each end of it.

    Butt joints add nothing, a stub tenon its length, a through tenon the width of what it goes
    through. Where rails meet in a middle stile a through tenon goes half way, to meet the other.
    "impossible" where a stub tenon would come out of the far edge, or hit the one across from it.
    """
    if given.joint == "tenon":
        _check_stub(given, show, layout)
        return lambda found, each: (
            (given.tenon, given.tenon) if not each.upright or _is_between(found, each) else _NONE
        )
    return _through if given.joint == "through" else lambda *_: _NONE


def _is_between(layout, member):
    """Whether this is a middle stile between the top and the bottom rail."""
    return member.name == "Middle stile" and member.high < layout.outline.height


def _through(layout, member):
    outline = layout.outline
    if member.upright:
        return (outline.bottom, outline.top) if _is_between(layout, member) else _NONE
    half = layout.middle_stile / 2
    return (
        outline.left if member.left == layout.columns[0][0] else half,
        outline.right if member.right == layout.columns[-1][1] else half,
    )


def _entered(layout):
    """(name, width) of each outer member that a tenon goes into."""
    outline = layout.outline
    yield "left stile", outline.left
    yield "right stile", outline.right
    if any(_is_between(layout, each) for each in layout.members):
        yield "top rail", outline.top
        yield "bottom rail", outline.bottom


def _check_stub(given, show, layout):
    name, depth = min(_entered(layout), key=lambda each: each[1])
    if given.tenon >= depth:
        raise Refusal(
            "impossible",
            f"A {show.text(given.tenon)} tenon would come out of the far edge of the {name}, "
            f"which is {show.text(depth)} wide.",
            f"Make it shorter than {show.text(depth)}, or pick through tenons.",
            field="tenon",
        )
    if layout.crossed and 2 * given.tenon > layout.middle_stile:
        raise Refusal(
            "impossible",
            f"Two {show.text(given.tenon)} tenons meet in a middle stile that is "
            f"{show.text(layout.middle_stile)} wide.",
            f"Make them {show.text(layout.middle_stile / 2)} at most, or the middle stile wider.",
            field="tenon",
        )
