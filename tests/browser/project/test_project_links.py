"""Readings drive lines: taken from the project, corrected, followed, refused when they go round.

The lengths are worked by hand from the rule that at a 45 a piece grows by the stock's width per
mitered end (common practice, no source): 37 9/16 − 1/4 + 2 × 2 1/4 = 41 13/16.
"""

from tests.browser.hand import (
    choose,
    chosen,
    keep_as,
    open_piece,
    open_place,
    open_question,
    tap_keys,
    type_into,
)
from tests.browser.project.in_project import (
    correct,
    drafts,
    fill_linked_rail,
    keep_reading,
    open_entry,
    picture,
    take,
)
from tests.browser.start.start_support import eventually
from tests.browser.test_accessible import axe
from tests.browser.words import (
    EDIT,
    LIGHT_OR_HEAVY,
    PIECE_THIS_LONG,
    READING,
    REDID,
    SAVE,
    SAVE_CHANGE,
)


def test_a_field_takes_a_reading_and_follows_it_when_it_is_corrected(page):
    keep_reading(page, "Alcove width", "37 9/16")
    fill_linked_rail(page)
    assert page.get_by_label("Measured length", exact=True).input_value() == "[Alcove width] − 1/4"
    page.get_by_text("Alcove width is 37 9/16″").wait_for()
    page.locator("output[name=result]").get_by_text("forty-one and thirteen sixteenths").wait_for()
    keep_as(page, "Top rail")
    open_place(page, "At the saw")
    page.get_by_role("button", name="Cut one", exact=True).tap()
    page.get_by_text("All pieces cut").wait_for()

    open_place(page, "Project")
    page.get_by_role("button", name="Add a reading").tap()
    page.get_by_label(READING).tap()
    page.get_by_role("button", name="From project").tap()
    # A line has many numbers: the list says which one its name stands for.
    page.get_by_role("dialog").get_by_role("button", name="Top rail Long point").wait_for()
    page.get_by_role("dialog").get_by_role("button", name="Alcove width").first.tap()
    tap_keys(page, "+1/4")
    page.get_by_text("Alcove width is 37 9/16″").wait_for()
    page.locator("#sheet").get_by_role("button", name=SAVE).tap()
    page.get_by_role("textbox", name="Name").fill("Door")
    page.get_by_role("dialog").get_by_role("button", name=SAVE).tap()
    door = page.get_by_role("listitem").filter(has_text="Door")
    door.get_by_text("thirty-seven and thirteen sixteenths inches").wait_for()

    correct(page, "Alcove width", "37 7/16")
    review = page.get_by_role("dialog", name="What this changes")
    review.get_by_text("Top rail: 1 piece can be cut down by 1/8″.").wait_for()
    assert axe(page)["wrong"] == []
    number = review.get_by_role("listitem").filter(has_text="Long point")
    assert "forty-one and thirteen sixteenths inches" in number.text_content()
    assert "forty-one and eleven sixteenths inches" in number.text_content()
    assert "−1/8″" in number.text_content()
    review.get_by_role("button", name="Cancel").tap()
    assert page.get_by_label(READING).input_value() == "37 7/16"
    page.locator("output.result").get_by_role("button", name=SAVE_CHANGE).tap()
    review.get_by_role("button", name="Accept").tap()
    rail = page.get_by_role("listitem").filter(has_text="Top rail")
    rail.get_by_text("forty-one and eleven sixteenths inches").wait_for()
    door.get_by_text("thirty-seven and eleven sixteenths inches").wait_for()

    correct(page, "Alcove width", "37 11/16")
    review.get_by_text("Top rail: 1 piece too short by 1/8″.").wait_for()
    review.get_by_role("button", name="Accept").tap()
    rail.get_by_text("forty-one and fifteen sixteenths inches").wait_for()

    page.reload()
    for words in ("eleven sixteenths", "thirteen sixteenths"):
        page.locator("#place").get_by_role("button", name="Undo").tap()
        review.get_by_role("button", name="Accept").tap()
        rail.get_by_text(f"forty-one and {words} inches").wait_for()
    page.locator("#place").get_by_role("button", name="Redo").tap()
    review.get_by_role("button", name="Cancel").tap()
    page.locator("#place").get_by_role("button", name="Redo").tap()
    review.get_by_text(f"{REDID}: Corrected Alcove width: 37 9/16 → 37 7/16.").wait_for()
    review.get_by_role("button", name="Accept").tap()
    rail.get_by_text("forty-one and eleven sixteenths inches").wait_for()
    open_place(page, "At the saw")
    page.locator(".piece-wrong", has_text="can be cut down by 1/8″").wait_for()
    assert page.locator(".piece-done").count() == 0


def test_a_correction_tells_what_its_tape_will_have_kept(page):
    keep_reading(page, "Alcove width", "37 9/16")
    page.get_by_role("link", name="Settings").tap()
    page.get_by_role("button", name="Add tape").tap()
    tape = page.get_by_role("group", name="Tape 1", exact=True)
    for label, text in (
        ("Name", "Old tape"),
        ("Reference block", "4"),
        ("Tape reads on the block", "4 1/4"),
    ):
        tape.get_by_label(label, exact=True).fill(text)
    page.get_by_role("button", name="Done").tap()
    eventually(lambda: not drafts(page))
    open_entry(page, "Alcove width", EDIT)
    choose(page, "Tape", "Old tape")
    page.get_by_text("Reads 37 9/16″ with Old tape; corrected, 37 5/16″.").wait_for()
    page.get_by_label(READING).fill("31")
    page.get_by_text("Reads 31″ with Old tape; corrected, 30 3/4″.").wait_for()
    answer = page.locator("output.result")
    answer.get_by_text("thirty and three quarters inches").wait_for()
    answer.get_by_role("button", name=SAVE_CHANGE).tap()
    reading = page.get_by_role("listitem").filter(has_text="Alcove width")
    reading.get_by_text("thirty and three quarters inches").wait_for()


def test_a_reading_becomes_a_piece_that_follows_it_and_a_piece_begun_stays_as_typed(page):
    keep_reading(page, "Alcove width", "37 9/16")
    open_entry(page, "Alcove width", PIECE_THIS_LONG)
    assert page.get_by_label("Length", exact=True).input_value() == "[Alcove width]"
    page.locator("output[name=result]").get_by_text("thirty-seven and nine").wait_for()
    page.get_by_label("Length", exact=True).fill("30")
    page.get_by_role("button", name="Done").tap()
    open_entry(page, "Alcove width", PIECE_THIS_LONG)
    page.get_by_text("You already started a piece. Its length hasn’t changed.").wait_for()
    assert page.get_by_label("Length", exact=True).input_value() == "30"


def test_who_walks_to_the_saw_while_a_correction_is_being_kept_stays_there(page):
    keep_reading(page, "Alcove width", "37 9/16")
    fill_linked_rail(page)
    keep_as(page, "Top rail")
    correct(page, "Alcove width", "37 7/16")
    page.get_by_role("dialog").get_by_role("button", name="Accept").wait_for()
    page.evaluate("""() => {
        document.querySelector("dialog .primary").click();
        location.hash = "saw";
    }""")
    page.get_by_text("Corrected Alcove width").wait_for()
    page.get_by_role("heading", name="Top rail").wait_for()
    page.get_by_text("Stop at 41 11/16″: 1 cut", exact=True).wait_for()
    assert page.evaluate("location.hash") == "#saw"


def test_a_number_that_stays_while_others_of_its_line_change_is_told_once(page):
    """Of a rail measured on its long side only the short one follows the stock: 36 − 2 × 2 1/4."""
    keep_reading(page, "Stock", "2 1/4")
    open_question(page, "picture frame", "Mitered length")
    type_into(page, "Measured length", "36")
    page.get_by_label("Stock width", exact=True).tap()
    take(page, "Stock")
    page.get_by_role("button", name="Done").tap()
    choose(page, "Measured on", "Outside edge (long points)")
    choose(page, "Left end", "45° miter")
    choose(page, "Right end", "45° miter")
    result = page.locator("output[name=result]")
    result.get_by_label("thirty-one and one half").first.wait_for(state="attached")
    keep_as(page, "Top rail")

    correct(page, "Stock", "2 1/2")
    review = page.get_by_role("dialog", name="What this changes")
    number = review.get_by_role("listitem").filter(has_text="Long point")
    number.wait_for()
    assert number.locator(".follow-numbers .heard").all_inner_texts() == ["thirty-six inches"]
    review.get_by_text("Short point: 31 1/2″ → 31″").wait_for()
    review.get_by_role("button", name="Accept").tap()
    rail = page.get_by_role("listitem").filter(has_text="Top rail")
    rail.get_by_text("thirty-six inches").wait_for()


def test_a_line_that_would_follow_itself_is_refused_with_the_chain_and_a_lost_one_is_said(page):
    keep_reading(page, "Alcove width", "37 9/16")
    fill_linked_rail(page)
    keep_as(page, "Top rail")
    open_entry(page, "Alcove width", EDIT)
    page.get_by_label(READING).tap()
    take(page, "Top rail")
    field = page.locator(".field", has=page.get_by_label(READING))
    field.get_by_text("Alcove width → Top rail → Alcove width refers back to itself").wait_for()
    assert page.get_by_label(READING).input_value() == "[Top rail]"
    page.get_by_role("button", name="Done").tap()

    open_entry(page, "Alcove width", "Delete")
    review = page.get_by_role("dialog", name="What this changes")
    review.get_by_text("There’s no Alcove width in this project").wait_for()
    review.get_by_role("button", name="Accept").tap()
    rail = page.get_by_role("listitem").filter(has_text="Top rail")
    rail.get_by_text("There’s no Alcove width in this project").wait_for()
    rail.get_by_text("[Alcove width] − 1/4, 2 1/4").wait_for()
    page.locator("#place").get_by_role("button", name="Undo").tap()
    page.get_by_role("dialog").get_by_role("button", name="Accept").tap()
    rail.get_by_text("forty-one and thirteen sixteenths inches").wait_for()


def test_a_reading_holds_where_how_finely_and_a_photo_made_small(page):
    keep_reading(page, "Alcove width", "37 9/16")
    open_entry(page, "Alcove width", EDIT)
    page.get_by_label("Where", exact=True).fill("at the floor")
    choose(page, LIGHT_OR_HEAVY, "Light")
    photo = {"name": "alcove.png", "mimeType": "image/png", "buffer": picture(2400, 1200)}
    page.get_by_label("Photo", exact=True).set_input_files(photo)
    page.get_by_role("img", name="Where Alcove width was measured").wait_for()
    size = page.locator("img.photo").evaluate("(each) => [each.naturalWidth, each.naturalHeight]")
    assert size == [1024, 512]

    page.reload()
    page.get_by_role("img", name="Where Alcove width was measured").wait_for()
    assert page.get_by_label("Where", exact=True).input_value() == "at the floor"
    assert chosen(page, LIGHT_OR_HEAVY, "Light").is_visible()
    page.get_by_text("Measured 20").wait_for()
    refused = {"name": "alcove.png", "mimeType": "image/png", "buffer": b"no picture"}
    page.get_by_label("Replace photo").set_input_files(refused)
    page.get_by_text("can’t open that picture").wait_for()
    page.get_by_role("button", name="Remove photo").tap()
    page.locator("img.photo").wait_for(state="detached")


def test_a_piece_is_begun_for_each_entry_by_itself_and_is_done_with_once_kept(page):
    keep_reading(page, "Alcove width", "37 9/16")
    keep_reading(page, "Alcove height", "80 1/4")
    length = page.get_by_label("Length", exact=True)
    open_entry(page, "Alcove width", PIECE_THIS_LONG)
    assert length.input_value() == "[Alcove width]"
    open_entry(page, "Alcove height", PIECE_THIS_LONG)
    assert length.input_value() == "[Alcove height]"
    page.get_by_label("How many", exact=True).fill("2")
    page.get_by_role("button", name="Done").tap()
    page.locator("output[name=result]:not(.waiting) .main-answer").wait_for()
    keep_as(page, "Side")
    page.reload()
    open_entry(page, "Alcove width", PIECE_THIS_LONG)
    assert length.input_value() == "[Alcove width]"
    page.get_by_role("link", name="Project", exact=True).first.tap()
    open_entry(page, "Alcove height", PIECE_THIS_LONG)
    assert page.get_by_label("How many", exact=True).input_value() != "2"
    # What is typed under the same question by itself is another matter.
    open_piece(page)
    assert length.input_value() == ""
