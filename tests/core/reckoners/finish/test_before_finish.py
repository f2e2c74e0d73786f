"""What is done before the first coat: which steps there are, by finish, nails and surface.

All of it common practice, no source, but for the cautions.
"""

import pytest
from asking import reckon

from sawside.reckoners.finish.shared.finishes import FINISHES


def keys(**values):
    return [step["key"] for step in reckon("before_finish", **values)["steps"]]


def test_under_paint_nail_holes_are_filled_first_and_under_a_clear_finish_after_its_first_coat():
    assert keys(finish="paint")[:2] == ["nails", "fill"]
    assert keys(finish="oil_paint")[:2] == ["nails", "fill"]
    for finish in FINISHES.keys() - {"paint", "oil_paint"}:
        assert keys(finish=finish)[0] == "nails"
        assert keys(finish=finish)[-1] == "fill"
    assert reckon("before_finish", finish="paint")["answers"][0]["text"] == "Before the primer"


def test_without_nails_nothing_is_set_or_filled():
    assert not {"nails", "fill"} & {*keys(nails="none")}


@pytest.mark.parametrize("finish", FINISHES)
def test_glue_is_looked_for_before_sanding_and_dust_taken_off_after_all_of_it(finish):
    there = keys(finish=finish)
    order = [key for key in there if key in ("glue", "sand", "corners", "grain", "light", "dust")]
    assert order[0] == "glue"
    assert order[1] == "sand"
    assert order[-1] == "dust"
    # A primer raises it anyhow, and is sanded after (common practice, no source).
    assert ("grain" in there) == (finish == "water")


def about(key, **values):
    return next(s["about"] for s in reckon("before_finish", **values)["steps"] if s["key"] == key)


@pytest.mark.parametrize("finish", FINISHES)
def test_the_moisture_of_the_wood_is_checked_against_its_room_before_it_is_sanded(finish):
    there = keys(finish=finish)
    assert there.index("moisture") < there.index("glue")
    assert "see Dew point" in about("moisture", finish=finish)


def test_what_is_wetted_to_find_glue_is_dry_before_it_is_sanded():
    """Mineral spirits flame, and sparks of a sander light them (the caution at this step)."""
    for finish in FINISHES:
        assert "Let it dry" in about("glue", finish=finish)


def test_veneer_starts_no_coarser_than_sanding_says():
    """Sanding's first grit on veneered sheets and veneer is P150, or finer where it's thin."""
    said = reckon("before_finish", wood="veneer")
    (sand,) = [step for step in said["steps"] if step["key"] == "sand"]
    for text in (sand["about"], sand["caution"]["full"]):
        assert "150 grit" in text
        assert "180" not in text
    for surface in ("sheet", "veneer"):
        grits = reckon("sanding", surface=surface, finish="wiping")["answers"][0]["text"]
        assert int(grits.split(",")[0].removeprefix("P")) >= 150


def test_no_oily_tack_cloth_goes_before_a_water_borne_finish():
    (dust,) = [s for s in reckon("before_finish", finish="water")["steps"] if s["key"] == "dust"]
    assert "tack cloth" in dust["about"]


def test_veneer_has_its_warning_where_it_is_sanded_and_above_all():
    said = reckon("before_finish", wood="veneer")
    (sand,) = [step for step in said["steps"] if step["key"] == "sand"]
    assert sand["caution"]["short"].startswith("Sand veneer by hand")
    assert said["cautions"][0].startswith("Sand veneer by hand")
    assert not any("eneer" in each for each in reckon("before_finish", wood="solid")["cautions"])


def test_a_nail_is_set_by_a_depth_in_the_unit_of_the_project():
    (inches, metric) = (
        reckon("before_finish", settings)["steps"][0]["about"]
        for settings in ({}, {"unit": "mm", "display": "mm", "mark": "0.5 mm"})
    )
    assert inches.startswith("1/16″ below")
    assert metric.startswith("≈ 1.5 mm below")  # 1.5875 mm


def test_sanding_warns_of_dust_as_niosh_does():
    """NIOSH Pocket Guide, wood dust: potential occupational carcinogen."""
    said = reckon("before_finish")
    assert any("NIOSH" in each for each in said["cautions"])


@pytest.mark.parametrize("wood", ["solid", "veneer"])
def test_every_step_that_makes_dust_says_so_where_it_is(wood):
    """The same guide: the limit is of all wood dust, of veneer and by hand too."""
    told = {s["key"]: s["caution"] for s in reckon("before_finish", wood=wood)["steps"]}
    for key in ("sand", "dust"):
        assert "dust respirator" in told[key]["short"], key
    assert "NIOSH" in told["sand"]["full"]


def test_a_count_of_steps_is_only_told_where_nothing_else_leads():
    nailed, plain = (reckon("before_finish", nails=each)["by_key"] for each in ("nailed", "none"))
    assert "steps" not in nailed
    assert plain["steps"]["text"] == "7"
