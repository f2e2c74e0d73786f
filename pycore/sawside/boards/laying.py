"""The pieces of one stretch of stick in order, each where it is cut.

Where pieces may be turned, the order is a way that uses every piece once and comes back to the
square end: pieces are the edges of a graph whose points are the slopes of their ends, and slopes
that have to be passed without a piece are added until each is passed an even number of times
(L. Euler, 1736; the circuit of C. Hierholzer, 1873). Such a way loses no more than the safe model
of `slants` says. Where pieces all lie one way, by slope or the nearest next one, the shorter.
"""

from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from sawside.boards.slants import ZERO, middle, slope, steepness


@dataclass(frozen=True, slots=True)
class Laid:
    """A piece (its place in the request) where it lies: (start, end) along the near and along the
    far edge of the stick, in exact inches from its measured end. Never less than the piece, and
    1/1024 in more at most, where no fraction tells it."""

    place: int
    near: tuple[Fraction, Fraction]
    far: tuple[Fraction, Fraction]

    @property
    def square(self):
        """Whether both its cuts are."""
        return self.near == self.far


@dataclass(frozen=True, slots=True)
class _Turned:
    """A piece as it lies: the degrees of its left and right cut, the sign that of their slope."""

    place: int
    left: Fraction
    right: Fraction


def laid_out(request, places, start):
    """(`Laid` of each of these pieces from `start` on, where the last one and its kerf end)."""
    lying = [
        _Turned(place, request.pieces[place].left, -request.pieces[place].right) for place in places
    ]
    if any(each.left or each.right for each in lying):
        lying = _turned(lying) if request.turning else _one_way(lying, request)
    laid, at, before = [], start, None
    for each in lying:
        at += _apart(request, before, each.left)
        laid.append(_laid(request, each, at))
        at += middle(request.pieces[each.place], request.width).up
        before = each.right
    if before is None:
        return (), start
    last = laid[-1]
    cut = steepness(before).by(request.kerf).up
    return tuple(laid), max(last.near[1], last.far[1]) + cut


def _apart(request, before, after):
    """How far apart two cuts are along the middle; None before the first one, the square end."""
    one = ZERO if before is None else slope(before)
    way = one.plus(slope(after), -1).size.by(request.width / 2).high
    if before is None:
        return way
    steep = max(steepness(before), steepness(after), key=lambda each: each.high)
    return way + steep.by(request.kerf).up


def _laid(request, turned, at):
    """A piece whose middle begins at a place."""
    end = at + middle(request.pieces[turned.place], request.width).up
    half = request.width / 2
    left, right = (half * slope(each).high for each in (turned.left, turned.right))
    return Laid(turned.place, (at - left, end - right), (at + left, end + right))


def _one_way(lying, request):
    by_slope = sorted(lying, key=lambda each: (each.left, each.right))
    rest, nearest, at = list(by_slope), [], Fraction(0)
    while rest:
        following = min(rest, key=lambda each: abs(each.left - at))
        rest.remove(following)
        nearest.append(following)
        at = following.right
    return min(by_slope, nearest, key=lambda order: _length(request, order))


def _length(request, order):
    """What is lost between pieces in this order."""
    lost = sum(_apart(request, one.right, other.left) for one, other in pairwise(order))
    last = slope(order[-1].right).size.by(request.width / 2).high
    return lost + _apart(request, None, order[0].left) + last


def _turned(lying):
    """Pieces in an order and attitude in which cuts beside each other are parallel, or nearly."""
    made, before = [], Fraction(0)
    for piece, start in _circuit(lying):
        left, right = piece.left, piece.right
        if abs(left) != start:
            left, right = right, left  # end for end
        if left * before < 0:
            left, right = -left, -right  # the other face up
        made.append(_Turned(piece.place, left, right))
        before = right
    return made


def _circuit(lying):
    """(piece, the angle it begins with) along a way from square and back to it."""
    edges = [(abs(each.left), abs(each.right), each) for each in lying]
    angles = sorted({Fraction(0), *(angle for one, other, _ in edges for angle in (one, other))})
    passes = [
        (low, high, sum(min(edge[:2]) <= low and high <= max(edge[:2]) for edge in edges))
        for low, high in pairwise(angles)
    ]
    added = [gap for *gap, often in passes for _ in range(often % 2 or 2 * (not often))]
    if not _joined(angles, [*edges, *added]):
        added += [gap for *gap, often in passes if often and not often % 2 for _ in range(2)]
    return _walked({angle: [] for angle in angles}, [*edges, *((*gap, None) for gap in added)])


def _joined(angles, edges):
    """Whether every angle can be reached from square."""
    reached = {angles[0]}
    for _ in angles:
        for one, other, *_ in edges:
            if one in reached or other in reached:
                reached |= {one, other}
    return reached == set(angles)


def _walked(beside, edges):
    """The pieces of a circuit over all edges, in its order."""
    for number, (one, other, _) in enumerate(edges):
        beside[one].append(number)
        if one != other:
            beside[other].append(number)
    used, stack, way = set(), [(min(beside), None)], []
    while stack:
        at = stack[-1][0]
        while beside[at] and beside[at][-1] in used:
            beside[at].pop()
        if beside[at]:
            number = beside[at].pop()
            used.add(number)
            one, other, piece = edges[number]
            stack.append((other if at == one else one, (piece, at)))
        else:
            way.append(stack.pop()[1])
    return [step for step in reversed(way) if step is not None and step[0] is not None]
