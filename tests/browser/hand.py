"""What a thumb does on the screen, in words."""

from tests.browser.words import SAVE, SAVE_TO_PROJECT, SAVED, SOLVE

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


def open_place(page, name):
    """Tap one of the four places in the bar at the foot of the screen."""
    page.get_by_role("navigation", name="Places").get_by_role("link", name=name).tap()


def tap_keys(page, text):
    """Tap `text` on the keypad that is in sight; a sign's own key writes its spaces."""
    keypad = page.get_by_role("group", name="Keypad")
    for letter in text:
        keypad.get_by_role("button", name=KEY_NAMES.get(letter, letter), exact=True).tap()


def type_into(page, label, text):
    """Tap a field and then its keys."""
    page.get_by_label(label, exact=True).tap()
    tap_keys(page, text)


def choose(page, group, option):
    """Tap one of the buttons of a choice."""
    page.get_by_role("group", name=group).get_by_text(option, exact=True).tap()


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
    """Keep what is shown under a name."""
    page.get_by_role("button", name=SAVE_TO_PROJECT).tap()
    page.get_by_role("textbox", name="Name").fill(name)
    page.get_by_role("button", name=SAVE, exact=True).tap()
    page.get_by_text(f"{SAVED} {name}").wait_for()
