"""What is told of a case that is checked for plumb: answers, verdict, working, cautions."""

from sawside.drawing.lazy import force
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.real import sign
from sawside.reckoners.declaration import Answer
from sawside.reckoners.installing.shared.cautions import TIP_OVER
from sawside.reckoners.installing.shared.plumb.leaning import offset_of
from sawside.reckoners.tape.shared.racked import MEASURE_AGAIN
from sawside.wood.caution import Caution

ANSWERS = (
    Answer("shim", "Shim, side to side", must="agree"),
    Answer("out", "Out of plumb, side to side", must="agree"),
    Answer("racked", "Racked", must="agree"),
    Answer("push", "First", "text"),
    Answer("front_out", "Out of plumb, front to back", must="agree"),
    Answer("front_shim", "Shim, front to back", must="agree"),
    Answer("front_low", "That goes under", "text"),
)

_LOOSE = Caution(
    "Back out its wall screws first.",
    "Back out its wall screws before you shim, with a helper holding it.",
)
_PUSH = (
    "Push a racked case a little at a time, with its wall screws out. Then fasten the back, or "
    "brace a corner, so it stays square."
)
_NOT_RACKED = Caution(
    "Check that it isn’t racked.",
    "Check that it isn’t racked: measure the diagonals, or lay a level on top.",
)
_FORWARD = "It leans forward: it tips over sooner, and doors swing open. Shim its front first."


def passes(given, lean):
    """Whether a lean, and what it's made of, is within what is allowed."""
    return max(abs(lean.much), abs(lean.racking), abs(lean.tilt)) <= given.tolerance


def acts_of(given, lean):
    """What brings it upright, in order, of "push" and "shim"; nothing where it passes."""
    if passes(given, lean):
        return ()
    parts = {"push": abs(lean.racking), "shim": abs(lean.tilt)}
    most = max(parts.values())
    return tuple(act for act, part in parts.items() if part > given.tolerance or part == most)


def answers_of(given, show, sideways, racking, deep):
    """The answers that this case has, by their keys."""
    answers = {"out": on_fine_marks(abs(sideways.much), show)}
    if racking and racking.verdict == MEASURE_AGAIN:
        return answers | {"push": racking.answers["push"]}
    if "shim" in acts_of(given, sideways):
        answers["shim"] = on_fine_marks(sideways.shim, show)
    if racking and sideways.racking:
        answers |= {"racked": racking.answers["offset"], "push": racking.answers["push"]}
    elif sideways.racking:
        answers["racked"] = on_fine_marks(abs(sideways.racking), show)
    if deep is not None and deep.much:
        answers["front_out"] = on_fine_marks(abs(deep.much), show)
        if deep.shim and not passes(given, deep):
            answers["front_shim"] = on_fine_marks(deep.shim, show)
            answers["front_low"] = f"The {deep.low}"
    return answers


def main_of(given, sideways, racking, deep):
    """The key of the answer that leads: a shim that is needed, or how far it's out."""
    if racking and racking.verdict == MEASURE_AGAIN:
        return "out"
    acts = acts_of(given, sideways)
    if acts:
        return "shim" if "shim" in acts else "racked"
    if deep is not None and not passes(given, deep):
        return "front_shim" if deep.shim else "front_out"
    return "out"


def verdict_of(given, sideways, racking, deep):
    """Passed, or which way it leans and what to do."""
    if racking and racking.verdict == MEASURE_AGAIN:
        return f"{MEASURE_AGAIN}; out of plumb"
    acts = acts_of(given, sideways)
    if acts:
        return _sideways(sideways, acts)
    if deep is not None and not passes(given, deep):
        way = {"front": "forward", "back": "back"}[deep.way]
        return f"Leans {way}: shim the {deep.low}" if deep.shim else f"Leans {way}"
    return "Passes: out of plumb" if sideways.much else "Plumb"


def _sideways(lean, acts):
    said = []
    if "push" in acts:
        said.append(f"push its top {'left' if lean.racking > 0 else 'right'}")
    if "shim" in acts:
        said.append(f"shim the {lean.low} end")
    return f"{f'Leans {lean.way}' if lean.way else 'Racked'}: {', then '.join(said)}"


def working_of(given, show, sideways, racking, deep):
    """Line by line: the lean, what of it is racking, the shim; each way."""
    number = show.number
    yield from _lean("Side to side", show, (given.top, given.bottom), sideways)
    if racking:
        yield force(racking.working)[0]
        yield (
            f"Racking between your readings: {_signed(show, offset_of(given))} × "
            f"{number(given.apart)} ÷ {number(given.height)} = {_signed(show, sideways.racking)}"
        )
        less = show.term(-sideways.racking)
        if less:
            much = _signed(show, sideways.much)
            yield f"The floor’s part: {much}{less} = {_signed(show, sideways.tilt)}"
    elif given.also == "level":
        minus = "−" if sideways.tilt < 0 else ""
        yield (
            f"The floor’s part: {minus}{number(given.level_gap)} × {number(given.apart)} ÷ "
            f"{number(given.level_long)} = {_signed(show, sideways.tilt)}"
        )
        less = show.term(-sideways.tilt)
        if less:
            much = _signed(show, sideways.much)
            yield f"Racking: {much}{less} = {_signed(show, sideways.racking)}"
    yield from _shim("side to side", show, sideways)
    if deep is not None:
        yield from _lean("Front to back", show, (given.front_top, given.front_bottom), deep)
        yield from _shim("front to back", show, deep)


def _lean(name, show, readings, lean):
    top, bottom = (show.number(each) for each in readings)
    yield f"{name}: {top} − {bottom} = {_signed(show, lean.much)}"


def _shim(name, show, lean):
    if lean.shim:
        yield (
            f"Shim, {name}: {show.number(abs(lean.tilt))} × {show.number(lean.span)} ÷ "
            f"{show.number(lean.apart)} = {show.number(lean.shim)}"
        )


def _signed(show, length):
    return f"−{show.number(-length)}" if sign(length) < 0 else show.number(length)


def cautions_of(given, sideways, racking, deep):
    """Those of this case first, then the usual ones."""
    if deep is not None and deep.way == "front" and not passes(given, deep):
        yield _FORWARD
    if racking and racking.verdict == MEASURE_AGAIN:
        yield from racking.cautions
    elif "push" in acts_of(given, sideways):
        yield _PUSH
    if given.also == "none":
        yield _NOT_RACKED
    if acts_of(given, sideways) or not (deep is None or passes(given, deep)):
        yield _LOOSE
    yield TIP_OVER
