"""A phone with a browser on it, and the site on a server that can really be stopped."""

from contextlib import suppress
from pathlib import Path

import pytest
from playwright.sync_api import Error, sync_playwright

from web.build import serving

ROOT = Path(__file__).resolve().parents[2]
CHROMIUM = "/usr/bin/chromium"
FLAGS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]
SMALL = (360, 740)
LARGE = (412, 915)
SECONDS = 1000
# The slow start of the core takes some seconds, more when tests share the cores; one that hangs is
# ended by the page after 90 seconds and begun anew.
PATIENCE = 150 * SECONDS


@pytest.fixture(scope="session")
def site():
    """The built site; `build.py test` builds it first."""
    folder = ROOT / ".site"
    assert (folder / "index.html").is_file(), "no site yet: run python3 build.py site"
    return folder


@pytest.fixture
def server(site):
    """The site on a port of this machine; `.stop()` stops it for good."""
    with serving.started(site) as running:
        yield running


@pytest.fixture(scope="session")
def player():
    """Playwright, started once."""
    with sync_playwright() as playing:
        yield playing


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport(item):
    """Let fixtures know how the test went."""
    report = yield
    setattr(item, f"went_{report.when}", report)
    return report


def tell(page):
    """What a page shows, for who reads of a failed test."""
    texts = {each: page.locator(each).all_text_contents() for each in ("#status", "#notices")}
    print(page.url, texts, page.locator("#place").all_text_contents()[:1])


@pytest.fixture
def phone(player, tmp_path, request):
    """Open a browser of phone size; the same profile again is the same phone, opened again."""
    opened, heard = [], []

    def open_phone(size=SMALL, *, dark=False, profile="phone", **more):
        context = player.chromium.launch_persistent_context(
            tmp_path / profile,
            executable_path=CHROMIUM,
            args=FLAGS,
            viewport={"width": size[0], "height": size[1]},
            color_scheme="dark" if dark else "light",
            has_touch=True,
            is_mobile=True,
            **more,
        )
        context.set_default_timeout(PATIENCE)
        context.on("console", lambda message: heard.append(message.text))
        opened.append(context)
        return context

    yield open_phone
    went = getattr(request.node, "went_call", None)
    for context in opened:
        if went is not None and went.failed:
            with suppress(Error):
                for page in context.pages:
                    tell(page)
            print(heard)
        context.close()


@pytest.fixture
def page(phone, server):
    """A phone just opened, with nothing to say of its copy for use without network."""
    opened = phone(service_workers="block").pages[0]
    opened.goto(server.address)
    return opened
