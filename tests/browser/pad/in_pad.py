"""What a thumb does on the pad, and what it then sees there."""

from tests.browser.hand import tap_keys


def answer(page, words):
    """Wait until the answer of the pad says these words."""
    page.locator("output[name=pad-answer]").get_by_text(words, exact=True).wait_for()


def key(page, name):
    """Tap one key by its name."""
    page.get_by_role("group", name="Keypad").get_by_role("button", name=name, exact=True).tap()


def entry(page):
    """The field of the pad."""
    return page.get_by_role("textbox", name="Length or sum")


def lines(page):
    """The words of the tally's lines, as on the pad."""
    return page.locator(".tally-line .fraction .heard").all_text_contents()


def enter(page, text):
    """Tap a line and Enter, and wait until it stands in the tally."""
    before = page.locator(".tally-line").count()
    tap_keys(page, text)
    key(page, "Enter")
    page.locator(".tally-line").nth(before).wait_for()


def strip(page):
    """The inch drawn large above the keys."""
    return page.get_by_role("slider", name="Fraction of an inch")


def touch(page, part):
    """Touch the strip at a part of an inch."""
    box = strip(page).bounding_box()
    page.touchscreen.tap(box["x"] + box["width"] * part, box["y"] + box["height"] / 2)
