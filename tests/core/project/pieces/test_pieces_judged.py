"""A piece that is cut is judged by whether the piece asked for now can be cut out of it.

By hand: a miter of 45° takes the width from the short side, one of 40° the width × tan 40°.
"""

from fractions import Fraction
from math import radians, tan

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from projects import begun, changed, view

from sawside.reckoners import RECKONERS

MITERED = {"known": "36 1/8", "known_face": "outside", "width": "2 1/4"}
OTHER = {"left_end": "other", "right_end": "other"}
SQUARE = {"left_end": "square", "right_end": "square"}
BY_HAND = {"length": "30", "width": "4", "count": "1"}


def cut_one(values, reckoner="mitered_length", many=1):
    """A project with one line whose pieces are cut."""
    document = changed(begun(), "keep_line", name="Rail", reckoner=reckoner, values=values)
    for _ in range(many):
        document = changed(document, "cut", id="1", part="piece", by=1)
    return document


def corrected(document, **values):
    """The document with other values in its line."""
    kept = document["entries"][0]["values"]
    return changed(document, "correct", id="1", values=kept | values)


def judged(document):
    """What is told of the line's pieces."""
    return view(document)["pieces"][0]["verdicts"]


def said(document):
    """The sentences, without the name before them."""
    return [each["said"].removeprefix("Rail: ") for each in judged(document)]


def test_ends_made_square_need_the_length_on_the_short_side_too():
    """Its short side is 36 1/8 − 2 × 2 1/4 = 31 5/8: 4 1/2 are missing."""
    square = corrected(cut_one(MITERED), **SQUARE)
    assert judged(square)[0]["verdict"] == "too short"
    assert said(square) == ["1 piece too short by 4 1/2″ for the end cuts needed now."]
    assert judged(square)[0]["difference"]["text"] == "4 1/2″"


def test_by_how_much_is_told_as_the_sentence_has_it_however_coarse_the_marks():
    """36 1/8″ less 1/8″ is 3.175 mm: on marks of a millimeter that would be 3 mm."""
    document = cut_one(MITERED)
    coarse = changed(document, "set", settings={"unit": "in", "mark": "1 mm", "display": "mm"})
    (verdict,) = judged(corrected(coarse, known="36"))
    assert verdict["said"] == "Rail: 1 piece can be cut down by ≈ 3.2 mm."
    assert verdict["by"] == "≈ 3.2 mm"
    assert verdict["difference"]["text"] == "3 mm"


def test_an_end_that_gets_squarer_needs_length():
    """From 45° to 40° at both ends: 2 × 2 1/4 × (1 − tan 40°) = 0.724 are missing."""
    squarer = corrected(cut_one(MITERED), **OTHER, left_angle="40", right_angle="40")
    assert said(squarer) == ["1 piece too short by ≈ 23/32″ for the end cuts needed now."]
    assert Fraction(judged(squarer)[0]["difference"]["exact"]) == pytest.approx(
        Fraction(4.5 * (1 - tan(radians(40)))), abs=1e-3
    )


def test_an_end_that_gets_steeper_can_be_cut_anew():
    document = cut_one(MITERED | {"left_end": "other", "left_angle": "40"})
    steeper = corrected(document, left_end="45")
    assert said(steeper) == ["1 piece with different end cuts than needed now."]
    assert judged(steeper)[0]["measures"] == ["ends"]


def test_what_is_longer_than_it_has_to_be_may_have_squarer_ends():
    """4 1/2 shorter on its outside, the square piece is as long as the short side was."""
    short = corrected(cut_one(MITERED), known="31 5/8", **SQUARE)
    assert judged(short)[0]["verdict"] == "recut ends"
    assert said(short) == [
        "1 piece can be cut down by 4 1/2″, and has different end cuts than needed now."
    ]
    assert said(corrected(cut_one(MITERED), known="31 3/4", **SQUARE)) == [
        "1 piece too short by 1/8″ for the end cuts needed now."
    ]


def test_one_end_squarer_and_the_other_steeper_needs_length_though_both_sides_stay():
    """Turned end for end, the piece has the same two sides; nothing turns a molding over."""
    one = cut_one(MITERED | {"left_end": "square"})
    other = corrected(one, left_end="45", right_end="square")
    assert said(other) == ["1 piece too short by 2 1/4″ for the end cuts needed now."]


def test_a_piece_ripped_narrower_is_as_long_as_before_where_its_new_short_side_is():
    """At 45° an inch of width less leaves a short side that is two inches longer."""
    narrower = corrected(cut_one(MITERED), width="1 1/4")
    assert said(narrower) == ["1 piece can be cut down by 1″ in width."]


def test_a_piece_kept_before_its_short_side_was_is_judged_by_what_is_known():
    document = cut_one(MITERED)
    del document["entries"][0]["cut"]["piece"][0]["short_side"]
    assert judged(document)[0]["verdict"] == "good"
    assert said(corrected(document, known="36")) == ["1 piece can be cut down by 1/8″."]
    assert said(corrected(document, **SQUARE)) == [
        "1 piece can’t be checked: cut with different end cuts than needed now, and the "
        "short-point length wasn’t saved."
    ]
    assert judged(corrected(document, known="37", **SQUARE))[0]["verdict"] == "too short"


def test_square_pieces_kept_before_are_judged_as_ever():
    document = cut_one(MITERED | SQUARE)
    del document["entries"][0]["cut"]["piece"][0]["short_side"]
    mitered = corrected(document, left_end="45", right_end="45")
    assert judged(mitered)[0]["verdict"] == "recut ends"


def test_every_measure_is_told_the_worst_first_and_so_recut_keeps_only_what_was_told():
    narrower = corrected(cut_one(BY_HAND, "piece_by_hand"), length="29 7/8", width="3")
    told = judged(narrower)[0]
    assert told["measures"] == ["width", "length"]
    assert said(narrower) == ["1 piece can be cut down by 1″ in width and 1/8″ in length."]
    done = changed(narrower, "recut", id="1", part="piece", which=[0])
    assert done["entries"][0]["cut"]["piece"] == [
        {"length": "239/8 in", "width": "3 in", "ends": "@square 0°; @square 0°"}
    ]


def test_a_measure_within_the_tolerance_was_not_told_and_stays_as_it_was_cut():
    document = changed(cut_one(BY_HAND, "piece_by_hand"), "tolerance", text="1/16")
    narrower = corrected(document, length="29 15/16", width="3")
    assert said(narrower) == ["1 piece can be cut down by 1″ in width."]
    done = changed(narrower, "recut", id="1", part="piece", which=[0])
    assert done["entries"][0]["cut"]["piece"][0]["length"] == "30 in"


def test_each_measure_that_is_too_small_is_told():
    larger = corrected(cut_one(BY_HAND, "piece_by_hand"), length="30 1/8", width="4 1/4")
    assert said(larger) == ["1 piece too narrow by 1/4″ and too short by 1/8″."]


def test_a_square_piece_that_is_now_mitered_and_shorter_is_told_both():
    mitered = corrected(cut_one(MITERED | SQUARE | {"known": "36"}), known="35", left_end="45")
    assert said(mitered) == [
        "1 piece can be cut down by 1″, and has different end cuts than needed now."
    ]
    done = changed(mitered, "recut", id="1", part="piece", which=[0])
    assert [each["verdict"] for each in judged(done)] == ["good"]
    assert done["entries"][0]["cut"]["piece"][0]["short_side"] == "131/4 in"


def two_good_and_two_short(many):
    document = cut_one(BY_HAND | {"count": "4"}, "piece_by_hand", many=2)
    document = corrected(document, length="31")
    for _ in range(2):
        document = changed(document, "cut", id="1", part="piece", by=1)
    return corrected(document, count=str(many))


def test_good_pieces_count_first_and_what_is_beyond_is_more_than_asked():
    told = {each["verdict"]: each["which"] for each in judged(two_good_and_two_short(2))}
    assert told == {"good": [2, 3], "gone": [0, 1]}
    told = {each["verdict"]: each["which"] for each in judged(two_good_and_two_short(3))}
    assert told == {"good": [2, 3], "too short": [0], "gone": [1]}


def test_those_that_can_be_mended_count_before_those_that_cannot():
    """31 long, asked for 30: two can be cut down, and two of 29 can't."""
    document = cut_one(BY_HAND | {"count": "4", "length": "29"}, "piece_by_hand", many=2)
    document = corrected(document, length="31")
    for _ in range(2):
        document = changed(document, "cut", id="1", part="piece", by=1)
    told = judged(corrected(document, length="30", count="2"))
    assert {each["verdict"]: each["which"] for each in told} == {"cut down": [2, 3], "gone": [0, 1]}


CROWN = {
    "found": "legs",
    "drop": "2 5/8",
    "projection": "2 1/16",
    "measured": "40",
    "left_end": "inside",
    "right_end": "square",
}


def test_an_angle_that_moves_by_a_hair_is_the_same_end():
    """1/128 of drop turns the saw by 0.05°: 0.003 over a width of 3 3/8."""
    document = cut_one(CROWN, "crown")
    assert judged(corrected(document, drop="2 5/8 - 1/128"))[0]["verdict"] == "good"
    assert judged(corrected(document, drop="2"))[0]["verdict"] != "good"


def test_the_tolerance_says_what_a_hair_is():
    """Over 2 1/4 the tangents of 45° and 44.7° differ by 0.024: within 1/32, beyond 1/64."""
    document = cut_one(MITERED | OTHER | {"left_angle": "45", "right_angle": "45"})
    assert judged(corrected(document, left_angle="44.7"))[0]["verdict"] == "good"
    fine = changed(document, "tolerance", text="1/64")
    assert judged(corrected(fine, left_angle="44.7"))[0]["verdict"] == "too short"
    assert judged(corrected(fine, left_angle="45.3"))[0]["verdict"] == "recut ends"


@pytest.mark.parametrize("tolerance", ["0", "", "1/4"])
@pytest.mark.parametrize(
    ("reckoner", "part"),
    [
        ("crown", "piece"),
        ("molding_run", None),
        ("sloped_box", None),
        ("scarf", None),
        ("edge_strip", None),
        ("mitered_length", None),
        ("piece_by_hand", None),
    ],
)
def test_a_piece_is_good_as_soon_as_it_is_cut(reckoner, part, tolerance):
    """Whatever its ends, its width between two marks, and the tolerance."""
    values = CROWN if part else RECKONERS[reckoner].example
    document = changed(begun(), "keep_line", name="Rail", reckoner=reckoner, values=values)
    document = changed(document, "tolerance", text=tolerance)
    for piece in view(document)["pieces"]:
        document = changed(document, "cut", id="1", part=piece["part"], by=1)
    assert {
        each["verdict"] for piece in view(document)["pieces"] for each in piece["verdicts"]
    } == {"good"}


def test_what_is_too_narrow_and_too_short_for_its_ends_is_told_as_both():
    """An end made square on stock of 2 1/2 needs what a miter of 45° took there."""
    wider = corrected(cut_one(MITERED), width="2 1/2", left_end="square")
    assert said(wider) == [
        "1 piece too short by 2 1/2″ for the end cuts needed now and too narrow by 1/4″."
    ]


@pytest.mark.parametrize("ends", ["notched 270°; notched 450°", "*; *", "", "square; 90°", "≈ °"])
def test_whatever_a_stranger_wrote_of_ends_is_judged(ends):
    document = cut_one(MITERED)
    document["entries"][0]["cut"]["piece"][0] |= {"ends": ends, "short_side": "-7/3 in"}
    assert judged(document)[0]["verdict"] in ("recut ends", "too short", "unknown")


ANGLES = st.integers(0, 60)


def _spans(length, width, left, right):
    """Where the two sides of a piece begin and end: long side, short side."""
    takes = [width * tan(radians(each)) for each in (left, right)]
    return (0, length), (takes[0], length - takes[1])


@settings(max_examples=120)
@given(st.integers(40, 44), st.tuples(ANGLES, ANGLES), st.tuples(ANGLES, ANGLES))
def test_too_short_is_what_no_shift_along_the_cut_piece_makes_fit(length, cut, asked):
    """Independent oracle: the new piece is slid along the old one, a hundredth at a time."""
    document = cut_one(
        OTHER
        | {
            "known": str(length),
            "known_face": "outside",
            "width": "3",
            "left_angle": str(cut[0]),
            "right_angle": str(cut[1]),
        }
    )
    document = corrected(
        document, known="41 1/2", left_angle=str(asked[0]), right_angle=str(asked[1])
    )
    old, new = _spans(length, 3, *cut), _spans(41.5, 3, *asked)
    least = min(
        max(
            max(a - (b + shift), (c + shift) - d, 0)
            for (a, d), (b, c) in zip(old, new, strict=True)
        )
        for shift in (hundredth / 100 for hundredth in range(-1000, 1001))
    )
    is_short = judged(document)[0]["verdict"] == "too short"
    if least > 0.06:
        assert is_short
    if least < 0.005:
        assert not is_short
