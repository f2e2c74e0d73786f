"""Random shelves: their places by a case built up by hand, their sag by an independent beam.

And a side of 60 shelves and 200 holes in the browser: from the press of a key to its answer with
its drawing, over the same with an echo in the place of Python.
"""

from tests.bench.core.judged import judged
from tests.bench.page import over_echo
from tests.core.oracles import loaded_shelf, spaced_shelves

CASES = 10_000
CHECKS = (*spaced_shelves.CHECKS, *3 * loaded_shelf.CHECKS)
"""The sag more often than each way of spacing: so many things go into it."""

QUESTION = "shelves_on_a_hole_grid"
TYPED = {
    "thickness": "3/8 in",
    "shelf_count": "60",
    "first": "3/8 in",
    "own_pitch": "15/32 in",
    "rest": "1/8 in",
    "height": "96",
}
"""The height comes last: it has the focus, and each key of `KEYS` leaves a height that works."""

KEYS = [".", "5", "Backspace", "2", "5", "Backspace", "Backspace", "Backspace"] * 4


def measure():
    """Yield shelves.oracle_cases, shelves.oracle_wrong and shelves.answer_over_echo."""
    ours, echoed = (over_echo.share(seen, 0.95) for seen in over_echo.times(fill, press_keys))
    print(f"shelves: p95 {ours} ms, echo {echoed} ms", flush=True)
    yield "shelves.answer_p95_ms", ours
    yield "shelves.answer_over_echo", ours / echoed
    yield from judged("shelves", CHECKS, CASES)


def fill(page):
    """Open the question and fill it in."""
    page.evaluate(f"() => {{ location.hash = 'work-out/{QUESTION}'; }}")
    page.locator("input[name=height]").wait_for()
    page.get_by_role("button", name="Hole spacing").click()
    page.get_by_role("radio", name="My own").click()
    page.locator("summary.fold-row").click()
    for key, text in TYPED.items():
        page.locator(f"input[name={key}]").fill(text)
    page.locator("output[name=result] svg").first.wait_for()


def press_keys(page):
    """Change the height key by key; the milliseconds from each press to its answer."""
    field = page.locator("input[name=height]")
    field.focus()
    page.keyboard.press("End")
    page.wait_for_timeout(400)
    over_echo.begin(page)
    for typed, key in enumerate(KEYS):
        over_echo.press(page, key, typed)
    return over_echo.seen(page)
