"""The message `plan`: what to buy, and which piece comes out of which board.

What is cut stays where it is: a board that is begun keeps its cuts, and what is left of it may be
cut further. Once something is cut of what was bought for the plan before, the rest of that counts
as on hand.
"""

from dataclasses import dataclass, replace
from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.show import Show
from sawside.lengths.words import counted, listed
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.pieces.pieces import pieces_of
from sawside.project.pieces.size import inches_text
from sawside.project.plans.board import begun, board_kept
from sawside.project.plans.filling import STEPS
from sawside.project.plans.groups import groups_of
from sawside.project.plans.left_out import left_out
from sawside.project.plans.numbered import alike_together, numbered
from sawside.project.plans.sources import sawn_board
from sawside.project.plans.standing import Standing, standing
from sawside.project.plans.told import plan_told
from sawside.project.plans.wanted import wanted
from sawside.project.plans.wood import failed_lists, offers_of
from sawside.project.plans.words import forms
from sawside.project.schema.plan_kept import FORMS, MOST_PLANNED
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
    def breaking_down(self):
        """Which way the first cuts of a sheet go, how many rounds there may be, and how large a
        part may be after the first."""
        settings = self.show.settings
        return settings.first_cut, settings.rounds, settings.handled

    @property
    def metric(self):
        """Whether lengths are told in millimeters."""
        return self.show.settings.display == "mm"


def plan(document, effort=0):
    """The contract of `plan`: the best plan that is found by so much `effort`, the same each time.

    Refusals: "range" for more pieces than are planned.
    """
    scene = _scene(document)
    wants = [wanted(piece, piece.told["left"]) for piece in scene.pieces if piece.told["left"] > 0]
    _refuse_too_many(sum(want.count for want in wants))
    effort = min(effort, len(STEPS) - 1)
    carried = list(_carried(scene.standing, scene.kerf))
    tries = [groups_of(scene, wants, each, carried) for each in range(effort + 1)]
    groups = min(tries, key=_worth)
    kept = _kept(scene, groups, wants, carried)
    proved = all(group.filled.proved for group in groups)
    more = not proved and effort < len(STEPS) - 1
    left = [each for group in groups for each in left_out(group, scene.offers, scene.show)]
    told = plan_told(standing(document | {"plan": kept}, scene.pieces), scene.show, is_new=True)
    unplanned = sum(sum(group.filled.left.values()) for group in groups)
    told |= {"left_out": left, "note": _note(scene, groups, told["note"])}
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
    drafts, of = {}, {}
    for number, group in enumerate(groups):
        for source, child in group.filled.used:
            source.draft.became[source.place] = child
            drafts[id(source.draft)] = source.draft
            of[id(source.draft)] = number
    made = {
        draft.board.key: sawn_board(draft, wants) for draft in drafts.values() if draft.board.key
    }
    boards = [made.get(board.key, board) for board in carried]
    new = [
        (sawn_board(draft, wants), of[place])
        for place, draft in drafts.items()
        if not draft.board.key
    ]
    new = numbered(alike_together(new), scene.standing, carried)
    boards += [board for board, _ in new]
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
        "checked": list(_checked(groups, new)),
    }


def _checked(groups, boards):
    """How far what each group buys can be over the best, up to a cent or a board."""
    for number, group in enumerate(groups):
        bought = [board.key for board, of in boards if of == number and board.bought]
        if bought:
            over, fine = group.filled.cost - group.filled.bound, 100 if group.priced else 1
            told = {"boards": bought, "over": str(Fraction(-(-max(over, 0) * fine // 1), fine))}
            yield told | ({"priced": True} if group.priced else {})


def _note(scene, groups, cautions):
    wants = [want for group in groups for want in group.wants.values()]
    narrow = [want.name for want in wants if min(filter(None, want.laid)) <= scene.kerf]
    told = []
    if narrow:
        names, are = listed(list(dict.fromkeys(narrow))), "is" if len(narrow) == 1 else "are"
        its = "its size" if len(narrow) == 1 else "their sizes"
        blade = scene.show.brief(scene.kerf)
        told.append(
            f"{names} {are} no wider than the blade cuts, {blade}: check {its}, and the kerf in "
            "Settings."
        )
    if scene.failed:
        told.append(f"Fix {listed(scene.failed)} first: that wood isn’t planned on.")
    elif not scene.offers:
        told.append("No wood on the project yet: planned on usual sizes.")
    elif not scene.sells and any(group.filled.bought for group in groups):
        told.append("No wood to buy on the project yet: what you lack is planned on usual sizes.")
    if any(group.filled.more_rounds for group in groups):
        told.append("Some pieces take more rounds of cuts than the settings allow.")
    if any(group.filled.larger_parts for group in groups):
        told.append("Some first cuts leave larger parts than the settings allow.")
    return " ".join([*told, cautions]).strip()


def _progress(groups, more):
    """How far the search is, in a sentence; "" where there is nothing to be said of it."""
    drafts = {id(s.draft): s.draft.board for group in groups for s, _ in group.filled.used}
    bought = [board.form for board in drafts.values() if board.bought]
    numbers = [forms(bought.count(form), form) for form in FORMS if form in bought]
    told = f"{listed(numbers) if numbers else 'Nothing'} to buy"
    if more:
        return f"{told} so far. Looking for a better plan."
    if not numbers or any(group.filled.left for group in groups):
        return ""
    proved = all(group.filled.proved for group in groups)
    return f"{told}. " + ("No plan buys less." if proved else "That’s the best found.")


def _said(verdict, unplanned, kept):
    """The verdict, led by what no wood was found for."""
    if not unplanned:
        return verdict
    lacking = f"No wood for {counted(unplanned, 'piece')}"
    return f"{lacking}. {verdict}" if kept["boards"] else lacking
