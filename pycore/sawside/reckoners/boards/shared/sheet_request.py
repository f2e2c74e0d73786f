"""What was filled in as a request to the planner of sheets, and what no plan can do."""

from sawside.boards.first_plans import NoRoomError
from sawside.boards.sheets.planner import plan_sheets
from sawside.boards.sheets.request import Panel, Sheet, SheetRequest
from sawside.errors import Refusal, impossible
from sawside.reckoners.boards.shared.sheet_fields import MOST_PIECES
from sawside.reckoners.boards.shared.sheet_groups import sheet_text, size_text
from sawside.reckoners.boards.shared.sold import exact
from sawside.reckoners.boards.shared.under_kerf import refuse_under_kerf
from sawside.settings.handled import ANY, largest_part

MATCHED = {"side": "Side by side", "end": "End to end"}


def request_of(given, show):
    panels = tuple(_panel(place, row, show) for place, row in enumerate(given.pieces))
    if (number := sum(panel.count for panel in panels)) > MOST_PIECES:
        raise Refusal(
            "range",
            f"That’s {number:,} pieces. The most is {MOST_PIECES}.",
            "Split the list and plan each part by itself.",
            field="pieces",
        )
    sides = exact(given.sheet_length, show), exact(given.sheet_width, show)
    hand = tuple(
        Sheet(exact(row.length, show), exact(row.width, show), min(row.count, number))
        for row in given.on_hand or ()
    )
    kerf, trim = exact(given.kerf, show), exact(given.trim, show)
    request = SheetRequest(
        panels,
        hand,
        (Sheet(*sides, None, given.price),),
        kerf,
        trim,
        given.first,
        None if given.stages == "any" else int(given.stages),
        _handled(given, show),
    )
    narrow = [
        (f"Piece {number}", min(panel.length, panel.width))
        for number, panel in enumerate(panels, 1)
    ]
    refuse_under_kerf(narrow, kerf, show, " across")
    _refuse_too_large(request, show)
    _refuse_matched(request, show)
    return request


def _panel(place, row, show):
    """A row as a panel; all that are matched one way lie next to each other in their order."""
    is_matched = row.grain in MATCHED
    return Panel(
        exact(row.length, show),
        exact(row.width, show),
        row.count,
        row.name or "",
        "fixed" if is_matched else row.grain,
        row.grain if is_matched else "",
        place,
        row.grain if is_matched else "side",
    )


def _handled(given, show):
    """The largest part after the first cuts, long side first; None for any."""
    long, short = (
        None if side is None else exact(side, show)
        for side in (given.part_length, given.part_width)
    )
    return largest_part(long, short)


def plan_of(request):
    """The plan of a request; "impossible" where its rules or the sheets on hand don't hold it."""
    try:
        return plan_sheets(request)
    except NoRoomError:
        raise _no_room(request) from None


def _no_room(request):
    if request.handled:
        return impossible(
            "The first cuts leave larger parts than you allow.",
            "Allow larger parts, or have them cut where you buy.",
            "part_length" if request.handled[0] != ANY else "part_width",
        )
    if request.stages:
        return impossible(
            "Not every piece can be cut free that way.",
            "Let it take as many rounds of cuts as it needs.",
            "stages",
        )
    return impossible(
        "The sheets on hand don’t hold every piece that’s too large for the ones you can buy.",
        "Enter a larger sheet, or another large one on hand.",
        "on_hand",
    )


def _refuse_too_large(request, show):
    rooms = _rooms(request)
    if min(rooms[0]) <= 0:
        raise Refusal(
            "impossible",
            f"The edge trims take all of a sheet {sheet_text(show, request.to_buy[0])}.",
            "Trim less, or use larger sheets.",
            field="trim",
        )
    for number, panel in enumerate(request.panels, 1):
        ways = {(panel.length, panel.width)}
        ways |= {(panel.width, panel.length)} if panel.grain == "free" else set()
        if any(way[0] <= room[0] and way[1] <= room[1] for way in ways for room in rooms):
            continue
        turned = any(panel.width <= room[0] and panel.length <= room[1] for room in rooms)
        raise Refusal(
            "impossible",
            f"Piece {number} is {size_text(show, panel.length, panel.width)}, and a sheet gives "
            f"{size_text(show, *rooms[0])}, grain along its length.",
            "Set its grain to either way." if turned else "Use a larger sheet, or join two pieces.",
            field="pieces",
        )


def _refuse_matched(request, show):
    """Matched pieces that are larger together than any sheet."""
    for way, words in MATCHED.items():
        those = [
            panel for panel in request.panels if panel.match == way for _ in range(panel.count)
        ]
        if not those:
            continue
        kerfs = (len(those) - 1) * request.kerf
        length, width = ([getattr(panel, side) for panel in those] for side in ("length", "width"))
        whole = (max(length), sum(width) + kerfs)
        if way == "end":
            whole = (sum(length) + kerfs, max(width))
        rooms = _rooms(request)
        if not any(whole[0] <= room[0] and whole[1] <= room[1] for room in rooms):
            raise impossible(
                f"{words} the matched pieces are {size_text(show, *whole)}, and a sheet gives "
                f"{size_text(show, *rooms[0])}.",
                "Match fewer pieces, or use a larger sheet.",
                "pieces",
            )


def _rooms(request):
    return [
        (sheet.length - 2 * request.trim, sheet.width - 2 * request.trim)
        for sheet in (*request.to_buy, *request.on_hand)
    ]
