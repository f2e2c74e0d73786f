"""How high the shelves of a case stand. Places are inches above the inside bottom, exact."""

from fractions import Fraction

_A_MARK = Fraction(1, 16)
"""A shelving whose inside height differs by more is laid out for another case."""


def shelf_levels(sizes, shelving=None):
    """([(underside, "fixed" or "adjustable")] of the shelves of a bay from the bottom up, which of
    them were laid out: their undersides).

    `shelving` lays out the fixed shelves, or all. Where it has another number of them or another
    height, the shelves are spread evenly, loose ones within the openings.
    """
    levels = _fitting(sizes, shelving)
    if levels and len(levels) == sizes.fixed:
        return sorted(_with_loose(sizes, levels)), levels
    spread = sorted(_with_loose(sizes, _even(sizes)))
    if levels and len(levels) == len(spread):
        kinds = [kind for _, kind in spread]
        return list(zip(levels, kinds, strict=True)), levels
    return spread, ()


def _fitting(sizes, shelving):
    """The undersides of a `Shelving` that is of this case, or ()."""
    if shelving is None or abs(shelving.case.inside - sizes.inside_height) > _A_MARK:
        return ()
    highest = sizes.inside_height - sizes.shelf_thickness
    return shelving.bottoms if all(0 <= low <= highest for low in shelving.bottoms) else ()


def _even(sizes):
    room, thick, many = sizes.inside_height, sizes.shelf_thickness, sizes.fixed
    opening = (room - many * thick) / (many + 1)
    return tuple(number * (opening + thick) - thick for number in range(1, many + 1))


def _with_loose(sizes, fixed):
    """The fixed shelves, and the loose ones shared out to the openings from the bottom up."""
    room, thick, many = sizes.inside_height, sizes.shelf_thickness, sizes.fixed + 1
    floors, ceilings = (0, *(level + thick for level in fixed)), (*fixed, room)
    yield from ((level, "fixed") for level in fixed)
    for number, (low, high) in enumerate(zip(floors, ceilings, strict=True)):
        loose = len(range(number, sizes.adjustable, many))
        free = (high - low - loose * thick) / (loose + 1)
        for each in range(1, loose + 1):
            yield low + each * (free + thick) - thick, "adjustable"
