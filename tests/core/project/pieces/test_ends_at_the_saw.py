"""What is set for an end is told at the saw one thing after another, without what only explains."""

import re

import pytest
from asking import reckon

from sawside.reckoners import RECKONERS
from sawside.reckoners.declaration import End


@pytest.mark.parametrize(
    ("how", "setting", "steps"),
    [
        ("as marked", "", []),
        ("square", "0°", ["0°"]),
        ("flat", "45°", ["45°"]),
        ("edge", "44.75° left", ["44.75°", "swung left"]),
        ("compound", "≈ 31.71° ≈ 33.78°", ["miter ≈ 31.71°", "bevel ≈ 33.78°"]),
        ("coped", "45° right", ["bevel first", "45°", "swung right"]),
        ("square", "chamfer 3/16″", ["chamfered 3/16″"]),
    ],
)
def test_each_thing_that_is_set_stands_alone(how, setting, steps):
    assert End(how, setting).at_the_saw == steps


def test_no_angle_is_left_out_in_any_example():
    seen = 0
    for key, reckoner in RECKONERS.items():
        for part in reckon(key, **reckoner.example)["parts"]:
            for end in part["ends"].values():
                words = [word.rstrip(",") for word in end["angle"].split()]
                angles = [word for word in words if word.endswith("°")]
                assert all(angle in " ".join(end["at_the_saw"]) for angle in angles), key
                seen += len(angles)
    assert seen > 20


FLAT = {
    "crown": {"left": "left_flat", "right": "right_flat"},
    "sloped_box": {"left": "left", "right": "right"},
}
TOLD = re.compile(
    r"(?P<edge>top|bottom) edge against the fence, miter (?P<turn>left|right) (?P<miter>[^,]+), "
    r"bevel (?P<tilt>left|right) (?P<bevel>.+?)\. Keep"
)


@pytest.mark.parametrize("tilts", ["both", "left", "right"])
@pytest.mark.parametrize("key", ["crown", "sloped_box"])
def test_a_compound_end_says_which_way_saw_and_blade_go_and_which_edge_is_at_the_fence(key, tilts):
    """Against the sentence of the question, which `test_crown` and others follow at a saw."""
    said = reckon(key, **RECKONERS[key].example | {"tilts": tilts})
    sentences = {end: said["by_key"][answer]["text"] for end, answer in FLAT[key].items()}
    for part in said["parts"]:
        for end, sentence in sentences.items():
            laid = TOLD.search(sentence)
            if part["ends"][end]["cut"] == "square":  # of a run, where it comes to the wall
                continue
            assert part["ends"][end]["at_the_saw"] == [
                f"miter {laid['turn']}",
                laid["miter"],
                f"bevel {laid['tilt']}",
                laid["bevel"],
                f"{laid['edge']} edge to fence",
            ]


def test_a_compound_piece_shows_which_of_its_ends_is_the_left_one():
    for key in FLAT:
        for part in reckon(key, **RECKONERS[key].example)["parts"]:
            shapes = part["drawing"]["shapes"]
            at = {shape.get("text"): shape["at"] for shape in shapes if shape["kind"] == "label"}
            (wood,) = [shape["points"] for shape in shapes if shape.get("role") == "stock"]
            across, up = zip(*wood, strict=True)
            assert min(across) < at["left"][0] < at["right"][0] < max(across)
            assert all(min(up) < at[end][1] < max(up) for end in ("left", "right"))
