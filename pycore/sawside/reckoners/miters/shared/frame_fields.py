"""The fields and answers that the questions about frames share."""

from sawside.reckoners.declaration import Answer, Fit, choice, clearance, kerf, length

MEASURED = choice(
    "around",
    "Measured is",
    {
        "panel": "What goes in the rabbet",
        "opening": "An opening to trim",
        "inside": "Inside of the frame",
        "outside": "Outside of the frame",
    },
    help="A mirror, panel or picture goes in a rabbet; an opening shows a reveal around it.",
)
OFFSETS = (
    length(
        "rabbet",
        "Rabbet",
        help="From the inside edge of the stock to the back of the rabbet.",
        most="4 ft",
        shown_when=("around", ("panel",)),
    ),
    clearance(
        "clearance",
        "Clearance",
        "clearance_in_frame",
        help="Left free at each side, for the thing to move and to go in easily.",
        most="2 in",
        shown_when=("around", ("panel",)),
    ),
    length(
        "reveal",
        "Reveal",
        help="What stays in sight of the opening's edge, at each side.",
        default="3/16 in",
        metric="5 mm",
        most="6 in",
        shown_when=("around", ("opening",)),
    ),
)
STOCK = (
    kerf(help="For the stock to buy: measure one in scrap."),
    length(
        "stick",
        "Stick length",
        help="As it is sold.",
        default="8 ft",
        metric="2400 mm",
        least="6 in",
    ),
)
WIDTH = {"least": "1/8 in", "most": "2 ft"}
"""Of the stock, across its face."""
FIRST_ANSWERS = (
    Answer("long_sides", "Long sides", "lengths", must="case"),
    Answer("short_sides", "Short sides", "lengths", must="case"),
    Answer("setting", "Saw setting, from square", "angle", sets="turned"),
    Answer("between_faces", "Angle between edge and cut", "angle"),
)
LAST_ANSWERS = (
    Answer("inside", "Inside", "lengths", must="case"),
    Answer("outside", "Outside", "lengths", must="case"),
    Answer("rabbet_size", "Between the backs of the rabbets", "lengths", must="reach"),
    Answer("sticks", "To buy", "text"),
    Answer("total", "Stock used, with the cuts", "lengths", must="reach"),
)


def _room(given):
    """(field, room at both sides together) of what goes in the rabbet."""
    return ("clearance", 2 * given.clearance) if given.around == "panel" else None


FITS = (Fit("inside", _room, "more"),)
