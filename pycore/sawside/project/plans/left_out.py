"""Pieces that no wood holds: why not, and what can be done."""

from sawside.errors import Refusal
from sawside.lengths.words import counted


def left_out(group, show):
    """What a group leaves out, as the contract of `LeftOut`."""
    told = []
    for number, many in group.filled.left.items():
        want = group.wants[number]
        told.append(
            {
                "name": want.name,
                "pieces": [{"entry": want.entry, "part": want.part}],
                "error": _why(group, want, many, show).as_data(),
            }
        )
    return told


def _why(group, want, many, show):
    wood = _wood(want, show)
    if not group.offered and not group.has_hand:
        message = f"{want.name}: the project has no {wood}."
        return Refusal("impossible", message, "Add it to the wood on hand or to buy.")
    if want.width is None and all(offer.form != "stick" for _, offer in group.offered):
        message = f"{want.name} has no width, so it only comes out of sticks."
        return Refusal("impossible", message, "Type its width, or add sticks to the wood.")
    if not any(_holds(offer, want) for _, offer in group.offered):
        size = _size(show, *want.laid)
        largest = max((offer for _, offer in group.offered), key=_area, default=None)
        said = f"{want.name} takes {size}"
        said += f", and no {wood} holds it" if largest is None else f". {_largest(largest, show)}"
        return Refusal("impossible", f"{said}.", "Add longer or wider wood, or join the piece.")
    message = f"{counted(many, 'piece')} of {want.name} won’t come out of the wood on hand."
    return Refusal("impossible", message, f"Add {wood} to the wood to buy.")


def _wood(want, show):
    thick = f" {show.brief(want.thickness)} thick" if want.thickness is not None else ""
    return f"{want.material or want.profile or 'wood'}{thick}"


def _largest(offer, show):
    return f"The largest wood listed is {_size(show, offer.length, offer.width)}"


def _area(offer):
    return offer.length * (offer.width or 1)


def _holds(offer, want):
    """Whether a piece goes into what the trims leave of one such board."""
    ways = [want.laid] + ([want.laid[::-1]] if want.grain == "free" else [])
    edges = 0 if offer.form == "stick" else 2 * offer.trim
    return any(
        long <= offer.length - 2 * offer.trim
        and (wide is None or offer.width is None or wide <= offer.width - edges)
        for long, wide in ways
    )


def _size(show, length, width):
    sizes = [show.brief(length)] + ([show.brief(width)] if width is not None else [])
    return " × ".join(sizes)
