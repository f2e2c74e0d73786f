"""The start in Chromium at phone size, over the plain page in the same browser.

Relaunch: the browser is closed, the site's server stopped, the browser opened again. First visit:
an empty profile. Both from navigation to the first answer; medians of interleaved rounds.
"""

import gzip
import tempfile
from pathlib import Path
from statistics import median

from playwright.sync_api import sync_playwright

from tests.bench import plain
from tests.bench.look import FIRST_ANSWER, SNAPSHOT_KEPT, marked, way
from tests.browser.conftest import CHROMIUM, FLAGS
from tests.browser.start_support import RecordingServer
from web.build import serving

ROUNDS = 7
PHONE = {
    "viewport": {"width": 412, "height": 915},
    "has_touch": True,
    "is_mobile": True,
    "executable_path": CHROMIUM,
    "args": FLAGS,
}


def measure():
    """Return start.relaunch_ratio, its like in one browser, and the ratios of the first visit."""
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as player:
        work = Path(folder)
        page = plain.make(work / "plain")
        site = plain.ROOT / ".site"

        def browser(profile):
            return player.chromium.launch_persistent_context(work / profile, **PHONE)

        with serving.started(page) as compared:
            relaunch = relaunches(browser, site, compared.address)
        return {**relaunch, **first_visits(browser, site, page)}


def opened(context, address, name):
    """Open `address` in a page of its own; milliseconds to the mark `name`, and the page."""
    page = context.new_page()
    page.goto(address)
    return marked(page.evaluate, name), page


def relaunches(browser, site, plain_address):
    """Time the relaunch, first with the browser closed in between, then with it left open."""
    with serving.started(site) as server:
        address = server.address
        context = browser("kept")
        _time, page = opened(context, address, SNAPSHOT_KEPT)
        # The plain page too is judged with all in the browser's cache.
        opened(context, plain_address, plain.FIRST_ANSWER)
        context.close()

    def take(context, ours, others):
        others.append(opened(context, plain_address, plain.FIRST_ANSWER)[0])
        if fresh:
            context.close()
            context = browser("kept")
        time, page = opened(context, address, FIRST_ANSWER)
        assert way(page.evaluate) == "snapshot"
        ours.append(time)
        return context

    ratios = {}
    for name, fresh in (("start.relaunch_ratio", True), ("start.relaunch_ratio_left_open", False)):
        ours, others = [], []
        context = browser("kept")
        for _round in range(ROUNDS):
            context = take(context, ours, others)
            if fresh:
                context.close()
                context = browser("kept")
            else:
                for page in context.pages[1:]:
                    page.close()
        context.close()
        ratios[name] = median(ours) / median(others)
        print(name, [round(time) for time in ours], [round(time) for time in others], flush=True)
    return ratios


def first_visits(browser, site, plain_page):
    """Time a visit with nothing kept, and count what had been sent when the first answer came."""
    times, sizes = {}, {}
    for turn in range(ROUNDS):
        for folder, name in ((plain_page, plain.FIRST_ANSWER), (site, FIRST_ANSWER)):
            server = RecordingServer(folder)
            context = browser(f"{name[:5]}-{turn}")
            times.setdefault(name, []).append(opened(context, server.address, name)[0])
            sizes[name] = size_as_sent(folder, server.whole_files())
            context.close()
            server.stop()
    print("first visit", {name: [round(time) for time in each] for name, each in times.items()})
    print("bytes", sizes, flush=True)
    return {
        "start.first_visit_ratio": median(times[FIRST_ANSWER]) / median(times[plain.FIRST_ANSWER]),
        "start.first_visit_bytes": sizes[FIRST_ANSWER],
        "start.first_visit_bytes_ratio": sizes[FIRST_ANSWER] / sizes[plain.FIRST_ANSWER],
    }


def size_as_sent(folder, paths):
    """Bytes of the files sent before the service worker was, compressed as a static host does."""
    if "service-worker.js" in paths:
        paths = paths[: paths.index("service-worker.js")]
    total = 0
    for path in paths:
        content = (folder / (path or "index.html")).read_bytes()
        total += (
            len(gzip.compress(content, 6)) if serving.is_squeezed(path or ".html") else len(content)
        )
    return total
