"""The relaunch in Firefox, over the plain page in the same browser, without the site's server."""

import tempfile
from pathlib import Path
from statistics import median

from playwright.sync_api import sync_playwright

from tests.bench import plain
from tests.bench.look import FIRST_ANSWER, SNAPSHOT_KEPT, marked, way
from web.build import serving

ROUNDS = 7
FIREFOX = {"channel": "moz-firefox", "executable_path": "/usr/bin/firefox-esr"}


def measure():
    """Return start.relaunch_ratio_firefox, from medians of interleaved rounds."""
    ours, others = [], []
    with (
        tempfile.TemporaryDirectory() as folder,
        sync_playwright() as player,
        serving.started(plain.make(Path(folder))) as compared,
    ):
        browser = player.firefox.launch(**FIREFOX)
        context = browser.new_context(viewport={"width": 412, "height": 915})

        def timed(address, name):
            page = context.new_page()
            page.goto(address)
            time = marked(page.evaluate, name)
            start = way(page.evaluate) if name == FIRST_ANSWER else None
            page.close()
            return time, start

        with serving.started(plain.ROOT / ".site") as server:
            address = server.address
            timed(address, SNAPSHOT_KEPT)
            timed(compared.address, plain.FIRST_ANSWER)
        for _round in range(ROUNDS):
            others.append(timed(compared.address, plain.FIRST_ANSWER)[0])
            time, start = timed(address, FIRST_ANSWER)
            assert start == "snapshot"
            ours.append(time)
        browser.close()
    print("firefox", [round(time) for time in ours], [round(time) for time in others], flush=True)
    return {"start.relaunch_ratio_firefox": median(ours) / median(others)}
