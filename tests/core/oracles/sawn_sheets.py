"""A plan of sheets sawn cut by cut, and small ones tried in every way.

Shares nothing with the planner but the shape of what is asked: a blade as wide as the kerf runs
through the part in hand from edge to edge, and what lies on either side of it are the parts that
there are from then on.
"""

from collections import Counter
from fractions import Fraction
from functools import cache
from itertools import combinations_with_replacement, pairwise
from pathlib import Path

from sawside.boards.sheets.request import Panel, Sheet, SheetRequest

PUBLISHED = Path(__file__).parents[2] / "published/boards"


def faults(request, plan):
    """What is wrong with a plan, as sentences: cuts, rules, panels, sheets, cost."""
    said, made, used = [], Counter(), Counter()
    cost, begun = Fraction(0), []
    for number, sheet in enumerate(plan.sheets):
        parts = _sawn(request, sheet, said)
        finished = [part for part in parts if part[4] is not None]
        if not finished:
            said.append(f"nothing comes out of sheet {number}")
        for part in finished:
            _check_panel(request.panels[part[4]], part, said)
            made[part[4]] += 1
        left = sorted(part[:4] for part in parts if part[4] is None)
        if left != sorted((p.x, p.y, p.length, p.width) for p in sheet.offcuts):
            said.append(f"{left} is left of sheet {number}")
        used[sheet.stock, sheet.bought] += 1
        begun.append(finished)
        if sheet.bought:
            cost += 1 if any(each.price is None for each in request.to_buy) else sheet.stock.price
    wanted = Counter({place: panel.count for place, panel in enumerate(request.panels)})
    if made != +wanted:
        said.append(f"cut {made}, wanted {wanted}")
    _check_matches(request, begun, said)
    for (stock, bought), number in used.items():
        there = request.to_buy if bought else request.on_hand
        most = None if bought else sum(each.count for each in there if each == stock)
        if stock not in there or (most is not None and number > most):
            said.append(f"{number} of {stock}")
    if cost != plan.value:
        said.append(f"{plan.value} is not {cost}")
    if plan.bound > plan.value:
        said.append(f"{plan.value} is less than the bound {plan.bound}")
    return said


def _sawn(request, sheet, said):
    """The parts that are left when all cuts are made: (x, y, length, width, panel)."""
    trim, kerf = request.trim, request.kerf
    whole = sheet.stock.length - 2 * trim, sheet.stock.width - 2 * trim
    parts = {0: (trim, trim, *whole, sheet.whole)}
    history = {0: (0, None)}
    for number, cut in enumerate(sheet.cuts):
        part = parts.pop(cut.part, None)
        if part is None or part[4] is not None:
            said.append(f"cut {number} cuts what is not there to be cut")
            return []
        _check_rules(request, number, cut, history[cut.part], part, said)
        x, y, length, width, _ = part
        across = cut.way == "crosscut"
        side = length if across else width
        if not 0 < cut.at < side:
            said.append(f"cut {number} at {cut.at} misses a part {side} long")
        rest = side - cut.at - kerf
        takes = (x, y, cut.at, width) if across else (x, y, length, cut.at)
        if across:
            leaves = (x + cut.at + kerf, y, rest, width)
        else:
            leaves = (x, y + cut.at + kerf, length, rest)
        for place, there, told in ((1, takes, cut.takes), (2, leaves, cut.leaves)):
            if place == 2 and rest <= 0:
                if told is not None:
                    said.append(f"cut {number} leaves {told} of sawdust")
                continue
            if told is None or (told.x, told.y, told.length, told.width) != there:
                said.append(f"cut {number} makes {there}, not {told}")
                return []
            parts[2 * number + place] = (*there, told.panel)
            history[2 * number + place] = (cut.level, cut.way)
    return list(parts.values())


def _check_rules(request, number, cut, before, part, said):
    level, way = before
    if cut.level != (level if cut.way == way else level + 1):
        said.append(f"cut {number} is not of level {cut.level}")
    if level == 0 and request.first not in ("either", cut.way):
        said.append(f"cut {number} is a {cut.way} and the first one")
    if request.stages is not None and cut.level > request.stages:
        said.append(f"cut {number} is of level {cut.level}")
    if level == 1 and cut.level == 2 and not _handy(part[2:4], request.handled):
        said.append(f"cut {number} is in a part of {part[2:4]}")


def _handy(size, handled):
    """Whether a part is no larger than this, either way round."""
    return not handled or all(a <= b for a, b in zip(sorted(size), sorted(handled), strict=True))


def _check_panel(panel, part, said):
    size = part[2:4]
    turned = panel.grain == "free" and not panel.match and size == (panel.width, panel.length)
    if size != (panel.length, panel.width) and not turned:
        said.append(f"{size} is not {panel}")


def _check_matches(request, sheets, said):
    """Matched panels are neighbors in one sheet, in their order, a kerf apart."""
    groups = {}
    for place, panel in enumerate(request.panels):
        if panel.match and panel.count:
            groups.setdefault(panel.match, []).append((panel.place, place))
    for group, members in groups.items():
        order = [place for _, place in sorted(members) for _ in range(request.panels[place].count)]
        along = request.panels[min(place for _, place in members)].laid == "end"
        side = 0 if along else 1
        there = [sorted(p for p in parts if p[4] in order) for parts in sheets]
        there = [parts for parts in there if parts]
        if len(there) != 1:
            said.append(f"{group} is in {len(there)} sheets")
            continue
        parts = sorted(there[0], key=lambda part: part[side])
        if [part[4] for part in parts] != order:
            said.append(f"{group} is out of its order")
        for one, other in pairwise(parts):
            apart = other[side] - one[side] - one[2 + side]
            if apart != request.kerf or one[1 - side] != other[1 - side]:
                said.append(f"{group} is apart")


def least(pieces, hand, kinds, costs, kerf):
    """What has to be bought at least, by every way to saw every set of sheets; for few pieces.

    `pieces` are (length, width, may be turned), `hand` and `kinds` (length, width).
    """
    pieces = tuple(sorted(pieces))
    if _come_out(pieces, tuple(sorted(hand)), kerf):
        return Fraction(0)
    best = None
    for number in range(1, len(pieces) + 1):
        for bought in combinations_with_replacement(range(len(kinds)), number):
            cost = sum(costs[each] for each in bought)
            if best is not None and cost >= best:
                continue
            sheets = tuple(sorted([*hand, *(kinds[each] for each in bought)]))
            if _come_out(pieces, sheets, kerf):
                best = cost
    return best


@cache
def _come_out(pieces, parts, kerf):
    """Whether pieces can be sawn out of these parts: the first part is a piece, is cut where a sum
    of pieces and kerfs ends, or is set aside."""
    if not pieces:
        return True
    if not parts or sum(a * b for a, b, _ in pieces) > sum(a * b for a, b in parts):
        return False
    (length, width), rest = parts[0], parts[1:]
    for number, (long, wide, turns) in enumerate(pieces):
        others = pieces[:number] + pieces[number + 1 :]
        for size in {(long, wide), (wide, long)} if turns else {(long, wide)}:
            if size == (length, width) and _come_out(others, rest, kerf):
                return True
    for at in _sums(pieces, 0, length, kerf):
        more = [(at, width), *([(length - at - kerf, width)] if length - at > kerf else [])]
        if _come_out(pieces, tuple(sorted([*more, *rest])), kerf):
            return True
    for at in _sums(pieces, 1, width, kerf):
        more = [(length, at), *([(length, width - at - kerf)] if width - at > kerf else [])]
        if _come_out(pieces, tuple(sorted([*more, *rest])), kerf):
            return True
    return _come_out(pieces, rest, kerf)


def _sums(pieces, side, most, kerf):
    """Where a blade can begin to cut: after a few pieces laid end to end."""
    reached = {-kerf}
    for piece in pieces:
        sizes = {piece[0], piece[1]} if piece[2] else {piece[side]}
        reached |= {start + kerf + size for start in reached for size in sizes}
    return sorted(at for at in reached if 0 < at < most)


def cut_apart(random, pieces, length, width, kerf, parts=16):
    """Sides of so many pieces that one sheet was sawn into without a rest."""
    there = [(Fraction(length), Fraction(width))]
    while len(there) < pieces:
        there.sort(key=lambda size: size[0] * size[1])
        one = there.pop(random.randrange(len(there) // 2, len(there)))
        side = 0 if random.random() * (one[0] + one[1]) < one[0] else 1
        room = int((one[side] - kerf) * parts)
        least_part = parts
        if room < 2 * least_part:
            there.append(one)
            continue
        at = Fraction(random.randint(least_part, room - least_part), parts)
        first, second = list(one), list(one)
        first[side], second[side] = at, one[side] - kerf - at
        there += [tuple(first), tuple(second)]
    return there


def published(name):
    """The sets of a file of published ones: (name, sheet, best value, pieces), each piece as
    (length, width, value, how many at most or None)."""
    for line in (PUBLISHED / f"{name}.csv").read_text().splitlines():
        if line.startswith("#"):
            continue
        title, sheet, best, pieces = line.split(";")
        yield title, tuple(map(int, sheet.split())), int(best), [_piece(p) for p in pieces.split()]


def _piece(text):
    size, _, more = text.partition(":")
    length, width = map(int, size.split("x"))
    if not more:
        return length, width, length * width, None
    value, most = map(int, more.split("x"))
    return length, width, value, most


def most_of_one_sheet(pieces, length, width):
    """The most that a sheet gives, each piece as often as one likes: every part is a piece or is
    cut at every sum of pieces, said as plainly as can be."""

    def reached(side, most):
        sums = {0}
        while True:
            more = sums | {a + p[side] for a in sums for p in pieces if a + p[side] <= most}
            if more == sums:
                return sorted(sums)
            sums = more

    crosscuts, rips = reached(0, length), reached(1, width)

    @cache
    def most(long, wide):
        best = max((p[2] for p in pieces if p[0] <= long and p[1] <= wide), default=0)
        for at in crosscuts:
            if 0 < at <= long - at:
                best = max(best, most(at, wide) + most(down(crosscuts, long - at), wide))
        for at in rips:
            if 0 < at <= wide - at:
                best = max(best, most(long, at) + most(long, down(rips, wide - at)))
        return best

    @cache
    def down(sums, at):
        return max(each for each in sums if each <= at)

    crosscuts, rips = tuple(crosscuts), tuple(rips)
    return most(down(crosscuts, length), down(rips, width))


def planted(random, sheets, pieces, turned=False):
    """A request for so many sheets of 96 × 48 inches, each sawn into so many pieces with a kerf of
    1/8 inch and no rest; with `turned` they may be turned, and half of them are."""
    kerf, stock = Fraction(1, 8), Sheet(Fraction(96), Fraction(48))
    sizes = [size for _ in range(sheets) for size in cut_apart(random, pieces, 96, 48, kerf)]
    random.shuffle(sizes)
    if turned:
        sizes = [size[::-1] if random.random() < 0.5 else size for size in sizes]
    grain = "free" if turned else "fixed"
    panels = tuple(Panel(length, width, grain=grain) for length, width in sizes)
    return SheetRequest(panels, (), (stock,), kerf)
