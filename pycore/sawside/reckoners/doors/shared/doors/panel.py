"""The panel of a door: how big it is cut, and what of it is held. Inches, exact."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.marks import Rounded
from sawside.lengths.real import Exact, sign


@dataclass(frozen=True, slots=True)
class Panel:
    """One panel: its room at its tightest and its `sizes` as cut, both (width, height); `grown`
    how many times today's size it gets along each. `held` at each edge across the grain when it
    is at its driest, and its `gap` there now, are None but of solid wood."""

    room: tuple[Fraction, Fraction]
    grown: tuple[Exact, Exact]
    sizes: tuple[Rounded, Rounded]
    clearance: Fraction
    across: int
    held: Exact | None = None
    gap: Exact | None = None


def panel_of(given, show, frame, board):
    """The `Panel` that goes into each opening of a frame; "impossible" where none is held."""
    field = "glass_clearance" if given.made == "glass" else "clearance"
    clearance = getattr(given, field)
    _check_thickness(given, show)
    if clearance >= given.groove:
        noun = "rabbet" if given.made == "glass" or given.hold == "rabbet" else "groove"
        raise Refusal(
            "impossible",
            f"The clearance {show.text(clearance)} takes up the whole {noun}, "
            f"{show.text(given.groove)} deep.",
            f"Make it less than {show.text(given.groove)}, or cut the {noun} deeper.",
            field=field,
        )
    room = tuple(each + 2 * (given.groove - clearance) for each in frame.inside)
    across = 1 if given.grain == "across" else 0
    grown = [Fraction(1), Fraction(1)]
    if board is not None:
        grown[across] = board.grown
    sizes = tuple(
        show.rounded(each / more, "go in") for each, more in zip(room, grown, strict=True)
    )
    if board is None:
        return Panel(room, tuple(grown), sizes, clearance, across)
    cut, inside = sizes[across].mark, frame.inside[across]
    held = (cut - board.shrinkage(cut) - inside) / 2
    _check_held(held)
    gap = (inside + 2 * given.groove - cut) / 2
    return Panel(room, tuple(grown), sizes, clearance, across, held, gap)


def _check_held(held):
    if sign(held) <= 0:
        raise Refusal(
            "impossible",
            "At its driest, the panel comes out of the groove or rabbet.",
            "Cut it deeper, or split the panel with a middle member.",
            field="groove",
        )


def _check_thickness(given, show):
    if given.made == "glass":
        if given.deep >= given.thickness:
            raise Refusal(
                "impossible",
                f"A rabbet {show.text(given.deep)} from the back cuts through a door "
                f"{show.text(given.thickness)} thick.",
                f"Make it less than {show.text(given.thickness)}.",
                field="deep",
            )
        if given.panel > given.deep:
            raise Refusal(
                "impossible",
                f"Glass {show.text(given.panel)} thick stays proud of a rabbet "
                f"{show.text(given.deep)} from the back.",
                f"Use glass {show.text(given.deep)} thick at most, or a deeper rabbet.",
                field="panel",
            )
    elif given.panel > given.thickness:
        raise Refusal(
            "impossible",
            f"A panel {show.text(given.panel)} thick is thicker than the door, "
            f"{show.text(given.thickness)}.",
            f"Make it {show.text(given.thickness)} at most.",
            field="panel",
        )
