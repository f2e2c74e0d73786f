"""What is told of a wrap: its pieces in their order, what cannot be, cautions and drawings."""

import pytest
from asking import as_drawn, ask, errors, reckon

import sawside
from tests.core.reckoners.miters.wraps import parts, stack, wrap


def test_pieces_are_named_for_the_person_at_the_saw_in_the_order_of_cutting():
    said = reckon("wrap", **wrap(layers=stack("3/4", "1/2"), left_corner="90.5", right_corner="89"))
    names = [part["name"] for part in said["parts"]]
    assert names[0] == "Layer 1: front"
    assert set(names[:3]) == {"Layer 1: front", "Layer 1: left return", "Layer 1: right return"}
    assert names[3] == "Layer 2: front"
    listed = said["by_key"]["pieces"]["items"]
    assert [item["label"] for item in listed] == [f"{n}. {name}" for n, name in enumerate(names, 1)]
    assert said["answers"][0]["exact"] == listed[0]["exact"]
    assert said["answers"][0]["text"] == said["parts"][0]["long_side"]["text"] == "38 3/8″"
    assert said["by_key"]["left_setting"]["exact"] == "179/4"
    assert "first" in said["by_key"]["order"]["text"]


def test_what_can_be_trimmed_in_place_comes_after_what_can_not():
    said = reckon("wrap", **wrap(right_side="none", left_side="self_return", left_depth="90"))
    assert [part["name"] for part in said["parts"]] == [
        "Left return",
        "Front",
        "Left mitered return",
    ]


def test_six_pieces_come_into_the_project_with_drawings():
    values = wrap(layers=stack("3/4", "1/2"), left_corner="90.5", right_corner="89")
    begun = sawside.handle(
        {"do": "change", "document": None, "act": {"act": "begin", "name": "Record cabinet"}}
    )
    kept = sawside.handle(
        {
            "do": "change",
            "document": begun["document"],
            "act": {"act": "keep_line", "name": "Base", "reckoner": "wrap", "values": values},
        }
    )
    pieces = sawside.handle({"do": "view", "document": kept["document"]})["pieces"]
    assert len(pieces) == 6
    assert {piece["name"] for piece in pieces} == {
        f"Base: Layer {layer}: {run}"
        for layer in (1, 2)
        for run in ("left return", "front", "right return")
    }
    for piece in pieces:
        assert "at the saw" in piece["drawing"]["words"]


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"left_side": "none", "right_side": "none"}, "left_side", "impossible"),
        ({"left_depth": "0"}, "left_depth", "range"),
        ({"left_depth": ""}, "left_depth", "missing"),
        ({"left_side": "none"}, "right_depth", "missing"),
        ({"left_corner": "180"}, "left_corner", "range"),
        ({"right_corner": "0"}, "right_corner", "range"),
        ({"left_side": "self_return", "left_depth": "3/4"}, "left_depth", "impossible"),
        ({"left_side": "board", "left_board": "2", "left_depth": "2"}, "left_depth", "impossible"),
        ({"around": "alcove", "width": "1"}, "layers", "impossible"),
        ({"stick": "38"}, "stick", "impossible"),
        ({"layers": []}, "layers", "missing"),
        ({"layers": [{"projection": "0"}]}, "layers", "range"),
        ({"layers": [{"projection": "3//4"}]}, "layers", "unreadable"),
        ({"layers": stack(*["1/8"] * 7)}, "layers", "range"),
    ],
)
def test_bad_input_names_its_field_and_a_remedy(values, field, kind):
    said = ask("wrap", **wrap(**values))
    error = errors(said)[field]
    assert error["kind"] == kind
    assert error["remedy"].endswith(".")


def test_the_layer_that_leaves_nothing_is_named():
    said = ask("wrap", **wrap(around="alcove", width="4", layers=stack("3/4", "3/2")))
    error = errors(said)["layers"]
    assert (error["row"], error["part"]) == (1, "projection")
    assert "4″" not in error["message"]


def test_the_wall_that_a_corner_off_square_leaves_is_told():
    """1 1/4 x cot 80 degrees = 0.2204 inch, from a table of cotangents: 0.17633."""
    values = wrap(left_corner="100", layers=stack("3/4", "1/2"))
    cautions = " ".join(reckon("wrap", **values)["cautions"])
    assert "≈ 7/32″ off it at the outside face" in cautions
    assert "right return is" not in cautions
    scribed = reckon("wrap", **values, left_scribe="1/4")["cautions"]
    assert "off it at" not in " ".join(scribed)


def test_short_pieces_and_self_returns_bring_their_cautions():
    plain = reckon("wrap", **wrap())["cautions"]
    short = reckon("wrap", **wrap(left_depth="7"))["cautions"]
    closed = reckon("wrap", **wrap(left_side="self_return"))["cautions"]
    assert any(
        "Left return, Right return" in each or "Right return, Left" in each for each in short
    )
    assert len(short) == len(closed) == len(plain) + 1
    assert all(any("maker" in each for each in said) for said in (plain, short, closed))


@pytest.mark.parametrize("where", ["case", "alcove"])
@pytest.mark.parametrize("ending", ["wall", "self_return", "none"])
@pytest.mark.parametrize("count", [1, 2, 6])
def test_every_drawing_stays_in_its_box_and_tells_both_sides(where, ending, count):
    said = reckon(
        "wrap",
        **wrap(
            around=where,
            left_side=ending,
            right_depth="15",
            left_corner="75",
            right_corner="120",
            layers=stack(*["3/4"] * count),
        ),
    )
    for drawing in (said["drawing"], *(part["drawing"] for part in said["parts"])):
        left, top, right, bottom = drawing["box"]
        assert 0.9 <= (right - left) / (bottom - top) <= 5
        for shape in drawing["shapes"]:
            for x, y in shape.get("points", []):
                assert left <= x <= right
                assert top <= y <= bottom
    for part in said["parts"]:
        texts = " ".join(shape.get("text", "") for shape in part["drawing"]["shapes"])
        for side in ("long point", "short point"):
            assert side in texts
        assert part["long_side"]["text"] in texts
        for side in ("left", "right"):
            assert part["ends"][side]["angle"].removesuffix("0°") in texts


def test_the_plan_tells_the_measured_corners_and_the_outermost_front():
    said = reckon("wrap", **wrap(left_corner="90.5", right_corner="89", layers=stack("3/4", "1/2")))
    texts = [shape.get("text") for shape in said["drawing"]["shapes"]]
    front = parts(said)["layer_2_front"]["long_side"]
    for text in ("90.5°", "89°", "front 36 7/8″", f"outside face {as_drawn(front)}", "layer 2"):
        assert text in texts
