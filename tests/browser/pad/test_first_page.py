"""What a thumb reaches without a second page of keys, and what one press of the second does."""

from tests.browser.hand import keep_as, tap_keys
from tests.browser.pad.in_pad import answer, enter, entry, key, lines
from tests.browser.start.start_support import eventually
from tests.browser.words import AGAIN, FROM_PROJECT, MORE_KEYS


def labels(page):
    """What the keys say, once they are there, in their order."""
    keys = page.get_by_role("group", name="Keypad").locator(".key")
    keys.first.wait_for()
    return keys.all_text_contents()


def says(page, label):
    """Wait until one of the keys says this."""
    eventually(lambda: label in labels(page))


def test_a_calipers_decimal_is_typed_on_the_first_page_and_tells_its_mark_at_once(pad):
    """1.078 is nearest 17/16 = 1.0625, and 0.0155 over it; 27.3812 mm by the inch of 25.4 mm."""
    tap_keys(pad, "1.078")
    answer(pad, "one and one sixteenth inches")
    told = pad.locator(".pad-answer .small-print")
    assert "0.016″ heavy" in told.text_content()
    assert "≈ 27.4 mm" in told.text_content().replace("\xa0", " ")
    tap_keys(pad, "−1 1/16")
    answer(pad, "one sixty-fourth of an inch")


def test_a_number_of_the_project_is_one_key_away(pad):
    tap_keys(pad, "37 9/16")
    answer(pad, "thirty-seven and nine sixteenths inches")
    keep_as(pad, "Alcove width")
    pad.get_by_role("button", name="Clear", exact=True).tap()
    key(pad, FROM_PROJECT)
    pad.get_by_role("dialog").get_by_role("button", name="Alcove width").tap()
    tap_keys(pad, "−3/4")
    assert entry(pad).input_value() == "[Alcove width] − 3/4"
    answer(pad, "thirty-six and thirteen sixteenths inches")


def test_a_whole_and_its_fraction_are_typed_in_six_keys_without_the_strip(pad):
    tap_keys(pad, "31 5/8")
    answer(pad, "thirty-one and five eighths inches")


def test_while_nothing_is_typed_the_space_key_repeats_the_last_step(pad):
    enter(pad, "31 5/8+2 1/4")
    assert "space" not in labels(pad)
    key(pad, AGAIN)
    pad.locator(".tally-line").nth(1).wait_for()
    assert lines(pad)[1] == "thirty-six and one eighth inches"
    key(pad, "3")
    says(pad, "space")
    assert "again" not in labels(pad)
    key(pad, "space")
    eventually(lambda: entry(pad).input_value() == "3 ")
    key(pad, "delete")
    key(pad, "delete")
    says(pad, "again")


def test_a_key_of_the_second_page_leads_back_to_the_first_and_delete_stays(pad):
    first = labels(pad)
    for name in ("open parenthesis", "feet", "mm, millimeters"):
        key(pad, MORE_KEYS)
        key(pad, name)
        says(pad, "more")
    eventually(lambda: entry(pad).input_value() == "(′ mm")
    key(pad, MORE_KEYS)
    for _ in range(3):
        key(pad, "delete")
    eventually(lambda: entry(pad).input_value() == "")
    key(pad, "digits")
    eventually(lambda: labels(pad) == first)
