"""What is asked of sanding."""

from sawside.reckoners.fields import choice, count, length, number
from sawside.reckoners.finish.shared.faces import MEASURED, faces_field
from sawside.reckoners.finish.shared.finishes import NAMES

_SHEETS = ("sheet", "veneer")
FIELDS = (
    choice(
        "surface",
        "Surface now",
        {
            "planed": "Machine planed or jointed",
            "sawn": "Sawn",
            "smooth": "Hand planed or scraped",
            "sheet": "Veneered sheet, sanded at the mill",
            "veneer": "Veneer of my own",
        },
        in_short="{}",
    ),
    choice("finish", "Finish", NAMES, default="wiping", in_short="{}"),
    choice("scale", "Sandpaper", {"P": "With a P (FEPA)", "CAMI": "No letter (CAMI)"}),
    count("first", "First grit", most="3000", blank_means="By the surface."),
    count("last", "Last grit", most="3000", blank_means="By the finish."),
    number(
        "step",
        "Largest step",
        "times",
        help="Grain to grain.",
        default="1.7",
        least="1.4",
        most="3",
    ),
    choice(
        "face",
        "Veneer face",
        {
            "by": "What’s usual",
            "thin": "Thin: 0.25 mm (1/100″)",
            "usual": "Better sheets: 0.4 mm (1/64″)",
            "raw": "Veneer as sold: 0.6 mm (1/42″)",
            "own": "My own",
        },
        shown_when=("surface", _SHEETS),
    ),
    length(
        "own_face",
        "Face thickness",
        least="0.1 mm",
        most="1/4 in",
        shown_when=(("surface", _SHEETS), ("face", ("own",))),
    ),
    number(
        "share",
        "Most of it to sand off",
        "%",
        default="30",
        least="5",
        most="80",
        shown_when=("surface", _SHEETS),
    ),
    faces_field(help="To count disks or sheets.", blank_means="Disks aren’t counted."),
    number(
        "covers_us",
        "One disk or sheet sands",
        "ft²",
        default="10",
        least="0.5",
        most="200",
        shown_when=("measured", ("us",)),
    ),
    number(
        "covers_metric",
        "One disk or sheet sands",
        "m²",
        default="1",
        least="0.05",
        most="20",
        shown_when=("measured", ("metric",)),
    ),
    MEASURED,
)
BASIC = ("surface", "finish", "scale")
