"""A reading corrected by what is known of its tape: the hook adds, the scale multiplies.

What is true is a straight line over what the tape reads (`own_tape`): true = scale x reading +
hook. From a line of the tape instead of its hook, the hook takes no part.
"""

from sawside.drawing.tape.two_rulers import two_rulers
from sawside.errors import Refusal
from sawside.lengths.display import decimal_text
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, choice, length, own_tape
from sawside.reckoners.tape.shared.burned_line import line_field
from sawside.settings.own_tape import OwnTape
from sawside.settings.tape_rows import PARTS, fault

_PAIRS = (("block", "block_reads"), ("distance", "distance_reads"))
_FAR = 8 * INCHES_PER["ft"]
"""The stretch of a tape is told over 8 ft, about as long as casework gets."""


def compute(given, show):
    """True length, what the tape is off there and why, and where to aim for that length."""
    tape = given.tape if given.which == "mine" else _told(given)
    if tape is None:
        raise Refusal("missing", "Tape is blank.", "Choose one, or enter its errors.", field="tape")
    start = given.start if given.since == "line" else None
    hook = tape.hook if start is None else 0
    marks = given.reading - (start or 0)
    if marks <= 0:
        raise Refusal(
            "impossible",
            f"The reading isn’t past the line at {show.text(start)}.",
            "Enter the mark at the far end of the piece.",
            field="reading",
        )
    true = tape.scale * marks + hook
    if true <= 0:
        raise Refusal(
            "impossible",
            f"The hook is off by more than the reading of {show.text(given.reading)}.",
            "Measure from a line on the tape, or check the hook’s error.",
            field="reading",
        )
    off = true - marks
    aim = (start or 0) + (given.reading - hook) / tape.scale
    return Reckoning(
        answers={
            "true": on_fine_marks(true, show),
            "off": on_fine_marks(abs(off), show),
            "way": _way(off),
            "hook": _error(tape.hook, "Every reading from the hook", show),
            "scale": _error((tape.scale - 1) * _FAR, f"Over {show.text(_FAR)} of tape", show),
            **({"aim": on_fine_marks(aim, show)} if aim > 0 else {}),
        },
        working=(*_found(tape, show), *_worked(tape, given, start, marks, true, show)),
        drawing=two_rulers(marks, true, show),
    )


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


def _worked(tape, given, start, marks, true, show):
    if start is not None:
        reading = show.number(given.reading)
        yield f"From the line: {reading} − {show.number(start)} = {show.number(marks)}"
    scaled = f"{decimal_text(tape.scale)} × {show.number(marks)}"
    scaled = scaled if tape.scale != 1 else show.number(marks)
    hook = ""
    if start is None and tape.hook:
        hook = f" {'+' if tape.hook > 0 else '−'} {show.number(abs(tape.hook))}"
    yield f"True: {scaled}{hook}{show.equals(true)}"


def _typed(key, help_):
    label, least, most = PARTS[key]
    return length(
        key,
        label,
        help=help_,
        least=least,
        most=most,
        blank_means="Not compared.",
        shown_when=("which", ("typed",)),
    )


RECKONER = Reckoner(
    key="corrected_reading",
    title="Correct a reading",
    asks="My tape is off. What’s the true length?",
    words=(
        "tape is off, bad tape, correct, tape hook, bent hook, worn hook, worn tape, stretched "
        "tape, error, wrong, calibrate, my tapes, two tapes disagree"
    ),
    order=105,
    job="tape",
    picture={
        "wood": "M3 8h34v9H3zM7 23h30v9H7z",
        "ink": "M10 17v-4M17 17v-4M24 17v-4M31 17v-4M14 23v4M21 23v4M28 23v4",
        "chalk": "M3 20v16M7 20v16",
    },
    fields=(
        length("reading", "Tape reading", least="1/64 in"),
        choice("since", "Measured from", {"hook": "The hook", "line": "A line on the tape"}),
        line_field("Which line", shown_when=("since", ("line",))),
        choice("which", "Tape", {"mine": "One of my tapes", "typed": "Enter it here"}),
        own_tape("tape", "My tape", shown_when=("which", ("mine",))),
        _typed("block", "A short length you’re sure of, such as a square’s blade."),
        _typed("block_reads", "From the hook, read as close as you can."),
        _typed("distance", "As long a distance as you can be sure of."),
        _typed("distance_reads", "Also from the hook."),
    ),
    answers=(
        Answer("true", "True length", must="agree"),
        Answer("off", "Off by, at this length", must="agree"),
        Answer("way", "Which way", "text"),
        Answer("aim", "To lay out that length with this tape, mark at", must="agree"),
        Answer("hook", "Hook", "text"),
        Answer("scale", "Scale", "text"),
    ),
    source=(
        "A straight line through two compared lengths: true = scale × reading + hook, textbook "
        "calibration. Your tape’s errors are yours to measure; tension and temperature change "
        "them."
    ),
    compute=compute,
    example={
        "reading": "71 7/8",
        "since": "hook",
        "which": "typed",
        "block": "6",
        "block_reads": "5 31/32",
        "distance": "96",
        "distance_reads": "95 15/16",
    },
)
