"""What to buy for pieces cut to length, and which piece comes out of which stick."""

from fractions import Fraction

from sawside.boards.first_plans import NoRoomError
from sawside.boards.planner import plan
from sawside.boards.slants import middle
from sawside.drawing.boards.cut_sticks import MOST_DRAWN, cut_sticks
from sawside.drawing.lazy import lazy
from sawside.errors import Refusal
from sawside.lengths.display import decimal_text
from sawside.lengths.words import counted, listed
from sawside.reckoners.boards.shared.stick_fields import FIELDS
from sawside.reckoners.boards.shared.stick_groups import along, cutting_list, groups_of, stock_text
from sawside.reckoners.boards.shared.stick_request import miter_of, request_of
from sawside.reckoners.boards.shared.stick_working import working
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.wood.caution import Caution
from sawside.wood.saw import SHORT_PIECE, SHORTEST_TO_HOLD

_CAUTIONS = (
    Caution(
        "Square one end first. Cut repeats against a stop.",
        "Square one end of each stick and measure from it. Cut repeats against a stop that can’t "
        "trap the offcut, and clamp short pieces. The saw maker’s instructions come first.",
    ),
)

_LAYOUTS = {
    True: "Turn mitered pieces so that neighboring cuts are parallel: one cut makes two ends.",
    False: "Keep all mitered pieces the same way around. Cut ends that aren’t parallel one by one.",
}


def compute(given, show):
    """The plan, and how it is said; "impossible" for what no stick holds."""
    request = request_of(given, show)
    try:
        found = plan(request)
    except NoRoomError:
        raise Refusal(
            "impossible",
            "The sticks on hand don’t hold every piece that’s longer than what you can buy.",
            "Add a longer stock length, or another long stick on hand.",
            field="on_hand",
        ) from None
    groups = groups_of(found, request.pieces)
    bought = sum(stick.bought for stick in found.sticks)
    left = (offcut for stick in found.sticks for offcut in stick.offcuts)
    saved = sorted((each for each in left if each >= given.least), reverse=True)
    answers = {"sticks": bought}
    answers |= {"cost": _money(found.value)} if request.priced else {}
    answers |= {"best": _how_good(request, found, saved), "list": cutting_list(show, groups)}
    if any(not piece.square for piece in request.pieces):
        answers |= {"miter": miter_of(given), "layout": _LAYOUTS[request.turning]}
    if saved:
        answers["offcuts"] = [(f"Offcut {i}", length) for i, length in enumerate(saved, 1)]
    answers["waste"] = _waste(request, found, sum(saved))
    shortest = min(piece.length for piece in request.pieces)
    return Reckoning(
        answers=answers,
        working=working(given, show, request, groups),
        drawing=_drawing(show, request, groups, given.least),
        cautions=_CAUTIONS + ((SHORT_PIECE,) if shortest < SHORTEST_TO_HOLD else ()),
        verdict=_verdict(show, request, found),
    )


def _verdict(show, request, found):
    used = [stick.stock for stick in found.sticks if stick.bought]
    if not used:
        return f"Nothing to buy: {counted(len(found.sticks), 'stick')} on hand will do"
    kinds = [stock for stock in dict.fromkeys(request.to_buy) if stock in used]
    buy = listed([f"{used.count(each)} of {stock_text(show, each.length)}" for each in kinds])
    return f"Buy {buy}" + (f", {_money(found.value)}" if request.priced else "")


def _how_good(request, found, saved):
    """What is known of plans that buy less, or leave a longer offcut."""
    longest = ". No one offcut can be longer" if saved and found.longest else ""
    return _bought_least(request, found) + longest


def _bought_least(request, found):
    if request.priced:
        over = _money(found.value - found.bound)
        return "Nothing costs less" if found.proved else f"At most {over} over the best"
    if not found.value:
        return "Nothing to buy"
    sticks = counted(int(found.value - found.bound), "stick")
    return "Fewer can’t do it" if found.proved else f"At most {sticks} more than needed"


def _money(amount):
    cents = -(-amount * 100 // 1)
    return f"${cents // 100:,}.{cents % 100:02d}"


def _waste(request, found, saved):
    taken = sum(stick.stock.length for stick in found.sticks)
    width = request.width
    used = sum(middle(piece, width).low * piece.count for piece in request.pieces)
    percent = Fraction(round((taken - used - saved) / taken * 1000), 10)
    return f"{decimal_text(percent)}% of the wood, kerfs and trims included"


@lazy
def _drawing(show, request, groups, least):
    shown = groups[:MOST_DRAWN]
    number = counted(sum(group.count for group in groups), "stick")
    words = f"{number} with the pieces cut from them, in scale."
    if any(group.stick.stock.bad for group in shown):
        words += " Bad wood is crossed out."
    if len(groups) > len(shown):
        words += f" The first {len(shown)} kinds of {len(groups)}; the cutting list has all."
    return cut_sticks(words, [along(show, group, request, least) for group in shown])


RECKONER = Reckoner(
    key="sticks",
    title="Sticks to buy",
    asks="How many sticks do I buy, and which piece comes out of which?",
    words=(
        "sticks to buy, what to buy, how many sticks, how many boards to buy, stock length, cut "
        "strips, rails, molding to buy, which piece from which board, least waste, offcuts, "
        "stick with a knot, knots and splits, bad wood, nested miters, mitered pieces from a "
        "stick, longest offcut"
    ),
    order=900,
    job="boards",
    basic=("pieces", "sold"),
    fields=FIELDS,
    answers=(
        Answer("sticks", "Sticks to buy", "count"),
        Answer("cost", "Cost", "text"),
        Answer("best", "Checked", "text"),
        Answer("list", "Cutting list", "text"),
        Answer("miter", "Miter angle", "angle", sets="turned"),
        Answer("layout", "Layout", "text"),
        Answer("offcuts", "Offcuts to save", "lengths", must="be there"),
        Answer("waste", "Waste", "text"),
    ),
    source=(
        "Bounds: S. Martello, P. Toth, Discrete Applied Mathematics 28 (1990), L2; S. P. Fekete, "
        "J. Schepers, Mathematical Programming 91 (2001). Search: R. E. Korf, A new algorithm for "
        "optimal bin packing, AAAI 2002. Mitered ends: plane trigonometry. A stick "
        "sold as 8 ft is at least that long: common practice, no source."
    ),
    compute=compute,
    example={
        "pieces": [
            {"length": "30 1/4", "count": "4", "name": "stile"},
            {"length": "16 1/2", "count": "6", "name": "rail"},
        ],
        "sold": "8 ft",
        "trim": "1/2",
    },
)
