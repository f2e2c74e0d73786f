"""Clearances of the settings: taken where a question leaves its own blank, and nowhere else.

How large each is by default is common practice, no source.
"""

from fractions import Fraction

import pytest
from asking import errors, reckon
from projects import acts, begun, change, changed, entry, headlines, view

import sawside
from sawside.project.schema.cache import forget
from sawside.project.schema.document import read_document
from sawside.reckoners import RECKONERS
from sawside.settings.clearances import CLEARANCES
from sawside.settings.settings import read_settings

DESCRIBED = sawside.handle({"do": "describe"})
DADO = {
    "width": "36 5/8",
    "width_is": "inside",
    "joint": "dado",
    "left_depth": "5/16",
    "right_depth": "5/16",
}
CASE = {"width": "36", "height": "30", "depth": "12", "adjustable": "1"}
PINS = {"width": "36 5/8", "width_is": "inside", "joint": "pins"}
PANEL = {"opening": "12 1/2", "groove": "7/16", "species": "maple_red", "now": "8", "year": "most"}
AROUND = {
    "around": "panel",
    "width": "14 1/2",
    "height": "20 3/4",
    "stock": "2 1/4",
    "rabbet": "3/8",
    "stick": "96",
}
RING = {
    "shape": "polygon",
    "sides": "8",
    "around": "panel",
    "size_is": "across",
    "size": "12",
    "stock": "1 1/2",
    "rabbet": "3/8",
    "stick": "72",
}
THINGS = [{"height": "12 5/8"}, {"height": "9 1/4", "openings": "2"}]
STACK = {"layout": "fit", "thickness": "23/32", "things": THINGS}
DRAWER = {"width": "16 1/2", "height": "6", "depth": "15 1/4"}

COLUMN = {"height": "26", "drawers": "3"}
PAIR = {"width": "31 1/2", "height": "27 3/4", "doors": "2"}
GLAZED = PAIR | {"made": "glass"}
THICK_DOOR = {"width": "6", "thickness": "2"}


def stack(clearance):
    return {"things": [thing | {"clearance": clearance} for thing in THINGS]}


TAKEN = [
    ("clearance_in_dado", "shelf_length", DADO, lambda text: {"play": text}),
    ("clearance_on_pins", "shelf_length", PINS, lambda text: {"gap": text}),
    ("clearance_on_pins", "carcass", CASE, lambda text: {"gap": text}),
    ("clearance_in_groove", "panel_in_its_groove", PANEL, lambda text: {"clearance": text}),
    ("clearance_in_frame", "mitered_frame", AROUND, lambda text: {"clearance": text}),
    ("clearance_in_frame", "mitered_frame", RING, lambda text: {"clearance": text}),
    ("clearance_above", "shelf_layout", STACK, stack),
    ("clearance_slide", "drawer_box", DRAWER, lambda text: {"side_room": text}),
    ("clearance_at_door", "doors", PAIR, lambda text: {"gap": text}),
    ("clearance_at_door", "drawer_box", DRAWER | {"front": "inset"}, lambda text: {"gap": text}),
    ("clearance_between_doors", "doors", PAIR, lambda text: {"between": text}),
    ("clearance_between_doors", "drawer_column", COLUMN, lambda text: {"gap": text}),
    ("clearance_in_groove", "doors", PAIR, lambda text: {"clearance": text}),
    ("clearance_in_frame", "doors", GLAZED, lambda text: {"glass_clearance": text}),
    ("clearance_at_door", "door_swing", THICK_DOOR, lambda text: {"gap": text}),
]
"""Every place where one is taken: setting, question, values without it, how it is typed there."""

each_place = pytest.mark.parametrize(
    ("setting", "key", "values", "typed"), TAKEN, ids=[f"{row[1]} {row[0]}" for row in TAKEN]
)


def declared():
    """(question, field) of every field, those of rows too."""
    for reckoner in RECKONERS.values():
        for field in reckoner.fields:
            yield from ((reckoner.key, each) for each in (field, *field.fields))


def test_every_clearance_is_taken_by_a_question_and_no_question_has_one_of_its_own():
    taken = {(field.setting, key) for key, field in declared() if field.setting in CLEARANCES}
    assert taken == {(setting, key) for setting, key, _, _ in TAKEN}
    assert {setting for setting, _ in taken} == set(CLEARANCES)
    for _, field in declared():
        if "clearance" in field.key and field.kind == "length":
            assert field.setting in CLEARANCES
            assert field.default is None


@each_place
def test_a_blank_one_is_that_of_the_settings_and_a_typed_one_is_its_own(
    setting, key, values, typed
):
    settings = {setting: "3/32 in"}
    told = reckon(key, settings, **values)["by_key"]
    own = reckon(key, settings, **values | typed("5/32 in"))["by_key"]
    assert told == reckon(key, **values | typed("3/32"))["by_key"]
    assert own == reckon(key, **values | typed("5/32"))["by_key"]
    assert told != own


def test_the_field_says_which_size_it_takes():
    echo = reckon("shelf_length", {"clearance_in_dado": "3/64"}, **DADO)["echoes"]["play"]
    assert echo == "3/64″ from Settings"


KEPT_BEFORE = [
    ("shelf_length", DADO, "play", '1/32"', "37 3/16″"),
    ("shelf_length", PINS, "gap", '1/16"', "36 1/2″"),
    ("panel_in_its_groove", PANEL, "clearance", '1/32"', "13 7/32″"),
    ("mitered_frame", AROUND, "clearance", "1/16 in", "18 3/8″, 24 5/8″"),
    ("mitered_frame", RING, "clearance", "1/16 in", "6″"),
    ("shelf_layout", STACK, "things", stack('1/2"')["things"], "13 1/8″, 23 19/32″"),
]
"""What the version without these settings answered (its own output): question, values without a
clearance, its key, the default that the page wrote into a line that it kept, the first answer."""


@pytest.mark.parametrize(("key", "values", "field", "default", "text"), KEPT_BEFORE)
@pytest.mark.parametrize("unit", ["in", "mm"])
def test_a_line_that_was_kept_before_comes_to_what_it_came_to(
    key, values, field, default, text, unit
):
    lines = [values, values | {field: default}]
    if field != "things":
        lines.append(values | {field: ""})
    entries = [
        {
            "id": str(number),
            "kind": "line",
            "name": f"Line {number}",
            "reckoner": key,
            "values": each,
            "unit": "in",
        }
        for number, each in enumerate(lines, 1)
    ]
    settings = {"unit": unit, "display": "in", "mark": "1/16", "kerf": "1/8 in"}
    document = {
        "schema": 2,
        "name": "Record cabinet",
        "settings": settings,
        "next": len(lines) + 1,
        "entries": entries,
    }
    assert set(headlines(document).values()) == {text}
    assert read_document(document)["entries"] == entries


def two_shelves():
    return acts(
        begun(),
        ("keep_line", {"name": "Blank", "reckoner": "shelf_length", "values": DADO}),
        (
            "keep_line",
            {"name": "Typed", "reckoner": "shelf_length", "values": DADO | {"play": "1/32"}},
        ),
        (
            "keep_line",
            {
                "name": "From it",
                "reckoner": "how_many_fit",
                "values": {"stick": "[Blank] + 50", "piece": "20", "kerf": "1/8"},
            },
        ),
    )


def test_another_clearance_reaches_each_line_that_leaves_it_blank_and_can_be_undone():
    document = two_shelves()
    before = headlines(document)
    said = change(document, "set", settings={"clearance_in_dado": "3/32"})
    after = headlines(said["document"])
    assert (before["Blank"], after["Blank"]) == ("37 3/16″", "37 1/16″")
    assert after["Typed"] == before["Typed"]
    assert [each["name"] for each in said["follows"]] == ["Blank", "From it"]
    undone = change(said["document"], **{"act": said["undo"].pop("act")} | said["undo"])["document"]
    assert headlines(undone) == before


def test_what_is_remembered_of_another_clearance_is_never_told():
    document = two_shelves()
    for size in ("3/32", "1/32", "3/32", "0"):
        document = changed(document, "set", settings={"clearance_in_dado": size})
        remembered = view(document)
        forget()
        assert view(document) == remembered
    one, other = ({"clearance_in_dado": size} for size in ("1/16", "3/32"))
    assert read_settings(one) == read_settings(dict(one))
    assert read_settings(one) != read_settings(other)


def test_a_clearance_of_the_settings_is_held_against_how_sure_its_line_is():
    document = acts(
        begun(),
        ("keep_reading", {"name": "Alcove width", "text": "37 9/16"}),
        (
            "keep_line",
            {
                "name": "Shelf",
                "reckoner": "shelf_length",
                "values": DADO | {"width": "[Alcove width]"},
            },
        ),
        ("set", {"settings": {"clearance_in_dado": "1/128"}}),
    )
    identity = entry(document, "Shelf")["id"]
    fit = sawside.handle({"do": "sure", "document": document, "id": identity})["fit"]
    assert fit["said"] == (
        "Shelf length may need to be up to 1/32″ less; "
        "the total clearance of 1/64″ isn’t enough for that."
    )


@pytest.mark.parametrize("each", CLEARANCES.values(), ids=CLEARANCES)
def test_one_beyond_its_limits_or_that_is_no_length_is_refused_at_its_place(each):
    for bad, kind in (
        ("3//4", "unreadable"),
        ("-1/8", "range"),
        ("13 in", "range"),
        ([], "message"),
    ):
        said = change(begun(), "set", settings={each.key: bad})
        assert errors(said)[f"settings.{each.key}"]["kind"] == kind
    several = change(
        begun(), "set", settings={each.key: "13 in", "kerf": "3//4", "tapes": [{"case": "3"}]}
    )
    assert set(errors(several)) == {f"settings.{each.key}", "settings.kerf", "settings.tapes"}
    for good in (each.least, each.most, "", f"{each.default} in"):
        for unit in ("in", "ft", "mm", "cm", "m"):
            changed(begun(), "set", settings={each.key: good, "unit": unit})


@each_place
def test_what_the_settings_allow_the_field_allows_too(setting, key, values, typed):
    limit = CLEARANCES[setting].most
    said = sawside.handle({"do": "reckon", "reckoner": key, "values": values | typed(limit)})
    assert said["ok"] or said["error"]["kind"] == "impossible"


def test_they_are_declared_under_one_heading_each_with_its_default_as_text():
    fields = [each for each in DESCRIBED["settings"] if each["key"] in CLEARANCES]
    assert {each["group"]["label"] for each in fields} == {"Clearances"}
    assert "shop practice" in fields[0]["group"]["help"]
    start = read_settings({each["key"]: each["default"] for each in fields} | {"unit": "mm"})
    usual = read_settings({}).set_lengths
    assert all(start.set_lengths[key] == usual[key] for key in CLEARANCES)
    assert start.set_lengths["clearance_above"] == Fraction(1, 2)
    asked = {each["key"]: each for each in DESCRIBED["reckoners"]}["shelf_length"]["fields"]
    assert {each["setting"] for each in asked if "setting" in each} == {
        "clearance_in_dado",
        "clearance_on_pins",
    }
