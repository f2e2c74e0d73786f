"""Of what a door is, to weigh it: its frame or slab and its panels, each with its material."""

from fractions import Fraction

from sawside.reckoners.shared.door_weight import Weighed, density_of

GLASS = Fraction("2.5") * Fraction("62.43")
"""Pounds per cubic foot: 2.5 times water, as soda-lime glass (EN 572-1, from memory)."""


def weighed(given, show, doors, frame, panel):
    """Each `Weighed` of a door: its slab, or its frame and panels, before grooves and rabbets."""
    number = show.number
    wide, high, thick = doors.across.cut, doors.up.cut, given.thickness
    face, deep = f"{number(wide)} × {number(high)}", number(thick)
    if frame is None:
        wood = given.sheet if given.made == "slab" else given.species
        yield Weighed("Slab", f"{face} × {deep}", wide * high * thick, density_of(wood))
        return
    many = f"{frame.panels} × " if frame.panels > 1 else ""
    across, up = frame.inside
    net = wide * high - frame.panels * across * up
    less = f"{face} − {many}{number(across)} × {number(up)}"
    wood = given.species if given.made == "wood" else given.frame_wood
    yield Weighed("Frame", f"({less}) × {deep}", net * thick, density_of(wood))
    sizes = [*(each.mark for each in panel.sizes), given.panel]
    cubic = frame.panels * sizes[0] * sizes[1] * sizes[2]
    name = "Glass" if given.made == "glass" else "Panel"
    yield Weighed(name, many + " × ".join(map(number, sizes)), cubic, _filling(given))


def _filling(given):
    """The density of what fills a frame."""
    if given.made == "glass":
        return GLASS
    return density_of(given.species if given.made == "wood" else given.sheet)
