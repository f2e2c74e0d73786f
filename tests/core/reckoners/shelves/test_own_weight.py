"""A shelf's own weight is carried besides its load, wherever it is known."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.wood.materials import MATERIALS, having
from sawside.wood.strength.loads import load_of
from sawside.wood.strength.shelf import Shelf

SOLVED = ("sag", "span", "thickness", "load", "strip")
PLAIN = {
    "span": "36",
    "depth": "12",
    "thickness": "3/4",
    "material": "plywood",
    "load": "own_lb",
    "own_lb": "60",
    "limit": "cabinet_test",
}
SHELVING = {"name": "Salvaged shelving", "stiffness": "1.01"}
OWN = {"material": "own: Salvaged shelving"}


def with_own(key, weight, **values):
    return reckon(key, {"materials": [SHELVING | {"weight": weight}]}, **values | OWN)


def texts(said):
    return [line["text"] for line in said["working"]]


def test_a_shelf_worked_by_hand():
    """36 × 12 × 3/4 in is 324 in³, 0.1875 ft³, at 34 lb 6.375 lb: 66.375 lb in all.

    I = 12 × .75³ ÷ 12 = .421875: bending 5 × 66.375 × 36³ ÷ (384 × 1 010 000 × .421875) = .094634;
    shear 66.375 × 36 ÷ 8 ÷ (1 010 000 ÷ 16 × 5/6 × 9) = .000631.
    """
    said = reckon("shelf_strength", **PLAIN)
    assert float(exact(said["by_key"]["sag"])) == pytest.approx(0.094634 + 0.000631, abs=1e-6)
    load = said["by_key"]["load"]["text"]
    assert (
        load
        == "60 lb (27.2 kg) total, 20 lb/ft (29.8 kg/m); the shelf itself weighs 6.4 lb (2.9 kg)"
    )
    assert texts(said)[1] == (
        "Board’s own weight: 36″ × 12″ × 0.75″ at 34 lb per cubic foot = 6.4 lb (2.9 kg)"
    )
    assert any("W = 60 + 6.4 lb" in line for line in texts(said))
    assert "Weight of plywood: 34 lb per cubic foot" in said["by_key"]["figures"]["text"]
    assert not any("own weight" in caution for caution in said["cautions"])


def test_as_much_more_of_an_even_load_sags_the_same_as_the_weight():
    """At 48 lb for each cubic foot: 36 × 12 × 3/4 ÷ 1728 × 48 = 9 lb."""
    weighed = with_own("shelf_strength", "48", **PLAIN)
    loaded = with_own("shelf_strength", "", **PLAIN | {"own_lb": "69"})
    assert weighed["verdict"] == loaded["verdict"]
    for key in ("sag", "sag_after_years", "stress", "place"):
        assert weighed["by_key"][key]["text"] == loaded["by_key"][key]["text"]
    assert exact(weighed["by_key"]["sag"]) == exact(loaded["by_key"]["sag"])


@pytest.mark.parametrize("solve", SOLVED)
def test_a_weight_that_is_not_known_is_left_out_and_said(solve):
    asked = PLAIN | {"solve": solve, "strip": "front", "strip_material": "same"}
    unknown, known = (with_own("shelf_strength", each, **asked) for each in ("", "40"))
    (said,) = [each for each in unknown["cautions"] if "own weight" in each]
    assert said.startswith("There’s no weight on file for Salvaged shelving")
    assert not any("own weight" in line for line in texts(unknown))
    assert not any("no weight" in each for each in known["cautions"])
    assert sum("own weight: " in line for line in texts(known)) == (
        1 if known["by_key"].get("strip_height", {}).get("text") == "0″" else 2
    )
    assert "your own figure" in known["by_key"]["figures"]["text"]


def test_a_heavier_board_may_span_less_and_carry_less():
    case = {"depth": "12", "thickness": "3/4", "load": "own_lb_ft", "own_lb_ft": "20"}
    spans = [
        Fraction(with_own("shelf_strength", each, solve="span", **case)["by_key"]["span"]["mark"])
        for each in ("", "40", "100")
    ]
    assert spans[0] > spans[1] > spans[2]
    case = {"depth": "12", "thickness": "3/4", "span": "36"}
    loads = [
        float(
            with_own("shelf_strength", each, solve="load", **case)["by_key"]["heaviest"][
                "text"
            ].split()[0]
        )
        for each in ("", "40", "80")
    ]
    # 7.5 lb of board for each 40 lb: an even load is less by just what the board weighs.
    assert loads[0] - loads[1] == pytest.approx(7.5, abs=0.1)
    assert loads[1] - loads[2] == pytest.approx(7.5, abs=0.1)


@settings(max_examples=40)
@given(
    st.fractions(min_value=12, max_value=60, max_denominator=4),
    st.fractions(min_value="1/16", max_value=20, max_denominator=16),
    st.sampled_from(["even", "middle", "quarters"]),
)
def test_the_heaviest_load_of_a_shelf_that_stands_over_keeps_the_limit(span, over, spread):
    case = {
        "span": f"{span} in",
        "depth": "12",
        "thickness": "3/4",
        "material": "oak_white",
        "supports": "overhanging",
        "overhang": f"{over} in",
        "spread": spread,
        "limit": "own",
        "own_limit": "1/8",
    }
    said = ask("shelf_strength", solve="load", **case)
    if not said["ok"]:
        assert errors(said)["span"]["kind"] == "impossible"
        light = reckon("shelf_strength", **case | {"load": "own_lb", "own_lb": "0.1"})["by_key"]
        assert exact(light["sag_after_years"]) > Fraction(1, 8)
        return
    heaviest = Fraction(said["answers"][0]["text"].split(" lb")[0].replace(",", ""))
    for more, too_much in ((0, False), (Fraction(1, 10), True)):
        load = {"load": "own_lb", "own_lb": str(heaviest + more)}
        if heaviest + more <= 10000:
            sag = exact(reckon("shelf_strength", **case | load)["by_key"]["sag_after_years"])
            assert (sag > Fraction(1, 8)) == too_much


def test_a_board_that_sags_too_far_by_itself_carries_nothing():
    said = ask(
        "shelf_strength", solve="load", span="20 ft", depth="12", thickness="1/4", material="mdf"
    )
    assert errors(said)["span"]["message"] == "The shelf sags past the limit under its own weight."


def loaded(supports, spread):
    """A board 40 × 12 × 1 in under 80 lb, standing over by 10 in where it overhangs."""
    over = Fraction(10 if supports == "overhanging" else 0)
    sizes = Fraction(1), Fraction(12), Fraction(40)
    load, weight = load_of(80, "lb"), Fraction(1, 20)
    return Shelf(Fraction(10**6), *sizes, load, supports, spread, over, weight=weight)


@pytest.mark.parametrize(
    ("supports", "spread", "moment"),
    [
        # 40 in, 80 lb; 40 × 12 × 1 in at .05 lb/in³ are 24 lb, .6 lb on each inch.
        ("resting", "middle", 80 * 40 / 4 + 0.6 * 40**2 / 8),
        ("resting", "quarters", 80 * 40 / 8 + 0.6 * 40**2 / 8),
        ("fixed", "middle", 80 * 40 / 8 + 0.6 * 40**2 / 12),
        ("fixed", "quarters", 3 * 80 * 40 / 32 + 0.6 * 40**2 / 12),
        ("resting", "even", (80 + 24) * 40 / 8),
        # 10 in more at each end.
        ("overhanging", "middle", 80 * 40 / 4 + 0.6 * (40**2 / 8 - 10**2 / 2)),
        ("overhanging", "even", (80 / 60 + 0.6) * (40**2 / 8 - 10**2 / 2)),
    ],
)
def test_the_stress_is_that_of_both_loads_together(supports, spread, moment):
    """Moments of handbooks on statics, added; S = 12 × 1² ÷ 6 = 2 in³."""
    (stress,) = loaded(supports, spread).stresses
    assert float(stress) == pytest.approx(moment / 2)


@pytest.mark.parametrize("supports", ["resting", "fixed", "overhanging"])
@pytest.mark.parametrize("spread", ["even", "middle", "quarters"])
def test_the_curve_that_is_drawn_is_that_of_both_loads(supports, spread):
    shelf = loaded(supports, spread)
    bending, far = shelf.section.bending, Fraction(10**40)
    bent = sum(beam.middle(bending, far) for beam in shelf.beams)
    assert float(shelf.drop_at(Fraction(1, 2)) / bending) == pytest.approx(float(bent))
    assert shelf.drop_at(Fraction(0)) == shelf.drop_at(Fraction(1)) == 0


@pytest.mark.parametrize(
    ("key", "pounds"),
    [
        ("oak_northern_red", 44),
        ("maple_sugar", 44),
        ("cherry_black", 35),
        ("yellow_poplar", 29),
        ("walnut_black", 38),
        ("pine_ponderosa", 28),
        ("douglas_fir_coast", 34),
        ("mdf", 48),
    ],
)
def test_weights_are_those_of_the_trade(key, pounds):
    """Pounds for each cubic foot, air dry, as lumber is listed (common practice, no source)."""
    assert float(MATERIALS[key].weight.most) == pytest.approx(pounds, abs=1)


def test_every_weight_is_one_of_a_wood_or_panel_that_is_asked_for():
    weighed = {each.key for each in having("weight")}
    assert weighed <= {each.key for each in having("stiffness")}
    assert len(weighed) > 60
    assert all(20 < float(each.weight.most) < 60 for each in having("weight"))


@pytest.mark.parametrize("weight", ["0", "121", "heavy"])
def test_a_weight_that_is_none_is_refused_at_its_part(weight):
    said = ask("shelf_strength", {"materials": [SHELVING | {"weight": weight}]}, **PLAIN)
    assert (said["error"]["field"], said["error"]["part"]) == ("settings.materials", "weight")


def test_a_weight_alone_is_no_material():
    said = ask("shelf_strength", {"materials": [{"name": "Bricks", "weight": "100"}]}, **PLAIN)
    assert "no number but its weight" in said["error"]["message"]
