"""What questions start with: the usual in a shop, and in a metric project in its own measures.

A default that became another one changes no line that was kept with a blank.
"""

from fractions import Fraction

import pytest
from asking import exact, reckon
from projects import answered, changed, view

import sawside
from sawside.lengths.reading.reader import read_length
from sawside.project.schema.former_questions import MERGED
from sawside.project.schema.old_defaults import ANYWHERE, METRIC_CLEARANCES, METRIC_LINES
from sawside.reckoners import RECKONERS
from sawside.settings.clearances import CLEARANCES
from sawside.settings.settings import read_settings

DESCRIBED = sawside.handle({"do": "describe"})
METRIC = {"unit": "mm"}
each_question = pytest.mark.parametrize(
    "question", DESCRIBED["reckoners"], ids=lambda question: question["key"]
)


def field_of(key, field):
    return next(each for each in RECKONERS[key].fields if each.key == field)


def today(key):
    """What a question became part of, or itself, and the new keys of its fields."""
    became = MERGED.get(key)
    return (became.question, became.fields) if became else (key, {})


def test_a_shelf_starts_with_ordinary_books_and_the_limit_that_is_not_seen():
    """25 lb on a foot and .02 in in a foot (common practice, no source)."""
    load = field_of("shelf_strength", "load")
    assert load.default == load.choices[0].value == "books"
    said = reckon("shelf_strength", span="36", depth="12", material="plywood")
    assert "25 lb/ft" in said["by_key"]["load"]["text"]
    assert said["verdict"].endswith("limit 1/16″")


@pytest.mark.parametrize(
    ("side", "unit", "depth"),
    [
        ("23/32", "in", "1/4″"),
        ("3/4", "in", "1/4″"),
        ("1 1/2", "in", "1/2″"),
        ("18", "mm", "6.0 mm"),
        ("22", "mm", "7.0 mm"),
    ],
)
def test_a_dado_is_a_third_of_its_side_on_a_mark_that_one_sets(side, unit, depth):
    """1/4 in 3/4 stock (common practice, no source)."""
    said = reckon(
        "dado_layout",
        {"unit": unit},
        side=f"40 {unit}" if unit == "in" else "1000",
        depth="14 in",
        side_thickness=side,
        places=["10 in"],
    )
    assert said["by_key"]["depth"]["text"].startswith(depth)


@pytest.mark.parametrize(
    ("key", "field", "metric"),
    [
        ("shelf_strength", "thickness", "18 mm"),
        ("shelf_layout", "thickness", "18 mm"),
        ("dado_layout", "side_thickness", "18 mm"),
        ("pin_holes", "diameter", "5 mm"),
        ("pin_holes", "front", "37 mm"),
        ("pin_holes", "back", "37 mm"),
        ("pin_holes", "pitch", "32 mm"),
        ("shelves_on_a_hole_grid", "pitch", "32 mm"),
    ],
)
def test_a_metric_project_starts_with_metric_stock_and_hardware(key, field, metric):
    """Common practice, no source."""
    declared = field_of(key, field)
    assert [declared.start(unit) for unit in ("mm", "cm", "m")] == [metric] * 3
    assert declared.start("in") == declared.start("ft") == declared.default


@each_question
def test_a_default_in_millimeters_is_about_the_one_in_inches_and_is_that_of_a_blank(question):
    for field in RECKONERS[question["key"]].fields:
        if field.kind == "length" and field.default and not field.default.startswith("0"):
            assert field.metric, f"{question['key']}.{field.key} starts with {field.default}"
            inches, metric = (read_length(each).value for each in (field.default, field.metric))
            assert field.metric.endswith(" mm")
            assert 0.6 < metric / inches < 1.35 or field.key == "start"
    told = {field["key"]: field for field in question["fields"]}
    for field in RECKONERS[question["key"]].fields:
        assert told[field.key].get("default_metric") == field.metric


@each_question
def test_its_example_in_millimeters_is_answered_in_a_metric_project(question):
    values = question["example_metric"]
    assert values.keys() == question["example"].keys()
    said = sawside.handle(
        {"do": "reckon", "reckoner": question["key"], "values": values, "settings": METRIC}
    )
    assert said["ok"], said


@pytest.mark.parametrize(
    "question",
    [
        each
        for each in DESCRIBED["reckoners"]
        if RECKONERS[each["key"]].compute.__module__.split(".")[2] in ("shelves", "wood")
    ],
    ids=lambda question: question["key"],
)
def test_nothing_of_shelves_and_wood_is_told_in_inches_feet_or_pounds_there(question):
    """What a thing is sold as or a source is called may be in inches."""
    if question["key"] == "sold_sizes":
        return
    said = reckon(question["key"], METRIC, **question["example_metric"])
    # What is on file in psi is turned into megapascals there, in the working.
    working = [] if question["key"] == "materials_list" else said["working"]
    texts = [line["text"] for line in working]
    texts += [
        answer["text"]
        for answer in said["answers"]
        if answer["kind"] == "text" and answer["key"] != "figures"
    ]
    for text in texts:
        assert not any(word in f"{text} " for word in ("″", "psi", " lb", "/ft", "foot ")), text


def test_no_two_questions_have_the_same_place_and_each_family_is_together():
    orders = [each.order for each in RECKONERS.values()]
    assert len(set(orders)) == len(orders)
    family = ["shelf_layout", "shelves_on_a_hole_grid"]
    keys = list(RECKONERS)
    start = keys.index(family[0])
    assert keys[start : start + len(family)] == family


def test_of_two_red_oaks_the_list_says_which_one_is_sold():
    """Wood Handbook, Table 13-5 has one row for the group, .00369 along the rings; northern red
    oak alone, of its shrinkage of 8.6 % in Table 4-3, .00304."""
    fields = {
        field["key"]: field
        for field in next(
            each["fields"] for each in DESCRIBED["reckoners"] if each["key"] == "seasonal_movement"
        )
    }
    labels = {each["value"]: each["label"] for each in fields["species"]["choices"]}
    assert labels["red_oak_commercial"] == "Red oak, commercial: what lumberyards sell as red oak"
    assert labels["oak_northern_red"].startswith("Oak, northern red: this species alone")


def old(entries, settings, schema=3):
    return {
        "schema": schema,
        "name": "Record cabinet",
        "settings": settings,
        "next": 99,
        "entries": entries,
    }


def line(key, unit, values, number=1):
    return {
        "id": str(number),
        "kind": "line",
        "name": f"Line {number}",
        "unit": unit,
        "reckoner": key,
        "values": values,
    }


def test_a_shelf_kept_with_blanks_keeps_its_records_and_its_limit():
    values = {"span": "36", "depth": "12", "material": "plywood"}
    document = old([line("shelf_sag", "in", values)], {})
    told = answered("entry", document, id="1")["reckoning"]
    texts = {each["key"]: each["text"] for each in told["answers"]}
    assert "54 kg/m" in texts["load"]
    assert told["verdict"].endswith("limit 3/16″")
    kept = changed(document, "rename_project", name="Case")["entries"][0]["values"]
    assert kept == values | {"load": "records_12", "limit": "cabinet_test", "solve": "sag"}


@pytest.mark.parametrize("key", METRIC_LINES)
def test_a_line_kept_in_millimeters_with_blanks_keeps_what_inches_they_were(key):
    question, renamed = today(key)
    now = RECKONERS[question].example
    values = {name: text for name, text in now.items() if name not in METRIC_LINES[key]}
    document = changed(old([line(key, "mm", values)], METRIC), "rename_project", name="Case")
    kept = document["entries"][0]["values"]
    for field, text in (METRIC_LINES[key] | ANYWHERE.get(key, {})).items():
        told = kept[renamed.get(field, field)]
        assert told == (now.get(field) if field in values else text)
    inches = changed(old([line(key, "in", values)], {}), "rename_project", name="Case")
    assert not set(METRIC_LINES[key]) & (set(inches["entries"][0]["values"]) - set(values))


def test_the_table_of_old_defaults_is_that_of_fields_that_are_asked():
    for table in (ANYWHERE, METRIC_LINES):
        for key, fields in table.items():
            question, renamed = today(key)
            for field, text in fields.items():
                declared = field_of(question, renamed.get(field, field))
                if declared.choices:
                    assert text in {choice.value for choice in declared.choices}
                elif table is METRIC_LINES:
                    assert text == declared.default


def test_a_dado_kept_with_its_depth_blank_stays_a_third_of_its_side():
    values = {"side": "44", "depth": "14", "side_thickness": "23/32", "places": ["10 in"]}
    document = old([line("dado_layout", "in", values)], {})
    told = answered("entry", document, id="1")["reckoning"]["answers"]
    depth = next(each for each in told if each["key"] == "depth")
    assert exact(depth) == Fraction(23, 96)


def test_a_row_kept_in_millimeters_keeps_its_thickness():
    values = {"keep": [{"low": "500"}, {"low": "600", "thick": "20"}, {}]}
    document = changed(old([line("pin_holes", "mm", values)], METRIC), "rename_project", name="C")
    rows = document["entries"][0]["values"]["keep"]
    assert [row.get("thick") for row in rows] == ['3/4"', "20", None][: len(rows)]


def test_the_kerf_of_a_metric_project_is_3_mm_and_one_kept_blank_stays_an_eighth():
    assert read_settings(METRIC).kerf == Fraction(30, 254)
    assert read_settings({}).kerf == read_settings({"unit": "ft"}).kerf == Fraction(1, 8)
    assert view(old([], METRIC))["schema"] == 8
    document = changed(old([], METRIC), "rename_project", name="Case")
    assert read_settings(document["settings"]).kerf == Fraction(1, 8)


@pytest.mark.parametrize("unit", ["mm", "cm", "m"])
def test_clearances_of_a_metric_project_are_in_millimeters_and_those_kept_blank_stay_inches(unit):
    """About as wide as those in inches, on a half millimeter (common practice, no source)."""
    inches, there = (read_settings({"unit": each}).set_lengths for each in ("in", unit))
    assert set(METRIC_CLEARANCES) <= set(CLEARANCES)
    for key in CLEARANCES:
        assert (there[key] * Fraction(254, 5)).denominator == 1
        assert 0.6 < there[key] / inches[key] < 1.35
    values = {"width": "800", "width_is": "inside", "joint": "pins"}
    before = old([line("shelf_length", unit, values)], {"unit": unit}, schema=6)
    document = changed(before, "rename_project", name="Case")
    stayed = {key: inches[key] for key in METRIC_CLEARANCES}
    assert read_settings(document["settings"]).set_lengths == there | stayed
    document = changed(
        old([], {"unit": unit, "clearance_on_pins": "2 mm"}, schema=6),
        "rename_project",
        name="Case",
    )
    assert read_settings(document["settings"]).set_lengths["clearance_on_pins"] == Fraction(10, 127)


def test_a_frame_in_millimeters_tells_no_sixteenth_of_an_inch():
    question = next(each for each in DESCRIBED["reckoners"] if each["key"] == "mitered_frame")
    said = reckon("mitered_frame", METRIC, **question["example_metric"])
    assert said["echoes"]["clearance"] == "1.5 mm from Settings"


def test_another_unit_leaves_the_kerf_of_what_is_kept_as_it_was():
    empty = changed(None, "begin", name="Record cabinet")
    assert read_settings(changed(empty, "set", settings=METRIC)["settings"]).kerf == Fraction(
        30, 254
    )
    kept = changed(empty, "keep_reading", name="Alcove", text="37")
    there = changed(kept, "set", settings=METRIC)
    assert read_settings(there["settings"]).kerf == Fraction(1, 8)
    back = changed(there, "set", settings=there["settings"] | {"unit": "in"})
    assert read_settings(back["settings"]).kerf == Fraction(1, 8)
