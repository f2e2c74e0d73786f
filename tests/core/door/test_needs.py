"""What a message or an act needs and may have is checked at one place, before anything is done."""

from typing import Literal, get_origin, get_type_hints

import pytest
from hostile_text import DOCUMENT
from typed_acts import TALLY_TYPED, TYPED
from typeguard import TypeCheckError, check_type

import sawside
from sawside.contract.messages import MESSAGES as CONTRACT
from sawside.door import AT_ONCE
from sawside.messages import MESSAGES
from sawside.project.acts.table import ACTS, BEGIN, SEVERAL
from sawside.tally.acts import ACTS as TALLY_ACTS
from tests.core.door.every_message import messages

ASKED = AT_ONCE | MESSAGES
MADE = ACTS | {"begin": BEGIN, "several": SEVERAL}
GOOD = {}
for message in messages():
    if sawside.handle(message)["ok"]:
        GOOD.setdefault(message["do"], message)
OTHERS = [True, 3, 3.5, "sing", [], [3], {}, {"sing": 3}]
OBJECTS = dict.fromkeys(["settings", "values", "about", "entry", "line"], dict)
KINDS = OBJECTS | {"by": int, "at": int, "to": int} | dict.fromkeys(["entries", "acts"], list)
LISTS = {"which": list, "lines": list}


def changed(act):
    document = None if act["act"] == "begin" else DOCUMENT
    return sawside.handle({"do": "change", "document": document, "act": act})


def tallied(act):
    tally = {"schema": 2, "next": 2, "lines": []}
    for number, name in (("1", "Long side"), ("2", "")):
        line = {"id": number, "name": name, "text": "31 5/8 + 3/4", "unit": "in"}
        tally = tally | {"next": 3, "lines": [*tally["lines"], line]}
    return sawside.handle({"do": "tally", "tally": tally, "act": act})


ACTED = [(changed, MADE, TYPED), (tallied, TALLY_ACTS, TALLY_TYPED)]
GOOD_ACTS = [
    (make, {"act": name} | cases[0], asked[name])
    for make, asked, typed in ACTED
    for name, cases in typed.items()
]
GOOD_MESSAGES = [(sawside.handle, message, ASKED[do]) for do, message in GOOD.items()]


def named(case):
    return case.get("do") or case.get("act") if isinstance(case, dict) else ""


def without(data, key):
    return {other: value for other, value in data.items() if other != key}


def assert_refused_by_its_name(error, key):
    assert (error["kind"], key in error["field"]) == ("message", True), error
    assert error["message"]
    assert error["remedy"]


def test_each_message_and_act_has_a_good_one_here():
    assert GOOD.keys() == ASKED.keys()
    assert TYPED.keys() == MADE.keys()
    assert TALLY_TYPED.keys() == TALLY_ACTS.keys()


@pytest.mark.parametrize(("make", "data", "asked"), GOOD_MESSAGES + GOOD_ACTS, ids=named)
def test_what_is_needed_and_not_there_is_refused_by_its_name(make, data, asked):
    assert make(data)["ok"], make(data)
    for key in asked.needs:
        for lacking in (without(data, key), data | {key: None}):
            assert_refused_by_its_name(make(lacking)["error"], key)


@pytest.mark.parametrize(("make", "data", "asked"), GOOD_MESSAGES + GOOD_ACTS, ids=named)
def test_a_key_that_nobody_asks_for_is_left_unread(make, data, asked):
    assert "tune" not in {*asked.needs, *asked.may}
    for value in (None, *OTHERS):
        assert make(data | {"tune": value}) == make(data)


@pytest.mark.parametrize(("make", "data", "asked"), GOOD_MESSAGES + GOOD_ACTS, ids=named)
def test_what_may_be_there_is_as_good_as_left_out_when_it_is_null(make, data, asked):
    for key in asked.may:
        assert make(data | {key: None}) == make(without(data, key))


@pytest.mark.parametrize(("make", "data", "asked"), GOOD_MESSAGES, ids=named)
def test_a_message_with_something_of_another_shape_is_refused_by_its_name(make, data, asked):
    shapes = get_type_hints(CONTRACT[data["do"]].asks)
    for key in {**asked.needs, **asked.may}:
        for value in OTHERS:
            if isinstance(value, str) and get_origin(shapes[key]) is Literal:
                continue  # one that isn't offered is refused as "unknown"
            try:
                check_type(value, shapes[key])
            except TypeCheckError:
                assert_refused_by_its_name(make(data | {key: value})["error"], key)


@pytest.mark.parametrize(("make", "data", "asked"), GOOD_ACTS, ids=named)
def test_an_act_with_something_of_another_kind_is_refused_by_its_name(make, data, asked):
    for key in asked.needs:
        for value in OTHERS:
            if type(value) is not (KINDS | LISTS).get(key, str):
                assert_refused_by_its_name(make(data | {key: value})["error"], key)


@pytest.mark.parametrize(("make", "data", "asked"), GOOD_MESSAGES + GOOD_ACTS, ids=named)
def test_whatever_stands_under_a_key_no_fault_of_the_program_comes_of_it(make, data, asked):
    for key in {**asked.needs, **asked.may}:
        for value in OTHERS:
            said = make(data | {key: value})
            assert said["ok"] or said["error"]["kind"] != "internal", (key, value)


@pytest.mark.parametrize(("id", "key"), [("1", "text"), ("3", "values"), ("5", "text")])
def test_a_correction_needs_what_its_kind_of_entry_has(id, key):
    error = changed({"act": "correct", "id": id})["error"]
    assert_refused_by_its_name(error, key)


@pytest.mark.parametrize("do", CONTRACT)
def test_the_contract_and_the_check_name_the_same_keys(do):
    shape, asked = CONTRACT[do].asks, ASKED[do]
    assert shape.__required_keys__ - {"do"} == asked.needs.keys()
    assert shape.__optional_keys__ == asked.may.keys()
    assert asked.needs.keys().isdisjoint(asked.may)
