"""Presses of keys on our page, and on the same page with an echo in the place of Python.

The echo is a worker that answers what Python answered to the same question, without working it
out: what is left of the difference is what Python costs.
"""

import json
import math
import shutil
import tempfile
from contextlib import ExitStack
from pathlib import Path

from tests.bench.page import chromium, plain
from tests.bench.page.look import marked
from tests.browser.start.start_support import FIRST_ANSWER
from web.build import serving

HERE = Path(__file__).parent
ROUNDS = 3
IDLE = 15_000
"""Milliseconds until all that is done in idle time is done."""

# As a quick thumb does, and not in step with the screen.
PAUSES = [61, 74, 67, 83, 70]


def times(prepare, drive):
    """(milliseconds of ours, of the echo): one for each press, the two pages in turn.

    `prepare(page)` brings a page to where keys are pressed; `drive(page)` presses them and returns
    the times of `press`.
    """
    site = plain.ROOT / ".site"
    with tempfile.TemporaryDirectory() as folder, ExitStack() as open_:
        context = open_.enter_context(chromium.open_phone(Path(folder) / "profile")).context
        context.add_init_script((HERE / "key_watch.js").read_text())

        def page_at(folder):
            page = context.new_page()
            page.goto(open_.enter_context(serving.started(folder)).address)
            marked(page, FIRST_ANSWER)
            prepare(page)
            page.wait_for_timeout(IDLE)
            return page

        ours = page_at(site)
        drive(ours)
        echo_site = Path(folder) / "echo"
        shutil.copytree(site, echo_site)
        recorded = json.dumps(ours.evaluate("() => globalThis.answered"))
        worker = (HERE / "echo_worker.js").read_text().replace("RECORDED", recorded)
        (echo_site / "worker.js").write_text(worker)
        # The list for use without network would refuse the changed file.
        (echo_site / "service-worker.js").write_text("")
        echo = page_at(echo_site)
        drive(echo)
        seen = {ours: [], echo: []}
        for _round in range(ROUNDS):
            for page, found in seen.items():
                page.bring_to_front()
                found += drive(page)
    return seen[ours], seen[echo]


def begin(page):
    """Forget the times of the presses before."""
    page.evaluate("() => { globalThis.keyTimes.length = 0; }")


def press(page, key, typed):
    """Press one key, the `typed`th since `begin`, and wait until its answer is on the screen."""
    page.keyboard.press(key)
    page.wait_for_timeout(PAUSES[typed % len(PAUSES)])
    while page.evaluate("() => globalThis.keyTimes.length") < typed + 1:
        page.wait_for_timeout(20)


def seen(page):
    """The milliseconds from each press since `begin` to its answer on the screen."""
    return page.evaluate("() => globalThis.keyTimes")


def share(found, part):
    """The time that this part of all does not exceed."""
    return sorted(found)[math.ceil(part * len(found)) - 1]
