"""A piece no larger than what the blade makes dust of."""

from sawside.errors import impossible


def refuse_under_kerf(sizes, kerf, show, across=""):
    """Refuse the first of `sizes`, (what a piece is called, its least side), that is no more than
    the kerf; `across` says which side it is."""
    for name, size in sizes:
        if size <= kerf:
            raise impossible(
                f"{name} is {show.brief(size)}{across}, no more than the blade cuts, "
                f"{show.brief(kerf)}.",
                "Check the piece, and measure the kerf in scrap.",
                "kerf",
            )
