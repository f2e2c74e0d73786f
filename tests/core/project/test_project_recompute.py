"""What depends on a change is worked out again, all of it and nothing else."""

import random

from projects import changed, linked

from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.schema.document import read_document
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
