"""For a left hand the keys that are pressed most stand at the left edge, on this device alone."""

from tests.browser.hand import choose, open_place, tap_keys
from tests.browser.pad.in_pad import answer
from tests.browser.pad.in_sight import KEYS, NUMBER, PLACE, SIDEWAYS, out_of_sight, type_whole

ROWS = """(keys) => {
  const rows = new Map();
  for (const each of keys) {
    const { left, top } = each.getBoundingClientRect();
    rows.set(top, [...(rows.get(top) ?? []), [left, each.textContent]]);
  }
  const inTurn = (pairs) => [...pairs].sort(([one], [other]) => one - other).map(([, it]) => it);
  return inTurn(rows).map(inTurn);
}"""


def rows(page):
    """The keys as they stand, once they do, row by row from the left."""
    keys = page.locator(".keypad .key")
    keys.first.wait_for()
    return keys.evaluate_all(ROWS)


def set_hand(page, name):
    """Say which hand works."""
    page.get_by_role("link", name="Settings").tap()
    choose(page, "Working hand", name)
    open_place(page, "Pad")


def left_of(page, selector):
    """How far from the left edge it begins."""
    return page.locator(selector).first.bounding_box()["x"]


def test_signs_and_enter_change_sides_and_digits_stay_in_their_order(page):
    right = [
        ["7", "8", "9", "⌫", "+"],
        ["4", "5", "6", "/", "−"],
        ["1", "2", "3", "again", "×"],
        ["more", "0", ".", "project", "Enter"],
    ]
    assert rows(page) == right
    set_hand(page, "Left")
    assert rows(page) == [[sign, near, *digits] for *digits, near, sign in right]
    tap_keys(page, "31 5/8")
    answer(page, "thirty-one and five eighths inches")
    assert out_of_sight(page, NUMBER + PLACE + KEYS) == []
    page.reload()
    assert rows(page)[0] == ["+", "⌫", "7", "8", "9"]
    set_hand(page, "Right")
    assert rows(page)[0] == right[0]


def test_on_its_side_the_keys_are_under_the_hand_that_works(phone, server):
    page = phone(SIDEWAYS, service_workers="block").pages[0]
    page.goto(server.address)
    type_whole(page, "31 5/8")
    assert left_of(page, ".pad-card") < left_of(page, ".keypad")
    set_hand(page, "Left")
    page.locator("output[name=pad-answer]:not(.waiting) .fraction").wait_for()
    assert left_of(page, ".keypad") < left_of(page, ".pad-card")
    assert out_of_sight(page, NUMBER + PLACE + KEYS) == []


def test_which_hand_works_is_of_the_device_and_in_no_project(page):
    set_hand(page, "Left")
    open_place(page, "Project")
    page.get_by_text("Nothing saved yet").wait_for()
    assert page.locator("#place button:enabled", has_text="Undo").count() == 0
