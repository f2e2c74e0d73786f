"""Pieces cut as told meet, as solids, with the distances that were asked for."""

import random

import pytest

from tests.core.exactly import exactly
from tests.core.oracles import put_together, rings_together

CASES = 60
CHECKS = put_together.CHECKS + rings_together.CHECKS


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.__name__)
def test_what_was_told_fits_together(check):
    for seed in range(CASES):
        assert check(random.Random(f"{check.__name__} {seed}")) == []


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.__name__)
def test_an_answer_that_is_a_hair_off_is_seen(check, monkeypatch):
    """The judge is not blind: answers larger by a ten-thousandth are all found out."""

    def off(*question, **values):
        told = exactly(*question, **values)
        return {key: _larger(value) for key, value in told.items()}

    for module in (put_together, rings_together):
        monkeypatch.setattr(module, "exactly", off)
    for seed in range(10):
        assert check(random.Random(seed)) != []


def _larger(value):
    if isinstance(value, list):
        return [(name, _larger(each)) for name, each in value]
    return value if isinstance(value, str) else value * 1.0001
