"""A tape held at one of its lines instead of its hook: the line, and the tape that it is on."""

from sawside.reckoners.declaration import length, own_tape


def start_field(label, easier):
    """The line that the piece starts at; `easier` says what a rounder line makes easier."""
    return length(
        "start",
        label,
        help=f"The 1-inch line is usual; the 10-inch or 100 mm line is easier to {easier}.",
        default="1 in",
        metric="100 mm",
        most="10 ft",
    )


STRETCHED = own_tape("tape", "Tape", help="Its stretch is corrected; its hook takes no part.")


def stretch_of(given):
    """True inches in each inch of the tape."""
    return given.tape.scale if given.tape else 1
