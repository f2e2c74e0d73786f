"""A bare number means what it meant when it was typed, whatever the project's unit is since.

The oracle reads the text where it was typed and multiplies by hand: 25.4 mm are an inch.
"""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from projects import acts, begun, changed, view

from sawside.lengths.reading.reader import read_length
from sawside.lengths.reading.unit_kept import pinned
from sawside.settings.settings import read_settings

UNITS = ("in", "ft", "mm", "cm", "m")
TEXTS = (
    "10",
    "1/2",
    "12 1/2",
    "3 + 1/8",
    "2 × (4 − 1/3)",
    "100.5",
    "7 mm",
    "1' 2",
    "1 in + 2",
    " 5 ",
)


@pytest.mark.parametrize("text", TEXTS)
@given(unit=st.sampled_from(UNITS), other=st.sampled_from(UNITS))
def test_a_pinned_text_is_the_same_length_in_the_other_unit(text, unit, other):
    kept = pinned(text, unit, other)
    assert read_length(kept, other).value == read_length(text, unit).value


def test_a_text_that_means_the_same_stays_as_it_was_typed():
    assert pinned("7 mm", "in", "mm") == "7 mm"
    assert pinned("1/8", "in", "in") == "1/8"
    assert pinned("0.4", "mm", "in") == "0.4 mm"


METRIC = {
    "unit": "mm",
    "kerf": "3",
    "clearance_on_pins": "0.4",
    "tapes": [{"name": "Old", "block": "100", "block_reads": "100.5"}],
}


def test_settings_filled_in_keep_their_lengths_when_the_unit_is_changed():
    document = changed(begun(), "set", settings=METRIC)
    said = read_settings(changed(document, "set", settings=METRIC | {"unit": "in"})["settings"])
    assert said.kerf == Fraction(30, 254)
    assert said.set_lengths["clearance_on_pins"] == Fraction(4, 254)
    (tape,) = said.tapes
    assert (tape.block, tape.block_reads) == (Fraction(1000, 254), Fraction(1005, 254))


def test_what_is_changed_together_with_the_unit_is_in_the_new_one():
    document = changed(begun(), "set", settings=METRIC)
    new = METRIC | {"unit": "in", "kerf": "1/8"}
    assert read_settings(changed(document, "set", settings=new)["settings"]).kerf == Fraction(1, 8)


def test_a_reading_by_an_own_tape_stays_when_the_unit_is_changed():
    document = acts(
        begun(),
        ("set", {"settings": METRIC}),
        ("keep_reading", {"name": "Width", "text": "500", "tape": "Old"}),
        ("set", {"settings": METRIC | {"unit": "in", "display": "mm"}}),
    )
    # The tape reads 1/2 mm too much at the hook.
    assert view(document)["entries"][0]["headline"]["exact"] == str(Fraction(4995, 254))


def test_an_allowance_typed_in_millimeters_for_a_line_in_inches_is_in_millimeters():
    document = acts(
        begun(),
        ("keep_line", {"name": "Shelf", "reckoner": "piece_by_hand", "values": {"length": "36"}}),
        ("set", {"settings": {"unit": "mm"}}),
        ("about", {"id": "1", "part": "piece", "about": {"rough_length": "10"}}),
    )
    rough = view(document)["pieces"][0]["rough"]["length"]
    assert Fraction(rough["exact"]) == 36 + Fraction(100, 254)
    again = changed(
        document, "about", id="1", part="piece", about=document["entries"][0]["about"]["piece"]
    )
    assert again["entries"] == document["entries"]
