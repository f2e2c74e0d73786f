"""What a thumb does with the steps of a line: kept, ticked, looked at."""

from datetime import datetime

from playwright.sync_api import expect

from tests.browser.hand import keep_as, try_example

START = "2026-11-30T18:00"
"""When the first coat of the example goes on: a Monday."""

ROWS = """
(list) => [...list.querySelectorAll(".check")].map((row) => [
  row.querySelector(".check-said").textContent,
  row.querySelector(".check-when")?.textContent ?? "",
  row.querySelector(".check-box")?.checked ?? null,
])
"""


def keep_coats(page, server, question="coats", name="Varnish"):
    """The example of a question with steps, kept in a project; its project is shown."""
    page.goto(f"{server.address}#work-out/{question}")
    try_example(page)
    keep_as(page, name)
    page.evaluate("location.hash = 'project'")
    page.get_by_role("region", name="Next step").wait_for()


def open_steps(page, question="coats", entry="1"):
    """The kept line with its steps."""
    page.evaluate(f"location.hash = 'work-out/{question}/{entry}'")
    page.locator(".check-box").first.wait_for()


def rows(page):
    """(what it is called, when, whether it is ticked) of each step that is shown."""
    return [tuple(row) for row in page.locator(".check-list").evaluate(ROWS)]


def moments(page):
    """[(what it is called, when it is due)] of the steps; None for one that has no time."""
    return [(said, moment(when)) for said, when, _ in rows(page)]


def moment(text):
    """A moment as it is said, "From Tue Dec 1, 6:30 PM", in the winter of these tests."""
    told = text.replace("\xa0", " ")
    for before in ("From ", "Due since "):
        if told.startswith(before):
            day, clock = told.removeprefix(before).split(", ")
            year = 2027 if " Jan " in day else 2026
            return datetime.strptime(f"{year} {day} {clock}", "%Y %a %b %d %I:%M %p")
    return None


def tick(page, said, at=0):
    """Tap the check of a step, and wait until that is kept."""
    box = page.get_by_role("checkbox", name=said, exact=True).nth(at)
    was = box.is_checked()
    box.tap()
    expect(box).to_be_checked(checked=not was)
