"""A change of settings tells what follows without comparing irrational answers to the last bit.

Until 2048 bits nothing tells two equal ones apart, and for a shelf's span that takes seconds.
"""

from fractions import Fraction

import pytest
from projects import acts, begun, change, changed

import sawside
from sawside.lengths.real import FIRST_BITS, Real, sqrt
from sawside.project.acts import change as changing
from sawside.reckoning.links import difference

QUESTIONS = sawside.handle({"do": "describe"})["reckoners"]
each_question = pytest.mark.parametrize("question", QUESTIONS, ids=[q["key"] for q in QUESTIONS])
FORMULA = 64
"""Bits that a formula asks for beyond those that it was asked for."""


@pytest.fixture
def finest(monkeypatch):
    """The most bits that an enclosure was asked for while what follows was told: a list of one."""
    seen, enclosure, effects = [0], Real.enclosure, changing.effects
    watched = []

    def watching(self, bits):
        if watched:
            seen[0] = max(seen[0], bits)
        return enclosure(self, bits)

    def following(*given, **named):
        watched.append(True)
        try:
            return effects(*given, **named)
        finally:
            watched.pop()

    monkeypatch.setattr(Real, "enclosure", watching)
    monkeypatch.setattr(changing, "effects", following)
    return seen


def line(question):
    kept = {"name": "Line", "reckoner": question["key"], "values": question["example"]}
    return changed(begun(), "keep_line", **kept)


@each_question
def test_what_did_not_change_is_compared_only_as_finely_as_it_is_told(question, finest):
    document = line(question)
    for settings in ({"display": "mm"}, {"mark": "1/64"}, {"rounding": "up"}, {"unit": "mm"}):
        assert change(document, "set", settings=settings)["ok"]
        assert finest[0] <= 2 * FIRST_BITS + FORMULA, settings


def test_a_line_with_an_irrational_answer_is_told_before_and_after_and_did_not_change(finest):
    """36 1/8 by 41 1/4: the root of 1305.015625 + 1701.5625 is 54.832 in, or 1392.74 mm."""
    values = {"solve": "diagonal", "width": "36 1/8", "height": "41 1/4"}
    question = {"key": "square", "example": values}
    [told] = change(line(question), "set", settings={"display": "mm"})["follows"]
    assert [told[key]["text"] for key in ("before", "after")] == ["54 13/16″", "1393 mm"]
    assert told["difference"] is None
    assert finest[0] == FIRST_BITS


def test_a_correction_that_moves_an_irrational_answer_by_a_whole_mark_says_so_exactly(finest):
    """An eighth more inside is an eighth more from long point to long point, whatever the angle."""
    values = {
        "known": "[Inside]",
        "width": "2 1/4",
        "left_end": "other",
        "left_angle": "22.5",
        "right_end": "other",
        "right_angle": "22.5",
    }
    document = acts(
        begun(),
        ("keep_reading", {"name": "Inside", "text": "31 5/8"}),
        ("keep_line", {"name": "Rail", "reckoner": "mitered_length", "values": values}),
    )
    [told] = change(document, "correct", id="1", text="31 3/4")["follows"]
    assert told["before"]["rational"] is False
    assert told["difference"]["text"] == "1/8″"
    assert (told["difference"]["exact"], told["difference"]["direction"]) == ("1/8", "exact")
    assert finest[0] <= FIRST_BITS + FORMULA


ROOT = sqrt(2)


@pytest.mark.parametrize(
    ("was", "now", "by"),
    [
        (Fraction(1, 3), Fraction(1, 2), Fraction(1, 6)),
        (ROOT, ROOT, 0),
        (ROOT, sqrt(8) / 2, 0),
        (ROOT, ROOT + Fraction(1, 1000), Fraction(1, 1000)),
        (ROOT + Fraction(7, 64), ROOT, Fraction(-7, 64)),
        (ROOT * ROOT, 2, 0),
    ],
)
def test_a_difference_that_is_a_simple_fraction_is_that_fraction(was, now, by):
    found = difference(was, now)
    assert (type(found), found) == (Fraction, by)


@pytest.mark.parametrize("now", [sqrt(3), ROOT + sqrt(5) / 10**12, 2 * ROOT, Fraction(7, 5)])
def test_one_that_is_irrational_stays_so_however_small_it_is(now):
    found = difference(ROOT, now)
    assert isinstance(found, Real)
    assert (found > 0) == (now > ROOT)
