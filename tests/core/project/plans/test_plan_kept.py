"""A plan in a document from elsewhere: opened whole, or refused with the place."""

import json

import pytest
from hostile import PLAN, WHEN, backup_text, project
from planned import by_hand, kept, on_sale
from projects import acts, answered, ask, begun, changed, view


def with_plan(change):
    """A project whose plan was changed by hand."""
    plan = json.loads(json.dumps(PLAN))
    change(plan)
    return project() | {"plan": plan}


@pytest.mark.parametrize(
    ("change", "what"),
    [
        (lambda plan: plan.pop("kerf"), "lacks “kerf”"),
        (lambda plan: plan.update(more=1), "does not belong there"),
        (lambda plan: plan["boards"].append(plan["boards"][0]), "holds the same key twice"),
        (lambda plan: plan["boards"][0].update(key="one"), "is not an id"),
        (lambda plan: plan["boards"][0].update(form="log"), "is not one of board, sheet, stick"),
        (lambda plan: plan["boards"][0].update(length="-96 in"), "is less than 0"),
        (lambda plan: plan["boards"][0].update(price="1/0"), "exact number of dollars"),
        (lambda plan: plan["boards"][0].update(bad=False), "is not true"),
        (lambda plan: plan["boards"][0]["cuts"][1].update(part=0), "a part that is not there"),
        (lambda plan: plan["boards"][0]["cuts"][1].update(at="97 in"), "takes more than there is"),
        (lambda plan: plan["boards"][0]["cuts"][1].update(part=-1), "is not a whole number"),
        (lambda plan: plan["boards"][0]["pieces"][0].update(of=2), "that the cuts don’t give"),
        (lambda plan: plan["boards"][0]["pieces"][0].update(of=99), "that the cuts don’t give"),
        (lambda plan: plan["begun"][0].update(cut=-1), "is not a whole number"),
        (lambda plan: plan["checked"][0].update(over="-1"), "is not an exact number"),
        (lambda plan: plan["checked"][0].update(boards=["one"]), "is not an id"),
        (lambda plan: plan["checked"][0].pop("boards"), "lacks “boards”"),
    ],
)
def test_a_plan_that_no_saw_could_follow_is_refused_with_the_place(change, what):
    for do, more in (("view", {}), ("plan", {}), ("backup", {"when": WHEN})):
        error = ask(do, with_plan(change), **more)["error"]
        assert error["kind"] == "message"
        assert what in error["message"]
        assert error["field"].startswith("document.plan")


def test_a_rip_of_a_stick_whose_width_nobody_knows_is_refused():
    def narrow(plan):
        del plan["boards"][0]["width"]
        plan["boards"][0]["cuts"][1]["way"] = "rip"

    assert "takes more than there is" in ask("view", with_plan(narrow))["error"]["message"]


def test_pieces_that_are_nowhere_are_told_and_stop_nothing():
    def lost(plan):
        plan["boards"][0]["pieces"][0].update(entry="99")

    told = view(with_plan(lost))["plan"]
    assert "1 piece of it is no longer in the project." in told["stale"]


def test_a_document_of_schema_7_has_no_plan_and_is_brought_up():
    old = {key: value for key, value in project().items() if key != "plan"} | {"schema": 7}
    assert view(old)["plan"] is None
    assert view(old)["schema"] == 8


def test_a_backup_brings_the_plan_back_and_a_merge_leaves_it_and_says_so():
    document = kept(acts(begun(), by_hand("Long", "60", count="2")))
    assert answered("restore", None, text=backup_text(document))["document"] == document
    other = acts(begun(), by_hand("Short", "30"))
    said = answered("merge", other, text=backup_text(document))
    assert said["said"].endswith(" Its cutting plan isn’t brought along: plan again.")
    assert "plan" not in said["document"]
    mine = answered("merge", document, text=backup_text(other))
    assert mine["document"]["plan"] == document["plan"]
    assert "cutting plan" not in mine["said"]


def best(document):
    """What is said of how good each group of the kept plan is."""
    return [group["best"] for group in view(document)["plan"]["groups"]]


def test_a_kept_plan_goes_on_saying_how_good_it_was_when_it_was_made():
    document = kept(acts(begun(), by_hand("Long", "60", count="2")))
    assert best(document) == ["Fewer can’t do it"]
    assert best(answered("restore", None, text=backup_text(document))["document"]) == best(document)
    begun_on = changed(document, "cut", id="1", part="piece", by=1)
    assert best(begun_on) == ["Fewer can’t do it"]
    assert best(kept(begun_on)) == ["Nothing to buy"]


def test_a_plan_that_no_longer_fits_its_pieces_is_not_called_the_best():
    document = kept(acts(begun(), by_hand("Long", "60", count="2")))
    assert best(acts(document, by_hand("Later", "60"))) == [""]


def test_a_plan_that_is_not_proved_says_how_far_off_it_may_be_once_it_is_kept():
    document = kept(acts(begun(), by_hand("Long", "60", count="2")))
    (check,) = document["plan"]["checked"]
    for priced, over, said in (
        (False, "1", "At most 1 board too many"),
        (False, "3/2", "At most 2 boards too many"),
        (True, "5/2", "At most $2.50 over the best"),
        (True, "0", "Nothing costs less"),
    ):
        changed_check = check | {"over": over} | ({"priced": True} if priced else {})
        plan = document["plan"] | {"checked": [changed_check]}
        assert best(document | {"plan": plan}) == [said]


def test_a_plan_of_before_that_nobody_checked_says_nothing_of_it():
    document = kept(acts(begun(), by_hand("Long", "60", count="2")))
    plan = {key: value for key, value in document["plan"].items() if key != "checked"}
    assert best(document | {"plan": plan}) == [""]


def test_a_kept_plan_says_that_what_it_buys_are_usual_sizes_until_the_project_says_what_is_sold():
    document = acts(begun(), by_hand("Rail", "40", count="2"))
    assert "Planned on usual sizes: check them" in view(kept(document))["plan"]["note"]
    sold = {"sold": "board", "thickness": "3/4", "width": "6", "length": "96"}
    there = view(kept(acts(document, on_sale(sold))))["plan"]
    assert there["buy"]
    assert "usual sizes" not in there["note"]
