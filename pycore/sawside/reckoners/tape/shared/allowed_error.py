"""How far a tape may be off and still be a good one, by its length and class."""

from sawside.drawing.tape.band import band
from sawside.lengths.display import decimal_text
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.tape_tolerances import CLASSES, RULES, STEPS, tolerance
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.declaration import Reckoning
from sawside.reckoners.tape.shared.tape_marks import in_marks

_MM = INCHES_PER["mm"]


def allowed_error(given, show):
    """What the rule allows either way, the band that the true length lies in, other rules."""
    allowed = tolerance(given.rule, given.reading)
    size = allowed.inches
    return Reckoning(
        answers={
            "allowed": f"± {_in_its_unit(given.rule, size)}",
            "marks": f"{fine_text(size, show)}, {in_marks(size, show)}",
            "millimeters": f"{decimal_text(size / _MM, 4)} mm, {decimal_text(size, 4)}″",
            **_least(given.reading - size, show),
            "most": on_fine_marks(given.reading + size, show, "reach"),
            "rules": [
                _by_rule(name, tolerance(rule, given.reading).inches, show)
                for rule, name in RULES.items()
            ],
        },
        working=(_worked(given.rule, allowed, show),),
        drawing=band(given.reading, size, show),
        main="allowed",
        verdict=f"Good to within {fine_text(size, show)} either way",
    )


def _least(length, show):
    """The least that the true length can be; none where it could be nothing at all."""
    return {"least": on_fine_marks(length, show, "be there")} if length > 0 else {}


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
