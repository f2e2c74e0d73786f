"""No damaged document is let in, and its refusal names the place."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from projects import cabinet, change

import sawside


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
    (damage(["schema"], 9), "newer", "document.schema"),
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
    (damage(["entries", 1, "cut"], {"piece": [1]}), "message", "document.entries[1].cut[0]"),
    (
        damage(["entries", 1, "cut"], {"piece": [{"length": "36"}]}),
        "message",
        "document.entries[1].cut[0].length",
    ),
    (
        damage(["entries", 1, "cut"], {"piece": [{"length": "1/0 in"}]}),
        "message",
        "document.entries[1].cut[0].length",
    ),
    (damage(["entries", 0, "when"], "yesterday"), "message", "document.entries[0].when"),
    (damage(["entries", 0, "side"], "thick"), "message", "document.entries[0].side"),
    (damage(["entries", 0, "photo"], "../x"), "message", "document.entries[0].photo"),
    (damage(["entries", 0, "fineness"], "1/7"), "message", "document.entries[0].fineness"),
    (damage(["entries", 0, "off"], ["1/16"]), "message", "document.entries[0].off"),
    (damage(["entries", 0, "earlier"], [3]), "message", "document.entries[0].earlier[0]"),
    (damage(["entries", 0, "text"], "\ud800"), "message", "document.entries[0].text"),
    (damage(["tolerance"], "1/8"), "message", "document.tolerance"),
    (damage(["labels"], {"unit": "in"}), "message", "document.labels"),
    (damage(["labels"], {"unit": "ell", "values": {}}), "message", "document.labels.unit"),
    (
        damage(["labels"], {"unit": "in", "values": {"color": "red"}}),
        "message",
        "document.labels.values",
    ),
    (
        damage(["labels"], {"unit": "in", "values": {"top": []}}),
        "message",
        "document.labels.values.top",
    ),
    (damage(["entries", 1, "html"], "<b>"), "message", "document.entries[1]"),
]


@pytest.mark.parametrize(("apply", "kind", "field"), DAMAGE)
def test_a_damaged_document_is_refused_with_the_place(apply, kind, field):
    said = sawside.handle({"do": "view", "document": apply(cabinet())})
    assert (said["error"]["kind"], said["error"]["field"]) == (kind, field)
    assert said["error"]["remedy"]


def test_half_a_character_is_never_sent_out():
    for text in ('{"do":"\\ud800"}', '{"do":"view","document":{"schema":4,"\\udfff":1}}'):
        answer = sawside.handle_json(text)
        assert answer.encode()
        assert '"ok":false' in answer


def test_a_document_with_too_many_entries_is_refused():
    document = cabinet()
    entry = document["entries"][0]
    document["entries"] = [entry | {"id": str(n), "name": str(n)} for n in range(1, 6002)]
    document["next"] = 7000
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
        st.none()
        | st.booleans()
        | st.integers()
        | st.floats()
        | st.text(max_size=5)
        | st.lists(st.text(max_size=2), max_size=2)
        | st.dictionaries(st.text(max_size=3), st.integers(), max_size=2)
    )
    for message in (
        {"do": "view", "document": document},
        {"do": "change", "document": document, "act": {"act": "delete", "id": "1"}},
    ):
        said = sawside.handle(message)
        assert said["ok"] or said["error"]["kind"] in ("message", "newer", "unknown")
