"""The stock that a piece comes out of: its material, and how wide and thick it is when rough."""


def sides(piece):
    """The width and thickness with their allowances, as VALUEs; None for one that is not known."""
    told = piece.told["rough"] or piece.told
    return told["width"], told["thickness"]


def stock_of(piece):
    """What pieces of one stock have in common; `NOT_TOLD` where nothing is known of it."""
    return (piece.told["material"].casefold(), *(side and side["mark"] for side in sides(piece)))


def stock_told(material, chosen, thickness):
    """What a piece is cut of in words: its material, as told of the piece or else as `chosen` in
    its question (a `Material` or None), and how thick that is (a VALUE or None)."""
    name = material or (chosen.name if chosen else "")
    told = name[:1].upper() + name[1:], thickness and f"{thickness['brief']} thick"
    return ", ".join(filter(None, told)) or "No material named"


NOT_TOLD = ("", None, None)
