"""A sum of the pad is kept whole: it comes to the tally's number and follows as the tally does.

Sums are worked by hand: 31 5/8 − 3 × 3/32 = 31 11/32, and half of it is 15 43/64.
"""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from projects import ask, change, changed, entry
from tallies import after, enter, name, project, told, values

MOST = 200  # characters of a text


def kept_of(document, tally, identity=None, text=None, of="one", **more):
    """What would be kept of a line, or of what is being typed; whatever the answer is."""
    return ask("tally_sum", document, tally=tally, id=identity, text=text, project=of, **more)


def keep(document, tally, identity, **more):
    """(the document that keeps a line as Kept, what was kept)."""
    said = kept_of(document, tally, identity, **more)
    assert said["ok"], said
    kept = {"name": "Kept", "text": said["text"], "unit": said["unit"]}
    return changed(document, "keep_reading", **kept), said


def exact(document):
    headline = entry(document, "Kept")["headline"]
    return headline and Fraction(headline["exact"])


def rails():
    """A tally of a rail, three kerfs off it, and half of what is left."""
    document = project(Rail="31 5/8")
    return document, after(
        document, None, enter("[Rail] − 3 × 3/32"), {"act": "step", "how": "half"}
    )


def test_a_chain_is_kept_with_its_names_and_follows_a_correction_that_lists_it():
    document, said = rails()
    document, kept = keep(document, said["tally"], "2")
    assert kept["text"] == "([Rail] − 3 × 3/32″) ÷ 2"
    assert kept["said"] == ""
    assert exact(document) == Fraction(1003, 64)
    corrected = change(document, "correct", id="1", text="32 5/8")
    assert [each["name"] for each in corrected["follows"]] == ["Kept"]
    assert exact(corrected["document"]) == Fraction(1035, 64)
    assert values(told(corrected["document"], said["tally"]))[1] == Fraction(1035, 64)


def test_what_is_being_typed_is_kept_with_the_lines_it_calls_written_out():
    document, said = rails()
    kept = kept_of(document, said["tally"], text="[2] + 1/8")
    assert kept["text"] == "([Rail] − 3 × 3/32″) ÷ 2 + 1/8″"
    assert kept_of(document, None, text="rail − 1/8")["text"] == "rail − 1/8"


@pytest.mark.parametrize(
    ("text", "kept"),
    [
        ("[sum] × 2", "([Rail] − 1/8″) × 2"),
        ("2 of [sum]", "2 of ([Rail] − 1/8″)"),
        ("10 − [sum]", "10″ − ([Rail] − 1/8″)"),
        ("10 + [sum]", "10″ + [Rail] − 1/8″"),
        ("[sum] − 10", "[Rail] − 1/8″ − 10″"),
        ("−sum", "−([Rail] − 1/8″)"),
        ("([sum]) ÷ 3", "([Rail] − 1/8″) ÷ 3"),
        ("[sum] ÷ [half]", "([Rail] − 1/8″) ÷ ([Rail] ÷ 2)"),
        ("[half] ÷ 3", "[Rail] ÷ 2 ÷ 3"),
        ("3 × [half]", "3 × ([Rail] ÷ 2)"),
        ("10 − [half]", "10″ − [Rail] ÷ 2"),
        ("[Rail] − [number]", "[Rail] − 3 1/4 mm"),
        ("[Rail] ÷ [number]", "[Rail] ÷ 3 1/4 mm"),
    ],
)
def test_parentheses_stand_where_they_count_and_a_bare_number_has_its_unit(text, kept):
    document = project(Rail="31 5/8")
    said = after(
        document,
        None,
        enter("[Rail] − 1/8"),
        name("1", "sum"),
        enter("Rail ÷ 2"),
        name("2", "half"),
    )
    said = after(
        document, said["tally"], enter("3 1/4"), name("3", "number"), settings={"unit": "mm"}
    )
    said = after(document, said["tally"], enter(text))
    after_keep, told_of = keep(document, said["tally"], "4")
    assert told_of["text"] == kept
    assert exact(after_keep) == values(said)[3]


def test_a_line_without_names_is_kept_as_it_was_typed_in_its_own_unit():
    document = project(Rail="31 5/8")
    tally = after(document, None, enter("300"), settings={"unit": "mm"})["tally"]
    document, kept = keep(document, tally, "1")
    assert (kept["text"], kept["unit"]) == ("300", "mm")
    assert exact(document) == Fraction(1500, 127)


def test_a_name_that_the_tally_and_the_project_have_is_kept_as_the_line_means_it():
    document = project(side="3/4", width="36")
    said = after(document, None, enter("1/2"), name("1", "side"), enter("[width] − 2 × side"))
    kept = kept_of(document, said["tally"], "2")
    assert kept["text"] == "[width] − 2 × 1/2″"
    renamed = changed(document, "rename", id="1", name="end")
    renamed = changed(renamed, "rename", id="2", name="side")
    assert kept_of(renamed, said["tally"], "2")["text"] == "[side] − 2 × 1/2″"


def test_a_sum_that_is_too_long_is_kept_with_numbers_for_what_has_no_names():
    document = project(Rail="31 5/8")
    numbers = " + ".join(["1/16"] * 28)
    said = after(document, None, enter(numbers), enter("[1] + [1]"), enter("Rail − [2]"))
    after_keep, kept = keep(document, said["tally"], "3")
    assert kept["text"] == "[Rail] − 3 1/2″"
    assert kept["said"] == ""
    assert exact(after_keep) == Fraction(225, 8)


def test_a_sum_that_is_too_long_whatever_is_done_keeps_its_number_and_says_so():
    document = project(Rail="1 5/8", Stile="2")
    said = after(
        document, None, enter("Rail + Stile"), *[enter(f"[{at}] + [{at}]") for at in range(1, 7)]
    )
    after_keep, kept = keep(document, said["tally"], "7")
    assert kept["text"] == "232″"
    assert kept["said"] == (
        "The whole sum is too long to save, so only its number is saved. It won’t follow Rail "
        "or Stile."
    )
    assert exact(after_keep) == values(said)[6]


def test_a_sum_whose_number_is_too_long_as_well_is_refused_with_a_remedy():
    document = project(Rail="1/9999991", Stile="1/9999973")
    said = after(
        document, None, enter("Rail + Stile"), *[enter(f"[{at}] + [{at}]") for at in range(1, 7)]
    )
    error = kept_of(document, said["tally"], "7")["error"]
    assert (error["kind"], error["field"]) == ("range", "text")
    assert "Save a line above it first" in error["remedy"]


@pytest.mark.parametrize(
    ("text", "words"), [("18 in × [1]", "ft²"), ("[1] ÷ 2 in", ""), ("2 in × 3 in × [1]", "board")]
)
def test_areas_volumes_and_counts_are_kept_as_what_they_are(text, words):
    document = project(Rail="31 5/8")
    said = after(document, None, enter("Rail − 1"), enter(text))
    after_keep, _ = keep(document, said["tally"], "2")
    assert exact(after_keep) == values(said)[1]
    assert words in entry(after_keep, "Kept")["headline"].get("other", "")


@pytest.mark.parametrize(
    ("asked", "kind"),
    [
        ({"id": "9"}, "unknown"),
        ({"id": ["1"]}, "message"),
        ({}, "message"),
        ({"text": 3}, "message"),
        ({"text": "[7] + 1"}, "unreadable"),
        ({"text": "3 +"}, "unreadable"),
        ({"text": ""}, "missing"),
        ({"id": "1", "project": "two"}, "missing"),
        ({"id": "1", "tally": {"schema": 9, "next": 1, "lines": []}}, "newer"),
    ],
)
def test_what_can_not_be_kept_is_refused_in_words(asked, kind):
    document, said = rails()
    message = {"tally": said["tally"], "project": "one"} | asked
    assert ask("tally_sum", document, **message)["error"]["kind"] == kind


def test_without_a_project_a_sum_is_kept_too():
    tally = after(None, None, enter("10 + 1/4"), {"act": "step", "how": "half"}, of=None)["tally"]
    assert kept_of(None, tally, "2", of=None)["text"] == "(10″ + 1/4″) ÷ 2"


NUMBERS = ["3", "1/8", "7-13/16", "10 mm", "2' 3", "½"]
COUNTS = ["2", "3/4", "1.5"]


@st.composite
def lines(draw):
    """Texts of lines that come to lengths, built from readings, lines above and numbers."""
    made = []
    for number in range(draw(st.integers(1, 6))):
        above = [f"[{at + 1}]" for at in range(number)]
        length = st.sampled_from([*NUMBERS, "Rail", "[Stile]", "[Top rail]", *(above * 3)])
        count = st.sampled_from(COUNTS)
        term = st.one_of(
            length,
            st.tuples(count, st.sampled_from([" × ", " of "]), length).map("".join),
            st.tuples(length, st.sampled_from([" ÷ ", " × "]), count).map("".join),
            st.tuples(length, length, length).map(lambda each: "{} ÷ {} × {}".format(*each)),
            st.tuples(length, length, length).map(lambda each: "{} × ({} ÷ {})".format(*each)),
            st.tuples(length, length, count).map(lambda each: "({} - {}) × {}".format(*each)),
        )
        signs = st.sampled_from([" + ", " − ", " - "])
        rest = st.lists(st.tuples(signs, term).map("".join), max_size=2)
        sign = draw(st.sampled_from(["", "", "−"]))
        made.append(sign + draw(term) + "".join(draw(rest)))
    return made


@given(lines(), st.lists(st.sampled_from(["in", "mm"]), min_size=6, max_size=6))
def test_what_is_kept_comes_to_the_number_of_the_tally_before_and_after_a_correction(made, units):
    document = project(**{"Rail": "31 5/8", "Stile": "4 1/3", "Top rail": "900 mm"})
    tally = None
    for text, unit in zip(made, units, strict=False):
        said = told(document, tally, enter(text), settings={"unit": unit})
        tally = said["tally"] if said["ok"] else tally
    if tally is None:
        return
    last = tally["lines"][-1]["id"]
    said = kept_of(document, tally, last)
    if not said["ok"]:
        assert said["error"]["kind"] == "range"
        return
    number = values(told(document, tally))[-1]
    kept = changed(document, "keep_reading", name="Kept", text=said["text"], unit=said["unit"])
    assert exact(kept) == number
    assert len(said["text"]) <= MOST
    if said["said"]:
        return
    for identity, text in (("1", "29 7/16"), ("2", "5"), ("3", "880 mm")):
        kept = changed(kept, "correct", id=identity, text=text)
        number = values(told(kept, tally))[-1]
        assert number is None or exact(kept) == number
