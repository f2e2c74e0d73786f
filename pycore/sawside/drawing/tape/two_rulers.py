"""A tape against the truth: the same place on both, close enough to see the difference."""

from sawside.drawing.shapes import drawing, label, line
from sawside.drawing.tape.ruler import WIDTH, Ruler
from sawside.lengths.fine import fine_text
from sawside.lengths.real import nearby
from sawside.lengths.units import INCHES_PER

_LEAST_SEEN, _MOST_SEEN = 5 / 4, 2
"""Inches of each ruler: so many that the number of one is always in sight."""


def two_rulers(reads, true, show):
    """The drawing: above what the tape reads, below what is true, one line through both."""
    metric = show.settings.display == "mm"
    off = abs(nearby(true) - nearby(reads))
    seen = min(max(float(off) * 6, _LEAST_SEEN), _MOST_SEEN) if off else 1
    half = nearby(round(seen * 512) * INCHES_PER["in"]) / 1024
    above = Ruler(nearby(reads) - half, nearby(reads) + half, 0, WIDTH, metric=metric)
    below = Ruler(nearby(true) - half, nearby(true) + half, 0, WIDTH, metric=metric)
    x = WIDTH / 2
    shapes = [*above.shapes(0), *below.shapes(86)]
    shapes += [
        line((x, -14), (x, 118), "cut"),
        label((4, -14), "tape", "note", "start"),
        label((x + 8, -14), fine_text(reads, show), "name", "start"),
        label((4, 72), "true", "note", "start"),
        label((x + 8, 72), fine_text(true, show), "name", "start"),
    ]
    words = (
        f"Where the tape reads {fine_text(reads, show)}, the true length is "
        f"{fine_text(true, show)}."
    )
    return drawing(words, (0, -32, WIDTH, 140), shapes)
