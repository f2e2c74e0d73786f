"""A reading corrected by what is known of its tape: the hook adds, the scale multiplies.

What is true is a straight line over what the tape reads (`own_tape`): true = scale x reading +
hook. From a line of the tape instead of its hook, the hook takes no part.
"""

from sawside.drawing.tape.two_rulers import two_rulers
from sawside.errors import Refusal
from sawside.lengths.display import decimal_text
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.declaration import Reckoning
from sawside.settings.own_tape import OwnTape
from sawside.settings.tape_rows import fault

_PAIRS = (("block", "block_reads"), ("distance", "distance_reads"))
_FAR = 8 * INCHES_PER["ft"]
"""The stretch of a tape is told over 8 ft, about as long as casework gets."""


def true_reading(given, show):
    """True length, what the tape is off there and why, and where to aim for that length."""
    tape = _tape(given)
    start = given.start if given.since == "line" else None
    hook = tape.hook if start is None else 0
    marks = given.reading - (start or 0)
    true = tape.scale * marks + hook
    _check_true(given, start, marks, true, show)
    off = true - marks
    aim = (start or 0) + (marks - hook) / tape.scale
    return Reckoning(
        answers={
            "true": on_fine_marks(true, show),
            "off": on_fine_marks(abs(off), show),
            "way": _way(off),
            **({"aim": on_fine_marks(aim, show)} if aim > 0 else {}),
            "hook": _error(tape.hook, "Every reading from the hook", show),
            "scale": _error((tape.scale - 1) * _FAR, f"Over {show.text(_FAR)} of tape", show),
        },
        working=(*_found(tape, show), *_worked(tape, given, start, marks, (true, aim), show)),
        drawing=two_rulers(marks, true, show),
        main="true",
        verdict=_verdict(true, off, show),
    )


def _tape(given):
    tape = given.tape if given.which == "mine" else _told(given)
    if tape is None:
        raise Refusal("missing", "Tape is blank.", "Choose one, or compare it here.", field="tape")
    return tape


def _check_true(given, start, marks, true, show):
    """The reading is past its line, and something is left of it."""
    if marks <= 0:
        raise Refusal(
            "impossible",
            f"The reading isn’t past the line at {show.text(start)}.",
            "Enter the mark at the far end of the piece.",
            field="reading",
        )
    if true <= 0:
        raise Refusal(
            "impossible",
            f"The hook is off by more than the reading of {show.text(given.reading)}.",
            "Measure from a line on the tape, or check the hook’s error.",
            field="reading",
        )


def _verdict(true, off, show):
    length = fine_text(true, show)
    if not off:
        return f"Reads true: {length}"
    way = "short" if off > 0 else "long"
    return f"Really {length}, reads {fine_text(abs(off), show)} {way}"


def _told(given):
    """The tape that was told in the question itself."""
    if given.block is None and given.distance is None:
        blank = [pair for pair in _PAIRS if getattr(given, pair[1]) is not None]
        raise Refusal(
            "missing",
            "Nothing says how far off the tape is.",
            "Enter a reference block or a trusted distance, and what the tape reads on it.",
            field=(blank or _PAIRS)[0][0],
        )
    for pair in _PAIRS:
        for part, other in (pair, pair[::-1]):
            if getattr(given, part) is None and getattr(given, other) is not None:
                raise Refusal(
                    "missing",
                    "What is true and what the tape reads there belong together.",
                    "Fill in both, or clear both.",
                    field=part,
                )
    tape = OwnTape("This tape", None, *(getattr(given, part) for pair in _PAIRS for part in pair))
    if found := fault(tape):
        raise Refusal("range", found[1], "Check both numbers and their units.", field=found[0])
    return tape


def _way(off):
    if not off:
        return "The tape reads true here"
    return (
        "The tape reads short. The true length is longer"
        if off > 0
        else "The tape reads long. The true length is shorter"
    )


def _error(size, where, show):
    if not size:
        return f"{where}: nothing found"
    return f"{where}: {'add' if size > 0 else 'subtract'} {fine_text(abs(size), show)}"


def _found(tape, show):
    """How hook and scale were found from what was compared."""
    if tape.distance is not None:
        long, reads = show.number(tape.distance), show.number(tape.distance_reads)
        if tape.block is not None:
            long = f"({long} − {show.number(tape.block)})"
            reads = f"({reads} − {show.number(tape.block_reads)})"
        yield f"Scale: {long} ÷ {reads} = {decimal_text(tape.scale)}"
    if tape.block is not None:
        times = f"{decimal_text(tape.scale)} × " if tape.scale != 1 else ""
        yield (
            f"Hook: {show.number(tape.block)} − {times}{show.number(tape.block_reads)} = "
            f"{show.number(tape.hook)}"
        )


def _worked(tape, given, start, marks, found, show):
    true, aim = found
    if start is not None:
        reading = show.number(given.reading)
        yield f"From the line: {reading} − {show.number(start)} = {show.number(marks)}"
    scaled = f"{decimal_text(tape.scale)} × {show.number(marks)}"
    scaled = scaled if tape.scale != 1 else show.number(marks)
    hook = show.term(tape.hook) if start is None else ""
    yield f"True: {scaled}{hook}{show.equals(on_fine_marks(true, show))}"
    if aim > 0:
        yield _aimed(tape, start, marks, aim, show)


def _aimed(tape, start, marks, aim, show):
    """How the mark is found that lies at what the tape reads, from where it was measured."""
    long, since, wanted = show.number(marks), "the hook", show.number(marks)
    if start is not None:
        since = f"the line at {show.text(start)}"
    elif tape.hook:
        way = "−" if tape.hook > 0 else "+"
        wanted = f"{wanted} {way} {show.number(abs(tape.hook))}"
    if tape.scale != 1:
        wanted = wanted if start is not None or not tape.hook else f"({wanted})"
        wanted = f"{wanted} ÷ {decimal_text(tape.scale)}"
    if start is not None:
        wanted = f"{show.number(start)} + {wanted}"
    return f"To lay out {long} from {since}: {wanted}{show.equals(on_fine_marks(aim, show))}"
