"""The first visit: answers soon, loads nothing twice, and survives a lost network."""

import collections
import shutil
import zipfile

import pytest

from tests.browser.start.start_support import (
    RecordingServer,
    answers_rightly,
    eventually,
    open_at,
    wait_until_kept,
    way_of_start,
)
from tests.browser.words import NOT_OFFLINE, NOT_STARTED

REST = "python/wheels-rest.zip"
LOST = "You’re offline. Loading picks up again when you’re back on"


@pytest.fixture
def recording(site):
    """The site on a server that notes what it sends."""
    server = RecordingServer(site)
    yield server
    server.stop()


def files_of_start(recording):
    """How often each file of the packed Python was sent with its content."""
    packed = (path for path in recording.whole_files() if path.startswith("python/"))
    return collections.Counter(packed)


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
    packed = files_of_start(recording)
    assert len(packed) > 10
    assert {path: times for path, times in packed.items() if times > 1} == {}


def test_nothing_is_loaded_for_later_before_the_first_answer(phone, recording):
    page = open_at(phone(), recording.address)
    way_of_start(page)
    wait_until_kept(page)
    sent = [path for path, _status in recording.sent]
    wheels = [at for at, path in enumerate(sent) if path.startswith("python/wheels/")]
    # The core and what installs it come first, with all that the first answer needs.
    first, begun = min(sent.index(REST), wheels[2]), sent.index("service-worker.js")
    asked = [path for path in sent[:begun] if path.startswith("python/")]
    assert sorted(asked) == sorted(set(asked)), "nothing is asked for twice"
    assert first < begun < sent.index("python/library-rest.bin")
    assert {"python/pyodide.asm.wasm", "python/library.zip"} <= set(sent[:first])
    # The wheels that the core asks for come with its rest.
    later = {path for path in sent[first:begun] if path.startswith("python/")} - {REST}
    assert len(later) == 5
    assert all(path.startswith("python/wheels/") for path in later)


def test_a_network_lost_half_way_is_said_and_loading_goes_on_by_itself(phone, recording):
    recording.cut = "pyodide.asm.wasm"
    page = open_at(phone(), recording.address)
    page.get_by_text(LOST).wait_for()
    recording.cut = None
    answers_rightly(page)
    assert recording.sent.count(("python/pyodide.asm.wasm", 200)) == 1


@pytest.mark.parametrize(
    "lost_at", ["worker.js", "pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm", REST]
)
def test_wherever_the_network_is_lost_no_other_browser_is_advised_and_it_goes_on_by_itself(
    phone, recording, lost_at
):
    recording.lost_at = lost_at
    page = open_at(phone(), recording.address)
    page.get_by_role("textbox", name="Length or sum").fill("7-13/16")
    page.get_by_text(LOST).wait_for()
    assert page.get_by_text("update your browser").count() == 0
    recording.lost_at, recording.is_lost = None, False
    answer = page.locator("output[name=pad-answer]")
    answer.get_by_text("seven and thirteen sixteenths inches").wait_for()
    assert not page.get_by_text(LOST).is_visible()


def test_a_page_that_is_lost_on_its_way_advises_to_look_at_the_network_and_comes_by_itself(
    phone, recording
):
    recording.lost_at = "main.js"
    page = open_at(phone(), recording.address)
    page.get_by_text("Check your connection and reload.").wait_for()
    recording.lost_at, recording.is_lost = None, False
    answers_rightly(page)


def test_what_is_asked_while_the_network_is_lost_behind_the_first_answer_waits(phone, recording):
    """The first answer needs nothing of the rest; the pad's does, and is given once it is here."""
    recording.cut = REST
    page = open_at(phone(), recording.address)
    typed = page.get_by_role("textbox", name="Length or sum")
    typed.fill("7-13/16")
    assert way_of_start(page) == "slow"
    page.get_by_text(LOST).wait_for()
    page.get_by_text("Your answer shows up as soon as loading finishes.").wait_for()
    assert typed.input_value() == "7-13/16"
    # What is said of the loading stands above the pad, and takes none of its width.
    assert typed.bounding_box()["width"] > 0.9 * page.viewport_size["width"]
    assert REST not in recording.whole_files()
    assert "service-worker.js" not in recording.whole_files()

    recording.cut = None
    answer = page.locator("output[name=pad-answer]")
    answer.get_by_text("seven and thirteen sixteenths inches").wait_for()
    assert not page.get_by_text(LOST).is_visible()
    assert recording.sent.count((REST, 200)) == 1
    answers_rightly(page)
    eventually(lambda: "service-worker.js" in recording.whole_files())
    assert [path for path, times in files_of_start(recording).items() if times > 1] == []


def test_a_rest_that_cant_be_had_is_said_and_comes_when_tried_again(phone, recording):
    recording.withheld = REST
    page = open_at(phone(), recording.address)
    page.get_by_text(NOT_STARTED).wait_for()
    recording.withheld = None
    page.get_by_role("button", name="Try again").tap()
    answers_rightly(page)


def test_a_rest_of_another_version_is_not_put_in_place(phone, recording, site, tmp_path):
    """As when the site was renewed while the network was lost; the start is then tried again."""
    recording.folder = shutil.copytree(site, tmp_path / "other")
    with zipfile.ZipFile(recording.folder / REST, "a") as rest:
        rest.writestr("sawside/of_the_next_version.py", "")
    page = open_at(phone(), recording.address)
    page.get_by_text(NOT_STARTED).wait_for()
    recording.folder = site
    page.get_by_role("button", name="Try again").tap()
    answers_rightly(page)


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
    page.get_by_text(NOT_OFFLINE).wait_for()


def test_a_start_that_fails_says_so_and_succeeds_when_tried_again(phone, recording):
    recording.withheld = "pack.json"
    page = open_at(phone(), recording.address)
    page.get_by_text(NOT_STARTED).wait_for()
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
    page.get_by_text("This browser is too old for Sawside").wait_for()
