"""A door swung by small steps hits where it is said to, and passes where it is said to."""

from random import Random

from hypothesis import given, settings
from hypothesis import strategies as st

from tests.core.oracles.swung_door import answered, check_answers, check_swing, random_swing


@settings(max_examples=100, deadline=None)
@given(st.randoms(use_true_random=False))
def test_a_door_opens_as_far_as_it_is_said_to(random):
    """`swung_door` turns corners by steps and solves nothing: independent code."""
    assert check_swing(random) == []


def test_the_judge_sees_an_angle_a_tenth_of_a_degree_off():
    seen = 0
    for number in range(30):
        asked = random_swing(Random(f"off {number}"))
        said, _ = answered(asked)
        for key in ("opens", "needs"):
            if said is not None and key in said:
                degrees = float(said[key]["text"].removeprefix("≈ ").removesuffix("°")) - 0.1
                off = said | {key: said[key] | {"text": f"≈ {degrees:.2f}°"}}
                assert list(check_answers(asked, off)), (asked, key)
                seen += 1
    assert seen > 30
