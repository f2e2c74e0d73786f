"""A tree of cuts as the list that one follows at the saw, in exact inches."""

from fractions import Fraction

from sawside.boards.sheets.plan import Cut, Part, PlannedSheet
from sawside.boards.sheets.whole import LENGTH, WIDTH

_WAY = {LENGTH: "crosscut", WIDTH: "rip"}


class _List:
    """The cuts and offcuts so far."""

    def __init__(self, exact, panels):
        self.exact, self.panels = exact, panels
        self.cuts, self.offcuts, self.whole = [], [], None

    def part(self, x, y, size, panel=None):
        """A part in inches, of its corner and its sides with a kerf; None where nothing is left."""
        sides = [Fraction(side - self.exact.kerf, self.exact.unit) for side in size]
        return Part(x, y, *sides, panel) if min(sides) > 0 else None

    def follow(self, tree, corner, size, in_hand, state, block=None):
        """Cut the part with this number, then its parts."""
        if tree is None:
            left = self.part(*corner, size)
            if left:
                self.offcuts.append(left)
            return
        if tree[0] in ("item", "panel"):
            self._leaf(tree, corner, size, in_hand, state, block)
            return
        along, parts = tree
        level = state[0] + (along != state[1])
        later, corner, size = [], list(corner), list(size)
        for place, (taken, child) in enumerate(parts):
            if place == len(parts) - 1:
                later.append((child, tuple(corner), tuple(size), in_hand))
                break
            takes, leaves = list(size), list(size)
            takes[along], leaves[along] = taken, size[along] - taken
            later.append((child, tuple(corner), tuple(takes), 2 * len(self.cuts) + 1))
            self._cut(level, along, in_hand, corner, takes, leaves)
            in_hand = 2 * len(self.cuts)
            corner[along] += Fraction(taken, self.exact.unit)
            size = leaves
        for child, at, sides, number in later:
            self.follow(child, at, sides, number, (level, along), block)

    def _cut(self, level, along, in_hand, corner, takes, leaves):
        at = Fraction(takes[along] - self.exact.kerf, self.exact.unit)
        beyond = list(corner)
        beyond[along] += Fraction(takes[along], self.exact.unit)
        self.cuts.append(
            Cut(
                level,
                _WAY[along],
                at,
                in_hand,
                self.part(*corner, takes),
                self.part(*beyond, leaves),
            )
        )

    def _leaf(self, tree, corner, size, in_hand, state, block):
        if tree[0] == "item":
            item = self.exact.items[tree[1]]
            if item.tree:
                self.follow(item.tree, corner, size, in_hand, state, item.panels)
                return
            panel = self.panels[tree[1]].pop(0)
        else:
            panel = block[tree[1]]
        self._finish(in_hand, panel)

    def _finish(self, in_hand, panel):
        """Say which panel the part with this number is."""
        if not in_hand:
            self.whole = panel
            return
        number, left = divmod(in_hand - 1, 2)
        cut = self.cuts[number]
        part = cut.leaves if left else cut.takes
        done = Part(part.x, part.y, part.length, part.width, panel)
        takes, leaves = (cut.takes, done) if left else (done, cut.leaves)
        self.cuts[number] = Cut(cut.level, cut.way, cut.at, cut.part, takes, leaves)


def planned(exact, panels, stock, bought, room, tree, trim):
    """The `PlannedSheet` of a tree; takes the panels that it uses out of `panels`, by item."""
    made = _List(exact, panels)
    made.follow(tree, (trim, trim), room, 0, (0, None))
    return PlannedSheet(stock, bought, tuple(made.cuts), tuple(made.offcuts), made.whole)
