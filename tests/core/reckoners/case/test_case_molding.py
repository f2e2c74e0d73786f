"""Base, crown and strips on a case: lengths worked by hand, heights, and what can't be."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon

KEY = "case_molding"
CASE = {"case_width": "36", "case_depth": "15 1/2", "thickness": "3/4"}
FRAMED = CASE | {"frame": "3/4", "frame_left": "1/4"}
CROWN = {
    "molding": "crown",
    "built": "free",
    "case_width": "36",
    "case_depth": "15 1/2",
    "found": "legs",
    "drop": "2 5/8",
    "projection": "2 1/16",
}


def parts(said):
    """{name: (long side, short side)} as told."""
    return {
        part["name"]: (part["long_side"]["text"], part["short_side"]["text"])
        for part in said["parts"]
    }


def ends(said, name):
    (part,) = [each for each in said["parts"] if each["name"] == name]
    return part["ends"]["left"]["cut"], part["ends"]["right"]["cut"]


def items(said, key):
    return {each["label"]: each["text"] for each in said["by_key"][key]["items"]}


def test_around_a_free_case_the_outside_edge_grows_by_the_projection_at_each_miter():
    """Common practice, no source: at a 45 a piece grows by its thickness at each mitered end.

    36 + 2 × 3/4 = 37 1/2, and 15 1/2 + 3/4 = 16 1/4.
    """
    said = reckon(KEY, **CASE)
    assert said["verdict"] == "3 pieces, longest 37 1/2″"
    assert parts(said) == {
        "Front": ("37 1/2″", "36″"),
        "Left side": ("16 1/4″", "15 1/2″"),
        "Right side": ("16 1/4″", "15 1/2″"),
    }
    assert ends(said, "Front") == ("bevel", "bevel")
    assert ends(said, "Left side") == ("square", "bevel")
    assert ends(said, "Right side") == ("bevel", "square")
    assert items(said, "insides") == {
        "1. Front": "36″",
        "2. Left side": "15 1/2″",
        "3. Right side": "15 1/2″",
    }
    assert said["by_key"]["setting"]["text"] == "45°"


def test_it_wraps_the_face_frame_and_the_sides_are_packed_out_to_it():
    """By hand: 36 + 2 × 1/4 = 36 1/2 on the frame, 15 1/2 + 3/4 = 16 1/4 from its face back."""
    said = reckon(KEY, **FRAMED)
    assert items(said, "insides") == {
        "1. Front": "36 1/2″",
        "2. Left side": "16 1/4″",
        "3. Right side": "16 1/4″",
    }
    assert items(said, "packing") == {"Left side": "1/4″", "Right side": "1/4″"}
    assert "packing" not in reckon(KEY, **CASE)["by_key"]
    one = reckon(KEY, **FRAMED, frame_right="0", built="left")
    assert parts(one)["Front"] == ("37″", "36 1/4″")
    assert "packing" not in one["by_key"]  # the only side that shows is flush


def test_in_a_corner_one_side_has_molding_and_the_front_ends_square_at_the_wall():
    for wall, shows in (("left", "Right side"), ("right", "Left side")):
        said = reckon(KEY, **CASE, built=wall)
        assert parts(said) == {"Front": ("36 3/4″", "36″"), shows: ("16 1/4″", "15 1/2″")}
        square = 0 if wall == "left" else 1
        assert ends(said, "Front")[square] == "square"


def test_between_walls_it_is_one_piece_that_goes_in():
    """36 + 2 × 1/7 is 4.57 sixteenths past 36: nearest 36 5/16, which would not go in; halfway
    between marks, 36 9/32 does.
    """
    settings = {"mark": "1/16"}
    said = reckon(KEY, settings, built="walls", case_width="36", frame_left="1/7")
    assert said["verdict"] == "1 piece, ≈ 36 9/32″"
    assert said["answers"][0]["text"] == "36 9/32″"
    assert parts(said) == {"Front": ("36 9/32″", "36 9/32″")}
    assert {"pieces", "insides", "setting", "order"}.isdisjoint(said["by_key"])
    scribed = reckon(KEY, built="walls", case_width="36", scribe="1/4")
    assert scribed["answers"][0]["text"] == "36 1/2″"


def test_a_coped_end_runs_to_the_wall_and_is_cut_full():
    """36 + 2 × 1/5 is 6.4 sixteenths past 36: nearest 36 3/8, which would leave a gap."""
    settings = {"mark": "1/16"}
    said = reckon(KEY, settings, built="walls", case_width="36", frame_left="1/5", left_end="cope")
    assert said["answers"][0]["text"] == "36 7/16″"
    assert ends(said, "Front") == ("coped", "square")
    (front,) = said["parts"]
    assert exact(front["long_side"]) - exact(front["short_side"]) == Fraction(3, 4)
    assert any("cope" in each for each in said["cautions"])


def test_returns_are_as_long_as_the_projection_and_end_short_of_the_walls():
    """By hand: 36 − 2 × 2 = 32 from return to return, less 2 × 3/4 on the case."""
    short = {"left_end": "return", "right_end": "return", "left_short": "2", "right_short": "2"}
    said = reckon(KEY, built="walls", case_width="36", thickness="3/4", **short)
    assert parts(said) == {
        "Front": ("32″", "30 1/2″"),
        "Left mitered return": ("3/4″", "0″"),
        "Right mitered return": ("3/4″", "0″"),
    }
    assert any("too small to hold" in each for each in said["cautions"])
    assert "Cut mitered returns last" in said["by_key"]["order"]["text"]


def test_a_return_from_a_packed_side_reaches_the_case_behind_the_packing():
    """By hand: 3/4 + 1/4 = 1; the side is 15 1/2 + 3/4 − 1 − 3/4 = 14 1/2 on the packing."""
    said = reckon(KEY, **FRAMED, left_end="return", left_short="1")
    assert parts(said)["Left mitered return"] == ("1″", "1/4″")
    assert parts(said)["Left side"] == ("16″", "14 1/2″")


def test_a_strip_around_a_top_needs_no_case_below_it():
    said = reckon(KEY, molding="strip", case_width="37", case_depth="16", thickness="1/4")
    assert parts(said)["Front"] == ("37 1/2″", "37″")
    assert any("backer" in each for each in said["cautions"])
    assert "top_line" not in said["by_key"]


def test_the_line_to_strike_is_the_top_edge_of_a_base_and_the_bottom_edge_of_crown():
    """By hand: 3 1/2 + 4 1/4 = 7 3/4; 46 + 1/2 − 2 5/8 = 43 7/8."""
    said = reckon(KEY, **CASE, molding_height="4 1/4", bottom_at="3 1/2")
    assert said["by_key"]["top_line"]["text"] == "7 3/4″"
    assert said["parts"][0]["width"]["text"] == "4 1/4″"
    assert "top_line" not in reckon(KEY, **CASE)["by_key"]
    said = reckon(KEY, **CROWN, case_height="46", rise="1/2")
    assert said["by_key"]["bottom_line"]["text"] == "43 7/8″"
    assert "bottom_line" not in reckon(KEY, **CROWN)["by_key"]


def test_crown_has_its_bottom_edge_on_the_case_and_its_top_edge_further_out():
    """By hand: 36 + 2 × 2 1/16 = 40 1/8, 15 1/2 + 2 1/16 = 17 9/16."""
    said = reckon(KEY, **CROWN)
    assert parts(said) == {
        "Front": ("40 1/8″", "36″"),
        "Left side": ("17 9/16″", "15 1/2″"),
        "Right side": ("17 9/16″", "15 1/2″"),
    }
    assert items(said, "bottoms")["1. Front"] == "36″"
    assert items(said, "tops")["1. Front"] == "40 1/8″"
    assert ends(said, "Front") == ("compound", "compound")


@pytest.mark.parametrize(
    ("spring", "miter", "bevel"), [("38", "≈ 31.62°", "≈ 33.86°"), ("45", "≈ 35.26°", "30°")]
)
def test_crown_is_set_as_crown_charts_print_it(spring, miter, bevel):
    """The settings printed for springs of 38 and 45 at a square corner: shop practice."""
    values = CROWN | {"found": "angle", "spring": spring, "width": "3"}
    said = reckon(KEY, **values)
    assert said["verdict"].startswith(f"Miter {miter}, bevel {bevel}; ")
    assert said["by_key"]["miter"]["text"] == miter
    assert said["by_key"]["held"]["text"] == "45°"


def test_crown_between_walls_is_coped_or_square():
    between = CROWN | {"built": "walls"}
    square = reckon(KEY, **between)
    assert square["verdict"] == "1 piece, 36″"
    assert {"miter", "tops", "held"}.isdisjoint(square["by_key"])
    coped = reckon(KEY, **between, left_end="cope")
    assert parts(coped)["Front"] == ("36″", "33 15/16″")
    assert "Cope the left end along the line its miter leaves." in coped["parts"][0]["about"]


def test_a_corner_and_a_cope_cancel_exactly_where_the_spring_is_an_angle():
    values = CROWN | {"found": "angle", "spring": "38", "width": "3 1/2", "built": "left"}
    said = reckon(KEY, **values, left_end="cope")
    assert exact(said["by_key"]["tops"]["items"][0]) == 36


def test_what_to_buy_has_a_kerf_at_each_end_and_its_waste():
    """By hand: 36 + 2 × 1/8 = 36 1/4, and a tenth more is 39.875."""
    said = reckon(KEY, built="walls", case_width="36", kerf="1/8")
    assert said["by_key"]["stock"]["text"] == "39 7/8″"


def test_a_metric_project_starts_with_its_own_measures():
    settings = {"unit": "mm", "display": "mm", "mark": "1 mm"}
    said = reckon(KEY, settings, case_width="914", case_depth="394")
    assert parts(said)["Front"] == ("950 mm", "914 mm")


@pytest.mark.parametrize(
    ("more", "field", "words"),
    [
        ({"frame": "0", "frame_left": "1/4"}, "frame", "thickness is 0"),
        ({"left_end": "return", "left_short": "16"}, "left_short", "Left side: the ends take"),
        (
            {"built": "walls", "case_width": "1", "left_end": "cope", "right_end": "cope"},
            "case_width",
            "Front: the ends take",
        ),
        ({**CROWN, "rise": "2 5/8"}, "rise", "doesn’t reach down to the case"),
        ({**CROWN, "case_height": "2 1/2"}, "case_height", "down to the floor"),
        ({**CROWN, "found": "angle", "spring": "3", "width": "3"}, "spring", "under 5°"),
        ({**CROWN, "found": "angle", "spring": "38", "width": ""}, "width", "blank"),
        ({"case_depth": ""}, "case_depth", "blank"),
    ],
)
def test_what_can_not_be_is_refused_beside_its_field(more, field, words):
    error = errors(ask(KEY, **CASE | more))[field]
    assert words in error["message"]
    assert error["remedy"].endswith(".")


def test_the_plan_shows_each_piece_and_opens_the_fields():
    said = reckon(KEY, **FRAMED, left_end="return", left_short="1")
    shapes = said["drawing"]["shapes"]
    texts = {each.get("text") for each in shapes}
    assert {"1", "2", "3", "face 38″", "36″", "15 1/2″"} <= texts
    fields = {each.get("field") for each in shapes if each["kind"] == "dimension"}
    assert {"case_width", "case_depth"} <= fields
