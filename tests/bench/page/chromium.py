"""Chromium as a phone, as the engines of tests/engines are."""

from contextlib import contextmanager

from playwright.sync_api import sync_playwright

from tests.browser.conftest import CHROMIUM, FLAGS

SIZE = (412, 915)


@contextmanager
def open_phone(profile, size=SIZE):
    """Open Chromium with the folder `profile`; gives its only page."""
    with sync_playwright() as player:
        context = player.chromium.launch_persistent_context(
            profile,
            executable_path=CHROMIUM,
            args=FLAGS,
            viewport=dict(zip(("width", "height"), size, strict=True)),
            has_touch=True,
            is_mobile=True,
        )
        try:
            yield context.pages[0]
        finally:
            context.close()
