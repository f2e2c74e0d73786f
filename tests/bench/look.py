"""Waiting for what a page marks in its own timeline."""

import time

FIRST_ANSWER = "sawside:first-answer"
SNAPSHOT_KEPT = "sawside:snapshot-kept"
WAIT = 120
SCRIPT = "(name) => performance.getEntriesByName(name)[0]?.startTime ?? null"


def marked(evaluate, name):
    """Milliseconds from navigation to the mark `name`; `evaluate(script, name)` runs in the page."""
    last = time.monotonic() + WAIT
    while (seen := evaluate(SCRIPT, name)) is None:
        if time.monotonic() > last:
            raise TimeoutError(f"no mark {name} within {WAIT} s")
        time.sleep(0.1)
    return seen


def way(evaluate):
    """How the core came up that answered first: "snapshot" or "slow"."""
    script = "(name) => performance.getEntriesByName(name)[0].detail.way"
    return evaluate(script, FIRST_ANSWER)
