"""Every place, light and dark, meets the checks of axe-core (WCAG 2.2 A and AA, and AAA contrast)."""

import pytest

from tests.browser.conftest import LARGE, ROOT, SMALL
from tests.browser.hand import keep_as, open_place

AXE = ROOT / "web/node_modules/axe-core/axe.min.js"
RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]
PLACES = ["pad", "work-out", "work-out/mitered_length", "work-out/equal_shelf_spacing", "work-out/read_the_tape", "project", "saw", "settings"]


def violations(page):
    """What axe-core finds wrong, as readable lines."""
    # The page's policy allows no foreign script; the test's own is put in by the browser's tools.
    page.evaluate(AXE.read_text(encoding="utf-8") + ";0")
    found = page.evaluate(
        """(tags) => axe.run({runOnly: {type: 'tag', values: tags}, rules: {'color-contrast-enhanced': {enabled: true}}})
            .then((result) => result.violations.map((each) =>
              `${each.id}: ${each.help}: ${each.nodes.map((node) => node.html.slice(0, 120)).join(' | ')}`))""",
        RULES,
    )
    return found


@pytest.mark.parametrize(("size", "dark"), [(SMALL, False), (LARGE, True)], ids=["light", "dark"])
def test_axe_finds_nothing_in_any_place(phone, server, size, dark):
    page = phone(size, dark=dark).pages[0]
    page.goto(server.address)
    page.get_by_role("textbox", name="Length or sum").fill("31 5/8 + 2 1/4")
    page.locator("output[name=pad-answer] .tape").wait_for()
    keep_as(page, "Alcove width")
    open_place(page, "Work out")
    page.get_by_role("link", name="Mitered length").tap()
    page.get_by_role("button", name="Show the example").tap()
    page.locator("output[name=result] .main-answer").wait_for()
    keep_as(page, "Top rail")
    found = {}
    for place in PLACES:
        page.goto(f"{server.address}#{place}")
        page.locator("#place > *").first.wait_for()
        if "/" in place:
            page.get_by_role("button", name="Show the example").tap()
            page.locator("output[name=result] .main-answer").wait_for()
        if wrong := violations(page):
            found[place] = wrong
    assert found == {}


@pytest.mark.parametrize("place", PLACES)
def test_at_twice_the_text_size_nothing_is_wider_than_the_screen(phone, server, place):
    page = phone(SMALL).pages[0]
    page.goto(f"{server.address}#{place}")
    page.evaluate("document.documentElement.style.fontSize = '200%'")
    page.locator("#place > *").first.wait_for()
    if "/" in place:
        page.get_by_role("button", name="Show the example").tap()
        page.locator("output[name=result] .main-answer").wait_for()
    assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")


@pytest.mark.parametrize("place", PLACES)
def test_whatever_is_pressed_at_the_saw_is_large_enough_for_a_glove(phone, server, place):
    page = phone(SMALL).pages[0]
    page.goto(f"{server.address}#{place}")
    page.locator("#place > *").first.wait_for()
    if "/" in place:
        page.get_by_role("button", name="Show the example").tap()
        page.locator("output[name=result] .main-answer").wait_for()
    small = page.evaluate(
        """() => [...document.querySelectorAll('main button, main input:not([type=radio]), main select, main label.choice, nav a, .sheet button')]
            .filter((each) => each.offsetParent && !each.closest('[hidden]'))
            .map((each) => [each.textContent || each.name, each.getBoundingClientRect()])
            .filter(([, box]) => box.height < 56 || box.width < 44)
            .map(([name, box]) => `${name}: ${box.width} × ${box.height}`)"""
    )
    assert small == []
