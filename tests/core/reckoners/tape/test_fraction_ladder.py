"""Any number stands between its two neighbors on every division, and the errors say how far."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given
from hypothesis import strategies as st

from tables import rows

DIVISIONS = {f"1/{parts}": parts for parts in (2, 4, 8, 16, 32, 64)}


def neighbors(length):
    return reckon("fractions", solve="nearest", length=length)["by_key"]["neighbors"]["items"]


@given(st.integers(0, 4_000_000).map(lambda number: Fraction(number, 10_000)))
def test_the_neighbors_enclose_the_number_one_step_apart(length):
    found = {}
    for item in neighbors(f"{length.numerator}/{length.denominator} in"):
        name, how = item["label"].split(", ")
        found.setdefault(name, []).append((how, exact(item)))
    assert list(found) == list(DIVISIONS)
    for name, marks in found.items():
        parts = DIVISIONS[name]
        whole = length * parts // 1
        if length * parts == whole:
            assert marks == [("exact", length)]
        else:
            assert [mark for _, mark in marks] == [
                Fraction(int(whole), parts),
                Fraction(int(whole) + 1, parts),
            ]
            for how, mark in marks:
                way, _, size = how.split()
                told = Fraction(size.rstrip("″").rstrip("…"))
                assert way == ("low" if mark < length else "high")
                assert 0 <= abs(mark - length) - told < Fraction(1, 10_000)


def test_on_your_marks_is_the_nearest_mark_of_the_tape_also_of_what_was_typed():
    """By hand: 23/32 lies 1/32 short of 3/4, and .71 lies .0225 over 11/16 (a tie, told even)."""
    for length, told in (("23/32", ("3/4″", "1/32″ light")), ("0.71", ("11/16″", "0.022″ heavy"))):
        mark = reckon("fractions", solve="nearest", length=length)["by_key"]["mark"]
        assert (mark["text"], mark["dropped_text"]) == told


def test_seventy_one_hundredths_between_its_fractions():
    """By hand: 11/16 = .6875 is .0225 low, 23/32 = .71875 is .00875 high."""
    items = {item["label"]: item["text"] for item in neighbors("0.71")}
    assert items["1/16, low by 0.0225″"] == "11/16″"
    assert items["1/32, high by 0.0087…″"] == "23/32″"


def test_the_decimals_of_every_sixty_fourth_are_exact():
    for row in rows("fractions_64ths.csv"):
        said = reckon("fractions", solve="nearest", length=f"{row['n_of_64']}/64 in")["by_key"]
        assert Fraction(said["inches"]["text"].rstrip("″")) == Fraction(row["inch_exact_decimal"])
        told = said["millimeters"]["text"].removesuffix(" mm")
        assert Fraction(told) == Fraction(row["mm_exact"])
        assert said["neighbors"]["items"][-1]["label"] == "1/64, exact"


def test_millimeters_have_their_neighbors_too():
    said = reckon("fractions", solve="nearest", length="0.71")["by_key"]
    assert said["metric"]["text"] == (
        "18 mm (low by 0.034) and 19 mm (high by 0.966); "
        "18 mm (low by 0.034) and 18.5 mm (high by 0.466)"
    )
    exactly = reckon("fractions", solve="nearest", length="18 mm")["by_key"]  # told once
    assert exactly["metric"]["text"] == "18 mm exactly"


def test_a_bad_number_is_told_of():
    assert (
        errors(ask("fractions", solve="nearest", length="1,024"))["length"]["kind"] == "unreadable"
    )


@given(st.fractions(min_value=0, max_value=300, max_denominator=64))
def test_the_drawing_shows_the_inch_that_holds_the_number(length):
    drawn = reckon("fractions", solve="nearest", length=f"{length} in")["drawing"]
    cut = next(shape for shape in drawn["shapes"] if shape.get("role") == "cut")
    edges = [s for s in drawn["shapes"] if s.get("role") == "edge" and s["from"][1] == s["to"][1]]
    assert len(edges) == len(DIVISIONS)
    low, high = edges[0]["from"][0], edges[0]["to"][0]
    assert low <= cut["from"][0] <= high
    part = (cut["from"][0] - low) / (high - low)
    assert abs(part - float(length % 1)) < 0.001


@pytest.mark.parametrize(
    ("length", "settings", "verdict"),
    [
        ("0.71", {}, "Nearest 64th 45/64″, 0.007″ heavy"),
        ("0.7", {"mark": "1/8"}, "Nearest 64th 45/64″, 0.003″ light"),
        ("18 mm", {"display": "mm"}, "Nearest 64th 45/64″, 0.141 mm heavy"),
        ("3 1/2", {}, "3 1/2″ exactly"),
    ],
)
def test_the_verdict_is_the_nearest_64th_whatever_the_marks(length, settings, verdict):
    """Arithmetic: 45/64 is 0.703125, 0.71 is 0.006875 more, 0.7 is 0.003125 less; 18 mm is
    0.141 mm more than 45/64 × 25.4 = 17.859.
    """
    assert reckon("fractions", settings, solve="nearest", length=length)["verdict"] == verdict


def test_in_millimeters_each_neighbor_is_called_by_its_fraction():
    """Arithmetic: 11/16 × 25.4 = 17.4625, and 18 − 17.4625 = 0.5375; 23/32 × 25.4 = 18.25625."""
    settings = {"unit": "mm", "display": "mm"}
    said = reckon("fractions", settings, solve="nearest", length="18")["by_key"]
    labels = [item["label"] for item in said["neighbors"]["items"]]
    assert "11/16″, low by 0.537… mm" in labels
    assert "23/32″, high by 0.256… mm" in labels
