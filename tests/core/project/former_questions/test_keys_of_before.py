"""A line of a question that became part of another one asks the same there."""

import pytest

from sawside.project.schema.former_questions import MERGED
from sawside.project.schema.former_questions.became import Became
from sawside.reckoners import RECKONERS

LENGTH = Became(
    "new", {"solve": "span"}, {"long": "span"}, {"load": "books"}, parts={"board": "shelf"}
)


def test_fields_and_parts_have_their_new_keys_and_blanks_what_they_were():
    line = {
        "reckoner": "old",
        "values": {"long": "31 5/8", "load": "", "depth": "12"},
        "cut": {"board": [{}]},
        "about": {"other": {}},
    }
    assert LENGTH.brought_up(line) == {
        "reckoner": "new",
        "values": {"span": "31 5/8", "load": "books", "depth": "12", "solve": "span"},
        "cut": {"shelf": [{}]},
        "about": {"other": {}},
    }


@pytest.mark.parametrize("values", [None, [], "31 5/8"])
def test_what_is_no_line_is_left_for_the_check(values):
    assert LENGTH.brought_up({"reckoner": "old", "values": values})["values"] == values


@pytest.mark.parametrize("key", sorted(MERGED))
def test_what_became_part_of_another_is_gone_and_the_other_is_there(key):
    assert key not in RECKONERS
    assert MERGED[key].question in RECKONERS
