"""The one door answers every message, good or bad, and never raises."""

import json
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

import sawside
from sawside.errors import KINDS, Refusal
from sawside.reckoners import RECKONERS

RAIL = {"known": "31 5/8", "width": "2 1/4"}
MITER = {"do": "reckon", "reckoner": "mitered_length"}


def test_describe_tells_contract_and_version():
    said = sawside.handle({"do": "describe"})
    assert (said["ok"], said["contract"], said["version"]) == (True, 1, sawside.__version__)


def test_read_answers_a_sum_with_its_echo_and_its_place_on_the_tape():
    said = sawside.handle({"do": "read", "text": "7-13/16 + 3", "settings": {}})
    assert said["echo"] == "7 13/16″ + 3″"
    assert said["value"]["text"] == "10 13/16″"
    assert Fraction(said["value"]["exact"]) == Fraction(173, 16)
    assert said["tape"]["from"] <= 10.8125 <= said["tape"]["to"]


@pytest.mark.parametrize(
    ("text", "kind", "shown"),
    [
        ("3 in × 4 in", "area", "12 in²"),
        ("1 in × 2 in × 3/4 in", "volume", "1 1/2 in³"),
        ('96" ÷ 7 1/2"', "count", "12, 6″ left"),
        ('90" ÷ 7 1/2"', "count", "12"),
        ('2 × (90" ÷ 7 1/2")', "count", "24"),
    ],
)
def test_read_answers_what_a_sum_comes_to(text, kind, shown):
    said = sawside.handle({"do": "read", "text": text})
    assert (said["value"]["kind"], said["value"]["text"], said["tape"]) == (kind, shown, None)


@pytest.mark.parametrize(
    ("settings", "text"),
    [
        ({}, "1 7/16″"),
        ({"mark": "1/64"}, "1 27/64″"),
        ({"mark": "1/64", "rounding": "up"}, "1 7/16″"),
        ({"mark": "1/4", "rounding": "down"}, "1 1/4″"),
        ({"mark": ".001 in"}, "1.422″"),
        ({"mark": ""}, "1 7/16″"),
        ({"display": "mm"}, "36 mm"),
        ({"mark": "0.1 mm"}, "36.1 mm"),
        ({"mark": "0.5 mm", "display": "in"}, "36.0 mm"),
        ({"mark": "1/16", "display": "mm"}, "36.5125 mm"),
    ],
)
def test_settings_choose_the_mark_and_its_form(settings, text):
    said = sawside.handle({"do": "read", "text": "36 1/8 mm", "settings": settings})
    assert said["value"]["text"] == text


def test_in_millimeters_mark_and_form_follow_the_unit():
    said = sawside.handle({"do": "read", "text": "18 + 1/3 in", "settings": {"unit": "mm"}})
    assert (said["value"]["text"], said["value"]["dropped_text"]) == ("26 mm", "0.467 mm heavy")
    assert said["tape"]["unit"] == "mm"


ONE_LINE = {
    "schema": 1,
    "next": 2,
    "lines": [{"id": "1", "name": "", "text": "31 5/8", "unit": "in"}],
}
SET = {
    "do": "change",
    "document": {
        "schema": 3,
        "name": "Record cabinet",
        "next": 1,
        "settings": {"kerf": "1/8"},
        "entries": [],
    },
}
BAD = [
    (None, "message", None),
    ([], "message", None),
    ({}, "message", "do"),
    ({"do": "sing"}, "message", "do"),
    ({"do": ["read"]}, "message", "do"),
    ({"do": "read"}, "message", "text"),
    ({"do": "read", "text": 3}, "message", "text"),
    ({"do": "read", "text": ""}, "missing", "text"),
    ({"do": "read", "text": "3//4"}, "unreadable", "text"),
    ({"do": "read", "text": "6000 ft"}, "range", "text"),
    ({"do": "read", "text": "3", "settings": []}, "message", "settings"),
    ({"do": "read", "text": "3", "settings": {"mark": "1/3"}}, "unknown", "settings.mark"),
    ({"do": "read", "text": "3", "settings": {"mark": ["1/8"]}}, "unknown", "settings.mark"),
    ({"do": "read", "text": "3", "settings": {"tune": "A"}}, "unknown", "settings"),
    ({"do": "reckon"}, "message", "reckoner"),
    ({"do": "reckon", "reckoner": "nothing"}, "unknown", "reckoner"),
    ({"do": "reckon", "reckoner": ["mitered_length"]}, "message", "reckoner"),
    (MITER | {"values": 3}, "message", "values"),
    ({"do": "reckon", "reckoner": "mitered_length"}, "missing", "known"),
    (MITER | {"values": RAIL | {"hue": "1"}}, "unknown", "hue"),
    (MITER | {"values": RAIL | {"width": {}}}, "message", "width"),
    (MITER | {"values": RAIL | {"width": True}}, "message", "width"),
    ({"do": "read", "text": "3", "more": 10**400}, "message", None),
    ({"do": "change"}, "message", "act"),
    ({"do": "change", "act": {"act": "rename"}}, "message", "document"),
    ({"do": "view"}, "message", "document"),
    ({"do": "view", "document": []}, "message", "the document"),
    ({"do": "change", "act": []}, "message", "act"),
    ({"do": "change", "act": {"act": ["begin"]}}, "message", "act"),
    ({"do": "tally", "act": ["enter"]}, "message", "act"),
    ({"do": "tally", "act": {"act": ["enter"]}}, "message", "act"),
    ({"do": "tally", "act": {"act": {"enter": 1}}}, "message", "act"),
    ({"do": "tally", "tally": ONE_LINE, "act": {"act": "step", "how": ["half"]}}, "message", "how"),
    ({"do": "tally", "tally": ONE_LINE, "act": {"act": "step", "how": {}}}, "message", "how"),
    (
        SET | {"act": {"act": "set", "settings": {"kerf": "1/8", "unit": ["mm"]}}},
        "unknown",
        "settings.unit",
    ),
    (
        SET | {"act": {"act": "set", "settings": {"kerf": "1/8", "unit": "furlong"}}},
        "unknown",
        "settings.unit",
    ),
]


@pytest.mark.parametrize(("message", "kind", "field"), BAD)
def test_a_bad_message_is_refused_with_kind_field_and_remedy(message, kind, field):
    said = sawside.handle(message)
    assert not said["ok"]
    assert (said["error"]["kind"], said["error"]["field"]) == (kind, field)
    assert said["error"]["message"].endswith(".")
    assert said["error"]["remedy"].endswith(".")


def test_numbers_are_taken_as_their_text():
    said = sawside.handle(MITER | {"values": {"known": 31.625, "width": 2}})
    assert said["answers"][0]["text"] == "35 5/8″"


def test_a_message_nested_too_deep_is_refused():
    deep = {"do": "read", "text": "3"}
    for _ in range(50):
        deep = {"do": "read", "text": "3", "settings": deep}
    assert sawside.handle(deep)["error"]["kind"] == "message"
    for text in ("[" * 100_000, "", "{", "9" * 5000, " " * 4_000_001, None):
        assert json.loads(sawside.handle_json(text))["error"]["kind"] == "message"


def test_a_fault_of_the_program_is_told_as_one(monkeypatch):
    def broken(*_):
        raise RuntimeError("broken")

    monkeypatch.setattr("sawside.messages.read_in_project", broken)
    error = sawside.handle({"do": "read", "text": "3"})["error"]
    assert error["kind"] == "internal"
    assert "nothing that was typed is lost" in error["message"]


def test_every_kind_of_error_is_one_of_the_list():
    with pytest.raises(ValueError, match="unknown kind"):
        Refusal("odd", "It is odd.", "Even it out.")
    assert len(KINDS) == 9


words = st.sampled_from(
    [
        "do",
        "read",
        "reckon",
        "change",
        "view",
        "describe",
        "text",
        "settings",
        "values",
        "document",
        "act",
        "reckoner",
        "mitered_length",
        "known",
        "width",
        "3/4",
        "begin",
        "name",
        "entries",
        "id",
        "schema",
        "next",
        "unit",
        "mark",
        "kind",
        "line",
        "reading",
        "cut",
        "part",
        "by",
    ]
)
scalars = st.none() | st.booleans() | st.integers() | st.floats() | words | st.text(max_size=8)
anything = st.recursive(
    scalars,
    lambda inner: (
        st.lists(inner, max_size=4)
        | st.dictionaries(words | st.text(max_size=4), inner, max_size=5)
    ),
    max_leaves=25,
)
messages = st.fixed_dictionaries(
    {"do": st.sampled_from(["read", "reckon", "change", "view", "describe"])},
    optional={
        "text": anything,
        "settings": anything,
        "values": anything,
        "document": anything,
        "reckoner": st.sampled_from(list(RECKONERS)) | anything,
        "act": anything | st.fixed_dictionaries({"act": words}, optional={"name": anything}),
    },
)


@given(anything | messages)
def test_any_message_is_answered_without_a_fault(message):
    said = sawside.handle(message)
    assert said["ok"] in (True, False)
    json.dumps(said, allow_nan=False)
    if not said["ok"]:
        for error in (said["error"], *said.get("more", ())):
            assert error["kind"] in KINDS
            assert error["kind"] != "internal", (message, error)
            assert error["message"]
            assert error["remedy"]


@given(st.text(max_size=60) | messages.map(json.dumps))
def test_any_text_is_answered_with_json(text):
    said = json.loads(sawside.handle_json(text))
    assert said["ok"] or said["error"]["kind"] != "internal"


def test_the_answer_as_text_is_compact_and_the_same_each_time():
    text = json.dumps(MITER | {"values": RAIL})
    once, again = sawside.handle_json(text), sawside.handle_json(text)
    assert once == again
    assert "″" in once
    assert ", " not in once.replace('", "', "").split('"drawing"')[1].split('"shapes"')[1][:200]


def test_no_float_is_shown_as_a_length():
    """Floats stand only in drawings and on the drawn tape."""
    said = sawside.handle(MITER | {"values": RAIL})

    def floats(data, path=""):
        if isinstance(data, float):
            yield path
        elif isinstance(data, dict):
            for key, value in data.items():
                yield from floats(value, f"{path}.{key}")
        elif isinstance(data, list):
            for value in data:
                yield from floats(value, path)

    for path in floats(said):
        assert path.startswith((".drawing.", ".tape.", ".parts.drawing."))


def test_an_area_is_told_in_square_feet_too_and_a_volume_in_board_feet():
    # NIST Handbook 44, appendix C: 144 square inches and 144 cubic inches (from memory).
    area = sawside.handle({"do": "read", "text": "18 in * 24 in"})["value"]
    assert (area["text"], area["other"]) == ("432 in²", "3 ft²")
    volume = sawside.handle({"do": "read", "text": "2 in * 6 in * 8 ft"})["value"]
    assert (volume["text"], volume["other"]) == ("1152 in³", "8 board feet")
    odd = sawside.handle({"do": "read", "text": "10 in * 10 in"})["value"]
    assert odd["other"] == "≈ 0.694 ft²"


@pytest.mark.parametrize("number", ["1e999", "-1e999", "NaN", "Infinity"])
def test_a_number_that_json_can_not_hold_is_refused_wherever_it_stands(number):
    form = f'{{"reckoner": "wrap", "values": {{"wood": [{{"thickness": {number}}}]}}}}'
    said = json.loads(sawside.handle_json(f'{{"do": "today", "forms": [{form}]}}'))
    assert not said["ok"]
    assert said["error"]["message"] == "A number here is too long."
