"""What screws and nails have in common: how far from an end, an edge and each other they go."""

from fractions import Fraction

FROM_END = {True: 10, False: 15}
"""Diameters from an end along the grain, and from one to the next, by whether a pilot hole is
drilled. National Design Specification, commentary to 12.1.5 and 12.1.6; from memory."""
FROM_EDGE = Fraction(5, 2)
"""Diameters from an edge, across the grain. As above, from memory."""
HELD = 3
"""A fastener is at least so many times as long as the piece that it holds is thick: two thirds are
then in the other one (US Navy Rate Training Manual 14119, of nails)."""
DENSE = {"hard": "Hardwood", "soft": "Softwood or plywood", "board": "MDF or particleboard"}
"""What a fastener bites into, as far as its pilot hole asks."""
