"""Moldings on random cases, cut as told, close as solids around the case and its face frame."""

import random
from dataclasses import replace
from fractions import Fraction

import pytest

from sawside.lengths.real import nearby
from tests.core.oracles import crowned_cases, wrapped_cases

CASES = 120
THIN, HUNDREDTH = Fraction(1, 1000), Fraction(1, 100)
CHECKS = wrapped_cases.CHECKS + crowned_cases.CHECKS


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.__name__)
def test_what_was_told_wraps_the_case_with_no_gap_and_no_overlap(check):
    for seed in range(CASES):
        assert check(random.Random(f"{check.__name__} {seed}")) == []


@pytest.mark.parametrize("off", ["longer", "shorter", "turned"])
def test_a_flat_piece_that_is_a_hair_off_is_seen(off, monkeypatch):
    """The judge is not blind: one part in ten thousand, or a hundredth of a degree, shows."""
    told = wrapped_cases.pieces

    def spoiled(*question, **values):
        return [_spoiled(part, off) for part in told(*question, **values)]

    monkeypatch.setattr(wrapped_cases, "pieces", spoiled)
    seeds = [seed for seed in range(20) if off != "turned" or _has_a_miter(seed)]
    assert len(seeds) > 10
    for seed in seeds:
        assert wrapped_cases.flat(random.Random(seed)) != []


def _has_a_miter(seed):
    chance = random.Random(seed)
    case = wrapped_cases.Case(chance, chance.choice(["base", "strip"]))  # as `flat` draws it
    return case.showing or set(case.ends.values()) != {"wall"}


def _spoiled(part, off):
    if off == "turned":
        return replace(part, left=_turned(part.left), right=_turned(part.right))
    long, short = part.long_side, part.short_side
    if off == "longer":
        return replace(part, long_side=long * 10001 / 10000, short_side=short * 10001 / 10000)
    return replace(part, long_side=long - THIN, short_side=short - THIN)


def _turned(end):
    if end.cut not in ("bevel", "coped"):
        return end
    degrees, rest = end.setting.split("°", 1)
    return replace(end, setting=f"{float(degrees) + 0.01:.2f}°{rest}")


@pytest.mark.parametrize("off", ["edges", "turned", "tilted"])
def test_crown_that_is_a_hair_off_is_seen(off, monkeypatch):
    told, pieces = crowned_cases.exactly, crowned_cases.pieces

    def longer(*question, **values):
        found = told(*question, **values)
        return found | {
            key: [(name, long * 1.0001) for name, long in found[key]]
            for key in ("tops", "bottoms")
            if key in found
        }

    def turned(*question, **values):
        return [
            replace(part, left=_moved(part.left, off), right=_moved(part.right, off))
            for part in pieces(*question, **values)
        ]

    if off == "edges":
        monkeypatch.setattr(crowned_cases, "exactly", longer)
    else:
        monkeypatch.setattr(crowned_cases, "pieces", turned)
    for seed in range(20):
        case = wrapped_cases.Case(random.Random(seed), "crown")
        if case.showing or "return" in case.ends.values():  # there it meets another piece
            assert crowned_cases.crown(random.Random(seed)) != []


def _moved(end, off):
    if end.how != "compound":
        return end
    return replace(end, **{off: nearby(getattr(end, off)) + HUNDREDTH})
