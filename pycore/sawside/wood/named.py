"""Which wood or panel of the tables a typed name means, to weigh it; none is guessed."""

import re

from sawside.wood.materials import MATERIALS
from sawside.wood.own import made_of

_CALLED = {
    "alder": "alder_red",
    "cherry": "cherry_black",
    "hard maple": "maple_sugar",
    "rock maple": "maple_sugar",
    "soft maple": "maple_red",
    "poplar": "yellow_poplar",
    "tulip poplar": "yellow_poplar",
    "red oak": "oak_northern_red",
    "white oak": "oak_white",
    "walnut": "walnut_black",
    "ash": "ash_white",
    "beech": "beech_american",
    "white pine": "pine_eastern_white",
    "douglas fir": "douglas_fir_coast",
    "douglas-fir": "douglas_fir_coast",
}
"""What a lumberyard calls a wood that the tables call otherwise (Wood Handbook, chapter 2, from
memory). A name that may mean several, as pine or birch, is not here."""

_PANELS = {"plywood": "plywood", "ply": "plywood", "mdf": "mdf", "osb": "osb"} | dict.fromkeys(
    ("particleboard", "chipboard"), "particleboard"
)
_WORDS = re.compile(r"[^\W\d_]+")


def material_named(text, own, *, panel):
    """The `Material` with a weight that a typed name means, or None.

    `own` are the person's own (`OwnMaterial`), looked at first. A sheet is a `panel`: one called
    "red oak" has a face of it and no more, so only a panel's name tells its weight.
    """
    name = " ".join(text.split()).casefold()
    if not name:
        return None
    for each in own:
        if each.name.casefold() == name:
            return made_of(each) if each.weight else None
    words = set(_WORDS.findall(name))
    if panel:
        found = {_PANELS[word] for word in words if word in _PANELS}
        return MATERIALS[found.pop()] if len(found) == 1 else None
    wood = MATERIALS[_CALLED[name]] if name in _CALLED else _species(words)
    return wood if wood and wood.weight else None


def _species(words):
    """The one species whose name has all these words, one of its genus among them."""
    found = [each for each in MATERIALS.values() if each.kind == "species" and _is(each, words)]
    return found[0] if len(found) == 1 else None


def _is(material, words):
    genus = set(_WORDS.findall(material.name.casefold().partition(",")[0]))
    return bool(words & genus) and words <= set(_WORDS.findall(material.name.casefold()))
