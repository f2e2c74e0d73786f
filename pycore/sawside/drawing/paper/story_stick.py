"""A story stick as data: every mark of a stick with its name, at true size in millimeters.

A mark stands at its exact place, not at the nearest graduation; its text says the graduation, and
`dropped_text` by how much that misses the place.
`stick_on_paper` draws one on sheets of paper.
"""

from sawside.lengths.display import dropped_text
from sawside.lengths.real import nearby
from sawside.lengths.units import INCHES_PER

_MM = INCHES_PER["mm"]


def _millimeters(length):
    return round(float(nearby(length) / _MM), 4)


def story_stick(show, length, marks, *, name, start, diameter=None, setbacks=(), note=""):
    """The stick. `marks` are (name, exact inches from the start); with `diameter` they are holes.

    `length` is the stick's, `start` says what its lower end is held against. `setbacks` are the
    rows of such holes: (name, exact inches from its edge to the row); `note` says how to drill.
    """
    return {
        "name": name,
        "start": start,
        "note": note,
        "length_mm": _millimeters(length),
        "text": show.brief(length),
        "hole_mm": None if diameter is None else _millimeters(diameter),
        "setbacks": [
            {"name": row, "mm": _millimeters(setback), "text": show.brief(setback)}
            for row, setback in setbacks
        ],
        "marks": [
            {
                "name": mark,
                "at_mm": _millimeters(place),
                "text": show.text(place),
                "dropped_text": dropped_text(show.rounded(place), show.settings.display),
            }
            for mark, place in sorted(marks, key=lambda entry: nearby(entry[1]))
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
        places.append(("Bottom, underside", -case.bottom))
    marks = [(name, case.measured(place, origin)) for name, place in places]
    return story_stick(
        show,
        case.side if case.whole else case.inside,
        marks,
        name="Story stick, one side",
        start="Bottom end of the side" if case.whole else "Inside bottom",
    )
