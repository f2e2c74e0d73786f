"""A case put together from its parts is what was asked for: no overlap, no gap, clear bays."""

from dataclasses import replace
from fractions import Fraction
from random import Random

from asking import found
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.lengths.marks import exact_of
from tests.core.oracles.assembled_case import panels_cut
from tests.core.oracles.judged_case import check_built, check_case
from tests.core.oracles.random_case import random_case, values_of

HAIR = Fraction(1, 10_000)


@settings(max_examples=300, deadline=None)
@given(st.randoms(use_true_random=False))
def test_its_parts_make_the_case_that_was_asked_for(random):
    """The boxes, their cuts and their places are those of `assembled_case`: independent code."""
    assert check_case(random) == []


def test_the_judge_sees_a_part_that_is_a_hair_off():
    """Every length and width, either way, and every depth of a joint, in 20 cases."""
    for number in range(20):
        asked = random_case(Random(f"hair {number}"))
        panels = panels_cut(values_of(asked))
        assert not list(check_built(asked, panels))
        for key, panel in panels.items():
            for measure in ("length", "width"):
                for hair in (HAIR, -HAIR):
                    off = replace(panel, **{measure: getattr(panel, measure) + hair})
                    assert list(check_built(asked, panels | {key: off})), (number, key, measure)
            for at, cut in enumerate(panel.cuts):
                if cut.purpose in ("the bottom", "the top", "a fixed shelf"):
                    cuts = list(panel.cuts)
                    cuts[at] = replace(cut, deep=cut.deep - HAIR)
                    off = replace(panel, cuts=tuple(cuts))
                    shelves = cut.purpose != "a fixed shelf" or asked.fixed
                    assert not shelves or list(check_built(asked, panels | {key: off})), cut


def test_what_is_told_of_a_part_are_the_sizes_that_were_put_together():
    for number in range(40):
        values = values_of(random_case(Random(f"told {number}")))
        parts = found("carcass", values).parts
        panels = panels_cut(values)
        assert [part.key for part in parts] == list(panels)
        for part in parts:
            for measure in ("count", "length", "width", "thickness"):
                wanted = getattr(panels[part.key], measure)
                assert exact_of(getattr(part, measure)) == wanted
