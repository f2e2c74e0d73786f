"""A new question is one new file: described, answered and kept without touching another."""

import compileall
import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

import sawside

SAMPLE = Path(__file__).with_name("sample_question.py")
LAYERS = [{"thickness": "3/4", "repeat": "2"}, {"thickness": "23/32", "repeat": ""}]


def copied(folder):
    """The core copied to a folder, with the sample question beside the others."""
    core = folder / "sawside"
    shutil.copytree(
        Path(sawside.__file__).parent, core, ignore=shutil.ignore_patterns("__pycache__")
    )
    shutil.copy(SAMPLE, core / "reckoners/tape")
    return core


@pytest.fixture(scope="module")
def door(tmp_path_factory):
    """Asks the copied core several messages in a Python of its own."""
    folder = tmp_path_factory.mktemp("core")
    copied(folder)
    return lambda *messages: asked(folder, messages)


def asked(folder, messages):
    script = (
        "import json, sys, sawside\n"
        f"assert sawside.__file__.startswith({str(folder)!r}), sawside.__file__\n"
        "print(json.dumps([sawside.handle(each) for each in json.load(sys.stdin)]))\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", script],
        input=json.dumps(messages),
        capture_output=True,
        text=True,
        check=True,
        cwd=folder,
        env={**os.environ, "PYTHONPATH": str(folder)},
    )
    return json.loads(done.stdout)


def question(**values):
    return {"do": "reckon", "reckoner": "sample_question", "values": values}


def test_it_is_described_with_every_kind_of_field(door):
    (described,) = door({"do": "describe"})
    found = next(each for each in described["reckoners"] if each["key"] == "sample_question")
    fields = {field["key"]: field for field in found["fields"]}
    assert [field["kind"] for field in found["fields"]] == [
        "count",
        "rows",
        "lengths",
        "angle",
        "material",
        "length",
    ]
    assert [field["kind"] for field in fields["layers"]["fields"]] == ["length", "count", "choice"]
    assert (fields["layers"]["row_label"], fields["layers"]["most_rows"]) == ("Layer", 4)
    assert fields["lean"]["unit"] == "deg"
    assert {"value": "plywood", "label": "Plywood"}.items() <= next(
        choice for choice in fields["wood"]["choices"] if choice["value"] == "plywood"
    ).items()


def test_without_a_picture_of_its_own_it_has_that_of_its_job(door):
    (described,) = door({"do": "describe"})
    found = next(each for each in described["reckoners"] if each["key"] == "sample_question")
    job = next(each for each in described["jobs"] if each["key"] == found["job"])
    assert found["picture"] == job["picture"]


def test_it_is_answered(door):
    (said,) = door(question(layers=LAYERS, spacers=["1/8", ""], times="2", lean="7 1/2"))
    assert said["ok"], said
    texts = [answer["text"] for answer in said["answers"]]
    assert texts == ["4 11/16″", "3/4″, 23/32″", "2", "7.5°", "Plywood"]
    assert said["parts"][0]["count"] == 2
    assert said["echoes"]["spacers"] == "1/8″"
    assert "3/4″ thick" in said["echoes"]["layers"]


def test_a_bad_row_names_its_row_and_its_field(door):
    bad = [{"thickness": "3/4"}, {"thickness": "3//4", "repeat": "1.5"}]
    (said,) = door(question(layers=bad, spacers=["x"]))
    found = [(e["field"], e.get("row"), e.get("part")) for e in (said["error"], *said["more"])]
    assert found == [("layers", 1, "thickness"), ("layers", 1, "repeat"), ("spacers", 0, None)]
    assert said["error"]["message"].startswith("Layer 2: ")


def test_too_many_rows_none_at_all_and_no_list_are_refused(door):
    answers = door(
        question(layers=LAYERS * 3),
        question(layers=[]),
        question(layers=[{"thickness": ""}]),
        question(layers="3/4"),
        question(layers=["3/4"]),
        question(layers=LAYERS, wood="granite"),
        question(layers=LAYERS, most="1"),
    )
    kinds = [(said["error"]["field"], said["error"]["kind"]) for said in answers]
    assert kinds == [
        ("layers", "range"),
        ("layers", "missing"),
        ("layers", "missing"),
        ("layers", "message"),
        ("layers", "message"),
        ("wood", "unknown"),
        ("layers", "impossible"),
    ]


def test_it_is_kept_in_a_project_and_makes_its_pieces(door):
    (begun,) = door({"do": "change", "document": None, "act": {"act": "begin", "name": "Cabinet"}})
    act = {
        "act": "keep_line",
        "name": "",
        "reckoner": "sample_question",
        "values": {"layers": LAYERS, "times": 3},
    }
    (kept,) = door({"do": "change", "document": begun["document"], "act": act})
    (seen,) = door({"do": "view", "document": kept["document"]})
    assert seen["entries"][0]["name"] == "Sample question"
    assert [(piece["name"], piece["count"]) for piece in seen["pieces"]] == [("Sample question", 3)]


def test_it_is_found_among_compiled_files_without_their_source(tmp_path):
    """As the browser has them: only .pyc beside the data files."""
    core = copied(tmp_path)
    assert compileall.compile_dir(core, legacy=True, quiet=2)
    for source in core.rglob("*.py"):
        source.unlink()
    described, said = asked(tmp_path, [{"do": "describe"}, question(layers=LAYERS)])
    assert "sample_question" in [each["key"] for each in described["reckoners"]]
    assert said["ok"]
