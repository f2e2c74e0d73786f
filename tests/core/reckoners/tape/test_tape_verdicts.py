"""What each question of the tape says first, in the words of a shop. Lengths are worked by hand."""

import pytest
from asking import reckon

from sawside.reckoners import RECKONERS

BENT = {"name": "Bent", "block": "4 in", "block_reads": "3 31/32 in"}


@pytest.mark.parametrize(
    ("question", "values", "verdict"),
    [
        ("square", {"solve": "diagonal", "width": "36", "height": "27"}, "Both 45″ when square"),
        (
            "square",
            {"solve": "triangle", "along": "37 9/16", "across": "16 1/4"},
            "Mark 20″ and 15″: square at 25″",
        ),
        ("tape_marks", {"length": "29 3/4"}, "On the three-quarters past 29"),
        ("tape_marks", {"length": "29 11/16"}, "1 sixteenth short of the three-quarters after 29"),
        ("tape_marks", {"solve": "length", "inches": "14", "marks": "3"}, ""),
        ("burned_inch", {"reading": "32 5/8"}, "31 5/8″ long, from the 1″ line"),
        (
            "burned_inch",
            {"solve": "mark", "length": "31 5/8", "start": "10"},
            "Mark at 41 5/8″, from the 10″ line",
        ),
        (
            "tape_error",
            {"reading": "20", "which": "mine", "tape": "Bent"},
            "Really 20 1/32″, reads 1/32″ short",
        ),
        (
            "tape_error",
            {"reading": "20", "which": "mine", "tape": "Bent", "since": "line"},
            "Reads true: 19″",
        ),
        (
            "tape_error",
            {"solve": "allowed", "reading": "3 ft", "rule": "h44"},
            "Good to within 1/32″ either way",
        ),
    ],
)
def test_the_verdict_says_what_to_make_of_it(question, values, verdict):
    assert reckon(question, {"tapes": [BENT]}, **values)["verdict"] == verdict


WAYS = {
    "square": ("solve", ("out", "diagonal", "triangle")),
    "burned_inch": ("solve", ("length", "mark")),
    "opening": ("way", ("spots", "case", "block", "bent", "sticks")),
}


@pytest.mark.parametrize(
    ("question", "way"), [(key, way) for key, (_, ways) in WAYS.items() for way in ways]
)
def test_a_dimension_opens_a_field_that_is_asked_in_this_case(question, way):
    choice, _ = WAYS[question]
    declared = RECKONERS[question]
    said = reckon(question, **declared.example | {choice: way})
    opened = {shape["field"] for shape in said["drawing"]["shapes"] if shape.get("field")}
    asked = {
        field.key
        for field in declared.fields
        if all(key != choice or way in values for key, values in field.conditions)
    }
    assert opened <= asked
    assert opened or way in ("triangle", "bent") or question == "burned_inch"
