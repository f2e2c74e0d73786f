"""An opening measured in several spots, and what goes in."""

from itertools import pairwise

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, line, polygon
from sawside.lengths.real import nearby

_SCREEN = 300
"""Pixels of the largest reading on a narrow phone."""


@lazy
def opening_in_spots(show, readings, told_fits):
    """Each reading from its side of the opening, in order, and what goes in below them."""
    across, fits = nearby(max(readings)), nearby(told_fits.exact)
    pixel = across / _SCREEN
    apart = 34 * pixel
    foot = apart * len(readings)
    smallest = readings.index(min(readings))
    shapes = [line((0, -apart / 2), (0, foot), "edge")]
    ends = [nearby(each) for each in readings]
    edge = [(end, at * apart) for at, end in enumerate(ends)]
    shapes += [line(start, end, "edge") for start, end in pairwise(edge)]
    for at, (end, reading) in enumerate(zip(ends, readings, strict=True)):
        role = "answer" if at == smallest else "given"
        y = at * apart
        shapes.append(dimension((0, y), (end, y), 0, show.text(reading), role))
    top, bottom = foot, foot + apart / 2
    shapes.append(polygon([(0, top), (fits, top), (fits, bottom), (0, bottom)]))
    shapes.append(
        dimension((fits, bottom), (0, bottom), apart / 2, show.brief(told_fits), "answer")
    )
    words = (
        f"An opening measured in {len(readings)} places, the smallest "
        f"{show.text(min(readings))}; what goes in is {show.brief(told_fits)}."
    )
    return drawing(words, (0, -apart, across, bottom + apart), shapes)
