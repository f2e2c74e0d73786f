"""The tally of material: what the pieces of one stock take together, and what was spoiled."""

from sawside.lengths.display import length_value
from sawside.project.pieces.pieces import allowance
from sawside.project.pieces.size import inches
from sawside.project.pieces.stock import sides, stock_of
from sawside.reckoning.links import total


def material(pieces, show):
    """For each material, width and thickness (with their allowances): pieces, their lengths
    together, and the spoiled with what was to be taken off them."""
    stocks = {}
    for piece in pieces:
        stocks.setdefault(stock_of(piece), []).append(piece)
    return [_stock(group, show) for group in stocks.values()]


def together(pieces, number, *, rough=False):
    """The lengths of pieces together in exact inches, each as often as `number` of it is told."""
    return total(piece.size("length", rough=rough) * piece.told[number] for piece in pieces)


def _stock(group, show):
    width, thickness = sides(group[0])
    spoiled = [
        (each, allowance(piece.entry, piece.part, "length"))
        for piece in group
        for each in piece.entry.get("spoiled", {}).get(piece.part.key, ())
    ]
    lost = total(inches(each["length"]) + rough for each, rough in spoiled if "length" in each)
    return {
        "material": group[0].told["material"],
        "width": width,
        "thickness": thickness,
        "count": sum(piece.told["count"] for piece in group),
        "length": _told("length", "Length", together(group, "count"), show, "reach"),
        "rough": _told(
            "rough", "Rough length", together(group, "count", rough=True), show, "reach"
        ),
        "spoiled": len(spoiled),
        "spoiled_length": _told("spoiled_length", "Scrapped", lost, show),
    }


def _told(key, label, length, show, must=None):
    """A length of many pieces, which may well be longer than a mile; what is bought must reach."""
    return length_value(key, label, show.rounded(length, must), show.settings.display)
