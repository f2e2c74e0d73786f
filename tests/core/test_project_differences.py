"""After less before is told of every kind of number, up and down, and never ends in an error."""

from fractions import Fraction

import pytest
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
    assert difference["text"] == difference["hundredth"] == "≈ −0.74°"
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
        "−59999″", None,
    ]  # fmt: skip


def check_mended(document):
    """What can be mended is good once that was done; nobody is told of an inside fault."""
    seen = view(document, drawings=False)
    for piece in seen["pieces"]:
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
