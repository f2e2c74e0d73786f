"""What fits where an opening was measured in several places: the smallest reading counts."""

from fractions import Fraction
from itertools import pairwise

from sawside.drawing.shapes import dimension, drawing, line, polygon
from sawside.errors import Refusal
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.real import nearby
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, length, lengths

_SCREEN = 300
"""Pixels of the largest reading on a narrow phone."""


def compute(given, show):
    """The smallest reading less the room, and how far the readings lie apart."""
    smallest, largest = min(given.readings), max(given.readings)
    room = given.room or Fraction(0)
    fits = smallest - room
    if fits <= 0:
        raise Refusal(
            "impossible",
            f"A clearance of {show.text(room)} leaves nothing of {show.text(smallest)}.",
            "Use less clearance.",
            field="room",
        )
    told_fits = _fits_told(given, show, fits)
    mean = sum(given.readings, Fraction(0)) / len(given.readings)
    told = ", ".join(show.number(each) for each in given.readings)
    working = [f"Smallest of {told}: {show.number(smallest)}"]
    if room:
        working.append(f"{show.number(smallest)} − {show.number(room)}{show.equals(told_fits)}")
    working.append(
        f"Apart: {show.number(largest)} − {show.number(smallest)}{show.equals(largest - smallest)}"
    )
    return Reckoning(
        answers={
            "fits": told_fits,
            "smallest": smallest,
            "largest": largest,
            "apart": largest - smallest,
            "mean": mean,
        },
        working=tuple(working),
        drawing=_drawing(show, given.readings, told_fits),
        cautions=(
            "It may be tighter between the spots you measured. Run a stick of that length "
            "through the whole opening.",
        ),
    )


def _fits_told(given, show, fits):
    """What goes in on a mark that is not longer, and no coarser than the readings are."""
    grid = show.settings.grid
    coarse = all((each / grid.step).denominator == 1 for each in given.readings)
    return show.rounded(fits, "go in") if coarse else on_fine_marks(fits, show, "go in")


def _drawing(show, readings, told_fits):
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


RECKONER = Reckoner(
    key="smallest_of",
    title="Smallest of several readings",
    asks="What fits an opening I measured in several spots?",
    words=(
        "narrowest, smallest, shortest, lowest, several measurements, alcove, niche, opening, "
        "width, height, crooked, crooked wall, out of true, minimum, average"
    ),
    order=115,
    job="tape",
    picture={
        "wood": "M3 4h5v32H3zM37 4v32h-6q-4-16 1-32z",
        "ink": "M8 8h23M8 32h22",
        "chalk": "M8 20h21m-3-3l3 3-3 3M11 17l-3 3 3 3",
    },
    fields=(
        lengths(
            "readings",
            "Readings",
            row_label="Reading",
            most_rows=20,
            least="1/64 in",
            help="One width or height in several spots, such as floor, middle and top.",
        ),
        length(
            "room",
            "Total clearance",
            help="Both sides together, so it slides in.",
            blank_means="The same as the smallest reading.",
        ),
    ),
    answers=(
        Answer("fits", "What goes in", must="go in"),
        Answer("smallest", "Smallest", must="agree"),
        Answer("largest", "Largest", must="agree"),
        Answer("apart", "Difference", must="agree"),
        Answer("mean", "Average", must="agree"),
    ),
    source="Arithmetic. Going by the smallest reading is shop practice.",
    compute=compute,
    example={"readings": ["37 9/16", "37 1/2", "37 5/8"], "room": "1/4"},
)
