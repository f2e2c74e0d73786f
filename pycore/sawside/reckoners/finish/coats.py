"""When each coat of a finish goes on, what is done between, and when it is ready to use."""

from sawside.lengths.plain_numbers import number_text
from sawside.moments import lasting, said
from sawside.reckoners.declaration import NONE_DONE, Answer, Reckoner, Reckoning
from sawside.reckoners.finish.shared.coat_fields import BASIC, FIELDS, plan_of
from sawside.reckoners.finish.shared.coat_words import spoils
from sawside.reckoners.finish.shared.drying import drying, factors_worked, longer_worked
from sawside.reckoners.finish.shared.finish_cautions import RAGS, SOLVENT, SOURCES, WATER
from sawside.reckoners.finish.shared.schedule import Schedule
from sawside.reckoners.shared.step_order import come_due, overtaken


def compute(given, show, done=NONE_DONE, now=None):
    """The moments of the coats as text, and the steps; what was `done` moves what follows, and what
    is late by `now` leads."""
    plan = plan_of(given)
    schedule = Schedule(plan, done)
    between = drying(plan.recoat, schedule.air, plan.finish.dries)
    answers = {
        "last": _last(plan, schedule, between),
        **({"between": f"{lasting(between)} at least"} if plan.coats > 1 else {}),
        "coats": plan.coats,
    }
    if schedule.cured:
        answers["ready"] = said(schedule.cured)
    main, verdict, upcoming = _leads(plan, schedule, done, now)
    if upcoming and upcoming.due:
        answers["next"] = said(upcoming.due)
    return Reckoning(
        answers=answers,
        working=tuple(_working(plan, schedule, given)),
        cautions=(
            *spoils(plan, given.finish, schedule.air),
            SOLVENT if plan.finish.flammable else WATER,
            *((RAGS,) if plan.finish.rags else ()),
        ),
        main=main if main in answers else "last",
        verdict=verdict,
        steps=tuple(schedule.steps),
    )


def _last(plan, schedule, between):
    last = schedule.coats[-1]
    if last:
        return said(last)
    if plan.coats == 1:
        return "As soon as you start"
    return f"{lasting(between * (plan.coats - 1))} after the first, or later"


def _leads(plan, schedule, done, now):
    """(key of the answer that leads, the words before it, the next step or None)."""
    behind = {*done, *overtaken(schedule.steps, done)}
    left = [step for step in schedule.steps if step.key not in behind]
    due = come_due(schedule.steps, behind, now) if now else ()
    for step in left:
        if step.key in due:
            return "next", f"Due, {_uncapped(step.said)}", step
    if len(left) == len(schedule.steps):
        count = "One coat" if plan.coats == 1 else f"{plan.coats} coats, the last one"
        return "last", count, None
    if not left:
        return "ready", "Cured", None
    return "next", f"Next, {_uncapped(left[0].said)}", left[0]


def _uncapped(name):
    return f"{name[:1].lower()}{name[1:]}"


def _working(plan, schedule, given):
    air, dries = schedule.air, plan.finish.dries
    if schedule.is_noted:
        degrees, humidity = (number_text(each, 2) for each in (air.fahrenheit, air.humidity))
        yield f"The air that you noted last: {degrees} °F, {humidity}%"
    elif given.air == "air_c":
        degrees = number_text(air.fahrenheit, 2)
        yield f"In °F: {number_text(given.temperature_c, 2)} × 1.8 + 32 = {degrees}"
    yield from factors_worked(air, dries)
    if plan.coats > 1:
        yield longer_worked("Hours between coats", plan.recoat, air, dries)
    yield longer_worked("Days to cure", plan.cure, air, dries)


RECKONER = Reckoner(
    key="coats",
    title="Coats",
    asks="When does each coat of finish go on, and when is it ready to use?",
    words=(
        "coats, finish, finishing, recoat, recoat time, drying time, dry time, cure, curing, "
        "varnish, oil, shellac, lacquer, polyurethane, paint, oil-based paint, primer, wax, "
        "schedule, when, next coat, second coat, hours between coats, sanding between coats, "
        "wipe off, oily rags, rags"
    ),
    order=30,
    job="finish",
    ticked=True,
    basic=BASIC,
    fields=FIELDS,
    answers=(
        Answer("last", "Last coat", "text"),
        Answer("next", "Next step", "text"),
        Answer("ready", "Ready to use", "text"),
        Answer("between", "Between coats", "text"),
        Answer("coats", "Coats", "count"),
    ),
    source=(
        "Coats, times, grits and hours are common practice, no source, but for boiled linseed oil, "
        "dry in 12 to 24 hours (older government paint bulletins, from memory); the can comes "
        "first. Cold: as long again for each 18 °F (10 °C) below 70 °F, after van ’t Hoff’s rule, "
        "from memory. Damp: what dries by water by the room left in the air, 100% less the "
        "humidity (Dalton’s law of evaporation, from memory); oils half as long again above 70%, "
        f"common practice, no source. {SOURCES}"
    ),
    compute=compute,
    example={"finish": "wiping", "recoat": "24", "start": "2026-11-30T18:00"},
)
