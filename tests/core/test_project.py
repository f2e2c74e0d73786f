"""A project keeps what was typed, undoes every change, and lets no damaged document in."""

import copy
import json

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule

import sawside

RAIL = {"known": "31 5/8", "width": "2 1/4"}


def change(document, act, **more):
    return sawside.handle({"do": "change", "document": document, "act": {"act": act} | more})


def changed(document, act, **more):
    said = change(document, act, **more)
    assert said["ok"], said
    return said["document"]


def begun():
    return changed(None, "begin", name="Record cabinet")


def cabinet():
    document = changed(begun(), "keep_reading", name="Alcove width", text="37 9/16")
    document = changed(
        document, "keep_line", name="Top rail", reckoner="mitered_length", values=RAIL
    )
    return changed(
        document, "keep_line", name="", reckoner="mitered_length", values=RAIL | {"known": "40"}
    )


def view(document):
    said = sawside.handle({"do": "view", "document": document})
    assert said["ok"], said
    return said


def test_a_project_is_what_was_typed_and_nothing_derived():
    assert cabinet() == {
        "schema": 1,
        "name": "Record cabinet",
        "settings": {},
        "next": 4,
        "entries": [
            {"id": "1", "kind": "reading", "name": "Alcove width", "unit": "in", "text": "37 9/16"},
            {"id": "2", "kind": "line", "name": "Top rail", "unit": "in",
             "reckoner": "mitered_length", "values": RAIL, "cut": {}},
            {"id": "3", "kind": "line", "name": "Mitered length", "unit": "in",
             "reckoner": "mitered_length", "values": RAIL | {"known": "40"}, "cut": {}},
        ],
    }  # fmt: skip


def test_a_view_works_everything_out_longest_piece_first():
    seen = view(cabinet())
    assert [entry["headline"]["text"] for entry in seen["entries"]] == [
        "37 9/16″", "36 1/8″", "44 1/2″",
    ]  # fmt: skip
    assert seen["entries"][0]["summary"] == "37 9/16″"
    assert "Measured length 31 5/8″" in seen["entries"][1]["summary"]
    assert [(piece["name"], piece["length"]["text"]) for piece in seen["pieces"]] == [
        ("Mitered length", "44 1/2″"), ("Top rail", "36 1/8″"),
    ]  # fmt: skip


def test_a_line_that_fails_says_so_and_stops_nothing():
    document = cabinet()
    document["entries"][1]["values"] = {"known": "x"}
    document["entries"][2]["reckoner"] = "from_the_future"
    seen = view(document)
    assert [entry["ok"] for entry in seen["entries"]] == [True, False, False]
    assert seen["entries"][1]["error"]["field"] == "known"
    assert seen["entries"][2]["error"]["kind"] == "unknown"
    assert seen["pieces"] == []


def test_settings_of_the_project_are_those_of_its_answers():
    document = changed(cabinet(), "set", settings={"unit": "in", "mark": "1/2"})
    assert view(document)["entries"][1]["headline"]["text"] == "36″"


def test_pieces_are_cut_one_at_a_time_and_no_more_than_there_are():
    document = changed(cabinet(), "cut", id="2", part="piece", by=1)
    piece = next(each for each in view(document)["pieces"] if each["entry"] == "2")
    assert (piece["count"], piece["cut"], piece["left"]) == (1, 1, 0)
    assert change(document, "cut", id="2", part="piece", by=1)["error"]["kind"] == "conflict"
    document = changed(document, "cut", id="2", part="piece", by=-1)
    assert change(document, "cut", id="2", part="piece", by=-1)["error"]["kind"] == "conflict"
    assert change(document, "cut", id="2", part="leg", by=1)["error"]["kind"] == "unknown"
    assert change(document, "cut", id="1", part="piece", by=1)["error"]["kind"] == "unknown"
    assert change(document, "cut", id="2", part="piece", by=2)["error"]["kind"] == "message"


def test_a_name_that_is_taken_gets_a_number_when_kept_and_is_refused_when_renamed():
    document = changed(cabinet(), "keep_reading", name="top rail", text="3")
    assert document["entries"][-1]["name"] == "top rail 2"
    refused = change(document, "rename", id="4", name="TOP RAIL")
    assert (refused["error"]["kind"], refused["error"]["field"]) == ("conflict", "name")
    assert changed(document, "rename", id="2", name="TOP RAIL")["entries"][1]["name"] == "TOP RAIL"


@pytest.mark.parametrize(
    ("name", "kind"),
    [
        ("", "missing"),
        ("  ", "missing"),
        ("x" * 81, "range"),
        ("a\nb", "unreadable"),
        (3, "message"),
    ],
)
def test_a_name_that_can_not_be_shown_is_refused(name, kind):
    assert change(cabinet(), "rename", id="2", name=name)["error"]["kind"] == kind
    assert change(None, "begin", name=name)["error"]["kind"] == kind


def test_what_can_not_be_read_or_answered_is_not_kept():
    document = cabinet()
    assert change(document, "keep_reading", name="a", text="3//4")["error"]["field"] == "text"
    bad = change(document, "keep_line", name="a", reckoner="mitered_length", values={"known": "1"})
    assert bad["error"]["field"] == "width"
    assert change(document, "correct", id="1", text="")["error"]["kind"] == "missing"


@pytest.mark.parametrize("act", ["rename", "correct", "delete", "cut"])
def test_an_entry_that_is_not_there_is_told(act):
    assert change(cabinet(), act, id="99", name="a")["error"]["kind"] == "unknown"


def test_an_act_that_is_none_is_refused():
    assert change(cabinet(), "explode")["error"]["kind"] == "message"
    assert change(cabinet(), "begin", name="a")["error"]["kind"] == "message"
    assert change(cabinet(), "restore", entry={}, at=0)["error"]["kind"] == "message"
    entry = {"id": "9", "kind": "reading", "name": "a", "unit": "in", "text": "3"}
    assert change(cabinet(), "restore", entry=entry, at=0)["error"]["kind"] == "conflict"
    assert (
        change(cabinet(), "restore", entry=entry | {"id": "1"}, at=0)["error"]["kind"] == "conflict"
    )
    assert change(cabinet(), "restore", entry=entry, at=True)["error"]["kind"] == "message"


def damage(path, value):
    def apply(document):
        inner = document
        for key in path[:-1]:
            inner = inner[key]
        inner[path[-1]] = value
        return document

    return apply


VALUES = ["entries", 1, "values"]
DAMAGE = [
    (damage(["schema"], 2), "newer", "document.schema"),
    (damage(["schema"], 0), "message", "document.schema"),
    (damage(["schema"], True), "message", "document.schema"),
    (damage(["schema"], "1"), "message", "document.schema"),
    (damage(["extra"], 1), "message", "the document"),
    (damage(["name"], 5), "message", "document.name"),
    (damage(["name"], "a\u202eb"), "message", "document.name"),
    (damage(["name"], " a"), "message", "document.name"),
    (damage(["settings"], []), "message", "document.settings"),
    (damage(["settings"], {"unit": "ell"}), "message", "document.settings"),
    (damage(["next"], 2), "message", "document.next"),
    (damage(["next"], "4"), "message", "document.next"),
    (damage(["entries"], {}), "message", "document.entries"),
    (damage(["entries"], [3]), "message", "document.entries[0]"),
    (damage(["entries", 0, "id"], "01"), "message", "document.entries[0].id"),
    (damage(["entries", 0, "id"], "2"), "message", "document.entries"),
    (damage(["entries", 0, "name"], "TOP RAIL"), "message", "document.entries"),
    (damage(["entries", 0, "kind"], "song"), "message", "document.entries[0].kind"),
    (damage(["entries", 0, "text"], "3" * 201), "message", "document.entries[0].text"),
    (damage(["entries", 1, "values"], []), "message", "document.entries[1].values"),
    (damage([*VALUES, "known"], {}), "message", "document.entries[1].values.known"),
    (damage([*VALUES, "known"], [[]]), "message", "document.entries[1].values.known"),
    (damage(["entries", 1, "cut"], {"piece": -1}), "message", "document.entries[1].cut"),
    (damage(["entries", 1, "cut"], {"piece": 1.5}), "message", "document.entries[1].cut"),
    (damage(["entries", 1, "html"], "<b>"), "message", "document.entries[1]"),
]  # fmt: skip


@pytest.mark.parametrize(("apply", "kind", "field"), DAMAGE)
def test_a_damaged_document_is_refused_with_the_place(apply, kind, field):
    said = sawside.handle({"do": "view", "document": apply(cabinet())})
    assert (said["error"]["kind"], said["error"]["field"]) == (kind, field)
    assert said["error"]["remedy"]


def test_a_document_with_too_many_entries_is_refused():
    document = cabinet()
    entry = document["entries"][0]
    document["entries"] = [entry | {"id": str(n), "name": str(n)} for n in range(1, 2002)]
    document["next"] = 3000
    assert not sawside.handle({"do": "view", "document": document})["ok"]
    document["entries"].pop()
    assert change(document, "keep_reading", name="a", text="3")["error"]["kind"] == "range"


@given(st.data())
def test_no_piece_of_a_document_can_be_anything_without_an_answer(data):
    """One random place of a good document is replaced by anything."""
    document = cabinet()
    inner = document
    while True:
        keys = list(inner) if isinstance(inner, dict) else range(len(inner))
        key = data.draw(st.sampled_from(list(keys)))
        if isinstance(inner[key], (dict, list)) and inner[key] and data.draw(st.booleans()):
            inner = inner[key]
            continue
        break
    inner[key] = data.draw(
        st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=5)
        | st.lists(st.text(max_size=2), max_size=2)
        | st.dictionaries(st.text(max_size=3), st.integers(), max_size=2)
    )  # fmt: skip
    for message in (
        {"do": "view", "document": document},
        {"do": "change", "document": document, "act": {"act": "delete", "id": "1"}},
    ):
        said = sawside.handle(message)
        assert said["ok"] or said["error"]["kind"] in ("message", "newer", "unknown")


names = st.sampled_from(["Top rail", "Stile", "Shelf", "top rail", ""])
texts = st.sampled_from(["37 9/16", "3 + 1/2", "18 mm", "6' 2"])


class Undoing(RuleBasedStateMachine):
    """Whatever is done to a project, its undo gives the project back as it was."""

    @initialize()
    def begin(self):
        self.document = begun()
        self.history = []

    def act(self, act, **more):
        before = copy.deepcopy(self.document)
        said = change(self.document, act, **more)
        assert self.document == before, "the given document stays as it is"
        if not said["ok"]:
            assert said["error"]["kind"] == "conflict"
            return
        undone = sawside.handle({"do": "change", "document": said["document"], "act": said["undo"]})
        assert undone["ok"], undone
        assert undone["document"] | {"next": 0} == before | {"next": 0}
        redone = sawside.handle(
            {"do": "change", "document": undone["document"], "act": undone["undo"]}
        )
        assert redone["document"] | {"next": 0} == said["document"] | {"next": 0}
        self.history.append((before, said["undo"]))
        self.document = said["document"]

    def some(self, data, kind=None):
        entries = [e for e in self.document["entries"] if kind in (None, e["kind"])]
        return data.draw(st.sampled_from(entries))["id"] if entries else "99"

    @rule(name=names, text=texts)
    def keep_reading(self, name, text):
        self.act("keep_reading", name=name, text=text)

    @rule(name=names)
    def keep_line(self, name):
        self.act("keep_line", name=name, reckoner="mitered_length", values=RAIL)

    @rule(name=names.filter(bool))
    def rename_project(self, name):
        self.act("rename_project", name=name)

    @rule(mark=st.sampled_from(["1/16", "1/64", "1 mm"]))
    def set(self, mark):
        self.act("set", settings={"mark": mark})

    @precondition(lambda self: self.document["entries"])
    @rule(data=st.data(), name=names.filter(bool))
    def rename(self, data, name):
        self.act("rename", id=self.some(data), name=name)

    @precondition(lambda self: self.document["entries"])
    @rule(data=st.data())
    def delete(self, data):
        self.act("delete", id=self.some(data))

    @precondition(lambda self: any(e["kind"] == "line" for e in self.document["entries"]))
    @rule(data=st.data(), by=st.sampled_from([1, -1]))
    def cut(self, data, by):
        self.act("cut", id=self.some(data, "line"), part="piece", by=by)

    @precondition(lambda self: any(e["kind"] == "reading" for e in self.document["entries"]))
    @rule(data=st.data(), text=texts)
    def correct(self, data, text):
        self.act("correct", id=self.some(data, "reading"), text=text)

    @precondition(lambda self: self.history)
    @rule()
    def undo(self):
        before, undo = self.history.pop()
        self.document = sawside.handle({"do": "change", "document": self.document, "act": undo})[
            "document"
        ]
        assert self.document | {"next": 0} == before | {"next": 0}

    @invariant()
    def it_is_a_document_that_can_be_stored_and_viewed(self):
        if hasattr(self, "document"):
            assert json.loads(json.dumps(self.document)) == self.document
            assert sawside.handle({"do": "view", "document": self.document})["ok"]


Undoing.TestCase.settings = settings(max_examples=40, stateful_step_count=20)
TestUndoing = Undoing.TestCase


def test_another_unit_in_the_settings_never_changes_what_a_kept_number_says():
    document = cabinet()
    before = sawside.handle({"do": "view", "document": document})
    metric = change(document, "set", settings={"unit": "mm"})["document"]
    after = sawside.handle({"do": "view", "document": metric})
    for entry, same in zip(before["entries"], after["entries"], strict=True):
        assert entry["headline"]["exact"] == same["headline"]["exact"]
    corrected = change(metric, "correct", id="1", text="37 5/8")["document"]
    seen = sawside.handle({"do": "view", "document": corrected})
    assert seen["entries"][0]["headline"]["exact"] == "301/8"
    fresh = change(metric, "keep_reading", name="Depth", text="300")["document"]
    seen = sawside.handle({"do": "view", "document": fresh})
    assert seen["entries"][-1]["headline"]["exact"] == "1500/127"  # 300 / 25.4
