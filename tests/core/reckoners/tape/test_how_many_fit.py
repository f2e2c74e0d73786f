"""A stick gives as many pieces as can be cut from it one after another."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon, texts
from hypothesis import given
from hypothesis import strategies as st

sticks = st.fractions(min_value=1, max_value=200, max_denominator=32)
pieces = st.fractions(min_value="1/2", max_value=60, max_denominator=32)
kerfs = st.fractions(min_value=0, max_value="1/2", max_denominator=32)
trims = st.fractions(min_value=0, max_value=3, max_denominator=16)


def fit(stick, piece, kerf="1/8", first=0, last=0):
    return reckon(
        "how_many_fit",
        stick=f"{stick} in",
        piece=f"{piece} in",
        kerf=f"{kerf} in",
        first_trim=f"{first} in",
        last_trim=f"{last} in",
    )


def test_eight_pieces_and_their_kerfs_from_a_96_inch_stick():
    """Worked by hand: 95 1/2 usable; 8 × 10 23/32 + 7 × 1/8 = 86 5/8; 8 7/8 less a kerf is left.

    Nine would need 9 × 10 23/32 + 8 × 1/8 = 97 15/32, which is 1 31/32 more than there is.
    """
    said = fit(96, "10 23/32", first="1/2")
    assert said["answers"][0]["text"] == "8"
    assert exact(said["by_key"]["left"]) == Fraction(35, 4)
    assert exact(said["by_key"]["missing"]) == Fraction(63, 32)
    assert texts(said)["cuts"] == "9"


def test_pieces_that_fill_the_stick_exactly_need_no_last_cut():
    """Worked by hand: 4 × 23 29/32 + 3 × 1/8 = 96."""
    said = fit(96, "23 29/32")
    assert (texts(said)["pieces"], texts(said)["cuts"], texts(said)["left"]) == ("4", "3", "0″")
    short = fit(Fraction(96) - Fraction(1, 64), "23 29/32")
    assert texts(short)["pieces"] == "3"


def test_a_rest_narrower_than_the_kerf_is_taken_by_the_last_cut():
    said = fit(Fraction(96) + Fraction(1, 16), "23 29/32")
    assert (texts(said)["pieces"], texts(said)["cuts"], texts(said)["left"]) == ("4", "4", "0″")
    assert "The last kerf takes all of that" in [line["text"] for line in said["working"]]


@given(sticks, pieces, kerfs, trims, trims)
def test_it_is_what_cutting_them_one_by_one_gives(stick, piece, kerf, first, last):
    """The oracle saws: pieces come off while the rest is long enough; each cut eats a kerf."""
    values = [f"{each} in" for each in (stick, piece, kerf, first, last)]
    names = ("stick", "piece", "kerf", "first_trim", "last_trim")
    said = ask("how_many_fit", **dict(zip(names, values, strict=True)))
    rest, count, cuts = stick - first - last, 0, 1 if first else 0
    if rest <= 0:
        assert errors(said)["first_trim"]["kind"] == "impossible"
        return
    while rest >= piece:
        count += 1
        rest -= piece
        if rest or last:
            cuts += 1
        rest = max(rest - kerf, Fraction(0))
    by_key = said["by_key"]
    assert by_key["pieces"]["text"] == str(count)
    assert exact(by_key["left"]) == rest
    assert by_key["cuts"]["text"] == str(cuts if count else 0)


@given(sticks, pieces, kerfs)
def test_with_what_is_missing_there_is_one_piece_more_and_with_less_there_is_not(
    stick, piece, kerf
):
    said = fit(stick, piece, kerf)
    count, missing = int(texts(said)["pieces"]), exact(said["by_key"]["missing"])
    assert missing > 0
    assert int(texts(fit(stick + missing, piece, kerf))["pieces"]) == count + 1
    assert int(texts(fit(stick + missing - Fraction(1, 10**6), piece, kerf))["pieces"]) == count


def test_a_blank_kerf_is_that_of_the_settings():
    blank = reckon("how_many_fit", {"kerf": "3/32"}, stick="96", piece="11 5/16")
    assert blank["answers"] == fit(96, "11 5/16", "3/32")["answers"]
    assert blank["answers"] != fit(96, "11 5/16", "1/8")["answers"]


def test_a_piece_longer_than_the_stick_does_not_fit_and_it_says_what_is_missing():
    said = fit(96, 100)
    assert (texts(said)["pieces"], texts(said)["missing"]) == ("0", "4″")
    assert (texts(said)["left"], texts(said)["cuts"]) == ("96″", "0")


def test_trims_that_take_the_whole_stick_are_impossible():
    said = ask("how_many_fit", stick="4", piece="1", first_trim="2", last_trim="2")
    assert errors(said)["first_trim"]["kind"] == "impossible"


def test_bad_fields_are_each_told_of():
    said = errors(ask("how_many_fit", stick="", piece="0", kerf="2"))
    assert {field: error["kind"] for field, error in said.items()} == {
        "stick": "missing",
        "piece": "range",
        "kerf": "range",
    }


@pytest.mark.parametrize(("piece", "short"), [("12", False), ("7 31/32", True), ("47", True)])
def test_short_pieces_and_short_offcuts_bring_their_caution(piece, short):
    """Worked by hand: of 96, 7 × 12 leaves 11 1/8, and 2 × 47 leaves 1 3/4."""
    said = fit(96, piece)
    assert any("shorter than 8″" in caution for caution in said["cautions"]) == short


@pytest.mark.parametrize("piece", ["1/16", "1/2", "5", "10 23/32", "95", "100"])
@pytest.mark.parametrize("trim", [0, 2])
def test_the_drawing_shows_every_piece_or_says_how_many(piece, trim):
    said = fit(96, piece, first=trim, last=trim)
    drawn, count = said["drawing"], int(texts(said)["pieces"])
    left, top, right, bottom = drawn["box"]
    assert 1 <= (right - left) / (bottom - top) <= 3.2
    stock = [each for each in drawn["shapes"] if each.get("role") == "stock"]
    labels = [each["text"] for each in drawn["shapes"] if each["kind"] == "label"]
    assert len(stock) == count or f"{count} pieces" in labels
    assert drawn["words"].startswith(f"A stick 96″ long gives {count} piece")
    cuts = [each for each in drawn["shapes"] if each.get("role") == "cut"]
    assert len(cuts) <= 60
    assert bool(cuts) == (count > 0)


def test_a_trim_with_its_kerf_is_named_and_drawn_so():
    drawn = fit(96, "10 23/32", first="1/2")["drawing"]
    texts = [each["text"] for each in drawn["shapes"] if each["kind"] == "label"]
    assert "trim, kerf included" in texts
    first, *_ = [each["from"][0] for each in drawn["shapes"] if each.get("role") == "cut"]
    assert first == pytest.approx(3 / 8)  # the blade takes the last 1/8 of the trim
    left, _, right, _ = drawn["box"]
    letter = (right - left) / 328 * 8.5
    for each in drawn["shapes"]:
        if each["kind"] == "label" and each["at"][1] < 0:
            half = len(each["text"]) * letter / 2
            assert left <= each["at"][0] - half
            assert each["at"][0] + half <= right
