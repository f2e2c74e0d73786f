"""The sizes of a case, outside and inside, and of its bays; what can't be is refused. Inches.

Places are x from the left outside, y from the finished front, z from the floor.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.reckoners.case.shared.carcass.bays import Bays, bays_of
from sawside.reckoners.case.shared.carcass.fixed_shelves import FixedShelves, fixed_shelves_of

NONE = Fraction(0)


@dataclass(frozen=True, slots=True)
class Sizes:
    """A case as it was asked for; what it doesn't have is 0.

    `joint` is how far each part goes into the next one, `seat` how far the back goes into rabbet
    or groove and `room` how much smaller it is than that each way, `behind` what is left behind the
    back, `case_band` and `shelf_band` the solid edging on the front of case and shelves, None
    without any; `proud` is in front of the depth. `known` says of each dimension whether its
    "outside" was given.
    """

    width: Fraction
    height: Fraction
    depth: Fraction
    inside_width: Fraction
    inside_height: Fraction
    inside_depth: Fraction
    thickness: Fraction
    shelf_thickness: Fraction
    joint: Fraction
    top: str
    back: str
    back_thickness: Fraction
    seat: Fraction
    room: Fraction
    behind: Fraction
    kick: str
    kick_height: Fraction
    recess: Fraction
    end_recess: Fraction
    shared: Bays
    heights: FixedShelves
    adjustable: int
    setback: Fraction
    gap: Fraction
    case_band: Fraction | None
    shelf_band: Fraction | None
    proud: bool
    known: dict[str, bool]

    @property
    def bays(self):
        """The clear width of each bay from the left, as the dividers are marked."""
        return self.shared.clear

    @property
    def dividers(self):
        """How many there are."""
        return len(self.bays) - 1

    @property
    def fixed(self):
        """How many fixed shelves are in each bay."""
        return len(self.heights.lows)

    @property
    def floor(self):
        """The upper face of the bottom, from the bottom end of the sides."""
        return self.kick_height - self.foot + self.thickness

    @property
    def foot(self):
        """Where the bottom ends of the sides are: on a separate base, or on the floor."""
        return self.kick_height if self.kick == "base" else NONE

    @property
    def front(self):
        """Where the panels of the case begin: behind edging that is within the depth."""
        return NONE if self.proud else self.case_band or NONE

    @property
    def strip_front(self):
        """Where the edging of a shelf begins."""
        return self.setback - ((self.shelf_band or 0) if self.proud else 0)

    @property
    def rear(self):
        """Where the sides end."""
        return self.depth - (self.back_thickness if self.back == "on" else 0)

    @property
    def bottom_rear(self):
        """Where the bottom ends, and a top between the sides: a back in a rabbet covers them."""
        return self.depth - (self.back_thickness if self.back in ("on", "rabbet") else 0)

    @property
    def shelf_front(self):
        """Where a shelf's panel begins: never in front of the panels that it goes into."""
        return max(self.strip_front + (self.shelf_band or 0), self.front)

    @property
    def band_goes_in(self):
        """Whether a shelf's edging goes into the dado with it: it is all behind that of the
        case."""
        return self.shelf_band is not None and self.strip_front >= self.front

    @property
    def bay_starts(self):
        """The left face of each bay, from the inside of the left side."""
        starts = [NONE]
        for bay in self.bays[:-1]:
            starts.append(starts[-1] + bay + self.thickness)
        return starts


def sizes_of(given, show):
    """The `Sizes` of a form; "impossible" where something has no room."""
    known = {
        each: (getattr(given, f"{each}_is") if given.known == "each" else given.known) == "outside"
        for each in ("width", "height", "depth")
    }
    kick = NONE if given.kick == "none" else given.kick_height
    back = NONE if given.back == "none" else given.back_thickness
    behind = given.behind if given.back == "groove" else NONE
    around = {
        "width": 2 * given.thickness,
        "height": 2 * given.thickness + kick,
        "depth": back + behind,
    }
    inside = {
        each: getattr(given, each) - (taken if known[each] else 0) for each, taken in around.items()
    }
    for each, clear in inside.items():
        if clear <= 0:
            raise _no_room(each, around[each], show)
    joinery = _joinery(given, kick)
    return Sizes(
        **{each: inside[each] + taken for each, taken in around.items()},
        **{f"inside_{each}": clear for each, clear in inside.items()},
        **joinery,
        back_thickness=back,
        behind=behind,
        heights=fixed_shelves_of(given, inside["height"], joinery["shelf_thickness"], show),
        shared=bays_of(given, inside["width"], joinery["joint"], show),
        known=known,
    )


def _joinery(given, kick):
    """The thicknesses, joints, toe kick, shelves and edging, as they were filled in."""
    band = given.band if given.banding != "none" else None
    seats = {"rabbet": given.rabbet_depth, "groove": given.groove_depth}
    return {
        "thickness": given.thickness,
        "shelf_thickness": given.shelf_thickness or given.thickness,
        "joint": given.joint_depth if given.joint == "dado" else NONE,
        "top": given.top,
        "back": given.back,
        "seat": seats.get(given.back, NONE),
        "room": given.back_room if given.back in seats else NONE,
        "kick": given.kick,
        "kick_height": kick,
        "recess": NONE if given.kick == "none" else given.recess,
        "end_recess": given.end_recess if given.kick == "base" else NONE,
        "adjustable": given.adjustable,
        "setback": given.setback,
        "gap": given.gap,
        "case_band": band if given.banding in ("all", "case") else None,
        "shelf_band": band if given.banding in ("all", "shelves") else None,
        "proud": given.solid_edging == "proud",
    }


_PARTS = {
    "width": "The two sides",
    "height": "The toe kick, bottom and top",
    "depth": "The back and what’s behind it",
}


def _no_room(each, taken, show):
    return Refusal(
        "impossible",
        f"{_PARTS[each]} take up {show.text(taken)}, which leaves no {each} inside.",
        f"Enter a bigger {each} or thinner parts.",
        field=each,
    )
