"""The stock that a piece comes out of: its material, and how wide and thick it is when rough."""


def sides(piece):
    """The width and thickness with their allowances, as VALUEs; None for one that is not known."""
    told = piece.told["rough"] or piece.told
    return told["width"], told["thickness"]


def stock_of(piece):
    """What pieces of one stock have in common; `NOT_TOLD` where nothing is known of it."""
    return (piece.told["material"].casefold(), *(side and side["mark"] for side in sides(piece)))


NOT_TOLD = ("", None, None)
