"""A limit that a remedy names is on the side of it that is taken: arithmetic, no source needed."""

import pytest
from asking import ask

BOARDS = {"over": "3/4", "under": "1 1/2"}
LIMITS = (
    # Half of 4 51/64 is 2 51/128; half of 2.04 is 1.02, and (48 − 2 × 2.04) ÷ 2 = 21.96.
    ("hinges", {"height": "4 51/64", "width": "9"}, "2 25/64″ or less", {"hinge": "2 25/64"}),
    (
        "hinges",
        {"height": "48", "width": "9", "hinge": "2.04", "inset": "1"},
        "from 1 1/32″ to 21 61/64″",
        {"inset": "1 1/32"},
    ),
    # Half of 2.138 is 1.069; half of .3 is .15; two thirds of .164 is .1093, under 7/64.
    (
        "loose_tenons",
        {"long": "15", "thickness": "3/4", "along": "2.138", "inset": "3/4"},
        "1 5/64″ or more",
        {"inset": "1 5/64"},
    ),
    (
        "screw",
        {**BOARDS, "size": "8", "into": "edge", "edge": "0.3"},
        "9/64″ or less",
        {"size": "own", "shank": "9/64"},
    ),
    ("screw", {**BOARDS, "size": "8", "pilot": "7/64"}, "3/32″ or less", {"pilot": "3/32"}),
    # Half of 6.1 is 3.05.
    (
        "door_swing",
        {"width": "6.1", "hinge": "cup", "along": "4"},
        "3 3/64″ at most",
        {"along": "3 3/64"},
    ),
)


@pytest.mark.parametrize(("key", "values", "limit", "mended"), LIMITS)
def test_a_limit_of_a_remedy_is_taken_when_it_is_typed(key, values, limit, mended):
    assert limit in ask(key, **values)["error"]["remedy"]
    assert ask(key, **values | mended)["ok"]


def test_a_limit_is_taken_where_half_of_it_is_on_no_mark():
    """4 3/64 − 2 × 3/32 is cut to 3 55/64: less 1, that is 2 55/64 for two edges, 1 55/128 each."""
    slab = {"width": "4 3/64", "height": "20", "made": "slab"}
    finest = {"mark": "1/64"}
    assert "1 27/64″ at most" in ask("doors", finest, **slab, banding="2")["error"]["remedy"]
    assert ask("doors", finest, **slab, banding="1 27/64")["ok"]


def test_a_pilot_wider_than_the_root_by_a_hair_is_told_so_that_one_sees_it():
    said = ask("screw", **BOARDS, size="8", pilot="7/64")["error"]["message"]
    assert said.startswith("A 7/64″ pilot is wider than the root of the screw, 0.1093″:")
