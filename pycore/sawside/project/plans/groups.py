"""The pieces of a plan by the wood they come out of: what suits them, and how it is filled."""

from collections import Counter
from dataclasses import dataclass
from fractions import Fraction

from sawside.project.plans.filling import Filled, Wood, filled
from sawside.project.plans.sources import board_of, sources_of
from sawside.project.plans.suiting import ANY_STICK, AS_IT_IS, NEARLY, how
from sawside.project.plans.wood import is_of_a_sheet, usual_offers, wood_of


@dataclass
class Group:
    """Pieces of one wood ({number: `Want`}), how they are filled in, and what suits them."""

    wants: dict
    filled: Filled
    offered: list
    has_hand: bool
    priced: bool


def groups_of(scene, wants, effort, carried):
    """Every `Group`, filled one after another out of the same wood: the thickest first, because
    thin ones can be planed of what is left."""
    woods = {}
    for number, want in enumerate(wants):
        usual = () if scene.sells else is_of_a_sheet(want)
        woods.setdefault((wood_of(want, wants), want.width is None, usual), {})[number] = want
    hand, made = _on_hand(scene, carried), {}
    for key in sorted(woods, key=_thickest_first):
        made[key] = _group(scene, woods[key], hand, effort)
        gone = {id(source) for source, _ in made[key].filled.used}
        hand = [source for source in hand if id(source) not in gone]
    return [made[key] for key in woods]


def _thickest_first(key):
    (_, thickness, _), *_ = key
    return -(thickness or 0)


def _group(scene, wants, hand, effort):
    """Pieces of one wood as one `Group`. What has to be planed, or is a little off, is only taken
    where that saves a board to buy; sticks of any size only for what comes out of nothing else."""
    first = max(wants.values(), key=lambda want: bool(want.material))
    offered = [*scene.offers]
    if not scene.sells:
        offered += usual_offers([first, *wants.values()], metric=scene.metric)
    offered = [(how(offer, first), source, offer) for source, offer in offered]
    here = [(how(source.draft.board, first), source) for source in hand]
    ranks = {rank for rank, *_ in (*offered, *here) if rank is not None}
    sale = [
        (rank, *made)
        for rank, source, offer in offered
        if rank is not None and offer.count is None
        if (made := _on_sale(source, offer, scene.kerf))
    ]
    priced = bool(sale) and all(price is not None for _, price, *_ in sale)
    best = Filled(left={number: want.count for number, want in wants.items()})
    for rank in (AS_IT_IS, NEARLY, ANY_STICK):
        if rank not in ranks or (not best.left and (not best.bought or rank == ANY_STICK)):
            continue
        known = [source for its, source in here if its is not None and its <= rank]
        bought = [each for its, *each in sale if its <= rank]
        wood = Wood(known, _priced(bought, priced), scene.kerf, priced, *scene.breaking_down)
        # What is only supposed to be bought is as wide as the pieces already.
        found = filled(wants, wood, effort, ripped=bool(scene.offers or known))
        bound = found.bound
        best = min(best, found, key=lambda each: each.key)
        best.bound = min(bound, best.cost)
    suit = [(source, offer) for rank, source, offer in offered if rank is not None]
    has_hand = any(rank is not None for rank, _ in here)
    return Group(wants, best, suit, has_hand, priced)


def _priced(sale, priced):
    return sale if priced else [(Fraction(1), make, source) for _, make, source in sale]


def _on_sale(source, offer, kerf):
    """(price, what makes a source of one, a source); None where the trims leave nothing of it."""

    def make():
        return next(iter(sources_of(board_of(source, offer, kerf, bought=True))), None)

    return (offer.price, make, made) if (made := make()) else None


def _on_hand(scene, carried):
    """Sources of all that is there: what is left of boards that are begun, those that were bought
    for the plan before, then what the project's lines say is on hand."""
    gone = Counter(board.source for board in carried if board.source)
    sources = [
        source
        for board in carried
        if not (board.bad or board.saved) and board.kerf == scene.kerf
        for source in sources_of(board)
    ]
    number = sum(piece.told["left"] for piece in scene.pieces)
    for offered, offer in scene.offers:
        if offer.count is not None:
            for _ in range(min(offer.count - gone[offered], number)):
                sources += sources_of(board_of(offered, offer, scene.kerf))
    return sources
