"""The mitered ends of a sprung molding: settings, lay at the saw, and what they change."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.geometry.compound import end_adds, miter_and_tilt
from sawside.geometry.miter import half_corner
from sawside.lengths.real import Exact, sign
from sawside.lengths.show import angle_text
from sawside.reckoners.miters.shared.compound_saw import OTHER, Lay, lay, told
from sawside.reckoners.miters.shared.corner_field import corner_of

KINDS = {"inside": "Inside corner", "outside": "Outside corner", "square": "Square"}
EDGES = {"top": "top edge", "bottom": "bottom edge"}


@dataclass(frozen=True, slots=True)
class Cut:
    """A mitered end: what the saw is set to, how the piece lies, and what the top edge gains."""

    side: str
    kind: str
    corner: Fraction
    miter: Exact
    tilt: Exact
    laid: Lay
    ratio: Exact
    adds: Exact | None


def cut_of(given, spring, side):
    """The cut of one end, None where it is square."""
    kind = getattr(given, f"{side}_end")
    if kind == "square":
        return None
    outside = kind == "outside"
    corner = corner_of(given, f"{side}_corner", most=175, outside=outside)
    miter, tilt = miter_and_tilt(spring.lean, corner)
    return Cut(
        side,
        kind,
        corner,
        miter,
        tilt,
        lay(side, outside, outside, given.tilts, given.measured_on),
        _adds(spring.lean.sine, corner, outside),
        None if spring.width is None else _adds(spring.projection, corner, outside),
    )


def _adds(out, corner, outside):
    return end_adds(out, corner) * (1 if outside else -1)


def edges_of(given, show, spring, cuts):
    """Both edges in inches, or None where no length was measured.

    Raises `Refusal` where the face width is missing, or nothing is left of the other edge.
    """
    if given.measured is None:
        return None
    if spring.width is None:
        raise Refusal(
            "missing",
            "Face width is blank: without it the other edge can't be found.",
            "Fill it in, or leave the length blank.",
            field="width",
        )
    known, other = given.measured_on, OTHER[given.measured_on]
    # An outside and an inside corner that are alike cancel out, exactly.
    alike = len(cuts) == 2 and cuts[0].corner == cuts[1].corner and cuts[0].kind != cuts[1].kind
    grows = Fraction(0) if alike else sum((cut.adds for cut in cuts), Fraction(0))
    found = given.measured + (grows if known == "bottom" else -grows)
    if sign(found) <= 0:
        raise Refusal(
            "impossible",
            f"Nothing is left of the {EDGES[other]}: the corners take {show.text(abs(grows))} of "
            f"{show.text(given.measured)}.",
            "Give a longer piece, or a narrower molding.",
            field="measured",
        )
    return {known: given.measured, other: found}


def flat_text(cut):
    """How an end is cut with the molding flat on its back."""
    return f"{KINDS[cut.kind]}, face up: {told(cut.laid, cut.miter, cut.tilt, EDGES)}"


def held_text(cut):
    """How an end is cut with the molding upside down in its place."""
    turn = angle_text(half_corner(cut.corner), 2)
    return (
        "Top edge on the table, bottom edge against the fence: front of the saw turned to the "
        f"{cut.laid.turn}, to {turn}, blade upright. Mark the bottom edge; keep the part to the "
        f"{cut.side} of the blade."
    )


def end_text(cut):
    """The settings of an end as a drawing shows them."""
    return f"{angle_text(cut.miter)}, tilt {angle_text(cut.tilt)}" if cut else "square"
