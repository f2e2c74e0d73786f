"""The steps outside the page: as a calendar, and on the shop sheet."""

from datetime import UTC, datetime

import icalendar
import pytest

from tests.browser.finish.in_steps import keep_coats, moments, open_steps, rows, tick
from tests.browser.hand import choose
from tests.browser.print.on_paper import says, texts
from tests.browser.project.test_project_backup import downloaded
from tests.browser.test_accessible import axe


@pytest.fixture
def kept(phone, server):
    """Coats of a project on a phone east of Greenwich, the first one ticked."""
    page = phone(service_workers="block", timezone_id="Etc/GMT-2").pages[0]
    page.clock.set_fixed_time("2026-11-30T16:00Z")  # 6 PM by its own clock
    keep_coats(page, server)
    open_steps(page)
    tick(page, "First coat")
    return page


def test_the_calendar_of_a_line_is_read_by_another_library_with_its_times(kept):
    name, text = downloaded(kept, "Calendar")
    assert name == "my-project-steps.ics"
    read = [*icalendar.Calendar.from_ical(text).walk("VEVENT")]
    left = [(f"{said} (Varnish)", when) for said, when in moments(kept) if when]
    assert [(str(each["SUMMARY"]), each.decoded("DTSTART")) for each in read] == left
    made = {each.decoded("DTSTAMP") for each in read}
    assert made == {datetime(2026, 11, 30, 16, tzinfo=UTC)}


def test_the_calendar_of_the_project_moves_its_events_and_keeps_their_names(kept):
    kept.evaluate("location.hash = 'project'")
    before = uids(downloaded(kept, "Calendar")[1])
    kept.get_by_role("button", name="Rename", exact=True).first.tap()
    kept.get_by_role("textbox", name="Name").fill("Record cabinet")
    kept.get_by_role("dialog").get_by_role("button", name="Rename").tap()
    kept.get_by_role("heading", name="Record cabinet").wait_for()
    name, text = downloaded(kept, "Calendar")
    assert name == "record-cabinet-steps.ics"
    assert uids(text) == before != set()


def uids(text):
    """The names of the events of a calendar."""
    return {str(each["UID"]) for each in icalendar.Calendar.from_ical(text).walk("VEVENT")}


def test_the_shop_sheet_prints_every_step_with_a_box_and_those_that_are_done(kept):
    shown = rows(kept)
    kept.clock.set_fixed_time("2026-12-01T20:00Z")
    kept.reload()  # By now some are due, which paper can't know.
    kept.locator(".check-due").first.wait_for()
    kept.evaluate("location.hash = 'shop-sheet'")
    listed = kept.locator(".shop-steps")
    listed.wait_for()
    choose(kept, "Paper", "Letter")
    assert axe(kept)["wrong"] == []
    assert listed.locator(".box").count() == len(shown)
    assert listed.locator(".box.ticked").count() == 1
    printed = " ".join(texts(kept))
    for said, when, _ in shown:
        assert says(printed, said)
        assert says(printed, when)
    assert says(printed, "Spread oily rags flat outdoors to dry")
    # Each caution in full once: nobody opens it on paper.
    for full in ("water and detergent", "limit is 1 mg", "it runs along the floor"):
        assert listed.get_by_text(full).count() == 1, full
