"""A bad answer names the fields that may be changed for it."""

from asking import exact, reckon

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


HUNG_OVER = {"supports": "overhanging", "overhang": "17", "strip": "none"}


def test_ends_that_hang_too_low_are_not_mended_by_a_shorter_span():
    """Beam theory: the ends of 36 over and 17 past the supports drop further over 30."""
    drops = [shelf(span=span, **HUNG_OVER)["by_key"]["sag"] for span in ("36", "30")]
    assert exact(drops[1]) > exact(drops[0])
    said = shelf(span="36", **HUNG_OVER)
    assert [each["field"] for each in said["fixes"]] == ["thickness", "strip", "overhang"]


def test_the_edge_that_no_edging_holds_up_leads_to_edging_on_both():
    """Common practice, no source: edging along the front does little for the back."""
    said = shelf(span="48", thickness="3/4", strip="front")
    assert said["by_key"]["place"]["text"].startswith("At the back edge")
    assert {"label": "Edging on both edges", "field": "strip"} in said["fixes"]
