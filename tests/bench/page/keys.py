"""From the press of a key to the frame that shows its answer, over the same with an echo.

On the tally stand 500 lines meanwhile, and one of the texts is as long as a sum may be.
"""

import sawside
from tests.bench.page import over_echo
from tests.bench.page.over_echo import share
from tests.browser.pad.in_sight import KEEP_TALLY

TEXTS = ["31 5/8+2 1/4", "7-13/16+3", "917.6 mm", "3' 2 1/4\"", "12.375-1/2"]
LONGEST = "(31 5/8 + 2 1/4) / 3 + 11/16 x 2 + 1/2 of 37 9/16 - 3' 2 1/4\" + "
LONGEST += "18 mm + 7-13/16 + 917.6 mm - 12.375 + (20 - 5.25) / 3 + 5 7/12 x 4 - 33/16 + "
LONGEST += "2 ft 7 9/32 in + 44.5 cm - 6' + 23 5/8"
TEXTS.append(LONGEST)
LINES = 500


def measure():
    """Yield key.answer_p95_ms, key.answer_p99_ms, and each over the echo's."""
    tally = long_tally()

    def prepare(page):
        page.evaluate(KEEP_TALLY, tally)
        page.reload()
        page.locator(".tally-line").first.wait_for()

    both = over_echo.times(prepare, type_all)
    ours, echoed = ([share(seen, part) for part in (0.95, 0.99)] for seen in both)
    print(f"keys: {len(both[0])}, p95 and p99 {ours} ms, echo {echoed} ms", flush=True)
    yield "key.presses", len(both[0])
    yield "key.answer_p95_ms", ours[0]
    yield "key.answer_p99_ms", ours[1]
    yield "key.answer_over_echo", ours[0] / echoed[0]
    yield "key.answer_over_echo_p99", ours[1] / echoed[1]


def long_tally():
    """What the page keeps of a tally of 500 lines, most of which use the line before."""
    texts = [f"[{line}] + 1/16" if line % 10 else "31 5/8" for line in range(LINES)]
    lines = [
        {"id": str(at), "name": "", "text": text, "unit": "in"} for at, text in enumerate(texts, 1)
    ]
    tally = {"schema": 2, "next": LINES + 1, "lines": lines}
    told = sawside.handle({"do": "tally", "tally": tally})
    return {"tally": told["tally"], "lines": told["lines"], "undo": [], "redo": []}


def type_all(page):
    """Type every text key by key; the milliseconds from each press to its answer on the screen."""
    field = page.locator("input[name=pad]")
    over_echo.begin(page)
    typed = 0
    for text in TEXTS:
        field.fill("")
        field.focus()
        page.wait_for_timeout(200)
        for letter in text:
            over_echo.press(page, letter if letter != " " else "Space", typed)
            typed += 1
    return over_echo.seen(page)
