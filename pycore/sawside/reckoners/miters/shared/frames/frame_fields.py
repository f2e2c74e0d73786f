"""The fields and answers that the questions about frames share."""

from sawside.reckoners.declaration import Answer, Fit
from sawside.reckoners.fields import choice, clearance, kerf, length

MEASURED = choice(
    "around",
    "Measured",
    {
        "panel": "The glass, panel or picture",
        "opening": "An opening to trim",
        "inside": "Inside of the frame",
        "outside": "Outside of the frame",
    },
    help="Glass, a panel or a picture sits in a rabbet. An opening shows a reveal.",
)
OFFSETS = (
    length(
        "rabbet",
        "Rabbet",
        help="From the inside edge to the back of the rabbet.",
        most="4 ft",
        shown_when=("around", ("panel",)),
    ),
    clearance(
        "clearance",
        "Clearance, each side",
        "clearance_in_frame",
        help="So it drops in and can move.",
        most="2 in",
        shown_when=("around", ("panel",)),
    ),
    length(
        "reveal",
        "Reveal",
        help="How much of the opening’s edge shows, each side.",
        default="3/16 in",
        metric="5 mm",
        most="6 in",
        shown_when=("around", ("opening",)),
    ),
)
STOCK = (
    kerf(help="To figure the stock. Measure a cut in scrap."),
    length(
        "stick", "Stick length", help="As sold.", default="8 ft", metric="2400 mm", least="6 in"
    ),
)
WIDTH = {"least": "1/8 in", "most": "2 ft"}
"""Of the stock, across its face."""
FIRST_ANSWERS = (
    Answer("long_sides", "Long points", "lengths", must="case"),
    Answer("short_sides", "Short points", "lengths", must="case"),
    Answer("setting", "Miter angle", "angle", sets="turned"),
    Answer("between_faces", "Angle between edge and cut", "angle"),
)
LAST_ANSWERS = (
    Answer("inside", "Inside", "lengths", must="case"),
    Answer("outside", "Outside", "lengths", must="case"),
    Answer("rabbet_size", "Rabbet opening", "lengths", must="reach"),
    Answer("sticks", "To buy", "text"),
    Answer("total", "Stock used, with kerfs", "lengths", must="reach"),
)


def _room(given):
    """(field, room at both sides together) of what goes in the rabbet."""
    return ("clearance", 2 * given.clearance) if given.around == "panel" else None


FITS = (Fit("inside", _room, "more"),)
