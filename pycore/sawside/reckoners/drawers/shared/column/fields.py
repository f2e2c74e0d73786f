"""What is asked about drawers in a column."""

from sawside.reckoners.fields import choice, clearance, count, length, lengths, number

MOST = 12
_RAILS = ("divided", ("rails",))
FIELDS = (
    length("height", "Opening height", help="All of it.", least="3 in", most="10 ft"),
    count("drawers", "Drawers", least="2", most=str(MOST)),
    choice(
        "layout",
        "Front heights",
        {
            "equal": "Equal",
            "step": "Graduated, constant step",
            "ratio": "Graduated, constant percent",
            "given": "As listed",
        },
    ),
    length(
        "step",
        "Step",
        help="How much lower each front is than the one below.",
        least="1/16 in",
        most="24 in",
        shown_when=("layout", ("step",)),
    ),
    number(
        "percent",
        "Percent of the one below",
        "%",
        least="30",
        most="99.9",
        shown_when=("layout", ("ratio",)),
    ),
    lengths(
        "heights",
        "Front heights, from the top",
        row_label="Front",
        most_rows=MOST - 1,
        least="1/2 in",
        help="All but the bottom one, which gets the rest.",
        shown_when=("layout", ("given",)),
    ),
    choice("divided", "Between drawers", {"gaps": "Only gaps", "rails": "Rails"}),
    length(
        "rail",
        "Rail height",
        default='3/4"',
        metric="18 mm",
        least="1/8 in",
        most="12 in",
        shown_when=_RAILS,
    ),
    choice("front", "Drawer fronts", {"inset": "Inset", "overlay": "Overlay"}),
    clearance(
        "gap",
        "Gap",
        "clearance_between_doors",
        help="Between fronts, and around inset ones.",
        most="2 in",
    ),
    length(
        "lap",
        "Overlay, top and bottom",
        default='3/8"',
        metric="10 mm",
        most="12 in",
        shown_when=("front", ("overlay",)),
    ),
    length(
        "less",
        "Box lower than its front by",
        help="Room above and below the box, and any overlay.",
        most="24 in",
        blank_means="1″, or 25 mm; with overlay 3/4″, or 18 mm, plus what laps the case.",
    ),
)
