"""What a correction changes is told in short: what goes wrong first, what moves behind a count."""

import re

from tests.browser.hand import open_place
from tests.browser.project.in_project import accept, open_entry, start_sample_case
from tests.browser.words import EDIT, READING, SAVE_CHANGE

COUNT = re.compile(r"^[3-9] lines change$")


def correct_top_width(page, text):
    open_entry(page, "Alcove width, top", EDIT)
    page.get_by_label(READING).fill(text)
    page.locator("output.result").get_by_role("button", name=SAVE_CHANGE).tap()
    return page.get_by_role("dialog")


def test_many_lines_that_change_fold_behind_how_many_they_are(page):
    start_sample_case(page)
    changes = correct_top_width(page, "37 1/4")
    count = changes.get_by_text(COUNT)
    count.wait_for()
    assert not changes.get_by_text("Face frame").first.is_visible()
    count.tap()
    changes.get_by_text("Face frame").first.wait_for()
    accept(page)


def test_a_piece_cut_wrong_stands_first_and_open(page):
    start_sample_case(page)
    open_place(page, "At the saw")
    page.get_by_role("button", name="List").tap()
    page.get_by_role("button", name="Carcass: Bottom").tap()
    page.get_by_role("button", name="Cut one", exact=True).tap()
    changes = correct_top_width(page, "37 1/4")
    changes.get_by_text("Carcass: Bottom: 1 piece can be cut down by 1/4″.").wait_for()
    heads = changes.locator("h3, summary").all_text_contents()
    assert heads[0] == "Pieces already cut"
    assert COUNT.match(heads[1])
    assert len(heads) == 2


def test_a_line_without_an_answer_any_more_is_not_folded(page):
    start_sample_case(page)
    changes = correct_top_width(page, "3")
    changes.get_by_role("heading", name="No answer now").wait_for()
    assert changes.get_by_text("Space", exact=True).first.is_visible()
    page.get_by_role("button", name="Cancel").tap()


def test_a_linked_row_of_a_list_shows_its_name_whole_with_its_number(page):
    page.set_viewport_size({"width": 360, "height": 740})
    start_sample_case(page)
    open_entry(page, "Space", "Open")
    rows = page.locator(".field-many .row")
    rows.nth(1).get_by_text("Alcove width, middle is 37 9/16″").wait_for()
    assert rows.nth(1).locator(".chip").count() == 1
    assert rows.nth(0).locator(".chip").inner_text().startswith("Alcove width, bottom")


def test_the_list_at_the_saw_is_by_material_and_thickness_and_tells_the_width(page):
    start_sample_case(page)
    open_place(page, "At the saw")
    page.get_by_role("button", name="List").tap()
    page.get_by_role("button", name="Carcass: Side").wait_for()
    heads = page.locator(".piece-list h3").all_text_contents()
    sheets = ["Plywood, 1/4″ thick", "Plywood, 23/32″ thick"]
    assert sorted(heads) == ["1/4″ thick", "3/4″ thick", "No material named", *sheets]
    side = page.get_by_role("button", name="Carcass: Side")
    assert "× 15 3/4″" in side.inner_text().replace("\u00a0", " ")
