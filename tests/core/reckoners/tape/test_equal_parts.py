"""Equal parts are marked each from its exact place, so that no error runs along the piece."""

from fractions import Fraction

import pytest
from asking import as_drawn, ask, errors, exact, items, reckon
from hypothesis import assume, given
from hypothesis import strategies as st

wholes = st.fractions(min_value=10, max_value=400, max_denominator=64)
counts = st.integers(min_value=2, max_value=30)
between = st.fractions(min_value="1/64", max_value="1/4", max_denominator=64)


def ask_parts(whole, parts, kind, width=None, **settings):
    typed = {kind: f"{width} in"} if width else {}
    return reckon(
        "equal_parts", settings, whole=f"{whole} in", parts=str(parts), between=kind, **typed
    )


def test_five_parts_of_36_and_an_eighth():
    """Worked by hand: 289/8 ÷ 5 = 289/40 = 7 9/40; the marks are 1, 2, 3 and 4 times that."""
    said = ask_parts("36 1/8", 5, "nothing")
    assert said["answers"][0]["exact"] == "289/40"
    shown = [item["text"] for item in said["by_key"]["marks"]["items"]]
    assert shown == ["7 1/4″", "14 7/16″", "21 11/16″", "28 7/8″"]
    assert said["by_key"]["difference"]["text"] == "1/16″"
    assert said["by_key"]["stepping"]["text"] == (
        "7 1/4″ stepped off 5 times ends 1/8″ over. Mark each one from the same end instead."
    )


def test_the_marks_lead():
    said = ask_parts("36 1/8", 5, "nothing")
    assert said["verdict"] == (
        "Mark from one end: ≈ 7 1/4″, ≈ 14 7/16″, ≈ 21 11/16″, ≈ 28 7/8″ (parts differ by 1/16″)"
    )
    assert ask_parts(36, 2, "nothing")["verdict"] == "Mark from one end: 18″"
    many = ask_parts(36, 9, "nothing")["verdict"]
    assert many == "Mark from one end: 4″, 8″, 12″, 16″, 4 more"


@given(wholes, counts)
def test_what_stepping_off_adds_up_is_told(whole, parts):
    """The oracle steps a pair of dividers along and looks where it comes out."""
    said = ask_parts(whole, parts, "nothing")["by_key"]
    if parts == 1:
        assert "stepping" not in said
        return
    place = sum(Fraction(said["part"]["mark"]) for _ in range(parts))
    way = "ends" if place == whole else "over" if place > whole else "short"
    assert (way in said["stepping"]["text"]) == (place != whole)
    assert ("is exact" in said["stepping"]["text"]) == (place == whole)


@given(wholes, counts)
def test_marks_alone_are_whole_multiples_of_the_part(whole, parts):
    said = ask_parts(whole, parts, "nothing")
    assert items(said, "marks") == [whole * number / parts for number in range(1, parts)]


@given(wholes, counts, between)
def test_parts_and_kerfs_laid_end_to_end_fill_the_whole(whole, parts, kerf):
    """The oracle lays the parts out one after another."""
    said = ask_parts(whole, parts, "kerf", kerf)
    part, place, expected = exact(said["by_key"]["part"]), Fraction(0), []
    for _ in range(parts - 1):
        expected.append(place + part)
        place += part + kerf
    assert place + part == whole
    assert items(said, "marks") == expected


@given(wholes, counts, between)
def test_a_gap_is_marked_at_both_sides(whole, parts, gap):
    said = ask_parts(whole, parts, "gap", gap)
    marks, part = items(said, "marks"), exact(said["by_key"]["part"])
    edges = [Fraction(0), *marks, whole]
    assert {b - a for a, b in zip(edges[::2], edges[1::2], strict=True)} == {part}
    assert {b - a for a, b in zip(edges[1:-1:2], edges[2:-1:2], strict=True)} == {gap}


@given(
    wholes,
    counts,
    st.sampled_from(["nothing", "kerf", "gap"]),
    between,
    st.sampled_from(["1/4", "1/16", "1/64"]),
)
def test_parts_by_the_marks_differ_by_no_more_than_two_marks(whole, parts, kind, width, mark):
    """Each end of a part is off by half a mark at most, so two parts differ by two at most.

    Parts no longer than a mark may be refused, since marks leave nothing of some.
    """
    room = 0 if kind == "nothing" else width
    assume((whole - (parts - 1) * room) / parts > Fraction(mark))
    said = ask_parts(whole, parts, kind, room or None, mark=mark)
    sizes, part = items(said, "sizes"), exact(said["by_key"]["part"])
    step = Fraction(mark)
    assert all(abs(size - part) <= step for size in sizes)
    assert exact(said["by_key"]["difference"]) == max(sizes) - min(sizes) <= 2 * step
    filled = (parts - 1) * (0 if kind == "nothing" else width)
    if kind == "gap":
        marks = [Fraction(item["mark"]) for item in said["by_key"]["marks"]["items"]]
        filled = sum(b - a for a, b in zip(marks[::2], marks[1::2], strict=True))
    assert sum(sizes) + filled == whole


def test_parts_that_the_marks_leave_nothing_of_are_refused():
    said = ask("equal_parts", {"mark": "1/4"}, whole="1 in", parts="21", between="nothing")
    assert errors(said)["parts"]["kind"] == "impossible"


@given(wholes, counts)
def test_no_mark_is_off_by_more_than_half_a_mark_however_many_there_are(whole, parts):
    for item in ask_parts(whole, parts, "nothing")["by_key"]["marks"]["items"]:
        assert abs(Fraction(item["dropped"])) <= Fraction(1, 32)


def test_two_parts_meet_in_the_middle():
    assert items(ask_parts("37 9/16", 2, "nothing"), "marks") == [Fraction(601, 32)]


def test_what_lies_between_may_not_fill_the_whole():
    said = ask("equal_parts", whole="3", parts="4", between="gap", gap="1")
    assert errors(said)["parts"]["kind"] == "impossible"
    assert "3″" in errors(said)["parts"]["message"]


def test_a_gap_must_be_given_and_a_single_part_is_none():
    said = errors(ask("equal_parts", whole="3", parts="1", between="gap"))
    assert {field: error["kind"] for field, error in said.items()} == {
        "parts": "range",
        "gap": "missing",
    }


def test_a_blank_kerf_is_that_of_the_settings():
    values = {"whole": "36", "parts": "3", "between": "kerf"}
    blank = reckon("equal_parts", {"kerf": "3/32"}, **values)
    typed = reckon("equal_parts", kerf="3/32", **values)
    assert blank["answers"] == typed["answers"]


def test_cut_parts_bring_the_caution_for_short_pieces():
    assert any("6″" in caution for caution in ask_parts(36, 3, "kerf", "1/8")["cautions"])
    assert ask_parts(36, 3, "nothing")["cautions"] == []


@pytest.mark.parametrize("parts", [2, 5, 12, 40, 200])
@pytest.mark.parametrize("kind", ["nothing", "kerf", "gap"])
def test_the_drawing_shows_the_part_and_keeps_its_texts_apart(parts, kind):
    said = ask_parts(96, parts, kind, "3/8" if kind != "nothing" else None)
    drawn = said["drawing"]
    left, top, right, bottom = drawn["box"]
    assert 1 <= (right - left) / (bottom - top) <= 3
    texts = [each["text"] for each in drawn["shapes"] if each["kind"] == "dimension"]
    assert texts == [as_drawn(said["answers"][0]), "96″"]
    above = [each for each in drawn["shapes"] if each["kind"] == "label" and each["at"][1] < 0]
    letter = (right - left) / 328 * 7
    for one in above:
        for other in above:
            if one is not other and one["at"][1] == other["at"][1]:
                room = letter * (len(one["text"]) + len(other["text"])) / 2
                assert abs(one["at"][0] - other["at"][0]) >= room
    assert 1 <= len(above) <= 10
    assert "0" in [each["text"] for each in above]
    assert len([each for each in drawn["shapes"] if each["kind"] == "polygon"]) <= 60
