"""Doors of stiles, rails and panels, put together as solids in exact inches.

As `assembled_doors.py`, whose other half this is: it shares no formula with the question.
"""

from fractions import Fraction

from tests.core.oracles.cells import Assembly, cells_of
from tests.core.oracles.random_doors import NONE


def swollen(asked, length, moisture):
    """A length across the grain at a moisture, where the slab or panel is of solid wood."""
    return length * (1 + asked["own_tangential"] * (asked[moisture] - asked["now"]))


def framed_faults(asked, parts, wide, high, step):
    """One door, as it is glued up: no overlap, no gap, its panel free and held."""
    trim = asked.get("trim", NONE)
    count, wide, high = asked["doors"], wide + 2 * trim, high + 2 * trim
    widths = {
        key: asked[name] + trim * (key != "middle")
        for key, name in (
            ("stile", "stile"),
            ("top", "top_rail"),
            ("bottom", "bottom_rail"),
            ("middle", "middle_width"),
        )
        if name in asked
    }
    members = dict(_cut(parts))
    for key, (number, long, width, mark) in members.items():
        if number % count:
            yield f"{number} of {key} for {count} doors"
        if not 0 <= long - mark <= step:
            yield f"{key} {long} is told as {mark}"
        place = "middle" if key.startswith("middle") else key.replace("_rail", "")
        wanted = {widths["top"], widths["bottom"]} if place == "rail" else {widths[place]}
        if {width} != wanted:
            yield f"{key} is {width} wide, not {wanted}"
    if asked["joint"] == "miter":
        yield from _mitered(parts, wide, high, widths)
        insides = [
            _Inside(widths["stile"], wide - widths["stile"], widths["bottom"], high - widths["top"])
        ]
    else:
        built = _Built(asked, members, wide, high, widths)
        yield from built.faults()
        insides = built.insides
    yield from _panels(asked, parts, insides, count, step)


def insides_of(asked, wide, high):
    """The openings in the frame of a door of that size, (left, right, low, head) of each."""
    keys = {"stile": "stile", "top": "top_rail", "bottom": "bottom_rail", "middle": "middle_width"}
    widths = {key: asked[name] for key, name in keys.items() if name in asked}
    built = _Built(asked, {}, wide, high, widths)
    return [(each.left, each.right, each.low, each.head) for each in built.insides]


def _cut(parts):
    """(key, (count, exact length, exact width, told length)) of each stile and rail."""
    for key, each in parts.items():
        if key not in ("panel", "glass"):
            lengths = (Fraction(each[name]["exact"]) for name in ("length", "width"))
            yield key, (each["count"], *lengths, Fraction(each["length"]["mark"]))


def _mitered(parts, wide, high, widths):
    """Four pieces that meet on the diagonals of the corners are the frame, by their areas."""
    stile = widths["stile"]
    area = NONE
    for key, long in (("stile", high), ("rail", wide)):
        piece = parts[key]
        outer, inner = (Fraction(piece[side]["exact"]) for side in ("long_side", "short_side"))
        if outer != long or outer - inner != 2 * stile:
            yield f"{key} is {outer} and {inner} long, which closes no corner of {long}"
        area += 2 * (outer + inner) / 2 * stile
    if area + (wide - 2 * stile) * (high - 2 * stile) != wide * high:
        yield "the miters leave a gap"


class _Inside:
    """An opening in the frame."""

    def __init__(self, left, right, low, head):
        self.left, self.right, self.low, self.head = left, right, low, head


class _Built:
    """One door's frame of boxes, its joints cut; the panel's room is left free."""

    def __init__(self, asked, members, wide, high, widths):
        self.asked, self.members, self.widths = asked, members, widths
        self.wide, self.high, self.thick = wide, high, asked["thickness"]
        self.slot = (self.thick / 2 - asked["panel"] / 2, self.thick / 2 + asked["panel"] / 2)
        stile = widths["stile"]
        self.left, self.right = stile, wide - stile
        self.low, self.head = widths["bottom"], high - widths["top"]
        self.insides = list(self._insides())
        self.assembly = Assembly()

    def _insides(self):
        left, right, low, head = self.left, self.right, self.low, self.head
        middle = self.widths.get("middle")
        if self.asked.get("middle") == "rail":
            at = (low + head - middle) / 2
            yield _Inside(left, right, low, at)
            yield _Inside(left, right, at + middle, head)
        elif self.asked.get("middle") == "stile":
            at = (left + right - middle) / 2
            yield _Inside(left, at, low, head)
            yield _Inside(at + middle, right, low, head)
        else:
            yield _Inside(left, right, low, head)

    def faults(self):
        """What is in one place twice, or missing."""
        for key, x, z in self._stiles():
            self._upright(key, x, z)
        for key, z in self._rails():
            self._level(key, z)
        yield from self._tongues()
        faults, planes, cells = self.assembly.filled(self._faces())
        yield from faults
        may = set()
        for box in self._rooms():
            may.update(cells_of(box, planes))
        whole = (NONE, self.wide, NONE, self.thick, NONE, self.high)
        for cell in cells_of(whole, planes):
            if cell not in cells and cell not in may:
                yield f"nothing is at {[float(planes[axis][cell[axis]]) for axis in range(3)]}"
                return
        outside = set(cells) - set(cells_of(whole, planes))
        if outside:
            yield f"{cells[next(iter(outside))]} sticks out of the door"
        for each in self.insides:
            clear = (each.left, each.right, NONE, self.thick, each.low, each.head)
            if set(cells_of(clear, planes)) & set(cells):
                yield "a member is in an opening of the frame"

    def _tongues(self):
        """A tongue in a groove may end before its bottom: it is as long as was asked for."""
        tongue = self.asked.get("tongue")
        for key, (_, long, _, _) in self.members.items():
            between = self.right - self.left, self.head - self.low
            if tongue and key != "stile" and (long - between[key == "middle_stile"]) / 2 != tongue:
                yield f"{key} has no tongue {tongue} long"

    def _stiles(self):
        long = self.members["stile"][1]
        yield "stile", NONE, (NONE, long)
        yield "stile", self.right, (NONE, long)
        if "middle_stile" in self.members:
            yield "middle_stile", self.insides[0].right, None

    def _rails(self):
        yield "rail" if "rail" in self.members else "bottom_rail", NONE
        yield "rail" if "rail" in self.members else "top_rail", self.head
        if "middle_rail" in self.members:
            yield "middle_rail", self.insides[0].head

    def _upright(self, key, x, z):
        _, long, width, _ = self.members[key]
        z = z or ((self.low + self.head - long) / 2, (self.low + self.head + long) / 2)
        if self.asked["joint"] == "lap" and key == "middle_stile":
            z = (NONE, long)
        right = x + width
        cuts, groove = [], self.asked["groove"]
        for edge, inner in ((x, x > 0), (right, right < self.wide)):
            if inner:
                start = edge if edge == x else edge - groove
                cuts.append((start, start + groove, *self.slot, *z))
        if key == "stile":
            cuts += self._mortises(x, right)
        elif self.asked["joint"] != "lap":
            cuts += self._cheeks_upright(x, right, z)
        if self.asked["joint"] == "lap":
            half = (self.thick / 2, self.thick)
            for low, head in self._rail_places(key):
                cuts.append((x, right, *half, low, head))
        self.assembly.add(key, (x, right, NONE, self.thick, *z), cuts)

    def _rail_places(self, key):
        yield NONE, self.low
        yield self.head, self.high
        if "middle_rail" in self.members and key == "stile":
            yield self.insides[0].head, self.insides[1].low

    def _mortises(self, x, right):
        if self.asked["joint"] != "mortise":
            return
        deep = self.asked["tenon"]
        start = right - deep if x == 0 else x
        for low, head in self._rail_places("stile"):
            yield start, start + deep, *self.slot, low, head

    def _cheeks_upright(self, x, right, z):
        """What is cut off the ends of a middle stile around its tongue or tenon."""
        for low, head in ((z[0], self.low), (self.head, z[1])):
            if low < head:
                yield x, right, NONE, self.slot[0], low, head
                yield x, right, self.slot[1], self.thick, low, head

    def _level(self, key, z):
        _, long, width, _ = self.members[key]
        x = (self.wide - long) / 2, (self.wide + long) / 2
        head, groove = z + width, self.asked["groove"]
        cuts = []
        for edge, inner in ((z, z > 0), (head, head < self.high)):
            if inner:
                start = edge if edge == z else edge - groove
                cuts.append((*x, *self.slot, start, start + groove))
        if self.asked["joint"] == "mortise" and "middle_stile" in self.members:
            place = self.insides[0].right, self.insides[1].left
            deep = self.asked["tenon"]
            start = head - deep if z == 0 else z
            cuts.append((*place, *self.slot, start, start + deep))
        for left, right in ((x[0], self.left), (self.right, x[1])):
            if left < right and self.asked["joint"] == "lap":
                cuts.append((left, right, NONE, self.thick / 2, z, head))
            elif left < right:
                cuts.append((left, right, NONE, self.slot[0], z, head))
                cuts.append((left, right, self.slot[1], self.thick, z, head))
        if self.asked["joint"] == "lap" and "middle_stile" in self.members:
            place = self.insides[0].right, self.insides[1].left
            cuts.append((*place, NONE, self.thick / 2, z, head))
        self.assembly.add(key, (*x, NONE, self.thick, z, head), cuts)

    def _faces(self):
        return [(NONE, self.wide, NONE, self.thick, NONE, self.high), *self._rooms()]

    def _rooms(self):
        """Where nothing has to be: the openings, and every groove."""
        for each in self.insides:
            yield each.left, each.right, NONE, self.thick, each.low, each.head
        groove, slot = self.asked["groove"], self.slot
        for edge in (self.left - groove, self.right):
            yield edge, edge + groove, *slot, NONE, self.high
        for edge in (self.low - groove, self.head):
            yield NONE, self.wide, *slot, edge, edge + groove
        if "middle_rail" in self.members:
            one, other = self.insides
            for edge in (one.head, other.low - groove):
                yield NONE, self.wide, *slot, edge, edge + groove
        if "middle_stile" in self.members:
            one, other = self.insides
            for edge in (one.right, other.left - groove):
                yield edge, edge + groove, *slot, NONE, self.high


def _panels(asked, parts, insides, count, step):
    """At its wettest a panel keeps its clearance to the bottom of its groove, at its driest it is
    still over the edge of its opening, and it is no smaller than rounding makes it."""
    panel = parts.get("panel", parts.get("glass"))
    if panel["count"] != count * len(insides):
        yield f"{panel['count']} panels for {count} doors of {len(insides)}"
    long, across = (Fraction(panel[name]["mark"]) for name in ("length", "width"))
    sizes = [long, across] if asked.get("grain") == "across" else [across, long]
    moving = {"up": 0, "across": 1}[asked["grain"]] if asked["made"] == "wood" else None
    clearance = asked["glass_clearance" if asked["made"] == "glass" else "clearance"]
    for inside in insides:
        rooms = (inside.right - inside.left, inside.head - inside.low)
        for axis, room in enumerate(rooms):
            wet = dry = sizes[axis]
            if axis == moving:
                wet, dry = (swollen(asked, sizes[axis], each) for each in ("high", "low"))
            left = (room + 2 * asked["groove"] - wet) / 2
            if left < clearance:
                yield f"the panel has {left} at each edge, not {clearance}"
            if left - clearance > step:
                yield f"the panel is smaller than rounding makes it: {left}, {clearance}"
            if dry <= room:
                yield f"the panel comes out of its groove: {dry} in {room}"
