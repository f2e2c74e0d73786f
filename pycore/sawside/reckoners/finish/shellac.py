"""Shellac by its cut: flakes for alcohol, and one cut made into another."""

from fractions import Fraction

from sawside.errors import impossible
from sawside.lengths.plain_numbers import number_text
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.finish.shared.finish_cautions import SOLVENT
from sawside.reckoners.finish.shared.shellac_fields import BASIC, FIELDS
from sawside.reckoners.finish.shared.shellac_measures import METRIC, US
from sawside.wood.caution import Caution
from sawside.wood.liquids import Shellac

_KEEPS = Caution(
    "Mix what you’ll use in a few months, and date the jar.",
    "Mix what you’ll use in a few months, and date the jar: old shellac stays soft (shop "
    "practice). Use denatured alcohol in a glass or plastic jar, label it, and keep it from "
    "children: denatured alcohol is poison. Strain it before you use it.",
)


def compute(given, show):
    """The flakes, shellac and alcohol to put together, exact in ounces or grams and milliliters."""
    units = US if given.measured == "us" else METRIC
    wanted, have = (_typed(given, key) for key in ("cut", "have"))
    cut = wanted / units.per
    before = _before(given, units, cut, None if have is None else have / units.per)
    after = _after(before, cut)
    added = after.flakes - before.flakes, after.alcohol - before.alcohol
    mixed = given.way == "mix"
    answers = {"start": units.volume(before.volume)}
    if added[0]:
        answers["flakes"] = units.weight(added[0])
    if added[1]:
        answers["alcohol"] = units.volume(added[1])
    answers |= {"makes": units.volume(after.volume), "cut": units.cut_text(wanted)}
    if mixed:
        answers["alcohol"] = answers.pop("start")
    return Reckoning(
        answers=answers,
        working=tuple(_working(given, units, before, after)),
        cautions=(SOLVENT, _KEEPS),
        main="flakes" if added[0] else "alcohol",
        verdict=_verdict(answers, mixed),
    )


def _typed(given, key):
    return getattr(given, f"{key}_{given.measured}")


def _before(given, units, cut, have):
    """What there is to begin with: the alcohol alone, or the shellac that is changed."""
    amount = _typed(given, given.known)
    if given.way == "mix":
        alcohol = amount
        if given.known == "made":
            alcohol = Shellac.of_volume(amount, cut, units.room).alcohol
        return Shellac(Fraction(0), alcohol, units.room)
    if have == cut:
        raise impossible(
            "It’s that cut already.", "Enter a weaker or a stronger cut.", f"cut_{given.measured}"
        )
    if given.known == "hand":
        return Shellac.of_volume(amount, have, units.room)
    end = Shellac.of_volume(amount, cut, units.room)
    alcohol = end.flakes / have if have > cut else end.alcohol
    return Shellac(alcohol * have, alcohol, units.room)


def _after(before, cut):
    """It with just the flakes, or just the alcohol, that makes the cut of it."""
    lacks = cut * before.alcohol - before.flakes
    return before.add(lacks, Fraction(0)) if lacks > 0 else before.add(Fraction(0), -lacks / cut)


def _verdict(answers, mixed):
    flakes, alcohol = answers.get("flakes"), answers.get("alcohol")
    if mixed:
        return f"Dissolve {flakes} of flakes in {alcohol} of alcohol"
    added = f"{flakes} of flakes" if flakes else f"{alcohol} of alcohol"
    return f"Add {added} to {answers['start']} of shellac"


def _working(given, units, before, after):
    flat, each, poured = units.flat, units.weighed, units.poured
    wanted, have = (_typed(given, key) for key in ("cut", "have"))
    cut, room = flat(wanted / units.per), number_text(units.room, 4)
    yield f"{each} of flakes to 1 {poured} of alcohol: {flat(wanted)} ÷ {units.per} = {cut}"
    if given.way == "change":
        yield from _changed(units, have, cut, before, after)
        return
    grown = flat(after.volume / after.alcohol)
    yield f"1 {poured} of alcohol makes 1 + {cut} × {room} = {grown}, as 1 {each} adds {room}"
    alcohol, made = flat(after.alcohol), flat(after.volume)
    if given.known == "made":
        yield f"Alcohol, {poured}: {made} ÷ {grown} = {alcohol}"
    else:
        yield f"Makes, {poured}: {alcohol} × {grown} = {made}"
    yield f"Flakes, {each}: {alcohol} × {cut} = {flat(after.flakes)}"


def _changed(units, have, cut, before, after):
    flat, each, poured = units.flat, units.weighed, units.poured
    now, room = flat(have / units.per), number_text(units.room, 4)
    yield f"Now, the same way: {flat(have)} ÷ {units.per} = {now}"
    held, flakes = flat(before.alcohol), flat(before.flakes)
    first = f"{flat(before.volume)} ÷ (1 + {now} × {room}) = {held}"
    yield f"Alcohol in it, {poured}: {first}, as 1 {each} adds {room}"
    yield f"Flakes in it, {each}: {held} × {now} = {flakes}"
    if after.flakes > before.flakes:
        more = flat(after.flakes - before.flakes)
        yield f"Flakes to add, {each}: {held} × {cut} − {flakes} = {more}"
    else:
        more = flat(after.alcohol - before.alcohol)
        yield f"Alcohol to add, {poured}: {flakes} ÷ {cut} − {held} = {more}"


RECKONER = Reckoner(
    key="shellac",
    title="Shellac",
    asks="How much flake and alcohol make this cut, or thin another to it?",
    words=(
        "shellac, shellac flakes, pound cut, lb cut, cut of shellac, thin shellac, thinning "
        "shellac, mix shellac, denatured alcohol, french polish"
    ),
    order=60,
    job="finish",
    picture={
        "wood": "M8 14h16v22H8z",
        "ink": "M8 22h16M11 14V8h10v6",
        "chalk": "M29 24h8M33 20v8M28 12l3-4 3 4z",
    },
    basic=BASIC,
    fields=FIELDS,
    answers=(
        Answer("flakes", "Flakes", "text"),
        Answer("alcohol", "Alcohol", "text"),
        Answer("start", "Shellac to start with", "text"),
        Answer("makes", "Makes", "text"),
        Answer("cut", "The cut", "text"),
    ),
    source=(
        "A cut is the pounds of flakes dissolved in one US gallon of alcohol: common practice, no "
        "source; 1 lb/gal = 119.83 g/L by the definitions of both (NIST). A pound of flakes adds "
        "a tenth of a gallon: a woodworking magazine’s table of cuts, read in a copy."
    ),
    compute=compute,
    example={
        "way": "mix",
        "cut_us": "2",
        "made_us": "16",
        "cut_metric": "240",
        "made_metric": "500",
    },
)
