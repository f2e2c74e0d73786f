"""How a leaning piece lies at the saw for a compound cut: shared by crown and sloped boxes."""

from dataclasses import dataclass

from sawside.lengths.real import sign
from sawside.lengths.show import angle_text
from sawside.reckoners.declaration import choice

OTHER = {"left": "right", "right": "left", "top": "bottom", "bottom": "top"}

TILTS = choice(
    "tilts",
    "The saw tilts",
    {"both": "Both ways", "left": "To the left only", "right": "To the right only"},
    help="Where the top of the blade goes, as seen from the front of the saw.",
)


@dataclass(frozen=True, slots=True)
class Lay:
    """One end at the saw, seen from the front: the way that the front of the saw is turned, the
    way that the top of the blade leans, the edge at the fence, and the side that is kept."""

    turn: str
    tilt: str
    fence: str
    keep: str


def lay(end, top_longer, face_longer, tilts, fence):
    """How an end is cut with its face up.

    `end` is "left" or "right" as one sees the piece in its place; `top_longer` says that the cut
    leaves the top edge the longer one, `face_longer` the face longer than the back. A saw that
    tilts one way only decides which edge lies at the fence, else it is `fence`.
    """
    keep = OTHER[end]
    turn = keep if top_longer else end
    tilt = end if face_longer else keep
    # With the bottom at the fence the piece has been turned end for end: the turn stays.
    if (fence if tilts == "both" else "top" if tilts == tilt else "bottom") == "top":
        return Lay(turn, tilt, "top", keep)
    return Lay(turn, OTHER[tilt], "bottom", OTHER[keep])


def steps(laid, miter, tilt):
    """The same in steps that are short enough to be read from afar."""
    turned = (f"turned {laid.turn}", angle_text(miter, 2)) if sign(miter) else ("saw straight",)
    leaned = (f"tilted {laid.tilt}", angle_text(tilt, 2)) if sign(tilt) else ("blade upright",)
    return (*turned, *leaned, f"{laid.fence} edge to fence")


def told(laid, miter, tilt, edges):
    """The lay in words with its settings; `edges` names the top and the bottom edge."""
    turned = (
        f"front of the saw turned to the {laid.turn}, to {angle_text(miter, 2)}"
        if sign(miter)
        else "saw straight at 0"
    )
    leaned = (
        f"top of the blade tilted to the {laid.tilt}, to {angle_text(tilt, 2)}"
        if sign(tilt)
        else "blade upright"
    )
    return (
        f"{edges[laid.fence]} marked and at the fence, {turned}, {leaned}. Keep the part to the "
        f"{laid.keep} of the blade."
    )
