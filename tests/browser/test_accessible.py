"""Every place, light and dark, meets axe-core's checks: WCAG 2.2 A and AA, and AAA contrast (7:1).

Targets are at least 56 px high, and at twice the text size nothing is wider than the screen.
"""

from urllib.parse import quote

import pytest

import sawside
from tests.browser.conftest import LARGE, ROOT, SMALL
from tests.browser.hand import keep_as, try_example

SCRIPTS = [ROOT / "web/node_modules/axe-core/axe.min.js", ROOT / "tests/browser/accessible.js"]
TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]
PLACES = ["pad", "tally", "work-out", "project", "projects", "saw", "settings", "shop-sheet"]
PLACES += ["labels", "backup", "note", "reading/1", "sure/1", "sure/2", "try/2/piece"]
PLACES += ["about/2/piece", "new-reading", "pieces", "restore", "plan"]
DESCRIBED = sawside.handle({"do": "describe"})
PLACES += [f"questions/{quote(each['key'])}" for each in DESCRIBED["jobs"]]
PLACES += [f"work-out/{each['key']}" for each in DESCRIBED["reckoners"]]


def open_place(page, server, place):
    """Open a place by its address; a question shows its example."""
    page.goto(f"{server.address}#{place}")
    page.locator(f'#place[data-shows="{place}"]').wait_for()
    if place.startswith("work-out/"):
        try_example(page)


def fill_project(page, server):
    """A reading, a tally and a piece, so that no place is empty."""
    page.goto(server.address)
    page.get_by_role("textbox", name="Length or sum").fill("31 5/8 + 2 1/4")
    page.locator("output[name=pad-answer] .tape").wait_for()
    keep_as(page, "Alcove width")
    page.get_by_role("button", name="Enter", exact=True).tap()
    page.locator(".tally-line").wait_for()
    open_place(page, server, "work-out/mitered_length")
    keep_as(page, "Top rail")
    open_place(page, server, "work-out")


def axe(page):
    """Run axe-core as the browser's own tools would: the page's policy allows no foreign script."""
    text = "\n".join(script.read_text(encoding="utf-8") for script in SCRIPTS)
    return page.evaluate(f"(tags) => {{ {text}\nreturn sawsideAxe(tags); }}", TAGS)


@pytest.mark.parametrize(("size", "dark"), [(SMALL, False), (LARGE, True)], ids=["light", "dark"])
def test_axe_finds_nothing_in_any_place(phone, server, size, dark):
    page = phone(size, dark=dark).pages[0]
    fill_project(page, server)
    found = {}
    for place in PLACES:
        open_place(page, server, place)
        seen = axe(page)
        assert seen["passed"] > 10
        if seen["wrong"]:
            found[place] = seen["wrong"]
    assert found == {}


def test_the_check_finds_what_is_wrong(phone, server):
    page = phone().pages[0]
    page.goto(server.address)
    page.locator("#place[data-shows]").wait_for()
    page.evaluate("document.querySelector('#place').append(document.createElement('button'))")
    assert any(each.startswith("button-name") for each in axe(page)["wrong"])


def test_at_twice_the_text_size_nothing_is_wider_than_the_screen_and_no_word_is_broken(
    phone, server
):
    page = phone().pages[0]
    fill_project(page, server)
    page.evaluate("document.documentElement.style.fontSize = '200%'")
    script = SCRIPTS[1].read_text(encoding="utf-8")
    wide, broken = [], {}
    for place in PLACES:
        open_place(page, server, place)
        if page.evaluate("document.querySelector('#place').scrollWidth > innerWidth"):
            wide.append(place)
        if words := page.evaluate(f"() => {{ {script}\nreturn sawsideBrokenWords(); }}"):
            broken[place] = words
    assert wide == []
    assert broken == {}


def test_whatever_is_pressed_is_large_enough_for_a_glove(phone, server):
    page = phone().pages[0]
    fill_project(page, server)
    script = SCRIPTS[1].read_text(encoding="utf-8")
    small = {}
    for place in PLACES:
        open_place(page, server, place)
        if found := page.evaluate(f"() => {{ {script}\nreturn sawsideSmallTargets(); }}"):
            small[place] = found
    assert small == {}
