"""How far a tape may be off and still be a good one, by its length and class."""

from sawside.drawing.tape.band import band
from sawside.lengths.display import decimal_text
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.tape_tolerances import CLASSES, RULES, STEPS, tolerance
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, choice, length
from sawside.reckoners.tape.shared.tape_marks import in_marks

_MM = INCHES_PER["mm"]


def compute(given, show):
    """What the rule allows either way, the band that the true length lies in, other rules."""
    allowed = tolerance(given.rule, given.length)
    size = allowed.inches
    return Reckoning(
        answers={
            "allowed": f"± {_in_its_unit(given.rule, size)}",
            "marks": f"{fine_text(size, show)}, {in_marks(size, show)}",
            "millimeters": f"{decimal_text(size / _MM, 4)} mm, {decimal_text(size, 4)}″",
            "least": on_fine_marks(given.length - size, show, "be there"),
            "most": on_fine_marks(given.length + size, show, "reach"),
            "rules": [
                _by_rule(name, tolerance(rule, given.length).inches, show)
                for rule, name in RULES.items()
            ],
        },
        working=(_worked(given.rule, allowed, show),),
        drawing=band(given.length, size, show),
    )


def _in_its_unit(rule, size):
    """The allowance in the unit of the rule, exact."""
    return f"{size}″" if rule == "h44" else f"{decimal_text(size / _MM)} mm"


def _by_rule(name, size, show):
    return f"{name}, {decimal_text(size / _MM, 2)} mm", on_fine_marks(size, show)


def _worked(rule, allowed, show):
    if rule == "h44":
        most = next(feet for feet, _ in STEPS if allowed.counted <= feet)
        return (
            f"Up to the next whole foot: {allowed.counted} ft; the table allows "
            f"{allowed.inches} in up to {most} ft"
        )
    fixed, each = CLASSES[rule]
    return (
        f"Up to the next whole meter: {allowed.counted} m; {decimal_text(fixed)} mm + "
        f"{decimal_text(each)} mm × {allowed.counted} = {decimal_text(allowed.inches / _MM)} mm "
        f"= {decimal_text(allowed.inches, 4)} in"
    )


RECKONER = Reckoner(
    key="tape_tolerance",
    title="Tape tolerance",
    asks="How far off can a good tape be at this length?",
    words=(
        "tape accuracy, tape is off, bad tape, tolerance, accurate, class, class II, error, "
        "trust, two tapes disagree, Handbook 44"
    ),
    order=106,
    job="tape",
    picture={
        "wood": "M3 21h34v10H3z",
        "ink": "M8 21v4M14 21v6M20 21v4M26 21v6M32 21v4",
        "chalk": "M20 4v8M16 8h8M16 15h8",
    },
    fields=(
        length("length", "Length on the tape", help="From the tape’s zero.", least="1/64 in"),
        choice(
            "rule", "Standard", RULES, help="Look for a Roman numeral near the start of the tape."
        ),
    ),
    answers=(
        Answer("allowed", "Good to within", "text"),
        Answer("marks", "In your marks", "text"),
        Answer("millimeters", "Exactly", "text"),
        Answer("least", "True length, at least", must="be there"),
        Answer("most", "True length, at most", must="reach"),
        Answer("rules", "By each standard", "lengths", must="agree"),
    ),
    source=(
        "NIST Handbook 44, section 5.52, metal tapes (read in a copy; lengths between whole "
        "feet are taken as the next foot). Directive 2014/32/EU, Annex X, MI-008: a + b L "
        "(read). What the Directive adds for a hook or end face is left out. Neither covers a "
        "tape that’s worn, bent or slack."
    ),
    compute=compute,
    example={"length": "41 1/4", "rule": "II"},
)
