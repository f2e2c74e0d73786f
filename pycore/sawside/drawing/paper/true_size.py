"""A strip with marks or holes, drawn at true size on as many sheets of paper as it takes.

The strip runs up the sheets. In a `Strip`, x is across from its edge or its row of holes, y is up
from its lower end, all in millimeters. Shapes of a sheet are millimeters from its upper left
corner, y down, to a ten-thousandth.
"""

from dataclasses import dataclass

from sawside.drawing.paper.sheet_head import HEAD, SIDE
from sawside.drawing.paper.sheets import MARGIN, MOST_SHEETS, stretches
from sawside.drawing.paper.strip_sheet import StripSheet
from sawside.errors import Refusal


@dataclass(frozen=True, slots=True)
class Strip:
    """What is drawn: from `left` to `right` across and from 0 to `length` up.

    `marks` are (name, text, y). A mark is a line from `mark_left` to `mark_right`; with a
    `radius` there is a hole around x = 0 as well. `edges` are the places of edges across, with
    their text, `ruler` is where the running ruler stands, `crosses` where joints have a cross.
    """

    title: str
    start: str
    end: str
    notes: tuple[str, ...]
    left: float
    right: float
    length: float
    marks: tuple[tuple[str, str, float], ...]
    mark_left: float
    mark_right: float
    label_at: float
    ruler: float
    crosses: tuple[float, float]
    edges: tuple[tuple[float, str], ...]
    radius: float | None = None


def true_size_sheets(strip, paper, unit):
    """The strip on sheets of a `Paper`, with a ruler in `unit` ("in" or "mm").

    Refuses with "impossible" when it takes more than `MOST_SHEETS`.
    """
    across = stretches(strip.left, strip.right, paper.width - 2 * MARGIN - SIDE)
    upward = stretches(0.0, strip.length, paper.height - 2 * MARGIN - HEAD)
    many = len(across) * len(upward)
    if many > MOST_SHEETS:
        raise Refusal(
            "impossible",
            f"This would take {many} sheets of paper. The most is {MOST_SHEETS}.",
            "Mark from the list instead.",
            field="paper",
        )
    places = [(column, row) for column in across for row in upward]
    return [
        StripSheet(strip, paper, column, row).sheet(number, many, unit)
        for number, (column, row) in enumerate(places, 1)
    ]
