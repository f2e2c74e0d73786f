"""What stands where in a case: its frame before it, doors in its openings, moldings around it."""

from dataclasses import dataclass, field

from sawside.errors import Refusal, quoted
from sawside.geometry.placed import Placed, common
from sawside.reckoning.links import called

_SAID = {
    "taken": "{} is left out: {} is drawn in that opening.",
    "size": "{} is left out: it’s for another size than this case has there.",
}


@dataclass(frozen=True, slots=True)
class Standing:
    """Lines of a case in their order, the case first: (id, what was worked out, `Placed`) of each
    that stands in it; `frames` are those that stand before it, `left_out` says of each of the
    others (id, why, the id of the one that is there instead)."""

    lines: list[tuple[str, object, Placed]] = field(default_factory=list)
    frames: list[Placed] = field(default_factory=list)
    left_out: list[tuple[str, str, str]] = field(default_factory=list)


def stands(found):
    """Whether the parts of a line may have a place in a case."""
    return any(each is not None for each in (found.place, found.fills, found.wraps))


def opening_named(links, lines, identity):
    """((id of a line, key of an answer, its number), …) that a line takes the width and the height
    of its opening from; None where it takes either of them from elsewhere, or fills none."""
    fills = lines[identity].found.fills
    if fills is None:
        return None
    calls = links[identity].calls.values()
    named = []
    for key in fills.fields:
        found = (_answer(lines, call.target) for call in calls if call.field.key == key)
        named.append(next((each for each in found if each), None))
    return tuple(named) if all(named) else None


def _answer(lines, target):
    """(id, key of the answer, its number) of a name; None where it is no answer of a line."""
    if target is None or target.entry not in lines or not target.answer:
        return None
    worked = lines[target.entry]
    try:
        answer, number = called(worked.reckoner, worked.found, target.answer)
    except Refusal:
        return None
    return target.entry, answer.key, number


def standing(lines, shelving):
    """The `Standing` of (id, what was worked out, what its opening is called) of each line."""
    made = Standing()
    placed = {
        identity: worked.found.place(shelving)
        for identity, worked, _ in lines
        if worked.found.place is not None
    }
    case, *frames = placed.values()
    made.frames.extend(frames)
    taken = {}
    for identity, worked, named in lines:
        if identity in placed:
            made.lines.append((identity, worked, placed[identity]))
        elif worked.found.wraps is not None:
            _add(made, identity, worked, worked.found.wraps(case, tuple(frames)))
        elif named is not None:
            _fill(made, placed, taken, (identity, worked, named))
    return made


def _add(made, identity, worked, place):
    if place is None:
        made.left_out.append((identity, "size", ""))
    else:
        made.lines.append((identity, worked, place))


def _fill(made, placed, taken, line):
    """Put what fills an opening in the first one of its name that is free."""
    identity, worked, (across, upward) = line
    if across[0] not in placed or upward[0] not in placed:
        return
    wide, high = (placed[each[0]].spaces.get(each[1:], ()) for each in (across, upward))
    met = [common(one, other) for one in wide for other in high]
    sized = [box for box in met if box and _size(box) == worked.found.fills.size]
    free = [box for box in sized if box not in taken]
    if free:
        taken[free[0]] = identity
        _add(made, identity, worked, worked.found.fills.place(free[0]))
    elif sized:
        made.left_out.append((identity, "taken", taken[sized[0]]))
    else:
        _add(made, identity, worked, None)


def _size(box):
    return box.right - box.left, box.high - box.low


def left_out_told(left_out, names):
    """A sentence for each line that is not drawn."""
    return [
        _SAID[why].format(quoted(names[identity]), quoted(names[other]) if other else "")
        for identity, why, other in left_out
    ]
