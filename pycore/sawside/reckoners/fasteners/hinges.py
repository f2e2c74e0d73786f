"""The hinges of a door: how many, and where they go clear of the shelves."""

from sawside.drawing.fasteners.hung_door import hung_door
from sawside.lengths.words import counted
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fasteners.shared.hinges.fields import FIELDS
from sawside.reckoners.fasteners.shared.hinges.places import hung
from sawside.reckoners.fasteners.shared.hinges.told import hinge_cautions, hinge_working
from sawside.reckoners.shared.numbered import numbered


def compute(given, show):
    """The centers and bottom ends from the door's bottom edge (inches), how many, the weight."""
    found = hung(given, show)
    centers = found.centers
    answers = {
        "centers": numbered("Hinge", centers),
        "starts": numbered("Hinge", [each - given.hinge / 2 for each in centers]),
        "count": len(centers),
    }
    if found.pounds is not None:
        answers["weight"] = found.pounds
    return Reckoning(
        answers=answers,
        working=tuple(hinge_working(given, show, found)),
        drawing=hung_door(show, given, centers, _words(show, centers)),
        cautions=tuple(hinge_cautions(given, found)),
        verdict=f"{counted(len(centers), 'hinge')}, centers from the bottom",
    )


def _words(show, centers):
    places = ", ".join(show.brief(each) for each in centers)
    return f"A door with {len(centers)} hinges, their centers {places} from its bottom edge."


RECKONER = Reckoner(
    key="hinges",
    title="Hinge layout",
    asks="How many hinges does this door take, and where do they go?",
    words=(
        "hinge, hinges, door hinge, cabinet door hinge, hinge spacing, hinge layout, how many "
        "hinges, hinge placement, hinge location"
    ),
    order=820,
    job="screws and hinges",
    picture={
        "wood": "M12 3h24v34H12z",
        "ink": "M8 8h8v7H8zM8 25h8v7H8z",
        "chalk": "M24 12v16m-3-3l3 3 3-3M21 15l3-3 3 3",
    },
    basic=("height", "width", "hinge", "shelves"),
    fields=FIELDS,
    answers=(
        Answer("centers", "Centers, from the door’s bottom", "lengths", must="agree"),
        Answer("starts", "Bottom end of each hinge", "lengths", must="agree"),
        Answer("count", "Hinges", "count"),
        Answer("weight", "Door weight", "weight"),
    ),
    source=(
        "Arithmetic. Common practice, no source: two hinges up to 40 in, three up to 60, four up "
        "to 80, one more for each 20 beyond; end hinges their own length from the door’s ends, "
        "from 2 to 4 in; the others evenly between. By weight: the rating of the hinge’s maker. "
        "Weight: Wood Handbook, specific gravity at 12% moisture; panels common practice, no "
        "source."
    ),
    compute=compute,
    example={"height": "48", "width": "17 1/4", "hinge": "2 1/2", "shelves": ["14 1/4", "23 1/2"]},
)
