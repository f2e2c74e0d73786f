"""Steps of a line that are ticked: what follows goes by it, and nothing before it moves."""

import json

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from projects import acts, answered, ask, change, changed
from ticked_lines import OIL, START, due, finishing, steps


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


def test_the_air_that_was_written_down_holds_for_the_coats_to_come_until_other_air_is():
    """52 °F is 18 below 70: twice as long, so 48 h instead of 24, for the third coat too; with
    70 °F at the second it is 24 h again."""
    cold = changed(
        finishing(**OIL), "tick", id="1", step="coat1", done_at=START, temperature="52 F"
    )
    assert due(cold)["coat2"] == "2026-12-02T18:20"
    assert due(cold)["coat3"] == "2026-12-04T18:40"
    told = "At least 48 h after the coat before it, in the air you noted."
    assert steps(cold)["coat3"]["about"].endswith(told)
    said = answered("entry", cold, id="1")["reckoning"]
    (between,) = [each["text"] for each in said["answers"] if each["key"] == "between"]
    assert between == "48 h at least"
    worked = [line["text"] for line in said["working"]]
    assert "Colder than 70 °F: 1 + (70 − 52) ÷ 18 ≈ 2" in worked
    second = {"id": "1", "step": "coat2", "done_at": "2026-12-02T18:20"}
    assert due(changed(cold, "tick", **second))["coat3"] == "2026-12-04T18:40"
    warm = changed(cold, "tick", **second, temperature="70 F")
    assert due(warm)["coat3"] == "2026-12-03T18:40"


def test_damp_air_that_was_noted_warns_of_the_coats_to_come():
    """Above 70% shellac turns cloudy, common practice, no source."""
    document = finishing(finish="shellac", start=START)
    damp = changed(document, "tick", id="1", step="coat1", done_at=START, humidity="80")
    told = answered("entry", damp, id="1")["reckoning"]["cautions"]
    assert told[0]["short"] == "Damp air can turn it cloudy."


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
