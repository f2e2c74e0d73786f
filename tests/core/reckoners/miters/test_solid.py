"""The solids that judge the miters are themselves what solid geometry says."""

import numpy as np
import pytest

from tests.core.oracles.solid import (
    bar,
    board,
    faces_meet,
    mirror,
    overlap,
    placed,
    rotation,
    same_place,
    translation,
    vector,
)


def block(long=10, width=3, thickness=2):
    return (
        board(width, thickness)
        .cut("left", (-1, 0, 0), (0, 0, 0))
        .cut("right", (1, 0, 0), (long, 0, 0))
    )


def test_a_block_has_eight_corners_and_the_edges_it_was_given():
    made = block()
    assert len(made.vertices()) == 8
    assert made.length("inside", "face") == pytest.approx(10)
    assert made.length("left", "face") == pytest.approx(3)
    assert made.extent((0, 0, 1)) == (0, 2)


def test_a_slanting_cut_takes_a_corner_off_and_leaves_the_rest():
    made = block().cut("corner", (1, 1, 1), (10, 3, 1))
    assert len(made.face("corner")) == 3
    assert len(made.vertices()) == 10
    assert made.depth((9.9, 2.9, 1.9)) < 0 < made.depth((5, 1, 1))


def test_motions_keep_lengths_and_can_be_undone():
    motion = rotation((1, 2, 3), 40, about=(1, 0, 5)).then(translation(3, -4, 5))
    made = block().moved(motion)
    assert made.length("inside", "face") == pytest.approx(10)
    assert same_place(motion.back(motion((1, 2, 3))), (1, 2, 3))
    assert same_place(rotation((0, 0, 1), 90)((1, 0, 0)), (0, 1, 0))
    assert same_place(mirror((1, 0, 0), (2, 0, 0))((5, 1, 1)), (-1, 1, 1))
    assert same_place(placed((1, 1, 1), (0, 1, 0), (0, 0, 1))((1, 2, 3)), (4, 2, 3))


def test_a_turned_section_has_its_faces_square_to_its_sides():
    made = bar([(0, 0), (4, 0), (4, 1), (0, 3)])
    other = bar([(0, 3), (4, 1), (4, 0), (0, 0)])
    ends = [("left", (-1, 0, 0), (0, 0, 0)), ("right", (1, 0, 0), (5, 0, 0))]
    for name, normal, through in ends:
        made, other = made.cut(name, normal, through), other.cut(name, normal, through)
    assert len(made.vertices()) == len(other.vertices()) == 8
    assert made.extent((0, 0, 1)) == (0, 3)
    assert np.allclose(made.normal(0), vector(0, 0, -1))


def test_faces_meet_only_when_they_lie_on_each_other():
    left, right = block(), block().moved(translation(10, 0, 0))
    assert faces_meet(left, "right", right, "left")
    assert not faces_meet(left, "right", right, "right")
    for off in (translation(1e-4, 0, 0), translation(0, 1e-4, 0), rotation((0, 1, 0), 0.001)):
        assert not faces_meet(left, "right", right.moved(off), "left")


def test_solids_overlap_only_where_both_are():
    assert overlap(block(), block().moved(translation(10, 0, 0))) == 0
    assert overlap(block(), block().moved(translation(50, 0, 0))) == 0
    assert overlap(block(), block().moved(translation(9, 0, 0))) == pytest.approx(0.5)
