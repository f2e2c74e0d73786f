"""Pieces that no wood holds: why not, and what can be done."""

from sawside.errors import Refusal
from sawside.lengths.words import counted, listed
from sawside.project.plans.suiting import is_one_wood
from sawside.project.plans.wood import WIDEST_BOARD

_MOST_NAMED = 3
"""Woods of the project that are named where none of them suits."""


def left_out(group, offers, show):
    """What a group leaves out of the `offers` of the project, as the contract of `LeftOut`."""
    told = []
    for number, many in group.filled.left.items():
        want = group.wants[number]
        told.append(
            {
                "name": want.name,
                "pieces": [{"entry": want.entry, "part": want.part}],
                "error": _why(group, offers, want, many, show).as_data(),
            }
        )
    return told


def _why(group, offers, want, many, show):
    wood = _wood(want, show)
    if not group.offered and not group.has_hand:
        return _no_such(want, wood, [offer for _, offer in offers], show)
    if want.width is None and all(offer.form != "stick" for _, offer in group.offered):
        message = f"{want.name} has no width, so it only comes out of sticks."
        return Refusal("impossible", message, "Type its width, or add sticks to the wood.")
    if not any(_holds(offer, want, show.settings.kerf) for _, offer in group.offered):
        size = _size(show, *want.together(show.settings.kerf))
        largest = max((offer for _, offer in group.offered), key=_area, default=None)
        said = f"{want.name} takes {size}"
        if want.is_matched:
            said = f"{want.count} matched pieces of {want.name} take {size}"
        said += f", and no {wood} holds it" if largest is None else f". {_largest(largest, show)}"
        return Refusal("impossible", f"{said}.", _add(group, want))
    message = f"{counted(many, 'piece')} of {want.name} won’t come out of the wood on hand."
    return Refusal("impossible", message, f"Add {wood} to the wood to buy.")


def _add(group, want):
    """What helps: a piece that is only too wide may be glued up."""
    if want.is_matched:
        return "Add larger wood, or match fewer of them."
    longest = max((offer.length - 2 * offer.trim for _, offer in group.offered), default=0)
    if want.width is not None and want.laid[0] <= longest:
        return "Add wider wood, or glue up a panel for it."
    return "Add longer or wider wood, or join the piece."


def _no_such(want, wood, offers, show):
    """No wood of the material and thickness: what there is, the nearest first."""
    others = dict.fromkeys(_named(offer, show) for offer in sorted(offers, key=_off(want)))
    there = [each for each in others if each and not want.profile]
    more = ", and others" if len(there) > _MOST_NAMED else ""
    only = f", only {listed(there[:_MOST_NAMED])}{more}" if there else ""
    remedy = "Add it to the wood on hand or to buy."
    if offers and not any(_is_of(offer, want) for offer in offers):
        remedy = "Add it to the wood, or call both by one name."
    return Refusal("impossible", f"{want.name}: the project has no {wood}{only}.", remedy)


def _off(want):
    """By which woods are nearest: of the material, then of the thickness."""

    def key(offer):
        told = offer.thickness is not None and want.thickness is not None
        off = abs(offer.thickness - want.thickness) if told else 0
        return not _is_of(offer, want), off

    return key


def _is_of(offer, want):
    """Whether wood is of the material that is asked for."""
    return not (offer.material and want.material) or is_one_wood(offer.material, want.material)


def _named(offer, show):
    thick = show.brief(offer.thickness) if offer.thickness is not None else ""
    return " ".join(each for each in (offer.material.strip(), thick) if each)


def _wood(want, show):
    thick = f" {show.brief(want.thickness)} thick" if want.thickness is not None else ""
    return f"{want.material or want.profile or 'wood'}{thick}"


def _largest(offer, show):
    return f"The largest wood listed is {_size(show, offer.length, offer.width)}"


def _area(offer):
    return offer.length * (offer.width or 1)


def _holds(offer, want, kerf):
    """Whether a piece goes into what the trims leave of one such board."""
    if offer.width is None and want.width is not None and want.width > WIDEST_BOARD:
        return False
    ways = [want.together(kerf)] + ([want.laid[::-1]] if want.grain == "free" else [])
    edges = 0 if offer.form == "stick" else 2 * offer.trim
    return any(
        long <= offer.length - 2 * offer.trim
        and (wide is None or offer.width is None or wide <= offer.width - edges)
        for long, wide in ways
    )


def _size(show, length, width):
    sizes = [show.brief(length)] + ([show.brief(width)] if width is not None else [])
    return " × ".join(sizes)
