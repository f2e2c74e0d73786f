"""The faces that are sanded or finished: rows of length, width and count, linked by name."""

from fractions import Fraction

from sawside.lengths.areas import SQUARE_INCHES_IN
from sawside.lengths.plain_numbers import number_text
from sawside.lengths.real import Real
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.fields import choice, count, length, number, rows

MOST_ROWS = 30
SIDES = {"one": 1, "two": 2}
AREA_UNITS = {"us": "ft²", "metric": "m²"}
"""The unit of areas by how they are measured."""


def faces_field(**more):
    """The rows of faces, under "faces"."""
    return rows(
        "faces",
        "Parts",
        (
            length("length", "Length", least="1/4 in"),
            length("width", "Width", least="1/4 in"),
            count("count", "How many", default="1", least="1", most="500"),
            _sides(),
        ),
        row_label="Part",
        most_rows=MOST_ROWS,
        **more,
    )


def areas_field(way, **more):
    """The rows of whole areas in the unit of `way`, under "areas_us" or "areas_metric"."""
    unit = AREA_UNITS[way]
    return rows(
        f"areas_{way}",
        "Areas",
        (
            number("area", "Area of one face", unit, least="0.001", most="100000", in_short="{}"),
            _sides(),
        ),
        row_label="Area",
        most_rows=MOST_ROWS,
        **more,
    )


def _sides():
    return choice("sides", "Faces", {"two": "Both", "one": "One"})


def exact(value, show):
    """A length as a fraction; one that is none is what the tape says of it."""
    return show.mark(value) if isinstance(value, Real) else Fraction(value)


def area_of(row, show):
    """The faces of a row in square inches, exact."""
    return exact(row.length, show) * exact(row.width, show) * row.count * SIDES[row.sides]


def rim_of(row, show):
    """The length of all edges of a row in inches, exact."""
    return 2 * (exact(row.length, show) + exact(row.width, show)) * row.count


def area_worked(parts, show, way, thick=None):
    """The lines of working that add up the faces of `parts`, and their edges where they are
    `thick`: in square inches or millimeters, then in the unit of areas."""
    millimeters = show.settings.display == "mm"
    each = INCHES_PER["mm"] ** 2 if millimeters else Fraction(1)

    def squared(area):
        return show.pure(area / each, decimals=millimeters)

    sums = " + ".join(
        f"{row.count * SIDES[row.sides]} × {show.number(row.length)} × {show.number(row.width)}"
        for row in parts
    )
    total = sum(area_of(row, show) for row in parts)
    told = squared(total)
    yield f"Faces: {sums} = {told}"
    if thick is not None:
        rim = sum(rim_of(row, show) for row in parts)
        edges = squared(rim * thick)
        yield f"Edges, around by thick: {show.number(rim)} × {show.number(thick)} = {edges}"
        told, total = f"({told} + {edges})", total + rim * thick
    size = SQUARE_INCHES_IN[unit := AREA_UNITS[way]]
    divided = f"{told} ÷ {number_text(size / each, 3)}"
    yield f"In {unit}: {divided} = {show.pure(total / size, decimals=True)}"


MEASURED = choice(
    "measured",
    "Measures",
    {"us": "Square feet, US cans", "metric": "Square meters, liters"},
    metric="metric",
)
