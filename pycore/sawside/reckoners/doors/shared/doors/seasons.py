"""Laps that are too small, and what a year does to doors of solid wood. Inches, exact."""

from sawside.lengths.fine import fine_text
from sawside.lengths.real import sign
from sawside.lengths.units import INCHES_PER
from sawside.lengths.words import listed
from sawside.reckoners.doors.shared.doors.fields import LAPPED

LEAST_LAP = 3 * INCHES_PER["mm"]
"""What a door laps the case by at its driest: near enough an eighth. Common practice, no source."""
_FAR = {"across": "right", "up": "top"}
_FIXES = {
    "overlay": ("A larger lap", "lap"),
    "lipped": ("A wider lip", "lip"),
    "full": ("A smaller reveal", "reveal"),
    "half": ("A frame and panel", "made"),
}


def driest_lap(given, doors):
    """(side, lap there) of one solid slab at its driest, less than 0 where it falls short; None of
    any other. It is hung with its full lap at the other side; a pair shrinks between its doors."""
    if given.fit not in LAPPED or not doors.grows:
        return None
    span = getattr(doors, doors.grows)
    if span.count > 1:
        return None
    return _FAR[doors.grows], -(span.end + span.spare) - doors.board.shrinkage(span.cut)


def short_lap(given, show, doors):
    """The cautions about a lap that is too small, or shrinks away; none where enough is left."""
    if given.fit in LAPPED:
        yield from _small_laps(show, doors)
    found = driest_lap(given, doors)
    if found is None or sign(found[1] - LEAST_LAP) >= 0:
        return
    side, lap = found
    if sign(lap) < 0:
        how = f"stops {fine_text(-lap, show)} short of covering the opening"
    else:
        how = f"laps the case by only {fine_text(lap, show)}"
    yield (
        f"At its driest, the door {how} at its {side} edge, hung with its full lap at the other. "
        "Make it lap more, or build a frame and panel."
    )


def _small_laps(show, doors):
    """What is said of laps that are asked for, one of the least with all the sides that have it."""
    across, up = doors.across, doors.up
    laps = {"left": -across.start, "right": -across.end, "bottom": -up.start, "top": -up.end}
    least = min(laps.values())
    if least < LEAST_LAP:
        sides = [side for side, lap in laps.items() if lap == least]
        edges = "edge" if len(sides) == 1 else "edges"
        told = fine_text(least, show)
        yield f"The door laps the case by only {told} at its {listed(sides)} {edges}."


def lap_fixes(given, doors):
    """What mends such a lap, with the field to change."""
    found = driest_lap(given, doors)
    if found is None or sign(found[1] - LEAST_LAP) >= 0:
        return ()
    key = f"{found[0]}_lap"
    return (_FIXES[given.fit] if getattr(given, key) is None else ("A larger lap", key),)


def frame_swells(given, show, doors, frame):
    """The caution about inset frames that swell by half of the gaps or more, by the wood of their
    panels: across their stiles, or up their rails."""
    if given.made != "wood" or given.fit != "inset":
        return
    ways = (
        (doors.across, 2 * frame.stile, "stiles"),
        (doors.up, frame.top + frame.bottom, "rails"),
    )
    for span, wood, names in ways:
        more = doors.board.growth(span.count * wood)
        if sign(more) > 0 and sign(2 * more - span.gaps_asked) >= 0:
            yield (
                f"In the wettest season, the {names} swell {fine_text(more, show)} in "
                "total. The gaps don’t include that: leave more room, or trim the doors to fit "
                "in a damp season."
            )
            return
