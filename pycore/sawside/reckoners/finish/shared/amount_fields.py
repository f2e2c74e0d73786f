"""What is asked of how much finish it takes."""

from sawside.reckoners.fields import choice, count, length, number
from sawside.reckoners.finish.shared.faces import MEASURED, areas_field, faces_field
from sawside.reckoners.finish.shared.finishes import NAMES, PAINTS

POURED = {key: name for key, name in NAMES.items() if key != "wax"}
"""The finishes that are sold by volume."""
_US, _METRIC = (("measured", (way,)) for way in ("us", "metric"))
_BY_SIZE, _BY_AREA = (("parts_by", (way,)) for way in ("size", "area"))
_USUAL = "What’s usual for this finish."
_ONE = ("finish", tuple(key for key in POURED if key not in PAINTS))
"""Those that are one kind: paint is two, primer and paint."""
_MIXED = ("mix", ("volume", "weight"))
FIELDS = (
    faces_field(shown_when=_BY_SIZE),
    areas_field("us", shown_when=(_BY_AREA, _US)),
    areas_field("metric", shown_when=(_BY_AREA, _METRIC)),
    choice("finish", "Finish", POURED, default="wiping", in_short="{}"),
    number(
        "coverage_us",
        "Coverage",
        "ft²/gal",
        help="From the can.",
        least="20",
        most="2000",
        blank_means=_USUAL,
        shown_when=_US,
    ),
    number(
        "coverage_metric",
        "Coverage",
        "m²/L",
        help="From the can.",
        least="0.5",
        most="50",
        blank_means=_USUAL,
        shown_when=_METRIC,
    ),
    count(
        "coats",
        "Coats",
        least="1",
        most="12",
        blank_means="What’s usual. With paint, count the primer.",
    ),
    length(
        "thickness",
        "Edge thickness",
        least="1/64 in",
        most="6 in",
        blank_means="Edges aren’t counted.",
        shown_when=_BY_SIZE,
    ),
    number(
        "loss",
        "Loss",
        "%",
        help="Left in the brush and the can. Spraying takes more.",
        default="10",
        most="80",
    ),
    choice(
        "mix",
        "Second part",
        {"none": "None", "volume": "Mixed by volume", "weight": "Mixed by weight"},
        shown_when=_ONE,
    ),
    *(
        number(
            f"part_{name}",
            f"Part {name.upper()}",
            "parts",
            least="0.1",
            most="1000",
            shown_when=(_ONE, _MIXED),
            in_short=f"{{}} of {name.upper()}",
        )
        for name in "ab"
    ),
    number(
        "density_us",
        "The mix weighs",
        "lb/gal",
        least="5",
        most="20",
        help="From its data sheet.",
        shown_when=(_ONE, ("mix", ("weight",)), _US),
    ),
    number(
        "density_metric",
        "The mix weighs",
        "kg/L",
        least="0.6",
        most="2.4",
        help="From its data sheet.",
        shown_when=(_ONE, ("mix", ("weight",)), _METRIC),
    ),
    choice("parts_by", "Parts by", {"size": "Size", "area": "Area"}),
    MEASURED,
)
BASIC = ("faces", "areas_us", "areas_metric", "finish", "coverage_us", "coverage_metric")
