"""The pieces of a mitered frame: a rectangle of any three widths, or a regular polygon.

Sides are named as one sees the frame from its face; the ends of a piece as one sees it with its
outer edge up. Measures are exact inches, settings degrees from square.
"""

from dataclasses import dataclass
from fractions import Fraction
from math import floor

from sawside.geometry.angles import tangent
from sawside.geometry.miter import along_the_edge, unequal_setting
from sawside.lengths.real import Exact, nearby, settle


@dataclass(frozen=True, slots=True)
class Side:
    """One kind of piece: how many, its inner and outer edge, its width, and both ends: their
    settings, and what each makes the outer edge longer."""

    key: str
    name: str
    count: int
    inside: Exact
    outside: Exact
    width: Fraction
    left: Exact
    right: Exact
    left_adds: Exact
    right_adds: Exact

    def taken(self, kerf):
        """How much of a stick one piece takes: its long side and a slanting cut of the saw.

        Cuts of neighbors that start at one place of the edge cross in the waste between them.
        """
        steepest = max(self.left_adds, self.right_adds, key=nearby)
        return self.outside + along_the_edge(kerf, steepest, self.width)


def rectangle(inside_width, inside_height, side, top, bottom):
    """The sides of a rectangle whose inside is known; both uprights are `side` wide.

    A joint runs from the inner corner to the outer one, so the setting of each piece has the
    tangent other width / own width. Both rails are one kind where they are of one width.
    """
    outside = inside_width + 2 * side
    high = inside_height + top + bottom
    at_top, at_bottom = (unequal_setting(side, rail, 90) for rail in (top, bottom))
    size = (inside_height, high, side)
    rails = [(top, "top", "Top"), (bottom, "bottom", "Bottom")]
    if top == bottom:
        rails = [(top, "rail", "Top and bottom")]
        both = Side("upright", "Left and right", 2, *size, at_top, at_top, top, top)
        uprights = [both]
    else:
        uprights = [
            Side("left", "Left", 1, *size, at_bottom, at_top, bottom, top),
            Side("right", "Right", 1, *size, at_top, at_bottom, top, bottom),
        ]
    made = []
    for width, key, name in rails:
        setting = unequal_setting(width, side, 90)
        ends = (setting, setting, side, side)
        made.append(Side(key, name, 2 // len(rails), inside_width, outside, width, *ends))
    return [*made, *uprights]


def regular(count, middle_to_side, width):
    """The one kind of side of a regular frame; `middle_to_side` is square from its middle to the
    inner edge of a side. Each cut is 180 / count from square."""
    setting = Fraction(180, count)
    slope = tangent(setting)
    inside, outside = (2 * reach * slope for reach in (middle_to_side, middle_to_side + width))
    adds = width * slope
    return [Side("side", "Each side", count, inside, outside, width, setting, setting, adds, adds)]


def sticks(kinds, stick):
    """How many sticks hold `kinds` of pieces, each (what one takes, how many of it).

    No piece may take more than a stick. The longest are placed first, each in the first stick with
    room. For up to four pieces, or any number of equal ones, no other way needs fewer sticks.
    """
    rooms = []
    for taken, count in sorted(kinds, key=lambda kind: nearby(kind[0]), reverse=True):
        for number, room in enumerate(rooms):
            placed = min(_times(room, taken), count)
            rooms[number] = room - taken * placed
            count -= placed
        each = _times(stick, taken)
        while count > 0:
            placed = min(each, count)
            rooms.append(stick - taken * placed)
            count -= placed
    return len(rooms)


def _times(room, taken):
    return settle(room / taken, floor)[0]
