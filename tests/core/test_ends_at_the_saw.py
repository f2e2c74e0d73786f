"""What is set for an end is told at the saw one thing after another, without what only explains."""

import pytest
from asking import reckon

from sawside.reckoners import RECKONERS
from sawside.reckoners.declaration import End


@pytest.mark.parametrize(
    ("angle", "steps"),
    [
        ("", []),
        ("0°", ["0°"]),
        ("45° (saw set to 45)", ["45°"]),
        ("44.75°, saw turned left", ["44.75°", "turned left"]),
        ("≈ 31.71°, tilted ≈ 33.78°", ["≈ 31.71°", "tilted ≈ 33.78°"]),
        ("edge miter first, 45°, saw turned right", ["edge miter first", "45°", "turned right"]),
        ("chamfered 3/16″", ["chamfered 3/16″"]),
    ],
)
def test_each_thing_that_is_set_stands_alone(angle, steps):
    assert End("edge miter", angle).at_the_saw == steps


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
