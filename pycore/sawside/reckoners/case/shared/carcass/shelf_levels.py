"""How high the shelves of a case stand. Places are inches above the case bottom, exact."""

from fractions import Fraction

_A_MARK = Fraction(1, 16)
"""So much heights may differ that are those of one shelf, each rounded in its own question."""


def shelf_levels(sizes, shelving=None):
    """[(underside, "fixed" or "adjustable")] of the shelves of a bay from the bottom up.

    Fixed shelves are where the case has their joints. `shelving` says where the loose ones go, if
    it is of this case (`lays_out_all`); without it they are spread evenly in the openings.
    """
    if lays_out_all(sizes, shelving):
        levels = list(shelving.bottoms)
        for low in sizes.heights.lows:
            levels.remove(min(levels, key=lambda level: abs(level - low)))
        loose = levels
    else:
        loose = _spread(sizes)
    fixed = [(low, "fixed") for low in sizes.heights.lows]
    return sorted([*fixed, *((low, "adjustable") for low in loose)])


def lays_out_all(sizes, shelving):
    """Whether a `Shelving` has all shelves of this case, the fixed ones where they are."""
    many = sizes.fixed + sizes.adjustable
    return _is_of(sizes, shelving) and len(shelving.bottoms) == many


def lays_out_fixed(sizes, shelving):
    """Whether it has the fixed shelves of this case alone."""
    return _is_of(sizes, shelving) and len(shelving.bottoms) == sizes.fixed


def _is_of(sizes, shelving):
    """Whether it is as high as this case, and has a shelf where each fixed one is."""
    if shelving is None or abs(shelving.case.inside - sizes.inside_height) > _A_MARK:
        return False
    highest = sizes.inside_height - sizes.shelf_thickness
    return all(0 <= low <= highest for low in shelving.bottoms) and all(
        any(abs(level - low) <= _A_MARK for level in shelving.bottoms) for low in sizes.heights.lows
    )


def _spread(sizes):
    """The loose shelves, shared out to the openings from the bottom up."""
    thick, many = sizes.shelf_thickness, sizes.fixed + 1
    floors = (0, *(low + thick for low in sizes.heights.lows))
    for number, (low, opening) in enumerate(zip(floors, sizes.heights.openings, strict=True)):
        loose = len(range(number, sizes.adjustable, many))
        free = (opening - loose * thick) / (loose + 1)
        yield from (low + each * (free + thick) - thick for each in range(1, loose + 1))
