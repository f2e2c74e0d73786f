"""What to make of a shelf in a few words, and what would mend one that sags too much."""

import pytest
from asking import reckon


def test_a_span_that_must_shrink_to_a_stump_is_no_way_to_mend_it():
    case = {"span": "36", "depth": "12", "material": "plywood", "thickness": "1/4"}
    heavy = reckon("shelf_strength", **case, load="own_lb", own_lb="200")["by_key"]["fix"]["text"]
    assert heavy == "Use a board 1 5/8″ thick."
    hopeless = reckon("shelf_strength", **case | {"span": "20 ft"})["by_key"]["fix"]["text"]
    assert hopeless == "Put less on it, or add supports no more than 8″ apart."


def test_edging_on_one_edge_that_is_not_enough_is_put_on_both():
    case = {"span": "36", "depth": "12", "material": "plywood", "strip": "front"}
    fix = reckon("shelf_strength", **case)["by_key"]["fix"]["text"]
    assert fix.endswith("or put the edging front and back, 1 7/8″ high.")
    both = case | {"strip": "both", "strip_height": "1 7/8"}
    assert reckon("shelf_strength", **both)["verdict"].startswith("Fine")


@pytest.mark.parametrize(
    ("more", "verdict"),
    [
        ({"span": "8"}, "Fine: under 1/64″ long-term (0.0003″ now)"),
        ({"span": "24", "material": "oak_white"}, "Fine: 1/64″ long-term (1/64″ now), limit 3/64″"),
        ({"span": "36"}, "Too much: 13/64″ long-term (7/64″ now), limit 1/16″"),
        (
            {"span": "72", "thickness": "1/2"},
            "Far too weak: it would sag over 1/20 of its span, limit 1/8″",
        ),
        # M = 540 × 240 ÷ 8 = 16,200 lb·in, S = 12 × .75² ÷ 6 = 1.125 in³, 14,400 psi; plywood
        # fails at 4,890.
        ({"span": "20 ft"}, "It could break: past the strength of plywood"),
    ],
)
def test_the_verdict_says_in_a_few_words_what_to_make_of_it(more, verdict):
    case = {"depth": "12", "material": "plywood"} | more
    assert reckon("shelf_strength", **case)["verdict"] == verdict


def test_what_would_mend_it_mends_it():
    case = {"depth": "12", "material": "plywood"}
    said = reckon("shelf_strength", span="36", **case)
    assert said["by_key"]["fix"]["text"] == (
        "Shorten the span to 23 5/8″ or less, use a board 1 3/16″ thick, or add edging front and "
        "back, 1 7/8″ high by 3/4″ thick."
    )
    edging = {"strip": "both", "strip_thickness": "3/4"}
    for change, one_less in (
        ({"span": "23 5/8"}, {"span": "23 11/16"}),
        ({"span": "36", "thickness": "1 3/16"}, {"span": "36", "thickness": "1 1/8"}),
        (
            {"span": "36", "strip_height": "1 7/8"} | edging,
            {"span": "36", "strip_height": "1 13/16"} | edging,
        ),
    ):
        mended = reckon("shelf_strength", **case | change)
        assert mended["verdict"].startswith("Fine")
        assert "fix" not in mended["by_key"]
        assert reckon("shelf_strength", **case | one_less)["verdict"].startswith("Too much")


def test_edging_that_is_to_mend_it_covers_the_edge_of_the_board():
    """Common practice, no source: nobody bands a 3/4 shelf with a 1/8 strip."""
    case = {"span": "36", "depth": "12", "material": "plywood", "supports": "fixed"}
    said = reckon("shelf_strength", **case, load="records_12")["by_key"]["fix"]["text"]
    assert said.endswith("add edging front and back, 3/4″ high by 3/4″ thick.")
