"""What a hand meets in a question on a narrow phone, its example filled in, and in everyday jobs.

Each question is opened by its address at 360 x 740. Seen are whether its first answer is in sight
before anything is scrolled, how many screens long it is, how many controls come before the answer,
and how many words its answer has before anything is unfolded. The jobs are counted in
everyday_jobs.csv, which says how.
"""

from pathlib import Path
from statistics import median

from playwright.sync_api import sync_playwright

import sawside
from tests.bench.page.everyday import jobs
from tests.browser.conftest import CHROMIUM, FLAGS, ROOT, SMALL
from web.build import serving

LOOK = (Path(__file__).parent / "hand.js").read_text(encoding="utf-8")
SECONDS = 1000


def measure():
    """Yield the four figures of the questions, and the worst of the jobs."""
    with serving.started(ROOT / ".site") as server, sync_playwright() as player:
        browser = player.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
        page = phone(browser)
        page.goto(server.address)
        seen = {key: look_at(page, server.address, key) for key in questions()}
        browser.close()
    yield from figures(seen)
    worst = max(jobs(), key=lambda job: job.share)
    print(f"hand: the worst of the everyday jobs is {worst.name}", flush=True)
    yield "hand.jobs_worst", worst.share


def phone(browser):
    """A page of a narrow phone that waits long enough for the slow start of the core."""
    size = {"width": SMALL[0], "height": SMALL[1]}
    page = browser.new_page(viewport=size, has_touch=True, is_mobile=True)
    page.set_default_timeout(90 * SECONDS)
    return page


def questions():
    """The keys of all questions, as the core describes them."""
    return [each["key"] for each in sawside.handle({"do": "describe"})["reckoners"]]


def look_at(page, address, key):
    """One question answered: {in_sight, screens, controls, words}."""
    page.goto(f"{address}#work-out/{key}")
    page.locator(f'#place[data-shows="work-out/{key}"]').wait_for()
    page.locator("button[name=example]").click()
    page.locator("output[name=result]:not(.waiting) .main-answer").wait_for()
    # As it is come to: nothing scrolled, which the click on the example may have done.
    return page.evaluate(LOOK)


def figures(seen):
    """The figures of all questions, and said on the way which are beyond a limit by themselves."""
    hidden = [key for key, each in seen.items() if not each["in_sight"]]
    print(f"hand: out of sight {hidden}", flush=True)
    yield "hand.answer_in_sight", 1 - len(hidden) / len(seen)
    for name in ("screens", "controls", "words"):
        most = sorted(seen, key=lambda key: -seen[key][name])[:5]
        print(f"hand: most {name}", {key: seen[key][name] for key in most}, flush=True)
        yield f"hand.{name}_median", median(each[name] for each in seen.values())
