"""The one form of the code: ruff for Python, Biome for the web side, the contract as types."""

import os
import subprocess
from pathlib import Path

from web.build.environment import ROOT, Environment

PYTHON = ["build.py", "pycore", "tests", "web/build"]
CONFIG = ["--config=pycore/pyproject.toml"]
BIOME = ["node_modules/.bin/biome", "check", "--error-on-warnings", "--colors=off"]


def commands(*, mend: bool) -> list[tuple[list[str], Path]]:
    """Return each command and the folder it runs in; with `mend` they write, else they check."""
    check = [] if mend else ["--check"]
    return [
        (["python", "-m", "web.build.unit_tables", *check], ROOT),
        (["python", "-m", "web.build.contract_types", *check], ROOT),
        (["ruff", "check", "--fix" if mend else "--no-fix", *CONFIG, *PYTHON], ROOT),
        (["ruff", "format", *check, *CONFIG, *PYTHON], ROOT),
        ([*BIOME, *(["--write"] if mend else [])], ROOT / "web"),
    ]


def mend(environment: Environment) -> bool:
    """Bring all code into the one form; return whether nothing is left to mend by hand."""
    variables = {**os.environ, **environment.variables}
    codes = [
        subprocess.run(command, cwd=folder, env=variables, check=False).returncode
        for command, folder in commands(mend=True)
    ]
    return not any(codes)
