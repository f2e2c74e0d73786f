"""The door called at random a million times, on all processors (`door_at_random` of its tests)."""

import json
from multiprocessing import Pool

from tests.core.door.door_at_random import CALLS, Session

MOST_CALLS = 1_000_000
_SHOWN = 20
_LETTERS = 2000


def measure():
    """Yield door.calls, door.internal, door.faults (of any kind) and door.slowest_ms."""
    calls = internal = 0
    faults, slowest = [], (0, "")
    with Pool() as processes:
        sessions = range(MOST_CALLS // CALLS)
        for found, slow in processes.imap_unordered(_session, sessions, chunksize=5):
            calls += CALLS
            faults += found
            internal += sum("internal" in fault for fault in found)
            slowest = max(slowest, slow)
    for fault in faults[:_SHOWN]:
        print(f"door: {fault}", flush=True)
    print(f"door: slowest {slowest[1]}", flush=True)
    yield "door.calls", calls
    yield "door.internal", internal
    yield "door.faults", len(faults)
    yield "door.slowest_ms", 1000 * slowest[0]


def _session(number):
    """(its faults as texts, (seconds of its slowest answer, that message)) of one session."""
    session = Session(number).run()
    seconds, message = session.slowest
    faults = [f"session {number}: {fault}: {_short(said)}" for said, fault in session.faults]
    return faults, (seconds, f"session {number}: {_short(message)}")


def _short(message):
    told = {key: value for key, value in message.items() if key not in ("document", "tally")}
    return json.dumps(told)[:_LETTERS]
