"""A name keeps meaning the answer that it meant, though the answer is called otherwise now."""

import pytest
from projects import acts, answered, begun, changed, view

from sawside.reckoning.old_labels import OLD_LABELS
from sawside.reckoning.reckon import find


def test_a_text_that_calls_an_answer_by_its_old_label_is_worked_out_as_before():
    """By hand: 37 1/4 outside less twice 2 1/4 is 32 3/4 inside; 3/4 more is 33 1/2."""
    rail = {"known": "37 1/4", "known_face": "outside", "width": "2 1/4"}
    document = acts(
        begun(),
        ("keep_line", {"name": "Top rail", "reckoner": "mitered_length", "values": rail}),
        ("keep_reading", {"name": "Panel", "text": "[Top rail: Short side] + 3/4"}),
        ("keep_reading", {"name": "Same", "text": "[Top rail: short point] + 3/4"}),
    )
    told = [each["headline"]["text"] for each in view(document)["entries"][1:]]
    assert told == ["33 1/2″", "33 1/2″"]
    renamed = changed(document, "rename", id="1", name="Rail")
    assert renamed["entries"][1]["text"] == "[Rail: Short side] + 3/4"
    assert answered("read", document, text="[top rail: SHORT SIDE]")["value"]["text"] == "32 3/4″"


@pytest.mark.parametrize("key", sorted(OLD_LABELS))
def test_every_old_label_means_an_answer_that_is_there_and_no_other_is_called_so_now(key):
    answers = {answer.key: answer for answer in find(key).answers}
    for label, answer in OLD_LABELS[key]:
        called = {each.key for each in answers.values() if each.label.casefold() == label}
        assert answers[answer].kind in ("length", "lengths", "count", "angle")
        assert called <= {answer}, label
