"""The working of walls that bow, placed at the heights where they were measured."""

from sawside.reckoners.case.shared.space.walls import SIDES


def located_lines(show, walls):
    """Where each wall is at each reading, and what is clear of both."""
    number, straight = show.number, walls.straight
    if straight is None:
        for side, at in (("left", lambda each: -each.near), ("right", lambda each: each.far)):
            told = ", ".join(number(at(each)) for each in walls.places)
            yield f"Smallest of {told} to the {side} wall: {number(min(map(at, walls.places)))}"
    else:
        far = "right" if straight == "left" else "left"
        for place in walls.places:
            up, wide = number(place.height), number(place.far - place.near)
            sign, lean = _signed(show, place.near)
            yield f"{far.capitalize()} wall {up} up: {wide}{sign}{lean} = {number(place.far)}"
    yield _clear(show, walls)
    if walls.clear < walls.located:
        told = number(walls.located)
        yield f"Smallest of {told} and the other widths: {number(walls.smallest)}"


def _clear(show, walls):
    """From the furthest place of the one wall to the furthest of the other."""
    sign, furthest = _signed(show, -walls.furthest)
    nearest = show.number(walls.nearest)
    return f"Clear at every height: {nearest}{sign}{furthest} = {show.number(walls.located)}"


def located_strips(show, found):
    """The strip of each side at each reading."""
    walls, number = found.walls, show.number
    spare = (walls.located - found.width.mark) / 2
    yield (
        f"Strip where it’s narrowest: ({number(walls.located)} − {number(found.width.mark)}) ÷ 2 "
        f"= {number(spare)}"
    )
    for side in SIDES:
        for place, near, far in walls.gaps(found.width.mark):
            is_near = side == walls.near_side
            gap = near if is_near else far
            past = walls.furthest - place.near if is_near else place.far - walls.nearest
            told = show.equals(show.rounded(gap, "reach"))
            yield (
                f"{side.capitalize()} strip {number(place.height)} up: {number(past)} + "
                f"{number(spare)}{told}"
            )


def _signed(show, length):
    return (" − ", show.number(-length)) if length < 0 else (" + ", show.number(length))
