"""What a door weighs, by hand and from its own cut list, and the hinges that take it by name.

Northern red oak: 62.43 × 1.12 × .63 = 44.05 lb per cubic foot (Wood Handbook, chapter 4 and Table
5-3a); plywood 34 and MDF 48 (common practice, no source); glass 2.5 times water, 156 (soda-lime
glass, 2,500 kg/m³: EN 572-1, from memory).
"""

from fractions import Fraction

import pytest
from asking import ask, exact, reckon
from projects import acts, answered, begun

PAIR = {"width": "30", "height": "24", "doors": "2"}
OAK = float(Fraction("62.43") * Fraction("1.12") * Fraction("0.63"))
SIZES = ("length", "width", "thickness")
MADE_OF = {"species": "oak_northern_red", "now": "8", "year": "own", "low": "6", "high": "12"}


def pounds(said):
    return float(said["by_key"]["weight"]["text"].split(" lb")[0])


def test_one_door_of_a_pair_by_hand():
    """14 27/32 × 23 13/16 less 10 11/32 × 19 5/16 is 153.703 in² of frame: × .75 ÷ 1728 × 44.05 =
    2.94 lb. Its panel: 11 1/32 × 20 × 1/4 ÷ 1728 × 34 = 1.09 lb. 1 lb is .4536 kg."""
    said = reckon("doors", **PAIR)
    assert said["by_key"]["weight"]["text"] == "4 lb (1.8 kg)"
    glass = reckon("doors", **PAIR, made="glass")
    # 10 31/32 × 19 15/16 × 1/4 ÷ 1728 × 156.1 = 4.94, and the frame.
    assert glass["by_key"]["weight"]["text"] == "7.9 lb (3.6 kg)"


def test_a_slab_weighs_by_its_sheet_and_a_solid_one_by_its_species():
    """14 27/32 × 23 13/16 × 3/4 ÷ 1728 × 48 = 7.36; oak is cut narrower, for the wet season."""
    assert pounds(reckon("doors", **PAIR, made="slab", sheet="mdf")) == 7.4
    solid = reckon("doors", **PAIR, made="solid", **MADE_OF)
    wide, high = (exact(solid["by_key"][key]) for key in ("width", "height"))
    assert pounds(solid) == pytest.approx(float(wide * high) * 0.75 / 1728 * OAK, abs=0.06)


@pytest.mark.parametrize("joint", ["cope", "stub", "mortise"])
@pytest.mark.parametrize("middle", ["none", "rail", "stile"])
def test_the_weight_is_that_of_the_parts_of_the_cut_list(joint, middle):
    """Every part whole, but for the tenons or tongues that are in another one: 1 1/4 or 3/8."""
    values = {"width": "20", "height": "31", "joint": joint, "middle": middle, "stile": "3"}
    said = reckon("doors", **values, made="wood", **MADE_OF)
    hidden = 2 * (Fraction(5, 4) if joint == "mortise" else Fraction(3, 8))
    cubic = Fraction(0)
    for part in said["parts"]:
        long, wide, thick = (Fraction(part[key]["exact"]) for key in SIZES)
        long -= 0 if part["key"] in ("stile", "panel") else hidden
        cubic += part["count"] * long * wide * thick
    assert pounds(said) == pytest.approx(float(cubic) / 1728 * OAK, abs=0.06)


def test_a_wood_with_no_weight_on_file_tells_none():
    own = MADE_OF | {"species": "own", "own_tangential": "0.003", "own_radial": "0.002"}
    said = reckon("doors", **PAIR, made="solid", **own)
    assert "weight" not in said["by_key"]
    assert ask("doors", **PAIR, made="wood", **own)["ok"]


def test_hinges_take_the_weight_by_its_name():
    """4.02 lb at 1 1/2 lb for each hinge are 2.7: three, where its height asks for two."""
    hinges = {
        "height": "[Doors: Door height]",
        "width": "[Doors: Door width]",
        "weight_lb": "[Doors: Door weight]",
        "rating_lb": "1.5",
    }
    document = acts(
        begun(),
        ("keep_line", {"name": "Doors", "reckoner": "doors", "values": PAIR}),
        ("keep_line", {"name": "Hinges", "reckoner": "hinges", "values": hinges}),
    )
    told = answered("entry", document, id="2")["reckoning"]["answers"]
    by_key = {each["key"]: each["text"] for each in told}
    assert by_key["count"] == "3"
    assert by_key["weight"] == "4 lb (1.8 kg)"
