"""What the question about coats asks for."""

from fractions import Fraction

from sawside.errors import impossible
from sawside.moments import lasting
from sawside.reckoners.fields import choice, count, moment, number
from sawside.reckoners.finish.shared.drying import COLDEST, DAMPEST, Air
from sawside.reckoners.finish.shared.finishes import FINISHES, NAMES, OILS, SANDED, WIPED
from sawside.reckoners.finish.shared.hours import Hours
from sawside.reckoners.finish.shared.schedule import MOST_COATS, SANDING, Plan
from sawside.wood.abrasives import GRITS
from sawside.wood.moisture import fahrenheit

_COARSEST = 220
"""What is offered in place of a grit that there is none of, or a finer one."""
_AIR = {
    "usual": "About 70 °F (21 °C) and 50%",
    "air_f": "As I measured, °F",
    "air_c": "As I measured, °C",
}
_CLOCK = "On a 24-hour clock: 7 is 7 AM, 21 is 9 PM."
FIELDS = (
    choice("finish", "Finish", NAMES, default="wiping", in_short="{}"),
    number(
        "recoat",
        "Time between coats",
        "h",
        least="0.25",
        most="240",
        help="From the can.",
        blank_means="What’s usual for this finish.",
        in_short="{} between coats",
    ),
    moment("start", "Start", blank_means="No dates until you tick the first coat."),
    count(
        "coats",
        "Coats",
        least="1",
        most=str(MOST_COATS),
        blank_means="What’s usual. With paint, count the primer.",
    ),
    count(
        "grit",
        "Grit between coats",
        most="2000",
        help="0 for no sanding.",
        blank_means="320, and 220 after a primer.",
        shown_when=("finish", SANDED),
    ),
    choice(
        "pores",
        "Pores",
        {"leave": "Leave open", "fill": "Fill by wet sanding"},
        shown_when=("finish", OILS),
    ),
    count(
        "wipe",
        "Minutes until wiping",
        least="1",
        most="120",
        blank_means="15 to 20, what’s usual for this finish.",
        shown_when=("finish", WIPED),
    ),
    count(
        "cure",
        "Days to cure",
        least="1",
        most="180",
        help="From the can.",
        blank_means="What’s usual for this finish.",
    ),
    choice("air", "Shop air", _AIR),
    number(
        "temperature_f", "Temperature", "°F", least="0", most="120", shown_when=("air", ("air_f",))
    ),
    number(
        "temperature_c", "Temperature", "°C", least="0", most="49", shown_when=("air", ("air_c",))
    ),
    number(
        "humidity",
        "Relative humidity",
        "%",
        least="0",
        most="100",
        shown_when=("air", ("air_f", "air_c")),
    ),
    count("up", "Day starts", default="7", most="23", help=_CLOCK),
    count("down", "Day ends", default="22", most="23", help=_CLOCK),
    choice("away", "Workdays", {"home": "At home", "away": "Away, Monday to Friday"}),
    count("leaves", "Away from", default="8", most="23", shown_when=("away", ("away",))),
    count(
        "back",
        "Back at",
        default="17",
        most="23",
        help="Earlier than you leave: the next morning.",
        shown_when=("away", ("away",)),
    ),
)
BASIC = ("finish", "recoat", "start")


def plan_of(given):
    """The `Plan` of a form; refuses air that no finish dries in, and days without time for it."""
    finish = FINISHES[given.finish]
    grit = finish.grit if given.grit is None else _grit(given.grit)
    plan = Plan(
        finish=finish,
        coats=given.coats or finish.coats,
        recoat=Fraction(finish.recoat) if given.recoat is None else given.recoat,
        cure=given.cure or finish.cure,
        wipe=given.wipe or finish.wipe,
        grit=grit,
        primed=finish.primed if given.grit is None else grit if finish.primed else 0,
        wet=given.pores == "fill",
        air=_air(given),
        hours=_hours(given),
        start=given.start,
    )
    _refuse_no_time(plan)
    return plan


def _grit(number):
    if number and not any(number in scale for scale in GRITS.values()):
        near = min(GRITS["P"], key=lambda each: abs(each - max(number, _COARSEST)))
        raise impossible(
            f"There’s no grit {number} on file.", f"Use {near}, or 0 for no sanding.", "grit"
        )
    return number


def _air(given):
    if given.air == "usual":
        return Air()
    in_f = given.air == "air_f"
    degrees = given.temperature_f if in_f else fahrenheit(given.temperature_c)
    if degrees < COLDEST:
        raise impossible(
            f"Below {COLDEST} °F (10 °C) a finish may not dry or hold.",
            "Warm the shop, or wait for a warmer day.",
            "temperature_f" if in_f else "temperature_c",
        )
    if given.humidity > DAMPEST:
        raise impossible(
            f"Above {DAMPEST}% humidity a finish may turn cloudy or stay soft.",
            "Dry the air, or wait for a drier day.",
            "humidity",
        )
    return Air(degrees, given.humidity)


def _hours(given):
    if given.up == given.down:
        raise impossible(
            "Your day starts and ends at the same hour.",
            "Make the day end later than it starts.",
            "down",
        )
    if given.away != "away":
        return Hours(given.up, given.down)
    if given.back == given.leaves:
        raise impossible(
            "You leave and are back at the same hour.",
            "Enter another hour, or choose At home.",
            "back",
        )
    return Hours(given.up, given.down, given.leaves, given.back)


def _refuse_no_time(plan):
    sands = any(plan.sands(coat) for coat in range(1, plan.coats + 1))
    needed = plan.sitting + (SANDING if sands else 0 * SANDING)
    if plan.hours.longest() < needed:
        raise impossible(
            f"No day leaves you {lasting(needed)} in a row for a coat.",
            "Change the hours of your day.",
            "down",
        )
