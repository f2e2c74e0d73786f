"""Where the members and openings of a face frame are, and what its joints add. Inches, exact.

Places are from the lower left corner of the frame's outside, to the right and up.
"""

from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import pairwise

from sawside.reckoners.case.shared.frame.openings import openings_across, openings_down
from sawside.reckoners.case.shared.frame.outline import Outline, outline_of


@dataclass(frozen=True, slots=True)
class Member:
    """A stile or rail from shoulder to shoulder, and what its joint adds at each end: at the
    left and right of a rail, at the foot and head of a stile. `bay` is that of a rail in one."""

    name: str
    left: Fraction
    low: Fraction
    right: Fraction
    high: Fraction
    upright: bool = False
    bay: int | None = None
    adds: tuple[Fraction, Fraction] = (Fraction(0), Fraction(0))

    @property
    def shoulder(self):
        """From shoulder to shoulder."""
        return self.high - self.low if self.upright else self.right - self.left

    @property
    def length(self):
        """As it is cut."""
        return self.shoulder + sum(self.adds)

    @property
    def width(self):
        """Across its face."""
        return self.right - self.left if self.upright else self.high - self.low


@dataclass(frozen=True, slots=True)
class Layout:
    """A frame laid out: its columns as (left, right) from the left, the openings of each as (low,
    high) from the top, and all its members. `middle_stile` and `middle_rail` are the widths of
    those."""

    outline: Outline
    columns: list[tuple[Fraction, Fraction]]
    stacks: list[list[tuple[Fraction, Fraction]]]
    middle_stile: Fraction
    middle_rail: Fraction
    members: tuple[Member, ...]

    @property
    def widths(self):
        """The widths of the openings, from the left."""
        return [right - left for left, right in self.columns]

    @property
    def heights(self):
        """The heights of the openings of each column, from the top."""
        return [[high - low for low, high in stack] for stack in self.stacks]

    @property
    def alike(self):
        """Whether all columns have the same openings."""
        return all(stack == self.stacks[0] for stack in self.stacks)

    @property
    def in_bays(self):
        """The rails that go into a middle stile."""
        return [each for each in self.members if each.bay is not None]

    @property
    def crossed(self):
        """Whether rails are on both sides of a middle stile at one height."""
        return any("met" in self.ends_of(each) for each in self.in_bays)

    def ends_of(self, rail):
        """What the left and the right end of a rail go into: an "outer" stile, a "middle" one, or
        one where the rail is "met": another is across from it at any of its height."""
        if rail.bay is None:
            return "outer", "outer"
        return tuple(
            "outer" if beside in (0, len(self.columns) + 1) else self._into(rail, beside)
            for beside in (rail.bay - 1, rail.bay + 1)
        )

    def _into(self, rail, beside):
        across = (each for each in self.in_bays if each.bay == beside)
        met = any(each.low < rail.high and rail.low < each.high for each in across)
        return "met" if met else "middle"

    def rails_on(self, stile):
        """The rails whose shoulders are at the left edge of a stile, and at its right edge, from
        the lowest up."""
        rails = sorted((each for each in self.members if not each.upright), key=lambda it: it.low)
        return (
            [each for each in rails if each.right == stile.left],
            [each for each in rails if each.left == stile.right],
        )

    def is_between(self, member):
        """Whether this is a middle stile between the top and the bottom rail."""
        return member.name == "Middle stile" and member.high < self.outline.height


def layout_of(given, show):
    """The `Layout` of a form; "impossible" where an opening closes up."""
    outline = outline_of(given, show)
    stile = given.stile if given.middle_stile is None else given.middle_stile
    rail = given.stile if given.middle_rail is None else given.middle_rail
    columns, left = [], outline.left
    for width in openings_across(given, show, outline, stile):
        columns.append((left, left + width))
        left += width + stile
    heights = openings_down(given, show, outline, rail, len(columns))
    stacks = [_stack(each, outline.height - outline.top, rail) for each in heights]
    through = given.middle_stiles_run == "through"
    members = (
        *_stiles(outline, columns, through),
        *_outer_rails(outline, columns, through),
        *_middle_rails(columns, stacks),
    )
    return Layout(outline, columns, stacks, stile, rail, members)


def _stack(heights, high, rail):
    """The openings of a column below `high` as (low, high), from the top."""
    stack = []
    for height in heights:
        stack.append((high - height, high))
        high -= height + rail
    return stack


def _stiles(outline, columns, through):
    """The end stiles and those between two columns."""
    high, right = outline.height, outline.width
    yield Member("Left stile", Fraction(0), Fraction(0), outline.left, high, upright=True)
    yield Member("Right stile", right - outline.right, Fraction(0), right, high, upright=True)
    low = outline.foot + (0 if through else outline.bottom)
    high -= 0 if through else outline.top
    for (_, left), (right, _) in pairwise(columns):
        yield Member("Middle stile", left, low, right, high, upright=True)


def _outer_rails(outline, columns, through):
    """The top rail and the bottom one, a piece in each bay where middle stiles run through."""
    split = through and len(columns) > 1
    bays = columns if split else [(columns[0][0], columns[-1][1])]
    head, foot = outline.height - outline.top, outline.foot
    for name, low, high in (
        ("Top rail", head, outline.height),
        ("Bottom rail", foot, foot + outline.bottom),
    ):
        for number, (left, right) in enumerate(bays, 1):
            yield Member(name, left, low, right, high, bay=number if split else None)


def _middle_rails(columns, stacks):
    for number, ((left, right), stack) in enumerate(zip(columns, stacks, strict=True), 1):
        bay = number if len(columns) > 1 else None
        for (high, _), (_, low) in pairwise(stack):
            yield Member("Middle rail", left, low, right, high, bay=bay)


def jointed(layout, adds):
    """The layout with what its joints add: `adds` is a function of it and a member."""
    members = tuple(replace(each, adds=adds(layout, each)) for each in layout.members)
    return replace(layout, members=members)
