"""A caution has one short line, and all of it behind that."""

import sawside
from sawside.reckoners import RECKONERS
from sawside.wood.caution import Caution

LONGEST = 110
"""Letters: three lines of a narrow phone."""
MOST_WORDS = 36
"""Of all the lines that always stand in one answer: with its numbers it then has sixty at most."""


def test_a_text_is_short_by_its_first_sentence():
    text = "Unplug the saw. The saw maker’s instructions come first."
    assert Caution.of(text) == ("Unplug the saw.", text)
    assert Caution.of("Wear eye protection.") == ("Wear eye protection.", "Wear eye protection.")


def test_a_number_ends_no_sentence():
    text = "Sold as 23/32: from 0.688″ to 0.75″ (PS 1). Measure it."
    assert Caution.of(text).short == "Sold as 23/32: from 0.688″ to 0.75″ (PS 1)."


def test_every_caution_of_an_example_has_a_line_that_is_short():
    long = {}
    for key, reckoner in RECKONERS.items():
        said = sawside.handle({"do": "reckon", "reckoner": key, "values": reckoner.example})
        for caution in said["cautions"]:
            if len(caution["short"]) > LONGEST:
                long[key] = caution["short"]
            assert caution["full"]
    assert long == {}


def test_the_lines_that_always_stand_are_few_words_in_all():
    words = {}
    for key, reckoner in RECKONERS.items():
        said = sawside.handle({"do": "reckon", "reckoner": key, "values": reckoner.example})
        words[key] = sum(len(caution["short"].split()) for caution in said["cautions"])
    assert {key: many for key, many in words.items() if many > MOST_WORDS} == {}
