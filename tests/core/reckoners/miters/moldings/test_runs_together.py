"""Pieces of a molding or a strip, cut as told, close as solids at every corner, layer on layer."""

import random
from dataclasses import replace
from fractions import Fraction

import pytest

from tests.core.oracles import molding_runs, strips_together

CASES = 120
CHECKS = molding_runs.CHECKS + strips_together.CHECKS
THIN = Fraction(1, 1000)


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.__name__)
def test_what_was_told_closes_at_every_corner(check):
    for seed in range(CASES):
        assert check(random.Random(f"{check.__name__} {seed}")) == []


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.__name__)
@pytest.mark.parametrize("off", ["longer", "shorter", "turned"])
def test_pieces_that_are_a_hair_off_are_seen(check, off, monkeypatch):
    """The judge is not blind: one part in ten thousand, or a hundredth of a degree, shows."""

    def spoiled(*question, **values):
        return [_spoiled(part, off) for part in told(*question, **values)]

    told = strips_together.pieces
    for module in (molding_runs, strips_together):
        monkeypatch.setattr(module, "pieces", spoiled)
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
    if end.cut not in ("bevel", "coped", "scarf"):
        return end
    degrees, rest = end.setting.split("°", 1)
    return replace(end, setting=f"{float(degrees) + 0.01:.2f}°{rest}")
