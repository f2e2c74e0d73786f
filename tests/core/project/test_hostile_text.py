"""Whatever text an act is given: what is kept can be opened, backed up and taken back.

A space that is no plain one (a no-break or a thin one, a tab, a line's end) is a space everywhere:
what was typed is kept as typed, or with plain spaces in their place.
"""

import json

import pytest
from hostile import WHEN, backup_text
from hostile_text import DOCUMENT, HOSTILE, OWN, hostile_texts, plain, respaced, texts, with_texts
from hypothesis import given, settings
from hypothesis import strategies as st
from projects import answered, ask, changed, lasting, view
from typed_acts import TYPED

import sawside
from sawside.project.acts.table import ACTS

CASES = [{"act": name} | more for name, all_ in TYPED.items() for more in all_]


def made(act, document=DOCUMENT):
    return ask("change", None if act["act"] == "begin" else document, act=act)


def must_open(document):
    """A document can be opened as it is, shown, backed up, merged and written as a table."""
    assert sawside.handle({"do": "view", "document": document})["ok"]
    back = answered("restore", None, text=backup_text(document))
    assert back["document"] == document
    for what in ("parts", "readings", "cuts", "stock"):
        answered("csv", document, what=what)


def test_hostile_text_is_tried_with_every_act():
    assert set(TYPED) == {"begin", "several", *ACTS}


@pytest.mark.parametrize("act", CASES, ids=lambda act: act["act"])
def test_every_act_of_these_is_good_as_it_is_typed_here(act):
    must_open(answered("change", None if act["act"] == "begin" else DOCUMENT, act=act)["document"])


@pytest.mark.parametrize("space", "\u00a0\u2009\u202f\u2007\t")
def test_a_reading_with_a_no_break_space_is_corrected_shown_taken_back_and_backed_up(space):
    text = f"31{space}3/4"
    said = answered("change", DOCUMENT, act={"act": "correct", "id": "1", "text": text})
    assert said["document"]["entries"][0]["text"] == text
    assert said["said"] == "Corrected Alcove width: 37 1/2 → 31 3/4."
    assert view(said["document"])["entries"][0]["headline"]["text"] == "31 3/4″"
    must_open(said["document"])
    back = changed(said["document"], **said["undo"])
    assert lasting(back) == lasting(DOCUMENT)


@settings(max_examples=150)
@given(st.data(), st.sampled_from(CASES))
def test_any_space_is_kept_as_typed_or_as_a_plain_one(data, act):
    hostile = with_texts(act, {path: respaced(text, data.draw) for path, text in texts(act)})
    said, usual = made(hostile), made(act)
    assert said["ok"], said
    assert plain(said["document"]) == plain(usual["document"])
    must_open(said["document"])
    numbers = [each["headline"] for each in view(said["document"])["entries"]]
    assert numbers == [each["headline"] for each in view(usual["document"])["entries"]]
    if said["undo"]:
        undone = answered("change", said["document"], act=said["undo"])["document"]
        assert lasting(undone) == lasting(DOCUMENT)


@given(st.data(), st.sampled_from(CASES))
def test_what_any_text_makes_can_be_opened_and_a_refusal_says_what_to_do(data, act):
    said = made(with_texts(act, data.draw(hostile_texts(act))))
    if said["ok"]:
        must_open(said["document"])
        if said["undo"]:
            undone = answered("change", said["document"], act=said["undo"])["document"]
            assert lasting(undone) == lasting(DOCUMENT)
        return
    assert said["error"]["kind"] != "internal", said
    assert said["error"]["remedy"]
    if act["act"] not in ("put", "restore"):  # these bring back what the program itself made
        assert "damaged" not in said["error"]["message"], said


def old_log(*lines):
    """A document as the program once kept it: its log had the words as they were typed."""
    return DOCUMENT | {"log": [*DOCUMENT["log"], *lines]}


@pytest.mark.parametrize(
    ("line", "told"),
    [
        (
            {"when": WHEN, "said": "Corrected Alcove width: 37 1/2 → 31\u00a03/4."},
            {"when": WHEN, "said": "Corrected Alcove width: 37 1/2 → 31 3/4."},
        ),
        (
            {"when": "", "said": "Test cut for Top rail: 37\t9/32."},
            {"when": "", "said": "Test cut for Top rail: 37 9/32."},
        ),
        (
            {"when": "+010000-01-01T00:00", "said": "Deleted\u202e Panel."},
            {"when": "", "said": "Deleted� Panel."},
        ),
        ({"when": "2026-99-99T77:88", "said": "x" * 500}, {"when": "", "said": "x" * 400}),
        ({"when": None, "said": "\ud800", "by": 1}, {"when": "", "said": "�"}),
    ],
)
def test_a_bad_line_of_the_log_is_told_as_well_as_it_can_be(line, told):
    document = old_log(line)
    assert view(document)["log"][0] == told
    after = changed(document, "delete", id="4")
    assert [each["said"] for each in after["log"][-2:]] == [told["said"], "Deleted Panel."]
    must_open(after)
    back = answered(
        "restore",
        None,
        text=json.dumps({"sawside": "backup", "schema": 3, "when": WHEN, "document": document}),
    )["document"]
    assert lasting(back) == lasting(DOCUMENT)


@pytest.mark.parametrize(
    "log",
    [
        "none",
        {},
        [3, None, "x", [], {}, {"said": 3.5}, {"when": WHEN}],
        [[{"when": "", "said": "x"}]],
    ],
)
def test_a_log_that_tells_nothing_does_not_bar_a_project(log):
    assert view(DOCUMENT | {"log": log})["log"] == []


@settings(max_examples=100)
@given(
    st.recursive(
        st.none() | st.booleans() | st.integers(-9, 9) | HOSTILE,
        lambda inner: (
            st.lists(inner, max_size=3)
            | st.dictionaries(st.sampled_from(["when", "said", "x"]), inner, max_size=3)
        ),
        max_leaves=6,
    )
)
def test_no_log_bars_a_project(log):
    said = answered("change", DOCUMENT | {"log": log}, act={"act": "delete", "id": "4"})
    must_open(said["document"])


def test_a_name_with_a_no_break_space_is_called_with_a_plain_one_and_the_other_way_round():
    document = changed(DOCUMENT, "keep_reading", name="Sill\u00a0height", text="31 1/2")
    assert document["entries"][-1]["name"] == "Sill height"
    for text in ("Sill height + 1", "Sill\u2009height + 1", "[Sill\u202fheight]\u00a0+ 1"):
        sum_ = changed(document, "keep_reading", name="Sum", text=text)
        assert view(sum_)["entries"][-1]["headline"]["text"] == "32 1/2″"
        renamed = changed(sum_, "rename", id=document["entries"][-1]["id"], name="Sill")
        assert view(renamed)["entries"][-1]["headline"]["text"] == "32 1/2″"


def test_a_tape_and_a_material_are_found_by_names_with_any_space():
    own = {
        "tapes": [OWN["tapes"][0] | {"name": "New\u00a0tape"}],
        "materials": [OWN["materials"][0] | {"name": "\tPear\u2009wood"}],
    }
    document = changed(DOCUMENT, "set", settings=own)
    kept = document["settings"]
    assert [kept[key][0]["name"] for key in own] == ["New tape", "Pear wood"]
    read = {"text": "31 1/2", "tape": "New\u202ftape"}
    must_open(changed(document, "keep_reading", **read))
