"""The list of materials: every value with its table, and what is from memory says so."""

import pytest
from asking import reckon

import sawside
from sawside.wood.materials import MATERIALS

FIELD = next(
    each
    for each in sawside.handle({"do": "describe"})["reckoners"]
    if each["key"] == "materials_list"
)["fields"][0]


def texts(material, settings=None):
    return {
        key: answer["text"]
        for key, answer in reckon("materials_list", settings, material=material)["by_key"].items()
    }


def test_red_maple_has_the_figures_of_the_handbook():
    """Wood Handbook, FPL-GTR-190 (2010), Tables 12-1, 13-5 and 4-3."""
    told = texts("maple_red")
    assert told["stiffness"].startswith("1,640,000\u00a0psi (11,307\u00a0MPa)")
    assert told["strength"].startswith("13,400\u00a0psi (92\u00a0MPa)")
    assert "0.00289" in told["movement"]
    assert "0.00137" in told["movement"]
    assert "Table 13-5, page 13-16." in told["movement"]
    assert "8.2%" in told["shrinkage"]


@pytest.mark.parametrize("key", MATERIALS)
def test_every_figure_on_file_is_told_with_its_source(key):
    made, told = MATERIALS[key], texts(key)
    for name in ("stiffness", "strength", "movement"):
        figure = getattr(made, name)
        if figure is None:
            assert told[name] == "Not on file."
        else:
            assert figure.cited[1:] in told[name]


def test_every_material_is_listed_and_marked_where_any_of_it_is_from_memory():
    assert {choice["value"] for choice in FIELD["choices"]} == set(MATERIALS)
    for choice in FIELD["choices"]:
        made = MATERIALS[choice["value"]]
        known = [each for each in (made.stiffness, made.strength, made.movement) if each]
        guessed = ["from memory" in each.status for each in known]
        assert any(guessed) == choice["label"].endswith("unchecked)")
        assert ("some of it" in choice["label"]) == (any(guessed) and not all(guessed))


def test_a_material_of_the_settings_is_told_with_its_note():
    own = {"name": "Salvaged shelving", "stiffness": "1.3", "note": "bent on two blocks"}
    told = texts("own: Salvaged shelving", {"materials": [own]})
    assert told["stiffness"].startswith("1,300,000\u00a0psi")
    assert told["stiffness"].endswith("Your own figure: bent on two blocks.")
    assert told["strength"] == told["movement"] == told["shrinkage"] == "Not on file."


def test_a_wood_is_named_as_one_says_it_and_its_warning_cites_nothing():
    said = reckon("materials_list", material="maple_red")
    assert said["verdict"] == "Red maple: stiffness"
    assert not any("Table" in caution for caution in said["cautions"])
    assert "Table 5-6" in said["source"]
