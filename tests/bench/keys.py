"""From the press of a key to the frame that shows its answer, over the same with an echo.

The echo is a worker that answers what Python answered to the same question, without working it
out: what is left of the difference is what Python costs. On the tally stand 500 lines meanwhile,
and one of the texts is as long as a sum may be.
"""

import json
import math
import shutil
import tempfile
from contextlib import ExitStack
from pathlib import Path

import sawside
from tests.bench import chromium, plain
from tests.bench.look import marked
from tests.browser.start_support import FIRST_ANSWER
from web.build import serving

HERE = Path(__file__).parent
TEXTS = ["31 5/8+2 1/4", "7-13/16+3", "917.6 mm", "3' 2 1/4\"", "12.375-1/2"]
LONGEST = "(31 5/8 + 2 1/4) / 3 + 11/16 x 2 + 1/2 of 37 9/16 - 3' 2 1/4\" + "
LONGEST += "18 mm + 7-13/16 + 917.6 mm - 12.375 + (20 - 5.25) / 3 + 5 7/12 x 4 - 33/16 + "
LONGEST += "2 ft 7 9/32 in + 44.5 cm - 6' + 23 5/8"
TEXTS.append(LONGEST)
LINES = 500
ROUNDS = 3
# As a quick thumb does, and not in step with the screen.
PAUSES = [61, 74, 67, 83, 70]
KEEP_TALLY = """(tally) => new Promise((resolve, reject) => {
  const opened = indexedDB.open("sawside");
  opened.onerror = reject;
  opened.onsuccess = () => {
    const writing = opened.result.transaction("page", "readwrite");
    writing.objectStore("page").put(tally, "tally");
    writing.oncomplete = () => {
      opened.result.close();
      resolve();
    };
  };
})"""


def measure():
    """Return key.answer_p95_ms, key.answer_p99_ms, and each over the echo's."""
    tally = long_tally()
    site = plain.ROOT / ".site"
    with tempfile.TemporaryDirectory() as folder, ExitStack() as open_:
        context = open_.enter_context(chromium.open_phone(Path(folder) / "profile")).context
        context.add_init_script((HERE / "key_watch.js").read_text())

        def page_at(folder):
            page = context.new_page()
            page.goto(open_.enter_context(serving.started(folder)).address)
            marked(page, FIRST_ANSWER)
            page.evaluate(KEEP_TALLY, tally)
            page.reload()
            page.locator(".tally-line").first.wait_for()
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
    ours, echoed = ([share(seen, part) for part in (0.95, 0.99)] for seen in times.values())
    print(f"keys: {len(times[real])}, p95 and p99 {ours} ms, echo {echoed} ms", flush=True)
    return {
        "key.presses": len(times[real]),
        "key.answer_p95_ms": ours[0],
        "key.answer_p99_ms": ours[1],
        "key.answer_over_echo": ours[0] / echoed[0],
        "key.answer_over_echo_p99": ours[1] / echoed[1],
    }


def long_tally():
    """What the page keeps of a tally of 500 lines, most of which use the line before."""
    texts = [f"[{line}] + 1/16" if line % 10 else "31 5/8" for line in range(LINES)]
    lines = [
        {"id": str(at), "name": "", "text": text, "unit": "in"} for at, text in enumerate(texts, 1)
    ]
    tally = {"schema": 1, "next": LINES + 1, "lines": lines}
    told = sawside.handle({"do": "tally", "tally": tally})
    return {"tally": told["tally"], "lines": told["lines"], "undo": [], "redo": []}


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


def share(times, part):
    """The time that this part of all does not exceed."""
    return sorted(times)[math.ceil(part * len(times)) - 1]
