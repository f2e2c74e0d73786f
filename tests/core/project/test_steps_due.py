"""Which step of a line is done, due or next, and in what order they come."""

import pytest
from projects import acts, answered, ask, changed
from ticked_lines import OIL, START, finishing, states, steps


def test_states_say_what_is_done_what_is_due_and_what_is_next():
    document = changed(finishing(**OIL), "tick", id="1", step="coat1", done_at=START)
    states = {key: each["state"] for key, each in steps(document).items()}
    assert (states["coat1"], states["wipe1"], states["coat2"]) == ("done", "next", "waits")
    states = {key: each["state"] for key, each in steps(document, now="2026-11-30T18:20").items()}
    assert (states["wipe1"], states["rags1"], states["coat2"]) == ("due", "due", "next")
    states = {key: each["state"] for key, each in steps(document, now="2026-11-30T18:19").items()}
    assert (states["wipe1"], states["rags1"]) == ("next", "waits")


def test_of_a_start_that_has_gone_by_only_the_first_coat_is_due_and_what_belongs_to_it():
    """A week after a start that nobody kept to, no second coat is due on bare wood. Who put the
    first one on, and ticks nothing with oily hands, is told to wipe it and of the rags."""
    there = states(finishing(**OIL), now="2026-12-07T12:00")
    assert [key for key, state in there.items() if state == "due"] == ["coat1", "wipe1", "rags1"]
    assert there["coat2"] == "next"
    assert {there[key] for key in ("wipe2", "rags2", "coat3", "cured")} == {"waits"}


def test_a_coat_comes_due_though_nobody_ticked_that_the_one_before_it_was_wiped_off():
    document = finishing(finish="tung", pores="fill", start=START)
    document = changed(document, "tick", id="1", step="coat1", done_at=START)
    there = states(document, now="2026-12-03T18:20")
    due = ["wet1", "wipe1", "rags1", "coat2"]
    assert [key for key, state in there.items() if state == "due"][:4] == due
    assert there["coat3"] == "next"


def test_what_a_later_step_that_is_ticked_shows_to_be_done_is_not_next_but_rags_stay_due():
    """A second coat is on: so was the first one, and it was wiped. Its rags may still lie about."""
    document = changed(finishing(**OIL), "tick", id="1", step="coat2", done_at="2026-12-01T18:20")
    told = answered("entry", document, id="1")["entry"]["verdict"]
    assert told == "Next, spread the rags outdoors"
    there = states(document, now="2026-12-01T18:25")
    assert (there["coat1"], there["wipe1"]) == ("passed", "passed")
    assert (there["rags1"], there["wipe2"]) == ("due", "next")
    ahead = [each["step"] for each in answered("view", document)["steps"]]
    assert ahead[:2] == ["rags1", "wipe2"]
    assert not {"coat1", "wipe1"} & {*ahead}


def test_a_line_that_is_corrected_is_told_which_step_is_due_too():
    asked = {"reckoner": "coats", "values": OIL, "now": "2026-11-30T18:20"}
    told = answered("reckon", finishing(**OIL), id="1", **asked)["steps"]
    states = {step["key"]: step["state"] for step in told}
    assert (states["coat1"], states["wipe1"], states["coat2"]) == ("due", "due", "next")


@pytest.mark.parametrize("now", ["1970-01-01T00:00", "2101-01-01T00:00"])
def test_by_a_clock_that_is_not_set_all_is_told_and_nothing_is_due(now):
    document = finishing(**OIL)
    assert "due" not in {step["state"] for step in steps(document, now=now).values()}
    assert "due" not in {step["state"] for step in answered("view", document, now=now)["steps"]}
    asked = {"reckoner": "coats", "values": OIL, "now": now}
    told = answered("reckon", document, id="1", **asked)["steps"]
    assert "due" not in {step["state"] for step in told}


def test_a_moment_that_is_none_is_refused_as_the_present_one():
    for now in ("soon", "2026-11-30"):
        error = ask("view", finishing(**OIL), now=now)["error"]
        assert error["field"] == "now"


def test_check_lists_have_every_step_of_every_line_those_that_are_done_too():
    document = changed(finishing(**OIL), "tick", id="1", step="coat1", done_at=START)
    rail = {"known": "31 5/8", "width": "2 1/4"}
    document = acts(
        document, ("keep_line", {"name": "Rail", "reckoner": "mitered_length", "values": rail})
    )
    (told,) = answered("view", document, now="2026-11-30T18:20")["check_lists"]
    assert (told["entry"], told["name"], told["title"]) == ("1", "Finish", "Coats")
    whole = answered("entry", document, id="1", now="2026-11-30T18:20")["reckoning"]["steps"]
    assert told["steps"] == whole
    assert [step["key"] for step in whole if step["state"] == "done"] == ["coat1"]


def test_the_verdict_of_a_line_tells_its_next_step_and_when_all_is_done_that_it_is():
    document = finishing(finish="wax", coats="1", start=START)
    for step in steps(document):
        moment = "2026-12-24T12:00" if step == "cured" else START[:-1] + "9"
        document = changed(document, "tick", id="1", step=step, done_at=moment)
        entry = answered("entry", document, id="1")["entry"]
        if step == "coat1":
            assert entry["verdict"] == "Next, wipe off what’s left"
            assert entry["headline"]["text"] == "Mon Nov 30, 6:24 PM"
    assert entry["verdict"] == "Cured"


def test_a_caution_is_in_full_at_the_first_step_that_is_left_to_do():
    document = changed(finishing(**OIL), "tick", id="1", step="rags1", done_at=START)
    told = steps(document)
    assert told["rags1"]["caution"]["full"] == told["rags1"]["caution"]["short"]
    assert "NFPA" in told["rags2"]["caution"]["full"]


def test_the_steps_of_a_project_come_in_the_order_in_which_they_are_due():
    document = acts(
        finishing("before_finish", finish="linseed"),
        ("keep_line", {"name": "Oil", "reckoner": "coats", "values": OIL}),
        (
            "keep_line",
            {
                "name": "Back",
                "reckoner": "coats",
                "values": {"finish": "shellac", "start": "2026-11-30T17:00"},
            },
        ),
    )
    ahead = answered("view", document)["steps"]
    times = [each["due"]["at"] for each in ahead if each["due"]]
    assert times == sorted(times)
    assert [each["due"] for each in ahead[len(times) :]] == [None] * 9
    assert ahead[0]["line"] == "First coat, from Mon Nov 30, 5:00 PM"
    assert (ahead[0]["entry"], ahead[0]["name"], ahead[0]["step"]) == ("3", "Back", "coat1")
    ticked = changed(document, "tick", id="3", step="coat1", done_at=START)
    assert "coat1" not in {
        each["step"] for each in answered("view", ticked)["steps"] if each["entry"] == "3"
    }


def test_a_list_without_times_is_ticked_in_any_order():
    document = finishing("before_finish")
    document = changed(document, "tick", id="1", step="light", done_at="2026-11-30T12:00")
    document = changed(document, "tick", id="1", step="nails", done_at="2026-11-30T13:00")
    assert (
        answered("entry", document, id="1")["entry"]["headline"]["text"]
        == "Check the wood’s moisture"
    )


def test_a_question_leads_with_what_is_due_by_now_and_not_with_dates_that_have_gone_by():
    """Nothing is ticked: the coats in the plan are still to come, but the first is late."""
    document = finishing(**OIL)
    asked = {"reckoner": "coats", "values": OIL, "id": "1"}
    for now, verdict, said in (
        ("2026-11-30T17:59", "3 coats, the last one", "Wed Dec 2, 6:40 PM"),
        ("2026-12-07T12:00", "Due, first coat", "Mon Nov 30, 6:00 PM"),
        (None, "3 coats, the last one", "Wed Dec 2, 6:40 PM"),
    ):
        told = answered("reckon", document, now=now, **asked)
        assert (told["verdict"], told["answers"][0]["text"]) == (verdict, said)
    done = changed(document, "tick", id="1", step="coat1", done_at=START)
    told = answered("reckon", done, now="2026-12-07T12:00", **asked)
    assert told["verdict"] == "Due, wipe off what’s left"
    told = answered("reckon", done, now="2026-11-30T18:05", **asked)
    assert told["verdict"] == "Next, wipe off what’s left"
