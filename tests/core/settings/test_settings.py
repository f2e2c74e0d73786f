"""Settings: a kerf and tapes of one's own, checked when they are set, quick to read again."""

from fractions import Fraction

import pytest
from asking import errors
from hypothesis import given
from hypothesis import strategies as st

import sawside
from sawside.reckoners import RECKONERS
from sawside.settings.own_tape import OwnTape
from sawside.settings.settings import read_settings

CABINET = sawside.handle(
    {"do": "change", "document": None, "act": {"act": "begin", "name": "Record cabinet"}}
)["document"]


def put(**settings):
    act = {"act": "set", "settings": settings}
    return sawside.handle({"do": "change", "document": CABINET, "act": act})


def test_the_kerf_is_an_eighth_or_3_mm_unless_it_was_measured():
    assert read_settings({}).kerf == Fraction(1, 8)
    assert read_settings({"kerf": "3/32"}).kerf == Fraction(3, 32)
    assert read_settings({"kerf": "2.4", "unit": "mm"}).kerf == Fraction(12, 127)  # 2.4 / 25.4
    assert read_settings({"unit": "mm"}).kerf == Fraction(15, 127)  # 3 / 25.4


def test_a_kerf_is_taken_from_the_last_line_of_the_tally():
    tally = {"schema": 2, "next": 2, "lines": [{"id": "1", "name": "", "text": "12", "unit": "in"}]}
    act = {"act": "step", "how": "kerf"}
    message = {"do": "tally", "tally": tally, "act": act, "settings": {"kerf": "3/32"}}
    said = sawside.handle(message)
    assert said["lines"][1]["value"]["exact"] == "381/32"
    assert said["lines"][1]["text"] == "[1] − 3/32"


@pytest.mark.parametrize(
    ("settings", "field", "row"),
    [
        ({"kerf": "3//4"}, "settings.kerf", None),
        ({"kerf": "2 in"}, "settings.kerf", None),
        ({"kerf": 3}, "settings.kerf", None),
        ({"tapes": "one"}, "settings.tapes", None),
        ({"tapes": [{"name": ""}, {"case": "3"}]}, "settings.tapes", 1),
        ({"tapes": [{"name": "a", "block": "4"}]}, "settings.tapes", 0),
        ({"tapes": [{"name": "a", "case": "3//4"}]}, "settings.tapes", 0),
        ({"tapes": [{"name": "a", "case": "0"}]}, "settings.tapes", 0),
        ({"tapes": [{"name": "a"}, {"name": "A"}]}, "settings.tapes", 1),
        ({"tapes": [{"name": "a"}] * 13}, "settings.tapes", None),
        ({"tapes": [["a"]]}, "settings.tapes", 0),
        ({"hammer": "1"}, "settings", None),
    ],
)
def test_what_cannot_be_used_is_refused_at_its_place(settings, field, row):
    said = put(**settings)
    assert errors(said)[field].get("row") == row


def test_several_bad_settings_are_told_of_at_once_each_at_its_part():
    rows = [{"case": "3"}, {}, {"name": "a", "block": "6", "block_reads": "9"}]
    said = put(kerf="3//4", tapes=rows)
    found = [
        (error["field"], error.get("row"), error.get("part"))
        for error in (said["error"], *said["more"])
    ]
    assert found == [
        ("settings.kerf", None, None),
        ("settings.tapes", 0, "name"),
        ("settings.tapes", 2, "block_reads"),
    ]


def test_what_the_page_starts_with_is_good_in_every_unit():
    declared = sawside.handle({"do": "describe"})["settings"]
    start = {field["key"]: field["default"] for field in declared if field["default"]}
    for unit in ("in", "ft", "mm", "cm", "m"):
        assert put(**start | {"unit": unit})["ok"]
        assert read_settings(start | {"unit": unit}).kerf == Fraction(1, 8)


@pytest.mark.parametrize("settings", [{"kerf": "3", "unit": "in"}, {"kerf": "1/8", "unit": "mm"}])
def test_a_kerf_that_was_meant_in_the_other_unit_is_noticed(settings):
    assert errors(put(**settings))["settings.kerf"]["kind"] == "range"


def test_no_question_has_a_kerf_of_its_own_beside_that_of_the_settings():
    fields = [field for each in RECKONERS.values() for field in each.fields if "kerf" in field.key]
    assert fields
    assert {field.setting for field in fields} == {"kerf"}


def test_a_blank_kerf_of_a_question_is_that_of_the_settings_whatever_the_unit_of_the_line():
    """2.54 mm is exactly .1 in; the line was kept when a bare number meant inches."""
    document = CABINET
    values = {"stick": "10", "piece": "2", "kerf": ""}
    for act in (
        {"act": "keep_line", "name": "Shelves", "reckoner": "how_many_fit", "values": values},
        {"act": "set", "settings": {"unit": "mm", "kerf": "2.54"}},
    ):
        said = sawside.handle({"do": "change", "document": document, "act": act})
        document = said["document"]
    told = sawside.handle({"do": "view", "document": document})["entries"][0]
    assert told["ok"], told
    settings = {"kerf": "2.54 mm"}
    message = {"do": "reckon", "reckoner": "how_many_fit", "settings": settings}
    asked = sawside.handle(message | {"values": values})
    typed = sawside.handle(message | {"values": values | {"kerf": ".1 in"}})
    assert asked["answers"] == typed["answers"]
    assert asked["echoes"]["kerf"].endswith("from Settings")
    assert told["headline"]["text"] == asked["answers"][0]["text"]


def test_settings_that_say_the_same_are_one_and_can_be_remembered():
    data = {"kerf": "3/32", "tapes": [{"name": "a", "case": "3"}]}
    one, other = read_settings(data), read_settings(dict(data))
    assert one == other
    assert len({one, other, read_settings(data | {"kerf": "1/8"})}) == 2


def test_the_kerf_and_the_tapes_are_declared_so_that_the_page_can_draw_them():
    fields = {field["key"]: field for field in sawside.handle({"do": "describe"})["settings"]}
    assert fields["kerf"]["kind"] == "length"
    assert [field["key"] for field in fields["tapes"]["fields"]][:2] == ["name", "case"]


readings = st.fractions(min_value=1, max_value=300, max_denominator=64)
small = st.fractions(min_value=Fraction(-1, 8), max_value=Fraction(1, 8), max_denominator=128)
stretches = st.fractions(
    min_value=Fraction(999, 1000), max_value=Fraction(1001, 1000), max_denominator=10**5
)


@given(hook=small, scale=stretches, reading=readings)
def test_a_tape_measured_at_two_lengths_is_corrected_at_every_other(hook, scale, reading):
    """Oracle: a tape made up with a known hook and scale error, which must be found again."""

    def reads(true):
        return (true - hook) / scale

    tape = OwnTape("made up", None, Fraction(4), reads(4), Fraction(96), reads(96))
    assert (tape.hook, tape.scale) == (hook, scale)
    assert tape.true(reading) == hook + scale * reading


def test_a_tape_that_reads_short_on_a_block_adds_its_hook_to_every_reading():
    tape = OwnTape("bent", block=Fraction(4), block_reads=Fraction(127, 32))
    assert tape.true(Fraction(20)) == 20 + Fraction(1, 32)


def test_a_stretched_tape_is_corrected_in_proportion():
    tape = OwnTape("long", distance=Fraction(100), distance_reads=Fraction(799, 8))
    assert tape.true(Fraction(799, 16)) == 50


def test_a_message_with_its_own_unit_leaves_the_settings_kerf_as_it_was():
    message = {"do": "read", "text": "25.4", "unit": "mm", "settings": {"kerf": "1/8"}}
    assert sawside.handle(message)["value"]["exact"] == "1"
    assert sawside.handle(message | {"unit": "cubit"})["ok"] is False


def test_a_document_with_several_bad_tapes_is_told_as_damaged():
    document = CABINET | {"settings": {"tapes": [{"case": "3"}, {"name": "a", "case": "x"}]}}
    said = sawside.handle({"do": "view", "document": document})
    assert said["error"]["field"] == "document.settings"
