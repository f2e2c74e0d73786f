"""What a thumb does on the screen, in words."""

from tests.browser.words import EXAMPLE, SAVE, SAVE_TO_PROJECT, SAVED, SOLVE

KEY_NAMES = {
    " ": "space",
    "/": "slash, for a fraction",
    "+": "plus",
    "−": "minus",
    "×": "times",
    ".": "point",
    "′": "feet",
    "″": "inches",
    "°": "degrees",
}


STORED = """
(key) => new Promise((resolve) => {
  const opening = indexedDB.open("sawside");
  opening.onsuccess = () => {
    const asked = opening.result.transaction("page").objectStore("page").get(key);
    asked.onsuccess = () => {
      opening.result.close();
      resolve(asked.result ?? null);
    };
  };
})
"""


def stored(page, key):
    """What the page's store has under a key by now; None where there is nothing."""
    return page.evaluate(STORED, key)


def open_place(page, name):
    """Tap one of the four places in the bar at the foot of the screen, and wait until it is drawn.

    A thumb needs longer to its next touch; a test would type into what is just being replaced.
    """
    link = page.get_by_role("navigation", name="Places").get_by_role("link", name=name)
    link.tap()
    page.locator(f"#place[data-shows='{link.get_attribute('href')[1:]}']").wait_for()


def tap_keys(page, text):
    """Tap `text` on the keypad that is in sight; a sign's own key writes its spaces."""
    keypad = page.get_by_role("group", name="Keypad")
    for letter in text:
        keypad.get_by_role("button", name=KEY_NAMES.get(letter, letter), exact=True).tap()


def unfold(field):
    """Open the row that a field is folded behind, if it is."""
    field.wait_for(state="attached")
    fold = field.locator("xpath=ancestor::details[not(@open)]/summary")
    if fold.count():
        fold.tap()
    return field


def field_called(page, label):
    """The field with that label, in sight."""
    return unfold(page.get_by_label(label, exact=True))


def type_into(page, label, text):
    """Tap a field and then its keys."""
    field_called(page, label).tap()
    tap_keys(page, text)


def choice_of(page, label):
    """The row of a choice."""
    return page.locator(".field-choice", has=page.get_by_text(label, exact=True))


def choose(page, label, option):
    """Tap one of a choice: in its row, or in the list that the row opens.

    One end that is asked for together with the other is made different first.
    """
    row, apart = choice_of(page, label), page.get_by_role("button", name="Different ends")
    row.or_(apart).first.wait_for(state="attached")
    if label in ("Left end", "Right end") and apart.is_visible():
        apart.tap()
    unfold(row)
    if row.get_by_role("radiogroup").count():
        row.get_by_text(option, exact=True).tap()
        return
    row.locator(".picked").tap()
    page.get_by_role("dialog", name=label).get_by_text(option, exact=True).tap()


def chosen(page, label, option):
    """What says that one of a choice is chosen."""
    row = choice_of(page, label)
    return row.locator(".picked-now, input:checked + label").get_by_text(option, exact=True)


def try_example(page):
    """Fill in the example of the question that is open, and wait until it is answered."""
    example = page.get_by_role("button", name=EXAMPLE)
    clear = page.get_by_role("button", name="Clear", exact=True)
    example.or_(clear).first.wait_for()
    if not example.is_visible():
        clear.tap()
    example.tap()
    page.locator("output[name=result]:not(.waiting) .main-answer").wait_for()


def open_question(page, words, title):
    """Find a question by words of one's own, and open it."""
    open_place(page, SOLVE)
    page.get_by_role("searchbox", name="Find a question").fill(words)
    page.get_by_role("link", name=title).tap()


def open_piece(page):
    """Open the form of a piece whose size is known, which no list of questions offers."""
    page.evaluate("location.hash = 'work-out/piece_by_hand'")
    page.get_by_role("heading", name="Piece of a known size", exact=True).wait_for()


def keep_as(page, name):
    """Keep what is shown under a name; above the keypad stands a Save of its own."""
    if page.locator("#sheet").is_visible():
        page.locator("#sheet").get_by_role("button", name="Done").tap()
    page.get_by_role("button", name=SAVE_TO_PROJECT).tap()
    page.get_by_role("textbox", name="Name").fill(name)
    page.get_by_role("button", name=SAVE, exact=True).tap()
    page.get_by_text(f"{SAVED} {name}").wait_for()
