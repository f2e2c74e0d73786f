"""The page's code keeps to the shapes of the contract, and to those of its own."""

import json
import os
import subprocess
from pathlib import Path

import pytest

from web.build import environment
from web.build.environment import ROOT

WEB = ROOT / "web"
LAYERS = ("begin.js", "main.js", "places", "widgets", "store", "python", "offline")
# What runs in the page, and what runs in its workers: a browser gives them different globals.
SIDES = ("page", "worker")


def checked(config, *options):
    """What TypeScript says of what a file of settings names."""
    variables = {**os.environ, **environment.ready(tests=True).variables}
    command = ["node_modules/.bin/tsc", "--project", config, "--pretty", "false", *options]
    return subprocess.run(
        command, cwd=WEB, env=variables, capture_output=True, text=True, check=False
    )


def settings(side):
    """The settings of a side."""
    return WEB / f"build/types/{side}.json"


@pytest.mark.parametrize("side", SIDES)
def test_what_is_asked_of_the_core_and_of_a_widget_is_what_it_takes_and_gives(side):
    """Remedy: by hand what is named; after a change of the contract first `build.py format`."""
    done = checked(settings(side))
    assert done.returncode == 0, done.stdout


def test_every_module_of_the_page_is_checked():
    """One that neither side reaches would be in no bundle either."""
    lists = [checked(settings(side), "--listFilesOnly").stdout for side in SIDES]
    listed = {Path(line) for files in lists for line in files.splitlines()}
    modules = [file for layer in LAYERS for file in [WEB / layer, *(WEB / layer).rglob("*.js")]]
    assert [str(file) for file in modules if file.is_file() and file not in listed] == []


WRONG = {
    "a message that there is not": 'ask({ do: "recon", settings: {} })',
    "a message without what it needs": 'ask({ do: "reckon", settings: {} })',
    "what no message has": 'ask({ do: "strip", setings: {} })',
    "what the answer has not": 'ask({ do: "strip" }).then((strip) => strip.ok && strip.sign)',
    "an answer that may be a refusal": 'ask({ do: "strip" }).then((strip) => strip.marks)',
}


@pytest.mark.parametrize("wrong", WRONG.values(), ids=WRONG)
def test_what_is_against_the_contract_is_found(wrong, tmp_path):
    contract = (WEB / "python/contract.d.ts").as_posix()
    ask = f'/** @param {{import("{contract}").Ask}} ask */'
    (tmp_path / "wrong.js").write_text(f"{ask}\nexport const wrong = (ask) => {wrong};\n")
    config = tmp_path / "wrong.json"
    config.write_text(json.dumps({"extends": str(settings("page")), "files": ["wrong.js"]}))
    done = checked(config)
    assert done.returncode != 0
    assert "wrong.js(2," in done.stdout
