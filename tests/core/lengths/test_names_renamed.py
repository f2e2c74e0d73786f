"""A new name is written where the old one was used, and nowhere else: not inside other names.

The texts are put together out of pieces, so that what is expected is known without any search.
"""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from projects import acts, begun, changed
from tallies import after, enter, name, texts, told, values

from sawside.errors import Refusal
from sawside.lengths.reading.names import Named
from sawside.lengths.reading.reader import read
from sawside.project.evaluation.vocabulary import longest_of, uses_beside

PLAIN = (
    "width, case width, case, width b, a width b, a, b, side 2, side, board mm, gap in, gap, Höhe, "
    "top of case, gap x"
).split(", ")
"""Names that contain each other, digits, words of units and of signs; all can stand bare."""

ODD = ["2", "3/4", "in", "x gap", "2 width", "side: a", "a (width)", "width, outside"]
"""Names of a project that only stand in brackets."""


def shouted(written):
    return written.upper() if written.upper().lower() == written.lower() else written


def written_as(called, bare):
    ways = [f"[{called}]", f"[ {shouted(called)} ]"] + ([called, shouted(called)] if bare else [])
    return st.sampled_from(ways).map(lambda written: (called, written))


def pieces(names):
    """A list of (name or None, text) that together are a sum of these names."""
    uses = [written_as(each, each in PLAIN) for each in names]
    number = st.sampled_from(["1", "7-13/16", "5 mm", "3 in"]).map(lambda text: (None, text))
    before = st.sampled_from(["", "2 × ", "1/2 of ", "−"]).map(lambda text: (None, text))
    term = st.tuples(before, st.one_of(number, *uses))
    joint = st.sampled_from([" + ", " − ", "+", " - "]).map(lambda text: (None, text))
    more = st.lists(st.tuples(joint, term), max_size=4)
    return st.builds(
        lambda first, rest: [*first, *(each for sign, term in rest for each in (sign, *term))],
        term,
        more,
    )


@st.composite
def renaming(draw, pool):
    """(names, the one that is changed, its new name, pieces)."""
    names = draw(st.lists(st.sampled_from(pool), min_size=2, max_size=6, unique_by=str.casefold))
    old = draw(st.sampled_from(names))
    new = draw(st.sampled_from([each for each in [*pool, "depth"] if each not in names]))
    return names, old, new, draw(pieces(names))


def joined(made):
    return "".join(text for _, text in made)


def expected(made, old, new):
    return "".join(f"[{new}]" if called == old else text for called, text in made)


@pytest.mark.parametrize(
    ("text", "follows"),
    [
        ("case width + 1", "case width + 1"),
        ("[a width b]", "[a width b]"),
        ("width + case width − [ WIDTH ]", "[depth] + case width − [depth]"),
        ("2 × width of 1", "2 × [depth] of 1"),
    ],
)
def test_a_line_renamed_is_renamed_in_no_other_name(text, follows):
    tally = None
    for called in ("width", "case width", "a width b"):
        said = after(None, tally, enter("31 5/8"))
        tally = after(None, said["tally"], name(said["lines"][-1]["id"], called))["tally"]
    before = after(None, tally, enter(text))
    said = after(None, before["tally"], name("1", "depth"))
    assert texts(said)[3] == follows
    assert values(said) == values(before)


@given(renaming(PLAIN))
def test_a_line_of_the_tally_is_renamed_where_it_is_used_and_nowhere_else(case):
    names, old, new, made = case
    tally = None
    for number, called in enumerate(names, 1):
        tally = after(None, tally, enter(f"{number} 1/8"), name(str(number), called))["tally"]
    before = told(None, tally, enter(joined(made)))
    assert before["ok"], before
    said = after(None, before["tally"], name(str(names.index(old) + 1), new))
    assert texts(said)[-1] == expected(made, old, new)
    assert values(said) == values(before)


@given(renaming([*PLAIN, *ODD]))
def test_an_entry_is_renamed_where_it_is_used_and_nowhere_else_in_project_and_tally(case):
    names, old, new, made = case
    text = joined(made)
    kept = [("keep_reading", {"name": each, "text": f"{at} 1/8"}) for at, each in enumerate(names)]
    document = acts(begun(), *kept, ("keep_reading", {"name": "sum of it", "text": text}))
    before = after(document, None, enter(text))
    document = changed(document, "rename", id=str(names.index(old) + 1), name=new)
    said = told(document, before["tally"])
    assert values(said) == values(before)
    assert document["entries"][-1]["text"] == expected(made, old, new)
    assert texts(said) == [expected(made, old, new)]


def test_a_name_that_would_make_a_line_too_long_is_refused_and_the_tally_stays_readable():
    tally = after(None, None, enter("1"), name("1", "a"), enter(" + ".join(["a"] * 49)))["tally"]
    refused = told(None, tally, name("1", "a long name"))["error"]
    assert (refused["kind"], refused["field"]) == ("range", "name")
    assert values(told(None, tally)) == [1, 49]


KNOWN = {each.casefold(): Named(Fraction(at + 2, 7), 1) for at, each in enumerate(PLAIN)}
TERMS = st.sampled_from([*PLAIN, "[width]", "[ A ]", "2", "3/4", "5 mm", "(gap", "a)"])
JOINTS = st.sampled_from([" + ", "−", " × ", " ÷ ", " of ", " x ", " x", " ", ") + ("])


@given(st.lists(st.tuples(TERMS, JOINTS), max_size=4), TERMS)
def test_what_the_reader_reads_is_read_alike_with_the_names_alone_that_are_found(begun, last):
    text = "".join(term + joint for term, joint in begun) + last
    found = uses_beside(text, KNOWN, longest_of(()))
    names = {
        use.written: KNOWN[use.written.casefold()]
        for use in found
        if use.written.casefold() in KNOWN
    }
    try:
        whole = read(text, "in", KNOWN)
    except Refusal:
        return
    again = read(text, "in", names)
    assert (again.value, again.power) == (whole.value, whole.power)
