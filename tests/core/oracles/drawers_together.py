"""A drawer put together from its told parts in its opening, as boxes in exact inches.

It knows what a carpenter knows who was given the list and what was asked for: which part goes
where, which joint is cut in it, that the bottom is pushed to the front of its groove. It shares no
formula with the question, and nothing of the project is imported. Space is divided at every face
into cells; each cell must hold as many parts as it should.

x goes from the left of the opening, y from its front to the back, z up from its bottom.
"""

from fractions import Fraction

from tests.core.oracles.cells import cells_of

FINGERS = ("box", "dovetail", "half_blind")
"""Joints where both parts take turns in the whole corner."""

BUTT = ("butt", "dowel")


class Solid:
    """Boxes (x0, x1, y0, y1, z0, z1), and boxes cut out of them."""

    def __init__(self, name, boxes, cuts=()):
        self.name, self.boxes = name, [each for each in boxes if _is_there(each)]
        self.cuts = [each for each in cuts if _is_there(each)]

    @property
    def faces(self):
        """Every box whose faces divide the space."""
        return [*self.boxes, *self.cuts]

    def cells(self, planes):
        """Its cells, without those cut out."""
        own = {cell for box in self.boxes for cell in cells_of(box, planes)}
        return own - {cell for cut in self.cuts for cell in cells_of(cut, planes)}


def _is_there(box):
    return box[0] < box[1] and box[2] < box[3] and box[4] < box[5]


class Drawer:
    """A drawer in place. `asked` holds what was asked for, `parts` the told size of each part as
    (length, width), both in exact inches; `swells` is how many times as wide solid wood is. What
    is off the marks is rounded down, so only corners of what is `on_marks` are sure to be filled.
    """

    def __init__(self, asked, parts, swells=Fraction(1)):
        self.asked, self.parts, self.swells = asked, parts, swells
        self.applied = asked.made == "applied"
        self.front_end = asked.end if self.applied else asked.face
        self.back_joint = asked.back_joint
        self.inside = self._inside()
        self.left = (asked.width - self.inside) / 2
        self.right = self.left + self.inside
        self.low = asked.below if asked.runs != "wood" else Fraction(0)
        self._along()

    def _inside(self):
        """The clear width: what spans the box from joint to joint decides it."""
        joint = self.asked.front_joint if self.applied else self.back_joint
        span = self.parts["front" if self.applied else "back"][0]
        return span - 2 * self.reach(joint)

    def reach(self, joint):
        """How far a front or back goes into each side, or over it."""
        if joint in FINGERS:
            return self.asked.side
        return Fraction(0) if joint in BUTT else self.asked.joint_depth

    def _along(self):
        """The places from front to back."""
        asked = self.asked
        self.behind = asked.face if asked.front == "inset" else Fraction(0)
        start = self.behind
        if self.applied:
            self.inner = self.behind + asked.end
            if asked.front_joint == "half_blind":
                start += asked.blind
        else:
            self.inner = self.behind
            if asked.front_joint not in BUTT:
                start -= asked.face - asked.blind
        self.start = start
        self.rear = start + self.parts["side"][0]
        self.back_rear = self.rear - (asked.back_in if self.back_joint == "dado" else 0)
        self.back_front = self.back_rear - asked.end

    @property
    def height(self):
        """Of the sides, swollen where they are solid."""
        grows = self.swells if self.asked.solid in ("box", "both") else 1
        return self.parts["side"][1] * grows

    def solids(self):
        """Every part with its joints cut."""
        asked, top = self.asked, self.low + self.parts["side"][1]
        floor = self.low + asked.up
        groove = (floor, floor + asked.bottom)
        yield from self._sides(top, groove)
        front = self._front(top, groove)
        if front:
            yield front
        yield self._back(top, groove)
        yield self._face(groove)
        yield self.bottom(self.swells)

    def _sides(self, top, groove):
        asked = self.asked
        for name, outer, inner, way in (
            ("left side", self.left - asked.side, self.left, -1),
            ("right side", self.right + asked.side, self.right, 1),
        ):
            x = sorted((outer, inner))
            cuts = [(*sorted((inner, inner + way * asked.groove)), self.start, self.rear, *groove)]
            deep = sorted((inner, inner + way * asked.joint_depth))
            if self.applied and asked.front_joint == "rabbet":
                cuts.append((*deep, self.start, self.start + asked.end, self.low, top))
            if self.applied and asked.front_joint == "dado":
                half = asked.end / 2
                first = self.start + half
                cuts.append((*deep, first, first + half, self.low, top))
            if self.back_joint in ("rabbet", "dado"):
                cuts.append((*deep, self.back_front, self.back_rear, self.low, top))
            yield Solid(name, [(*x, self.start, self.rear, self.low, top)], cuts)

    def _front(self, top, groove):
        """The box's own front."""
        if not self.applied:
            return None
        asked, joint = self.asked, self.asked.front_joint
        reach = self.reach(joint)
        left, right = self.left - reach, self.right + reach
        boxes = [(left, right, self.behind, self.inner, self.low, top)]
        if joint == "dado":
            half = self.behind + asked.end / 2
            boxes = [
                (self.left, self.right, self.behind, self.inner, self.low, top),
                (left, right, half, self.inner, self.low, top),
            ]
        cut = (left, right, self.inner - asked.groove, self.inner, *groove)
        return Solid("front", boxes, [cut])

    def _back(self, top, groove):
        """The back, on the bottom or down to the lower edge; its length as told."""
        asked = self.asked
        long, high = self.parts["back"]
        left = (asked.width - long) / 2
        low = top - high
        cuts = []
        if asked.back == "full":
            y = (self.back_front, self.back_front + asked.groove)
            cuts = [(left, left + long, *y, *groove)]
        return Solid("back", [(left, left + long, self.back_front, self.back_rear, low, top)], cuts)

    @property
    def face_low(self):
        """The bottom edge of the drawer front."""
        asked = self.asked
        if asked.front == "overlay":
            return -asked.lap_high
        return asked.gap if asked.runs != "wood" else Fraction(0)

    def face_box(self):
        """The drawer front before anything is cut in it."""
        asked = self.asked
        wide, high = self.parts["face"]
        left = (asked.width - wide) / 2
        y = (self.behind - asked.face, self.behind)
        return (left, left + wide, *y, self.face_low, self.face_low + high)

    def _face(self, groove):
        asked, box = self.asked, self.face_box()
        cuts = []
        if not self.applied:
            x = (self.left - asked.groove, self.right + asked.groove)
            cuts.append((*x, self.behind - asked.groove, self.behind, *groove))
            if asked.front_joint not in BUTT:
                y = (self.start, self.behind)
                z = (self.low, self.low + self.parts["side"][1])
                cuts.append((self.left - asked.side, self.left, *y, *z))
                cuts.append((self.right, self.right + asked.side, *y, *z))
        return Solid("face", [box], cuts)

    def bottom(self, swells):
        """The bottom, its front edge at the bottom of the front groove."""
        asked = self.asked
        wide, deep = self.parts["bottom"]
        deep *= swells if asked.solid in ("bottom", "both") else 1
        left, floor = (asked.width - wide) / 2, self.low + asked.up
        y = self.inner - asked.groove
        return Solid("bottom", [(left, left + wide, y, y + deep, floor, floor + asked.bottom)])

    def faults(self):
        """What is wrong of wood in one place, and of corners that are not filled."""
        solids = list(self.solids())
        boxes = [box for solid in solids for box in solid.faces] + [self._ring_outside()]
        planes = [sorted({box[2 * a + end] for box in boxes for end in (0, 1)}) for a in range(3)]
        held = {}
        for solid in solids:
            for cell in solid.cells(planes):
                held.setdefault(cell, []).append(solid.name)
        shared = self._shared_corners()
        cells = {cell for box in shared for cell in cells_of(box, planes)}
        for cell, names in held.items():
            if len(names) > 1 and not (cell in cells and "bottom" not in names):
                yield f"{' and '.join(names)} are in one place"
                break
        if self.asked.on_marks:
            yield from self._corners(held, planes, cells)

    def _shared_corners(self):
        """Where side and front or back take turns, as the joint's own layout proves."""
        asked, top = self.asked, self.low + self.parts["side"][1]
        corners = []
        if self.applied and asked.front_joint in FINGERS:
            corners.append((self.start, self.inner, self.low, top))
        if self.back_joint in FINGERS:
            corners.append((self.back_front, self.rear, top - self.parts["back"][1], top))
        return [
            (x, x + asked.side, *corner)
            for corner in corners
            for x in (self.left - asked.side, self.right)
        ]

    def _corners(self, held, planes, shared):
        """Of turns taken both parts must be there; and no hole may be seen from outside."""
        asked = self.asked
        floor = self.low + asked.up
        for cell in shared:
            groove = floor <= planes[2][cell[2]] < floor + asked.bottom
            if not groove and len(held.get(cell, ())) != 2:
                yield "a corner is not filled by both parts"
                return
        outside, inside = self._ring_outside(), self._ring_inside()
        ring = set(cells_of(outside, planes)) - set(cells_of(inside, planes))
        for cell in ring:
            if floor <= planes[2][cell[2]] < floor + asked.bottom:
                continue
            if cell not in held:
                yield f"a hole in a corner at {[float(planes[a][cell[a]]) for a in range(3)]}"
                return

    def _ring_outside(self):
        """The box from its front to the rear of its back, where the back is."""
        low = self.low + (self.asked.up + self.asked.bottom if self.asked.back == "low" else 0)
        top = self.low + self.parts["side"][1]
        x = (self.left - self.asked.side, self.right + self.asked.side)
        return (*x, self.behind, self.back_rear, low, top)

    def _ring_inside(self):
        return (self.left, self.right, self.inner, self.back_front, *self._ring_outside()[4:])
