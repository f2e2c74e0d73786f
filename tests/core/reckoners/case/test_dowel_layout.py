"""Dowel layout: known joints by hand, and every one drilled again as circles and slots."""

from fractions import Fraction
from itertools import combinations

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from tables import rows

KEY = "dowel_layout"
JOINT = {"rail": "2 1/4", "thickness": "3/4", "stile": "1 3/4"}


def items(said, key):
    """The exact lengths of an answer that is a list."""
    return [exact(each) for each in said["by_key"][key]["items"]]


@pytest.mark.parametrize(
    ("long", "deep"), [("2", "1 1/16″"), ("1 1/2", "13/16″"), ("1 1/4", "11/16″")]
)
def test_both_holes_are_an_eighth_longer_together_than_the_dowel(long, deep):
    """A 19th-century workshop handbook (Dowelling): the dowel is cut 1/8 in shorter than the two
    hole depths together. A two-inch dowel wants holes of an inch and a sixteenth."""
    said = reckon(KEY, **JOINT | {"stile": "3"}, dowel_length=long)["by_key"]
    assert said["depth"]["text"] == said["stop"]["text"] == deep
    assert 2 * exact(said["depth"]) - exact(said["dowel_length"]) == Fraction(1, 8)


def test_a_rail_of_two_and_a_quarter_has_two_dowels_as_by_hand():
    """A quarter of 2 1/4 is 9/16; the other one is 1 11/16 from the same edge. The hole is
    1 1/2 ÷ 2 + 1/16 = 13/16 deep, the bit sticks out 1 1/8 more through the guide, 1 15/16. It
    leaves 1 3/4 − 13/16 = 15/16, and (3/4 − 3/8) ÷ 2 = 3/16 at each face."""
    dowel = {"diameter": "3/8", "dowel_length": "1 1/2", "guide": "1 1/8"}
    said = reckon(KEY, **JOINT, **dowel)
    assert items(said, "centers") == [Fraction(9, 16), Fraction(27, 16)]
    assert items(said, "mirrored") == [Fraction(27, 16), Fraction(9, 16)]
    texts = {key: each["text"] for key, each in said["by_key"].items()}
    assert (texts["from_face"], texts["depth"], texts["stop"]) == ("3/8″", "13/16″", "1 15/16″")
    assert (texts["beyond"], texts["at_faces"]) == ("15/16″", "3/16″, 3/16″")
    assert (texts["apart"], texts["at_edge"]) == ("3/4″", "3/8″")
    assert said["verdict"] == "Dowel centers (3/8″ × 1 1/2″; holes 13/16″ deep, stop 1 15/16″)"
    assert "between" not in texts


@pytest.mark.parametrize(
    ("stock", "unit", "bit"),
    [
        ("3/4", "in", "3/8″"),
        ("23/32", "in", "5/16″"),
        ("18", "mm", "8.0 mm"),
        ("1 1/4", "in", "1/2″"),
    ],
)
def test_a_blank_diameter_is_the_thickest_common_one_up_to_half_of_the_stock(stock, unit, bit):
    """3/4 in stock: 1/4, 5/16 or 3/8 in; 18 mm: 6 or 8 mm: a third to a half (common practice, no
    source)."""
    joint = {"rail": f"60 {unit}", "stile": f"60 {unit}", "thickness": f"{stock} {unit}"}
    joint |= {} if unit == "mm" else {"rail": "3", "stile": "3"}
    assert reckon(KEY, {"unit": unit}, **joint)["by_key"]["bit"]["text"] == bit


@pytest.mark.parametrize("row", rows("dowels_for_stock.csv"), ids=lambda row: row["stock"])
def test_a_dowel_of_a_third_to_half_of_the_stock_is_taken_without_a_word(row):
    """That of a size more is refused."""
    unit = row["unit"]
    joint = {"rail": "6 in", "stile": "6 in", "thickness": f"{row['stock']} {unit}"}
    for dowel in row["dowels"].split():
        said = reckon(KEY, {"unit": unit}, **joint, diameter=dowel, dowel_length="2 in")
        assert len(said["cautions"]) == 4
    thick = ask(KEY, {"unit": unit}, **joint, diameter=row["thicker"], dowel_length="2 in")
    assert errors(thick)["diameter"]["kind"] == "impossible"


@pytest.mark.parametrize("row", rows("dowel_lengths.csv"), ids=lambda row: row["diameter"])
def test_a_blank_length_is_one_that_is_sold_as_the_stile_gets_narrower(row):
    """Both halves are 1/16 in or 1.5 mm from the bottoms, and an eighth is left past the hole."""
    unit, metric = row["unit"], row["unit"] == "mm"
    play, left = (
        (Fraction(3, 2), Fraction(127, 40)) if metric else (Fraction(1, 16), Fraction(1, 8))
    )
    joint = {"rail": "6 in", "thickness": "2 in", "diameter": f"{row['diameter']} {unit}"}
    for long in map(Fraction, row["lengths"].split()):
        stile = f"{long / 2 + play + left} {unit}"
        said = reckon(KEY, {"unit": unit}, **joint, stile=stile)["by_key"]
        assert exact(said["dowel_length"]) == (long * Fraction(5, 127) if metric else long)
        narrower = ask(KEY, {"unit": unit}, **joint, stile=f"{stile} - 1/100 in")
        if narrower["ok"]:
            found = {each["key"]: each for each in narrower["answers"]}
            assert exact(found["dowel_length"]) < exact(said["dowel_length"])
        else:
            assert errors(narrower)["stile"]["kind"] == "impossible"


@pytest.mark.parametrize(
    ("stile", "both", "long"),
    [
        ("1 1/2", "no", "2″"),
        ("1 1/8", "no", "1 1/2″"),
        ("1 3/4", "yes", "1 1/2″"),
        ("1 11/16", "yes", "1 1/4″"),
    ],
)
def test_a_blank_length_is_the_longest_common_one_that_leaves_an_eighth(stile, both, long):
    """3/8 dowels of 1 1/2 and 2 (common practice, no source): 1 1/16 + 1/8 needs 1 3/16, and two
    of 13/16 with 1/8 between them 1 3/4. A 32nd less takes a 1/4 dowel of 1 1/4."""
    said = reckon(KEY, **JOINT | {"stile": stile, "both": both})["by_key"]
    assert said["dowel_length"]["text"] == long


@pytest.mark.parametrize(
    ("values", "bit", "long"),
    [
        ({"stile": "1 1/2", "both": "yes"}, "1/4″", "1 1/4″"),
        ({"stile": "40 mm", "both": "yes", "thickness": "18 mm"}, "6.0 mm", "30.0 mm"),
        ({"stile": "45 mm", "both": "yes", "thickness": "18 mm"}, "8.0 mm", "35.0 mm"),
        ({"rail": "5/8"}, "5/16″", "1 1/2″"),
        ({"rail": "1/2"}, "1/4″", "1 1/4″"),
        ({"stile": "7/8"}, "1/4″", "1 1/4″"),
    ],
)
def test_blank_dowels_get_thinner_or_shorter_until_they_fit(values, bit, long):
    """The ordinary middle stile of 1 1/2: two holes of 1 1/4 ÷ 2 + 1/16 = 11/16 leave 1/8 between
    them. In 7/8 one of 13/16 would leave 1/16, 11/16 leaves 3/16; a rail of twice its dowel
    leaves half of it at each edge (common practice, no source)."""
    unit = "mm" if "mm" in str(values) else "in"
    said = reckon(KEY, {"unit": unit}, **{"rail": "2 1/4 in", "thickness": "3/4"} | values)
    texts = {key: each["text"] for key, each in said["by_key"].items()}
    assert (texts["bit"], texts["dowel_length"]) == (bit, long)
    assert not any("Only" in each or "diameters" in each for each in said["cautions"])


def test_a_stile_too_narrow_for_dowels_from_both_sides_says_so():
    said = ask(KEY, **JOINT | {"stile": "1", "both": "yes"})
    assert "from both sides" in said["error"]["message"]
    assert "both" not in ask(KEY, **JOINT | {"stile": "1/2"})["error"]["message"]


@pytest.mark.parametrize(
    ("rail", "count", "first"),
    [
        ("3/4", 1, "3/8"),
        ("1 1/4", 1, "5/8"),
        ("1 1/2", 2, "3/8"),
        ("6", 2, "1 1/2"),
        ("8", 3, "1 1/2"),
    ],
)
def test_a_narrow_rail_has_one_dowel_and_a_wide_one_more_than_two(rail, count, first):
    """Two of 3/8 need 3/8 + 9/16 + 3/8 = 1 5/16; 8 − 2 × 1 1/2 = 5 is more than 3 (common
    practice, no source)."""
    said = reckon(KEY, **JOINT | {"rail": rail}, diameter="3/8")
    assert said["by_key"]["dowels"]["text"] == str(count)
    assert said["by_key"]["centers"]["items"][0]["text"] == f"{first}″"
    assert any("One dowel" in each for each in said["cautions"]) == (count == 1)


def test_a_metric_joint_is_laid_out_in_millimeters():
    """60 ÷ 4 = 15 and 60 − 15 = 45; 40 ÷ 2 + 1.5 = 21.5; 40 − 21.5 = 18.5; (18 − 8) ÷ 2 = 5."""
    joint = {"rail": "60", "thickness": "18", "dowel_length": "40"}
    texts = {
        key: each["text"] for key, each in reckon(KEY, {"unit": "mm"}, **joint)["by_key"].items()
    }
    assert (texts["centers"], texts["depth"], texts["bit"]) == ("15 mm, 45 mm", "21.5 mm", "8.0 mm")
    assert (texts["beyond"], texts["at_faces"]) == ("18.5 mm", "5.0 mm, 5.0 mm")


def small(low, high):
    return st.fractions(min_value=low, max_value=high, max_denominator=32)


@settings(max_examples=200)
@given(
    small(1, 12),
    small("1/2", 2),
    small("1", 4),
    st.none() | small("1/8", "1"),
    st.none() | small("1/2", 3),
    st.none() | st.integers(1, 6),
    st.none() | small("1/8", 3),
    st.none() | small("1/8", 2),
    small(0, "1/4"),
    st.booleans(),
)
def test_no_joint_is_told_whose_holes_meet_or_come_out(
    rail, stock, stile, bit, long, count, inset, face, play, both
):
    """Drilled again: circles in the rail's end and slots in the stile, by their own geometry."""
    typed = {
        "rail": rail,
        "thickness": stock,
        "stile": stile,
        "diameter": bit,
        "dowel_length": long,
        "inset": inset,
        "from_face": face,
        "play": play,
    }
    values = {key: f"{each} in" for key, each in typed.items() if each is not None}
    values |= {"both": "yes" if both else "no"} | ({"count": str(count)} if count else {})
    said = ask(KEY, **values)
    if not said["ok"]:
        told = errors(said)
        assert all(each["kind"] == "impossible" for each in told.values()), told
        assert set(told) <= {*typed, "count"}
        return
    said |= {"by_key": {each["key"]: each for each in said["answers"]}}
    centers, mirrored = items(said, "centers"), items(said, "mirrored")
    diameter, depth, across = (exact(said["by_key"][key]) for key in ("bit", "depth", "from_face"))
    assert {one + other for one, other in zip(centers, mirrored, strict=True)} == {rail}
    assert 2 * diameter <= stock
    holes = [(center, across) for center in centers]
    for x, y in holes:
        for near, far in ((x, rail - x), (y, stock - y)):
            assert near > diameter / 2
            assert far > diameter / 2
    for (x, y), (other_x, other_y) in combinations(holes, 2):
        assert (x - other_x) ** 2 + (y - other_y) ** 2 > diameter**2
    slots = [(0, depth), *([(stile - depth, stile)] if both else [])]
    assert all(0 <= low < high < stile or 0 < low < high <= stile for low, high in slots)
    if both:
        assert slots[0][1] < slots[1][0]
        assert exact(said["by_key"]["between"]) == slots[1][0] - slots[0][1]
    assert exact(said["by_key"]["beyond"]) == stile - depth
    assert 2 * depth == exact(said["by_key"]["dowel_length"]) + 2 * play
    drawn = [shape for shape in said["drawing"]["shapes"] if shape["kind"] == "circle"]
    assert len(drawn) == 2 * len(holes)
    places = [shape["center"][1] for shape in drawn]
    assert places == pytest.approx([float(center) for center in centers] * 2, abs=1e-3)


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"diameter": "13/32"}, "diameter", "impossible"),
        ({"diameter": "3/8"}, "diameter", None),
        ({"thickness": "3/8"}, "thickness", "impossible"),
        ({"dowel_length": "3 3/8"}, "dowel_length", "impossible"),
        ({"dowel_length": "3 5/16"}, "dowel_length", None),
        ({"dowel_length": "1 5/8", "both": "yes"}, "dowel_length", "impossible"),
        ({"dowel_length": "1 9/16", "both": "yes"}, "dowel_length", None),
        ({"stile": "1/2"}, "stile", "impossible"),
        ({"stile": "1 3/16", "both": "yes"}, "stile", "impossible"),
        ({"stile": "1 1/4", "both": "yes"}, "stile", None),
        ({"from_face": "3/16"}, "from_face", "impossible"),
        ({"from_face": "9/16"}, "from_face", "impossible"),
        ({"inset": "3/16"}, "inset", "impossible"),
        ({"inset": "1", "count": "2"}, "inset", "impossible"),
        ({"inset": "2 1/4", "count": "1"}, "inset", "impossible"),
        ({"count": "6"}, "count", "impossible"),
        ({"rail": "3/8"}, "rail", "impossible"),
        ({"rail": "1/4"}, "rail", "impossible"),
        ({"rail": "1/2"}, "rail", None),
        ({"rail": "3/8", "diameter": "3/8"}, "diameter", "impossible"),
        ({"inset": "1 1/4"}, "inset", "impossible"),
        ({"inset": "1 1/4", "count": "1"}, "inset", "impossible"),
        ({"inset": "1 1/8", "count": "1"}, "inset", None),
        ({"count": "0"}, "count", "range"),
        ({"rail": "0"}, "rail", "range"),
        ({"play": "-1/8"}, "play", "range"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    """Two holes of 1 ÷ 2 + 1/16 with 1/8 between them take 1 1/4. A
    hole of 3 3/8 ÷ 2 + 1/16 = 1 3/4 comes through; two of
    1 5/8 ÷ 2 + 1/16 = 7/8 meet."""
    said = ask(KEY, **(JOINT | values))
    assert (None if said["ok"] else errors(said)[field]["kind"]) == kind


@pytest.mark.parametrize(
    ("values", "warned"),
    [
        ({"dowel_length": "3 5/16"}, "Only 1/32″ of the stile is left"),
        ({"dowel_length": "1 9/16", "both": "yes"}, "Only 1/16″ is left between the holes"),
        ({"dowel_length": "1 1/4", "diameter": "3/8"}, "less than two diameters"),
        ({"diameter": "3/16"}, "less than a third of the thickness"),
        ({"from_face": "1/4"}, "Only 1/16″ of wood is left at a face"),
        ({"inset": "1/4"}, "Only 1/16″ of wood is left at the rail’s edge"),
        ({"count": "3", "inset": "5/8"}, "Only 1/8″ of wood is left between two"),
        ({"count": "1"}, "One dowel lets the rail twist"),
        ({"play": "0"}, "no glue room"),
    ],
)
def test_what_weakens_the_joint_is_warned_of_first(values, warned):
    said = reckon(KEY, **JOINT | values)["cautions"]
    assert warned in said[0]
    assert len(reckon(KEY, **JOINT)["cautions"]) == 4


def test_the_cautions_say_how_both_parts_are_marked_and_defer_to_instructions():
    said = " ".join(reckon(KEY, **JOINT)["cautions"])
    assert "from the same edge, inside face down" in said
    assert "instructions for the drill and the doweling guide come first" in said
    assert "glue’s instructions" in said


def test_holes_from_both_sides_are_drawn_and_given_places_open_their_fields():
    values = {"inset": "1/2", "from_face": "5/16", "dowel_length": "1 1/2"}
    one, two = (reckon(KEY, **JOINT, **values, both=both)["drawing"] for both in ("no", "yes"))
    hidden = [
        sum(shape.get("role") == "hidden" for shape in drawing["shapes"]) for drawing in (one, two)
    ]
    assert hidden == [6, 12]
    opened = {shape["text"]: shape["field"] for shape in two["shapes"] if shape.get("field")}
    assert opened == {"1/2″": "inset", "5/16″": "from_face"}


def test_a_panel_a_hair_under_its_name_takes_the_dowel_of_its_name():
    """A 3/8 dowel is used in 3/4 stock, and in the 23/32 that it measures (common practice, no
    source)."""
    assert ask(KEY, rail="1 1/2", thickness="23/32", diameter="3/8")["ok"]
    assert not ask(KEY, rail="1 1/2", thickness="11/16", diameter="3/8")["ok"]
