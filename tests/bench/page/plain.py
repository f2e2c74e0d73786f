"""The page to compare with: Pyodide as published and pint as published, and no more."""

import json
import shutil
from pathlib import Path

ROOT = Path(__file__).resolve().parents[3]
PAGE = Path(__file__).parent / "plain_page"
RUNTIME = [
    "pyodide.mjs",
    "pyodide.asm.mjs",
    "pyodide.asm.wasm",
    "pyodide-lock.json",
    "python_stdlib.zip",
]
FIRST_ANSWER = "plain:first-answer"
CAN_KEEP = "plain:can-keep"


def make(folder):
    """Put the page into `folder`, with the same releases of everything that the site uses."""
    shutil.copytree(PAGE, folder, dirs_exist_ok=True)
    for name in RUNTIME:
        shutil.copy(ROOT / "web/node_modules/pyodide" / name, folder / name)
    wheels = sorted((ROOT / ".build/fetched").glob("*.whl"))
    for wheel in wheels:
        shutil.copy(wheel, folder / wheel.name)
    (installer,) = [wheel.name for wheel in wheels if wheel.name.startswith("micropip-")]
    others = [wheel.name for wheel in wheels if wheel.name != installer]
    (folder / "wheels.json").write_text(json.dumps({"installer": installer, "wheels": others}))
    return folder
