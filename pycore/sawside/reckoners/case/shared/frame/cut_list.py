"""What is cut for a face frame: its members that are alike, as answers and as parts."""

import re
from dataclasses import dataclass

from sawside.drawing.square_piece import square_piece
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.words import listed
from sawside.reckoners.case.shared.frame.about import about_member
from sawside.reckoners.case.shared.frame.layout import Member
from sawside.reckoners.declaration import End, Part

_SQUARE = End("square", "0°")
_ENDS = ("Left stile", "Right stile")


@dataclass(frozen=True, slots=True)
class Kind:
    """Members that are cut alike, under the name that the list has for them."""

    name: str
    all: tuple[Member, ...]

    @property
    def key(self):
        """That of its part."""
        return "_".join(re.findall(r"\w+", self.name.lower()))

    @property
    def count(self):
        """How many there are."""
        return len(self.all)

    @property
    def member(self):
        """One of them."""
        return self.all[0]


def kinds_of(layout):
    """Every `Kind` of a layout, stiles first; a name that several share says of which bays."""
    groups, ends_alike = {}, _ends_alike(layout)
    for each in layout.members:
        name = "Stile" if each.name in _ENDS and ends_alike else each.name
        meeting = _meeting(layout, each) if name == "Middle stile" else None
        alike = (name, each.length, each.shoulder, each.width, meeting, _tenons(layout, each))
        groups.setdefault(alike, []).append(each)
    by_name = {}
    for (name, *_), members in groups.items():
        by_name.setdefault(name, []).append(members)
    return [
        Kind(_named(layout, name, members, by_name[name]), tuple(members))
        for (name, *_), members in groups.items()
    ]


def _named(layout, name, members, namesakes):
    """The name of a kind, with what tells it from those that share the name."""
    if len(namesakes) == 1:
        return name
    bays = [bay for each in namesakes for bay in {member.bay for member in each}]
    apart = members[0].upright or len(set(bays)) == len(bays)
    return f"{name} ({(_bays if apart else _below)(layout, members)})"


def _tenons(layout, member):
    """The tenons of a rail that differ, and what they go into: turned end for end it's alike."""
    if member.upright or member.adds[0] == member.adds[1]:
        return ()
    return tuple(sorted(zip(member.adds, layout.ends_of(member), strict=True)))


def _ends_alike(layout):
    """Whether the end stiles are as wide and have their rails at the same heights."""
    left, right = (each for each in layout.members if each.name in _ENDS)
    return left.width == right.width and _meeting(layout, left)[1] == _meeting(layout, right)[0]


def _meeting(layout, stile):
    """What meets the left and the right edge of a stile, and how high."""
    return tuple(
        tuple((each.name, each.low, each.high) for each in rails)
        for rails in layout.rails_on(stile)
    )


def _bays(layout, members):
    """The bays that rails are in, or middle stiles are at the right of."""
    if members[0].upright:
        numbers = [
            number
            for number, (_, right) in enumerate(layout.columns, 1)
            if any(each.left == right for each in members)
        ]
        where = "right of "
    else:
        numbers, where = [each.bay for each in members], ""
    bays = [str(number) for number in dict.fromkeys(numbers)]
    return f"{where}{'bay' if len(bays) == 1 else 'bays'} {listed(bays)}"


def _below(layout, members):
    """The openings that rails are below, where others in their bays are cut otherwise."""
    by_bay = {}
    for each in members:
        lows = [low for low, _ in layout.stacks[each.bay - 1]]
        by_bay.setdefault(each.bay, []).append(str(lows.index(each.high) + 1))
    return "; ".join(
        f"bay {bay} below opening{'s' if len(numbers) > 1 else ''} {listed(numbers)}"
        for bay, numbers in by_bay.items()
    )


def lengths_cut(kinds, *, upright):
    """An answer of the kind "lengths": what stiles, or rails, are cut to."""
    return _by_length(
        (each, each.member.length) for each in kinds if each.member.upright == upright
    )


def shoulders(kinds):
    """The same from shoulder to shoulder, of what has a tenon."""
    return _by_length((each, each.member.shoulder) for each in kinds if any(each.member.adds))


def _by_length(lengths):
    """Each length once, under the names of all that have it, and how many those are."""
    groups = {}
    for kind, length in lengths:
        groups.setdefault(length, []).append(kind)
    return [(_name_of(kinds), length) for length, kinds in groups.items()]


def _name_of(kinds):
    names, count = [each.name for each in kinds], sum(each.count for each in kinds)
    name = listed([names[0], *(f"{each[0].lower()}{each[1:]}" for each in names[1:])])
    return name if count == 1 else f"{name}, {count} pieces"


def stock_by_width(kinds):
    """{width: length of all that is cut from it}, both in inches, without kerfs and waste."""
    totals = {}
    for each in kinds:
        width = each.member.width
        totals[width] = totals.get(width, 0) + each.count * each.member.length
    return totals


def parts_of(given, show, layout, kinds):
    """The parts of the cut list."""
    return tuple(_part(given, show, layout, each) for each in kinds)


def _part(given, show, layout, kind):
    member = kind.member
    long, width = (show.rounded(each, "go in") for each in (member.length, member.width))
    return Part(
        key=kind.key,
        name=kind.name,
        length=long,
        width=width,
        thickness=on_fine_marks(given.thickness, show),
        count=kind.count,
        left=_SQUARE,
        right=_SQUARE,
        drawing=square_piece(show.telling(width), kind.name, long, member.width),
        about=about_member(given, show, layout, member, kind.count),
    )
