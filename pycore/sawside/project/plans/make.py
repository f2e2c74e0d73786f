"""The message `plan`: what to buy, and which piece comes out of which board.

What is cut stays where it is: a board that is begun keeps its cuts, and what is left of it may be
cut further. Once something is cut of what was bought for the plan before, the rest of that counts
as on hand.
"""

from collections import Counter
from dataclasses import dataclass, replace
from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.show import Show
from sawside.lengths.words import counted, listed
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.pieces.pieces import pieces_of
from sawside.project.pieces.size import inches_text
from sawside.project.plans.board import begun, board_kept
from sawside.project.plans.filling import STEPS, Filled, Wood, filled
from sawside.project.plans.left_out import left_out
from sawside.project.plans.numbered import alike_together, numbered
from sawside.project.plans.sources import board_of, sawn_board, sources_of
from sawside.project.plans.standing import Standing, standing
from sawside.project.plans.told import plan_told
from sawside.project.plans.wanted import wanted
from sawside.project.plans.wood import (
    failed_lists,
    is_of_a_sheet,
    offers_of,
    suits,
    usual_offers,
    wood_of,
)
from sawside.project.schema.plan_kept import FORMS, MOST_PLANNED
from sawside.reckoners.boards.shared.amounts import money
from sawside.settings.settings import read_settings


@dataclass(frozen=True)
class _Scene:
    """All that a plan is made of: the `standing` of the plan before it (None for the first one),
    `offers` of wood with their sources, names of lists of wood that have no answer (`failed`)."""

    document: dict
    pieces: list
    show: Show
    standing: Standing | None
    offers: list
    failed: list
    kerf: Fraction

    @property
    def sells(self):
        """Whether the project says what wood is sold."""
        return any(offer.count is None for _, offer in self.offers)

    @property
    def metric(self):
        """Whether lengths are told in millimeters."""
        return self.show.settings.display == "mm"


@dataclass
class _Group:
    """Pieces of one wood ({number: `Want`}), how they are filled in, and what suits them."""

    wants: dict
    filled: Filled
    offered: list
    has_hand: bool
    priced: bool


def plan(document, effort=0):
    """The contract of `plan`: the best plan that is found by so much `effort`, the same each time.

    Refusals: "range" for more pieces than are planned.
    """
    scene = _scene(document)
    wants = [wanted(piece, piece.told["left"]) for piece in scene.pieces if piece.told["left"] > 0]
    _refuse_too_many(sum(want.count for want in wants))
    effort = min(effort, len(STEPS) - 1)
    carried = list(_carried(scene.standing, scene.kerf))
    tries = [_groups(scene, wants, each, carried) for each in range(effort + 1)]
    groups = min(tries, key=_worth)
    kept = _kept(scene, groups, wants, carried)
    proved = all(group.filled.proved for group in groups)
    more = not proved and effort < len(STEPS) - 1
    left = [each for group in groups for each in left_out(group, scene.show)]
    told = plan_told(standing(document | {"plan": kept}, scene.pieces), scene.show)
    for group in told["groups"]:
        group["best"] = _how_good(groups, group)
    unplanned = sum(sum(group.filled.left.values()) for group in groups)
    told |= {"left_out": left, "stale": "", "note": _note(scene, groups, told["note"])}
    told["said"] = _said(told["said"], unplanned, kept)
    return {
        "plan": told,
        "act": {"act": "keep_plan", "plan": kept} if kept["boards"] else None,
        "effort": effort,
        "more": more,
        "progress": _progress(groups, more),
        "unplanned": unplanned,
    }


def _scene(document):
    evaluation = Evaluation(document)
    pieces = pieces_of(document, evaluation, drawings=False)
    show = Show(read_settings(document["settings"]))
    before = standing(document, pieces)
    return _Scene(
        document,
        pieces,
        show,
        before,
        offers_of(document, evaluation),
        failed_lists(document, evaluation),
        show.settings.kerf,
    )


def _refuse_too_many(number):
    if number > MOST_PLANNED:
        raise Refusal(
            "range",
            f"That’s {number:,} pieces. The most in one plan is {MOST_PLANNED:,}.",
            "Split the project in two.",
            field="document",
        )


def _worth(groups):
    keys = [group.filled.key for group in groups]
    return tuple(sum(each) for each in zip(*keys, strict=True)) if keys else ()


def _groups(scene, wants, effort, carried):
    """Every `_Group`, filled one after another out of the same wood."""
    woods = {}
    for number, want in enumerate(wants):
        usual = () if scene.sells else is_of_a_sheet(want)
        woods.setdefault((wood_of(want, wants), usual), {})[number] = want
    hand, made = _on_hand(scene, carried), []
    for those in woods.values():
        first = max(those.values(), key=lambda want: bool(want.material))
        offered = [*scene.offers]
        if not scene.sells:
            offered += usual_offers([first, *those.values()], metric=scene.metric)
        offered = [each for each in offered if suits(each[1], first)]
        here = [source for source in hand if suits(source.draft.board, first)]
        sale = [_on_sale(*each, scene.kerf) for each in offered if each[1].count is None]
        sale = [each for each in sale if each]
        priced = bool(sale) and all(price is not None for price, *_ in sale)
        wood = Wood(here, _priced(sale, priced), scene.kerf, priced)
        # What is only supposed to be bought is as wide as the pieces already.
        found = filled(those, wood, effort, ripped=bool(scene.offers or here))
        made.append(_Group(those, found, offered, bool(here), priced))
        gone = {id(source) for source, _ in found.used}
        hand = [source for source in hand if id(source) not in gone]
    return made


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


def _carried(before, kerf):
    """The boards of the plan before that stay: begun, bad, or bought and not begun."""
    for board in before.boards if before else ():
        cut = before.cut_of(board)
        if cut or board.bad:
            yield begun(board, cut)
        elif board.here or (board.bought and before.shopped):
            yield replace(board, kerf=kerf, bought=False, here=True, cuts=(), pieces=())


def _kept(scene, groups, wants, carried):
    """The plan as a document keeps it."""
    drafts = {}
    for group in groups:
        for source, child in group.filled.used:
            source.draft.became[source.place] = child
            drafts[id(source.draft)] = source.draft
    made = {
        draft.board.key: sawn_board(draft, wants) for draft in drafts.values() if draft.board.key
    }
    boards = [made.get(board.key, board) for board in carried]
    new = [sawn_board(draft, wants) for draft in drafts.values() if not draft.board.key]
    boards += numbered(alike_together(new), scene.standing, carried)
    return {
        "kerf": inches_text(scene.kerf),
        "boards": [board_kept(board, scene.kerf) for board in boards],
        "begun": [
            {
                "entry": piece.entry["id"],
                "part": piece.part.key,
                "cut": len(piece.entry.get("cut", {}).get(piece.part.key, ())),
                "spoiled": piece.told["spoiled"],
            }
            for piece in scene.pieces
            if piece.entry.get("cut", {}).get(piece.part.key) or piece.told["spoiled"]
        ],
    }


def _how_good(groups, told):
    """What is known of plans of these pieces that buy less."""
    places = {(at["entry"], at["part"]) for board in told["boards"] for at in board["pieces"]}
    those = [each for each in groups if any(want.key in places for want in each.wants.values())]
    found = [each.filled for each in those]
    if not any(each.bought for each in found):
        return "Nothing to buy"
    over = sum(each.cost - each.bound for each in found)
    if any(each.priced for each in those):
        return "Nothing costs less" if not over else f"At most {money(over)} over the best"
    return (
        "Fewer can’t do it" if not over else f"At most {counted(-(-over // 1), 'board')} too many"
    )


def _note(scene, groups, cautions):
    told = []
    if scene.failed:
        told.append(f"Fix {listed(scene.failed)} first: that wood isn’t planned on.")
    elif not scene.offers:
        told.append("No wood on the project yet: planned on usual sizes.")
    elif not scene.sells and any(group.filled.bought for group in groups):
        told.append("No wood to buy on the project yet: what you lack is planned on usual sizes.")
    if thin := [
        want.name for group in groups for want in group.wants.values() if _is_thin(want, scene)
    ]:
        kerf = scene.show.brief(scene.kerf)
        told.append(f"The {kerf} kerf is wider than {thin[0]}. Check the kerf in the settings.")
    return " ".join([*told, cautions]).strip()


def _is_thin(want, scene):
    return min(want.length, want.width or want.length) < scene.kerf


def _progress(groups, more):
    """How far the search is, in a sentence; "" where there is nothing to be said of it."""
    drafts = {id(s.draft): s.draft.board for group in groups for s, _ in group.filled.used}
    forms = [board.form for board in drafts.values() if board.bought]
    numbers = [counted(forms.count(form), form) for form in FORMS if form in forms]
    bought = f"{listed(numbers) if numbers else 'Nothing'} to buy"
    if more:
        return f"{bought} so far. Looking for a better plan."
    if not numbers or any(group.filled.left for group in groups):
        return ""
    proved = all(group.filled.proved for group in groups)
    return f"{bought}. " + ("No plan buys less." if proved else "That’s the best found.")


def _said(verdict, unplanned, kept):
    """The verdict, led by what no wood was found for."""
    if not unplanned:
        return verdict
    lacking = f"No wood for {counted(unplanned, 'piece')}"
    return f"{lacking}. {verdict}" if kept["boards"] else lacking
