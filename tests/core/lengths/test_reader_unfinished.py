"""A text that is still being typed: told quietly what may follow, and never to join digits.

`31 5` is on its way to `31 5/8`. Whoever is told to take the space out cuts at 315.
"""

import re
from fractions import Fraction

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

import sawside
from sawside.errors import Refusal
from sawside.lengths.reading.kinds import LENGTH
from sawside.lengths.reading.names import Named
from sawside.lengths.reading.reader import (
    Reading,
    read,
    read_angle,
    read_count,
    read_length,
    read_number,
)


def outcome(text, names=None):
    """The reading of a text, or its refusal; anything else that is raised fails the test."""
    try:
        return read(text, "in", names)
    except Refusal as refusal:
        return refusal


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("31 5", "31 and 5 over what? Add / and the bottom number."),
        ("31 5/", "31 and 5 over what? Add the bottom number."),
        ("6' 7 9", "7 and 9 over what? Add / and the bottom number."),
        ("2 × 31 5", "31 and 5 over what? Add / and the bottom number."),
        ("5/", "5 over what? Add the bottom number."),
        ("5³", "³ over what? Add / and the bottom number."),
        ("3 +", "The sum ends after “+”. Type the next number."),
        ("1/2 of", "The sum ends after “of”. Type the next number."),
        ("37 9/16 /", "The sum ends after “/”. Type the next number."),
        ("(3", "A parenthesis isn’t closed. Add ) where it ends."),
        ("2 × (", "The parenthesis is open. Type what goes inside."),
        (".", "There’s a decimal point but no digits yet. Type the digits after it."),
        ("31 i", "“i” isn’t a unit yet. Keep going, as in in."),
        (
            "1 m 20",
            "The number after this unit needs its own unit. Add its unit, or put a sign between "
            "the two.",
        ),
        ("8 ÷ 0", "Can’t divide by 0. Use another number there."),
    ],
)
def test_a_text_that_only_has_to_go_on_is_told_so(text, said):
    with pytest.raises(Refusal) as caught:
        read(text)
    assert caught.value.as_data()["unfinished"] is True
    assert f"{caught.value.message} {caught.value.remedy}" == said


def test_a_text_that_no_more_typing_mends_is_not_called_unfinished():
    for text in ("", "3//4", "3 5/16 7", "31 5 + 2", "7\" 6'", "31.5/8", "3 furlong", "3)", "2^3"):
        with pytest.raises(Refusal) as caught:
            read(text)
        assert "unfinished" not in caught.value.as_data(), text


whole, top = st.integers(1, 999).map(str), st.integers(1, 63).map(str)
bottom = st.sampled_from(["2", "4", "8", "16", "32", "64", "12"])
inches = st.one_of(
    whole,
    st.builds("{}.{}".format, whole, whole),
    st.builds(".{}".format, whole),
    st.builds("{}/{}".format, top, bottom),
    st.builds("{} {}/{}".format, whole, top, bottom),
    st.builds("{}-{}/{}".format, whole, top, bottom),
    st.builds("{}½".format, whole),
    st.builds("{} ³⁄₄".format, whole),
)
measures = st.one_of(
    inches,
    st.builds("{}{}".format, inches, st.sampled_from(['"', "''", " in", " inches", " in.", "″"])),
    st.builds("{}'{}".format, whole, inches),
    st.builds("{}' {}\"".format, whole, inches),
    st.builds("{}'-{}\"".format, whole, inches),
    st.builds("{} ft {} in".format, whole, inches),
    st.builds("{} yd {} feet".format, whole, whole),
    st.builds("{} {}".format, inches, st.sampled_from(["mm", "cm", "m"])),
    st.builds("{} m {} cm {} mm".format, whole, whole, whole),
)
forms = st.recursive(
    measures,
    lambda inner: st.one_of(
        st.builds("{} {} {}".format, inner, st.sampled_from("+-−"), inner),
        st.builds("{} {} {}".format, inches, st.sampled_from(["×", "*", "x", "of"]), inner),
        st.builds("({}) {} {}".format, inner, st.sampled_from(["÷", "/"]), whole),
        st.builds("-({})".format, inner),
    ),
    max_leaves=4,
)


@given(forms)
def test_every_beginning_of_a_form_is_read_or_called_unfinished_and_never_joins_digits(text):
    assert isinstance(outcome(text), (Reading, Refusal))
    if isinstance(outcome(text), Refusal):  # such as a sum longer than a mile
        assert outcome(text).kind == "range"
    for end in range(1, min(len(text), 200)):
        said = outcome(text[:end])
        if isinstance(said, Refusal) and said.kind == "unreadable":
            assert said.unfinished, (text[:end], said.message)
            assert "space" not in said.remedy, text[:end]


EXAMPLE = re.compile(r" as in [^.]*| 0 to 9")
"""What a remedy holds that does not come of the text."""

HOSTILE = st.text(
    alphabet=st.sampled_from("0123456789 ./+-('\",)_~½³⁄₄٣×÷xin…^\u00a0"), max_size=14
)


def runs(text):
    return {*re.findall(r"[0-9]+", text)}


@pytest.mark.parametrize("reader", [read, read_angle, read_count, read_number, read_length])
@given(HOSTILE)
@example("31,5")
@example("1.024,5")
@example("31_5")
@example("31)5")
@example("1.2.3")
@example("31.5/8")
@example("3//45")
def test_no_remedy_ever_tells_to_move_digits_together(reader, text):
    try:
        reader(text)
    except Refusal as refusal:
        remedy = EXAMPLE.sub("", refusal.remedy)
        assert runs(remedy) <= runs(text), (text, remedy)
        at = refusal.at or 0
        between = text[at - 1 : at].isdigit() and text[at + 1 : at + 2].isdigit()
        if between and not text[at].isdigit():
            said = remedy.lower()
            assert not re.search(r"\b(take|leave|keep|remove|delete|join)\b", said), (text, remedy)


ENDINGS = [
    *("1", "/2", "/1", "⁄2", "5", ".5", " 1/2", "1 × 1 in", "1 in × 1 in", "1 in × 1 in × 1 in"),
    *(" × 1 in", " × 1 in × 1 in", "÷ 1 in", "÷ 1 in ÷ 1 in", "5 × 1 in", ""),
    *{name[cut:] for name in LENGTH.units for cut in range(len(name))},
    *("f 1", "F 1"),
]


@given(st.text(alphabet=st.sampled_from("0123456789 ./-+×x*of'\"ftinm½⅞⁄³₄()÷,^°−"), max_size=20))
def test_what_is_called_unfinished_can_be_finished(text):
    said = outcome(text)
    if isinstance(said, Refusal) and said.unfinished:
        unclosed = ")" * max(text.count("(") - text.count(")"), 0)
        tried = [outcome(f"{text}{ending}{unclosed}") for ending in ENDINGS]
        assert any(isinstance(each, Reading) or each.kind == "range" for each in tried), text


NAMES = {"side rail": Named(Fraction(31), 1)}


@pytest.mark.parametrize("text", ["s", "2 × sid", "side ra", "[", "[sid", "31 − [side"])
def test_the_beginning_of_a_name_in_a_sum_is_unfinished(text):
    said = outcome(text, NAMES)
    assert said.unfinished, said.message


@pytest.mark.parametrize("text", ["t", "2 × tide", "[top", "[side]"])
def test_what_begins_no_name_is_not(text):
    assert not outcome(text, NAMES).unfinished


@pytest.mark.parametrize(
    "message",
    [
        {"do": "read", "text": "31 5"},
        {"do": "tally", "act": {"act": "enter", "text": "31 5"}},
        {"do": "reckon", "reckoner": "middle", "values": {"last": "31 5"}},
    ],
)
def test_every_message_that_reads_says_that_a_text_is_unfinished(message):
    error = sawside.handle(message)["error"]
    assert error["unfinished"] is True
    assert error["message"].startswith("31 and 5 over what?")
