"""What is said of a stile or rail in its list: grain, its joints, and what meets it where."""

from sawside.lengths.words import listed

_BUTTED = {
    "screws": "Pocket holes in the back at both ends.",
    "dowels": "Dowels at both ends: see Dowel layout.",
}


def about_member(given, show, layout, member):
    """The sentences, in the order in which one needs them."""
    meeting = _rails_on(layout, member) if member.upright else _stiles_on(layout, member)
    return (
        "Grain runs along the length.",
        *_joint(given, show, layout, member),
        *_places(show, member, meeting),
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
    else:  # those of the first and the last bay may be alike, turned end for end
        first = member.left == layout.columns[0][0]
        outer, middle = (start, end) if first else (end, start)
        yield f"Tenon {middle} long at the end in the middle stile, {outer} at the other."


def _rails_on(layout, stile):
    """(name, place) of what meets a stile, from its lower shoulder up."""
    for each in sorted(layout.members, key=lambda each: each.low):
        if each.name in ("Bottom rail", "Middle rail") and stile.low < each.low:
            yield each.name, each.low - stile.low


def _stiles_on(layout, rail):
    """The same of the middle stiles on a rail, from its left shoulder."""
    for each in layout.members:
        if each.name == "Middle stile" and rail.left < each.left < rail.right:
            yield each.name, each.left - rail.left


def _places(show, member, meeting):
    """From the end of the piece as it is cut, with its tenon."""
    found = {}
    for name, place in dict.fromkeys(meeting):
        found.setdefault(name, []).append(show.brief(place + member.adds[0]))
    end = "bottom" if member.upright else "left"
    tenon = ", tenon included" if member.adds[0] else ""
    for name, places in found.items():
        one = len(places) == 1
        edges = f"{name}: its {end} edge" if one else f"{name}s: their {end} edges"
        yield f"{edges} {listed(places)} from the {end} end{tenon}."
