"""Sides of a sloping box, cut as told, close as solids; closed forms and degenerate slopes."""

import random
from fractions import Fraction
from math import asin, atan, cos, degrees, radians, sin, tan

import numpy as np
import pytest
from asking import ask, errors, exact, reckon
from at_the_saw import UP, both_ends, edge_of
from exactly import exactly
from solid import board, faces_meet, overlap, placed, rotation, same_place, translation, vector

from sawside.geometry.compound import lean_of_degrees, miter_and_tilt


def box(**more):
    return {"height": "6", "slope": "15", "size": "14", "thickness": "1/2"} | more


@pytest.mark.parametrize("sides", [3, 4, 5, 6, 8, 12, 24])
@pytest.mark.parametrize("slope", [0, 7.5, 15, 30, 45, 70])
def test_settings_are_those_of_the_closed_form(sides, slope):
    """Turned atan(sin A tan(180/n)), tilted asin(cos A sin(180/n)): solid geometry."""
    told = exactly("sloped_box", **box(sides=str(sides), slope=str(slope), size="400 in"))
    turn, lean = radians(180 / sides), radians(slope)
    assert told["miter"] == pytest.approx(degrees(atan(sin(lean) * tan(turn))))
    assert told["tilt"] == pytest.approx(degrees(asin(cos(lean) * sin(turn))))


@pytest.mark.parametrize("sides", [3, 4, 6, 12])
def test_upright_sides_are_those_of_a_plain_frame(sides):
    """180/n: plane geometry."""
    said = reckon("sloped_box", **box(sides=str(sides), slope="0"))["by_key"]
    assert said["miter"]["exact"] == "0"
    assert exact(said["tilt"]) * sides == 180
    assert said["top"]["text"] == said["bottom"]["text"] == "14″"


def test_sides_that_lie_almost_flat_come_near_to_flat_miters():
    told = exactly("sloped_box", **box(slope="85", height="1/4"))
    assert told["miter"] == pytest.approx(45, abs=0.2)
    assert told["tilt"] < 4


def test_a_lean_of_90_degrees_is_a_plain_flat_miter():
    """The law at its end, which no box and no crown reaches: 180/n, and an upright blade."""
    for corner, miter in ((90, 45), (60, 60), (120, 30)):
        assert miter_and_tilt(lean_of_degrees(Fraction(90)), Fraction(corner)) == (miter, 0)


def test_sides_that_reach_as_far_as_they_are_high_are_exact():
    """Worked by hand: at 45 a box 4 high is 8 wider; turned atan(sin 45), tilted asin(1/2) = 30."""
    said = reckon("sloped_box", found="reach", reach="4", height="4", size="20", thickness="1/2")
    by_key = said["by_key"]
    assert by_key["slope"]["exact"] == "45"
    assert by_key["tilt"]["exact"] == "30"
    assert by_key["miter"]["hundredth"] == "≈ 35.26°"
    assert exact(by_key["bottom"]["items"][0]) == 12


# ---- the oracle: boards laid at a saw as they are told, cut, and put together


def asked(rng, joint):
    sides = 4 if joint == "butt" else rng.choice([3, 4, 4, 5, 6, 8, 13])
    values = {
        "sides": str(sides), "wide": rng.choice(["top", "bottom"]), "joint": joint,
        "height": f"{rng.randint(16, 64)}/8 in", "slope": str(rng.choice([0, 12, 45, 33.3, 4.7])),
        "size_at": rng.choice(["top", "bottom"]), "size": f"{rng.randint(70, 120)} in",
        "thickness": f"{rng.randint(2, 8)}/8 in", "tilts": rng.choice(["left", "right", "both"]),
    }  # fmt: skip
    if sides == 4 and rng.random() < 2 / 3:
        values["other"] = f"{rng.randint(70, 120)} in"
    return values


def inches(text):
    top, _, bottom = text.removesuffix(" in").partition("/")
    return float(top) / float(bottom or 1)


def stands(values, told):
    """Brings a side that lies outside face up to its place: seen from outside, facing -y."""
    lean = radians(told["slope"]) * (1 if values["wide"] == "top" else -1)
    return placed((0, 0, 0), (1, 0, 0), (0, -sin(lean), cos(lean)))


def cut_sides(values, told):
    """Each kind of side, cut at both ends, its edges cut level, standing with its outer bottom
    edge on the x axis, the middle of it at the origin."""
    width, thick = told["slant"], inches(values["thickness"])
    up = stands(values, told)
    level = up.back.direction(UP)
    for (_, top), (_, bottom) in zip(told["top"], told["bottom"], strict=True):
        stock = board(width, thick).moved(translation(0, 0, -thick))
        setting = told["miter"], told["tilt"]
        made = both_ends(stock, (told["left"], told["right"]), width, setting, setting,
                         {"top": top, "bottom": bottom})  # fmt: skip
        for edge, long in (("top", top), ("bottom", bottom)):
            start, end = edge_of(made, width, edge)
            assert np.linalg.norm(end - start) == pytest.approx(long)
        middle = edge_of(made, width, "bottom").mean(axis=0)
        # The level cuts need wood past the face's edges: the blank is a little wider.
        cut = made_wider(made).cut("rim", level, (0, width, 0)).cut("foot", -level, (0, 0, 0))
        yield made, cut.moved(translation(*-middle)).moved(up)


def made_wider(piece):
    """The piece of a board so wide that its edges are yet to be cut: only faces and ends stay."""
    kept = [row for row, name in enumerate(piece.names) if name not in ("inside", "outside")]
    return type(piece)(
        tuple(piece.names[row] for row in kept), piece.normals[kept], piece.offsets[kept]
    )


@pytest.mark.parametrize("number", range(60))
def test_mitered_sides_close_around_the_box(number):
    values = asked(random.Random(f"mitered box {number}"), "miter")
    told = exactly("sloped_box", **values)
    kinds = [placed_ for _, placed_ in cut_sides(values, told)]
    longs = [long for _, long in told["bottom"]]
    sides = int(values["sides"])
    at, ring = vector(0, 0, 0), []
    for index in range(sides):
        side, long = kinds[index % len(kinds)], longs[index % len(kinds)]
        turn = rotation(UP, index * 360 / sides)
        along = turn.direction((1, 0, 0))
        ring.append(side.moved(turn).moved(translation(*(at + along * long / 2))))
        at = at + along * long
    assert same_place(at, (0, 0, 0))
    for index, side in enumerate(ring):
        after = ring[(index + 1) % sides]
        assert faces_meet(side, "right", after, "left")
        assert overlap(side, after) < 1e-6
        assert side.extent(UP) == pytest.approx((0, inches(values["height"])), abs=1e-7)
    for (_, long), key in zip(told[values["size_at"]], ("size", "other"), strict=False):
        assert long == pytest.approx(inches(values[key]))


@pytest.mark.parametrize("number", range(60))
def test_butted_sides_stand_between_those_that_run_through(number):
    values = asked(random.Random(f"butted box {number}"), "butt")
    told = exactly("sloped_box", **values)
    (_, through), (_, between) = cut_sides(values, told)
    # The outer size at the bottom, from what was asked: each side leans by its slope.
    lean = 2 * inches(values["height"]) * tan(radians(told["slope"]))
    lean *= 0 if values["size_at"] == "bottom" else 1 if values["wide"] == "top" else -1
    long = inches(values["size"]) - lean
    deep = inches(values.get("other", values["size"])) - lean
    front = through.moved(translation(0, -deep / 2, 0))
    end = between.moved(rotation(UP, 90)).moved(translation(long / 2, 0, 0))
    other = between.moved(rotation(UP, -90)).moved(translation(-long / 2, 0, 0))
    for one, side, two, face, way in (
        (front, "right", end, "face", 1), (front, "left", other, "face", 1),
        (end, "left", front, "back", -1), (other, "right", front, "back", -1),
    ):  # fmt: skip
        assert same_place(one.normal(side), way * two.normal(face))
        offsets = [
            each.offsets[each.names.index(name)] for each, name in ((one, side), (two, face))
        ]
        assert offsets[0] == pytest.approx(way * offsets[1])
    assert overlap(front, end) < 1e-6
    assert overlap(front, other) < 1e-6


@pytest.mark.parametrize("joint", ["miter", "butt"])
@pytest.mark.parametrize("number", range(30))
def test_a_blank_holds_its_side_with_edges_level_or_square(joint, number):
    values = asked(random.Random(f"blank {number}"), joint)
    told = exactly("sloped_box", **values)
    up = stands(values, told)
    for (square, level), (_, blank) in zip(cut_sides(values, told), told["blanks"], strict=True):
        level = level.moved(up.back)
        for side in (square, level):
            least, most = side.extent((1, 0, 0))
            assert most - least <= blank + 1e-7
        least, most = level.extent((0, 1, 0))
        assert most - least == pytest.approx(told["blank_width"])


def test_a_setting_that_is_a_hundredth_off_does_not_close():
    """The judge is not blind."""
    values = box(height="6 in", size="80 in", thickness="1/2 in", wide="top")
    told = exactly("sloped_box", **values)
    with pytest.raises(AssertionError, match="comparison failed"):
        list(cut_sides(values, told | {"miter": told["miter"] + 0.01}))
    ((_, side),) = cut_sides(values, told | {"tilt": told["tilt"] + 0.01})
    bottom = told["bottom"][0][1] / 2
    after = side.moved(rotation(UP, 90)).moved(translation(bottom, 0, 0))
    assert not faces_meet(side.moved(translation(0, -bottom, 0)), "right", after, "left")


def test_a_blank_is_told_on_the_next_mark_up():
    said = reckon("sloped_box", **box(slope="12", height="7 1/2"))["by_key"]
    assert said["blank_width"]["direction"] in ("exact", "light")
    assert said["blank_width"]["text"] == "7 13/16″"


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"height": ""}, "height", "missing"),
        ({"slope": "90"}, "slope", "range"),
        ({"sides": "2"}, "sides", "range"),
        ({"sides": "6", "joint": "butt"}, "joint", "impossible"),
        ({"sides": "6", "other": "12"}, "other", "impossible"),
        ({"slope": "45", "size": "12"}, "size", "impossible"),
        ({"slope": "45", "size": "20", "other": "8"}, "other", "impossible"),
        ({"slope": "15", "size": "4", "joint": "butt", "thickness": "1"}, "size", "impossible"),
        ({"thickness": "0"}, "thickness", "range"),
        ({"height": "6//2"}, "height", "unreadable"),
    ],
)
def test_bad_input_names_its_field_and_a_remedy(values, field, kind):
    error = errors(ask("sloped_box", **box(**values)))[field]
    assert error["kind"] == kind
    assert error["remedy"].endswith(".")


def test_the_pieces_are_counted():
    for values, counts in (
        ({"sides": "6"}, [6]),
        ({"other": "10"}, [2, 2]),
        ({"joint": "butt"}, [2, 2]),
    ):
        said = reckon("sloped_box", **box(**values))
        assert [part["count"] for part in said["parts"]] == counts


@pytest.mark.parametrize("values", [
    {}, {"slope": "0"}, {"slope": "80", "height": "1/2"}, {"wide": "bottom", "joint": "butt"},
    {"sides": "3", "wide": "bottom", "size": "60"},
])  # fmt: skip
def test_the_drawing_stays_in_its_box_and_tells_the_edges(values):
    said = reckon("sloped_box", **box(**values))
    for drawing in (said["drawing"], *(part["drawing"] for part in said["parts"])):
        left, top, right, bottom = drawing["box"]
        for shape in drawing["shapes"]:
            for x, y in shape.get("points", []):
                assert left <= x <= right
                assert top <= y <= bottom
    texts = " ".join(shape.get("text", "") for shape in said["drawing"]["shapes"])
    for edge in ("top", "bottom"):
        assert f"{edge} {said['by_key'][edge]['items'][0]['text']}" in texts
