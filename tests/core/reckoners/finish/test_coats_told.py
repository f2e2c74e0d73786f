"""What is told of coats: how each is sanded, what heats up, what can hurt, and what is refused."""

import re

import pytest
from asking import ask, errors, reckon

from sawside.reckoners.finish.shared.finishes import FINISHES

START = "2026-11-30T18:00"


@pytest.mark.parametrize(
    ("finish", "values", "said"),
    [
        # All shop practice, no source.
        ("shellac", {"humidity": "75"}, "Damp air can turn it cloudy"),
        ("lacquer", {"humidity": "71"}, "Damp air can turn it cloudy"),
        ("water", {"temperature_f": "95"}, "In such heat it may set before it levels"),
        ("lacquer", {"grit": "120"}, "So coarse a grit can cut through the coat"),
        ("wiping", {"grit": "0"}, "Unsanded, the next coat may not stick"),
        ("oil_paint", {"grit": "0"}, "Unsanded, the next coat may not stick"),
    ],
)
def test_what_spoils_a_finish_is_warned_of_first(finish, values, said):
    air = {"air": "air_f", "temperature_f": "70", "humidity": "50"}
    told = reckon("coats", finish=finish, **air)["cautions"]
    assert not any(said in each for each in told)
    assert reckon("coats", finish=finish, **air | values)["cautions"][0].startswith(said)


@pytest.mark.parametrize("grit", ["180", "220", "320", "400", "600", "1500"])
def test_a_grit_of_either_scale_goes_between_coats(grit):
    """ISO 6344 (FEPA) and ANSI B74.18 (CAMI)."""
    said = reckon("coats", finish="wiping", grit=grit)
    assert f"Sand with {grit} grit" in {step["said"] for step in said["steps"]}
    assert "cut through" not in said["cautions"][0]


@pytest.mark.parametrize("finish", ["shellac", "lacquer"])
def test_what_melts_into_the_coat_before_needs_no_sanding_to_stick(finish):
    told = reckon("coats", finish=finish, grit="0")["cautions"]
    assert not any("Unsanded" in each for each in told)


def test_wet_sanding_is_by_hand_and_its_slurry_is_left_in_the_pores():
    about = {
        step["key"]: step["about"]
        for step in reckon("coats", finish="tung", pores="fill", start=START)["steps"]
    }
    assert about["wet1"].startswith("By hand")
    assert "across the grain" in about["wipe1"]
    assert "across the grain" not in about["wipe3"]


def test_paint_begins_with_its_primer_and_is_sanded_with_220_after_it():
    said = reckon("coats", finish="paint", start=START)
    told = [step["said"] for step in said["steps"] if step["key"][:4] in ("coat", "sand")]
    assert told == [
        "Coat of primer",
        "Sand with 220 grit",
        "First coat of paint",
        "Sand with 320 grit",
        "Second coat of paint",
    ]


def test_pores_are_filled_by_wet_sanding_the_first_two_coats_of_oil():
    said = reckon("coats", finish="tung", pores="fill", start=START)
    keys = [step["key"] for step in said["steps"]]
    assert [key for key in keys if key.startswith("wet")] == ["wet1", "wet2"]
    assert keys[:4] == ["coat1", "wet1", "wipe1", "rags1"]


def test_a_caution_is_told_in_full_where_it_first_stands_and_short_after_that():
    """Rags: NFPA tip sheet on oily rags, 29 CFR 1910.106."""
    said = reckon("coats", finish="linseed", start=START)
    rags = [step["caution"] for step in said["steps"] if step["key"].startswith("rags")]
    assert "never pile" in rags[0]["short"]
    assert "NFPA" in rags[0]["full"]
    assert [each["full"] for each in rags[1:]] == [rags[0]["short"]] * 2
    assert any("never pile" in each for each in said["cautions"])


def test_every_caution_names_who_says_so_and_defers_to_the_maker_or_local_rules():
    """NFPA, NIOSH, EPA and the Code of Federal Regulations, as finish_cautions.py lists them."""
    said = [step for key in ("linseed", "water") for step in reckon("coats", finish=key)["steps"]]
    cautions = [step["caution"] for step in said[::-1] if step["caution"]]
    whole = {each["short"]: each["full"] for each in cautions}
    whole |= {each.partition(".")[0] + ".": each for each in reckon("sanding")["cautions"]}
    assert len(whole) == 5
    for text in whole.values():
        assert re.search(r"NFPA|NIOSH|EPA|29 CFR", text), text
        assert re.search(r"maker|can |local|your town", text), text
    (dust,) = [text for short, text in whole.items() if "dust" in short]
    assert "1 mg in a cubic meter" in dust  # NIOSH Pocket Guide, wood dust


@pytest.mark.parametrize("finish", FINISHES)
def test_what_heats_up_by_itself_has_a_step_for_its_rags_after_every_coat(finish):
    """Oils, oil varnish and wax; water-borne finishes, shellac and lacquer don't (NFPA)."""
    said = reckon("coats", finish=finish, start=START)
    keys = [step["key"] for step in said["steps"]]
    coats_there = sum(key.startswith("coat") for key in keys)
    oily = finish in ("linseed", "tung", "blend", "wiping", "wax", "oil_paint")
    assert sum(key.startswith("rags") for key in keys) == (coats_there if oily else 0)


@pytest.mark.parametrize(
    ("values", "field", "said"),
    [
        ({"start": "tomorrow"}, "start", "isn’t a date and time"),
        ({"start": "2026-02-29T10:00"}, "start", "isn’t a date and time"),
        ({"start": "1999-12-31T10:00"}, "start", "from 2000 to 2100"),
        ({"up": "7", "down": "7"}, "down", "same hour"),
        ({"away": "away", "leaves": "17", "back": "17"}, "back", "same hour"),
        ({"up": "7", "down": "8", "finish": "tung", "wipe": "45"}, "down", "1 h 15 min in a row"),
        ({"air": "air_f", "temperature_f": "45", "humidity": "50"}, "temperature_f", "Below 50 °F"),
        ({"air": "air_c", "temperature_c": "9", "humidity": "50"}, "temperature_c", "Below 50 °F"),
        ({"air": "air_f", "temperature_f": "70", "humidity": "90"}, "humidity", "Above 85%"),
        ({"coats": "0"}, "coats", "at least 1"),
        ({"grit": "37"}, "grit", "no grit 37 on file"),
        ({"grit": "1"}, "grit", "no grit 1 on file"),
        ({"coats": "13"}, "coats", "at most 12"),
        ({"recoat": "0"}, "recoat", "at least 0.25"),
    ],
)
def test_what_can_not_be_is_refused_at_its_field_with_a_remedy(values, field, said):
    error = errors(ask("coats", **values))[field]
    assert said in error["message"]
    assert error["remedy"].endswith(".")
