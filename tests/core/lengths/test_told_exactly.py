"""What was typed is told as it was typed, and nothing that is not 0 is told as 0."""

import csv
import io
from fractions import Fraction

import pytest
from asking import reckon
from hypothesis import given
from hypothesis import strategies as st
from projects import acts, answered, begun, entry, headlines, view

import sawside
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.marks import GRIDS, exact_of, told_mark
from sawside.lengths.show import Show
from sawside.lengths.tape import stretch
from sawside.settings.settings import read_settings

MILLIMETERS = {"unit": "mm"}
PLY = {
    "width": "36 in",
    "width_is": "outside",
    "side_thickness": "[Ply]",
    "joint": "dado",
    "thickness": "[Ply]",
}


def read(text, **more):
    return sawside.handle({"do": "read", "text": text} | more)


def kept(text, settings=None):
    """A project with a reading of this text, `Ply`, and a shelf that is as thick."""
    document = begun() | {"settings": settings or {}}
    return acts(
        document,
        ("keep_reading", {"name": "Ply", "text": text}),
        ("keep_line", {"name": "Shelf", "reckoner": "shelf_length", "values": PLY}),
    )


AS_TYPED = pytest.mark.parametrize(
    ("text", "settings", "told"),
    [
        ("23/32", None, "23/32″"),
        ("45/64", None, "45/64″"),
        ("7/12", None, "7/12″"),
        ("0.718", None, "0.718″"),
        (".75", None, "3/4″"),
        ("18 mm", None, "18 mm"),
        ("18.25 mm", None, "18.25 mm"),
        ("18", MILLIMETERS, "18 mm"),
        ("18.25", MILLIMETERS, "18.25 mm"),
        ("23/32 in", MILLIMETERS, "23/32″"),
        ("23/32", {"mark": "1/2"}, "23/32″"),
        ("23/32", {"mark": ".01 in"}, "23/32″"),
    ],
)


@AS_TYPED
def test_a_reading_is_shown_as_it_was_typed_wherever_it_is_shown(text, settings, told):
    document = kept(text, settings)
    headline = entry(document, "Ply")["headline"]
    assert (headline["text"], headline["brief"], headline["dropped_text"]) == (told, told, "")
    assert Fraction(headline["mark"]) == Fraction(headline["exact"])
    assert headline["stack"]["unit"] == ("″" if told.endswith("″") else "mm")
    assert headline["words"]
    (link,) = answered("entry", document, id="1")["links"]
    assert link["text"] == told
    unit = (settings or {}).get("unit", "in")
    assert read(text, unit=unit, settings=settings or {})["kept"] == told


@pytest.mark.parametrize(
    ("text", "settings", "told"),
    [
        ("23/32", None, "23/32″"),
        ("0.718", None, "0.718″"),
        ("18 mm", None, "18 mm"),
        ("18.25", MILLIMETERS, "18.25 mm"),
        ("23/32 in", MILLIMETERS, "≈ 18.3 mm"),
    ],
)
def test_what_follows_a_reading_is_told_as_it_is_and_not_rounded(text, settings, told):
    """On the shop sheet, the labels and at the saw the thickness is the number of the reading."""
    document = kept(text, settings)
    (piece,) = view(document)["pieces"]
    assert piece["thickness"]["brief"] == told
    assert read("[Ply]", document=document, settings=settings or {})["stands_for"] == told
    table = answered("csv", document, what="parts")["text"]
    (row,) = csv.DictReader(io.StringIO(table, newline=""))
    assert row["Thickness"].replace('"', "″") == told.removeprefix("≈ ")
    labels = answered(
        "labels", document, paper="letter", unit="in", values={"columns": "2", "rows": "5"}
    )
    assert any(told in each for each in texts_in(labels))


def texts_in(data):
    """Every text that is in some data."""
    if isinstance(data, str):
        yield data
    elif isinstance(data, (dict, list)):
        for each in data.values() if isinstance(data, dict) else data:
            yield from texts_in(each)


@pytest.mark.parametrize(
    ("text", "settings", "told"),
    [
        ("37 9/16 ÷ 2", None, "18 25/32″"),
        ("37 9/16 ÷ 4", None, "9 25/64″"),
        ("37 9/16 ÷ 8", None, "4 11/16″"),
        ("37 ÷ 2", MILLIMETERS, "18.5 mm"),
        ("37 ÷ 4", MILLIMETERS, "9 mm"),
        ("1 ÷ 8", {"mark": ".01 in"}, "0.125″"),
        ("1/32", {"mark": "1/2"}, "1/32″"),
        ("1 ÷ 1000", None, "0.0010″"),
        ("1 ÷ 300000", None, "0.000003″"),
        ("1 mm ÷ 70", MILLIMETERS, "0.014 mm"),
        ("0", None, "0″"),
    ],
)
def test_an_exact_thirty_second_or_sixty_fourth_is_told_and_never_nothing(text, settings, told):
    """Arithmetic: half of 37 9/16 is 18 25/32, an eighth of it 4 89/128."""
    assert read(text, settings=settings or {})["value"]["text"] == told


lengths = st.fractions(min_value="-300", max_value=300, max_denominator=10**6)
marks = st.sampled_from(list(GRIDS))
FINEST_OF_KIND = {
    "in fraction": Fraction(1, 64),
    "in": Fraction(1, 1000),
    "mm": Fraction(10, 254) / 10,
}


def finest(grid):
    """The finest step on which a length is told exactly by somebody who marks on this grid."""
    return FINEST_OF_KIND["in fraction" if grid.division else grid.unit]


@given(lengths, marks)
def test_a_length_is_exact_on_fine_marks_or_within_half_a_mark(length, mark):
    grid = GRIDS[mark]
    told = told_mark(length, grid)
    assert abs(told.dropped) <= grid.step / 2
    assert (told.mark == 0) == (length == 0)
    if (length / finest(grid)).denominator == 1:
        assert told.dropped == 0
    else:
        assert told.dropped != 0


@given(lengths, marks)
def test_a_small_difference_is_never_told_as_nothing(length, mark):
    show = Show(read_settings({"mark": mark}))
    assert (on_fine_marks(length, show).mark == 0) == (length == 0)
    text = fine_text(abs(length), show)
    shown = text.removeprefix("≈ ").removesuffix("″").removesuffix(" mm")
    assert bool(shown.strip("0.")) == (length != 0)


def test_a_thirty_second_is_found_between_two_marks_of_a_tape_with_sixteenths():
    """Common practice, no source: what lies between two marks is found by eye."""
    tape = stretch(told_mark(Fraction(601, 32), GRIDS["1/16"]), GRIDS["1/16"])
    assert tape["words"] == "halfway between 18 3/4 and 18 13/16"
    assert len(tape["ticks"]) == 33
    quarter = stretch(told_mark(Fraction(1201, 64), GRIDS["1/16"]), GRIDS["1/16"])
    assert quarter["words"] == "a quarter of the way from 18 3/4 to 18 13/16"


@given(st.fractions(min_value="1/100", max_value=90, max_denominator=10**5), st.booleans())
def test_a_number_that_is_given_is_told_on_itself_or_rounded_and_said_so(value, metric):
    settings = read_settings({"unit": "mm"} if metric else {})
    rounded = Show(settings, [value]).rounded(value)
    assert exact_of(rounded) == value
    exact = (
        (not metric and (value * 64).denominator == 1)
        or (value * Fraction("25.4") * 100).denominator == 1
        or (not metric and (value * 10**4).denominator == 1)
    )
    assert exact == (rounded.direction == "exact")


def test_what_a_question_is_given_is_not_rounded_in_its_drawing():
    said = reckon("square", solve="diagonal", width="900 mm", height="35.46")
    told = " ".join(texts_in(said["drawing"]))
    assert "900 mm" in told
    assert "35.46″" in told


def test_a_sum_is_told_by_its_mark():
    document = acts(
        begun(),
        ("keep_reading", {"name": "Ply", "text": "18 mm"}),
        ("keep_reading", {"name": "Two", "text": "2 × Ply"}),
        ("keep_reading", {"name": "Same", "text": "Ply"}),
    )
    assert headlines(document) == {"Ply": "18 mm", "Two": "1 7/16″", "Same": "11/16″"}


@given(
    st.integers(1, 10**12 - 1),
    st.integers(1, 10**9),
    st.sampled_from([{"display": "mm"}, {"mark": ".01 in"}, {"unit": "mm"}, {"mark": "1 mm"}, {}]),
)
def test_however_small_it_is_told_in_text_and_in_words(part, shares, settings):
    """1/999999999989 in falls between all decimals that anybody would mark."""
    value = read(f"1/{part} in ÷ {shares}", settings=settings)["value"]
    for told in (value["text"], value["plain"], value["brief"]):
        assert "…" not in told
    assert value["words"]
    assert any(digit in value["text"] for digit in "123456789")


@pytest.mark.parametrize(
    ("text", "settings", "other", "decimals"),
    [
        ("0.001", None, "≈ 0.025 mm", "0.001"),
        ("0.04", MILLIMETERS, "≈ 0.0016″", "0.04"),
        ("1.078 − 1 1/16", None, "≈ 0.4 mm", "0.0155"),
        ("1 ÷ 30000000", None, "≈ 0.000001 mm", "0.00000003…"),
        ("0", None, "0 mm", "0"),
    ],
)
def test_the_other_unit_and_the_decimals_tell_how_little_it_is(text, settings, other, decimals):
    """By the inch of 25.4 mm: 0.0254 mm, 0.0015748 in, 0.3937 mm, 0.000000847 mm."""
    value = read(text, settings=settings or {})["value"]
    assert (value["other"], value["decimals"]) == (other, decimals)


@given(
    st.fractions(min_value="-1/50", max_value="1/50", max_denominator=10**7),
    st.sampled_from([{}, MILLIMETERS, {"mark": ".01 in"}, {"display": "ft-in"}, {"mark": "1/2"}]),
)
def test_nothing_on_the_pad_tells_0_of_what_is_not_nothing(length, settings):
    value = read(f"{length.numerator}/{length.denominator} in", settings=settings)["value"]
    for told in ("text", "brief", "plain", "other", "decimals"):
        assert any(digit in value[told] for digit in "123456789") == (length != 0), told


@pytest.mark.parametrize(
    ("text", "settings", "finer"),
    [
        ("1.078", None, "≈ 1 5/64″"),
        ("0.718", None, "≈ 23/32″"),
        ("1/3", None, "≈ 21/64″"),
        ("1.078 − 1 1/16", None, ""),
        ("45/64", None, ""),
        ("31 5/8", None, ""),
        ("1.078", {"mark": ".001 in"}, ""),
        ("27.38", MILLIMETERS, ""),
        ("18 in × 24 in", None, ""),
    ],
)
def test_a_calipers_decimal_has_its_sixty_fourth_beside_a_coarser_mark(text, settings, finer):
    """1.078 × 64 = 68.99, 0.718 × 64 = 45.95, 64 ÷ 3 = 21.33; 0.0155 is on its 64th already."""
    assert read(text, settings=settings or {})["finer"] == finer
