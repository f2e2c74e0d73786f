"""Make the pictures that the manifest shows to a person who is about to install the app.

Run after the screens have changed, with the site built and the root on the path:
`PYTHONPATH=. .environment/bin/python -m tests.browser.screenshots`
"""

from playwright.sync_api import sync_playwright

from tests.browser.conftest import CHROMIUM, FLAGS, LARGE, ROOT
from tests.browser.hand import keep_as, open_place, open_question, tap_keys
from tests.browser.words import EXAMPLE
from web.build import serving

ICONS = ROOT / "web/icons"


def take(page):
    """A rail of the record cabinet: on the pad, worked out, and at the saw."""

    def shot(name):
        page.locator(".notice").wait_for(state="detached")
        page.screenshot(path=ICONS / f"screenshot-{name}.png")

    tap_keys(page, "37 9/16")
    page.get_by_role("button", name="Enter", exact=True).tap()
    page.locator(".tally-line").wait_for()
    tap_keys(page, "31 5/8+2 1/4")
    page.locator("output[name=pad-answer] .tape").wait_for()
    shot("pad")
    open_question(page, "rail", "Mitered length")
    page.get_by_role("button", name=EXAMPLE).tap()
    page.locator(".asked-picture svg.drawing").wait_for()
    shot("mitered-length")
    keep_as(page, "Top rail")
    page.get_by_role("button", name="Close the message").tap()
    open_place(page, "At the saw")
    page.locator(".piece").wait_for()
    shot("at-the-saw")


def main():
    """Serve the built site, tap through it, and write the pictures beside the icons."""
    with serving.started(ROOT / ".site") as server, sync_playwright() as player:
        browser = player.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
        size = {"width": LARGE[0], "height": LARGE[1]}
        page = browser.new_page(viewport=size, has_touch=True, is_mobile=True)
        page.goto(server.address)
        take(page)
        browser.close()


if __name__ == "__main__":
    main()
