"""What is cut for the doors: members, panels or slabs, as answers and as parts."""

from fractions import Fraction

from sawside.drawing.piece import Cut, mitered_piece
from sawside.drawing.square_piece import square_piece
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.words import listed
from sawside.reckoners.declaration import End, Part
from sawside.reckoners.doors.shared.doors.about import about_member, about_panel, about_slab

_SQUARE = End("square", "0°")
_MITERED = End("flat", "45°", Fraction(45))


def sizes_cut(given, frame):
    """(member, length, width) of each kind as it is cut: with what is trimmed off the door later,
    once at an outer edge, twice along a member that reaches both."""
    trim = given.trim or Fraction(0)
    for each in frame.members:
        reaches = each.key == "stile" or given.joint in ("miter", "lap")
        outer = each.key in ("stile", "rail", "top_rail", "bottom_rail")
        yield each, each.length + 2 * trim * reaches, each.width + trim * outer


def lengths_cut(given, frame, count, *, upright):
    """An answer of the kind "lengths": what stiles, or rails, of all doors are cut to."""
    groups = {}
    for member, long, _ in sizes_cut(given, frame):
        if member.upright == upright:
            groups.setdefault(long, []).append(member)
    return [(_named(members, count), long) for long, members in groups.items()]


def shoulders(frame, count):
    """The same from shoulder to shoulder, of what has a tongue or tenon."""
    groups = {}
    for each in frame.members:
        if each.adds:
            groups.setdefault(each.shoulder, []).append(each)
    return [(_named(members, count), long) for long, members in groups.items()]


def _named(members, count):
    name = listed([members[0].name, *(each.name.lower() for each in members[1:])])
    number = count * sum(each.count for each in members)
    return name if number == 1 else f"{name}, {number} pieces"


def slab_size(given, doors):
    """(width, height) that a slab is cut to, before its banding, with what is trimmed later."""
    more = 2 * ((given.trim or Fraction(0)) - (given.banding or Fraction(0)))
    return doors.across.cut + more, doors.up.cut + more


def parts_of(given, show, doors, frame, panel):
    """The parts of the cut list, for all doors together."""
    if frame is None:
        wide, high = (show.rounded(each, "go in") for each in slab_size(given, doors))
        sizes = (wide, high) if given.grain == "across" else (high, wide)
        about = about_slab(given, show)
        return (_part(show, "slab", "Slab", doors.count, sizes, given.thickness, about),)
    made = [
        _member(given, show, doors, member, long, width)
        for member, long, width in sizes_cut(given, frame)
    ]
    wide, high = panel.sizes
    sizes = (wide, high) if given.grain == "across" else (high, wide)
    name = "Glass" if given.made == "glass" else "Panel"
    count = doors.count * frame.panels
    about = about_panel(given, show)
    return (*made, _part(show, name.lower(), name, count, sizes, given.panel, about))


def _member(given, show, doors, member, long, width):
    sizes = tuple(show.rounded(each, "go in") for each in (long, width))
    count, about = doors.count * member.count, about_member(given, show, doors, member)
    if given.joint == "miter":
        return _mitered(given, show, member, count, sizes, about)
    return _part(show, member.key, member.name, count, sizes, given.thickness, about)


def _part(show, key, name, count, sizes, thick, about):
    long, width = sizes
    return Part(
        key=key,
        name=name,
        length=long,
        width=width,
        thickness=on_fine_marks(thick, show),
        count=count,
        left=_SQUARE,
        right=_SQUARE,
        drawing=square_piece(show.telling(width), name, long, width.exact),
        about=about,
    )


def _mitered(given, show, member, count, sizes, about):
    long, width = sizes
    short = show.rounded(long.exact - 2 * width.exact, "go in")
    cut = Cut(Fraction(45), width.exact)
    return Part(
        key=member.key,
        name=member.name,
        length=long,
        width=width,
        thickness=on_fine_marks(given.thickness, show),
        count=count,
        left=_MITERED,
        right=_MITERED,
        long_side=long,
        short_side=short,
        drawing=mitered_piece(show, width.exact, long, short, (cut, cut), given=None),
        about=about,
    )
