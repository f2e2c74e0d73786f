"""What DEVELOPERS.md names is there."""

import re
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
GUIDE = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
MADE = {"wheels-rest.zip", "pack.json", "describe.json", "first-answer.json"}
"""Written by the build."""
NAMED = set(re.findall(r"`([\w./-]+\.(?:py|js|mjs|csv|txt|html|zip|json))`", GUIDE)) - MADE
FILES = [
    f"/{path.relative_to(ROOT).as_posix()}"
    for top in ROOT.iterdir()
    if top.name in ("build.py", "pycore", "tests", "web")
    for path in ([top] if top.is_file() else top.rglob("*"))
    if "node_modules" not in path.parts
]


@pytest.mark.parametrize("name", sorted(NAMED))
def test_every_file_that_the_guide_names_is_there(name):
    """Remedy: write its path as it is now; a bare name stands for a file of that name anywhere."""
    assert any(path.endswith(f"/{name}") for path in FILES)
