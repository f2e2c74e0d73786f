"""A name in a kept text means the answer that it meant, whatever that answer is called since.

`labels_once.csv` has the labels that answers had when names of them were first kept.
"""

import csv
from pathlib import Path

import pytest
from projects import begun, changed, view

from sawside.reckoners import RECKONERS
from sawside.reckoning.links import label_now

ONCE = [
    tuple(row.values())
    for row in csv.DictReader(Path(__file__).with_name("labels_once.csv").open(encoding="utf-8"))
]


@pytest.mark.parametrize(("question", "label", "answer"), ONCE)
def test_a_label_of_before_means_the_answer_that_it_meant(question, label, answer):
    reckoner = RECKONERS[question]
    now = next(each.label for each in reckoner.answers if each.key == answer).casefold()
    assert label_now(reckoner, label.casefold()) == now
    assert label_now(reckoner, f"{label.casefold()} 2") == f"{now} 2"


@pytest.mark.parametrize(
    ("reckoner", "values", "name", "number"),
    [
        ("middle", {"last": "36"}, "Middle, on the tape", "18"),
        (
            "three_four_five",
            {"along": "37 9/16", "across": "30"},
            "Between the marks, this one and smaller 1",
            "45",
        ),
    ],
)
def test_a_reading_that_was_kept_with_it_still_has_its_number(reckoner, values, name, number):
    """Half of 36; and 3-4-5 nine times: 27 and 36 go along 30 and 37 9/16, so 45 between them."""
    document = changed(begun(), "keep_line", name="Line", reckoner=reckoner, values=values)
    document = changed(document, "keep_reading", name="Of it", text=f"[Line: {name}] + 0")
    entry = view(document)["entries"][1]
    assert entry["headline"]["mark"] == number
