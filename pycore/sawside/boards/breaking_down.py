"""The cuts of a plan in the order in which they are made: large ones first, equal ones together.

What a search found is a tree: a part is cut one way so many times, and each of what comes off is a
piece, an offcut, or cut further the other way. Cuts of one level are made before those of the next
one, and among them those with one setting of the fence or stop together, the largest first: so the
whole board is broken down before anything is cut to length.
"""

from dataclasses import dataclass, field
from typing import NamedTuple

from sawside.boards.sawing import SawCut


@dataclass(slots=True)
class Node:
    """A part that is cut `way`: `items` are (how much comes off, what that is), `rest` what the
    last cut leaves. Each of these is a piece (by its number), a `Node`, or None. `trims` are made
    first and in the order given."""

    way: str
    items: list = field(default_factory=list)
    rest: object = None
    trims: bool = False


class _Step(NamedTuple):
    node: Node
    root: int
    at: object
    child: object
    last: bool


def in_order(roots, made=0):
    """(cuts, {number of a part: piece}) of what the parts at `roots` become, {number of a part: a
    `Node`, a piece or None}; so many cuts were `made` before."""
    cuts, pieces, level = [], {}, dict(roots)
    while level:
        nodes = {part: child for part, child in level.items() if isinstance(child, Node)}
        others = {part: child for part, child in level.items() if part not in nodes}
        pieces |= {part: child for part, child in others.items() if child is not None}
        hand, level = {part: part for part in nodes}, {}
        for step in _equal_together(nodes):
            number = made + len(cuts)
            cuts.append(SawCut(step.node.way, hand[step.root], step.at, step.node.trims))
            level[2 * number + 1] = step.child
            hand[step.root] = 2 * number + 2
            if step.last:
                level[2 * number + 2] = step.node.rest
    return cuts, pieces


def _equal_together(nodes):
    """The cuts of one level: trims, then rips and crosscuts by their setting, the largest first."""
    trims, others = [], []
    for root, node in nodes.items():
        items = node.items if node.trims else sorted(node.items, key=lambda item: -item[0])
        (trims if node.trims else others).extend(
            _Step(node, root, at, child, number == len(items))
            for number, (at, child) in enumerate(items, 1)
        )
    others.sort(key=lambda step: (step.node.way != "rip", -step.at))
    return trims + others


def pieces_in(node):
    """Yield the pieces that come off, in no order."""
    if isinstance(node, Node):
        for child in (node.rest, *(child for _, child in node.items)):
            yield from pieces_in(child)
    elif node is not None:
        yield node


def of_stick(length, pieces, kerf):
    """What a stick is cut into: `pieces` are (length, piece) that go in, with their kerfs."""
    items = sorted(pieces, key=lambda each: -each[0])
    used = sum(size for size, _ in items) + kerf * (len(items) - 1)
    if used == length:
        *items, (_, last) = items
        return Node("crosscut", items, last) if items else last
    return Node("crosscut", items)


def of_sheet(planned, piece):
    """(what a `PlannedSheet` is cut into, the pieces that come off); `piece` gives that of a panel
    by its place in the request."""
    cuts, pieces = planned.cuts, []
    by_part = {cut.part: number for number, cut in enumerate(cuts)}

    def finished(panel):
        if panel is None:
            return None
        pieces.append(piece(panel))
        return pieces[-1]

    def made(part, panel):
        if part not in by_part:
            return finished(panel)
        way, items, last = cuts[by_part[part]].way, [], None
        while part in by_part and cuts[by_part[part]].way == way:
            number = by_part[part]
            last = cuts[number]
            items.append((last.at, made(2 * number + 1, last.takes.panel)))
            part = 2 * number + 2
        if last.leaves is None:
            return Node(way, items)
        size = last.leaves.width if way == "rip" else last.leaves.length
        items.append((size, made(part, last.leaves.panel)))
        return Node(way, *_with_rest(items))

    return made(0, planned.whole), pieces


def _with_rest(items):
    """(what comes off, what is left): the stop is set to a piece, so an offcut is left rather than
    a part that is cut further, and that rather than a piece."""
    kinds = [2 if child is None else 1 if isinstance(child, Node) else 0 for _, child in items]
    rest = max(range(len(items)), key=lambda at: (kinds[at], at))
    return items[:rest] + items[rest + 1 :], items[rest][1]
