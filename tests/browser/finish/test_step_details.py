"""How a step was done: the moment, the air, a note and a photo, kept and brought back."""

import json

from playwright.sync_api import expect

from tests.browser.finish.in_steps import START, keep_coats, open_steps, rows
from tests.browser.hand import open_place
from tests.browser.project.in_project import picture
from tests.browser.project.test_project_backup import downloaded, give, open_backup
from tests.browser.words import BACKUP_FILE, NOTE, SAVE_CHANGE

PHOTO = {"name": "coat.png", "mimeType": "image/png", "buffer": picture(64, 48)}
TICK = "Tick this step"


def phone_at(phone, server, profile="phone", now=START):
    """A phone whose clock stands still."""
    page = phone(profile=profile, service_workers="block").pages[0]
    page.clock.set_fixed_time(now)
    page.goto(server.address)
    return page


def open_details(page, said):
    """From the list to how a step was done."""
    open_steps(page)
    page.get_by_role("button", name=f"Details: {said}", exact=True).first.tap()
    page.get_by_role("heading", name=said, exact=True).wait_for()


def photo_shown(page):
    """The photo of the step, once it is drawn."""
    shown = page.get_by_role("img", name="Photo of this step")
    shown.wait_for()
    return shown.get_attribute("src")


def test_what_was_written_down_is_the_same_after_backup_and_restore(phone, server):
    page = phone_at(phone, server, "old")
    keep_coats(page, server)
    open_details(page, "First coat")
    page.get_by_label("Done", exact=True).fill("2026-11-30T17:45")
    page.get_by_label("Temperature").fill("68")
    page.get_by_label("Humidity").fill("45")
    page.get_by_label(NOTE).fill("Two thin <b>ones</b>")
    page.get_by_label("Photo", exact=True).set_input_files(PHOTO)
    before = photo_shown(page)
    page.get_by_role("button", name=TICK).tap()
    page.locator("#place[data-shows^='work-out/coats/1']").wait_for()
    done = "Done Mon Nov 30, 5:45 PM: 68 °F, 45%, Two thin <b>ones</b>"
    expect(page.locator(".check-when").first).to_have_text(done)
    page.get_by_text("With a photo.").wait_for()
    open_backup(page)
    text = downloaded(page, "Download")[1]
    kept = json.loads(text)
    record = kept["document"]["entries"][0]["done"]["coat1"]
    assert kept["photos"] == {record["photo"]: before}

    page = phone_at(phone, server, "new")
    open_place(page, "Project")
    page.get_by_role("button", name="Restore a backup").tap()
    give(page, BACKUP_FILE, text)
    page.get_by_role("button", name="As a new project").tap()
    page.get_by_role("region", name="Next step").wait_for()
    open_details(page, "First coat")
    assert photo_shown(page) == before
    assert page.get_by_label("Done", exact=True).input_value() == "2026-11-30T17:45"
    assert page.get_by_label(NOTE).input_value() == "Two thin <b>ones</b>"
    page.get_by_label("Humidity").fill("101")
    page.get_by_role("button", name=SAVE_CHANGE).tap()
    page.locator(".error").get_by_text("from 0 to 100%").wait_for()
    page.get_by_label("Humidity").fill("50")
    page.get_by_role("button", name="Remove photo").tap()
    page.get_by_role("button", name=SAVE_CHANGE).tap()
    page.locator("#place[data-shows^='work-out/coats/1']").wait_for()
    expect(page.locator(".check-when").first).to_have_text(done.replace("45%", "50%"))
    assert page.get_by_text("With a photo.").count() == 0


def test_what_is_filled_in_of_a_step_outlives_the_page_its_photo_too(phone, server):
    page = phone_at(phone, server)
    keep_coats(page, server)
    open_details(page, "First coat")
    page.get_by_label(NOTE).fill("Thin")
    page.get_by_label("Photo", exact=True).set_input_files(PHOTO)
    before = photo_shown(page)
    page.reload()
    page.get_by_role("heading", name="First coat", exact=True).wait_for()
    assert page.get_by_label(NOTE).input_value() == "Thin"
    assert photo_shown(page) == before
    page.get_by_role("button", name=TICK).tap()
    # Nobody said when: it was this minute.
    page.locator(".check-when").get_by_text("Done Mon Nov 30, 6:00 PM: Thin").wait_for()


def test_a_moment_is_blank_at_first_and_filled_by_now(phone, server):
    page = phone_at(phone, server)
    keep_coats(page, server)
    open_details(page, "First coat")
    done = page.get_by_label("Done", exact=True)
    assert (done.get_attribute("type"), done.input_value()) == ("datetime-local", "")
    page.get_by_role("button", name="Now: Done").tap()
    assert done.input_value() == START
    page.get_by_role("button", name=TICK).tap()
    expect(page.locator(".check-when").first).to_have_text("Done Mon Nov 30, 6:00 PM")
    open_details(page, "First coat")
    page.get_by_role("button", name="Untick").tap()
    expect(page.get_by_role("checkbox", name="First coat", exact=True)).not_to_be_checked()


def test_a_step_before_the_one_that_comes_first_is_refused_beside_its_moment(phone, server):
    page = phone_at(phone, server)
    keep_coats(page, server)
    open_details(page, "First coat")
    page.get_by_role("button", name=TICK).tap()
    page.locator("#place[data-shows^='work-out/coats/1']").wait_for()
    open_details(page, "Second coat")
    page.get_by_label("Done", exact=True).fill("2026-11-30T17:00")
    page.get_by_role("button", name=TICK).tap()
    page.locator(".field .error").get_by_text("can’t be done before").wait_for()
    open_steps(page)
    assert [said for said, _, is_ticked in rows(page) if is_ticked] == ["First coat"]


def test_the_start_of_a_question_is_a_moment_and_the_list_follows_it(page, server):
    page.goto(f"{server.address}#work-out/coats")
    start = page.get_by_label("Start", exact=True)
    start.wait_for()
    assert (start.get_attribute("type"), start.input_value()) == ("datetime-local", "")
    page.clock.set_fixed_time(START)
    page.get_by_role("button", name="Now: Start").tap()
    assert start.input_value() == START
    page.locator(".check-when").get_by_text("From Mon Nov 30, 6:00 PM").wait_for()
    assert rows(page)[0][2] is None
    # The keypad of another field goes when this one is touched.
    page.get_by_label("Time between coats, h").tap()
    page.locator("#sheet").wait_for()
    start.focus()
    page.locator("#sheet").wait_for(state="hidden")
