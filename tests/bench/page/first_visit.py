"""The first visit, with nothing kept: its time, and what is sent until the first answer."""

import gzip
import tempfile
from itertools import takewhile
from pathlib import Path
from statistics import median

from tests.bench.page import chromium, plain
from tests.bench.page.look import marked
from tests.browser.start.start_support import FIRST_ANSWER, RecordingServer
from web.build import serving

ROUNDS = 7
# The first of these is asked for when the first answer has been given, as the tests show.
FOR_LATER = {"python/wheels-rest.zip", "service-worker.js"}


def measure():
    """Yield start.first_visit_ratio, start.first_visit_bytes and their ratio, over plain."""
    times, sizes = {}, {}
    with tempfile.TemporaryDirectory() as folder:
        work = Path(folder)
        sites = {FIRST_ANSWER: plain.ROOT / ".site", plain.FIRST_ANSWER: plain.make(work / "plain")}
        for turn in range(ROUNDS):
            for name, site in sites.items():
                server = RecordingServer(site)
                with chromium.open_phone(work / f"{turn}-{site.name}") as page:
                    page.goto(server.address)
                    times.setdefault(name, []).append(marked(page, name))
                    sizes[name] = size_as_sent(site, server.whole_files())
                server.stop()
    print("first visit", {name: [*map(round, each)] for name, each in times.items()}, flush=True)
    first, plain_first = median(times[FIRST_ANSWER]), median(times[plain.FIRST_ANSWER])
    yield "start.first_visit_ratio", first / plain_first
    yield "start.first_visit_bytes", sizes[FIRST_ANSWER]
    yield "start.first_visit_bytes_ratio", sizes[FIRST_ANSWER] / sizes[plain.FIRST_ANSWER]


def size_as_sent(site, paths):
    """Bytes of the files sent before those for later, compressed as static hosts do."""
    before = takewhile(lambda path: path not in FOR_LATER, paths)
    return sum(squeezed(site / (path or "index.html")) for path in before)


def squeezed(file):
    content = file.read_bytes()
    return len(gzip.compress(content, 6) if serving.is_squeezed(file.name) else content)
