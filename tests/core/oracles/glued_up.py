"""A panel glued up from what was told: each piece jointed, glued, ripped, squeezed.

Shares no code with the question.
"""

from fractions import Fraction


def put_together(parts, *, joint):
    """(length, width, thickness) of the panel that these parts make: each (length, width,
    thickness, how many), `joint` taken off each of its two edges."""
    pieces = [
        (length, width, thick) for length, width, thick, number in parts for _ in range(number)
    ]
    length = min(each[0] for each in pieces)
    thick = min(each[2] for each in pieces)
    width = Fraction(0)
    for _, wide, _ in pieces:
        width += wide - joint - joint
    return length, width, thick


def fewest(widths, needed):
    """(how many boards are enough, the least width of so many that are), tried one subset after the
    other; None where all are too narrow."""
    best = None
    for chosen in range(1, 2 ** len(widths)):
        picked = [width for place, width in enumerate(widths) if chosen >> place & 1]
        if sum(picked) >= needed and (best is None or (len(picked), sum(picked)) < best):
            best = len(picked), sum(picked)
    return best


def squeezed(length, outer, end, number, parts=200):
    """Whether every place of the first glue line between the outermost clamps is in the 45 degree
    spread of one: as far along from it, at most, as the outer strip is wide."""
    spread = float(outer)
    places = [
        float(end) + clamp * (float(length) - 2 * float(end)) / (number - 1)
        for clamp in range(number)
    ]
    for tick in range(parts + 1):
        at = places[0] + tick * (places[-1] - places[0]) / parts
        if min(abs(at - place) for place in places) > spread + 1e-9:
            return False
    return True
