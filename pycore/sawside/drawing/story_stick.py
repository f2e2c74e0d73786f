"""A story stick as data: every mark of a stick with its name, at true size in millimeters.

A mark stands at its exact place, not at the nearest graduation; its text says the graduation.
`sheets` lays a stick out on sheets of paper, to be printed at true size and joined.
"""

from math import ceil

from sawside.lengths.real import nearby
from sawside.lengths.units import INCHES_PER

_MM = INCHES_PER["mm"]
PAPERS = {"letter": (215.9, 279.4), "a4": (210.0, 297.0)}
"""Width and height of a sheet in millimeters (ANSI/ASME Y14.1 size A; ISO 216), from memory."""
_MARGIN = 15
_OVERLAP = 20
_BARS = ((100.0, "100 mm"), (101.6, "4 in"))


def _millimeters(length):
    return round(float(nearby(length) / _MM), 4)


def story_stick(show, length, marks, *, name, start, diameter=None):
    """The stick. `marks` are (name, exact inches from the start); with `diameter` they are holes.

    `length` is the stick's, `start` says what its lower end is held against.
    """
    return {
        "name": name,
        "start": start,
        "length_mm": _millimeters(length),
        "text": show.text(length),
        "hole_mm": None if diameter is None else _millimeters(diameter),
        "marks": [
            {"name": each, "at_mm": _millimeters(place), "text": show.text(place)}
            for each, place in sorted(marks, key=lambda mark: nearby(mark[1]))
        ],
    }


def side_stick(show, shelving):
    """The stick of a side: both edges of each shelf, and of the panels where they are known.

    It starts at the lower end of the side, or at the inside bottom where only the inside is known.
    """
    case = shelving.case
    origin = "lower_end" if case.whole else "inside_bottom"
    places = [
        (f"Shelf {number} {edge}", place)
        for number, (bottom, thickness) in enumerate(
            zip(shelving.bottoms, shelving.thicknesses, strict=True), 1
        )
        for edge, place in (("bottom", bottom), ("top", bottom + thickness))
    ]
    places += [("Inside bottom", 0), ("Inside top", case.inside)]
    if case.whole and case.lower_end < -case.bottom:
        places.append(("Bottom panel, underside", -case.bottom))
    marks = [(name, case.measured(place, origin)) for name, place in places]
    return story_stick(
        show,
        case.side if case.whole else case.inside,
        marks,
        name="Story stick of a side",
        start="Lower end of the side" if case.whole else "Inside bottom",
    )


def sheets(stick, paper):
    """The stick on sheets of one of `PAPERS`, all in millimeters, y up from each sheet's foot.

    Each sheet shows the stretch "from" to "to" of the stick at true size, starting "margin"
    above the foot of the sheet; it repeats the last "overlap" of the one before, so that the
    marks in both are laid over each other. Every sheet has the bars to check the printer by.
    """
    width, height = PAPERS[paper]
    stretch = height - 2 * _MARGIN
    step = stretch - _OVERLAP
    many = max(ceil((stick["length_mm"] - _OVERLAP) / step), 1)
    return [_sheet(stick, number, many, (width, height), step, stretch) for number in range(many)]


def _sheet(stick, number, many, size, step, stretch):
    start = number * step
    end = min(start + stretch, stick["length_mm"])
    ruler = range(ceil(start / 10), int(end // 10) + 1)
    joints = [start, start + _OVERLAP] if number else []
    joints += [start + step, start + stretch] if number + 1 < many else []
    return {
        "number": number + 1,
        "of": many,
        "width": size[0],
        "height": size[1],
        "margin": _MARGIN,
        "from": round(start, 4),
        "to": round(end, 4),
        "overlaps": [round(at - start + _MARGIN, 4) for at in joints],
        "marks": [
            mark | {"y": round(mark["at_mm"] - start + _MARGIN, 4)}
            for mark in stick["marks"]
            if start <= mark["at_mm"] <= end
        ],
        "ruler": [
            {"y": round(10 * each - start + _MARGIN, 4), "label": f"{each} cm"} for each in ruler
        ],
        "bars": [{"length": length, "text": text} for length, text in _BARS],
    }
