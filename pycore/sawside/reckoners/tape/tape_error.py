"""What a tape is off: a reading corrected, and how far off a good tape can be."""

from sawside.lengths.tape_tolerances import RULES
from sawside.reckoners.declaration import Answer, Reckoner
from sawside.reckoners.fields import choice, length, own_tape
from sawside.reckoners.tape.shared.allowed_error import allowed_error
from sawside.reckoners.tape.shared.burned_line import line_field
from sawside.reckoners.tape.shared.true_reading import true_reading
from sawside.settings.tape_rows import PARTS

_TRUE, _ALLOWED = ("solve", ("true",)), ("solve", ("allowed",))
_SOLVERS = {"true": true_reading, "allowed": allowed_error}


def compute(given, show):
    """By what is asked: the true length of a reading, or what a standard allows there."""
    return _SOLVERS[given.solve](given, show)


def _typed(key, help_):
    label, least, most = PARTS[key]
    return length(
        key,
        label,
        help=help_,
        least=least,
        most=most,
        blank_means="Not compared.",
        shown_when=(_TRUE, ("which", ("typed",))),
    )


RECKONER = Reckoner(
    key="tape_error",
    title="Tape error",
    asks="My tape is off. What’s the true length, and how far off can a good tape be?",
    words=(
        "tape is off, bad tape, tape accuracy, correct a reading, tape hook, bent hook, worn hook, "
        "worn tape, stretched tape, error, wrong, calibrate, my tapes, two tapes disagree, "
        "tolerance, accurate, class, class II, trust, Handbook 44"
    ),
    order=105,
    job="tape",
    picture={
        "wood": "M3 8h34v9H3zM7 23h30v9H7z",
        "ink": "M10 17v-4M17 17v-4M24 17v-4M31 17v-4M14 23v4M21 23v4M28 23v4",
        "chalk": "M3 20v16M7 20v16",
    },
    fields=(
        choice("solve", "Find", {"true": "True length", "allowed": "Allowed error"}),
        length("reading", "Tape reading", least="1/64 in", in_short="reads {}"),
        choice("which", "Tape", {"typed": "Checked here", "mine": "My tapes"}, shown_when=_TRUE),
        own_tape("tape", "My tape", shown_when=(_TRUE, ("which", ("mine",)))),
        _typed("block", "A short length you’re sure of, such as a square’s blade."),
        _typed("block_reads", "From the hook, read as close as you can."),
        _typed("distance", "As long a distance as you can be sure of."),
        _typed("distance_reads", "Also from the hook."),
        choice("since", "Measured from", {"hook": "The hook", "line": "A line"}, shown_when=_TRUE),
        line_field("Which line", shown_when=(_TRUE, ("since", ("line",)))),
        choice(
            "rule",
            "Standard",
            RULES,
            help="Look for a Roman numeral near the start of the tape.",
            shown_when=_ALLOWED,
        ),
    ),
    answers=(
        Answer("true", "True length", must="agree"),
        Answer("off", "Off by, at this length", must="agree"),
        Answer("way", "Which way", "text"),
        Answer("aim", "To lay out that length with this tape, mark at", must="agree"),
        Answer("hook", "Hook", "text"),
        Answer("scale", "Scale", "text"),
        Answer("allowed", "Good to within", "text"),
        Answer("marks", "In your marks", "text"),
        Answer("millimeters", "Exactly", "text"),
        Answer("least", "True length, at least", must="be there"),
        Answer("most", "True length, at most", must="reach"),
        Answer("rules", "By each standard", "lengths", must="agree"),
    ),
    source=(
        "A straight line through two compared lengths: true = scale × reading + hook, textbook "
        "calibration. Your tape’s errors are yours to measure; tension and temperature change "
        "them. What’s allowed: NIST Handbook 44, section 5.52, metal tapes (read in a copy; "
        "lengths between whole feet are taken as the next foot). Directive 2014/32/EU, Annex X, "
        "MI-008: a + b L (read). What the Directive adds for a hook or end face is left out. "
        "Neither covers a tape that’s worn, bent or slack."
    ),
    compute=compute,
    example={
        "solve": "true",
        "reading": "71 7/8",
        "which": "typed",
        "block": "6",
        "block_reads": "5 31/32",
        "distance": "96",
        "distance_reads": "95 15/16",
        "since": "hook",
        "rule": "II",
    },
    basic=("solve", "reading", "which", "tape", "block", "block_reads", "rule"),
)
