"""How a leaning piece lies at the saw for a compound cut: shared by crown and sloped boxes."""

from dataclasses import dataclass

from sawside.geometry.end import End, Jig
from sawside.lengths.real import Exact, sign
from sawside.lengths.show import angle_text
from sawside.reckoners.fields import choice

OTHER = {"left": "right", "right": "left", "top": "bottom", "bottom": "top"}
EDGES = {"top": "top edge", "bottom": "bottom edge"}

TILTS = choice(
    "tilts",
    "Saw bevels",
    {"both": "Both ways", "left": "Left only", "right": "Right only"},
    help="Which way the top of the blade leans, from the front.",
)


@dataclass(frozen=True, slots=True)
class Lay:
    """One end at the saw, seen from the front: the way that the front of the saw is turned, the
    way that the top of the blade leans, the edge at the fence, the side that is kept; and how it is
    cut square to the fence."""

    turn: str
    tilt: str
    fence: str
    keep: str
    jig: Jig


def lay(end, top_longer, face_longer, tilts, fence):
    """How an end is cut with its face up.

    `end` is "left" or "right" as one sees the piece in its place; `top_longer` says that the cut
    leaves the top edge the longer one, `face_longer` the face longer than the back. A saw that
    tilts one way only decides which edge lies at the fence, else it is `fence`.
    """
    keep = OTHER[end]
    turn = keep if top_longer else end
    tilt = end if face_longer else keep
    # Square to the fence the saw is turned to the other side. What is kept runs to the front: where
    # it lay on the side of the turn the blade leans as it did, else the work came the other way.
    leans = tilt if turn == keep else OTHER[tilt]
    jig = Jig(OTHER[turn], leans, tilts in ("both", leans))
    # With the bottom at the fence the piece has been turned end for end: the turn stays.
    if (fence if tilts == "both" else "top" if tilts == tilt else "bottom") == "top":
        return Lay(turn, tilt, "top", keep, jig)
    return Lay(turn, OTHER[tilt], "bottom", OTHER[keep], jig)


@dataclass(frozen=True, slots=True)
class CompoundCut:
    """What the saw is turned to and the blade tilted to, in degrees, and how the piece lies."""

    miter: Exact
    tilt: Exact
    laid: Lay

    @property
    def brief(self):
        """The settings as a drawing shows them."""
        return f"miter {angle_text(self.miter)}, bevel {angle_text(self.tilt)}"

    @property
    def at_the_saw(self):
        """The lay in words with its settings."""
        laid, miter, tilt = self.laid, angle_text(self.miter), angle_text(self.tilt)
        turned, leaned = "miter 0", "bevel 0"
        if sign(self.miter):
            turned = f"miter {laid.turn} {miter}"
        if sign(self.tilt):
            leaned = f"bevel {laid.tilt} {tilt}"
        return (
            f"{EDGES[laid.fence]} against the fence, {turned}, {leaned}. Keep the part to the "
            f"{laid.keep} of the blade."
        )

    @property
    def end(self):
        """The end of a part that is cut so; a side that stands upright needs the tilt alone."""
        miter, tilt = angle_text(self.miter), angle_text(self.tilt)
        if not sign(self.miter):
            return End("edge" if sign(self.tilt) else "square", tilt, tilted=self.tilt)
        return End(
            "compound",
            f"{miter} {tilt}",
            self.miter,
            self.tilt,
            self._steps(miter, tilt),
            self.laid.jig,
        )

    def _steps(self, miter, tilt):
        """The same in steps that are short enough to be read from afar."""
        leaned = (f"bevel {self.laid.tilt}", tilt) if sign(self.tilt) else ("bevel 0",)
        return (f"miter {self.laid.turn}", miter, *leaned, f"{self.laid.fence} edge to fence")
