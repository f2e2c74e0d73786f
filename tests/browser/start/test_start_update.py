"""A new version of the site is offered, never forced, and the old one stays whole until then."""

import json
import shutil

import pytest

from tests.browser.start.start_support import (
    answers_rightly,
    eventually,
    open_at,
    wait_until_kept,
    way_of_start,
)
from web.build import precache

NEW_STYLE = "/* of the next version */"
STYLE = "async () => (await fetch('styles.css')).text()"
LOOK = """
async () => {
  const registration = await navigator.serviceWorker.ready;
  await registration.update();
}
"""


def later(site, folder, style):
    """The same site in `folder` with another stylesheet, as a later build would make it."""

    def listed(folder):
        return json.dumps(precache.kept_files(folder), separators=(",", ":"))

    shutil.copytree(site, folder)
    (folder / "styles.css").write_text((site / "styles.css").read_text() + style)
    code = (site / "service-worker.js").read_text()
    assert listed(site) in code
    (folder / "service-worker.js").write_text(code.replace(listed(site), listed(folder)))
    return folder


@pytest.fixture
def next_site(site, tmp_path):
    return later(site, tmp_path / "next", NEW_STYLE)


def is_new(page):
    """Whether the page gets its files from the next version."""
    return NEW_STYLE in page.evaluate(STYLE)


def offer(page):
    """The line that offers the new version."""
    return page.get_by_text("There’s a new version.")


def test_a_new_version_is_offered_and_used_only_when_the_person_takes_it(phone, server, next_site):
    context = phone()
    page = open_at(context, server.address)
    wait_until_kept(page)
    server.folder = next_site
    page.evaluate(LOOK)
    offer(page).wait_for()
    assert not is_new(page)

    # Neither loading the page anew nor closing the browser takes it.
    page.reload()
    offer(page).wait_for()
    context.close()
    context = phone()
    page = open_at(context, server.address)
    assert way_of_start(page) == "snapshot"
    offer(page).wait_for()
    assert not is_new(page)
    answers_rightly(page)

    page.get_by_role("button", name="Update").tap()
    eventually(lambda: is_new(page))
    answers_rightly(page)
    assert not offer(page).is_visible()


def test_a_new_version_that_comes_only_in_part_changes_nothing(phone, server, next_site):
    context = phone()
    page = open_at(context, server.address)
    wait_until_kept(page)
    # As while it is being copied to the host: the list is there, a file of it is not yet.
    (next_site / "styles.css").write_text("/* neither of the two */")
    server.folder = next_site
    page.evaluate(f"async () => {{ await ({LOOK})().catch(() => {{}}); }}")
    page.wait_for_timeout(2000)
    assert not offer(page).is_visible()
    context.close()
    server.stop()

    page = open_at(phone(), server.address)
    assert way_of_start(page) == "snapshot"
    answers_rightly(page)
    assert "neither" not in page.evaluate(STYLE)


KEPT_STYLES = """
async () => {
  const asked = (await caches.keys()).map(async (name) => (await caches.open(name)).keys());
  const kept = (await Promise.all(asked)).flat().map(({ url }) => url);
  return kept.filter((url) => url.includes("styles.css"));
}
"""


def test_two_versions_are_kept_at_most_however_many_come(phone, server, site, next_site, tmp_path):
    """One is in use, one is offered; who never takes one does not fill the device."""
    page = open_at(phone(), server.address)
    wait_until_kept(page)
    (first,) = page.evaluate(KEPT_STYLES)
    seen = {first}
    for each in (next_site, *(later(site, tmp_path / name, f"/* {name} */") for name in "abc")):
        server.folder = each
        page.evaluate(LOOK)
        eventually(lambda known=seen: set(page.evaluate(KEPT_STYLES)) - known)
        eventually(lambda: len(page.evaluate(KEPT_STYLES)) == 2)
        kept = page.evaluate(KEPT_STYLES)
        assert first in kept
        seen = seen | set(kept)
    offer(page).wait_for()
    answers_rightly(page)
