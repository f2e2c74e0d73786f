"""A project with everything worked out: its entries, its pieces, the order of the cuts."""

from sawside.errors import Refusal
from sawside.lengths.as_typed import given_text
from sawside.lengths.show import Show
from sawside.project.cases import cases_told
from sawside.project.entry_told import entry_told
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.pieces.cut_order import ORDERS, cuts
from sawside.project.pieces.judge import tolerance_of
from sawside.project.pieces.material import material
from sawside.project.pieces.pieces import pieces_of
from sawside.project.plans.order import cuts_by_plan
from sawside.project.plans.standing import standing
from sawside.project.plans.told import plan_told
from sawside.project.steps.steps_ahead import check_lists, steps_ahead
from sawside.settings.settings import read_settings


def view(document, order="set-up", *, drawings=True, now=None):
    """A checked document as the contract of `view`; a line that fails says so and stops nothing.

    `order` is that of the cuts: "set-up", "board", "part", or "plan", by the plan that is kept;
    `set_ups` are always by set-up, as the shop sheet has them. Without `drawings` the pieces and
    the boards of the plan have none, and no case is told. By `now`, a `datetime`, a step is due.
    """
    if order not in (*ORDERS, "plan"):
        offered = ", ".join([*ORDERS, "plan"])
        raise Refusal("unknown", "Cuts have no such order.", f"Use {offered}.", field="order")
    evaluation = Evaluation(document)
    pieces = pieces_of(document, evaluation, drawings)
    show = Show(read_settings(document["settings"]))
    kept = standing(document, pieces)
    lists = [*check_lists(document, evaluation, now)]
    return {
        "name": document["name"],
        "schema": document["schema"],
        "entries": [entry_told(entry, evaluation) for entry in document["entries"]],
        "pieces": [each.told for each in pieces],
        "cuts": cuts_by_plan(pieces, kept, show) if order == "plan" else cuts(pieces, order, show),
        "set_ups": cuts(pieces, "set-up", show)["groups"],
        "cases": cases_told(document, evaluation) if drawings else [],
        "plan": kept and plan_told(kept, show, drawings=drawings),
        "tally": material(pieces, show),
        "check_lists": lists,
        "steps": steps_ahead(lists),
        "tolerance": document.get("tolerance"),
        "tolerance_told": given_text(tolerance_of(document), show.settings),
        "log": document.get("log", [])[::-1],
    }
