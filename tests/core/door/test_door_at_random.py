"""Ten thousand calls of the door at random: none ends as a fault, and what it gives it takes again.

The bench makes a million of them.
"""

import json
from collections import Counter

import pytest

from sawside import door
from sawside.messages import MESSAGES
from sawside.needs import Message
from sawside.project.acts.table import ACTS
from sawside.reckoners import RECKONERS
from sawside.tally.acts import ACTS as TALLY_ACTS
from tests.core.door.door_at_random import CALLS, Session, faults

SESSIONS = 50
EVERY = {
    "strip",
    *MESSAGES,
    *RECKONERS,
    "change: begin",
    "change: several",
    *(f"change: {act}" for act in ACTS),
    *(f"tally: {act}" for act in TALLY_ACTS),
}


def test_nothing_that_is_sent_ends_as_a_fault_or_spoils_a_project():
    """And every message, question and act was answered, so that no hole is passed by."""
    assert CALLS * SESSIONS == 10_000
    found, seen = [], Counter()
    for number in range(SESSIONS):
        session = Session(number).run()
        found += [(number, fault, message) for message, fault in session.faults]
        seen += session.seen
    assert not found, found[:3]
    assert not EVERY - seen.keys()


def test_a_session_makes_the_same_calls_again():
    one, other = Session(7), Session(7)
    made = [[json.dumps(each.message()) for _ in range(50)] for each in (one, other)]
    assert made[0] == made[1]


def broken(*_):
    raise ZeroDivisionError


def given(document):
    """What answers an act with this document."""
    return lambda: {"document": document, "undo": None}


GOOD = {
    "schema": 3,
    "name": "Record cabinet",
    "settings": {},
    "next": 2,
    "entries": [{"id": "1", "kind": "note", "name": "Note", "text": "Sand"}],
}


@pytest.mark.parametrize(
    ("answers", "fault"),
    [
        (broken, "internal"),
        (lambda: {"length": float("nan")}, "no JSON"),
        (lambda: {"length": {1, 2}}, "no JSON"),
        (given(GOOD | {"next": 1}), "refused"),
        (given(GOOD | {"entries": [GOOD["entries"][0] | {"name": " Note"}]}), "refused"),
    ],
)
def test_a_fault_that_is_put_in_is_found(monkeypatch, answers, fault):
    monkeypatch.setitem(MESSAGES, "read", Message(answers))
    (said,) = faults(door.handle({"do": "read", "text": "3"}))[:1]
    assert fault in said
