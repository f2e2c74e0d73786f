"""The road of the mitered length in Firefox and WebKit: typed, kept, there again without network.

The lengths are worked by hand from the rule that at a 45 a piece grows by the stock's width per
mitered end (common practice, no source): 31 5/8 + 2 × 2 1/4 = 36 1/8, and 20 1/4 + 2 × 2 = 24 1/4.
"""

import time

from tests.browser.start.start_support import wait_for_snapshot, way_of_start
from tests.browser.test_accessible import axe
from tests.browser.words import EXAMPLE, READY_OFFLINE, SAVE, SAVE_TO_PROJECT, SAVED, SOLVE

ANSWER = "output[name=result] .main-answer"
LISTED = "() => document.querySelector('#place').innerText"
REACHED = "() => fetch('no-such-file').then(() => true, () => false)"


def stays(phone):
    """Whether the list is still as it was half a second ago: a thumb waits for that."""
    before = phone.evaluate(LISTED)
    time.sleep(0.5)
    return phone.evaluate(LISTED) == before


def open_mitered_length(phone):
    """Find the question by words of one's own, and begin it afresh."""
    phone.tap(SOLVE, group="Places")
    phone.type("Find a question", "picture frame")
    phone.until(lambda: stays(phone), "a list that stays")
    phone.tap("Mitered length")
    phone.tap("Clear")


def miter_both_ends(phone):
    """Leave the keypad, and choose 45 for both ends."""
    phone.tap("Done")
    phone.tap("Both ends")
    phone.tap("45° miter")


def test_a_kept_line_is_there_again_without_network_and_a_new_answer_comes(open_phone, server):
    """Answered from the snapshot of the first visit, with the server stopped for good."""
    with open_phone() as phone:
        phone.goto(server.address)
        open_mitered_length(phone)
        phone.tap_keys("Measured length", "31 5/8")
        phone.tap_keys("Stock width", "2 1/4")
        miter_both_ends(phone)
        phone.wait_for(ANSWER, "thirty-six and one eighth inches")
        phone.tap(SAVE_TO_PROJECT)
        phone.type("Name", "Top rail")
        phone.tap(SAVE)
        phone.wait_for("#notices", f"{SAVED} Top rail")
        phone.tap("Settings")
        phone.wait_for("#place", READY_OFFLINE)
        wait_for_snapshot(phone)
    server.stop()

    with open_phone() as phone:
        phone.goto(server.address)
        assert way_of_start(phone) == "snapshot"
        assert not phone.evaluate(REACHED), "the server was to be out of reach"
        phone.tap("Project", group="Places")
        phone.wait_for("li", "Top rail")
        phone.wait_for("li", "thirty-six and one eighth inches")
        open_mitered_length(phone)
        phone.type("Measured length", "20 1/4")
        phone.type("Stock width", "2")
        miter_both_ends(phone)
        phone.wait_for(ANSWER, "twenty-four and one quarter inches")


def test_axe_finds_nothing_on_the_pad_and_in_a_question(open_phone, server):
    """Both with an answer on them; the same rules as in Chromium."""
    seen = {}
    with open_phone() as phone:
        phone.goto(server.address)
        phone.type("Length or sum", "31 5/8+2 1/4")
        phone.wait_for("output[name=pad-answer] .fraction", "thirty-three and seven eighths inches")
        seen["Pad"] = axe(phone)
        open_mitered_length(phone)
        phone.tap(EXAMPLE)
        phone.wait_for(ANSWER, "inches")
        seen["Mitered length"] = axe(phone)
    assert all(each["passed"] > 10 for each in seen.values())
    assert not any(each["wrong"] for each in seen.values()), seen
