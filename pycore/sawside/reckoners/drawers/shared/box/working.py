"""How a drawer box is worked out, line by line, with this case's numbers."""

from sawside.lengths.marks import FINEST, Rounded
from sawside.reckoners.drawers.shared.box.sizes import (
    added,
    front_gap,
    growth_of,
    into_front,
    lap_high,
)
from sawside.reckoners.wood.shared.moisture_fields import change_line


def _line(name, show, result, first, *terms):
    """ "Box width: 18 − 2 × 1/2 = 17"; terms are (times, length), minus where times is below 0."""
    told = [
        f"{'−' if times < 0 else '+'} {f'{abs(times)} × ' if abs(times) > 1 else ''}"
        f"{show.number(length)}"
        for times, length in terms
        if length and times
    ]
    return f"{name}: {' '.join((show.number(first), *told))}{show.equals(result)}"


def working(box, show):
    """Every line, in the order in which one works."""
    given = box.given
    if box.board is not None:
        yield from box.board.rates
    yield from _across(box, show)
    yield from _up(box, show)
    yield from _deep(box, show)
    yield from _bottom(box, show)
    if given.front == "inset":
        yield _line("Front width", show, box.face_width, given.width, (-2, front_gap(given)))
    else:
        yield _line("Front width", show, box.face_width, given.width, (2, given.lap))


def _across(box, show):
    given, room = box.given, box.room
    if given.runs == "under":
        side = (-1, given.side)
        yield _line("Clearance each side", show, _bare(room), given.inside_less / 2, side)
    add = added(given.front_joint, given, box.joint_depth)
    back_add = added(box.back_joint, given, box.joint_depth)
    clear = ((-2, room), (-2, given.side))
    if box.applied:
        span = box.front_length
        yield _line("Box front length", show, span, given.width, *clear, (1, add))
        mark, adds = span.mark, add
    else:
        span = box.back_length
        yield _line("Back length", show, span, given.width, *clear, (1, back_add))
        mark, adds = span.mark, back_add
    inside = box.inside_width
    yield _line("Inside width", show, inside, mark, (-1, adds))
    yield _line("Box width", show, show.rounded(box.width, "go in"), inside, (2, given.side))
    if box.applied and back_add != add:
        yield _line("Back length", show, box.back_length, inside, (1, back_add))


def _up(box, show):
    given = box.given
    grown = growth_of(box.board if box.grows else None)
    if given.box_height is None:
        yield from _by_season(
            "Box height", show, box.height, (given.height, (-1, box.above), (-1, box.below)), grown
        )
        if box.grows:
            yield change_line(show, box.board, box.height.mark, box.board.year.high, "It grows")
    if given.back == "low":
        yield _line(
            "Back height",
            show,
            box.back_height,
            box.height.mark,
            (-1, given.up),
            (-1, given.bottom),
        )
    if box.gap_above != box.above:
        taken = ((-1, box.below), (-1, box.height.mark))
        yield _line("Gap above now", show, _bare(box.gap_above), given.height, *taken)
    if given.front == "overlay":
        lap = (2, lap_high(given))
        yield _line("Front height", show, box.face_height, given.height, lap)
    else:
        free = (-1, box.above) if given.runs == "wood" else (-2, given.gap)
        yield from _by_season("Front height", show, box.face_height, (given.height, free), grown)


def _by_season(name, show, result, terms, grown):
    """A sum that is divided by the growth to the wettest, where there is any."""
    first, *others = terms
    if grown == 1:
        yield _line(name, show, result, first, *others)
        return
    room = first + sum(times * length for times, length in others)
    yield _line(f"{name} at its wettest", show, _bare(room), first, *others)
    yield f"{name}: {show.number(room)} ÷ {show.pure(grown)}{show.equals(result)}"


def _deep(box, show):
    given = box.given
    if given.runs == "wood":
        front = (-1, given.face if given.front == "inset" else 0)
        yield _line(
            "Behind the front", show, box.behind_front, given.depth, front, (-1, given.behind)
        )
    elif given.runs == "under" and given.depth_less:
        slide, less = box.slide, (-1, given.depth_less)
        yield _line("Behind the front", show, box.behind_front, slide, less)
    into = into_front(given)
    if into:
        yield _line(
            "Side length",
            show,
            box.side_length,
            box.behind_front.mark,
            (1 if into > 0 else -1, abs(into)),
        )
    front = box.end if box.applied else 0
    back_in = given.back_in if box.back_joint == "dado" else 0
    yield _line(
        "Inside depth",
        show,
        show.rounded(box.inside_depth, "be there"),
        box.side_length.mark - into,
        (-1, front),
        (-1, box.end),
        (-1, back_in),
    )


def _bottom(box, show):
    given = box.given
    groove, room = (2, given.groove), (-1, given.bottom_room)
    yield _line("Bottom width", show, box.bottom_width, box.inside_width, groove, room)
    grown = growth_of(box.board if box.moves else None)
    ends = ((1, given.groove), (1, box.end)) if given.back == "low" else (groove, room)
    yield from _by_season("Bottom depth", show, box.bottom_depth, (box.inside_depth, *ends), grown)
    if box.moves:
        deep, low = box.bottom_depth.mark, box.board.year.low
        yield change_line(show, box.board, deep, low, "It shrinks")


def _bare(length):
    """A length that is told as it is: it is only on the way to another one."""
    return Rounded(length, length, FINEST["in"])
