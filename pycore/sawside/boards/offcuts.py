"""One large offcut rather than several small ones, and no stick longer than it must be."""

from sawside.boards.first_plans import room_of

_MOST_PIECES = 150
"""More than so many are left as they are: every one is compared with every other."""


def tidied(whole, hand, filled):
    """The same pieces in the same sticks or in fewer, shorter or cheaper ones.

    From the stick that has most left, pieces go where there is room, or change places with shorter
    ones; then from the next. No plan gets worse by it; that no other one had a larger offcut is
    not proved.
    """
    sticks = [
        [place, room_of(whole, place), [i for i, number in fill for _ in range(number)]]
        for place, fill in filled
    ]
    for stick in sticks:
        stick[1] -= sum(whole.sizes[i] for i in stick[2])
    if sum(whole.counts) <= _MOST_PIECES:
        waiting = sorted(sticks, key=lambda stick: -stick[1])
        while len(waiting) > 1:
            emptied, *waiting = waiting
            while any(_moved(whole.sizes, emptied, other) for other in waiting):
                pass
            waiting.sort(key=lambda stick: -stick[1])
    return _shortened(whole, hand, [stick for stick in sticks if stick[2]])


def _moved(sizes, giver, taker):
    """Move or change one piece, so that the giver has more left; whether there was one."""
    for i in giver[2]:
        room = taker[1] - sizes[i]
        back = None if room >= 0 else _shorter(sizes, i, -room, taker[2])
        if room >= 0 or back is not None:
            giver[2].remove(i)
            taker[2].append(i)
            gained = sizes[i] - (sizes[back] if back is not None else 0)
            giver[1] += gained
            taker[1] -= gained
            if back is not None:
                taker[2].remove(back)
                giver[2].append(back)
            return True
    return False


def _shorter(sizes, i, least, others):
    """The shortest piece of the other stick that makes enough room there for piece `i`."""
    fit = [j for j in others if least <= sizes[j] < sizes[i]]
    return min(fit, key=lambda j: sizes[j], default=None)


def _shortened(whole, hand, sticks):
    """Each stick from the least that holds its pieces: on hand, else on sale."""
    free, made = list(hand), []
    for place, left, pieces in sorted(sticks, key=lambda s: -(room_of(whole, s[0]) - s[1])):
        used = room_of(whole, place) - left
        fill = tuple((i, pieces.count(i)) for i in sorted(set(pieces)))
        made.append((_least(whole, free, used), fill))
    return made


def _least(whole, free, used):
    on_hand = [i for i, count in enumerate(free) if count and whole.rooms[i] >= used]
    if on_hand:
        i = min(on_hand, key=lambda each: whole.rooms[each])
        free[i] -= 1
        return "hand", i
    holding = [j for j, room in enumerate(whole.buys) if room >= used]
    return "buy", min(holding, key=lambda j: (whole.costs[j], whole.buys[j]))
