"""The sides of a sloping box at both rims, and what can't be one."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.geometry.compound import lean_of_degrees, lean_of_legs
from sawside.lengths.real import Exact, sign
from sawside.reckoners.miters.shared.compound_saw import OTHER


@dataclass(frozen=True, slots=True)
class Side:
    """One kind of side: its outside face at top and bottom, and how many there are, in inches."""

    key: str
    name: str
    count: int
    top: Exact
    bottom: Exact


def check(given):
    """Refuse what is reckoned for four sides only."""
    if given.sides == 4:
        return
    what = {
        "joint": "Butt joints" if given.joint == "butt" else None,
        "other": "Two lengths of side" if given.other is not None else None,
    }
    for field, name in what.items():
        if name:
            raise Refusal(
                "impossible",
                f"{name} are reckoned for four sides only, and {given.sides} were given.",
                "Choose miters." if field == "joint" else "Leave the other length blank.",
                field=field,
            )


def lean_of(given):
    """(lean, how far a side reaches out over the height, in inches)."""
    if given.found == "reach":
        return lean_of_legs(given.reach, given.height), given.reach
    lean = lean_of_degrees(given.slope)
    return lean, given.height * lean.sine / lean.cosine


def sides_of(given, show, adds, through):
    """The kinds of sides; `through` is what a butt joint takes off each end of two of them.

    Raises `Refusal` where the sides meet before the narrow rim.
    """
    grows = 2 * adds * (1 if given.size_at != given.wide else -1)
    sizes = [("size", given.size)]
    if given.other is not None or given.joint == "butt":
        sizes.append(("other", given.size if given.other is None else given.other))
    names = ["Side"] if len(sizes) == 1 else ["Front and back", "End"]
    if given.joint == "butt":
        names = ["Through side", "Side between"]
    sides = []
    for number, ((field, size), name) in enumerate(zip(sizes, names, strict=True)):
        less = 2 * through if number else Fraction(0)
        found = {given.size_at: size - less, OTHER[given.size_at]: size + grows - less}
        narrow = found[OTHER[given.wide]]
        if sign(narrow) <= 0:
            raise Refusal(
                "impossible",
                f"The sides meet before the {OTHER[given.wide]}: their slope takes "
                f"{show.text(2 * adds + less)} of {show.text(found[given.wide] + less)}.",
                "Give a longer side, less height or less slope.",
                field=field if getattr(given, field) is not None else "size",
            )
        many = given.sides if len(sizes) == 1 else 2
        sides.append(Side(f"side_{number + 1}", name, many, found["top"], found["bottom"]))
    return sides
