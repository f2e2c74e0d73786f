"""After less before is told of every kind of number, up and down, and never ends in an error."""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from projects import acts, begun, change, changed, view

from sawside.reckoners import RECKONERS

CROWN = {
    "found": "legs",
    "drop": "[Drop]",
    "projection": "2 1/16",
    "left_end": "inside",
    "left_corner": "90",
    "right_end": "square",
}


def follow_of(text, to, reckoner, values):
    """What a line shows of a reading corrected from one text to another."""
    document = acts(
        begun(),
        ("keep_reading", {"name": "Drop", "text": text}),
        ("keep_line", {"name": "Line", "reckoner": reckoner, "values": values}),
    )
    said = change(document, "correct", id="1", text=to)
    assert said["ok"], said
    return next(each for each in said["follows"] if each["name"] == "Line")


def test_an_angle_that_gets_smaller_is_told_with_a_minus():
    """In a square corner the miter is arctan sin arctan (2 1/16 / drop): 31.7087° at 2 5/8 and
    30.9638° at 2 3/4, by the machine's own functions."""
    difference = follow_of("2 5/8", "2 3/4", "crown", CROWN)["difference"]
    assert (difference["key"], difference["kind"]) == ("difference", "angle")
    assert difference["text"] == "≈ −0.74°"
    assert difference["words"] == "minus zero point seven four degrees"
    assert difference["dropped_text"] == "0.005° short"
    back = follow_of("2 3/4", "2 5/8", "crown", CROWN)["difference"]
    assert (back["text"], back["dropped_text"]) == ("≈ 0.74°", "0.005° short")


def test_a_count_that_gets_smaller_is_told_with_a_minus():
    values = {"stick": "[Drop]", "piece": "9"}
    difference = follow_of("96", "80", "how_many_fit", values)["difference"]
    assert (difference["text"], difference["words"]) == ("−2", "minus two")
    assert follow_of("80", "96", "how_many_fit", values)["difference"]["text"] == "2"


@pytest.mark.parametrize(
    ("sum_", "difference"),
    [("Drop / Wide", "−0.25"), ("Drop × Wide", "−4 in²"), ("Drop × Drop × Wide", "−28 in³")],
)
def test_a_number_that_is_no_length_has_a_difference_too(sum_, difference):
    """4/4 and 3/4; 16 and 12 square inches; 64 and 36 cubic ones."""
    document = acts(
        begun(),
        ("keep_reading", {"name": "Drop", "text": "4"}),
        ("keep_reading", {"name": "Wide", "text": "4"}),
        ("keep_reading", {"name": "Line", "text": sum_}),
    )
    said = change(document, "correct", id="1", text="3")["follows"]
    assert said[0]["difference"]["text"] == difference


def test_what_moves_by_more_than_a_mile_is_told_by_its_numbers_alone():
    document = acts(
        begun(),
        ("keep_reading", {"name": "Drop", "text": "5000 ft"}),
        ("keep_reading", {"name": "Line", "text": "Drop - 2500 ft"}),
        ("keep_reading", {"name": "Other", "text": "Line × 2"}),
    )
    said = change(document, "correct", id="1", text="1 in")
    assert said["ok"], said
    assert [each["difference"] and each["difference"]["text"] for each in said["follows"]] == [
        "−59999″",
        None,
    ]


def check_mended(document):
    """What can be mended is good once that was done; nobody is told of an inside fault."""
    seen = view(document, drawings=False)
    for piece in seen["pieces"]:
        if not piece["cut"]:
            continue  # A part that came with the change.
        told = piece["verdicts"][0]
        if told["verdict"] in ("cut down", "recut ends"):
            done = changed(document, "recut", id="2", part=piece["part"], which=told["which"])
            [now] = [
                each
                for each in view(done, drawings=False)["pieces"]
                if each["part"] == piece["part"]
            ]
            assert now["verdicts"][0]["verdict"] == "good", (told, now["verdicts"])


def _hung():
    """A question and a field of its example that can hang on a reading."""
    for key, reckoner in RECKONERS.items():
        for field in reckoner.fields:
            text = reckoner.example.get(field.key)
            if field.kind == "length" and isinstance(text, str) and text:
                yield pytest.param(key, field, text, id=f"{key} {field.key}")


@pytest.mark.parametrize(("key", "field", "text"), [*_hung()])
def test_no_reading_moved_up_or_down_ends_in_an_error_inside(key, field, text):
    """Every example, each of its pieces cut, with a length hung on a reading that is corrected."""
    values = RECKONERS[key].example | {field.key: "[Drop]"}
    document = changed(begun(), "keep_reading", name="Drop", text=text)
    document = changed(document, "keep_line", name="Line", reckoner=key, values=values)
    for piece in view(document, drawings=False)["pieces"]:
        document = changed(document, "cut", id="2", part=piece["part"], by=1)
    now = Fraction(view(document)["entries"][0]["headline"]["exact"])
    for by in (Fraction(1, 8), Fraction(-1, 8), -now / 7, -now):
        said = change(document, "correct", id="1", text=f"({text}) + ({by})")
        assert said["ok"] or said["error"]["kind"] != "internal", (said, by)
        if said["ok"]:
            check_mended(said["document"])


def told_of(first, second, *kept):
    """What follows when the reading Alcove is corrected from `first` to `second`, by name."""
    document = acts(begun(), ("keep_reading", {"name": "Alcove", "text": first}), *kept)
    said = change(document, "correct", id="1", text=second)
    assert said["ok"], said
    return {each["name"]: each for each in said["follows"]}


CASE = ("keep_reading", {"name": "Case", "text": "Alcove + 0"})


def test_a_change_below_a_mark_is_told_on_finer_marks_on_both_sides():
    """48 and 48 1/64 are both 48 on sixteenths."""
    case = told_of("48", "48 1/64", CASE)["Case"]
    assert (case["before"]["text"], case["after"]["text"]) == ("48″", "48 1/64″")
    assert case["difference"]["text"] == "1/64″"


def test_what_nobody_can_see_on_the_finest_marks_is_left_out():
    assert told_of("48", "48.001", CASE) == {}


def plain(text):
    """A text without the sign that it was rounded."""
    return text.replace("≈ ", "")


BY = st.sampled_from([Fraction(each, 256) for each in (1, 3, 4, 16, 64, 999)])
SIXTY_FOURTHS = st.integers(30 * 64, 60 * 64)
LINES = st.sampled_from(
    [
        ("mitered_length", {"known": "Alcove", "width": "2 1/4"}),
        (
            "mitered_length",
            {
                "known": "Alcove",
                "width": "2 1/4",
                "left_end": "other",
                "left_angle": "37",
                "right_end": "square",
            },
        ),
        ("equal_parts", {"whole": "Alcove", "parts": "7"}),
        ("shelf_layout", {"height": "Alcove", "shelf_count": "4", "thickness": "23/32"}),
        ("square", {"solve": "diagonal", "width": "Alcove", "height": "12"}),
        ("crown", CROWN | {"drop": "Alcove ÷ 20", "measured": "Alcove"}),
        ("edge_strip", {"panel": "Alcove", "thickness": "11/16"}),
        ("square", {"solve": "triangle", "along": "Alcove", "across": "80"}),
    ]
)


@given(LINES, SIXTY_FOURTHS, BY)
@settings(max_examples=150)
def test_no_number_is_told_to_change_into_itself(line, first, by):
    reckoner, values = line
    kept = ("keep_line", {"name": "Line", "reckoner": reckoner, "values": values})
    first = Fraction(first, 64)
    begin = acts(begun(), ("keep_reading", {"name": "Alcove", "text": f"{first}"}))
    said = change(changed(begin, kept[0], **kept[1]), "correct", id="1", text=f"{first + by}")
    assert said["ok"], said
    for each in said["follows"]:
        if each["difference"]:
            assert plain(each["before"]["text"]) != plain(each["after"]["text"])
            assert any(digit in each["difference"]["text"] for digit in "123456789")
        else:
            alike = plain(each["before"]["text"]) == plain(each["after"]["text"])
            assert each["others"] or not alike
        for other in each["others"]:
            assert plain(other["before"]) != plain(other["after"])
            assert not other["difference"] or any(d in other["difference"] for d in "123456789")
