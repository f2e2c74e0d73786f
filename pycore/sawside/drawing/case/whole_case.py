"""The four drawings of a whole case: its front, its side, a section through one bay, its plan.

Each is in scale, and in a box as wide as the others', so that they come out about as large. Their
lengths are told as the answers of the questions tell them.
"""

from fractions import Fraction

from sawside.drawing.case.seen import FRONT, PLAN, SIDE, cut_through, seen_from
from sawside.drawing.case.view_sheet import ViewSheet

_CUT = Fraction(3, 10)
"""So far along its bay a case is cut: in its middle two doors meet, or a stile stands."""


def views_of(show, pieces, case, frames):
    """[(key, title, drawing)] of a `Placed` case; `pieces` are all that is `Seen` of it, `frames`
    the outsides of what stands in front of it."""
    makers = (
        ("front", "Front", _front),
        ("side", "Side", _side),
        ("section", "Section", _section),
        ("plan", "Plan", _plan),
    )
    drawn = [make(show, pieces, case, frames) for _, _, make in makers]
    wide = max(each["box"][2] - each["box"][0] for each in drawn)
    return [
        (key, title, each | {"box": _widened(each["box"], wide)})
        for (key, title, _), each in zip(makers, drawn, strict=True)
    ]


def _widened(box, wide):
    """A drawing's box as wide as that, with what is drawn in its middle."""
    left, top, right, bottom = box
    free = (wide - (right - left)) / 2
    return [round(left - free, 4), top, round(right + free, 4), bottom]


def _front(show, pieces, case, frames):
    sheet = ViewSheet(show, FRONT, [case.outside, *(each.box for each in pieces)])
    sheet.dimensions("below", [case.outside.across])
    sheet.dimensions("above", [frame.across for frame in frames[:1]])
    sheet.dimensions("left", [case.outside.upward])
    sheet.dimensions("right", case.openings)
    return sheet.drawn("The front of the case", seen_from(pieces, FRONT), case)


def _side(show, pieces, case, frames):
    sheet = ViewSheet(show, SIDE, [case.outside, *(each.box for each in pieces)])
    sheet.dimensions("below", [case.outside.inward])
    sheet.dimensions("left", [frame.upward for frame in frames[:1]])
    sheet.dimensions("right", [case.outside.upward])
    what = "The case from its right side, its front at the left"
    return sheet.drawn(what, seen_from(pieces, SIDE), case)


def _section(show, pieces, case, frames):
    left, right = case.bays[0]
    at = left + (right - left) * _CUT
    sheet = ViewSheet(show, SIDE, [case.outside, *(each.box for each in pieces)])
    sheet.dimensions("below", [case.inside.inward])
    sheet.dimensions("below", [case.outside.inward])
    sheet.dimensions("left", [case.outside.upward])
    sheet.dimensions("right", case.openings)
    what = "The case cut through its first bay from the left, its front at the left"
    return sheet.drawn(what, cut_through(pieces, SIDE, at), case)


def _plan(show, pieces, case, frames):
    at = _below_the_top(pieces, case)
    sheet = ViewSheet(show, PLAN, [case.outside, *(each.box for each in pieces)])
    sheet.dimensions("below", case.bays)
    sheet.dimensions("below", [case.outside.across])
    sheet.dimensions("left", [case.outside.inward])
    sheet.dimensions("right", [case.inside.inward])
    what = "The case cut level below its top, from above, its front below"
    return sheet.drawn(what, cut_through(pieces, PLAN, at), case)


def _below_the_top(pieces, case):
    """The middle of what is free between the highest shelf or rail and the one that closes the
    case above it: there all that stands is cut."""
    low, high = case.inside.upward
    level = [
        each.box
        for each in pieces
        if not (each.behind or each.covers)
        and each.box.right - each.box.left > each.box.high - each.box.low
    ]
    below = max([low, *(box.high for box in level if low < box.high < high)])
    above = min([high, *(box.low for box in level if below < box.low < high)])
    return (below + above) / 2
