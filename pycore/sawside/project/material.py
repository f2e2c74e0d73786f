"""The tally of material: what the pieces of one stock take together, and what was spoiled."""

from fractions import Fraction

from sawside.lengths.display import length_value
from sawside.project.size import inches


def material(pieces, show):
    """For each material, width and thickness: pieces, their lengths together, and the spoiled."""
    stocks = {}
    for piece in pieces:
        told = piece.told
        key = (
            told["material"].casefold(),
            *(told[side] and told[side]["mark"] for side in ("width", "thickness")),
        )
        stocks.setdefault(key, []).append(piece)
    return [_stock(group, show) for group in stocks.values()]


def _stock(group, show):
    first = group[0].told
    length = sum((piece.size("length") * piece.told["count"] for piece in group), Fraction(0))
    rough = sum(
        (piece.size("length", rough=True) * piece.told["count"] for piece in group), Fraction(0)
    )
    spoiled = [
        each for piece in group for each in piece.entry.get("spoiled", {}).get(piece.part.key, ())
    ]
    lost = sum((inches(each["length"]) for each in spoiled if "length" in each), Fraction(0))
    return {
        "material": first["material"],
        "width": first["width"],
        "thickness": first["thickness"],
        "count": sum(piece.told["count"] for piece in group),
        "length": _told("length", "Length", length, show),
        "rough": _told("rough", "Rough length", rough, show),
        "spoiled": len(spoiled),
        "spoiled_length": _told("spoiled_length", "Spoiled", lost, show),
    }


def _told(key, label, length, show):
    """A length of many pieces, which may well be longer than a mile."""
    return length_value(key, label, show.rounded(length), show.settings.display)
