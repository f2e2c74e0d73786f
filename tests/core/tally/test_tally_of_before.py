"""A tally of schema 1 comes to what it came to, and its lines then mean entries; damaged marks."""

from fractions import Fraction

import pytest
from projects import changed
from tallies import project, texts, told, values

OLD = {
    "schema": 1,
    "next": 4,
    "lines": [
        {"id": "1", "name": "side", "text": "1/2", "unit": "in"},
        {
            "id": "2",
            "name": "",
            "text": "[width] − 2 × side + [Rail: Short side]",
            "unit": "in",
            "project": {"id": "one", "name": "Record cabinet"},
        },
        {"id": "3", "name": "", "text": "10", "unit": "mm"},
    ],
}


def with_rail():
    values = {"known": "[width]", "known_face": "outside", "width": "2 1/4"}
    line = {"name": "Rail", "reckoner": "mitered_length", "values": values}
    return changed(project(side="3/4", width="36"), "keep_line", **line)


def test_a_tally_of_schema_1_comes_to_what_it_came_to_and_then_follows_by_entry():
    """36 − 2 × 1/2 + (36 − 2 × 2 1/4), the side from line 1."""
    document = with_rail()
    said = told(document, OLD)
    assert values(said)[:2] == [Fraction(1, 2), Fraction(133, 2)]
    assert said["tally"]["schema"] == 2
    assert set(said["tally"]["lines"][1]["project"]["names"]) == {"width", "rail: short side"}
    renamed = changed(document, "rename", id="2", name="W")
    followed = told(renamed, said["tally"])
    assert values(followed) == values(said)
    assert texts(followed)[1] == "[W] − 2 × side + [Rail: Short side]"
    closed = told(None, OLD, of=None)
    assert values(told(document, closed["tally"])) == values(said)


@pytest.mark.parametrize(
    "act",
    [{"act": "put", "lines": OLD["lines"]}, {"act": "restore", "line": OLD["lines"][1], "at": 1}],
    ids=["put", "restore"],
)
def test_what_was_to_be_undone_in_schema_1_can_be_undone(act):
    document = with_rail()
    left = [line for line in OLD["lines"] if line["id"] != "2"]
    said = told(document, OLD | {"lines": left}, act)
    assert values(said)[:2] == [Fraction(1, 2), Fraction(133, 2)]


@pytest.mark.parametrize(
    "names",
    [
        None,
        [],
        {"a": "1"},
        {"a": {"entry": "1"}},
        {"a": {"entry": 1.5, "answer": []}},
        {"a": {"entry": "1", "answer": "", "more": ""}},
        {"a" * 700: {"entry": "1", "answer": ""}},
    ],
)
def test_a_damaged_mark_is_refused_in_words(names):
    mark = {"id": "one", "name": "Record cabinet", "names": names}
    line = OLD["lines"][1] | {"project": mark}
    said = told(project(width="36"), {"schema": 2, "next": 4, "lines": [line]})
    assert said["error"]["kind"] == "message"
