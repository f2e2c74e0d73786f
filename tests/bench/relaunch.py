"""The relaunch in every engine: browser closed, servers stopped for good, browser opened again.

From navigation to the first answer, over the plain page, which its own service worker keeps for
use without network in the same way; both in turn, every time in a browser started anew, with what
it has cached from the times before.
"""

import tempfile
from pathlib import Path
from statistics import median

from tests.bench import chromium, plain
from tests.bench.look import marked, way
from tests.browser.start_support import FIRST_ANSWER, SNAPSHOT_KEPT
from tests.engines import firefox, webkit
from web.build import serving

ROUNDS = 7
ENGINES = {
    "start.relaunch_ratio": chromium,
    "start.relaunch_ratio_firefox": firefox,
    "start.relaunch_ratio_webkit": webkit,
}


def measure():
    """Return the ratio of the medians for each engine."""
    return {name: ratio(engine) for name, engine in ENGINES.items()}


def ratio(engine):
    """Visit both pages until they are kept, then open them again and again without a server."""
    with tempfile.TemporaryDirectory() as folder:
        work = Path(folder)
        plain_page = plain.make(work / "plain")

        def timed(address, name):
            with engine.open_phone(work / "profile", chromium.SIZE) as page:
                page.goto(address)
                milliseconds = marked(page, name)
                if name == FIRST_ANSWER:
                    assert way(page) == "snapshot"
            return milliseconds

        with (
            serving.started(plain.ROOT / ".site") as ours,
            serving.started(plain_page) as compared,
        ):
            addresses = {FIRST_ANSWER: ours.address, plain.FIRST_ANSWER: compared.address}
            timed(ours.address, SNAPSHOT_KEPT)
            # The second visit passes through its service worker, which keeps what it sees.
            timed(compared.address, plain.CAN_KEEP)
            timed(compared.address, plain.FIRST_ANSWER)
        times = {name: [] for name in addresses}
        for _round in range(ROUNDS):
            for name, address in addresses.items():
                times[name].append(timed(address, name))
    print(engine.__name__, {name: [*map(round, each)] for name, each in times.items()}, flush=True)
    return median(times[FIRST_ANSWER]) / median(times[plain.FIRST_ANSWER])
