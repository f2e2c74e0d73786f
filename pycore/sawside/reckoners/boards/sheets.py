"""What to buy for rectangles cut out of sheets, and the cuts of each sheet in their order."""

from fractions import Fraction

from sawside.boards.sheets.plan import Part
from sawside.drawing.boards.cut_sheets import MOST_DRAWN, cut_sheets
from sawside.drawing.lazy import lazy
from sawside.lengths.display import decimal_text
from sawside.lengths.words import counted
from sawside.reckoners.boards.shared.sheet_fields import FIELDS
from sawside.reckoners.boards.shared.sheet_groups import (
    chain_of,
    cutting_list,
    groups_of,
    size_text,
)
from sawside.reckoners.boards.shared.sheet_request import plan_of, request_of
from sawside.reckoners.boards.shared.sheet_working import working
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.wood.caution import Caution
from sawside.wood.saw import SHORT_PIECE, SHORTEST_TO_HOLD

_CAUTIONS = (
    Caution(
        "A full sheet is heavy: support it and break it down first.",
        "Lift a full sheet with a helper, and support all of it, the offcut too. Make the first "
        "cuts with the sheet lying flat, then take the parts to the table saw. Keep a part against "
        "the fence and stand out of line with the blade: what twists or binds kicks back. Never "
        "crosscut freehand. The saw maker’s instructions come first.",
    ),
)


def compute(given, show):
    """The plan, and how it is said; "impossible" for what no sheet holds."""
    request = request_of(given, show)
    found = plan_of(request)
    groups = groups_of(found)
    answers = {"sheets": sum(sheet.bought for sheet in found.sheets)}
    answers |= {"cost": _money(found.value)} if request.priced else {}
    answers |= {"best": _how_good(found), "list": cutting_list(show, groups, request.panels)}
    saved = _saved(found, given.least)
    if saved:
        answers["offcuts"] = _offcuts(show, saved)
    answers["waste"] = _waste(found, request, saved)
    shortest = min(max(panel.length, panel.width) for panel in request.panels)
    return Reckoning(
        answers=answers,
        working=working(show, request, groups),
        drawing=_drawing(show, request, groups, given.least),
        cautions=_CAUTIONS + ((SHORT_PIECE,) if shortest < SHORTEST_TO_HOLD else ()),
        verdict=_verdict(request, found),
    )


def _verdict(request, found):
    bought = sum(sheet.bought for sheet in found.sheets)
    if not bought:
        return f"Nothing to buy: {counted(len(found.sheets), 'sheet')} on hand will do"
    return f"Buy {counted(bought, 'sheet')}" + (
        f", {_money(found.value)}" if request.priced else ""
    )


def _how_good(found):
    """What is known of plans that buy less."""
    bought = sum(sheet.bought for sheet in found.sheets)
    if not bought:
        return "Nothing to buy"
    if found.proved:
        return "Fewer can’t do it"
    least = -(-found.bound * bought // found.value) if found.value else 0
    return f"At most {counted(int(bought - least), 'sheet')} more than needed"


def _money(amount):
    cents = -(-amount * 100 // 1)
    return f"${cents // 100:,}.{cents % 100:02d}"


def _saved(found, least):
    """The offcuts whose shorter side is worth saving, the largest first."""
    parts = [part for sheet in found.sheets for part in sheet.offcuts]
    worth = [part for part in parts if min(part.length, part.width) >= least]
    return sorted(worth, key=lambda part: (-part.length * part.width, -part.length))


def _offcuts(show, saved):
    sizes = [
        f"{show.brief(part.length, 'be there')} × {show.brief(part.width, 'be there')}"
        for part in saved
    ]
    return "; ".join(
        f"{sizes.count(size)} × ({size})" if sizes.count(size) > 1 else size
        for size in dict.fromkeys(sizes)
    )


def _waste(found, request, saved):
    taken = sum(sheet.stock.length * sheet.stock.width for sheet in found.sheets)
    used = sum(panel.length * panel.width * panel.count for panel in request.panels)
    kept = sum(part.length * part.width for part in saved)
    percent = Fraction(round((taken - used - kept) / taken * 1000), 10)
    return f"{decimal_text(percent)}% of the area, kerfs and trims included"


@lazy
def _drawing(show, request, groups, least):
    shown = groups[:MOST_DRAWN]
    number = counted(sum(group.count for group in groups), "sheet")
    words = f"{number} with the pieces cut from them, in scale. The grain runs from left to right."
    if len(groups) > len(shown):
        words += f" The first {len(shown)} kinds of {len(groups)}; the cutting list has all."
    return cut_sheets(words, [_drawn(show, request, group, least) for group in shown])


def _drawn(show, request, group, least):
    sheet = group.sheet
    title = f"{group.numbers}{'' if sheet.bought else ', on hand'}: grain →"
    parts = []
    for part in _finished(sheet, request.trim):
        texts = request.panels[part.panel].name, size_text(show, part.length, part.width)
        parts.append((part, "stock", texts))
    for part in sheet.offcuts:
        worth = min(part.length, part.width) >= least
        size = " × ".join(show.brief(side, "be there") for side in (part.length, part.width))
        parts.append((part, "ghost" if worth else "waste", ("", size if worth else "")))
    sides = show.brief(sheet.stock.length), show.brief(sheet.stock.width)
    fields = ("sheet_length", "sheet_width") if sheet.bought else ("on_hand", "on_hand")
    return title, sheet.stock, sides, fields, _first_cuts(show, request, sheet), parts


def _first_cuts(show, request, sheet):
    """The side that the first cuts divide, and where along it each part is."""
    chain, runs, start = chain_of(sheet), [], request.trim
    if chain is None:
        return None, ()
    for taken in chain.taken:
        if taken.panel is not None or taken.further:
            runs.append((start, start + taken.size, show.brief(taken.size)))
        start += taken.size + request.kerf
    return (1 if chain.way == "rip" else 0), runs


def _finished(sheet, trim):
    """The panels of a sheet, as parts."""
    if sheet.whole is not None:
        length, width = (side - 2 * trim for side in (sheet.stock.length, sheet.stock.width))
        return [Part(trim, trim, length, width, sheet.whole)]
    parts = [part for cut in sheet.cuts for part in (cut.takes, cut.leaves) if part]
    return [part for part in parts if part.panel is not None]


RECKONER = Reckoner(
    key="sheets",
    title="Sheets to buy",
    asks="How many sheets do I buy, and how do I cut them up?",
    words=(
        "sheets to buy, sheet goods, plywood to buy, how many sheets of plywood, cut up a sheet, "
        "panels from a sheet, sheet layout, break down a sheet"
    ),
    order=905,
    job="boards",
    basic=("pieces", "sheet_length", "sheet_width"),
    fields=FIELDS,
    answers=(
        Answer("sheets", "Sheets to buy", "count"),
        Answer("cost", "Cost", "text"),
        Answer("best", "Checked", "text"),
        Answer("list", "Cutting list", "text"),
        Answer("offcuts", "Offcuts to save", "text"),
        Answer("waste", "Waste", "text"),
    ),
    source=(
        "Bound: S. P. Fekete, J. Schepers, Mathematical Methods of Operations Research 60 (2004). "
        "Search: P. Y. Wang, Operations Research 31 (1983), and fillings repeated in part. A sheet "
        "sold as 4 × 8 ft is at least that large: common practice, no source."
    ),
    compute=compute,
    example={
        "pieces": [
            {"length": "36", "width": "15 1/2", "count": "2", "name": "side"},
            {"length": "28 1/2", "width": "15 1/4", "count": "4", "name": "shelf"},
        ],
        "trim": "1/4",
    },
)
