"""An angle set up by lengths, since few scales on a saw show a tenth of a degree.

Two lengths fix an angle better than a scale does: rise over run, as on a framing square, or a
spacer under one of two equal pins on a bar. What one mark of misplacement does is told beside.
"""

from sawside.drawing.miters.set_up import rise_over_run
from sawside.geometry.set_up import angle_of_rise, angle_of_spacer, rise_of, spacer_of, worst
from sawside.lengths.real import nearby
from sawside.lengths.show import angle_equals, angle_text, degrees_text
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, angle, length
from sawside.wood.saw import SAW_CAUTIONS


def compute(given, show):
    """Rise and spacer in inches, mostly irrational, and the angles that their marks give."""
    degrees, run, bar = given.angle, given.run, given.bar
    step = show.settings.grid.step
    rise, spacer = rise_of(run, degrees), spacer_of(bar, degrees)

    def by_rise(length):
        return angle_of_rise(run, length)

    def by_spacer(length):
        return angle_of_spacer(bar, min(length, bar))

    marked, spaced = by_rise(show.mark(rise)), by_spacer(show.mark(spacer))
    pure = degrees_text(degrees)
    text = angle_text(degrees, 2)
    words = (
        f"A triangle with a run of {show.brief(run)} along an edge and a rise of "
        f"{show.brief(rise)} square to it; its slope makes {text} with the edge."
    )
    return Reckoning(
        answers={
            "rise": rise,
            "rise_angle": marked,
            "rise_worst": worst(by_rise, show.mark(rise), step, degrees),
            "spacer": spacer,
            "spacer_angle": spaced,
            "spacer_worst": worst(by_spacer, show.mark(spacer), step, degrees),
            "other_angle": 90 - degrees,
        },
        working=(
            f"Rise: {show.number(run)} × tan {pure}°{show.equals(rise)}",
            f"At its mark: arctan ({show.number(show.mark(rise))} ÷ {show.number(run)})"
            f"{angle_equals(marked)}; a mark further or nearer is {show.text(step)} of rise",
            f"Spacer: {show.number(bar)} × sin {pure}°{show.equals(spacer)}",
            f"At its mark: arcsin ({show.number(min(show.mark(spacer), bar))} ÷ "
            f"{show.number(bar)}){angle_equals(spaced)}",
        ),
        drawing=rise_over_run(
            words, float(nearby(degrees)), show.brief(run), show.brief(rise), text
        ),
        cautions=SAW_CAUTIONS,
    )


RECKONER = Reckoner(
    key="set_up_by_lengths",
    title="Set an angle by lengths",
    asks="Which rise over run, or which spacer, sets this angle more closely than a scale?",
    words=(
        "framing square, rise, run, slope, angle, spacer, sine bar, bevel gauge, protractor, "
        "setting, tenth of a degree, layout, calibrate"
    ),
    order=240,
    fields=(
        angle(
            "angle",
            "Angle",
            help="Between the edge and the line: a saw's setting, or a tilt.",
            least="0.1",
            most="85",
        ),
        length(
            "run",
            "Run",
            help="Along the edge, or on the blade of the framing square: the longer, the closer.",
            default="12 in",
            metric="300 mm",
            least="1 in",
            most="10 ft",
        ),
        length(
            "bar",
            "Between the pins",
            help="From center to center of two equal pins on a straight bar.",
            default="10 in",
            metric="250 mm",
            least="1 in",
            most="4 ft",
        ),
    ),
    answers=(
        Answer("rise", "Rise", must="agree"),
        Answer("rise_angle", "Angle at the mark of the rise", "angle"),
        Answer("rise_worst", "A mark of error there", "angle"),
        Answer("spacer", "Spacer under one pin", must="agree"),
        Answer("spacer_angle", "Angle at the mark of the spacer", "angle"),
        Answer("spacer_worst", "A mark of error there", "angle"),
        Answer("other_angle", "The rest of a square", "angle"),
    ),
    source="Rise = run × tan, spacer = distance of the pins × sin: plane trigonometry.",
    compute=compute,
    example={"angle": "33.86", "run": "12", "bar": "10"},
)
