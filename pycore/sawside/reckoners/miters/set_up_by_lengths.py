"""An angle set up by lengths, since few scales on a saw show a tenth of a degree.

Two lengths fix an angle better than a scale does: rise over run, as on a framing square, or a
spacer under one of two equal pins on a bar, both on the finest marks of one's own system. What one
mark of misplacement does is told beside.
"""

from dataclasses import dataclass

from sawside.drawing.miters.set_up import rise_over_run
from sawside.geometry.set_up import angle_of_rise, angle_of_spacer, rise_of, spacer_of, worst
from sawside.lengths.fine import fine_grid, on_fine_marks
from sawside.lengths.marks import Rounded
from sawside.lengths.real import Exact, nearby, sign
from sawside.lengths.show import angle_equals, angle_text, degrees_text
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import angle, length
from sawside.wood.saw import SAW_CAUTIONS


@dataclass(frozen=True, slots=True)
class _SetUp:
    """A length that sets the angle, on its mark, and the angle that the mark gives."""

    length: Rounded
    angle: Exact
    worst: Exact
    """How far the angle is off, in degrees, when the mark is missed by one."""


def compute(given, show):
    """Rise and spacer in inches, mostly irrational, and the angles that their marks give."""
    rise, spacer = _rise(given, show), _spacer(given, show)
    return Reckoning(
        answers={
            "rise": rise.length,
            "rise_angle": rise.angle,
            "rise_worst": rise.worst,
            "spacer": spacer.length,
            "spacer_angle": spacer.angle,
            "spacer_worst": spacer.worst,
            "other_angle": 90 - given.angle,
        },
        working=_working(given, show, rise, spacer),
        drawing=_drawing(given, show, rise),
        cautions=SAW_CAUTIONS,
        tape=fine_grid(show.settings),
        verdict=f"Rise (on a run of {show.brief(given.run)}; {_sets(given, rise)})",
    )


def _sets(given, rise):
    """What the mark of the rise sets, and how far that is from what was asked for."""
    off = rise.angle - given.angle
    if sign(off) == 0:
        return f"sets {angle_text(rise.angle)} exactly"
    size = angle_text(abs(off)).removeprefix("≈ ")
    told = "less than 0.01°" if size.startswith("0.00") or size == "0°" else size
    return f"sets {angle_text(rise.angle)}, {told} {'high' if sign(off) > 0 else 'low'}"


def _rise(given, show):
    length = on_fine_marks(rise_of(given.run, given.angle), show)
    return _set_up(given, show, length, lambda rise: angle_of_rise(given.run, rise))


def _spacer(given, show):
    length = on_fine_marks(spacer_of(given.bar, given.angle), show)
    return _set_up(
        given, show, length, lambda spacer: angle_of_spacer(given.bar, min(spacer, given.bar))
    )


def _set_up(given, show, length, angle_of):
    off = worst(angle_of, length.mark, fine_grid(show.settings).step, given.angle)
    return _SetUp(length, angle_of(length.mark), off)


def _working(given, show, rise, spacer):
    pure, run, bar = degrees_text(given.angle), show.number(given.run), show.number(given.bar)
    step = show.text(on_fine_marks(fine_grid(show.settings).step, show))
    return (
        f"Rise: {run} × tan {pure}°{show.equals(rise.length)}",
        f"At its mark: arctan ({show.number(rise.length.mark)} ÷ {run}){angle_equals(rise.angle)}; "
        f"one mark more or less is {step} of rise",
        f"Spacer: {bar} × sin {pure}°{show.equals(spacer.length)}",
        f"At its mark: arcsin ({show.number(min(spacer.length.mark, given.bar))} ÷ {bar})"
        f"{angle_equals(spacer.angle)}",
    )


def _drawing(given, show, rise):
    text, run, high = angle_text(given.angle), show.brief(given.run), show.brief(rise.length)
    words = (
        f"A triangle with a run of {run} along an edge and a rise of {high} square to it; its "
        f"slope is {text} from the edge."
    )
    return rise_over_run(words, float(nearby(given.angle)), run, high, text)


RECKONER = Reckoner(
    key="set_up_by_lengths",
    title="Set an angle by lengths",
    asks="How do I set an angle closer than the saw’s scale?",
    words=(
        "framing square, rise and run, rise over run, rise, run, slope, blade angle, saw angle, "
        "set an angle, spacer, sine bar, bevel gauge, protractor, setting, tenth of a degree, "
        "calibrate"
    ),
    order=240,
    job="miters and frames",
    picture={
        "wood": "M4 32L31 9l4 4.5L11 34z",
        "ink": "M3 35h34",
        "chalk": "M30 35V18M27 21l3-3 3 3M27 32l3 3 3-3",
    },
    fields=(
        angle(
            "angle",
            "Angle",
            help="Between the edge and the line: a miter or a bevel.",
            least="0.1",
            most="85",
        ),
        length(
            "run",
            "Run",
            help="Along the edge, or on the framing square’s blade. Longer is closer.",
            default="12 in",
            metric="300 mm",
            least="1 in",
            most="10 ft",
        ),
        length(
            "bar",
            "Between the pins",
            help="On center, two equal pins on a straight bar.",
            default="10 in",
            metric="250 mm",
            least="1 in",
            most="4 ft",
        ),
    ),
    answers=(
        Answer("rise", "Rise", must="agree"),
        Answer("rise_angle", "Angle at that rise", "angle"),
        Answer("rise_worst", "One mark of rise changes it by", "angle"),
        Answer("spacer", "Spacer under one pin", must="agree"),
        Answer("spacer_angle", "Angle at that spacer", "angle"),
        Answer("spacer_worst", "One mark of spacer changes it by", "angle"),
        Answer("other_angle", "Complement (90 minus the angle)", "angle"),
    ),
    source="Rise = run × tan, spacer = pin spacing × sin: plane trigonometry.",
    compute=compute,
    example={"angle": "33.86", "run": "12", "bar": "10"},
)
