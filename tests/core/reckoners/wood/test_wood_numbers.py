"""Numbers beside lengths, and the working in a person's own system."""

from fractions import Fraction

import pytest
from asking import reckon

from sawside.reckoners import RECKONERS
from sawside.wood.numbers import number_text, percent_text


@pytest.mark.parametrize(
    ("value", "places", "told"),
    [
        ("1234567/10", 0, "123,457"),
        ("1234.05", 2, "1,234.05"),
        ("36.2857", 1, "36.3"),
        ("0", 2, "0"),
        ("999.96", 1, "1,000"),
    ],
)
def test_a_number_is_rounded_with_its_thousands_apart(value, places, told):
    assert number_text(Fraction(value), places) == told


def test_a_percentage_has_its_sign_behind_it():
    assert percent_text(Fraction("9.24")) == "9.2%"


@pytest.mark.parametrize(
    ("question", "case"),
    [
        ("shelf_strength", {}),
        ("seasonal_movement", {}),
        ("slots_for_a_top", {"held": "screws"}),
        ("slots_for_a_top", {"held": "pins"}),
    ],
)
def test_the_working_keeps_to_one_system(question, case):
    """In millimeters no inch mark stands in the working, and the other way about."""
    for settings, other in (({"display": "mm"}, "″"), ({"display": "in"}, " mm")):
        said = reckon(question, settings, **RECKONERS[question].example | case)
        assert not [line for line in said["working"] if other in line["text"]]
