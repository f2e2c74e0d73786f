"""Shelves of every way of spacing, at random, against a case that is built up by hand."""

from random import Random

import pytest

from tests.core.oracles import spaced_shelves
from tests.core.oracles.spaced_shelves import CHECKS, Case

each_check = pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.__name__)


@each_check
def test_marks_and_openings_are_those_of_the_case(check):
    for seed in range(60):
        assert check(Random(f"{check.__name__} {seed}")) == []


@each_check
def test_a_mark_that_is_a_hair_off_is_seen(check, monkeypatch):
    """The judge is not blind."""
    ask = Case.ask

    def off(self, key, **values):
        told, fault = ask(self, key, **values)
        if told:
            mark = told["marks"]["items"][-1]
            mark["exact"] = str(spaced_shelves.Fraction(mark["exact"]) + spaced_shelves.HAIR)
        return told, fault

    monkeypatch.setattr(Case, "ask", off)
    for seed in range(10):
        assert check(Random(seed)) != []
