"""One end of a piece that is cut at an angle: how it is asked for, and the end that this makes."""

from sawside.drawing.choices.ends import ENDS as PICTURES
from sawside.errors import Refusal
from sawside.geometry.mitered_end import STEEPEST, end_at_corner, end_at_unequal, end_of
from sawside.reckoners.fields import angle, choice, length
from sawside.reckoners.miters.shared.corner_field import FLATTEST, corner_field, corner_of
from sawside.reckoners.miters.shared.field_bounds import ACROSS

_ENDS = {
    "square": "Square",
    "45": "45° miter",
    "other": "Other angle",
    "edge": "Bevel",
    "corner": "Half of a corner",
    "unequal": "Unequal widths",
}

_ENDS_HELP = "A miter cuts across the face. A bevel cuts through the thickness."


def end_fields(side):
    """The fields of the "left" or the "right" end; what its choice does not need is hidden."""
    end, name = f"{side}_end", side.capitalize()
    return (
        choice(
            end,
            f"{name} end",
            _ENDS,
            pictures=PICTURES[side],
            default="45",
            help=_ENDS_HELP if side == "left" else "",
            in_short=f"{{}} {side} end",
        ),
        angle(
            f"{side}_angle",
            f"{name} end angle",
            help="What the saw’s scale reads: 0 is square.",
            most=str(STEEPEST),
            shown_when=(end, ("other",)),
        ),
        angle(
            f"{side}_tilt",
            f"{name} end bevel",
            help="What the saw’s bevel scale reads: 0 is square. Half a square corner is 45.",
            default="45",
            most=str(STEEPEST),
            shown_when=(end, ("edge",)),
        ),
        corner_field(
            f"{side}_corner",
            f"Corner at the {side} end",
            "the two pieces",
            least=20,
            shown_when=(end, ("corner", "unequal")),
        ),
        length(
            f"{side}_neighbor",
            f"Width of the piece at the {side} end",
            help="Stock width of the piece it meets.",
            **ACROSS,
            shown_when=(end, ("unequal",)),
        ),
    )


ASKED = tuple(
    f"{side}_{each}"
    for side in ("left", "right")
    for each in ("end", "angle", "tilt", "corner", "neighbor")
)
"""The keys of the fields of both ends."""


def cut_end(given, show, side):
    """The `geometry.mitered_end.MiteredEnd` that the fields of one end describe.

    Errors: "missing" for a thickness that an edge miter needs, and those of unequal widths.
    """
    kind, typed, tilt, neighbor = (
        getattr(given, f"{side}_{each}") for each in ("end", "angle", "tilt", "neighbor")
    )
    corner = corner_of(given, f"{side}_corner", most=FLATTEST)
    if kind == "edge":
        if given.thickness is None:
            raise Refusal(
                "missing",
                f"The {side} end is a bevel, which cuts through the thickness, and Stock "
                "thickness is blank.",
                "Fill it in, or choose a miter.",
                field="thickness",
            )
        return end_of(side, "edge", tilt, given.thickness)
    if kind == "corner":
        return end_at_corner(side, given.width, corner)
    if kind == "unequal":
        try:
            return end_at_unequal(show, side, given.width, neighbor, corner)
        except Refusal as refusal:
            raise refusal.of(f"{side}_neighbor") from None
    return end_of(side, "flat", {"square": 0, "45": 45}.get(kind, typed), given.width)
