"""A material of the person's own: added once in the settings, used wherever one is asked for."""

import pytest
from asking import ask, errors, exact, reckon

import sawside

SHELVING = {
    "name": "Salvaged shelving",
    "stiffness": "1.3",
    "strength": "9000",
    "tangential": ".0028",
    "radial": ".0015",
    "note": "bent on two blocks with a 20 lb weight",
}
OWN = f"own: {SHELVING['name']}"
SOLVED = ("sag", "span", "thickness", "load", "strip")
DESCRIBED = {each["key"]: each for each in sawside.handle({"do": "describe"})["reckoners"]}
ASKING = [
    (key, field["key"], field["choices"])
    for key, question in DESCRIBED.items()
    for field in question["fields"]
    if field["kind"] == "material"
]


def settings(**changes):
    return {"materials": [{}, SHELVING | changes]}


def test_every_question_about_sag_and_movement_offers_it():
    assert {key for key, _, _ in ASKING} >= {
        "shelf_strength",
        "seasonal_movement",
        "panel_in_its_groove",
    }
    for key, field, _ in ASKING:
        told = next(each for each in DESCRIBED[key]["fields"] if each["key"] == field)
        assert (told["choices_from"], told["choices_prefix"]) == ("materials", "own: ")


@pytest.mark.parametrize(("key", "field"), [(key, field) for key, field, _ in ASKING])
def test_it_is_answered_in_every_question_that_asks_for_a_material(key, field):
    values = DESCRIBED[key]["example"] | {field: OWN}
    said = ask(key, settings(), **values)
    assert said["ok"], said


@pytest.mark.parametrize("solve", SOLVED)
def test_it_sags_as_the_same_figures_given_for_once(solve):
    key, more = "shelf_strength", {"solve": solve, "limit": "casework"}
    values = DESCRIBED[key]["example"] | more
    own = reckon(key, settings(), **(values | {"material": OWN}))["answers"]
    once = {"material": "own", "own_stiffness": "1.3", "own_strength": "9000"}
    for one, other in zip(own, reckon(key, **(values | once))["answers"], strict=True):
        if one["kind"] == "length":
            assert (one["decimals"], one["mark"]) == (other["decimals"], other["mark"])


def test_it_moves_by_its_own_coefficients():
    """Worked by hand: 10 in × .0028 × (10 − 6) % = .112 in."""
    said = reckon(
        "seasonal_movement", settings(), width="10", species=OWN, sawn="flat", now="8", year="most"
    )
    assert exact(said["by_key"]["whole"]) == exact({"exact": "14/125"})


def test_its_note_is_shown_as_the_source_of_its_figures():
    sag = reckon(
        "shelf_strength", settings(), **(DESCRIBED["shelf_strength"]["example"] | {"material": OWN})
    )
    assert f"your own figure: {SHELVING['note']}" in sag["by_key"]["figures"]["text"]
    assert f"your own figure: {SHELVING['note']}" in next(
        line for line in sag["by_key"]["figures"]["text"].split(". ") if "Strength of" in line
    )
    moves = reckon("seasonal_movement", settings(), width="10", species=OWN, now="8", year="most")
    assert f"your own figure: {SHELVING['note']}" in moves["working"][0]["text"]


def test_one_that_lacks_what_the_question_needs_says_so():
    example = DESCRIBED["shelf_strength"]["example"] | {"material": OWN}
    error = errors(ask("shelf_strength", settings(stiffness=""), **example))["material"]
    assert error["kind"] == "missing"
    assert "stiffness" in error["message"]
    still = settings(tangential="", radial="")
    said = ask("seasonal_movement", still, width="10", species=OWN, now="8", year="most")
    assert errors(said)["species"]["kind"] == "missing"


def test_one_that_is_no_longer_in_the_settings_is_told_by_its_name():
    example = DESCRIBED["shelf_strength"]["example"] | {"material": OWN}
    error = errors(ask("shelf_strength", **example))["material"]
    assert (error["kind"], SHELVING["name"] in error["message"]) == ("unknown", True)


@pytest.mark.parametrize(
    ("changes", "part", "kind"),
    [
        ({"name": ""}, "name", "missing"),
        ({"name": "x" * 41}, "name", "range"),
        ({"stiffness": "1,3"}, "stiffness", "unreadable"),
        ({"stiffness": "1300000"}, "stiffness", "range"),
        ({"strength": "9"}, "strength", "range"),
        ({"tangential": "28"}, "tangential", "range"),
        ({"radial": ""}, "radial", "missing"),
        ({"note": "x" * 201}, "note", "range"),
        ({"density": "30"}, None, "unknown"),
        ({"stiffness": ["1"]}, "stiffness", "message"),
        ({"stiffness": "", "strength": "", "tangential": "", "radial": ""}, "stiffness", "missing"),
    ],
)
def test_what_is_wrong_with_one_names_its_row_and_its_part(changes, part, kind):
    said = ask("shelf_strength", settings(**changes), **DESCRIBED["shelf_strength"]["example"])
    error = said["error"]
    assert (error["field"], error["row"], error.get("part"), error["kind"]) == (
        "settings.materials",
        1,
        part,
        kind,
    )
    assert error["message"].startswith("Material 2: ")


def test_two_of_one_name_are_refused():
    rows = {"materials": [SHELVING, SHELVING]}
    said = ask("shelf_strength", rows, **DESCRIBED["shelf_strength"]["example"])
    assert said["error"]["kind"] == "conflict"


def test_more_rows_than_anybody_has_are_refused():
    rows = {"materials": [SHELVING] * 41}
    assert ask("shelf_strength", rows)["error"]["kind"] == "range"
    assert ask("shelf_strength", {"materials": "oak"})["error"]["kind"] == "message"


def test_it_is_a_part_of_the_settings_of_a_project():
    begun = sawside.handle(
        {"do": "change", "document": None, "act": {"act": "begin", "name": "Record cabinet"}}
    )["document"]
    act = {"act": "set", "settings": settings()}
    said = sawside.handle({"do": "change", "document": begun, "act": act})
    assert said["ok"], said
    assert said["document"]["settings"]["materials"] == settings()["materials"]
