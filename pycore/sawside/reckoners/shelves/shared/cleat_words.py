"""What is said about cleats: warnings of their screws and studs, cautions, working."""

from sawside.lengths.fine import fine_text

CAUTIONS = (
    "Drill lead holes as the screw's maker says, and drive no screw where wires or pipes may be.",
    "What a cleat carries depends on what its screws are in: fasten a back cleat to studs, and "
    "leave anything that could fall on someone to licensed practice.",
)


def screw_warnings(given, show, reach):
    """What is wrong with a screw that reaches `reach` inches into the side."""
    left = given.side - reach
    if left <= 0:
        yield (
            f"The screw comes through the side: it reaches {fine_text(reach, show)} into "
            f"{fine_text(given.side, show)}. Take a shorter one."
        )
    elif left < given.spare:
        yield f"Only {fine_text(left, show)} of the side is left before the screw's point."
    if 2 * reach < given.side:
        yield (
            "The screw holds in less than half of the side; a longer one holds better (common "
            "practice, no source)."
        )


def stud_cautions(given, answers):
    """What is said of the back cleat's screws and the studs, where there are such screws."""
    if "back_screws" not in answers:
        return
    if given.first_stud is None:
        yield (
            "The back cleat's screws are spread evenly here. Find the studs, and give the first "
            "one and their spacing to have the screws in them."
        )
    elif len(answers["back_screws"]) == 1:
        yield (
            "Only one stud is behind the back cleat: fasten its ends as well, to a stud, a side or "
            "blocking."
        )


def cleat_working(given, show, side_length, back, screw, places):
    """The side cleat's length, its screws, the longest screw and the reach, with their numbers."""
    cleat, side = show.number(given.thickness), show.number(given.side)
    takes = f" − {cleat}" if back else ""
    yield (
        f"Side cleat: {show.number(given.depth)} − {show.number(given.setback)}{takes}"
        f"{show.equals(show.rounded(side_length, 'go in'))}"
    )
    if len(places) > 1:
        apart = places[1] - places[0]
        yield (
            f"({show.number(side_length)} − 2 × {show.number(given.end)}) ÷ {len(places) - 1}"
            f"{show.equals(apart)} from screw to screw"
        )
    sink, spare = show.number(given.sink), show.number(given.spare)
    longest = given.thickness - given.sink + given.side - given.spare
    yield f"Longest screw: {cleat} − {sink} + {side} − {spare} = {show.number(longest)}"
    reach = screw - given.thickness + given.sink
    yield f"Reach: {show.number(screw)} − {cleat} + {sink} = {show.number(reach)} into the side"
