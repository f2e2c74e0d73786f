"""How sure angles, counts and numbers are, beside oracles that only know the trade's formulas.

Partial derivatives are worked by hand; random readings within their bounds (a fixed start of the
random numbers) must never leave the worst case.
"""

import random
from fractions import Fraction
from math import acos, degrees, radians, sin, sqrt

import pytest
from asking import exact
from projects import acts, answered, ask, begun, changed

from sawside.reckoners import RECKONERS

HALF = 1 / 32
"""Half of a sixteenth, in inches."""


def sure(document, identity, **more):
    return answered("sure", document, id=identity, **more)


def with_line(reckoner, values, **readings):
    """A project with readings, and a line whose id comes after theirs."""
    document = acts(
        begun(),
        *(("keep_reading", {"name": name, "text": text}) for name, text in readings.items()),
        ("keep_line", {"name": "Line", "reckoner": reckoner, "values": values}),
    )
    return document, str(len(readings) + 1)


def number(value):
    """The number in the text of an angle or a plain number."""
    return float(value["text"].removeprefix("≈ ").split("°")[0].split(" ")[0].replace("−", "-"))


def corner():
    values = {"found": "lengths", "one_leg": "[A]", "other_leg": "[B]", "across": "[C]"}
    return with_line("corner_setting", values, A="24", B="18", C="30 1/8")


def between(a, b, c):
    """The angle between two legs by the law of cosines, in degrees."""
    return degrees(acos((a * a + b * b - c * c) / (2 * a * b)))


def test_an_angle_is_told_in_degrees_by_the_derivatives_of_the_law_of_cosines():
    """dC/dc = c ÷ (a b sin C), dC/da = −(a − b cos C) ÷ (a b sin C), and b as a."""
    a, b, c = 24, 18, 30.125
    turn = radians(between(a, b, c))
    area = a * b * sin(turn)
    cosine = (a * a + b * b - c * c) / (2 * a * b)
    slopes = [c / area, (a - b * cosine) / area, (b - a * cosine) / area]
    moves = [degrees(slope * HALF) for slope in slopes]
    said = sure(*corner(), answer="between")
    assert said["value"]["kind"] == "angle"
    assert number(said["worst"]["by"]) == pytest.approx(sum(moves), abs=0.006)
    assert number(said["likely"]["by"]) == pytest.approx(
        sqrt(sum(move**2 for move in moves)), abs=0.006
    )
    assert said["said"] == "≈ 90.5°, probably within ≈ 0.18°, ≈ 0.3° at the outside."
    assert [each["name"] for each in said["readings"]] == ["C", "A", "B"]
    shares = [float(each["share"].removesuffix("%")) for each in said["readings"]]
    squares = sum(move**2 for move in moves)
    assert shares == pytest.approx([100 * move**2 / squares for move in moves], abs=0.6)


def test_no_readings_within_their_bounds_leave_the_worst_case():
    chance = random.Random(7)
    worst = sure(*corner(), answer="between")["worst"]
    low, high = number(worst["low"]), number(worst["high"])
    seen = [
        between(*(read + chance.uniform(-HALF, HALF) for read in (24, 18, 30.125)))
        for _ in range(2000)
    ]
    assert low - 0.006 <= min(seen) <= max(seen) <= high + 0.006
    assert max(seen) - min(seen) > 0.7 * (high - low)


def test_a_small_angle_that_readings_hardly_move_is_not_told_as_none():
    document = changed(corner()[0], "describe", id="3", fineness="1/64")
    for other in ("1", "2"):
        document = changed(document, "correct", id=other, text="400")
    document = changed(document, "correct", id="3", text="500")
    said = sure(document, "4", answer="setting")
    assert said["said"].endswith("probably within less than 0.01°, less than 0.01° at the outside.")


def test_a_difference_without_its_sign_is_unsure_by_both_diagonals_together():
    """(p² − q²) ÷ 4w of p = q = 50, w = 40: a move of h is 2 p h ÷ 4w, of both twice that."""
    values = {"solve": "out", "bottom": "40", "side": "30", "rising": "[P]", "falling": "[Q]"}
    said = sure(*with_line("square", values, P="50", Q="50"))
    one = 2 * 50 * HALF / (4 * 40)
    assert float(exact(said["worst"]["high"])) == pytest.approx(2 * one, rel=1e-3)
    assert exact(said["worst"]["low"]) == 0
    assert said["likely"] is not None


def fitting(stick, piece):
    """Pieces of a stick, with cuts 1/8 wide."""
    values = {"stick": "[Stick]", "piece": "[Piece]", "kerf": "1/8"}
    return with_line("how_many_fit", values, Stick=stick, Piece=piece)


def test_a_count_is_told_as_its_range_without_a_root_of_squares():
    """4 × 11 29/32 + 3 × 1/8 = 48: a stick any shorter gives three."""
    said = sure(*fitting("48", "11 29/32"))
    assert said["said"] == (
        "4, between 3 and 4 at the outside. It goes in steps, so there’s no likely range."
    )
    assert (said["steps"], said["likely"], said["worst"]["by"]) == (True, None, None)
    assert [said["worst"][end]["text"] for end in ("low", "high")] == ["3", "4"]
    assert [each["share"] for each in said["readings"]] == [None, None]
    assert said["measure_again"]["said"].endswith("again: on its own it moves this from 3 to 4.")


def test_a_count_that_only_several_readings_together_change_is_told_so():
    """1/16 is left: the stick may be 1/32 shorter, four pieces 4 × 1/64 longer."""
    said = sure(*fitting("48 1/16", "11 29/32"))
    assert [said["worst"][end]["text"] for end in ("low", "high")] == ["3", "4"]
    assert [each["moves"]["text"] for each in said["readings"]] == ["0", "0"]
    assert said["measure_again"] is None


def test_a_count_far_from_its_steps_is_sure():
    said = sure(*fitting("48 1/2", "11 29/32"))
    assert said["said"] == "4: the readings behind it don’t change it."


def test_a_length_that_hangs_on_a_count_says_that_it_goes_in_steps():
    """What is left of 48 is 0; of 47 31/32 with three pieces 47 31/32 − 3 × (11 29/32 + 1/8)."""
    said = sure(*fitting("48", "11 29/32"), answer="left")
    assert said["steps"]
    assert said["likely"] is None
    assert "it could fall outside this range" in said["said"]
    most = 48 - Fraction(1, 32) - 3 * (12 - Fraction(3, 32) + Fraction(1, 8))
    assert exact(said["worst"]["high"]) == most


def test_how_many_times_one_length_goes_into_another_is_a_plain_number():
    """30 ÷ 8: at worst 1/32 ÷ 8 + 30 × (1/32) ÷ 8², about 0.0186."""
    document, _ = fitting("30", "8")
    document = changed(document, "keep_reading", name="Times", text="Stick ÷ Piece")
    said = sure(document, "4")
    assert number(said["worst"]["by"]) == pytest.approx(HALF / 8 + 30 * HALF / 64, abs=1e-3)
    area = changed(document, "keep_reading", name="Area", text="Stick × Piece")
    assert sure(area, "5")["worst"]["by"]["text"] == "≈ 1.188 in²"


def test_every_number_of_a_line_is_offered_and_none_that_is_words():
    document, identity = fitting("48", "11 29/32")
    which, rule = sure(document, identity)["fields"]
    assert [each["value"] for each in which["choices"]] == ["pieces", "left", "cuts", "missing"]
    assert [each["value"] for each in rule["choices"]] == ["", "h44", "I", "II", "III"]
    assert rule["choices"][1]["label"] == "NIST Handbook 44"
    corner_ = sure(*corner())["fields"][0]["choices"]
    assert "way" not in [each["value"] for each in corner_]
    for each in which["choices"]:
        said = sure(document, identity, answer=each["value"])
        assert (said["label"], said["asked"]["answer"]) == (each["label"], each["value"])


def test_a_reading_alone_offers_no_choice_of_numbers():
    document, _ = fitting("48", "11 29/32")
    assert [field["key"] for field in sure(document, "1")["fields"]] == ["tape"]


def test_one_of_a_list_is_told_with_its_own_name():
    values = {"height": "[High]", "shelf_count": "2", "thickness": "3/4", "case_parts": "inside"}
    document, identity = with_line("shelf_layout", values, High="44 1/2")
    said = sure(document, identity, answer="marks.2")
    assert said["label"] == "Shelf marks (Shelf 2)"
    assert exact(said["worst"]["by"]) == Fraction(2, 3) * Fraction(1, 32)


def test_a_reading_that_leaves_no_answer_is_named_and_hides_no_other_number():
    values = {"width": "[Wide]", "width_is": "outside", "joint": "fixed"}
    document, identity = with_line("shelf_length", values, Wide="1 9/16")
    document = changed(document, "describe", id="1", fineness="1/8")
    said = sure(document, identity)
    assert said["said"] == (
        "1/16″, but it’s at its limit. With Wide 1/16″ less there’s no answer: There’s no room "
        "left between the sides."
    )
    assert (said["worst"], said["likely"], said["readings"][0]["moves"]) == (None, None, None)
    assert said["measure_again"]["said"] == "Measure Wide again, or leave more room."
    assert len(said["fields"][0]["choices"]) == 4
    assert sure(document, identity, answer="width")["value"]["text"] == "1 9/16″"


def test_a_number_that_is_gone_when_a_reading_is_off_says_so_and_the_others_are_told():
    """Two shelves and three openings of 10 take 31 1/2 with the shelves of 3/4."""
    values = {"height": "[High]", "opening": "10", "thickness": "3/4", "case_parts": "inside"}
    document, identity = with_line("shelf_layout", values, High="31 1/2")
    said = sure(document, identity, answer="marks.2")
    assert said["said"].endswith("With High 1/32″ less there’s no such number.")
    assert sure(document, identity, answer="shelf_count")["said"].startswith(
        "2, between 1 and 2 at the outside."
    )


def test_a_line_that_answers_in_words_alone_has_no_number():
    example = RECKONERS["equilibrium_moisture"].example
    document, identity = with_line("equilibrium_moisture", example)
    error = ask("sure", document, id=identity)["error"]
    assert error["message"] == "This line has no number to check."
