"""How far a hinged door swings before it touches. Inches and degrees, exact.

Seen from above, the door is closed from x = 0, its hinge edge, to x = width, from y = 0, its back,
to y = thickness, its face. It turns about a fixed pin, its free edge towards y. A point that lies
A past the pin and B before it is, after a turn by an angle, at x = pin + A cos − B sin. It meets a
wall at x = −wall at 90° + arcsin((wall + pin) ÷ R) − the direction of (A, B), R being how far it
is from the pin. The handle meets a neighbor's front, which goes on in the plane of the face on the
other side of the pin, at 180° + arcsin(out ÷ R) − that direction, the pin being `out` in front of
the face: plane trigonometry.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.geometry.angles import arctangent, arctangent_of_root
from sawside.lengths.fine import limit_text
from sawside.lengths.real import Exact, sign, sqrt

STOPS = {"butt": Fraction(180), "cup": Fraction(110)}
"""Degrees that a hinge opens by. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Corner:
    """A point of the door: so far `past` the pin, towards the free edge, and `before` it."""

    name: str
    past: Fraction
    before: Fraction

    @property
    def square(self) -> Fraction:
        """That of its distance from the pin."""
        return self.past**2 + self.before**2

    @property
    def radius(self) -> Exact:
        """Its distance from the pin."""
        return sqrt(self.square)

    def arcsine(self, part: Fraction) -> Exact:
        """Degrees whose sine is a part of its radius, -radius to radius; of rational numbers as
        long as it can be, since roots of roots are slow to compare."""
        if part < 0:
            return -self.arcsine(-part)
        rest = self.square - part * part
        return arctangent_of_root(part * part / rest) if rest else Fraction(90)

    @property
    def direction(self) -> Exact:
        """Degrees from the door's width, -90 to 180."""
        if self.past == 0:
            return Fraction(90 if self.before > 0 else -90 if self.before < 0 else 0)
        angle = arctangent(self.before / self.past)
        return angle if self.past > 0 else angle + 180


@dataclass(frozen=True, slots=True)
class Swing:
    """A door on its pin: `pin` from its hinge edge, `deep` from its back, both in inches; what
    touches first (`touch`, a `Corner` or None), `at` what angle, and what it meets (`meets`, "wall"
    or "neighbor"); the angle `opens`."""

    pin: Fraction
    deep: Fraction
    stops: Fraction
    touch: Corner | None
    at: Exact | None
    meets: str = "wall"

    @property
    def opens(self) -> Exact:
        """Degrees that the door opens to: until its hinge stops it, or it touches."""
        return self.stops if self.at is None else self.at


def swing_of(given, show):
    """The `Swing` of a form; "impossible" where handle or pin aren't on the door."""
    pin, deep = _pin(given, show)
    corners = [Corner("face of the hinge edge", -pin, given.thickness - deep)]
    corners.append(Corner("free edge", given.width - pin, given.thickness - deep))
    if given.handle:
        _check_handle(given, show)
        far = given.width - given.handle_from - pin
        tip = given.thickness + given.handle - deep
        corners += [Corner("handle", far, tip), Corner("handle", far - given.handle_wide, tip)]
    stops = STOPS[given.hinge] if given.stops is None else given.stops
    touch, at, meets = None, stops, "wall"
    for corner in corners if given.wall is not None else ():
        angle = _touches(corner, given.wall + pin)
        if angle is not None and sign(angle - at) < 0:
            touch, at = corner, angle
    if touch is not None and sign(at) <= 0:
        raise Refusal(
            "impossible",
            "The hinge edge touches the wall as soon as the door moves.",
            "Enter more room to the wall, or a hinge with its pivot nearer the face.",
            field="wall",
        )
    for corner in corners if given.neighbor == "yes" else ():
        out = deep - given.thickness
        if corner.name == "handle" and out * out < corner.square:
            angle = 180 + corner.arcsine(out) - corner.direction
            if sign(angle - at) < 0:
                touch, at, meets = corner, angle, "neighbor"
    return Swing(pin, deep, stops, touch, at if touch else None, meets)


def _pin(given, show):
    """(from the hinge edge, from the back) of the pin."""
    if given.hinge == "butt":
        return Fraction(0), given.thickness + given.out
    half = given.thickness / 2
    along = half if given.along is None else given.along
    behind = half if given.behind is None else given.behind
    for key, size, most in (("along", along, given.width / 2), ("behind", behind, given.thickness)):
        if size > most:
            raise Refusal(
                "impossible",
                f"A pivot {show.text(size)} in isn’t inside the door’s edge.",
                f"Make it {limit_text(most, show, 'stay under')} at most.",
                field=key,
            )
    return along, given.thickness - behind


def _check_handle(given, show):
    if given.handle_from + given.handle_wide > given.width:
        raise Refusal(
            "impossible",
            f"The handle ends {show.text(given.handle_from + given.handle_wide)} from the free "
            f"edge of a door {show.text(given.width)} wide.",
            f"Make both together {limit_text(given.width, show, 'stay under')} at most.",
            field="handle_wide" if given.handle_from < given.width else "handle_from",
        )


def _touches(corner, away):
    """Degrees at which a corner gets `away` inches behind the pin; None where it never does."""
    if away * away >= corner.square:
        return None
    return 90 + corner.arcsine(away) - corner.direction


@dataclass(frozen=True, slots=True)
class FreeEdge:
    """What the back corner of an inset door's free edge needs: the `gap` that it passes with
    square, and what to `bevel` off its back for the gap there is, 0 where it passes."""

    reach: Exact
    gap: Exact
    bevel: Exact
    angle: Exact


def free_edge_of(given, show, swing):
    """The `FreeEdge`, or None of an overlay door; "impossible" where no bevel helps.

    Its farthest place inside the frame is level with the pin, or in the plane of the frame's face
    where the pin is in front of that: √((width − pin)² + deep² − out²) from the pin.
    """
    if given.fit != "inset":
        return None
    past = given.width - swing.pin
    before = swing.deep**2 - max(swing.deep - given.thickness, Fraction(0)) ** 2
    reach = sqrt(past**2 + before)
    gap = reach - past
    if sign(gap - given.gap) <= 0:
        return FreeEdge(reach, gap, Fraction(0), Fraction(0))
    room = (past + given.gap) ** 2 - before
    bevel = past - sqrt(room) if room > 0 else past
    if room <= 0 or bevel >= past / 2:
        raise Refusal(
            "impossible",
            f"A door {show.text(given.thickness)} thick and {show.text(given.width)} wide can’t "
            "swing out of its opening.",
            "Make it thinner or wider, or use overlay doors.",
            field="thickness",
        )
    return FreeEdge(reach, gap, bevel, arctangent(bevel / given.thickness))


@dataclass(frozen=True, slots=True)
class DrawerNeeds:
    """Degrees that a door opens by before a drawer passes its `free` edge, and the back of its
    `hinged` edge where that swings into the way as well, else None."""

    free: Exact
    hinged: Exact | None

    @property
    def angle(self) -> Exact:
        """Before it passes both."""
        return self.free if self.hinged is None else max(self.free, self.hinged)


def drawer_needs(given, show, swing):
    """The `DrawerNeeds`, or None without a drawer; "impossible" where none is behind the door."""
    if given.drawer is None:
        return None
    if given.drawer > given.width:
        raise Refusal(
            "impossible",
            f"A drawer {show.text(given.drawer)} from the hinge edge isn’t behind a door "
            f"{show.text(given.width)} wide.",
            f"Make it {limit_text(given.width, show, 'stay under')} at most.",
            field="drawer",
        )
    room = given.drawer - swing.pin
    free = Corner("back of the free edge", given.width - swing.pin, -swing.deep)
    needs = 90 - free.arcsine(room) - free.direction
    hinged = Corner("back of the hinge edge", -swing.pin, -swing.deep)
    if not swing.deep or (room > 0 and room * room >= hinged.square):
        return DrawerNeeds(needs, None)
    # The hinge edge is past the drawer's side from `lean + rise` to `lean + 180 - rise`.
    lean, rise = arctangent(swing.pin / swing.deep), hinged.arcsine(room)
    clears = lean + 180 - rise
    return DrawerNeeds(needs, clears if needs > lean + rise and needs < clears else None)
