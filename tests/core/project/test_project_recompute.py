"""What depends on a change is worked out again, all of it and nothing else."""

import random

from projects import changed, entry, headlines, linked

from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.schema.document import read_document
from tests.bench.core.recompute_case import LINES, cases, plain
from tests.core.oracles.spreadsheet import faults


def test_random_links_are_worked_out_as_a_spreadsheet_does():
    for seed in range(200):
        assert [*faults(random.Random(seed))] == [], seed


def test_a_change_works_out_again_only_what_depends_on_it():
    document = read_document(linked())
    document = changed(document, "keep_reading", name="Depth", text="11 1/4")
    document = read_document(changed(document, "keep_reading", name="Shelf", text="Depth - 3/4"))
    before = Evaluation(document).worked
    other = read_document(changed(document, "correct", id="5", text="11"))
    after = Evaluation(other).worked
    assert {each for each in after if after[each] is not before[each]} == {"5", "6"}


def test_the_lines_of_ten_cases_come_to_what_they_come_to_without_their_links():
    document = cases()
    lines = [each for each in document["entries"] if each["kind"] == "line"]
    assert len(lines) == LINES
    assert headlines(plain(document)) == headlines(document)


def test_a_narrower_alcove_works_out_again_only_what_is_across_the_cases():
    """Shelf spacing goes by heights and depths alone; tip-over by the weight of the carcass too."""
    document = cases()
    before = Evaluation(read_document(document)).worked
    reading = entry(document, "Alcove width, top")
    narrow = read_document(changed(document, "correct", id=reading["id"], text="37 3/8"))
    after = Evaluation(narrow)
    again = {
        after.names[each].rstrip(" 0123456789")
        for each in after.worked
        if after.worked[each] is not before[each]
    }
    narrower = {"Space", "Carcass", "Shelf strength", "Face frame", "Tip-over"}
    assert again == {"Alcove width, top", *narrower}
