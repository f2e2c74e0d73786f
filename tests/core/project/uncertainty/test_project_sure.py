"""How sure a number is, beside an oracle that only knows sums: a half of a mark for each reading.

Root of the sum of squares: textbook propagation of independent errors.
"""

from fractions import Fraction

import pytest
from asking import exact
from hypothesis import given, settings
from hypothesis import strategies as st
from projects import acts, answered, ask, begun, changed, entry, linked


def sure(document, identity, **more):
    return answered("sure", document, id=identity, **more)


def test_a_reading_is_unsure_by_half_a_mark():
    said = sure(linked(), "1")
    assert said["said"] == "37 9/16″, probably within 1/32″, 1/32″ at the outside."
    assert (said["worst"]["low"]["text"], said["worst"]["high"]["text"]) == (
        "37 17/32″",
        "37 19/32″",
    )


def test_a_number_says_which_reading_to_measure_again():
    document = acts(
        linked(),
        ("keep_reading", {"name": "Scribe", "text": "1/2", "fineness": "1/4"}),
        ("keep_reading", {"name": "Gap", "text": "Alcove width - 3 × Scribe"}),
    )
    said = sure(document, "6")
    assert said["measure_again"]["said"] == (
        "Measure Scribe again: it accounts for 99% of the uncertainty."
    )
    assert [(each["name"], each["by"]) for each in said["readings"]] == [
        ("Scribe", "1/8″"),
        ("Alcove width", "1/32″"),
    ]
    assert exact(said["worst"]["by"]) == Fraction(13, 32)


def test_light_and_heavy_go_to_one_side_only():
    document = changed(linked(), "describe", id="1", side="light")
    worst = sure(document, "1")["worst"]
    assert (worst["low"]["text"], worst["high"]["text"]) == ("37 17/32″", "37 9/16″")
    assert sure(document, "1")["readings"][0]["off"] == "up to 1/32″ less"
    both = sure(document, "1", tape="h44")["readings"][0]["off"]
    assert both == "up to 1/16″ less or 1/32″ more"


@pytest.mark.parametrize(
    ("text", "by"),
    [("37 9/16", "1/32″"), ("37", "1/32″"), ("37 9/32", "1/64″"), ("950 mm", "0.5 mm")],
)
def test_the_text_shows_how_finely_it_was_read(text, by):
    """Half a sixteenth, half a thirty-second, half a millimeter, told as what it is."""
    document = changed(begun(), "keep_reading", name="a", text=text)
    assert sure(document, "1")["readings"][0]["by"].removeprefix("≈ ") == by


@pytest.mark.parametrize(
    ("text", "unit", "by"),
    [
        ("508 mm", "in", Fraction(1, 2)),
        ("900 mm", "in", Fraction(1, 2)),
        ("508", "mm", Fraction(1, 2)),
        ("50.8 cm", "in", Fraction(1, 2)),
        ("500 mm + 8 mm", "in", Fraction(1, 2)),
        ("508.5 mm", "in", Fraction(1, 4)),
        ("508.2 mm", "in", Fraction(1, 20)),
        ("508 mm + 1/16 in", "in", Fraction("25.4") / 32),
    ],
)
def test_a_reading_in_millimeters_is_as_fine_as_its_text_whatever_its_value(text, unit, by):
    """508 mm is 20 in, which lies on the marks of inches as well: nobody read it on those."""
    document = changed(begun(), "keep_reading", name="a", text=text, unit=unit)
    assert exact(sure(document, "1")["worst"]["by"]) * Fraction("25.4") == by


@pytest.mark.parametrize("wrong", [["value"], {"value": 1}, 3, True])
@pytest.mark.parametrize("key", ["answer", "tape"])
def test_a_choice_that_is_no_text_is_refused_in_words(key, wrong):
    error = ask("sure", linked(), id="3", **{key: wrong})["error"]
    assert (error["kind"], error["field"]) == ("message", key)


def test_a_rule_for_tapes_adds_what_it_allows_unless_the_tape_was_measured():
    """NIST Handbook 44: 1/32 in up to 6 ft."""
    assert sure(linked(), "1", tape="h44")["worst"]["by"]["text"] == "1/16″"
    tape = {"name": "Mine", "block": "1", "block_reads": "1"}
    document = acts(
        linked(),
        ("set", {"settings": {"tapes": [tape]}}),
        ("describe", {"id": "1", "tape": "Mine"}),
    )
    assert sure(document, "1", tape="h44")["worst"]["by"]["text"] == "1/32″"
    long = changed(linked(), "correct", id="1", text="120 ft")
    assert sure(long, "1", tape="h44")["readings"][0]["by"] == "9/32″"
    assert ask("sure", linked(), id="1", tape="IV")["error"]["field"] == "tape"


def test_what_the_person_says_counts_instead_of_the_marks_and_of_a_rule_for_tapes():
    document = changed(linked(), "describe", id="1", off="1/8", fineness="1/32")
    assert sure(document, "1")["worst"]["by"]["text"] == "1/8″"
    assert sure(document, "2", tape="h44")["worst"]["by"]["text"] == "1/8″"
    seen = entry(document, "Alcove width")
    assert (seen["off"], seen["off_told"]) == ("1/8", "1/8″")
    light = changed(document, "describe", id="1", side="light")
    worst = sure(light, "1")["worst"]
    assert (worst["low"]["text"], worst["high"]["text"]) == ("37 7/16″", "37 9/16″")
    blank = changed(document, "describe", id="1", off="")
    assert entry(blank, "Alcove width")["off_told"] == "1/64″"


def test_what_the_person_says_is_read_in_the_unit_of_its_reading():
    document = changed(begun(), "keep_reading", name="a", text="950", unit="mm", off="2")
    by = sure(document, "1")["worst"]["by"]
    assert exact(by) == Fraction(2 * 10, 254)
    anew = changed(document, "correct", id="1", text="37 3/8", unit="in")
    assert entry(anew, "a")["off"] == ""


def test_a_sum_is_off_by_what_is_said_of_it_beside_what_its_readings_are():
    """1/32 for the alcove, and 1/16 for how the sum was carried over."""
    document = changed(linked(), "describe", id="2", off="1/16")
    said = sure(document, "2")
    assert exact(said["worst"]["by"]) == Fraction(1, 32) + Fraction(1, 16)
    assert said["measure_again"]["name"] == "Case width"


@pytest.mark.parametrize(
    ("off", "kind", "part"),
    [
        ("1/", "unreadable", ""),
        ("13", "range", "0 to 12 in"),
        ("-1/8", "range", "0 to 12 in"),
        ("2 in²", "unreadable", ""),
        ("x" * 90, "unreadable", ""),
    ],
)
def test_what_cannot_be_read_as_off_by_so_much_is_refused_beside_its_field(off, kind, part):
    error = ask("change", linked(), act={"act": "describe", "id": "1", "off": off})["error"]
    assert (error["field"], error["kind"]) == ("off", kind)
    assert part in error["message"]


def test_another_answer_may_be_asked_for():
    said = sure(linked(), "3", answer="short_side")
    assert (said["label"], said["value"]["text"]) == ("Short point", "32 13/16″")
    assert ask("sure", linked(), id="3", answer="left_cut")["error"]["field"] == "answer"


def test_a_number_without_readings_and_one_in_error_say_so():
    document = changed(
        begun(),
        "keep_line",
        name="a",
        reckoner="mitered_length",
        values={"known": "30", "width": "2"},
    )
    assert sure(document, "1")["said"] == "34″: it doesn’t depend on any reading."
    assert ask("sure", changed(linked(), "delete", id="1"), id="2")["error"]["kind"] == "missing"
    assert ask("sure", linked(), id="9")["error"]["kind"] == "unknown"


@settings(max_examples=80)
@given(st.lists(st.tuples(st.integers(1, 600), st.integers(-4, 4)), min_size=1, max_size=5))
def test_sums_of_readings_agree_with_half_marks_added_and_with_their_root(terms):
    document = begun()
    for number, (sixteenths, _) in enumerate(terms):
        document = changed(document, "keep_reading", name=f"R{number}", text=f"{sixteenths}/16")
    total = " + ".join(f"{times} × R{number}" for number, (_, times) in enumerate(terms))
    document = changed(
        document, "keep_reading", name="Sum", text=f"200 + {total}".replace("+ -", "- ")
    )
    said = sure(document, str(len(terms) + 1))
    halves = [Fraction(abs(times), 32) for _, times in terms]
    value = 200 + sum(Fraction(count * times, 16) for count, times in terms)
    assert exact(said["value"]) == value
    assert exact(said["worst"]["high"]) == value + sum(halves)
    assert exact(said["worst"]["low"]) == value - sum(halves)
    likely = float(sum(half**2 for half in halves)) ** 0.5
    assert abs(float(exact(said["likely"]["by"])) - likely) < 1e-9
