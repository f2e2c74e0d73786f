"""A weight that one line works out and another takes by name, in pounds and in kilograms.

1 lb is 0.45359237 kg by definition (international pound, 1959).
"""

from fractions import Fraction

import pytest
from projects import acts, answered, begun, change, changed, entry

CASE = {"width": "36", "height": "30", "depth": "12", "thickness": "3/4", "fixed": "1"}
BUTTED = CASE | {"joint": "butt", "back": "none", "banding": "none"}
"""13.625 ft² of 3/4 plywood: × 1/16 ft × 34 lb (common practice, no source) is 28.953 lb."""
POUNDS = Fraction("13.625") / 16 * 34
TIP = {"height": "30", "depth": "12", "times": "1", "climber_lb": "60"}


def cabinet(**tip):
    return acts(
        begun(),
        ("keep_line", {"name": "Carcass", "reckoner": "carcass", "values": BUTTED}),
        ("keep_line", {"name": "Tip", "reckoner": "tip_over", "values": TIP | tip}),
    )


def lightest_climber(document):
    """Of the answer "A climber tips it from", in whole pounds, down."""
    told = answered("entry", document, id="2")["reckoning"]["answers"]
    (text,) = [each["text"] for each in told if each["key"] == "climber"]
    return int(text.split(" lb")[0])


def test_tip_over_takes_its_weight_from_the_carcass_in_pounds_and_in_kilograms():
    """By hand: 28.953 × 6 over an arm of 6 is a climber of 28.953 lb, down to 28."""
    for tip in (
        {"weight_lb": "[Carcass: Weight]"},
        {"units": "kg", "weight_kg": "[Carcass: Weight]", "climber_kg": "27.2"},
    ):
        assert lightest_climber(cabinet(**tip)) == int(POUNDS) == 28


def test_a_weight_that_is_taken_by_its_name_is_told_without_a_unit_of_its_own():
    told = entry(cabinet(weight_lb="[Carcass: Weight]"), "Tip")["summary"]
    assert "empty weight is the weight of Carcass," in told
    assert "5 lb" in entry(cabinet(weight_lb="5"), "Tip")["summary"]


def test_a_weight_takes_part_in_a_sum_in_the_unit_that_is_asked_for():
    """By hand: twice 28.953 and 5 lb is 62.9; twice 13.133 and 5 kg is 31.27 kg, 68.9 lb."""
    pounds = cabinet(weight_lb="2 × [Carcass: Weight] + 5")
    assert lightest_climber(pounds) == int(2 * POUNDS + 5) == 62
    kilograms = cabinet(units="kg", weight_kg="2 × [Carcass: Weight] + 5", climber_kg="27.2")
    assert lightest_climber(kilograms) == int(2 * POUNDS + 5 / Fraction("0.45359237")) == 68


def test_a_thicker_case_is_told_to_weigh_more_and_reaches_what_takes_its_weight():
    document = cabinet(weight_lb="[Carcass: Weight]")
    (follow,) = change(document, "correct", id="1", values=BUTTED | {"fixed": "3"})["follows"]
    assert follow["name"] == "Tip"
    heavier = changed(document, "correct", id="1", values=BUTTED | {"fixed": "3"})
    # Two more shelves of 34 1/2 × 12: 5.75 ft² × 1/16 × 34 is 12.219 lb more.
    assert lightest_climber(heavier) == int(POUNDS + Fraction("5.75") / 16 * 34) == 41


def test_the_weight_is_offered_by_name_and_told_in_both_units_beside_its_field():
    document = cabinet(weight_lb="[Carcass: Weight]")
    links = answered("entry", document, id="1")["links"]
    assert {
        "label": "Weight",
        "kind": "weight",
        "insert": "[Carcass: Weight]",
        "text": "29 lb (13.1 kg)",
    } in links
    values = TIP | {"weight_lb": "[Carcass: Weight]"}
    (told,) = answered("reckon", document, reckoner="tip_over", values=values)["names"]["weight_lb"]
    assert told["stands_for"] == "29 lb (13.1 kg)"


@pytest.mark.parametrize("field", ["height", "anchors", "times"])
def test_where_no_weight_is_asked_for_it_is_refused_in_a_sentence(field):
    document = cabinet(weight_lb="20")
    tip = TIP | {"weight_lb": "20", field: "[Carcass: Weight]"}
    error = change(document, "correct", id="2", values=tip)["error"]
    assert error["field"] == field
    assert error["message"].endswith("is a weight, which doesn’t work here.")


def test_a_weight_is_no_length_on_the_pad_or_in_a_reading():
    reading = {"name": "Odd", "text": "[Carcass: Weight]"}
    error = change(cabinet(weight_lb="20"), "keep_reading", **reading)["error"]
    assert error["message"].endswith("is a weight, which doesn’t work here.")


def test_how_sure_a_weight_is_hangs_on_the_readings_of_its_case():
    """By hand, either side 1/2 longer: 2 × 12 × 1/2 in² of 3/4 plywood are 9/1728 × 34 lb."""
    document = acts(
        begun(),
        ("keep_reading", {"name": "High", "text": "30", "off": "1/2"}),
        (
            "keep_line",
            {"name": "Carcass", "reckoner": "carcass", "values": BUTTED | {"height": "[High]"}},
        ),
    )
    sure = answered("sure", document, id="2", answer="weight")
    assert sure["worst"]["by"]["text"] == "0.2 lb (0.1 kg)"
