"""The relaunch in every engine: browser closed, servers stopped for good, browser opened again.

From navigation to the first answer, over the plain page, which its own service worker keeps for
use without network in the same way; both in turn, every time in a browser started anew, once its
own start is over, with what it has cached from the times before.
"""

import tempfile
import time
from contextlib import suppress
from pathlib import Path
from statistics import median

from tests.bench.figures import CRASHES
from tests.bench.page import chromium, plain
from tests.bench.page.look import marked, way
from tests.browser.start.start_support import FIRST_ANSWER, SNAPSHOT_KEPT
from tests.engines import firefox, webkit
from web.build import serving

ROUNDS = 7
# Until a browser has done what it does at its own start, in seconds.
SETTLED = 1.5
# Pyodide's own start, without our limits on silence, hangs in WebKit once in some twenty times,
# and has taken WebKit with it.
PLAIN_TRIES = 3
ENGINES = {
    "start.relaunch_ratio": chromium,
    "start.relaunch_ratio_firefox": firefox,
    "start.relaunch_ratio_webkit": webkit,
}


def measure(name):
    """Yield the ratio of the medians for the engine of that figure."""
    yield name, ratio(ENGINES[name])


def ratio(engine):
    """Visit both pages until they are kept, then open them again and again without a server."""
    with tempfile.TemporaryDirectory() as folder:
        work = Path(folder)
        plain_page = plain.make(work / "plain")

        def timed(address, name):
            with engine.open_phone(work / "profile", chromium.SIZE) as page:
                time.sleep(SETTLED)
                page.goto(address)
                milliseconds = marked(page, name)
                if name == FIRST_ANSWER:
                    assert way(page) == "snapshot"
            return milliseconds

        def timed_plain(address, name):
            for _try in range(PLAIN_TRIES):
                with suppress(TimeoutError, *CRASHES):
                    return timed(address, name)
            failed = f"the plain page hung or took the engine with it {PLAIN_TRIES} times"
            raise TimeoutError(f"{engine.__name__}: {failed}")

        with serving.started(plain.ROOT / ".site") as ours, serving.started(plain_page) as compared:
            timed(ours.address, SNAPSHOT_KEPT)
            # The second visit passes through its service worker, which keeps what it sees.
            timed_plain(compared.address, plain.CAN_KEEP)
            timed_plain(compared.address, plain.FIRST_ANSWER)
        restored, booted = [], []
        for _round in range(ROUNDS):
            booted.append(timed_plain(compared.address, plain.FIRST_ANSWER))
            restored.append(timed(ours.address, FIRST_ANSWER))
    print(engine.__name__, [*map(round, restored)], [*map(round, booted)], flush=True)
    return median(restored) / median(booted)
