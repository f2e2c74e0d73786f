"""A case built up from the floor piece by piece: an oracle that shares nothing with the core."""

from fractions import Fraction

THICK = Fraction(23, 32)


def built(openings, thicknesses, bottom, top, kick):
    """The height above the floor of every edge of the case, from a running sum."""
    edges = {"floor": Fraction(0), "under_bottom": kick, "inside_bottom": kick + bottom}
    place, shelves = kick + bottom, []
    for number, opening in enumerate(openings):
        place += opening
        if number < len(thicknesses):
            shelves.append((place, place + thicknesses[number]))
            place += thicknesses[number]
    return edges | {"inside_top": place, "overall": place + top, "shelves": shelves}


def measured(edges, shelf, edge, origin, foot, head):
    """Where the mark of a shelf stands on a tape that is held as `origin` says."""
    low, high = shelf
    place = {"bottom": low, "top": high, "center": (low + high) / 2}[edge]
    if origin == "upper_end":
        return {"over_top": edges["overall"], "under_top": edges["inside_top"]}[head] - place
    lower = {
        "floor": edges["floor"],
        "under_bottom": edges["under_bottom"],
        "over_bottom": edges["inside_bottom"],
    }
    start = {
        "floor": edges["floor"],
        "inside_bottom": edges["inside_bottom"],
        "lower_end": lower[foot],
    }
    return place - start[origin]
