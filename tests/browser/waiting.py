"""Wait for what no element shows; the page's policy forbids the ways that evaluate a text there."""

import time

from tests.browser.conftest import PATIENCE, SECONDS


def until(page, expression):
    """Wait until a script's expression is true in the page."""
    end = time.monotonic() + PATIENCE / SECONDS
    while not page.evaluate(expression):
        assert time.monotonic() < end, f"never true: {expression}"
        page.wait_for_timeout(50)
