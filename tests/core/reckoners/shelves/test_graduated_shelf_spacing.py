"""Openings that get smaller upwards by a constant step or ratio, solved for any two blanks."""

from fractions import Fraction
from itertools import pairwise

import mpmath
import pytest
from asking import as_drawn, ask, errors, exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.core.oracles.brute_shelves import THICK

KEY = "shelf_layout"
counts = st.integers(min_value=1, max_value=8)
tops = st.fractions(min_value=1, max_value=20, max_denominator=16)
steps = st.fractions(min_value="1/8", max_value=3, max_denominator=16)
percents = st.sampled_from([40, 50, 60, 75, 80, 90])
BLANKS = [
    ("height", "lowest"),
    ("height", "highest"),
    ("height", "grade"),
    ("lowest", "highest"),
    ("lowest", "grade"),
    ("highest", "grade"),
    ("shelf_count", "height"),
    ("shelf_count", "lowest"),
]


def case_by_step(top, step, shelves):
    """Openings from the bottom up, and the whole form that they belong to."""
    openings = [top + step * number for number in range(shelves, -1, -1)]
    form = {"by": "step", "step": f"{step} in"}
    return openings, form


def case_by_ratio(top, percent, shelves):
    ratio = Fraction(percent, 100)
    openings = [top / ratio**number for number in range(shelves, -1, -1)]
    return openings, {"by": "ratio", "percent": str(percent)}


def filled(openings, form):
    shelves = len(openings) - 1
    return form | {
        "height": f"{sum(openings) + shelves * THICK} in",
        "shelf_count": str(shelves),
        "thickness": f"{THICK} in",
        "lowest": f"{openings[0]} in",
        "highest": f"{openings[-1]} in",
    }


def without(form, blanks):
    grade = "step" if form["by"] == "step" else "percent"
    return form | {grade if key == "grade" else key: "" for key in blanks}


@pytest.mark.parametrize("blanks", BLANKS, ids=" and ".join)
@settings(max_examples=40)
@given(top=tops, step=steps, shelves=counts)
def test_two_blanks_come_back_by_step(blanks, top, step, shelves):
    openings, form = case_by_step(top, step, shelves)
    said = reckon(
        KEY, {"mark": "1/64"}, layout="graduated", **without(filled(openings, form), blanks)
    )["by_key"]
    assert exact(said["lowest"]) == openings[0]
    assert exact(said["highest"]) == openings[-1]
    assert exact(said["step"]) == step
    assert said["shelf_count"]["text"] == str(shelves)
    assert exact(said["height"]) == sum(openings) + shelves * THICK


@pytest.mark.parametrize("blanks", BLANKS, ids=" and ".join)
@settings(max_examples=25)
@given(top=tops, percent=percents, shelves=st.integers(1, 4))
def test_two_blanks_come_back_by_ratio(blanks, top, percent, shelves):
    """A rational ratio is found as a fraction again, by whichever root."""
    openings, form = case_by_ratio(top, percent, shelves)
    if sum(openings) > 1000:
        return
    said = reckon(KEY, layout="graduated", **without(filled(openings, form), blanks))["by_key"]
    assert exact(said["lowest"]) == openings[0]
    assert exact(said["highest"]) == openings[-1]
    assert said["ratio"]["text"] == f"{percent}% of the one below"
    assert said["shelf_count"]["text"] == str(shelves)
    place, marks = Fraction(0), []
    for opening in openings[:-1]:
        marks.append(place + opening)
        place = marks[-1] + THICK
    assert [exact(item) for item in said["marks"]["items"]] == marks


def real(fraction):
    return mpmath.mpf(fraction.numerator) / fraction.denominator


@settings(max_examples=60)
@given(counts, tops, st.fractions(min_value="5/4", max_value=3, max_denominator=16))
def test_between_two_openings_the_ratio_is_a_root(shelves, top, times):
    """The oracle is mpmath: openings top x times**(n / shelves), added up."""
    lowest = top * times
    said = reckon(
        KEY,
        layout="graduated",
        by="ratio",
        shelf_count=str(shelves),
        thickness=f"{THICK} in",
        lowest=f"{lowest} in",
        highest=f"{top} in",
    )["by_key"]
    with mpmath.workdps(60):
        place = mpmath.mpf(0)
        for number, item in enumerate(said["marks"]["items"]):
            place += real(top) * mpmath.power(
                real(times), real(Fraction(shelves - number, shelves))
            )
            told = real(Fraction(item["mark"]))
            assert abs(told - place) <= mpmath.mpf(1) / 32
            assert abs(mpmath.mpf(item["decimals"].rstrip("…")) - place) <= mpmath.mpf("1e-6")
            place += real(THICK)


@settings(max_examples=60)
@given(counts, tops, st.fractions(min_value="17/16", max_value="15/8", max_denominator=16))
def test_a_given_highest_opening_fills_the_height_by_a_ratio(shelves, top, more):
    """The oracle bisects the ratio in mpmath and adds the openings up."""
    clear = top * (shelves + 1) * more
    said = reckon(
        KEY,
        layout="graduated",
        by="ratio",
        height=f"{clear + shelves * THICK} in",
        shelf_count=str(shelves),
        thickness=f"{THICK} in",
        highest=f"{top} in",
    )["by_key"]
    with mpmath.workdps(40):
        low, high = mpmath.mpf(1), real(clear / top)
        for _ in range(120):
            middle = (low + high) / 2
            total = mpmath.fsum(middle**power for power in range(shelves + 1)) * real(top)
            low, high = (middle, high) if total < real(clear) else (low, middle)
        place = mpmath.mpf(0)
        for number, item in enumerate(said["marks"]["items"]):
            place += real(top) * low ** (shelves - number)
            assert abs(mpmath.mpf(item["decimals"].rstrip("…")) - place) <= mpmath.mpf("1e-6")
            place += real(THICK)
    assert exact(said["marks"]["items"][-1]) == clear + (shelves - 1) * THICK - top
    openings = [exact(item) for item in said["openings"]["items"]]
    assert sum(openings) == clear
    division = Fraction(1, 8)
    assert all(one >= other - division for one, other in pairwise(openings))


@given(st.fractions(min_value=20, max_value=96, max_denominator=8), steps, tops)
def test_as_many_shelves_as_leave_the_least_opening_at_the_top(height, step, least):
    said = ask(
        KEY,
        layout="graduated",
        height=f"{height} in",
        by="step",
        step=f"{step} in",
        highest=f"{least} in",
        thickness=f"{THICK} in",
    )
    most = 0
    while True:
        more = most + 1
        if sum(least + step * n for n in range(more + 1)) + more * THICK > height:
            break
        most = more
    if not most:
        assert errors(said)["highest"]["kind"] == "impossible"
        return
    answers = said["by_key"]
    assert answers["shelf_count"]["text"] == str(most)
    assert exact(answers["highest"]) >= least
    assert exact(answers["lowest"]) - exact(answers["highest"]) == most * step


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"height": "40", "shelf_count": "2"}, "highest", "conflict"),
        (
            {"height": "40", "shelf_count": "2", "lowest": "15", "highest": "12"},
            "highest",
            "conflict",
        ),
        ({"height": "40", "lowest": "15", "step": "1"}, "highest", "conflict"),
        ({"height": "40", "lowest": "15", "highest": "12"}, "step", "conflict"),
        ({"height": "40", "shelf_count": "4", "step": "9"}, "step", "impossible"),
        ({"height": "40", "shelf_count": "4", "lowest": "3"}, "lowest", "impossible"),
        ({"height": "40", "shelf_count": "4", "lowest": "38"}, "lowest", "impossible"),
        ({"height": "40", "shelf_count": "60", "step": "1/8"}, "shelf_count", "impossible"),
        ({"height": "40", "step": "1", "highest": "39"}, "highest", "impossible"),
        ({"height": "1000", "step": "1/64", "highest": "1"}, "highest", "impossible"),
        ({"height": "40", "shelf_count": "0", "step": "1"}, "shelf_count", "range"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    error = errors(ask(KEY, layout="graduated", by="step", **values))[field]
    assert error["kind"] == kind
    assert error["remedy"].endswith(".")


@pytest.mark.parametrize(
    ("lowest", "highest"), [("40 1/8", ""), ("", "40 1/8"), ("2", ""), ("", "15")]
)
def test_no_ratio_fills_the_height_with_such_an_opening(lowest, highest):
    said = ask(
        KEY,
        layout="graduated",
        by="ratio",
        height="40",
        shelf_count="2",
        lowest=lowest,
        highest=highest,
    )
    assert errors(said)["lowest" if lowest else "highest"]["kind"] == "impossible"


def test_a_percent_may_have_a_fraction():
    said = reckon(
        KEY, layout="graduated", by="ratio", percent="87 1/2", shelf_count="1", lowest="16"
    )["by_key"]
    assert said["highest"]["text"] == "14″"


def test_the_drawing_tells_every_opening_and_mark():
    said = reckon(
        KEY,
        layout="graduated",
        height="41 1/4",
        shelf_count="2",
        thickness="23/32",
        by="step",
        step="1 1/2",
    )
    texts = {shape.get("text") for shape in said["drawing"]["shapes"]}
    shown = [*said["by_key"]["marks"]["items"], said["by_key"]["lowest"], said["by_key"]["highest"]]
    assert {as_drawn(each) for each in shown} <= texts
