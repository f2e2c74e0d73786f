"""An opening measured in several spots, and what goes in. How crooked it is, is exaggerated."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, polygon, rectangle
from sawside.drawing.tape.ruler import WIDTH
from sawside.lengths.real import nearby

_WALL, _LEFT, _RIGHT = 14, 14, WIDTH - 14
_APART = 34
_CROOKED = 22
"""Pixels between the smallest and the largest reading: less would not be seen."""
_ROOM = 6


@lazy
def opening_in_spots(show, readings, told_fits):
    """Each reading from its side of the opening, in order, and what goes in below them."""
    ends = _ends([nearby(each) for each in readings])
    foot = _APART * len(readings)
    smallest = readings.index(min(readings))
    shapes = [
        rectangle(0, -_APART / 2, _WALL, foot, "hatch"),
        polygon([(WIDTH, -_APART / 2), *_wall(ends, foot), (WIDTH, foot)], "hatch"),
    ]
    for at, (end, reading) in enumerate(zip(ends, readings, strict=True)):
        role = "answer" if at == smallest else "given"
        y = at * _APART
        shapes.append(dimension((_LEFT, y), (end, y), 0, show.text(reading), role, "readings"))
    room = _ROOM if told_fits.exact < min(readings) else 0
    right, top = min(ends) - room, foot + 4
    shapes.append(rectangle(_LEFT + room, top, right, top + 18))
    across = ((right, top + 18), (_LEFT + room, top + 18))
    shapes.append(dimension(*across, 20, show.brief(told_fits), "answer"))
    crooked = len(set(readings)) > 1
    if crooked:
        shapes.append(label((WIDTH, top + 66), "wall exaggerated", "note", "end"))
    words = (
        f"An opening measured in {len(readings)} places, the smallest "
        f"{show.text(min(readings))}; what goes in is {show.brief(told_fits)}."
        + (" How crooked it is, is exaggerated." if crooked else "")
    )
    return drawing(words, (0, -_APART, WIDTH, top + (76 if crooked else 50)), shapes)


def _ends(readings):
    """Where each reading ends at the right wall."""
    largest = max(readings)
    spread = largest - min(readings)
    return [_RIGHT - ((largest - each) / spread * _CROOKED if spread else 0) for each in readings]


def _wall(ends, foot):
    """The face of the right wall, from its top to its foot."""
    places = [(end, at * _APART) for at, end in enumerate(ends)]
    return [(ends[0], -_APART / 2), *places, (ends[-1], foot)]
