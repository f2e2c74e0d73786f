"""The reader takes every customary form of a length, and says what is wrong with all others."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sawside.errors import Refusal
from sawside.lengths.reading.reader import read, read_angle, read_count, read_length

MM = Fraction(5, 127)

READ = [
    ("31", 31),
    ("31.5", Fraction(63, 2)),
    (".0625", Fraction(1, 16)),
    ("22.", 22),
    ("007", 7),
    ("5/8", Fraction(5, 8)),
    ("33/16", Fraction(33, 16)),
    ("5 7/12", Fraction(67, 12)),
    ("7 13/16", Fraction(125, 16)),
    ("7  13/16", Fraction(125, 16)),
    ("7-13/16", Fraction(125, 16)),
    ("7-13/16″", Fraction(125, 16)),
    ("7‑13/16", Fraction(125, 16)),
    ("7 33/16", Fraction(145, 16)),
    ("½", Fraction(1, 2)),
    ("⅔", Fraction(2, 3)),
    ("5½", Fraction(11, 2)),
    ("⅒", Fraction(1, 10)),
    ("5 ⅞″", Fraction(47, 8)),
    ("5-½", Fraction(11, 2)),
    ("3⁄4", Fraction(3, 4)),
    ("5³⁄₄", Fraction(23, 4)),
    ("5 ³⁄₄", Fraction(23, 4)),
    ("⁵/₈", Fraction(5, 8)),
    ("¹¹⁄₁₆", Fraction(11, 16)),
    ("¹¹⁄16", Fraction(11, 16)),
    ("⅟₈", Fraction(1, 8)),
    ('31"', 31),
    ("31″", 31),
    ("31”", 31),
    ("31''", 31),
    ("31’’", 31),
    ("31′′", 31),
    ("31“", 31),
    ("31in", 31),
    ("31 inch", 31),
    ("31 inches", 31),
    ("31 in.", 31),
    ("31 IN", 31),
    ("6'", 72),
    ("6′", 72),
    ("6’", 72),
    ("6 ft", 72),
    ("6 foot", 72),
    ("6 feet", 72),
    ("6ft.", 72),
    ("10'6", 126),
    ("10' 6", 126),
    ("10'6\"", 126),
    ("10'-6\"", 126),
    ("10 ft. 6 in.", 126),
    ("6'-7-9/32\"", Fraction(2537, 32)),
    ("6′ 7 9/32″", Fraction(2537, 32)),
    ("6'7½\"", Fraction(159, 2)),
    ("6 ft 7 9/32 in", Fraction(2537, 32)),
    ("6ft-7in", 79),
    ("2 yd", 72),
    ("2 yards 1 ft 3 in", 87),
    ("18 mm", 18 * MM),
    ("18mm", 18 * MM),
    ("4.5 cm", 45 * MM),
    ("2 m", 2000 * MM),
    ("1 m 20 cm", 1200 * MM),
    ("1 m 2 cm 3 mm", 1023 * MM),
    ("\u00a031\u2009in ", 31),
    ("\t31\n", 31),
    ("7-13/16 + 3", Fraction(173, 16)),
    ("3 - 5/16", Fraction(43, 16)),
    ("3-5", -2),
    ("3 − 5/16", Fraction(43, 16)),
    ("37 9/16-3/4", Fraction(589, 16)),
    ("6'-7'", -12),
    ("6' - 7\"", 65),
    ("6' -7\"", 65),
    ("3–5/16", Fraction(53, 16)),
    ("3−5/16", Fraction(43, 16)),
    ("2 × 3/4 + 31 5/8", Fraction(265, 8)),
    ("2*3", 6),
    ("2x3", 6),
    ("2 X 3", 6),
    ("2·3", 6),
    ("1/2 of 37 9/16", Fraction(601, 32)),
    ("1/2 OF 37 9/16", Fraction(601, 32)),
    ("37 9/16 ÷ 2", Fraction(601, 32)),
    ("37 9/16 / 2", Fraction(601, 32)),
    ("8 ÷ 1/2", 16),
    ("8 / 1/2", 16),
    ("1.5 / 3", Fraction(1, 2)),
    ("1/2.5", Fraction(2, 5)),
    ("(3 + 4) × 2", 14),
    ("-(3 + 4) × 2", -14),
    ("((((3))))", 3),
    ("-7-13/16", Fraction(-125, 16)),
    ("+3", 3),
    ("3 - -2", 5),
    ("2 × -3", -6),
    ("-½", Fraction(-1, 2)),
    ("2 + 3 × 4", 14),
    ("3 in × 4", 12),
    ("4 × 3 in", 12),
    ("3 + 2 mm", 3 + 2 * MM),
    ("12 in × 12 in ÷ 6 in", 24),
    ('2" × 3" × 4" ÷ 6" ÷ 2"', 2),
]


@pytest.mark.parametrize(("text", "inches"), READ)
def test_a_customary_form_is_read(text, inches):
    assert read_length(text).value == inches


@pytest.mark.parametrize(
    ("unit", "inches"), [("in", 4), ("ft", 48), ("mm", 4 * MM), ("cm", 40 * MM), ("m", 4000 * MM)]
)
def test_a_bare_number_is_in_the_unit_of_the_settings(unit, inches):
    assert read("4", unit).value == read("2 × 2", unit).value == read("8 ÷ 2", unit).value == inches
    assert read("4 + 1 in", unit).value == inches + 1
    assert read("6 in ÷ 4", unit).value == Fraction(3, 2)
    assert read("10'6", unit).value == 126


@pytest.mark.parametrize(
    ("text", "echo"),
    [
        ("7-13/16 + 3", "7 13/16″ + 3″"),
        ("3-5", "3″ − 5″"),
        ("10'6", "10′ 6″"),
        ("6'-7-9/32\"", "6′ 7 9/32″"),
        ("2x3/4+31 5/8", "2 × 3/4″ + 31 5/8″"),
        ("1/2 of 37 9/16", "1/2 of 37 9/16″"),
        ("37 9/16 / 2", "37 9/16″ ÷ 2"),
        ("(3+1in)*2", "(3″ + 1″) × 2"),
        ("18mm+.5", "18 mm + 0.5″"),
        ("-(5½)", "−(5 1/2″)"),
    ],
)
def test_the_echo_says_how_the_text_was_read(text, echo):
    assert read(text).echo == echo


REFUSED = [
    ("", "missing", 0),
    ("   ", "missing", 0),
    ("3//4", "unreadable", 2),
    ("1/", "unreadable", 1),
    ("/2", "unreadable", 0),
    ("3 5/0", "unreadable", 4),
    ("3 ÷ 0", "unreadable", 2),
    ("3 ÷ (2 - 2)", "unreadable", 2),
    ("3 5/16 7", "unreadable", 7),
    ("3 5", "unreadable", 2),
    ("½½", "unreadable", 1),
    ("7\" 6'", "unreadable", 3),
    ("3 mm 2 cm", "unreadable", 5),
    ("6' 2 mm", "unreadable", 3),
    ("1 m 20", "unreadable", 4),
    ('5" 3', "unreadable", 3),
    ("1,024", "unreadable", 1),
    ("1,5", "unreadable", 1),
    ("1e3", "unreadable", 1),
    ("1E-3", "unreadable", 1),
    ("2^3", "unreadable", 1),
    ("2²", "unreadable", 1),
    ("2**3", "unreadable", 2),
    ("٣", "unreadable", 0),
    ("３", "unreadable", 0),
    ("Ⅷ", "unreadable", 0),
    ("3 + ๓", "unreadable", 4),
    ("(3", "unreadable", 0),
    ("3 + (4", "unreadable", 4),
    ("3)", "unreadable", 1),
    ("()", "unreadable", 1),
    ("3(4)", "unreadable", 1),
    ("(3) 4", "unreadable", 4),
    ("3 +", "unreadable", 2),
    ("--3", "unreadable", 1),
    ("3 × × 4", "unreadable", 4),
    ("3 abc", "unreadable", 2),
    ("3 furlong", "unreadable", 2),
    ("in", "unreadable", 0),
    ("5\"'", "unreadable", 2),
    ("1/2/4", "unreadable", 3),
    ("1.2.3", "unreadable", 3),
    (".", "unreadable", 0),
    ("1234567890123", "unreadable", 0),
    ("1/1234567890123", "unreadable", 0),
    ("9" * 201, "unreadable", 0),
    ("6000 ft", "range", 0),
    ("-6000 ft", "range", 0),
    ("3 in + 3 in × 3 in", "unreadable", 5),
    ("3 in × 3 in + 1", "unreadable", 12),
    ("8 in ÷ 2 in + 3 in", "unreadable", 12),
    ("2 ÷ (3 in × 3 in)", "unreadable", 2),
    ("1 in × 1 in × 1 in × 1 in", "unreadable", 19),
    ("__import__('os')", "unreadable", 0),
    ("1.5/3", "unreadable", 3),
    ("31 5 + 2", "unreadable", 3),
    ("31.5/ 8", "unreadable", 4),
    ("3 + x", "unreadable", 4),
    ("3; 4", "unreadable", 1),
    ("😀", "unreadable", 0),
]


@pytest.mark.parametrize(("text", "kind", "at"), REFUSED)
def test_what_can_not_be_read_is_refused_at_its_place_with_a_remedy(text, kind, at):
    with pytest.raises(Refusal) as caught:
        read(text)
    refusal = caught.value
    assert (refusal.kind, refusal.at) == (kind, at)
    assert refusal.message.endswith((".", "?"))
    assert refusal.remedy.endswith(".")


@pytest.mark.parametrize(
    ("text", "remedy"),
    [
        ("3//4", "Write it as 3/4."),
        ("1,024", "Write 1.024, or the whole number in plain digits."),
        ("31,5", "Write 31.5."),
        ("0,125", "Write 0.125."),
        ("1200,125", "Write 1200.125."),
        ("1.024,5", "Write the number again, with one point before its decimals."),
        ("1,024.5", "Write the number again, with one point before its decimals."),
        ("1.2.3", "Write the number again, with one point before its decimals."),
        ("31_5", "Put a space, a sign or a number in its place."),
        ("31)5", "Open one, or put a space in its place."),
        ("7\" 6'", "Write feet before inches."),
        ("31.5/8", "Write 31 5/8 or 31.5 ÷ 8."),
        (".5/8", "Write 5/8 or .5 ÷ 8."),
        ("22./7", "Write 22 ÷ 7."),
        ("31 5 + 2", "Write / and the bottom number, or put a sign between the two."),
        ("3 5/16 7", "Put +, − or × between them."),
    ],
)
def test_the_remedy_fits_the_text(text, remedy):
    with pytest.raises(Refusal) as caught:
        read(text)
    assert caught.value.remedy == remedy


def test_a_length_times_a_length_is_an_area_and_no_length():
    assert (read("3 in × 4 in").value, read("3 in × 4 in").power) == (12, 2)
    assert read("12 in × 12 in × 1 in").power == 3
    with pytest.raises(Refusal, match="comes to an area"):
        read_length("3 in × 4 in")


def test_a_length_by_a_length_is_a_count_with_its_remainder():
    reading = read('96" ÷ 7 1/2"')
    assert (reading.value, reading.power) == (Fraction(64, 5), 0)
    assert reading.remainder == 6
    assert read("7 ÷ 2 in").remainder == 1


@pytest.mark.parametrize(
    ("text", "degrees"),
    [
        ("45", 45),
        ("22 1/2", Fraction(45, 2)),
        ("22.5°", Fraction(45, 2)),
        ("45 deg", 45),
        ("180/8", Fraction(45, 2)),
        ("90 - 22½ degrees", Fraction(135, 2)),
    ],
)
def test_an_angle_is_read_in_degrees(text, degrees):
    assert read_angle(text).value == degrees


@pytest.mark.parametrize("text", ["45 in", "45'", "1° × 1°", "", "forty"])
def test_what_is_no_angle_is_refused(text):
    with pytest.raises(Refusal):
        read_angle(text)


def test_a_count_is_a_whole_number():
    assert read_count("4").value == read_count("2 × 2").value == 4
    for text in ("4.5", "4 in", "1/2", ""):
        with pytest.raises(Refusal):
            read_count(text)


def outcome(text):
    """The reading of a text, or its refusal; anything else that is raised fails the test."""
    try:
        return read(text)
    except Refusal as refusal:
        return refusal


characters = st.text(
    alphabet=st.sampled_from("0123456789 ./-+×x*of'\"ftinm½⅞⁄³₄()÷,^eE°µ−"), max_size=40
)


@given(characters | st.text(max_size=60))
def test_random_text_raises_nothing_but_a_refusal_with_a_place_in_the_text(text):
    reading = outcome(text)
    if isinstance(reading, Refusal):
        assert reading.kind in ("missing", "unreadable", "range")
        assert 0 <= reading.at <= len(text)
    else:
        assert read(reading.echo).value == reading.value


numbers = st.fractions(min_value=0, max_value=400, max_denominator=64)


def written(number):
    whole, part = divmod(number, 1)
    return f"{whole} {part}" if whole and part else str(part or whole)


class Sum:
    """An independent evaluator: a random sum knows its own value by `fractions` alone."""

    def __init__(self, text, value):
        self.text = text
        self.value = value


def joined(pair):
    (left, right), sign = pair
    if sign == "÷":
        if right.value == 0:
            return left
        return Sum(f"({left.text}) ÷ ({right.text})", left.value / right.value)
    if sign == "×":
        return Sum(f"({left.text}) × ({right.text})", left.value * right.value)
    if sign == "+":
        return Sum(f"{left.text} + ({right.text})", left.value + right.value)
    return Sum(f"{left.text} - ({right.text})", left.value - right.value)


sums = st.recursive(
    numbers.map(lambda number: Sum(written(number), number)),
    lambda inner: st.tuples(st.tuples(inner, inner), st.sampled_from("+-×÷")).map(joined),
    max_leaves=6,
)


@given(sums)
def test_sums_agree_with_fractions(made):
    if len(made.text) > 200:
        return
    if abs(made.value) > 63360:
        with pytest.raises(Refusal, match="mile"):
            read(made.text)
    else:
        assert read(made.text).value == made.value


@given(st.lists(st.tuples(numbers, st.sampled_from("+-×")), min_size=1, max_size=10))
def test_times_binds_before_plus_without_parentheses(parts):
    text, total, product, plus = "", Fraction(0), None, 1
    for number, sign in parts:
        text += f"{written(number)} {sign} "
        product = number if product is None else product * number
        if sign != "×":
            total, product = total + plus * product, None
            plus = 1 if sign == "+" else -1
    text += "1"
    total += plus * (1 if product is None else product)
    if len(text) <= 200 and abs(total) <= 63360:
        assert read(text).value == total


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("(" * 99 + "1" + ")" * 99, 1),
        ("1-" * 99 + "1", -98),
        ("1+" * 99 + "1", 100),
        (" " * 199 + "1", 1),
        ("-(" * 50 + "1" + ")" * 50, 1),
    ],
)
def test_the_longest_texts_are_read_without_recursion(text, inches):
    assert read(text).value == inches


@pytest.mark.parametrize("text", ["1" * 200, "1 " * 100, "(" * 200, "/" * 200, "1'" * 100])
def test_the_longest_texts_that_mean_nothing_are_refused(text):
    with pytest.raises(Refusal):
        read(text)
