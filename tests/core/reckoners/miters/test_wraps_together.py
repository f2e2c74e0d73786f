"""Pieces of a wrap, cut as told, close around the case as solids, layer upon layer."""

import random
from dataclasses import replace
from fractions import Fraction

import pytest

from tests.core.oracles import wraps_together
from tests.core.oracles.wraps_together import CHECKS

CASES = 150
THIN = Fraction(1, 1000)


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.__name__)
def test_what_was_told_closes_around_the_case(check):
    for seed in range(CASES):
        assert check(random.Random(f"{check.__name__} {seed}")) == []


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.__name__)
@pytest.mark.parametrize("off", ["longer", "shorter", "turned"])
def test_pieces_that_are_a_hair_off_are_seen(check, off, monkeypatch):
    """The judge is not blind: one part in ten thousand, or a hundredth of a degree, shows."""

    def spoiled(*question, **values):
        return [_spoiled(part, off) for part in told(*question, **values)]

    told = wraps_together.pieces
    monkeypatch.setattr(wraps_together, "pieces", spoiled)
    for seed in range(10):
        assert check(random.Random(seed)) != []


def _spoiled(part, off):
    if off == "turned":
        return replace(part, left=_turned(part.left), right=_turned(part.right))
    if off == "longer":
        return replace(
            part,
            long_side=part.long_side * 10001 / 10000,
            short_side=part.short_side * 10001 / 10000,
        )
    return replace(part, long_side=part.long_side - THIN, short_side=part.short_side - THIN)


def _turned(end):
    if end.cut != "bevel":
        return end
    degrees, rest = end.setting.split("°", 1)
    return replace(end, setting=f"{float(degrees) + 0.01:.2f}°{rest}")
