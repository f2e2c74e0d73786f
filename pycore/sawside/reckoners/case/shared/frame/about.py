"""What is said of a stile or rail in its list: grain, its joints, and what meets it where."""

from sawside.lengths.words import listed

_BUTTED = {
    "screws": "Pocket holes in the back at both ends.",
    "dowels": "Dowels at both ends: see Dowel layout.",
}


def about_member(given, show, layout, member, count):
    """The sentences, in the order in which one needs them; `count` members are alike."""
    places = _on_a_stile if member.upright else _on_a_rail
    return (
        "Grain runs along the length.",
        *_joint(given, show, layout, member),
        *places(given, show, layout, member),
        *_mirrored(member, count),
    )


def _joint(given, show, layout, member):
    """The joint at its ends; a stile that runs past the rails has none there."""
    if member.upright and not layout.is_between(member):
        return
    if given.joint in _BUTTED:
        yield _BUTTED[given.joint]
        return
    start, end = (show.brief(each) for each in member.adds)
    if start == end:
        yield f"Tenon {start} long at both ends."
    elif member.upright:
        yield f"Tenon {start} long at the bottom end, {end} at the top end."
    elif member.bay is None:
        yield f"Tenon {start} long at the left end, {end} at the right end."
    else:  # those of two bays may be alike, turned end for end
        ends = layout.ends_of(member)
        outer = "outer" in ends
        where = "in the middle stile" if outer else "across from another rail"
        first = ends[0] == ("outer" if outer else "middle")
        longer, shorter = (start, end) if first else (end, start)
        yield f"Tenon {shorter} long at the end {where}, {longer} at the other."


def _mirrored(member, count):
    if member.name in ("Left stile", "Right stile") and count == 2:
        yield "Left and right are mirror images."


def _on_a_stile(given, show, layout, stile):
    """What meets each edge of it, from its bottom end up."""
    left, right = (
        [_met_by(layout, stile, rail, end) for rail in rails]
        for rails, end in zip(layout.rails_on(stile), (1, 0), strict=True)
    )
    if stile.name != "Middle stile":
        yield from _places(given, show, stile, "the inside edge", left or right)
    elif left == right:
        yield from _places(given, show, stile, "both edges", left)
    else:
        yield from _places(given, show, stile, "the left edge", left)
        yield from _places(given, show, stile, "the right edge", right)


def _met_by(layout, stile, rail, end):
    """A rail on a stile with its left (0) or right (1) end, as `_places` tells it."""
    met = layout.ends_of(rail)[end] == "met"
    return rail.name, rail.low - stile.low, rail.high - stile.low, met


def _on_a_rail(given, show, layout, rail):
    """The middle stiles on it, from its left end."""
    meeting = [
        (each.name, each.left - rail.left, each.right - rail.left, False)
        for each in layout.members
        if each.name == "Middle stile" and rail.left < each.left < rail.right
    ]
    edge = "the lower edge" if rail.name == "Top rail" else "the upper edge"
    yield from _places(given, show, rail, edge, meeting)


def _places(given, show, member, edge, meeting):
    """From where to where each one meets an edge, from the end of the piece as it is cut, with its
    tenon; and what is cut within that for it. Of those `meeting` it the last says whether a through
    tenon is met by another one."""
    if not meeting:
        return
    end = "bottom" if member.upright else "left"
    tenon = ", tenon included" if member.adds[0] else ""
    mixed = given.joint == "through" and len({met for *_, met in meeting}) > 1
    told = [
        f"{name.lower()} {' to '.join(show.brief(place + member.adds[0]) for place in places)}"
        f"{' (half way)' if mixed and met else ''}"
        for name, *places, met in meeting
    ]
    through = "half way through" if meeting[0][-1] else "right through"
    cut = {
        "screws": "",
        "dowels": " Dowel holes within each: see Dowel layout.",
        "tenon": f" A mortise within each, a hair over {show.brief(given.tenon or 0)} deep.",
        "through": " A mortise within each, "
        + ("right through unless it says half way." if mixed else f"{through}."),
    }[given.joint]
    yield f"On {edge}, from the {end} end{tenon}: {listed(told)}.{cut}"
