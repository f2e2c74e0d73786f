"""How a nail is told: the working line by line, and the cautions."""

from sawside.reckoners.fasteners.shared.decimals import decimals
from sawside.reckoners.fasteners.shared.nail.driven import PILOT
from sawside.reckoners.fasteners.shared.two_pieces import INTO_A_WALL, little_left
from sawside.wood.caution import Caution
from sawside.wood.fastening import FROM_EDGE, FROM_END, HELD

_ALWAYS = (
    Caution(
        "Wear eye protection, and keep fingers away from where it could come out.",
        "Wear eye protection, and keep fingers away from where it could come out: nails follow the "
        "grain. Near an end, drill a pilot or blunt the point. A nail gun’s instructions come "
        "first.",
    ),
    INTO_A_WALL,
)


def nail_working(given, show, nail):
    """Every line: length, reach, pilot, distances."""
    number = show.number
    over, through, under = number(given.over), number(nail.through), number(given.under)
    yield f"Long enough: {HELD} × {over} = {number(nail.wanted)} or more"
    longest = number(nail.through + given.under - given.spare)
    yield f"Through the first piece: {over} − {number(given.sink)} = {through}"
    yield f"Longest: {through} + {under} − {number(given.spare)} = {longest}"
    yield f"Reach: {number(nail.length)} − {through} = {number(nail.reach)}"
    yield f"Left past the tip: {under} − {number(nail.reach)} = {number(nail.left)}"
    thick = decimals(show, nail.diameter)
    if nail.pilot is not None:
        share = PILOT[given.wood]
        most, bit = decimals(show, share * nail.diameter), decimals(show, nail.pilot)
        yield f"Pilot, at most: {show.pure(share)} × {thick} = {most}, next bit down {bit}"
    for drilled, words in ((True, "with a pilot"), (False, "without one")):
        end = decimals(show, FROM_END[drilled] * nail.diameter)
        yield f"From an end, {words}: {FROM_END[drilled]} × {thick} = {end}"
    edge = decimals(show, FROM_EDGE * nail.diameter)
    yield f"From an edge: {show.pure(FROM_EDGE)} × {thick} = {edge}"


def nail_cautions(given, show, nail):
    """Every caution of this nail, what holds badly first."""
    yield from little_left(given, show, nail)
    if nail.length < nail.wanted:
        yield (
            "It’s shorter than three times the first piece. Use more of them, at a slant to each "
            "other, with glue, or use screws (shop practice)."
        )
    if nail.pilot is not None and given.wood == "hard":
        yield (
            "Drill the pilot in hardwood, or the nail bends or splits it (shop practice). In a "
            "light one, such as poplar, drill as for softwood."
        )
    yield from _ALWAYS
