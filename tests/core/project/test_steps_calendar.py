"""The steps as a calendar (RFC 5545), read back by a library that shares no code with it."""

from datetime import UTC, datetime, timedelta

import icalendar
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from projects import acts, answered, ask, begun, changed

START = "2026-11-30T18:00"
NOW = "2026-11-30T17:00Z"
OIL = {"finish": "linseed", "start": START}


def finishing(name="Finish", **values):
    line = {"name": name, "reckoner": "coats", "values": values or OIL}
    return acts(begun(), ("keep_line", line))


def events(document, **more):
    """The events of its calendar, as the other library reads them."""
    text = answered("calendar", document, **{"when": NOW} | more)["text"]
    return [*icalendar.Calendar.from_ical(text).walk("VEVENT")]


def told(document):
    """The steps as the project tells them."""
    steps = answered("entry", document, id="1")["reckoning"]["steps"]
    return {step["key"]: step for step in steps}


def test_another_reader_finds_every_step_with_its_time_its_words_and_an_alarm():
    steps = told(finishing())
    read = events(finishing())
    assert len(read) == len(steps)
    for event, step in zip(read, steps.values(), strict=True):
        start = event.decoded("DTSTART")
        assert start == datetime.fromisoformat(step["due"]["at"])
        assert start.tzinfo is None  # floating: RFC 5545, 3.3.5, form 1
        assert event["SUMMARY"] == f"{step['said']} (Finish)"
        about = [step["about"], step["caution"]["full"] if step["caution"] else ""]
        assert event["DESCRIPTION"] == "\n".join(filter(None, about))
        (alarm,) = event.walk("VALARM")
        assert alarm["ACTION"] == "DISPLAY"
        assert alarm.decoded("TRIGGER") == timedelta(0)
        assert not event.errors


def test_it_says_when_it_was_made_in_utc():
    """RFC 5545, 3.8.7.2."""
    made = {event.decoded("DTSTAMP") for event in events(finishing())}
    assert made == {datetime(2026, 11, 30, 17, tzinfo=UTC)}
    elsewhere = events(finishing(), when="2026-11-30T18:00+02:00")
    assert elsewhere[0].decoded("DTSTAMP") == datetime(2026, 11, 30, 16, tzinfo=UTC)


def test_a_step_has_the_same_name_after_a_change_so_that_it_is_moved_and_not_doubled():
    document = finishing()
    late = changed(document, "tick", id="1", step="coat1", done_at="2026-12-02T18:00")
    before = {event["UID"]: event.decoded("DTSTART") for event in events(document)}
    after = {event["UID"]: event.decoded("DTSTART") for event in events(late)}
    assert len(before) == len(events(document))
    assert before.keys() - after.keys() == {next(uid for uid in before if uid.startswith("coat1"))}
    assert all(after[uid] > before[uid] for uid in after)


def test_a_step_keeps_its_name_when_the_project_is_renamed_and_is_not_that_of_another():
    renamed = changed(finishing(), "rename_project", name="Console")
    named = [
        {str(event["UID"]) for event in events(document, project=project)}
        for document, project in ((finishing(), "a1"), (renamed, "a1"), (finishing(), "b2"))
    ]
    assert named[0] == named[1]
    assert not named[0] & named[2]


def test_what_is_done_is_in_no_calendar_and_one_line_can_be_asked_for_alone():
    document = acts(finishing(), ("keep_line", {"name": "Top", "reckoner": "coats", "values": OIL}))
    one, both = events(document, id="2"), events(document)
    assert {event["SUMMARY"].partition(" (")[2] for event in one} == {"Top)"}
    assert len(both) == 2 * len(one)
    assert len({event["UID"] for event in both}) == len(both)
    ticked = changed(document, "tick", id="2", step="coat1", done_at=START)
    assert len(events(ticked, id="2")) == len(one) - 1


def test_what_must_have_been_done_before_what_is_done_is_in_no_calendar():
    document = changed(finishing(), "tick", id="1", step="coat2", done_at="2026-12-01T18:20")
    there = {str(event["UID"]).partition("-")[0] for event in events(document)}
    assert not {"coat1", "wipe1", "coat2"} & there
    assert {"rags1", "wipe2", "coat3"} <= there


def lines_are_well_formed(text):
    """RFC 5545, 3.1: lines end in CRLF and have at most 75 octets without it."""
    assert text.endswith("\r\n")
    assert text.count("\n") == text.count("\r") == text.count("\r\n")
    for line in text.encode().split(b"\r\n"):
        assert len(line) <= 75
        line.decode()  # none ends inside a character


@settings(max_examples=80, deadline=None)
@given(st.text(st.characters(exclude_categories=["C", "Zl", "Zp"]), min_size=1, max_size=80))
def test_any_name_comes_through_in_lines_of_75_octets(name):
    name = " ".join(name.replace("[", "").replace("]", "").split()) or "Oil; wax, \\n"
    document = finishing(name)
    kept = document["entries"][0]["name"]
    file = answered("calendar", document, when=NOW)
    lines_are_well_formed(file["text"])
    read = events(document)
    assert read[0]["SUMMARY"] == f"First coat ({kept})"


def test_the_last_year_that_can_be_typed_has_a_calendar_too():
    read = events(finishing(finish="linseed", start="2100-12-31T20:00"))
    assert read[-1].decoded("DTSTART").year == 2101


def test_it_leaves_as_a_file_that_calendars_open():
    file = answered("calendar", finishing(), when=NOW)
    assert file["name"] == "record-cabinet-steps.ics"
    assert file["type"] == "text/calendar;charset=utf-8"
    calendar = icalendar.Calendar.from_ical(file["text"])
    assert calendar["VERSION"] == "2.0"
    assert calendar["PRODID"]


@pytest.mark.parametrize(
    ("document", "more", "said"),
    [
        (finishing(finish="shellac"), {}, "No step has a time yet."),
        (begun(), {}, "No step has a time yet."),
        (finishing(), {"id": "9"}, "isn’t in the project"),
        (finishing(), {"when": "soon"}, "not a date and time"),
        (finishing(), {"when": "0001-01-01T00:00+23:00"}, "not a date and time"),
        (finishing(), {"when": None}, "isn’t there"),
    ],
)
def test_a_calendar_with_nothing_in_it_is_refused_and_says_what_to_do(document, more, said):
    refused = ask("calendar", document, **{"when": NOW} | more)
    assert said in refused["error"]["message"]
    assert refused["error"]["remedy"].endswith(".")
