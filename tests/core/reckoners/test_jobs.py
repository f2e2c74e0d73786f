"""Every question is for a job of the list, and each of those has a picture that can be drawn."""

import re
from dataclasses import replace

import pytest

import sawside
from sawside.reckoners import RECKONERS

DESCRIBED = sawside.handle({"do": "describe"})
JOBS = {each["key"]: each for each in DESCRIBED["jobs"]}
# The grammar of path data (https://www.w3.org/TR/SVG2/paths.html#PathDataBNF): how many
# numbers follow each letter.
NUMBERS = {"m": 2, "l": 2, "h": 1, "v": 1, "c": 6, "s": 4, "q": 4, "t": 2, "a": 7, "z": 0}
COMMAND = re.compile(r"([a-zA-Z])([^a-zA-Z]*)")
NUMBER = re.compile(r"-?(?:\d+\.?\d*|\.\d+)")


def wrong(path):
    """What in a path is no command with all its numbers."""
    if not path.startswith("M"):
        return path
    for letter, numbers in COMMAND.findall(path):
        count, takes = len(NUMBER.findall(numbers)), NUMBERS.get(letter.lower())
        is_whole = count == 0 if takes == 0 else bool(takes and count and count % takes == 0)
        if not is_whole or NUMBER.sub("", numbers).strip():
            return letter + numbers
    return None


def test_every_question_is_for_a_known_job():
    assert {each["job"] for each in DESCRIBED["reckoners"]} <= set(JOBS)


@pytest.mark.parametrize("job", JOBS)
def test_a_job_has_a_question(job):
    assert job in {each["job"] for each in DESCRIBED["reckoners"]}


def test_a_question_for_no_known_job_does_not_load():
    with pytest.raises(ValueError, match=r"which job is it for\? tape, layout, "):
        replace(RECKONERS["middle"], job="upholstery")


@pytest.mark.parametrize(
    "shown", [*JOBS.values(), *DESCRIBED["reckoners"]], ids=lambda shown: shown["key"]
)
def test_its_picture_can_be_drawn(shown):
    assert shown["picture"]
    assert set(shown["picture"]) <= {"wood", "ink", "chalk"}
    assert [fault for path in shown["picture"].values() if (fault := wrong(path))] == []


@pytest.mark.parametrize("path", ["14h3", "M4", "M4 1q1 2", "M4 1x3", "M4 1h3z5", "M4 1h3,,v"])
def test_the_check_finds_what_is_no_path(path):
    assert wrong(path)
