"""What stands in the address: of a place, of a file, or of nothing at all."""

import json

import pytest

from tests.browser.hand import tap_keys
from tests.browser.project.in_project import keep_reading
from tests.browser.start.start_support import eventually
from tests.browser.words import ALL_PROJECTS, HISTORY, READY_OFFLINE, SOLVE

MITERED_LENGTH = "Mitered length"


def go(page, to):
    """Type another address after the #."""
    page.evaluate("(to) => { location.hash = to; }", to)


@pytest.mark.parametrize("address", ["#%", "#pad/%", "#nowhere"])
def test_an_address_that_is_none_stops_no_start(phone, server, address):
    page = phone().pages[0]
    failed = []
    page.on("pageerror", lambda error: failed.append(str(error)))
    page.goto(server.address + address)
    page.get_by_role("navigation", name="Places").get_by_role("link", name="Pad").tap()
    tap_keys(page, "7")
    page.locator("output[name=pad-answer]").get_by_text("seven inches").wait_for()
    assert failed == []


def test_a_question_or_line_that_there_is_not_is_said_not_waited_for(page):
    for address in ("work-out/nonesuch", "work-out/constructor", "work-out/%"):
        go(page, address)
        page.get_by_text("There’s no question at this address.").wait_for()
    page.reload()
    page.get_by_text("There’s no question at this address.").wait_for()
    page.get_by_role("link", name="All questions").tap()
    page.get_by_role("link", name="Miters and frames").wait_for()
    for address in ("questions", "questions/nonesuch"):
        go(page, address)
        page.get_by_text("There’s nothing at this address.").wait_for()
    for address in ("work-out/mitered_length/99", "reading/99", "note/99", "about/99", "try/99"):
        go(page, address)
        page.get_by_text("in the project").first.wait_for()
    keep_reading(page, "Alcove width", "37 9/16")
    for address in ("sure/99", "paper/nonesuch"):
        go(page, address)
        page.locator("#place .error:not(:empty)").first.wait_for()
    go(page, "work-out/mitered_length/1")
    page.get_by_text("This line isn’t in the project.").wait_for()


def test_the_window_is_called_by_what_is_shown_in_it(page):
    titles = {
        "work-out": SOLVE,
        "questions/miters and frames": "Miters and frames",
        "work-out/mitered_length": MITERED_LENGTH,
        "tally": HISTORY,
        "projects": ALL_PROJECTS,
        "restore": "Restore a backup",
        "settings": "Project settings",
        "new-reading": "New reading",
        "pad": "Pad",
    }
    for address, title in titles.items():
        go(page, address)
        page.wait_for_function("title => document.title === title", arg=f"{title} · Sawside")


def test_the_service_worker_answers_files_with_themselves_and_unknown_addresses_not_at_all(
    phone, server
):
    context = phone()
    page = context.pages[0]
    page.goto(server.address)
    eventually(lambda: READY_OFFLINE in page.locator("#notices").text_content())
    for address in ("", "?from=home", "index.html", "#saw"):
        page.goto(server.address + address)
        page.get_by_role("navigation", name="Places").wait_for()
    answer = page.goto(f"{server.address}python/pack.json")
    assert answer.from_service_worker
    assert json.loads(answer.text())["build"]
    for address in ("foo/bar", "python/", "python/nonesuch.json"):
        answer = page.goto(server.address + address)
        assert answer.status == 404
    server.stop()
    page.goto(server.address)
    page.get_by_role("navigation", name="Places").wait_for()
