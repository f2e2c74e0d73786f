"""In which order pieces go up: what runs square into a corner before what is coped over it.

Walls that meet in coped corners are a group. From its first wall the pieces at the right are coped
one over the other, then those at its left: each joint looks away from whoever faces that wall.
"""

from sawside.lengths.real import nearby


def groups_of(coped, walls, first=None):
    """The groups of walls (from 0), each in the order in which its pieces go up.

    `coped[i]` says whether the corner behind wall i is coped; around a loop of `walls` walls there
    are as many corners, else one less. `first` is the wall that goes up first in its group, None
    for the usual: around a loop that is all coped the first wall, in a row between two like ends
    the middle one. Where a row of them ends at a corner that isn't coped, the other end is first:
    then each piece there is coped before its other end is marked and cut.
    """
    closed = len(coped) == walls
    if closed and all(coped):
        start = first or 0
        return [[(start + step) % walls for step in range(walls)]]
    order = list(range(walls))
    if closed:
        begin = coped.index(False) + 1
        order = order[begin:] + order[:begin]
    groups = [[]]
    for wall in order:
        groups[-1].append(wall)
        if wall != order[-1] and not coped[wall]:
            groups.append([])
    return [_ordered(group, first, closed, walls - 1) for group in groups]


def _ordered(group, first, closed, last):
    if first in group:
        at = group.index(first)
    else:
        opens = group[0] == 0 and not closed, group[-1] == last and not closed
        at = {(True, False): 0, (False, True): len(group) - 1}.get(opens, len(group) // 2)
    return [*group[at:], *reversed(group[:at])]


def in_order(pieces, groups):
    """The pieces layer by layer as they are cut and go up.

    First come the groups of coped walls; then what is held between two joints, then what ends free,
    the longest first, because a piece that went wrong still makes a shorter one; caps last.
    """
    places = [wall + 1 for group in groups if len(group) > 1 for wall in group]

    def rank(piece):
        leg = piece.leg
        if leg.wall in places and not leg.is_cap:
            return piece.layer, 0, places.index(leg.wall)
        return piece.layer, 3 if leg.is_cap else 1 + (not leg.is_fixed), -nearby(piece.sides[0])

    return sorted(pieces, key=rank)
