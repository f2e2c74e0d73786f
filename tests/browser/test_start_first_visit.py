"""The first visit: answers soon, loads nothing twice, and survives a lost network."""

import collections

import pytest

from tests.browser.start_support import (
    RecordingServer,
    answers_rightly,
    open_at,
    wait_until_kept,
    way_of_start,
)


@pytest.fixture
def recording(site):
    """The site on a server that notes what it sends."""
    server = RecordingServer(site)
    yield server
    server.stop()


def test_a_first_visit_answers_the_slow_way_and_then_keeps_everything(phone, recording):
    asked = []
    context = phone()
    context.on("request", lambda request: asked.append(request.url))
    page = open_at(context, recording.address)
    assert way_of_start(page) == "slow"
    answers_rightly(page)
    wait_until_kept(page)

    assert asked
    assert [url for url in asked if not url.startswith(recording.address)] == []
    times_sent = collections.Counter(recording.whole_files())
    packed = {path: times for path, times in times_sent.items() if path.startswith("python/")}
    assert len(packed) > 10
    assert {path: times for path, times in packed.items() if times > 1} == {}


def test_nothing_is_loaded_for_later_before_the_first_answer(phone, recording):
    page = open_at(phone(), recording.address)
    way_of_start(page)
    wait_until_kept(page)
    sent = [path for path, _status in recording.sent]
    begun = sent.index("service-worker.js")
    assert "python/library-rest.bin" not in sent[:begun]
    assert {"python/pyodide.asm.wasm", "python/library.zip"} <= set(sent[:begun])


def test_a_network_lost_half_way_is_said_and_loading_goes_on_by_itself(phone, recording):
    recording.cut_once = "pyodide.asm.wasm"
    page = open_at(phone(), recording.address)
    page.get_by_text("The network is gone. Loading goes on when it is back").wait_for()
    answers_rightly(page)
    assert recording.sent.count(("python/pyodide.asm.wasm", 200)) == 1


def test_where_nothing_may_be_stored_the_site_still_answers_and_says_so(phone, recording):
    context = phone()
    context.add_init_script(
        """
        delete Navigator.prototype.serviceWorker;
        Object.defineProperty(globalThis, "caches", {
          get() { throw new DOMException("refused", "SecurityError"); },
        });
        """
    )
    page = open_at(context, recording.address)
    answers_rightly(page)
    page.get_by_role("link", name="Settings").tap()
    page.get_by_text("This browser can't keep the app for use without network").wait_for()


def test_a_start_that_fails_says_so_and_succeeds_when_tried_again(phone, recording):
    recording.withheld = "pack.json"
    page = open_at(phone(), recording.address)
    page.get_by_text("The arithmetic did not start.").wait_for()
    recording.withheld = None
    page.get_by_role("button", name="Try again").tap()
    answers_rightly(page)


def test_a_browser_that_cant_read_the_page_script_shows_a_sentence_that_says_so(phone, recording):
    """An old browser meets syntax that it can't read and runs nothing of the script."""
    recording.withheld = "main.js"
    page = open_at(phone(), recording.address)
    page.get_by_text("this browser is too old for Sawside").wait_for()


def test_a_browser_too_old_for_the_core_is_told_so_in_a_sentence(phone, recording):
    context = phone()
    context.add_init_script("delete WebAssembly.instantiateStreaming")
    page = open_at(context, recording.address)
    page.get_by_text("This browser is too old for the arithmetic").wait_for()
