"""Which screw goes into which stud behind a case, and how long it is."""

from sawside.drawing.installing.studs_behind import studs_behind
from sawside.errors import Refusal
from sawside.reckoners.declaration import Reckoner, Reckoning
from sawside.reckoners.installing.shared.studs.cautions import cautions_of
from sawside.reckoners.installing.shared.studs.fields import BASIC, EXAMPLE, FIELDS
from sawside.reckoners.installing.shared.studs.placed import bays_of, studs_of
from sawside.reckoners.installing.shared.studs.screw import screw_into_stud
from sawside.reckoners.installing.shared.studs.told import (
    ANSWERS,
    answers_of,
    verdict_of,
    working_of,
)


def compute(given, show):
    """The place of each screw (inches from the left), its length, and where no stud is."""
    _check_strips(given, show)
    studs, screw = studs_of(given, show), screw_into_stud(given, show)
    found = any(stud.screw for stud in studs)
    return Reckoning(
        answers=answers_of(given, show, studs, screw),
        working=tuple(working_of(given, show, studs, screw)),
        drawing=studs_behind(show, given, studs, bays_of(given, show)),
        cautions=cautions_of(given, show, studs, screw),
        main="screw" if found else "without",
        verdict=verdict_of(show, studs),
        fixes=() if found else (("Move the case", "left"), ("Check the studs", "studs")),
    )


def _check_strips(given, show):
    for row, strip in enumerate(given.strips or ()):
        if given.height is not None and strip >= given.height:
            raise Refusal(
                "impossible",
                f"A strip centered {show.text(strip)} up is above a case "
                f"{show.text(given.height)} high.",
                "Measure to its center, from the case’s bottom.",
                field="strips",
                row=row,
            )


RECKONER = Reckoner(
    key="studs",
    title="Studs behind a case",
    asks="Where do I screw the case into the studs, and with which screw?",
    words=(
        "studs, stud, stud finder, stud spacing, stud layout, find studs, hang a "
        "cabinet, hang cabinets, screw to the wall, fasten to studs, cabinet "
        "screw, hanging rail, nailer, back strip, install, installing, wall cabinet, blocking"
    ),
    order=1410,
    job="putting it up",
    picture={
        "wood": "M8 2h4v36H8zM28 2h4v36h-4z",
        "ink": "M3 9h34v22H3zM3 15h34",
        "chalk": "M10 10v4M8 12h4M30 10v4M28 12h4",
    },
    basic=BASIC,
    fields=FIELDS,
    answers=ANSWERS,
    source=(
        "Arithmetic. Studs 1 1/2″ wide: PS 20; 16″ and 24″ on center: International Residential "
        "Code R602.3, from memory. Bite of six diameters: NDS 12.1.5.6 (read in a secondary copy), "
        "an inch or more, 3/8″ of stud beside a screw’s center at the worst, and the room for a "
        "driver: common practice, no source. 1 1/4″ from a stud’s edge: National Electrical Code "
        "300.4, from memory. Stock lengths and pilot bit as in Wood screws."
    ),
    compute=compute,
    example=EXAMPLE,
)
