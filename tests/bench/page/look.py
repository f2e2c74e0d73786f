"""Waiting for what a page marks in its own timeline."""

import time

from tests.browser.start.start_support import FIRST_ANSWER

WAIT = 60
MARK = "(name) => performance.getEntriesByName(name)[0]?.startTime ?? null"
WAY = "(name) => performance.getEntriesByName(name)[0].detail.way"


def marked(page, name):
    """Milliseconds from navigation to the mark `name`; `page` has Playwright's `evaluate`."""
    last = time.monotonic() + WAIT
    while (seen := page.evaluate(MARK, name)) is None:
        if time.monotonic() > last:
            raise TimeoutError(f"no mark {name} within {WAIT} s")
        time.sleep(0.1)
    return seen


def way(page):
    """How the core came up that answered first: "snapshot" or "slow"."""
    return page.evaluate(WAY, FIRST_ANSWER)
