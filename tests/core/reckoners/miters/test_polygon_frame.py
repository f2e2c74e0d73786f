"""A regular frame has the sides that close it, whatever of it is measured."""

from fractions import Fraction

import mpmath
import pytest
from asking import ask, errors, reckon

from tables import rows

RING = {
    "shape": "polygon",
    "sides": "8",
    "around": "inside",
    "size_is": "across",
    "size": "12",
    "stock": "1 1/2",
}


def number(item):
    return float(item["decimals"].rstrip("…"))


@pytest.mark.parametrize("sides", range(3, 25))
def test_each_cut_is_180_over_the_sides(sides):
    """Plane geometry: the polygon miter 180/n."""
    said = reckon("mitered_frame", **(RING | {"sides": str(sides)}))["by_key"]
    assert float(said["setting"]["text"].strip("≈ °")) == pytest.approx(180 / sides, abs=5e-3)
    assert number(said["long_sides"]["items"][0]) == pytest.approx(
        float(15 * mpmath.tan(mpmath.pi / sides)), abs=2e-6
    )


@pytest.mark.parametrize("row", rows("miter_settings.csv"), ids=lambda row: row["degrees_in"])
def test_printed_polygon_settings_are_met(row):
    if row["what"] == "sides":
        said = reckon("mitered_frame", **(RING | {"sides": row["degrees_in"]}))
        assert Fraction(said["by_key"]["setting"]["exact"]) == Fraction(row["miter"])


def test_a_round_thing_touches_every_side():
    """Worked by hand for a square: 12 across, 12 a side inside, 15 outside."""
    said = reckon("mitered_frame", **(RING | {"sides": "4"}))["by_key"]
    assert said["short_sides"]["items"][0]["exact"] == "12"
    assert said["long_sides"]["items"][0]["exact"] == "15"


def test_a_side_that_is_measured_comes_back_as_the_side_inside():
    said = reckon("mitered_frame", **(RING | {"size_is": "side", "sides": "5"}))["by_key"]
    assert said["short_sides"]["items"][0]["text"] == "12″"


def test_rabbet_and_clearance_move_each_side():
    """Worked by hand: 12 / 2 + 1/16 - 3/8 = 5 11/16 from the middle, 11 3/8 across."""
    said = reckon(
        "mitered_frame", **(RING | {"around": "panel", "rabbet": "3/8", "clearance": "1/16"})
    )
    assert said["by_key"]["inside"]["items"][0]["exact"] == "91/8"
    assert said["by_key"]["rabbet_size"]["items"][0]["exact"] == "97/8"


def test_a_stick_holds_as_many_as_fit_with_their_cuts():
    said = reckon("mitered_frame", **(RING | {"sides": "4", "stick": "30 in"}))["by_key"]
    assert said["sticks"]["text"] == "4 sticks of 30″, 1 1/2″ wide"
    wider = reckon("mitered_frame", **(RING | {"sides": "4", "stick": "30 3/8"}))["by_key"]
    assert wider["sticks"]["text"] == "2 sticks of 30 3/8″, 1 1/2″ wide"


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"sides": "2"}, "sides", "range"),
        ({"sides": "25"}, "sides", "range"),
        ({"around": "outside", "size": "3"}, "size", "impossible"),
        ({"around": "panel", "rabbet": "1 1/2"}, "rabbet", "impossible"),
        ({"around": "panel", "rabbet": "1", "size": "1 3/4"}, "size", "impossible"),
        ({"stick": "6 in"}, "stick", "impossible"),
    ],
)
def test_a_frame_that_can_not_be_is_refused_by_its_field(values, field, kind):
    error = errors(ask("mitered_frame", **(RING | values)))[field]
    assert error["kind"] == kind
    assert error["remedy"]


@pytest.mark.parametrize("sides", [3, 6, 7, 24])
def test_the_drawing_has_a_piece_for_each_side_and_tells_long_short_and_cut(sides):
    said = reckon("mitered_frame", **(RING | {"sides": str(sides)}))
    shapes = said["drawing"]["shapes"]
    assert len([shape for shape in shapes if shape["kind"] == "polygon"]) == sides
    texts = " ".join(shape.get("text", "") for shape in shapes)
    for key in ("long_sides", "short_sides"):
        assert said["by_key"][key]["items"][0]["text"] in texts
    assert f"{sides} miters of {said['by_key']['setting']['text']}" in texts
