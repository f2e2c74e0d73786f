"""Steps of a line that are ticked: what follows goes by it, and nothing before it moves."""

import json

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from projects import acts, answered, ask, begun, change, changed

START = "2026-11-30T18:00"
OIL = {"finish": "linseed", "start": START}


def finishing(reckoner="coats", **values):
    line = {"name": "Finish", "reckoner": reckoner, "values": values}
    return acts(begun(), ("keep_line", line))


def steps(document, **more):
    """The steps of the first line by their keys."""
    told = answered("entry", document, id="1", **more)["reckoning"]["steps"]
    return {step["key"]: step for step in told}


def due(document):
    return {key: step["due"] and step["due"]["at"] for key, step in steps(document).items()}


def test_a_coat_late_by_a_day_moves_what_follows_by_a_day_and_nothing_before_it():
    """By hand: 24 h after it is wiped, 20 min after it went on."""
    before = due(finishing(**OIL))
    late = changed(finishing(**OIL), "tick", id="1", step="coat2", done_at="2026-12-02T18:20")
    after = due(late)
    keys = [*before]
    follows = keys.index("coat2") + 1
    assert [after[key] for key in keys[:follows]] == [before[key] for key in keys[:follows]]
    assert before["coat3"] == "2026-12-02T18:40"
    assert after["wipe2"] == "2026-12-02T18:40"
    assert after["coat3"] == "2026-12-03T18:40"


def test_an_early_coat_moves_what_follows_forward_and_says_how_early_it_was():
    early = changed(finishing(**OIL), "tick", id="1", step="coat2", done_at="2026-12-01T15:20")
    step = steps(early)["coat2"]
    assert step["about"].startswith(
        "Done 3 h early: if the coat under it was soft, let this one dry longer."
    )
    assert due(early)["coat3"] == "2026-12-02T15:40"


def test_a_first_coat_before_its_start_is_not_called_soft_for_nothing_is_under_it():
    early = changed(finishing(**OIL), "tick", id="1", step="coat1", done_at="2026-11-30T09:00")
    assert steps(early)["coat1"]["about"] == steps(finishing(**OIL))["coat1"]["about"]
    assert due(early)["coat2"] == "2026-12-01T09:20"


def test_what_is_called_cured_too_soon_says_by_how_much():
    """30 days after Nov 30, 6:20 PM; ticked ten days after it."""
    document = finishing(finish="linseed", start=START, coats="1")
    early = changed(document, "tick", id="1", step="cured", done_at="2026-12-10T18:20")
    assert steps(early)["cured"]["about"].startswith("Ticked 20 days early: go easy on it")


def test_the_air_that_was_written_down_slows_the_coat_that_dried_in_it_and_no_other():
    """52 °F is 18 below 70: twice as long, so 48 h instead of 24; the coat after it is 24 again."""
    cold = changed(
        finishing(**OIL), "tick", id="1", step="coat1", done_at=START, temperature="52 F"
    )
    assert due(cold)["coat2"] == "2026-12-02T18:20"
    assert due(cold)["coat3"] == "2026-12-03T18:40"


@pytest.mark.parametrize(
    ("air", "said"),
    [
        ({"temperature": "45 F"}, "It was below 50 °F (10 °C): it may not dry or hold."),
        ({"temperature": "9 C"}, "It was below 50 °F (10 °C): it may not dry or hold."),
        ({"humidity": "90"}, "It was above 85% humidity: it may turn cloudy or stay soft."),
    ],
)
def test_a_coat_in_air_that_no_finish_dries_in_says_so(air, said):
    document = finishing(**OIL)
    plain = {"id": "1", "step": "coat1", "done_at": START}
    assert said in steps(changed(document, "tick", **plain, **air))["coat1"]["about"]
    fine = changed(document, "tick", **plain, temperature="50 F", humidity="85")
    assert "It was" not in steps(fine)["coat1"]["about"]


def test_a_start_that_nobody_typed_is_the_first_tick():
    document = finishing(finish="shellac")
    assert set(due(document).values()) == {None}
    ticked = changed(document, "tick", id="1", step="coat1", when="2026-11-30T09:00")
    assert due(ticked)["coat2"] == "2026-11-30T11:30"  # 2 h, and half an hour of sanding


def test_what_is_kept_is_what_was_typed_with_its_unit_and_told_in_a_line():
    record = {"temperature": "68", "humidity": "45", "note": " Two thin ones ", "photo": "p1"}
    made = changed(finishing(**OIL), "tick", id="1", step="coat1", done_at=START, **record)
    kept = {"when": START, "temperature": "68 °F", "humidity": "45%", "note": "Two thin ones"}
    assert made["entries"][0]["done"] == {"coat1": kept | {"photo": "p1"}}
    done = steps(made)["coat1"]["done"]
    assert done["said"] == "Done Mon Nov 30, 6:00 PM: 68 °F, 45%, Two thin ones"
    metric = acts(
        finishing(**OIL),
        ("set", {"settings": {"unit": "mm"}}),
        ("tick", {"id": "1", "step": "coat1", "done_at": START, "temperature": "20"}),
    )
    assert metric["entries"][0]["done"]["coat1"]["temperature"] == "20 °C"


def test_the_moment_of_a_tick_is_its_own_where_it_has_one_or_else_that_of_the_act():
    document = finishing(**OIL)
    tick = {"id": "1", "step": "coat1", "when": "2026-12-01T09:00"}
    now = changed(document, "tick", **tick)
    assert now["entries"][0]["done"]["coat1"]["when"] == "2026-12-01T09:00"
    earlier = changed(document, "tick", **tick, done_at=START)
    assert earlier["entries"][0]["done"]["coat1"]["when"] == START
    assert earlier["log"][-1]["when"] == "2026-12-01T09:00"


def test_a_tick_is_undone_and_unticked_and_ticked_again_as_it_was():
    document = finishing(**OIL)
    said = change(document, "tick", id="1", step="coat1", done_at=START)
    undone = change(said["document"], **said["undo"])["document"]
    assert undone["entries"] == document["entries"]
    off = change(said["document"], "untick", id="1", step="coat1")
    assert off["document"]["entries"] == document["entries"]
    again = change(off["document"], **off["undo"])["document"]
    assert again["entries"] == said["document"]["entries"]


def test_a_line_that_is_corrected_is_answered_with_its_ticks_and_another_question_without():
    document = changed(finishing(**OIL), "tick", id="1", step="coat1", done_at="2026-12-02T18:00")
    asked = {"reckoner": "coats", "values": OIL | {"coats": "2"}}
    told = answered("reckon", document, id="1", **asked)
    assert told["steps"][0]["done"]["when"] == "2026-12-02T18:00"
    assert told["steps"][3]["due"]["at"] == "2026-12-03T18:20"
    alone = answered("reckon", document, **asked)
    assert alone["steps"][0]["done"] is None
    assert alone["steps"][3]["due"]["at"] == "2026-12-01T18:20"
    other = answered("reckon", document, id="1", reckoner="before_finish", values={})
    assert {step["done"] for step in other["steps"]} == {None}


def test_states_say_what_is_done_what_is_due_and_what_is_next():
    document = changed(finishing(**OIL), "tick", id="1", step="coat1", done_at=START)
    states = {key: each["state"] for key, each in steps(document).items()}
    assert (states["coat1"], states["wipe1"], states["coat2"]) == ("done", "next", "waits")
    states = {key: each["state"] for key, each in steps(document, now="2026-11-30T18:20").items()}
    assert (states["wipe1"], states["rags1"], states["coat2"]) == ("due", "due", "next")
    states = {key: each["state"] for key, each in steps(document, now="2026-11-30T18:19").items()}
    assert (states["wipe1"], states["rags1"]) == ("next", "waits")


def states(document, **more):
    return {key: each["state"] for key, each in steps(document, **more).items()}


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


@pytest.mark.parametrize(
    ("given", "field", "said"),
    [
        ({"step": "coat9"}, "step", "isn’t in this list"),
        ({"step": "wipe1", "done_at": "2026-11-30T17:00"}, "done_at", "can’t be done before"),
        ({"step": "coat1", "done_at": "2026-12-03T17:00"}, "done_at", "can’t be done after"),
        ({"step": "wipe1", "done_at": "yesterday"}, "done_at", "isn’t a date and time"),
        ({"step": "wipe1", "done_at": ""}, "done_at", "blank"),
        ({"step": "wipe1", "done_at": "2210-01-01T00:00"}, "done_at", "from 2000 to 2100"),
        ({"step": "rags1", "temperature": "warm"}, "temperature", "isn’t a temperature"),
        ({"step": "rags1", "temperature": "200"}, "temperature", "from -20 to 130 °F"),
        ({"step": "rags1", "humidity": "101"}, "humidity", "from 0 to 100%"),
        ({"step": "rags1", "humidity": "damp"}, "humidity", "isn’t a humidity"),
        ({"step": "rags1", "note": "x" * 401}, "note", "400 characters"),
        ({"step": "rags1", "photo": "../x"}, "photo", "picture"),
        ({"id": "7"}, "id", "isn’t in the project"),
    ],
)
def test_what_can_not_have_been_done_is_refused_with_a_remedy(given, field, said):
    document = acts(
        finishing(**OIL),
        ("tick", {"id": "1", "step": "coat1", "done_at": START}),
        ("tick", {"id": "1", "step": "coat2", "done_at": "2026-12-01T19:00"}),
    )
    tick = {"id": "1", "step": "wipe1", "done_at": "2026-11-30T18:25"} | given
    error = change(document, "tick", **tick)["error"]
    assert error["field"] == field
    assert said in error["message"]
    assert error["remedy"].endswith(".")


def test_what_is_still_to_come_is_not_ticked():
    """The act has the moment of the page's clock, and the step is said to be done an hour later."""
    tick = {"id": "1", "step": "coat1", "when": "2026-11-30T17:00"}
    error = change(finishing(**OIL), "tick", **tick, done_at=START)["error"]
    assert (error["kind"], error["field"]) == ("conflict", "done_at")
    assert error["message"] == "Mon Nov 30, 6:00 PM is still to come."
    assert changed(finishing(**OIL), "tick", **tick | {"when": START}, done_at=START)
    for unknown in ("", "2026-11-30", "2026-11-30T17:00Z"):
        assert changed(finishing(**OIL), "tick", **tick | {"when": unknown}, done_at=START)


def test_rags_that_were_forgotten_are_ticked_after_the_next_coat():
    document = acts(
        finishing(**OIL),
        ("tick", {"id": "1", "step": "coat2", "done_at": "2026-12-01T19:00"}),
        ("tick", {"id": "1", "step": "rags1", "done_at": "2026-12-01T19:05"}),
    )
    assert steps(document)["rags1"]["state"] == "done"


def test_what_is_not_ticked_is_not_unticked_and_other_lines_have_no_steps():
    assert (
        "isn’t ticked"
        in change(finishing(**OIL), "untick", id="1", step="coat1")["error"]["message"]
    )
    square = finishing("mitered_length", known="31 5/8", width="2 1/4")
    error = change(square, "tick", id="1", step="coat1", done_at=START)["error"]
    assert error["kind"] == "unknown"
    forced = json.loads(json.dumps(square))
    forced["entries"][0]["done"] = {"coat1": {"when": START}}
    assert ask("view", forced)["ok"]


@pytest.mark.parametrize(
    "kept",
    [
        {},
        {"when": "2026-11-30"},
        {"when": "2026-11-30T18:00Z"},
        {"when": START, "note": []},
        {"when": START, "photo": "a b"},
        {"when": START, "mood": "fine"},
    ],
)
def test_a_record_that_this_program_never_kept_is_refused_with_its_place(kept):
    document = json.loads(json.dumps(finishing(**OIL)))
    document["entries"][0]["done"] = {"coat1": kept}
    refused = ask("view", document)
    assert not refused["ok"]
    assert "done" in refused["error"]["field"]


def test_air_that_can_not_be_read_any_more_is_not_known_and_stops_nothing():
    document = json.loads(json.dumps(finishing(**OIL)))
    document["entries"][0]["done"] = {"coat1": {"when": START, "temperature": "mild"}}
    assert due(document)["coat2"] == "2026-12-01T18:20"


def test_a_project_with_ticks_comes_back_from_its_backup_with_them():
    document = changed(finishing(**OIL), "tick", id="1", step="coat1", done_at=START, photo="p1")
    photos = {"p1": "data:image/jpeg;base64,AAAA"}
    text = answered("backup", document, when=START, photos=photos)["text"]
    back = answered("restore", None, text=text)
    assert back["document"] == document
    assert back["photos"] == photos


@settings(max_examples=60, deadline=None)
@given(
    st.sampled_from(["linseed", "shellac", "wiping", "paint"]),
    st.integers(0, 30),
    st.integers(0, 60 * 24 * 5),
)
def test_a_changed_log_entry_moves_only_what_follows(finish, at, late):
    document = finishing(finish=finish, start=START)
    before = due(document)
    keys = [*before]
    at %= len(keys)
    hours, minutes = divmod(late, 60)
    days, hours = divmod(18 + hours, 24)
    done_at = f"2026-12-{10 + days:02}T{hours:02}:{minutes:02}"
    after = due(changed(document, "tick", id="1", step=keys[at], done_at=done_at))
    assert [after[key] for key in keys[: at + 1]] == [before[key] for key in keys[: at + 1]]
    if keys[at] != "cured" and not keys[at].startswith("rags"):
        assert all(after[key] >= done_at for key in keys[at + 1 :])
    if keys[at].startswith("rags"):
        assert after == before
