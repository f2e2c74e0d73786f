"""From the press of a key to the frame that shows its answer, over the same with an echo.

The echo is a worker that answers what Python answered to the same question, without working it
out: what is left of the difference is what Python costs.
"""

import json
import math
import shutil
import tempfile
from contextlib import ExitStack
from pathlib import Path

from tests.bench import chromium, plain
from tests.bench.look import marked
from tests.browser.start_support import FIRST_ANSWER
from web.build import serving

HERE = Path(__file__).parent
TEXTS = ["31 5/8+2 1/4", "7-13/16+3", "917.6 mm", "3' 2 1/4\"", "12.375-1/2"]
ROUNDS = 4
# As a quick thumb does, and not in step with the screen.
PAUSES = [61, 74, 67, 83, 70]


def measure():
    """Return key.answer_p95_ms and key.answer_over_echo, p95 over p95."""
    site = plain.ROOT / ".site"
    with tempfile.TemporaryDirectory() as folder, ExitStack() as open_:
        context = open_.enter_context(chromium.open_phone(Path(folder) / "profile")).context
        context.add_init_script((HERE / "key_watch.js").read_text())

        def page_at(folder):
            page = context.new_page()
            page.goto(open_.enter_context(serving.started(folder)).address)
            marked(page, FIRST_ANSWER)
            page.wait_for_timeout(15_000)  # until all that is done in idle time is done
            return page

        real = page_at(site)
        type_all(real)
        echo_site = Path(folder) / "echo"
        shutil.copytree(site, echo_site)
        recorded = json.dumps(real.evaluate("() => globalThis.answered"))
        worker = (HERE / "echo_worker.js").read_text().replace("RECORDED", recorded)
        (echo_site / "worker.js").write_text(worker)
        # The list for use without network would refuse the changed file.
        (echo_site / "service-worker.js").write_text("")
        echo = page_at(echo_site)
        type_all(echo)
        times = {real: [], echo: []}
        for _round in range(ROUNDS):
            for page, seen in times.items():
                page.bring_to_front()
                seen += type_all(page)
        ours, echoed = (p95(seen) for seen in times.values())
    print(f"keys: {len(times[real])}, p95 {ours:.1f} ms, echo {echoed:.1f} ms", flush=True)
    return {"key.answer_p95_ms": ours, "key.answer_over_echo": ours / echoed}


def type_all(page):
    """Type every text key by key; the milliseconds from each press to its answer on the screen."""
    field = page.locator("input[name=pad]")
    count = "() => globalThis.keyTimes.length"
    page.evaluate("() => { globalThis.keyTimes.length = 0; }")
    typed = 0
    for text in TEXTS:
        field.fill("")
        field.focus()
        page.wait_for_timeout(200)
        for letter in text:
            page.keyboard.press(letter if letter != " " else "Space")
            page.wait_for_timeout(PAUSES[typed % len(PAUSES)])
            typed += 1
            while page.evaluate(count) < typed:
                page.wait_for_timeout(20)
    return page.evaluate("() => globalThis.keyTimes")


def p95(times):
    """The time that 95 in 100 do not exceed."""
    return sorted(times)[math.ceil(0.95 * len(times)) - 1]
