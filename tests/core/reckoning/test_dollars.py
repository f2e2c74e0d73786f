"""A price is read as one writes it, and told with its sign in front."""

import pytest
from asking import ask, errors, reckon, texts
from projects import acts, begun, view

PANEL = [{"length": "20", "width": "10"}]


@pytest.mark.parametrize(
    ("typed", "cost"),
    [
        ("9.40", "$9.40"),
        ("$9.40", "$9.40"),
        ("$ 9.40", "$9.40"),
        ("9.40 $", "$9.40"),
        ("$1,204.50", "$1,204.50"),
        ("1,204.50", "$1,204.50"),
        ("$8 + $1.50", "$9.50"),
    ],
)
def test_a_price_is_read_as_one_writes_it(typed, cost):
    assert texts(reckon("sheets", pieces=PANEL, price=typed))["cost"] == cost


@pytest.mark.parametrize("typed", ["1,204", "84,50", "1.204,50", "1,20.50", "$"])
def test_a_price_that_could_mean_two_things_is_refused(typed):
    """A comma before three digits is a point to some."""
    assert errors(ask("sheets", pieces=PANEL, price=typed))["price"]["remedy"]


def test_only_a_price_has_a_dollar_sign():
    assert errors(ask("sheets", pieces=PANEL, trim="$1"))["trim"]["kind"] == "unreadable"


def test_a_price_is_told_with_its_sign_in_front():
    assert reckon("sheets", pieces=PANEL, price="9.50")["summary"].endswith("$9.50 price each")
    said = errors(ask("sheets", pieces=PANEL, price="20000"))["price"]
    assert said["message"] == "Price each must be at most $10000."


def test_a_name_in_a_price_keeps_its_dollar_sign():
    count = {"reckoner": "sheets", "values": {"pieces": PANEL}}
    priced = {
        "reckoner": "sheets",
        "values": {"pieces": PANEL, "price": "[In $: Sheets to buy] + $1"},
    }
    document = acts(
        begun(), ("keep_line", {"name": "In $"} | count), ("keep_line", {"name": "Priced"} | priced)
    )
    assert view(document)["entries"][1]["verdict"] == "Buy 1 sheet, $2.00"
