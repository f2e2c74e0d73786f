"""Plans that are had at once: first fit, and the fullest stick first.

First fit decreasing: D. S. Johnson, "Near-optimal bin packing algorithms", MIT 1973. The fullest
first: MBS' of Fleszar and Hindi, as `fills` says.

A filled stick is (place, ((index of the size, how many), …)), its place ("hand" or "buy", index).
"""

from sawside.boards.bounds import all_sums
from sawside.boards.completion import pack
from sawside.boards.fills import Steps, fills

_ENOUGH = 10**12
"""Steps for what always ends soon."""

_FOR_THE_LONG = 20_000


class NoRoomError(Exception):
    """No stick holds these pieces; `sizes` are those (with their kerf, in whole units)."""

    def __init__(self, sizes):
        super().__init__("no stick holds all of these")
        self.sizes = sizes


def hand_places(whole, hand):
    """The places of all sticks on hand, from short to long; `hand` says how many of each."""
    order = sorted(range(len(hand)), key=lambda i: whole.rooms[i])
    return [("hand", i) for i in order for _ in range(hand[i])]


def room_of(whole, place):
    """The room of the stick at a place."""
    kind, i = place
    return (whole.rooms if kind == "hand" else whole.buys)[i]


def first_fit(whole, hand):
    """The longest piece first, each into the first stick that takes it; then one is bought, as
    long as there are. Raises `NoRoomError`."""
    open_sticks = [[place, room_of(whole, place), {}] for place in hand_places(whole, hand)]
    longest = longest_on_sale(whole)
    for i, (size, count) in enumerate(zip(whole.sizes, whole.counts, strict=True)):
        for _ in range(count):
            stick = next((each for each in open_sticks if each[1] >= size), None)
            if stick is None:
                if longest is None or whole.buys[longest] < size:
                    raise NoRoomError((size,))
                stick = [("buy", longest), whole.buys[longest], {}]
                open_sticks.append(stick)
            stick[1] -= size
            stick[2][i] = stick[2].get(i, 0) + 1
    return [(place, tuple(filled.items())) for place, _, filled in open_sticks if filled]


def fullest_first(whole, hand, main):
    """Those on hand from short to long, then sticks of the length `main`, each as full as can be;
    a longer one where a piece needs it. Raises `NoRoomError`."""
    counts, filled, hand = _too_long(whole, hand)
    for place in hand_places(whole, hand):
        _fill(whole, counts, place, None, filled)
    while any(counts):
        longest = next(i for i, count in enumerate(counts) if count)
        holding = [j for j, room in enumerate(whole.buys) if room >= whole.sizes[longest]]
        if not holding:
            raise NoRoomError((whole.sizes[longest],))
        bought = main if main in holding else min(holding, key=lambda j: whole.buys[j])
        _fill(whole, counts, ("buy", bought), longest, filled)
    return filled


def longest_on_sale(whole):
    """The index of the longest stick that can be bought, or None."""
    return max(range(len(whole.buys)), key=lambda j: whole.buys[j], default=None)


def _too_long(whole, hand):
    """What is left, and on hand, once the pieces are in that nothing on sale holds."""
    most = max(whole.buys, default=0)
    long = [
        count if size > most else 0 for size, count in zip(whole.sizes, whole.counts, strict=True)
    ]
    counts, hand = list(whole.counts), list(hand)
    if not any(long):
        return counts, [], hand
    sticks = {}
    for i, number in enumerate(hand):
        if number:
            sticks[whole.rooms[i]] = sticks.get(whole.rooms[i], 0) + number
    sums = all_sums(whole.sizes, tuple(long), sticks or [1])
    packed = pack(whole.sizes, tuple(long), sticks, Steps(_FOR_THE_LONG), sums)
    if not packed:
        raise NoRoomError(tuple(s for s, count in zip(whole.sizes, long, strict=True) if count))
    filled = []
    for room, fill in packed:
        place = next(i for i, number in enumerate(hand) if number and whole.rooms[i] == room)
        hand[place] -= 1
        filled.append((("hand", place), fill))
        for i, number in fill:
            counts[i] -= number
    return counts, filled, hand


def _fill(whole, counts, place, first, filled):
    """One stick, with the piece `first` in it where there is one; takes from `counts`."""
    room, fill = room_of(whole, place), ()
    if first is not None:
        room -= whole.sizes[first]
        counts[first] -= 1
        fill = ((first, 1),)
    _, beside = next(fills(whole.sizes, counts, room, room, Steps(_ENOUGH)), (room, ()))
    for i, number in beside:
        counts[i] -= number
    if fill + beside:
        filled.append((place, fill + beside))
