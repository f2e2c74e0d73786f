"""Which grits to sand with, from how a surface comes to its finish, and what is done when."""

from math import ceil

from sawside.lengths.areas import SQUARE_INCHES_IN, area_text
from sawside.lengths.plain_numbers import number_text
from sawside.lengths.words import listed
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.finish.shared.faces import AREA_UNITS, area_of, area_worked
from sawside.reckoners.finish.shared.finish_cautions import DUST
from sawside.reckoners.finish.shared.sanded import MICROMETERS, sanding_of
from sawside.reckoners.finish.shared.sanding_fields import BASIC, FIELDS
from sawside.wood.abrasives import nearest
from sawside.wood.caution import Caution
from sawside.wood.numbers import percent_text, size_text

_LEVEL = 120
"""Joints are leveled with this grit or the next finer one (common practice, no source)."""
_TOO_THIN = Caution(
    "Sanded so far, the veneer may wear through.",
    "Sanded so far, the veneer may wear through: start with a finer grit, go by hand near edges, "
    "and draw pencil lines across to see what’s gone.",
)
_VENEER = Caution(
    "Keep a sander flat on veneer, and off its edges.",
    "Keep a sander flat on veneer, and off its edges: they wear through first. Draw pencil lines "
    "across, and stop when they’re gone.",
)


def compute(given, show):
    """The grits in their order, and how much of a veneer they take. Micrometers, exact."""
    plan = sanding_of(given)
    names = [each.name for each in plan.grits]
    answers = {
        "grits": ", ".join(names),
        "step": _step_text(plan),
        "other": ", ".join(nearest(each).name for each in plan.grits),
        "before": _before_text(plan),
        "after": _after_text(plan),
    }
    thin = plan.face is not None and plan.off > plan.face * given.share / 100
    if plan.face is not None:
        answers["face"] = _face_text(plan, show)
    if given.faces:
        answers["disks"] = _disks_text(given, show, len(names))
    return Reckoning(
        answers=answers,
        working=tuple(_working(given, show, plan)),
        cautions=(*((_TOO_THIN,) if thin else ()), *_sheet(plan), DUST),
        verdict=f"Sand with {answers['grits']}" if len(names) > 1 else f"Sand with {names[0]} only",
        fixes=(("Start finer", "first"),) if thin else (),
    )


def _sheet(plan):
    return () if plan.face is None else (_VENEER,)


def _pairs(plan):
    return list(zip(plan.grits, plan.grits[1:], strict=False))


def _step_text(plan):
    if len(plan.grits) == 1:
        return "None: one grit does it"
    one, two = max(_pairs(plan), key=lambda pair: pair[0].size / pair[1].size)
    ratio, grain, finer = (
        number_text(each, places)
        for each, places in ((one.size / two.size, 2), (one.size, 0), (two.size, 0))
    )
    return (
        f"{ratio} times, {one.name} to {two.name}: what {grain} µm grains scratch, {finer} µm ones "
        "sand out"
    )


def _before_text(plan):
    names = [each.name for each in plan.grits]
    grits = f"{names[0]} to {names[-1]}" if len(names) > 1 else names[0]
    coarse = [name for name in names if name not in _afterwards(plan)]
    outside = f" Outside faces: {listed(coarse)}." if coarse else ""
    inside = f"Inside faces, panels and all you can’t reach later: {grits}."
    return f"{inside}{outside} Stay off the joints."


def _afterwards(plan):
    """The grits that an outside face gets once the joints are glued."""
    grits = plan.grits
    return [each.name for each in grits if each.number >= _LEVEL] or [grits[-1].name]


def _after_text(plan):
    left = _afterwards(plan)
    if plan.face is not None:
        return f"Outside faces, and eased edges of solid wood: {listed(left)}"
    if len(left) == 1:
        return f"Outside faces, level joints and eased edges: {left[0]}"
    return f"Level the joints with {left[0]}, then all outside faces: {listed(left)}"


def _face_text(plan, show):
    off, face = (size_text(each * MICROMETERS, show) for each in (plan.off, plan.face))
    told = f"About {off} of {face} ({percent_text(plan.off / plan.face * 100, 0)})"
    return f"{told}, so it starts finer" if plan.finer else told


def _area(given, show):
    area = sum(area_of(row, show) for row in given.faces)
    return area / SQUARE_INCHES_IN[AREA_UNITS[given.measured]]


def _covers(given):
    return given.covers_us if given.measured == "us" else given.covers_metric


def _disks_text(given, show, grits):
    area = sum(area_of(row, show) for row in given.faces)
    each = ceil(_area(given, show) / _covers(given))
    told = area_text(area, AREA_UNITS[given.measured])
    return f"{each} of each grit, {each * grits} total, for {told}"


def _working(given, show, plan):
    for one, two in _pairs(plan):
        sizes = [number_text(each.size, 1) for each in (one, two)]
        ratio = number_text(one.size / two.size, 2)
        yield f"{one.name} to {two.name}: {sizes[0]} ÷ {sizes[1]} = {ratio}"
    if len(plan.grits) == 1:
        yield f"Nothing is figured between grits: {plan.grits[0].name} is the only one"
    if plan.face is not None:
        yield from _face_worked(plan)
    if given.faces:
        yield from area_worked(given.faces, show, given.measured)
        area, covers = _area(given, show), _covers(given)
        used = " ÷ ".join(number_text(each, 3) for each in (area, covers))
        yield f"Of each grit: {used} = {number_text(area / covers, 3)}"


def _face_worked(plan):
    halves = " + ".join(f"{number_text(each.size, 1)} ÷ 2" for each in plan.grits)
    off, face = number_text(plan.off, 1), number_text(plan.face, 1)
    yield f"Off the face in µm, half a grain by each grit: {halves} = {off}"
    yield f"Of the face: {off} ÷ {face} × 100 = {percent_text(plan.off / plan.face * 100, 2)}"


RECKONER = Reckoner(
    key="sanding",
    title="Sanding",
    asks="Which grits do I sand with, and how far, before this finish?",
    words=(
        "sanding, sand, sandpaper, grit, grits, sandpaper grit, grit sequence, sander, sanding "
        "disks, P grade, P120, P180, P220, CAMI, FEPA, sand veneer, sand plywood, sand through, "
        "before finishing"
    ),
    order=10,
    job="finish",
    picture={
        "wood": "M3 26h34v10H3z",
        "ink": "M12 12h18v8H12zM10 20h22v5H10z",
        "chalk": "M4 6h6M4 12h4M33 6h4",
    },
    basic=BASIC,
    fields=FIELDS,
    answers=(
        Answer("grits", "Grits", "text"),
        Answer("step", "Largest step", "text"),
        Answer("other", "Nearest in the other scale", "text"),
        Answer("before", "Before assembly", "text"),
        Answer("after", "After assembly", "text"),
        Answer("face", "Veneer sanded off", "text"),
        Answer("disks", "Disks or sheets", "text"),
    ),
    source=(
        "Mean grain: P grades by ISO 6344 (FEPA 43), others by ANSI B74.18 (CAMI), read in "
        "secondary charts, P240 and finer from memory but for P400. Steps of at most 1.7 times, "
        "scratches half a grain deep, first and last grits, 30% of a veneer and 10 ft² a disk: "
        "common practice, no source."
    ),
    compute=compute,
    example={"surface": "planed", "finish": "blend"},
)
