"""A bad answer names the fields that may be changed for it."""

from asking import reckon

import sawside
from sawside.reckoners import RECKONERS

LONG = {"span": "48", "thickness": "3/4"}


def shelf(**values):
    """The answer about the example's shelf, changed."""
    return reckon("shelf_strength", **RECKONERS["shelf_strength"].example | values)


def test_a_shelf_that_sags_too_much_leads_to_thickness_edging_and_span():
    said = shelf(**LONG)
    assert said["verdict"].startswith("Too much")
    assert [each["field"] for each in said["fixes"]][::2] == ["thickness", "span"]


def test_a_shelf_that_holds_has_nothing_to_fix():
    assert shelf(span="12", thickness="1 1/2")["fixes"] == []


def test_every_field_that_fixes_an_example_is_one_of_its_question():
    for key, reckoner in RECKONERS.items():
        said = sawside.handle({"do": "reckon", "reckoner": key, "values": reckoner.example})
        fields = {field.key for field in reckoner.fields}
        assert {each["field"] for each in said["fixes"]} <= fields
